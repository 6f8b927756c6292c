/* SPDX-License-Identifier: MIT */
#include "roof/zone.h"

#include <math.h>

const char *zone_text(enum zone z)
{
	static const char *const text[ZONE_COUNT] = {
#define Z(id, text) [ZONE_##id] = text,
		ZONES(Z)
#undef Z
	};

	return z >= 0 && z < ZONE_COUNT ? text[z] : "";
}

int zone_rank(enum edition edition, double theta, enum zone z)
{
	/* Over 27 degrees the eave corner is the worst, up to 27 the ridge end (coefficients of the
	   figures). */
	const bool steep = !at_most(theta, 27.0 * RAD_PER_DEG);

	(void)edition;
	switch (z) {
	case ZONE_1P:
		return 1;
	case ZONE_1:
		return 2;
	case ZONE_2E:
		return 3;
	case ZONE_2R:
		return 4;
	case ZONE_2:
	case ZONE_2N:
		return 5;
	case ZONE_2P:
		return 6;
	case ZONE_3E:
		return steep ? 7 : 6;
	case ZONE_3R:
		return steep ? 6 : 7;
	case ZONE_3:
		return 8;
	case ZONE_3P:
		return 9;
	case ZONE_COUNT:
		break;
	}
	return 0;
}

struct polygon zone_plane_outline(const struct zone_plane *p)
{
	struct polygon plane = polygon_rectangle(0.0, 0.0, p->length, p->slope);
	const double in = 0.5 * (p->length - p->upper);

	if (p->roof != WIND_ROOF_HIP)
		return plane;
	plane.at[2].x = p->length - in;
	plane.at[3].x = in;
	/* closer than a millionth: a point */
	if (p->upper < 1e-6 * p->length)
		plane.n = 3;
	return plane;
}

int zone_areas(const struct zone_shape *shape, int shapes, const struct polygon *part,
	       double area[ZONE_COUNT])
{
	const double whole = polygon_area(part);
	int touched = 0;

	for (int z = 0; z < ZONE_COUNT; z++)
		area[z] = 0.0;
	for (int i = 0; i < shapes; i++)
		if (!polygon_apart(part, &shape[i].shape))
			area[shape[i].zone] += polygon_common(part, &shape[i].shape);
	for (int z = 0; z < ZONE_COUNT; z++) {
		if (area[z] < 1e-9 * whole)
			area[z] = 0.0;
		touched += area[z] > 0.0;
	}
	return touched;
}

enum zone zone_worst(const struct zone_shape *shape, int shapes, const struct polygon *part,
		     enum edition edition, double theta, zone_rank_fn *rank)
{
	double area[ZONE_COUNT];
	enum zone worst = ZONE_COUNT;
	int worst_rank = 0;

	if (rank == NULL)
		rank = zone_rank;
	zone_areas(shape, shapes, part, area);
	for (int z = 0; z < ZONE_COUNT; z++) {
		if (area[z] > 0.0 &&
		    (worst == ZONE_COUNT || rank(edition, theta, (enum zone)z) > worst_rank)) {
			worst = (enum zone)z;
			worst_rank = rank(edition, theta, (enum zone)z);
		}
	}
	return worst;
}
