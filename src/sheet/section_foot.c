/* SPDX-License-Identifier: MIT */
/* Foot of a section, from the job alone: where the head of its screw sits is what the check
   computed. */
#include <math.h>

#include "sheet/section.h"

#define POST_HALF 0.019
#define PLATE_HALF 0.05 /* half length of a base whose lever arm is not known */

/* Of the library's usual seam of this kind, m. */
static double seam_height(const struct section *x)
{
	const struct section_layer *seam = section_find(x, "seam");

	return seam ? section_size(seam, "height", 0) : 0;
}

/* What lies between base plate and wood, as the check takes it. */
static double layers(const struct section *x)
{
	const struct job *job = x->s->job;
	const double covering = isnan(job->roof.built_up) ? section_top(x, 0) : job->roof.built_up;

	switch (job->mount.seat) {
	case SEAT_ON_WOOD:
		return 0;
	case SEAT_ON_DECK:
		return x->deck;
	case SEAT_UNKNOWN:
	case SEAT_OVER_LAYERS:
	case SEAT_RIGID_POST:
		break;
	}
	return x->deck + covering;
}

static struct section_foot foot_of(const struct section *x)
{
	const struct job *job = x->s->job;
	const struct job_fastener *k = &job->fastener;
	struct section_foot f = {.D = k->diameter,
				 .face = -x->deck,
				 .plate = job->mount.plate_thickness,
				 .free = k->kind == FASTENER_HANGER_BOLT};
	const double t_up =
		x->s->r->fastener.t_up > 0 ? x->s->r->fastener.t_up : f.plate + layers(x);

	f.head = f.face + t_up;
	if (f.free)
		f.head = f.face + layers(x);
	if (sheet_on_seams(job))
		f.head = section_top(x, 0) + seam_height(x);
	f.half = isnan(job->mount.lever_arm) ? PLATE_HALF : job->mount.lever_arm;
	if (section_has_shaft(job) && k->count > 1 && !isnan(k->spacing))
		f.half = fmax(f.half, (k->count - 1) * k->spacing / 2 + 2 * f.D);
	f.rail = f.head + job->mount.height;
	f.tip = section_has_shaft(job) ? section_tip(x, &f) : f.head;
	return f;
}

void section_foot_extent(struct section *x)
{
	const struct section_foot f = foot_of(x);
	const double low = fmin(-x->deck - section_member_depth(x->s->job), f.tip);
	const double underside = section_top(x, 0) + x->s->job->collector.clearance;

	x->u0 = fmin(x->u0, -f.half - 0.05);
	x->u1 = fmax(x->u1, f.half + 0.05);
	/* over the feet of a tilted row it slopes, and stands higher: the sheet of the row has it */
	x->under_collector = underside < f.rail + 0.2 && !section_is_tilted(x->s) ? underside
										    : (double)NAN;
	section_reach(x, x->u0, low);
	section_reach(x, x->u1, low);
	section_reach(x, 0, f.rail + 0.02);
	if (!isnan(x->under_collector)) {
		section_reach(x, x->u0, underside);
		section_reach(x, x->u1, underside);
	}
}

static void seat(struct section *x, const struct section_foot *f)
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
			     sheet_text(x->s, "rigid post or block, itself fixed to the %s",
					section_wood(x->s->job)));
	} else if (x->s->job->mount.seat == SEAT_ON_WOOD && under < -1e-4) {
		section_block(x, FILL_WHITE, -f->half, f->face, f->half, 0);
		section_name(x, -0.9 * f->half, -x->deck / 2,
			     "deck cut out: the base bears on the wood");
	}
	section_block(x, FILL_GREY, -f->half, under, f->half, f->head);
	section_name(x, 0.9 * f->half, f->head - f->plate / 2,
		     sheet_text(x->s, "base plate %s", sheet_size(x->s, f->plate)));
}

double section_base(const struct section *x)
{
	const struct section_foot f = foot_of(x);

	return f.head - f.plate;
}

bool section_base_below(const struct section *x)
{
	const enum seat seat = x->s->job->mount.seat;

	return (seat == SEAT_ON_WOOD || seat == SEAT_ON_DECK || seat == SEAT_RIGID_POST) &&
	       !sheet_on_seams(x->s->job) && x->s->job->fastener.kind != FASTENER_HANGER_BOLT;
}

double section_post_half(const struct section *x)
{
	const struct section_layer *drawn = section_find(x, "post");
	const struct section_foot f = foot_of(x);

	if (f.free)
		return f.D / 2;
	return drawn ? section_size(drawn, "diameter", 2 * POST_HALF) / 2
		     : fmin(POST_HALF, 0.5 * f.half);
}

/* What is seen when the foot is drawn with this job's screws: a tip that comes out below, heads that
   nobody can reach. The hexagonal head of a lag screw is about 1-1/2 D across (from memory). */
const char *section_screws_lack(const struct section *x)
{
	const struct job *job = x->s->job;
	const struct job_fastener *k = &job->fastener;
	const struct section_foot f = foot_of(x);
	const bool lag = k->kind == FASTENER_LAG_SCREW && !isnan(k->length),
		   block = section_has_block(x->s);
	const double deep = block ? x->s->r->block.high : section_member_depth(job),
		     out = lag ? k->length - (f.head - f.face) - deep : 0,
		     half = section_post_half(x);
	const char *words = "";

	if (out > 1e-4)
		words = sheet_text(x->s, " The screws come %s out of the %s's lower face.",
				   sheet_size(x->s, out), block ? "block" : section_wood(job));
	if (lag && section_base_below(x) && section_find(x, "post") && k->count == 2 &&
	    k->spacing / 2 < half + 0.75 * k->diameter)
		words = sheet_text(x->s,
				   "%s A post of %s, usual here, covers the heads of screws %s apart: take one "
				   "that leaves them free.",
				   words, sheet_size(x->s, 2 * half), sheet_size(x->s, k->spacing));
	return words;
}

/* The rail may hang beside the collector; who reads the sheet looks at both sizes. */
static const char *rail_words(const struct section *x, const struct section_foot *f)
{
	const char *words = sheet_text(x->s, "rail line, %s above the %s",
				       sheet_size(x->s, x->s->job->mount.height),
				       sheet_on_seams(x->s->job) ? "seam" : "base plate");
	const double over = f->rail - x->under_collector;

	if (section_is_tilted(x->s))
		return sheet_text(x->s,
				  "top of the foot, %s above the base plate; leg and collector: sheet Tilted row",
				  sheet_size(x->s, x->s->job->mount.height));
	if (!(over > M_PER_IN / 8))
		return words;
	return sheet_text(x->s,
			  "%s: by these sizes %s above the collector's underside; measure both",
			  words, sheet_size(x->s, over));
}

/* The line of the rail is marked by a cross in a ring; how thick the rail is the job does not say.
 */
static void post(struct section *x, const struct section_foot *f)
{
	const double half = section_post_half(x), r = fmin(0.012, half);

	section_block(x, FILL_WHITE, -half, f->head, half, f->rail);
	drawing_circle(x->d, LAYER_MATERIAL, FILL_WHITE, (struct point){0, f->rail}, r);
	drawing_line(x->d, LAYER_THIN, (struct point){-r, f->rail}, (struct point){r, f->rail});
	drawing_line(x->d, LAYER_THIN, (struct point){0, f->rail - r},
		     (struct point){0, f->rail + r});
	section_name(x, r, f->rail, rail_words(x, f));
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

/* A seam seen from its side, and the clamp that grips it: nothing goes through. */
static void clamp(struct section *x, const struct section_foot *f)
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

void section_foot_low(struct section *x)
{
	const struct section_foot f = foot_of(x);

	if (sheet_on_seams(x->s->job))
		clamp(x, &f);
	if (!section_base_below(x))
		return;
	seat(x, &f);
	if (section_has_shaft(x->s->job))
		section_fasteners(x, &f);
}

void section_foot_high(struct section *x)
{
	const struct section_foot f = foot_of(x);

	if (!section_base_below(x)) {
		if (!sheet_on_seams(x->s->job) && !f.free)
			seat(x, &f);
		if (section_has_shaft(x->s->job))
			section_fasteners(x, &f);
	}
	if (!f.free)
		post(x, &f);
	if (!sheet_on_seams(x->s->job))
		section_flashing_cap(x);
	collector(x);
	if (section_has_shaft(x->s->job))
		section_fastener_lengths(x, &f);
}
