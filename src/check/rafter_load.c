/* SPDX-License-Identifier: MIT */
/* Loads on one span of one rafter. The array's own loads come in as forces where its feet are; on the strip that the array
   covers the roof's snow, live load and wind are taken off, in the share of the rafter's width that is covered. The roof
   itself weighs everywhere. No load is shared with neighbouring rafters. */
#include "check/rafter_load.h"

#include <math.h>

#include "check/place.h"
#include "check/load_case.h"
#include "check/wind_rule.h"
#include "table/lookup_limit.h"

static double clamp(double x, double low, double high)
{
	return fmin(fmax(x, low), high);
}

double rafter_width(const struct context *c, int i)
{
	const struct result *r = c->r;
	const double spacing = c->job->framing.spacing;
	const double left = i > 0 ? r->frame_x[i] - r->frame_x[i - 1] : spacing;
	const double right = i + 1 < r->frames ? r->frame_x[i + 1] - r->frame_x[i] : spacing;

	const double width = (left + right) / 2;

	/* a regular row of rafters carries alike: the last bits of their places do not count */
	return at_most(width, spacing) && at_least(width, spacing) ? spacing : width;
}

bool rafter_on_tail(const struct context *c, const struct attachment *a)
{
	return rafter_on_plan(c, a->y) < 0 || (plane_beyond(c) <= 0 && rafter_on_plan(c, a->y) > plane_run(c));
}

static bool carries_feet(const struct context *c, const struct pass *pass, const struct rafter_place *p)
{
	for (int i = 0; i < pass->attachments; i++) {
		const struct attachment *a = &pass->attachment[i];
		const double h = rafter_on_plan(c, a->y);

		if (place_share(c->r, a->rafter, p->rafter) > 0 && h >= p->start && h <= p->start + p->length)
			return true;
	}
	return false;
}

double rafter_next_support(const struct context *c, double start, double run, double span)
{
	const struct job_framing *f = &c->job->framing;

	if (!(f->inner_support > 0))
		return start + span;
	for (int i = -1; i < f->supports; i++) {
		const double inner = i < 0 ? f->inner_support : f->support[i];

		if (start < inner && inner < run - M_PER_FT)
			return inner;
	}
	return fmax(run, start + M_PER_FT);
}

int rafter_places(const struct context *c, const struct pass *pass, int rafter, struct rafter_place *out, int max)
{
	const double run = plane_run_at(c, c->r->frame_x[rafter]);
	/* a jack rafter ends at the hip */
	const double span = run < plane_run(c) ? fmin(c->job->framing.span, fmax(run, M_PER_FT))
	                                       : c->job->framing.span;
	const double width = rafter_width(c, rafter);
	int n = 0;

	double start = 0, end;

	for (; n < max && start < run - M_PER_FT; start = end) {
		end = rafter_next_support(c, start, run, span);
		/* what is left of the run after the last whole span is a shorter one */
		out[n] = (struct rafter_place){ rafter, start, end > run && start > 0 ? run - start : end - start, width };
		if (carries_feet(c, pass, &out[n]))
			n++;
	}
	if (n == 0)
		out[n++] = (struct rafter_place){ rafter, 0, rafter_next_support(c, 0, run, span), width };
	return n;
}

double rafter_covered(const struct context *c, const struct rafter_place *p)
{
	const double x = c->r->frame_x[p->rafter];
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

		add(l, p, rafter_on_plan(c, k->y0), rafter_on_plan(c, top), -share * w, 0);
	}
}

static void add_wind(struct context *c, struct rafter_loads *l, const struct rafter_place *p, double factor,
                     double share, const struct rafter_case *load)
{
	const struct wind_memo *m = rafter_wind(c, p, share, load->lift, load->lift && load->under);
	double from = m->from;

	for (int i = 0; i < m->pieces; i++) {
		const double w = m->w[i] * (factor * p->width);

		/* what differs by the last bit may be the same by now */
		if (i + 1 < m->pieces && same_value(w, m->w[i + 1] * (factor * p->width)))
			continue;
		add(l, p, from, m->to[i], 0, w);
		from = m->to[i];
	}
}

/* Part of a force on one rafter that another one carries: all of it on its own, unless the job says with reason that
   the deck hands some to the two neighbours. At the end of the roof there is one neighbour, who gets no more. */
static double handed(const struct context *c, int from, int rafter)
{
	const double given = c->job->framing.sharing, s = isfinite(given) && given > 0 ? given : 0;

	if (from == rafter)
		return from > 0 && from + 1 < c->r->frames ? 1 - s : 1 - s / 2;
	return from == rafter + 1 || from == rafter - 1 ? s / 2 : 0;
}

double rafter_share(const struct context *c, int place, int rafter)
{
	const struct stand *p = &c->r->place[place];

	if (p->frame < 0)
		return 0;
	return p->right > 0 ? (1 - p->right) * handed(c, p->frame, rafter) + p->right * handed(c, p->frame + 1, rafter)
	                    : handed(c, p->frame, rafter);
}

static void add_feet(struct context *c, const struct pass *pass, struct rafter_loads *l, const struct rafter_place *p,
                     const struct rafter_case *k)
{
	for (int i = 0; i < pass->attachments; i++) {
		const struct attachment *a = &pass->attachment[i];
		const double h = rafter_on_plan(c, a->y) - p->start;

		if (h < 0 || h > p->length)
			continue;
		const double area = fmax(a->reaction_width, a->tributary_width) * a->tributary_depth;
		const double share = rafter_share(c, a->rafter, p->rafter);
		double normal = 0, slope = 0;

		if (share <= 0 || l->rafter.points == sizeof l->point / sizeof *l->point)
			continue;
		if (k->lift) {
			if (array_load_up(c, k->k, a->p_up, area, NULL, &normal, &slope))
				normal = -(normal - slope * a->tip);
		} else if (k->quake != 0) {
			const double snow = k->snow_case < 0 ? 0 : (1 - k->snow_off) * array_snow(c, k->snow_case, a->tributary.y1);

			array_load_quake(c, k->k, k->quake, snow, area, NULL, &normal, &slope);
			normal += slope * a->tip;
		} else {
			const double snow = k->snow_case < 0 ? 0 : (1 - k->snow_off) * array_snow(c, k->snow_case, a->tributary.y1);
			struct load_combination no_live = *k->k;

			no_live.Lr = 0; /* nobody stands on the array itself */
			array_load_down(c, &no_live, a->p_down, snow, area, NULL, &normal, &slope);
			normal += slope * a->tip;
		}
		l->point[l->rafter.points++] = (struct rafter_point){ h, 0, share * normal };
	}
}

/* Drift on the roof beside the array, in four steps that hold the falling load inside. */
static void add_drift(struct context *c, struct rafter_loads *l, const struct rafter_place *p, const struct rafter_case *k,
                      double share)
{
	const int steps = 4;

	if (!k->array || k->snow_case < 0 || share <= 0)
		return;
	const struct snow_load_case *s = &c->snow.snow[k->snow_case];
	const double part = s->beside_length / steps;
	const double low = rafter_on_plan(c, c->r->array.y0), high = rafter_on_plan(c, c->r->array.y1);

	for (int i = 0; i < steps && s->beside > 0; i++) {
		const double w = rafter_line_load_plan(NULL, k->k->S * s->beside * (steps - i) / steps, p->width);

		add(l, p, high + i * part, high + (i + 1) * part, w, 0);
		add(l, p, low - (i + 1) * part, low - i * part, w, 0);
	}
}

/* Snow slid off each row, on the strip of roof at its foot. */
static void add_strip(struct context *c, struct rafter_loads *l, const struct rafter_place *p, const struct rafter_case *k,
                      double share)
{
	if (!k->array || k->snow_case < 0 || share <= 0)
		return;
	const struct snow_load_case *s = &c->snow.snow[k->snow_case];

	for (int row = 0; row < c->job->collector.rows && s->strip > 0; row++) {
		const double foot = rafter_on_plan(c, c->r->collector[row * c->job->collector.columns].y0);

		add(l, p, foot - s->strip_width, foot, rafter_line_load_plan(NULL, k->k->S * s->strip, p->width), 0);
	}
}

void rafter_load(struct context *c, const struct pass *pass, const struct rafter_place *place,
                 const struct rafter_case *k, struct rafter_loads *out)
{
	const double share = k->array ? rafter_covered(c, place) : 0;
	const struct load_combination *f = k->k;
	const bool gaps_covered = at_most(c->job->collector.row_gap, limit_of(LIMIT_ROOM_TO_STAND));
	const double dead = rafter_line_load_slope(NULL, c->job->roof.dead_load, place->width, c->theta);

	out->rafter = (struct rafter){ .span = place->length, .theta = c->theta, .depth = c->job->framing.depth,
		                       .uniform = out->uniform, .point = out->point };
	/* the roof shakes up and down with the ground; what it weighs sideways goes through its deck to the walls */
	const double shaken = f->D + (k->quake != 0 ? f->Ev * c->quake.vertical : 0);

	add(out, place, place->start, place->start + place->length, shaken * dead, 0);
	add_plan(c, out, place, (1 - k->snow_off) * f->S * k->roof_snow, share, false);
	add_drift(c, out, place, k, share);
	add_strip(c, out, place, k, share);
	/* collectors that leave room to stand below them keep nobody off the roof */
	const double live_share = at_most(c->job->collector.clearance, limit_of(LIMIT_ROOM_TO_STAND)) ? share : 0;

	add_plan(c, out, place, f->Lr * c->r->Lr, live_share, gaps_covered);
	if (f->W > 0)
		add_wind(c, out, place, f->W, share, k);
	if (k->array)
		add_feet(c, pass, out, place, k);
}
