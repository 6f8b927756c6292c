/* SPDX-License-Identifier: MIT */
/* Wind on the roof that one piece of a rafter carries, cut at the borders of zones and rows; each
   question is answered once. */
#include "check/rafter_load.h"

#include <math.h>

#include "check/attachment.h"
#include "check/check_steps.h"
#include "check/overhang.h"
#include "check/wind_rule.h"

#define ROW_MAX 16 /* LINE_MAX lines, two a row, cannot stand in more rows than this on a roof: checked by the reader */

/* Whether a border of a zone runs through this part of the roof other than straight along the eave. */
static bool zones_change(const struct result *r, double x0, double x1)
{
	for (int i = 0; i < r->shapes; i++) {
		const struct polygon *s = &r->shape[i].shape;

		for (int v = 0; v < s->n; v++) {
			const struct point a = s->at[v], b = s->at[(v + 1) % s->n];

			if (!same_value(a.y, b.y) && fmax(a.x, b.x) > x0 && fmin(a.x, b.x) < x1)
				return true;
		}
	}
	return false;
}

/* Neighbours of one width, between which no zone begins or ends, have the same wind: it is worked out for the first. */
int rafter_column(struct context *c, int rafter)
{
	for (int i = 0; i < c->r->frames && !c->columns_known; i++) {
		const double *x = c->r->frame_x, w = rafter_width(c, i);
		const bool alike = i > 0 && same_value(w, rafter_width(c, i - 1)) &&
		                   !zones_change(c->r, x[i - 1] - w / 2, x[i] + w / 2);

		c->column[i] = alike ? c->column[i - 1] : (unsigned char)i;
	}
	c->columns_known = true;
	return c->column[rafter];
}

/* Worst pressure of the zones that this piece of the rafter's strip touches, Pa, down positive. */
static double strip_wind(struct context *c, const struct rafter_place *p, double y0, double y1, bool lift, bool overhang)
{
	const double x = c->r->frame_x[p->rafter];
	const struct polygon strip = polygon_rectangle(x - p->width / 2, y0, x + p->width / 2, y1);
	const double length = p->length / c->cos_theta;
	const double A = length * fmax(p->width, length / 3); /* ASCE/SEI 7-16 26.2, effective wind area */
	double area[ZONE_COUNT], worst = 0;

	zone_areas(c->r->shape, c->r->shapes, &strip, area);
	for (int z = 0; z < (int)ZONE_COUNT; z++) {
		if (area[z] <= 0)
			continue;
		const struct wind_coefficient k =
			overhang ? overhang_coefficient(c, (enum zone)z, A, NULL)
				 : check_coefficient(c, (enum zone)z, lift ? WIND_UP : WIND_DOWN, A, NULL);

		c->coefficient_missing = c->coefficient_missing || !k.known;
		if (!k.known)
			continue;
		const double pressure = c->code->roof_pressure(c->code->edition, &c->wind, k.GCp, c->GCpi, true, NULL).p;

		worst = lift ? fmin(worst, pressure) : fmax(worst, pressure);
	}
	return worst;
}

/* The same, asked once: every load case asks for it again. */
static double roof_wind(struct context *c, const struct rafter_place *p, double y0, double y1, bool lift, bool overhang)
{
	const int column = rafter_column(c, p->rafter);
	const unsigned slot = (unsigned)column * 67u + (unsigned)(y0 * 1024) * 31u + (unsigned)(y1 * 1024) * 7u + lift +
	                      2u * overhang;
	bool *const known = &c->strip_known[slot % STRIP_MEMO];
	struct strip_memo *m = &c->strip[slot % STRIP_MEMO];
	const bool missing = c->coefficient_missing, matters = c->curve_matters;

	if (!*known || m->column != column || m->curve != c->curve || m->lift != lift || m->overhang != overhang ||
	    !same_value(m->y0, y0) ||
	    !same_value(m->y1, y1) || !same_value(m->length, p->length)) {
		c->coefficient_missing = c->curve_matters = false;
		const double pressure = strip_wind(c, p, y0, y1, lift, overhang);

		*known = true;
		*m = (struct strip_memo){ lift, c->coefficient_missing, c->curve_matters, overhang, c->curve, column, y0, y1,
			                  p->length, pressure };
	}
	c->coefficient_missing = missing || m->missing;
	c->curve_matters = matters || m->matters;
	return m->p;
}

/* Adds a border between the first cut and the last, in order; one that is there already is left out. */
static void cut_in(double *cut, int *cuts, double y)
{
	int at = *cuts - 1;

	if (y <= cut[0] || y >= cut[at])
		return;
	while (cut[at - 1] > y)
		at--;
	if (same_value(cut[at - 1], y))
		return;
	for (int k = *cuts; k > at; k--)
		cut[k] = cut[k - 1];
	cut[at] = y;
	(*cuts)++;
}

/* Borders of the zones and rows on a piece of a rafter, its ends included. */
#define CUT_MAX WIND_PIECES
static int cuts_of(const struct context *c, const struct rafter_place *p, double cut[CUT_MAX])
{
	const double over = c->job->building.eave_overhang;
	int cuts = 2;

	cut[0] = (p->start + over) / c->cos_theta;
	cut[1] = cut[0] + p->length / c->cos_theta;
	for (int i = 0; i < c->r->shapes; i++)
		for (int v = 0; v < c->r->shape[i].shape.n && v < 4; v++)
			cut_in(cut, &cuts, c->r->shape[i].shape.at[v].y);
	for (int row = 0; row < c->job->collector.rows && row < ROW_MAX; row++) {
		const struct rectangle *k = &c->r->collector[row * c->job->collector.columns];

		cut_in(cut, &cuts, k->y0);
		cut_in(cut, &cuts, k->y1);
	}
	return cuts;
}

/* Part of a piece's width that no collector covers. */
static double open_part(const struct context *c, double y, double share)
{
	for (int row = 0; row < c->job->collector.rows; row++) {
		const struct rectangle *k = &c->r->collector[row * c->job->collector.columns];

		if (y > k->y0 && y < k->y1)
			return 1 - share;
	}
	return 1;
}

double rafter_wind_tell(struct context *c, const struct rafter_place *p, double share, bool lift, struct trace *trace)
{
	const double length = p->length / c->cos_theta, half = p->width / 2, x = c->r->frame_x[p->rafter];
	double cut[CUT_MAX], area[ZONE_COUNT], worst = 0;
	struct wind_coefficient at = { 0 };
	const int cuts = cuts_of(c, p, cut);
	enum zone zone = ZONE_COUNT;

	const double A = STEP(trace, step_rafter_wind_area, length, p->width);

	for (int i = 0; i + 1 < cuts; i++) {
		const struct polygon strip = polygon_rectangle(x - half, cut[i], x + half, cut[i + 1]);

		if (cut[i + 1] - cut[i] < 1e-6 || open_part(c, (cut[i] + cut[i + 1]) / 2, share) < 1)
			continue;
		zone_areas(c->r->shape, c->r->shapes, &strip, area);
		for (int z = 0; z < (int)ZONE_COUNT; z++) {
			if (area[z] <= 0)
				continue;
			at = check_coefficient(c, (enum zone)z, lift ? WIND_UP : WIND_DOWN, A, NULL);
			if (at.known && fabs(at.GCp) > fabs(worst)) {
				worst = at.GCp;
				zone = (enum zone)z;
			}
		}
	}
	if (zone == ZONE_COUNT)
		return 0;
	at = check_coefficient(c, zone, lift ? WIND_UP : WIND_DOWN, A, trace);
	return c->code->roof_pressure(c->code->edition, &c->wind, at.GCp, c->GCpi, true, trace).p;
}

static double piece_wind(struct context *c, const struct rafter_place *p, double y0, double y1, double share, bool lift,
                         bool under)
{
	const double open = open_part(c, (y0 + y1) / 2, share);

	/* the collectors take the top of an overhang, not its underside */
	if (under) {
		const double net = roof_wind(c, p, y0, y1, true, true);
		const double top = roof_wind(c, p, y0, y1, true, false);

		return open * net + (1 - open) * fmin(0, net - top);
	}
	return open * roof_wind(c, p, y0, y1, lift, false);
}

/* Wind on the roof itself, piece by piece between the borders of zones and rows; none on the covered share. Neighbouring
   pieces with the same wind are one load. */
static void blow(struct context *c, const struct rafter_place *p, double share, bool lift, bool under, struct wind_memo *m)
{
	double cut[CUT_MAX];
	const int cuts = cuts_of(c, p, cut);

	m->pieces = 0;
	m->from = rafter_on_plan(c, cut[0]);
	for (int i = 0; i + 1 < cuts; i++) {
		if (cut[i + 1] - cut[i] < 1e-6)
			continue;
		const double w = piece_wind(c, p, cut[i], cut[i + 1], share, lift, under);

		if (m->pieces > 0 && same_value(m->w[m->pieces - 1], w))
			m->pieces--;
		else if (m->pieces > 0)
			m->to[m->pieces - 1] = rafter_on_plan(c, cut[i]);
		m->w[m->pieces++] = w;
	}
	if (m->pieces > 0)
		m->to[m->pieces - 1] = rafter_on_plan(c, cut[cuts - 1]);
}

const struct wind_memo *rafter_wind(struct context *c, const struct rafter_place *p, double share, bool lift,
                                    bool under)
{
	const int column = rafter_column(c, p->rafter);
	const unsigned slot = (unsigned)column * 13u + (unsigned)((p->start + 64) * 16) * 5u + (share > 0 ? 2u : 0u) + lift;
	bool *const known = &c->blown_known[slot % WIND_MEMO];
	struct wind_memo *m = &c->blown[slot % WIND_MEMO];
	const bool missing = c->coefficient_missing, matters = c->curve_matters;

	if (!*known || m->column != column || m->curve != c->curve || m->lift != lift || m->under != under ||
	    !same_value(m->start, p->start) ||
	    !same_value(m->length, p->length) || !same_value(m->share, share)) {
		c->coefficient_missing = c->curve_matters = false;
		blow(c, p, share, lift, under, m);
		*known = true;
		m->lift = lift;
		m->under = under;
		m->missing = c->coefficient_missing;
		m->matters = c->curve_matters;
		m->curve = c->curve;
		m->column = column;
		m->start = p->start;
		m->length = p->length;
		m->share = share;
	}
	c->coefficient_missing = missing || m->missing;
	c->curve_matters = matters || m->matters;
	return m;
}

