/* SPDX-License-Identifier: MIT */
/* Loads on one span of one rafter. The array's own loads come in as forces where its feet are; on the strip that the array
   covers the roof's snow, live load and wind are taken off, in the share of the rafter's width that is covered. The roof
   itself weighs everywhere. No load is shared with neighbouring rafters. */
#include "check/rafter_load.h"

#include <math.h>

#include "check/attachment.h"

#define ROW_MAX 16 /* LINE_MAX lines, two a row, cannot stand in more rows than this on a roof: checked by the reader */

static double clamp(double x, double low, double high)
{
	return fmin(fmax(x, low), high);
}

static double on_plan(const struct context *c, double y)
{
	return y * c->cos_theta - c->job->building.eave_overhang;
}

static double tributary_width(const struct result *r, int i, double spacing)
{
	const double left = i > 0 ? r->rafter_x[i] - r->rafter_x[i - 1] : spacing;
	const double right = i + 1 < r->rafters ? r->rafter_x[i + 1] - r->rafter_x[i] : spacing;

	return (left + right) / 2;
}

bool rafter_on_tail(const struct context *c, const struct attachment *a)
{
	return on_plan(c, a->y) < 0;
}

static bool carries_feet(const struct context *c, const struct pass *pass, const struct rafter_place *p)
{
	for (int i = 0; i < pass->attachments; i++) {
		const struct attachment *a = &pass->attachment[i];
		const double h = on_plan(c, a->y);

		if (a->rafter == p->rafter && h >= p->start && h <= p->start + p->length)
			return true;
	}
	return false;
}

int rafter_places(const struct context *c, const struct pass *pass, int rafter, struct rafter_place *out, int max)
{
	const struct job_building *b = &c->job->building;
	const double run = b->form == FORM_GABLE ? b->width / 2 : b->width;
	const double span = c->job->framing.span;
	const double width = tributary_width(c->r, rafter, c->job->framing.spacing);
	int n = 0;

	for (double start = 0; n < max && start < run - M_PER_FT; start += span) {
		const struct rafter_place p = { rafter, start, fmin(span, run - start), width };

		if (start + span > run && start > 0)
			out[n] = p;
		else
			out[n] = (struct rafter_place){ rafter, start, span, width };
		if (carries_feet(c, pass, &out[n]))
			n++;
	}
	if (n == 0)
		out[n++] = (struct rafter_place){ rafter, 0, span, width };
	return n;
}

/* Share of the rafter's width under the array. */
static double covered_share(const struct context *c, const struct rafter_place *p)
{
	const double x = c->r->rafter_x[p->rafter];
	const double left = fmax(x - p->width / 2, c->r->array.x0), right = fmin(x + p->width / 2, c->r->array.x1);

	return fmax(0, right - left) / p->width;
}

static void add(struct rafter_loads *l, const struct rafter_place *p, double from, double to, double vertical,
                double normal)
{
	const double x0 = clamp(from - p->start, 0, p->length), x1 = clamp(to - p->start, 0, p->length);

	if (x1 <= x0 || l->rafter.uniforms == sizeof l->uniform / sizeof *l->uniform)
		return;
	l->uniform[l->rafter.uniforms++] = (struct rafter_uniform){ x0, x1, vertical, normal };
}

/* A vertical load over the whole span, taken off again where the array covers it. */
static void add_plan(struct context *c, struct rafter_loads *l, const struct rafter_place *p, double pressure,
                     double share, bool gaps_covered)
{
	const int columns = c->job->collector.columns, rows = c->job->collector.rows;
	const double w = rafter_line_load_plan(NULL, pressure, p->width);

	if (pressure <= 0)
		return;
	add(l, p, p->start, p->start + p->length, w, 0);
	for (int row = 0; row < rows && share > 0; row++) {
		const struct rectangle *k = &c->r->collector[row * columns];
		const double top = gaps_covered && row + 1 < rows ? c->r->collector[(row + 1) * columns].y0 : k->y1;

		add(l, p, on_plan(c, k->y0), on_plan(c, top), -share * w, 0);
	}
}

/* Worst pressure of the zones that this piece of the rafter's strip touches, Pa, down positive. */
static double roof_wind(struct context *c, const struct rafter_place *p, double y0, double y1, bool lift)
{
	const double x = c->r->rafter_x[p->rafter];
	const struct polygon strip = polygon_rectangle(x - p->width / 2, y0, x + p->width / 2, y1);
	const double length = p->length / c->cos_theta;
	const double A = length * fmax(p->width, length / 3); /* ASCE/SEI 7-16 26.2, effective wind area */
	double area[ZONE_COUNT], worst = 0;

	zone_areas(c->r->shape, c->r->shapes, &strip, area);
	for (int z = 0; z < (int)ZONE_COUNT; z++) {
		if (area[z] <= 0)
			continue;
		const struct wind_coefficient k =
			check_coefficient(c, (enum zone)z, lift ? WIND_UP : WIND_DOWN, A, NULL);

		c->coefficient_missing = c->coefficient_missing || !k.known;
		if (!k.known)
			continue;
		const double pressure = c->code->roof_pressure(c->code->edition, &c->wind, k.GCp, c->GCpi, true, NULL).p;

		worst = lift ? fmin(worst, pressure) : fmax(worst, pressure);
	}
	return worst;
}

/* Wind on the roof itself, piece by piece between the borders of zones and rows; none on the covered share. */
static void add_wind(struct context *c, struct rafter_loads *l, const struct rafter_place *p, double factor,
                     double share, bool lift)
{
	const double over = c->job->building.eave_overhang;
	const double y0 = (p->start + over) / c->cos_theta, y1 = y0 + p->length / c->cos_theta;
	double cut[4 * ZONE_SHAPE_MAX + 2 * ROW_MAX + 2];
	int cuts = 0;

	cut[cuts++] = y0;
	cut[cuts++] = y1;
	for (int i = 0; i < c->r->shapes; i++)
		for (int v = 0; v < c->r->shape[i].shape.n && v < 4; v++)
			cut[cuts++] = clamp(c->r->shape[i].shape.at[v].y, y0, y1);
	for (int row = 0; row < c->job->collector.rows && row < ROW_MAX; row++) {
		const struct rectangle *k = &c->r->collector[row * c->job->collector.columns];

		cut[cuts++] = clamp(k->y0, y0, y1);
		cut[cuts++] = clamp(k->y1, y0, y1);
	}
	for (int i = 1; i < cuts; i++) /* insertion sort: few, nearly sorted */
		for (int k = i; k > 0 && cut[k] < cut[k - 1]; k--) {
			const double swap = cut[k];

			cut[k] = cut[k - 1];
			cut[k - 1] = swap;
		}
	for (int i = 0; i + 1 < cuts; i++) {
		const double middle = (cut[i] + cut[i + 1]) / 2;
		double open = 1;

		if (cut[i + 1] - cut[i] < 1e-6)
			continue;
		for (int row = 0; row < c->job->collector.rows; row++) {
			const struct rectangle *k = &c->r->collector[row * c->job->collector.columns];

			if (middle > k->y0 && middle < k->y1)
				open = 1 - share;
		}
		add(l, p, on_plan(c, cut[i]), on_plan(c, cut[i + 1]), 0,
		    factor * open * p->width * roof_wind(c, p, cut[i], cut[i + 1], lift));
	}
}

static void add_feet(struct context *c, const struct pass *pass, struct rafter_loads *l, const struct rafter_place *p,
                     const struct rafter_case *k)
{
	for (int i = 0; i < pass->attachments; i++) {
		const struct attachment *a = &pass->attachment[i];
		const double h = on_plan(c, a->y) - p->start;
		const double area = fmax(a->reaction_width, a->tributary_width) * a->tributary_depth;
		double normal = 0, slope;

		if (a->rafter != p->rafter || h < 0 || h > p->length ||
		    l->rafter.points == sizeof l->point / sizeof *l->point)
			continue;
		if (k->lift) {
			if (array_load_up(c, k->k, a->p_up, area, NULL, &normal, &slope))
				normal = -normal;
		} else {
			const double snow = k->snow_case < 0 ? 0 : array_snow(c, k->snow_case, a->tributary.y1);
			struct load_combination no_live = *k->k;

			no_live.Lr = 0; /* nobody stands on the array itself */
			array_load_down(c, &no_live, a->p_down, snow, area, NULL, &normal, &slope);
		}
		l->point[l->rafter.points++] = (struct rafter_point){ h, 0, normal };
	}
}

void rafter_load(struct context *c, const struct pass *pass, const struct rafter_place *place,
                 const struct rafter_case *k, struct rafter_loads *out)
{
	const double share = k->array ? covered_share(c, place) : 0;
	const struct load_combination *f = k->k;
	const bool gaps_covered = at_most(c->job->collector.row_gap, ROOM_TO_STAND);
	const double dead = rafter_line_load_slope(NULL, c->job->roof.dead_load, place->width, c->theta);

	out->rafter = (struct rafter){ .span = place->length, .theta = c->theta, .depth = c->job->framing.depth,
		                       .uniform = out->uniform, .point = out->point };
	add(out, place, place->start, place->start + place->length, f->D * dead, 0);
	add_plan(c, out, place, f->S * k->roof_snow, share, false);
	/* collectors that leave room to stand below them keep nobody off the roof */
	const double live_share = at_most(c->job->collector.clearance, ROOM_TO_STAND) ? share : 0;

	add_plan(c, out, place, f->Lr * c->r->Lr, live_share, gaps_covered);
	if (f->W > 0)
		add_wind(c, out, place, f->W, share, k->lift);
	if (k->array)
		add_feet(c, pass, out, place, k);
}
