/* SPDX-License-Identifier: MIT */
/* Wind: pressure coefficients of components and cladding on roofs, h <= 60 ft, and the pressure
   they give. Pressures and coefficients are signed: negative is away from the roof (uplift). */
#ifndef RP_LOAD_ASCE7_PRESSURE_H
#define RP_LOAD_ASCE7_PRESSURE_H

#include <stdbool.h>

#include "load/asce7_wind.h"
#include "step/step.h"

enum wind_roof {
	WIND_ROOF_FLAT,
	WIND_ROOF_GABLE,
	WIND_ROOF_HIP,
	WIND_ROOF_MONOSLOPE,
	WIND_ROOF_COUNT
};
enum wind_sign { WIND_UP, WIND_DOWN };
/* Where a curve of the figures rests on memory, two are computed: the remembered one and one that
   bounds it. A curve that is confirmed, or of one source, answers both. */
enum wind_curve { CURVE_RECALLED, CURVE_SAFE_SIDE };
enum wind_enclosure { WIND_ENCLOSED, WIND_PARTIALLY_ENCLOSED };

/* A place on a roof as the figures see it. */
struct wind_place {
	enum wind_roof roof;
	double theta;     /* roof angle, rad; up to 7 deg every form but a monoslope takes the flat
			     figure */
	const char *zone; /* "1'", "1", "2", "2e", "2n", "2r", "3", "3e", "3r" */
	enum wind_sign sign;
	double A; /* effective wind area, m2 */
};

struct wind_coefficient {
	bool known; /* false: no row; the other members mean nothing */
	double GCp; /* signed */
	enum confidence confidence;
	const char *figure; /* "ASCE/SEI 7-16 Fig. 30.3-2C" */
	bool bounded;       /* a second curve differs: the caller must compute with both */
};

/* GCp, straight in log10 A between the break areas, constant outside; never outside the slope
   classes. */
struct wind_coefficient asce7_wind_coefficient(enum edition edition, const struct wind_place *place,
					       enum wind_curve curve, struct trace *trace);

/* Internal coefficient as a magnitude; NAN if the edition has no row. */
double asce7_internal_coefficient(enum edition edition, enum wind_enclosure enclosure);

struct wind_pressure {
	double p;              /* Pa, strength level, signed */
	double computed;       /* Pa, before the least pressure of 30.2.2 */
	bool minimum;          /* the least pressure governs */
	double gammaE, gammaa; /* 1 where they do not apply */
};

/* Pressure on the roof itself: qh [GCp - GCpi], GCpi taken with the sign that adds. With `least`
   the 16 psf of 30.2.2 are kept. */
struct wind_pressure asce7_roof_pressure(enum edition edition, const struct wind_velocity *wind,
					 double GCp, double GCpi, bool least, struct trace *trace);

/* w.computed kept at no less than the 16 psf of 30.2.2. */
struct wind_pressure asce7_least_pressure(struct wind_pressure w, struct trace *trace);

/* Width of the edge zones: a = min(0.1 least plan dimension, 0.4 h), not below max(0.04 least, 3
   ft). h is the mean roof height, or the eave height up to 10 degrees. */
double asce7_zone_width(double least, double h, struct trace *trace);

#endif
