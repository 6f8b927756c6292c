/* SPDX-License-Identifier: MIT */
/* Wind on collectors parallel to the roof: ASCE/SEI 7-16 and 7-22 29.4.4, and what is done without
   it in 7-10. 29.4.3 (tilted on low slopes) and 29.4.1 (other rooftop structures) are not here. */
#ifndef RP_LOAD_ASCE7_SOLAR_H
#define RP_LOAD_ASCE7_SOLAR_H

#include <stdbool.h>

#include "load/asce7_pressure.h"

/* The array as 29.4.4 asks for it. Lengths on the roof plane, m. */
struct flush_array {
	double tilt;                /* between collector and roof plane, rad */
	double h2;                  /* top of the collector above the roof, m */
	int columns, rows;          /* along the eave, up the slope */
	double column_gap, row_gap; /* clear; only read where there is a neighbour */
	double along, up;           /* one collector along the eave and up the slope */
	double to_edge;             /* to the nearest roof edge: eave, rake */
	double to_ridge;            /* to the nearest ridge or hip; INFINITY where there is none */
};

/* The conditions under which gammaa may reduce the pressure. Sentence that says how one failed,
   clause after the name of the standard, status of the limit. */
#define FLUSH_CONDITIONS(C)                                                                        \
	C(PARALLEL, "The collectors stand more than 2 degrees off the roof plane.",                \
	  "29.4.4 (2 degrees)", FROM_MEMORY)                                                       \
	C(HEIGHT, "The top of the collectors is more than 10 in (254 mm) above the roof.",         \
	  "29.4.4 (h2)", CONFIRMED)                                                                \
	C(GAP, "Collectors stand closer than 1/4 in (6.4 mm) to each other.", "29.4.4 (gaps)",     \
	  CONFIRMED)                                                                               \
	C(GAP_SPACING,                                                                             \
	  "The gaps between collectors are more than 6.7 ft (2.04 m) apart: a collector "          \
	  "is longer than that one way.",                                                          \
	  "29.4.4 (spacing of gaps)", FROM_MEMORY)                                                 \
	C(EDGE,                                                                                    \
	  "The array is nearer to a roof edge than twice the height of its top above the roof.",   \
	  "29.4.4 (2 h2, edges)", FROM_MEMORY)                                                     \
	C(RIDGE,                                                                                   \
	  "The array is nearer to a ridge or hip than twice the height of its top above the "      \
	  "roof.",                                                                                 \
	  "29.4.4 (2 h2, ridges)", FROM_MEMORY)

enum flush_condition {
#define C(id, text, clause, confidence) FLUSH_##id,
	FLUSH_CONDITIONS(C)
#undef C
		FLUSH_CONDITION_COUNT
};
#define FLUSH_BIT(condition) (1u << (condition))

/* Set of FLUSH_BIT of the conditions that are not met; 0: gammaa may be used. A dimension that is
   NAN fails. */
unsigned solar_flush_failed(const struct flush_array *array);
const char *flush_condition_text(enum flush_condition c);
const char *flush_condition_clause(enum flush_condition c);
enum confidence flush_condition_confidence(enum flush_condition c);

/* Sides of an array, for its exposed edges. */
enum array_side { SIDE_LEFT, SIDE_RIGHT, SIDE_LOWER, SIDE_UPPER, ARRAY_SIDE_COUNT };

struct array_surroundings {
	double h, h2,
		Lp; /* mean roof height; top above roof; chord of a collector (up the slope), m */
	/* From each side of the array to the roof edge there, m. Beyond a gable ridge the roof goes
	   on: the edge above is the far eave. INFINITY is safe. */
	double to_roof_edge[ARRAY_SIDE_COUNT];
	/* To the next array or row that way; INFINITY where there is none. */
	double to_array[ARRAY_SIDE_COUNT];
};

/* Set of 1u << side of the exposed sides: more than h/2 from the roof edge, and nothing that
   shelters them within max(4 h2, 4 ft). Plane distances stand in for the horizontal ones, which
   errs towards exposed. */
unsigned solar_exposed_sides(const struct array_surroundings *s, struct trace *trace);

/* True if gammaE = 1.5 applies to an element that lies `from[side]` within the array, measured from
   each side to the nearest point of the element: that is within 1.5 Lp of an exposed side. */
bool solar_row_end(const struct array_surroundings *s, unsigned exposed_sides,
		   const double from[ARRAY_SIDE_COUNT], struct trace *trace);

struct array_wind {
	double GCp;            /* of the roof at the element, signed */
	double A;              /* effective wind area, m2 */
	bool exposed;          /* solar_row_end */
	unsigned flush_failed; /* solar_flush_failed */
	double GCpi;           /* magnitude; used by 7-10 only, which has no rule for collectors */
	bool without_minimum;  /* leave out the 16 psf of 30.2.2 (whether it binds collectors is not
				  settled) */
};

/* Pressure on the collectors. 7-16, 7-22: qh (Kd) GCp gammaE gammaa without internal pressure;
   where a condition fails gammaa = 1 and gammaE stays (our rule, safe side). 7-10: qh [GCp - GCpi],
   no factor. */
struct wind_pressure asce7_array_pressure(enum edition edition, const struct wind_velocity *wind,
					  const struct array_wind *array, struct trace *trace);

#endif
