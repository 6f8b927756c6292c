/* SPDX-License-Identifier: MIT */
/* Wind pressure zones of a roof plane as shapes: ASCE/SEI 7-10 Figs. 30.4-2, 7-16 and 7-22
   Figs. 30.3-2. Coordinates on the plane: x along the eave from the left rake edge, y up the slope
   from the eave edge, m. Covered: any rectangular plane up to 7 degrees; planes of gable, hip and
   monoslope roofs up to 45 degrees. A plane of a hip roof is a trapezoid or a triangle whose sides
   are hips. */
#ifndef RP_ROOF_ZONE_H
#define RP_ROOF_ZONE_H

#include <stdbool.h>

#include "load/asce7_pressure.h"
#include "roof/polygon.h"
#include "step/step.h"

/* id, text as the figures print it */
#define ZONES(Z)                                                                                   \
	Z(1P, "1'")                                                                                \
	Z(1, "1")                                                                                  \
	Z(2, "2")                                                                                  \
	Z(2P, "2'")                                                                                \
	Z(2E, "2e")                                                                                \
	Z(2N, "2n")                                                                                \
	Z(2R, "2r")                                                                                \
	Z(3, "3")                                                                                  \
	Z(3P, "3'")                                                                                \
	Z(3E, "3e")                                                                                \
	Z(3R, "3r")

enum zone {
#define Z(id, text) ZONE_##id,
	ZONES(Z)
#undef Z
		ZONE_COUNT
};

const char *zone_text(enum zone z);

/* 49: seven strips each way on a flat roof (0.2h, 0.6h and 1.2h from both edges) */
#define ZONE_SHAPE_MAX 49

struct zone_shape {
	enum zone zone;
	struct polygon shape;
};

struct zone_plane {
	enum edition edition;
	enum wind_roof roof;
	double theta;  /* rad */
	double length; /* along the eave, rake edge to rake edge, m */
	double slope;  /* up the slope, eave edge to ridge or upper edge, m */
	double beyond; /* roof beyond the upper edge of this plane, to the far eave edge, on plan,
			  m: 0 where the upper edge is a roof edge, the other plane's run on a gable
			*/
	double a;      /* zone width, m (asce7_zone_width) */
	double h;      /* mean roof height, m */
	double upper; /* length of the upper edge of a hip plane, m: 0 for the end; else not read */
};

struct zone_map {
	bool known; /* false: no zones for this form and slope */
	enum confidence confidence;
	const char *note; /* what the shapes rest on */
	int shapes;
	struct zone_shape shape[ZONE_SHAPE_MAX]; /* tile the plane: no gap, no overlap */
};

struct zone_map zone_map_of(const struct zone_plane *plane);

/* Zones of the chart for tilted collectors (ASCE/SEI 7-16 Fig. 29.4-7) on a roof of 7 degrees or
   less: strips 2 h wide along the roof edges, squares at the corners. */
struct zone_map zone_map_tilted(const struct zone_plane *plane);

/* The plane itself: rectangle, trapezoid or triangle. */
struct polygon zone_plane_outline(const struct zone_plane *plane);

/* Order of severity of the zones of a roof; a larger number is worse. zone_rank follows the
   coefficients: up to 27 degrees the ridge end is worst, above it the eave corner. */
typedef int zone_rank_fn(enum edition edition, double theta, enum zone z);
int zone_rank(enum edition edition, double theta, enum zone z);

/* Area of each zone that a rectangle (or any convex polygon of up to 8 vertices) touches, m2;
   returns how many zones. A touch of less than 1e-9 of the area does not count. */
int zone_areas(const struct zone_shape *shape, int shapes, const struct polygon *part,
	       double area[ZONE_COUNT]);
/* Worst zone touched, by rank (NULL: zone_rank); ZONE_COUNT if it touches none. */
enum zone zone_worst(const struct zone_shape *shape, int shapes, const struct polygon *part,
		     enum edition edition, double theta, zone_rank_fn *rank);

#endif
