/* SPDX-License-Identifier: MIT */
/* Wind on collectors that stand tilted on a roof of 7 degrees or less: ASCE/SEI 7-16 and 7-22
   29.4.3. Zones are strips 2 h wide along the roof edges, not those of chapter 30. */
#ifndef RP_LOAD_ASCE7_TILTED_H
#define RP_LOAD_ASCE7_TILTED_H

#include <stdbool.h>

#include "load/asce7_pressure.h"

/* The array and its roof as 29.4.3 asks for them, m and rad. */
struct tilted_array {
	enum wind_roof roof;
	double theta;  /* of the roof */
	double tilt;   /* of the collectors against the roof */
	double Lp;     /* chord: collector up its own slope */
	double along;  /* collector along the row */
	double h1, h2; /* low and high edge above the roof */
	double hpt;    /* parapet above the roof */
	int columns, rows;
	double column_gap, row_gap; /* clear; only read where there is a neighbour */
	double to_edge;             /* nearest roof edge, level */
};

/* Sentence that says how a condition failed, clause after the name of the standard, status. */
#define TILTED_CONDITIONS(C)                                                                       \
	C(FORM, "The roof is not a flat, gable or hip roof.", "29.4.3 (roof form)", ONE_SOURCE)    \
	C(SLOPE, "The roof is steeper than 7 degrees.", "29.4.3 (slope)", ONE_SOURCE)              \
	C(CHORD, "The collectors are longer than 6.7 ft (2.04 m) up their slope.", "29.4.3 (Lp)",  \
	  ONE_SOURCE)                                                                              \
	C(TILT, "The collectors are tilted more than 35 degrees against the roof.",                \
	  "29.4.3 (tilt)", ONE_SOURCE)                                                             \
	C(LOW_EDGE, "The low edge of the collectors is more than 2 ft (0.61 m) above the roof.",   \
	  "29.4.3 (h1)", CONFIRMED)                                                                \
	C(HIGH_EDGE, "The high edge of the collectors is more than 4 ft (1.22 m) above the roof.", \
	  "29.4.3 (h2)", CONFIRMED)                                                                \
	C(GAP, "Collectors stand closer than 1/4 in (6.4 mm) to each other.", "29.4.3 (gaps)",     \
	  FROM_MEMORY)                                                                             \
	C(GAP_SPACING,                                                                             \
	  "The gaps between collectors are more than 6.7 ft (2.04 m) apart: a collector is "       \
	  "longer than that one way.",                                                             \
	  "29.4.3 (spacing of gaps)", FROM_MEMORY)                                                 \
	C(EDGE,                                                                                    \
	  "The array is nearer to a roof edge than 4 ft (1.22 m) or twice the height of its high " \
	  "edge over the parapet.",                                                                \
	  "29.4.3 (distance to the roof edge)", FROM_MEMORY)

enum tilted_condition {
#define C(id, text, clause, confidence) TILTED_##id,
	TILTED_CONDITIONS(C)
#undef C
		TILTED_CONDITION_COUNT
};
#define TILTED_BIT(condition) (1u << (condition))

/* Set of TILTED_BIT of the conditions that are not met; 0: 29.4.3 gives the pressure. A dimension
   that is NAN fails. */
unsigned solar_tilted_failed(const struct tilted_array *array);
const char *tilted_condition_text(enum tilted_condition c);
const char *tilted_condition_clause(enum tilted_condition c);
enum confidence tilted_condition_confidence(enum tilted_condition c);

/* What of GCrn does not change from place to place on the roof. */
struct tilted_factors {
	double gammap, gammac;
	double Lb; /* normalized building length, m */
};
/* longest and shortest are the plan dimensions WL and Ws. */
struct tilted_factors solar_tilted_factors(double hpt, double h, double Lp, double longest,
					   double shortest, struct trace *trace);

/* (GCrn)nom of a zone "1", "2" or "3" at an effective wind area A; the safe side does not fall with
   the area and takes the larger set between 5 and 15 degrees. known is false beyond 35 degrees. GCp
   holds the coefficient, positive: it acts both ways. */
struct wind_coefficient solar_tilted_nominal(double tilt, const char *zone, double A, double Lb,
					     enum wind_curve curve, struct trace *trace);

/* p = qh (Kd) GCrn, a magnitude that acts both ways, normal to the collector. */
struct wind_pressure solar_tilted_pressure(enum edition edition, const struct wind_velocity *wind,
					   const struct tilted_factors *f, double nominal,
					   bool exposed, bool least, struct trace *trace);

#endif
