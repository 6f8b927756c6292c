/* SPDX-License-Identifier: MIT */
/* Foot and screw of a section, from the job alone: where the head sits and how far the screw
   reaches is what the check computed. */
#include <math.h>

#include "drawing/dimension.h"
#include "sheet/section.h"

#define POST_HALF 0.019
#define PLATE_HALF 0.05 /* half length of a base whose lever arm is not known */

struct foot {
	double D, head, tip, face; /* v of the head's underside, the tip, the rafter's upper face */
	double plate;              /* thickness of the base plate */
	double half;               /* half its length */
	double rail;               /* v of the rail line */
};

/* Of the library's usual seam of this kind, m. */
static double seam_height(const struct section *x)
{
	const struct section_layer *seam = section_find(x, "seam");

	return seam ? section_size(seam, "height", 0) : 0;
}

static struct foot foot_of(const struct section *x)
{
	const struct job *job = x->s->job;
	struct foot f = {
		.D = job->fastener.diameter, .face = -x->deck, .plate = job->mount.plate_thickness};
	const double t_up = x->s->r->fastener.t_up > 0 ? x->s->r->fastener.t_up : f.plate + x->deck;

	f.head = f.face + t_up;
	f.tip = f.head;
	if (sheet_has_screw(job))
		f.tip -= job->fastener.length;
	if (sheet_on_seams(job))
		f.head = f.tip = section_top(x, 0) + seam_height(x);
	f.half = isnan(job->mount.lever_arm) ? PLATE_HALF : job->mount.lever_arm;
	if (sheet_has_screw(job) && job->fastener.count > 1 && !isnan(job->fastener.spacing))
		f.half = fmax(f.half,
			      (job->fastener.count - 1) * job->fastener.spacing / 2 + 2 * f.D);
	f.rail = f.head + job->mount.height;
	return f;
}

void section_foot_extent(struct section *x)
{
	const struct foot f = foot_of(x);
	const double low = fmin(-x->deck - x->s->job->framing.depth, f.tip);
	const double underside = section_top(x, 0) + x->s->job->collector.clearance;

	x->u0 = fmin(x->u0, -f.half - 0.05);
	x->u1 = fmax(x->u1, f.half + 0.05);
	x->under_collector = underside < f.rail + 0.2 ? underside : (double)NAN;
	section_reach(x, x->u0, low);
	section_reach(x, x->u1, low);
	section_reach(x, -POST_HALF, f.rail + 0.02);
	if (!isnan(x->under_collector)) {
		section_reach(x, x->u0, underside);
		section_reach(x, x->u1, underside);
	}
}

static void thread(struct section *x, double u, double r, double top, double bottom)
{
	const double pitch = fmax(1.6 * r, 0.7 * MM * x->scale.ratio);

	for (double v = top; v > bottom + pitch / 2; v -= pitch)
		drawing_line_as(x->d, LAYER_MATERIAL, 0.13 * MM, DASH_SOLID,
				(struct point){u - r, v - pitch / 2}, (struct point){u + r, v});
}

static void screw(struct section *x, const struct foot *f, double u)
{
	const struct fastener_result *r = &x->s->r->fastener;
	const double tip = r->p_tot > 0 ? r->p_tot - r->p : f->D / 2, half = f->D / 2;
	const double given = x->s->job->fastener.thread_length;
	const double T = isnan(given) ? fmax(r->p_t + tip, f->D) : given;
	const struct point body[] = {{u - half, f->head},
				     {u - half, f->tip + tip},
				     {u, f->tip},
				     {u + half, f->tip + tip},
				     {u + half, f->head}};

	section_area(x, FILL_WHITE, body, 5);
	thread(x, u, half, fmin(f->tip + T, f->head), f->tip + tip);
	section_block(x, FILL_BLACK, u - 1.6 * half, f->head, u + 1.6 * half,
		      f->head + 0.65 * f->D);
}

static void seat(struct section *x, const struct foot *f)
{
	const double under = f->head - f->plate;

	if (x->s->job->mount.seat == SEAT_RIGID_POST && under > f->face + 1e-4) {
		const struct point at[] = {{-f->half, f->face},
					   {f->half, f->face},
					   {f->half, under},
					   {-f->half, under}};

		section_area(x, FILL_WHITE, at, 4);
		drawing_line(x->d, LAYER_MATERIAL, at[0], at[2]);
		drawing_line(x->d, LAYER_MATERIAL, at[1], at[3]);
		section_name(x, -0.9 * f->half, (f->face + under) / 2,
			     "rigid post or block, itself fixed to the rafter");
	} else if (x->s->job->mount.seat == SEAT_ON_WOOD && under < -1e-4) {
		section_block(x, FILL_WHITE, -f->half, f->face, f->half, 0);
		section_name(x, -0.9 * f->half, -x->deck / 2,
			     "deck cut out: the base bears on the wood");
	}
	section_block(x, FILL_GREY, -f->half, under, f->half, f->head);
	section_name(x, 0.9 * f->half, f->head - f->plate / 2,
		     sheet_text(x->s, "base plate %s", sheet_size(x->s, f->plate)));
}

static void post(struct section *x, const struct foot *f)
{
	const double half = fmin(POST_HALF, 0.5 * f->half), r = 0.016;

	section_block(x, FILL_WHITE, -half, f->head, half, f->rail - r);
	section_block(x, FILL_WHITE, -r, f->rail - r, r, f->rail + r);
	drawing_line(x->d, LAYER_THIN, (struct point){-r, f->rail - r},
		     (struct point){r, f->rail + r});
	drawing_line(x->d, LAYER_THIN, (struct point){-r, f->rail + r},
		     (struct point){r, f->rail - r});
	section_name(x, r, f->rail,
		     sheet_text(x->s, "rail line, %s above the %s",
				sheet_size(x->s, x->s->job->mount.height),
				sheet_on_seams(x->s->job) ? "seam" : "base plate"));
}

static void collector(struct section *x)
{
	const double v = x->under_collector;

	if (isnan(v))
		return;
	drawing_line_as(x->d, LAYER_COLLECTOR, 0.5 * MM, DASH_SHORT_DASH, (struct point){x->u0, v},
			(struct point){x->u1, v});
	section_name(x, x->u1 - 0.02 * (x->u1 - x->u0), v,
		     sheet_text(x->s, "underside of the collector, %s above the roof",
				sheet_size(x->s, x->s->job->collector.clearance)));
}

/* One line for each length of the screw, left of the foot, with a letter; the letters are explained
 * below the drawing. */
static void lengths(struct section *x, const struct foot *f)
{
	const struct sheet *s = x->s;
	const struct fastener_result *r = &s->r->fastener;
	const struct job_fastener *k = &s->job->fastener;
	const double row = k->count > 1 && !isnan(k->spacing) ? (k->count - 1) * k->spacing / 2 : 0;
	const double side = -row - f->D / 2, edge = fmax(f->half + side, 0) / x->scale.ratio,
		     step = 6 * MM;

	dimension_between(x->d, (struct point){side, f->tip}, (struct point){side, f->head},
			  edge + 4 * step, "L");
	section_key(x, "L", k->length, "length of the screw under its head");
	if (!(r->p_tot > 0))
		return;
	const double end = f->face - r->p;

	dimension_between(x->d, (struct point){side, f->face}, (struct point){side, f->head},
			  edge + 3 * step, "A");
	section_key(x, "A", r->t_up, "head to the rafter's upper face");
	dimension_between(x->d, (struct point){side, end}, (struct point){side, f->face},
			  edge + 2 * step, "P");
	section_key(x, "P", r->p, "in the rafter, tip not counted");
	dimension_between(x->d, (struct point){side, end}, (struct point){side, end + r->p_t},
			  edge + step, "T");
	section_key(x, "T", r->p_t, "of it thread");
}

static void screw_words(struct section *x, const struct foot *f)
{
	const struct job_fastener *k = &x->s->job->fastener;
	const struct fastener_result *r = &x->s->r->fastener;
	const char *lead = "";

	if (!isnan(r->lead_hole_low) && r->lead_hole_low > 0)
		lead = sheet_text(x->s, ", lead hole %s",
				  sheet_drill(x->s, r->lead_hole_low, r->lead_hole_high));
	section_name(x, k->count > 1 ? k->spacing * (k->count - 1) / 2 : 0,
		     f->face - 0.35 * (f->face - f->tip),
		     sheet_text(x->s, "%d screw%s %s x %s%s", k->count, k->count > 1 ? "s" : "",
				sheet_size(x->s, k->diameter), sheet_size(x->s, k->length), lead));
}

/* A seam seen from its side, and the clamp that grips it: nothing goes through. */
static void clamp(struct section *x, const struct foot *f)
{
	const double low = section_top(x, 0);

	section_block(x, FILL_LIGHT, x->u0, low, x->u1, f->head);
	section_block(x, FILL_GREY, -0.6 * f->half, low + 0.25 * (f->head - low), 0.6 * f->half,
		      f->head + 0.006);
	section_name(x, x->u1 - 0.3 * (x->u1 - x->u0), (low + f->head) / 2,
		     "seam, seen from its side");
	section_name(x, 0.5 * f->half, low + 0.6 * (f->head - low),
		     "clamp on the seam: no hole; set screws to the maker's torque");
}

void section_foot(struct section *x)
{
	const struct foot f = foot_of(x);
	const struct job_fastener *k = &x->s->job->fastener;
	const double spacing = isnan(k->spacing) ? 0 : k->spacing;

	if (sheet_on_seams(x->s->job))
		clamp(x, &f);
	else
		seat(x, &f);
	post(x, &f);
	collector(x);
	if (!sheet_has_screw(x->s->job))
		return;
	for (int i = 0; i < k->count; i++)
		screw(x, &f, (i - (k->count - 1) / 2.0) * spacing);
	screw_words(x, &f);
	lengths(x, &f);
}
