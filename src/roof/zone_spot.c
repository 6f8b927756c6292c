/* SPDX-License-Identifier: MIT */
#include "roof/zone_spot.h"

#include <math.h>

struct spot zone_spot_at(const struct zone_plane *p, double x, double y)
{
	const double ridge = (p->slope - y) * cos(p->theta);

	return (struct spot){.rake = fmin(x, p->length - x),
			     .eave = y * cos(p->theta),
			     .ridge = ridge,
			     .far_eave = ridge + p->beyond};
}

enum zone zone_spot_flat(const struct zone_plane *p, struct spot s)
{
	const double u = s.rake, v = fmin(s.eave, s.far_eave), near = fmin(u, v),
		     other = fmax(u, v);

	if (p->edition == ASCE7_10) {
		if (near >= p->a)
			return ZONE_1;
		return other < p->a ? ZONE_3 : ZONE_2;
	}
	/* L at each corner: legs 0.6 h long, 0.2 h wide. */
	if (near < 0.2 * p->h && other < 0.6 * p->h)
		return ZONE_3;
	if (near < 0.6 * p->h)
		return ZONE_2;
	return near < 1.2 * p->h ? ZONE_1 : ZONE_1P;
}

static enum zone worse(const struct zone_plane *p, enum zone a, enum zone b)
{
	return zone_rank(p->edition, p->theta, b) > zone_rank(p->edition, p->theta, a) ? b : a;
}

static enum zone gable_zone_7_16(const struct zone_plane *p, struct spot s)
{
	const bool rake = s.rake < p->a, eave = s.eave < p->a, ridge = s.ridge < p->a;
	enum zone z = ZONE_1;

	if (eave)
		z = worse(p, z, ZONE_2E);
	if (ridge)
		z = worse(p, z, ZONE_2R);
	if (rake)
		z = worse(p, z, ZONE_2N);
	if (rake && eave)
		z = worse(p, z, ZONE_3E);
	if (rake && ridge)
		z = worse(p, z, ZONE_3R);
	return z;
}

/* What the zones of 7-16 are called in 7-22. */
static enum zone renamed_7_22(enum zone z, bool steep)
{
	switch (z) {
	case ZONE_2N:
		return ZONE_2;
	case ZONE_2R:
		return steep ? ZONE_1 : ZONE_2;
	case ZONE_3E:
		return steep ? ZONE_3 : ZONE_2;
	case ZONE_3R:
		return steep ? ZONE_2 : ZONE_3;
	case ZONE_1P:
	case ZONE_1:
	case ZONE_2:
	case ZONE_2P:
	case ZONE_2E:
	case ZONE_3:
	case ZONE_3P:
	case ZONE_COUNT:
		break;
	}
	return ZONE_1;
}

enum zone zone_spot_gable(const struct zone_plane *p, struct spot s)
{
	const enum zone z = gable_zone_7_16(p, s);

	if (p->edition == ASCE7_22)
		return renamed_7_22(z, !at_most(p->theta, 27.0 * RAD_PER_DEG));
	if (p->edition == ASCE7_10) {
		if (z == ZONE_3E || z == ZONE_3R)
			return ZONE_3;
		return z == ZONE_1 ? ZONE_1 : ZONE_2;
	}
	return z;
}

/* 3 to 10 degrees has primed zones at the high edge; 10 to 30 has none. */
enum zone zone_spot_monoslope(const struct zone_plane *p, struct spot s)
{
	const bool low_figure = at_most(p->theta, 10.0 * RAD_PER_DEG);
	const double two = 2.0 * p->a, four = 4.0 * p->a, high = s.far_eave;

	if ((high < two && s.rake < four) || (high < four && s.rake < two))
		return low_figure ? ZONE_3P : ZONE_3;
	if (s.eave < two && s.rake < two)
		return ZONE_3;
	if (high < four || s.rake < two)
		return low_figure ? ZONE_2P : ZONE_2;
	return s.eave < two ? ZONE_2 : ZONE_1;
}

enum zone zone_spot_tilted(const struct zone_plane *p, struct spot s)
{
	const double u = s.rake, v = fmin(s.eave, s.far_eave), strip = 2.0 * p->h;

	if (fmin(u, v) >= strip)
		return ZONE_1;
	return fmax(u, v) < strip ? ZONE_3 : ZONE_2;
}
