/* SPDX-License-Identifier: MIT */
/* Zone maps: ASCE/SEI 7-10 Figs. 30.4-2A to 2C; 7-16 and 7-22 Figs. 30.3-2A to 2D. Every zone of a
   rectangular plane is bounded by lines parallel to its edges, so the plane is cut into a grid
   along all those lines and each cell is judged at its middle; neighbours of one zone are joined.
   So the shapes tile the plane by construction.

   Widths are measured on plan from the roof edge, overhang included (from memory), and are longer
   up the slope by 1/cos theta. Where strips overlap on a small plane the worse zone is taken. The
   gable maps of 7-22 are those of 7-16 with the zones joined as its figures join them (inferred:
   check the figures).

   Monoslopes: the figures' widths are not confirmed (2 a and 4 a are remembered, and two public
   readings differ), so every strip and corner is drawn at the largest of them: an envelope.

   A gable of 7 degrees or less is one flat roof: its zones come from the edges of the whole plan,
   so the far eave may reach over the ridge. */
#include "roof/zone.h"

#include <math.h>

#include "roof/zone_hip.h"
#include "roof/zone_spot.h"

/* Lines that bound cells in one direction: rising, from 0 to the end. 8: 0, three from each side,
   the end. */
struct grid {
	int n;
	double at[8];
};

static void add_line(struct grid *g, double end, double at)
{
	int i = g->n;

	/* Lines nearer than a millionth of the plane to another one bound nothing. */
	for (int k = 0; k < g->n; k++)
		if (fabs(g->at[k] - at) < 1e-6 * end)
			return;
	if (at < 0.0 || at > end)
		return;
	for (; i > 0 && g->at[i - 1] > at; i--)
		g->at[i] = g->at[i - 1];
	g->at[i] = at;
	g->n++;
}

static void add_lines(struct grid *gx, struct grid *gy, const struct zone_plane *p, double width,
		      double beyond)
{
	const double up = width / cos(p->theta);

	add_line(gx, p->length, width);
	add_line(gx, p->length, p->length - width);
	add_line(gy, p->slope, up);
	add_line(gy, p->slope, p->slope - up + beyond / cos(p->theta));
}

static void fill(struct zone_map *m, const struct zone_plane *p, const struct grid *gx,
		 const struct grid *gy,
		 zone_spot_fn *zone_at)
{
	for (int j = 0; j + 1 < gy->n; j++) {
		for (int i = 0; i + 1 < gx->n; i++) {
			const double x = 0.5 * (gx->at[i] + gx->at[i + 1]),
				     y = 0.5 * (gy->at[j] + gy->at[j + 1]);
			const enum zone z = zone_at(p, zone_spot_at(p, x, y));
			struct zone_shape *last = m->shapes > 0 ? &m->shape[m->shapes - 1] : NULL;

			if (i > 0 && last->zone == z) {
				last->shape.at[1].x = last->shape.at[2].x = gx->at[i + 1];
				continue;
			}
			m->shape[m->shapes].zone = z;
			m->shape[m->shapes].shape = polygon_rectangle(gx->at[i], gy->at[j],
								      gx->at[i + 1], gy->at[j + 1]);
			m->shapes++;
		}
	}
}

enum map_kind { MAP_NONE, MAP_FLAT, MAP_GABLE, MAP_HIP, MAP_MONOSLOPE };

static enum map_kind map_kind(const struct zone_plane *p)
{
	if (!(p->length > 0.0 && p->slope > 0.0 && p->a > 0.0 && p->h > 0.0 && p->theta >= 0.0))
		return MAP_NONE;
	switch (p->roof) {
	case WIND_ROOF_FLAT:
		return at_most(p->theta, 7.0 * RAD_PER_DEG) ? MAP_FLAT : MAP_NONE;
	case WIND_ROOF_MONOSLOPE:
		if (at_most(p->theta, 3.0 * RAD_PER_DEG))
			return MAP_FLAT;
		return at_most(p->theta, 45.0 * RAD_PER_DEG) ? MAP_MONOSLOPE : MAP_NONE;
	case WIND_ROOF_GABLE:
		if (at_most(p->theta, 7.0 * RAD_PER_DEG))
			return MAP_FLAT;
		return at_most(p->theta, 45.0 * RAD_PER_DEG) ? MAP_GABLE : MAP_NONE;
	case WIND_ROOF_HIP:
		if (at_most(p->theta, 7.0 * RAD_PER_DEG))
			return MAP_FLAT;
		return at_most(p->theta, 45.0 * RAD_PER_DEG) ? MAP_HIP : MAP_NONE;
	case WIND_ROOF_COUNT:
		break;
	}
	return MAP_NONE;
}

/* A hip plane is narrower than the rectangle around it. */
static void clip_to_plane(struct zone_map *m, const struct zone_plane *p)
{
	const struct polygon plane = zone_plane_outline(p);
	int kept = 0;

	for (int i = 0; i < m->shapes; i++) {
		const struct polygon inside = polygon_clip(&m->shape[i].shape, &plane);

		if (polygon_area(&inside) < 1e-9 * p->length * p->slope)
			continue;
		m->shape[kept].zone = m->shape[i].zone;
		m->shape[kept++].shape = inside;
	}
	m->shapes = kept;
}

struct zone_map zone_map_tilted(const struct zone_plane *p)
{
	struct zone_map m = {.known = false};
	struct grid gx = {.n = 2, .at = {0.0, p->length}}, gy = {.n = 2, .at = {0.0, p->slope}};

	if (!(p->length > 0.0 && p->slope > 0.0 && p->h > 0.0 && p->theta >= 0.0) ||
	    !at_most(p->theta, 7.0 * RAD_PER_DEG))
		return m;
	add_lines(&gx, &gy, p, 2.0 * p->h, p->beyond);
	fill(&m, p, &gx, &gy, zone_spot_tilted);
	clip_to_plane(&m, p);
	m.known = true;
	m.confidence = FROM_MEMORY;
	m.note = "strips of 2 h confirmed, the corner square from memory";
	return m;
}

static const char *map_note(enum map_kind kind, enum edition edition)
{
	if (kind == MAP_MONOSLOPE)
		return "an envelope: strips of the figures are remembered as 2 a and 4 a wide, and "
		       "the largest is taken everywhere";
	if (kind == MAP_HIP && edition == ASCE7_22)
		return "strips along eave, hips and ridge as a reading of the pages of 7-22 has "
		       "them; the whole eave strip counts as zone 3 (safe side)";
	if (kind == MAP_HIP)
		return "strips along eave, hips and ridge from memory, corners where they overlap";
	if (edition == ASCE7_22)
		return "zones as a reading of the pages of 7-22 has them; widths are measured on "
		       "plan from the roof edge, overhang included (from memory)";
	return "widths are measured on plan from the roof edge, overhang included (from memory)";
}

struct zone_map zone_map_of(const struct zone_plane *p)
{
	const enum map_kind kind = map_kind(p);
	struct zone_map m = {.known = false};
	struct grid gx = {.n = 2, .at = {0.0, p->length}}, gy = {.n = 2, .at = {0.0, p->slope}};

	switch (kind) {
	case MAP_NONE:
		return m;
	case MAP_FLAT:
		if (p->edition == ASCE7_10) {
			add_lines(&gx, &gy, p, p->a, p->beyond);
		} else {
			add_lines(&gx, &gy, p, 0.2 * p->h, p->beyond);
			add_lines(&gx, &gy, p, 0.6 * p->h, p->beyond);
			add_lines(&gx, &gy, p, 1.2 * p->h, p->beyond);
		}
		fill(&m, p, &gx, &gy, zone_spot_flat);
		if (p->roof == WIND_ROOF_HIP)
			clip_to_plane(&m, p);
		break;
	case MAP_GABLE:
		add_lines(&gx, &gy, p, p->a, 0.0);
		fill(&m, p, &gx, &gy, zone_spot_gable);
		break;
	case MAP_MONOSLOPE:
		add_lines(&gx, &gy, p, 2.0 * p->a, 0.0);
		add_lines(&gx, &gy, p, 4.0 * p->a, 0.0);
		fill(&m, p, &gx, &gy, zone_spot_monoslope);
		break;
	case MAP_HIP:
		zone_hip_fill(&m, p);
		break;
	}
	m.known = true;
	m.confidence = kind == MAP_MONOSLOPE ? SAFE_SIDE : FROM_MEMORY;
	m.note = map_note(kind, p->edition);
	return m;
}
