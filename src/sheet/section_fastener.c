/* SPDX-License-Identifier: MIT */
/* What holds the foot, drawn as what it is: a screw with its head above and its tip in the wood, a
   bolt through the rafter with washer and nut below it, a hanger bolt that stands out of the wood
   between two pairs of nuts. Lengths come from the job; what the job leaves open is drawn as short
   as it can be. */
#include <math.h>

#include "drawing/dimension.h"
#include "sheet/section.h"

/* Of bolts, in diameters; common practice, a regular hexagon seen from its corners. */
#define HEAD 0.65
#define NUT 0.875
#define WASHER 0.15
#define ACROSS 1.6

bool section_has_shaft(const struct job *job)
{
	return sheet_has_screw(job) ||
	       (job->fastener.kind == FASTENER_THROUGH_BOLT && job->fastener.diameter > 0);
}

static bool through(const struct section *x)
{
	return x->s->job->fastener.kind == FASTENER_THROUGH_BOLT;
}

/* The member's lower face. */
static double below(const struct section *x)
{
	return -x->deck - section_member_depth(x->s->job);
}

double section_tip(const struct section *x, const struct section_foot *f)
{
	const struct job_fastener *k = &x->s->job->fastener;

	if (f->free)
		return f->face - k->thread_length;
	if (through(x) && isnan(k->length))
		return below(x) - (WASHER + NUT + 0.4) * f->D;
	return f->head - k->length;
}

static void thread(struct section *x, double u, double r, double top, double bottom)
{
	const double pitch = fmax(1.6 * r, 0.7 * MM * x->scale.ratio);

	for (double v = top; v > bottom + pitch / 2; v -= pitch)
		drawing_line_as(x->d, LAYER_MATERIAL, 0.13 * MM, DASH_SOLID,
				(struct point){u - r, v - pitch / 2}, (struct point){u + r, v});
}

/* Washer and nut on a shaft, the washer at v; `up`: the nut above it. Returns the nut's far side.
 */
static double nut(struct section *x, const struct section_foot *f, double u, double v, double half,
		  bool up)
{
	const double k = up ? 1 : -1, w = v + k * WASHER * f->D, n = w + k * NUT * f->D;
	const double wide = ACROSS * f->D / 2;

	section_block(x, FILL_BLACK, u - half, fmin(v, w), u + half, fmax(v, w));
	section_block(x, FILL_WHITE, u - wide, fmin(w, n), u + wide, fmax(w, n));
	drawing_line(x->d, LAYER_MATERIAL, (struct point){u - wide / 2, w},
		     (struct point){u - wide / 2, n});
	drawing_line(x->d, LAYER_MATERIAL, (struct point){u + wide / 2, w},
		     (struct point){u + wide / 2, n});
	return n;
}

static void screw(struct section *x, const struct section_foot *f, double u)
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
		      f->head + HEAD * f->D);
}

/* Head on the base plate, washer and nut below the rafter. */
static void bolt(struct section *x, const struct section_foot *f, double u)
{
	const double half = f->D / 2, low = below(x), washer = x->s->job->fastener.washer_diameter;
	const double w = isnan(washer) ? 1.2 * f->D : washer / 2;

	section_block(x, FILL_WHITE, u - half, f->tip, u + half, f->head);
	section_block(x, FILL_BLACK, u - ACROSS * half, f->head, u + ACROSS * half,
		      f->head + HEAD * f->D);
	const double end = nut(x, f, u, low, w, false);

	thread(x, u, half, fmin(end, f->head), f->tip);
	section_name(x, u + w, low - WASHER * f->D / 2,
		     isnan(washer) ? "washer and nut below the rafter"
				   : sheet_text(x->s, "washer %s and nut below the rafter",
						sheet_size(x->s, washer)));
	if (f->tip > end)
		section_name(x, u + half, f->tip,
			     sheet_text(x->s,
					"TOO SHORT: %s of bolt end %s above the nut's far side",
					sheet_size(x->s, x->s->job->fastener.length),
					sheet_size(x->s, f->tip - end)));
}

/* The wood thread all in the rafter; the rail's bracket between two nuts. */
static void hanger(struct section *x, const struct section_foot *f, double u)
{
	const struct job_fastener *k = &x->s->job->fastener;
	const double half = f->D / 2, top = f->tip + k->length, bracket = f->plate / 2;
	const struct point body[] = {{u - half, top},
				     {u - half, f->tip + f->D},
				     {u, f->tip},
				     {u + half, f->tip + f->D},
				     {u + half, top}};

	section_area(x, FILL_WHITE, body, 5);
	thread(x, u, half, f->face, f->tip + f->D);
	thread(x, u, half, top, f->head);
	section_block(x, FILL_GREY, u - 2.5 * f->D, f->rail - bracket, u + 2.5 * f->D,
		      f->rail + bracket);
	nut(x, f, u, f->rail - bracket, f->D, false);
	nut(x, f, u, f->rail + bracket, f->D, true);
	section_name(x, u + 2.5 * f->D, f->rail,
		     sheet_text(x->s,
				"bracket of the rail between two nuts with washers, %s above the "
				"covering",
				sheet_size(x->s, x->s->job->mount.height)));
	if (top < f->rail + bracket + (WASHER + NUT) * f->D)
		section_name(
			x, u, top,
			sheet_text(
				x->s, "TOO SHORT: the bolt ends %s below its upper nut's top",
				sheet_size(x->s, f->rail + bracket + (WASHER + NUT) * f->D - top)));
}

/* One line for each length with a letter; the letters are explained below the drawing. What begins
   at the head stands beside the roof, where no hatching is; what lies in the wood, in the wood. */
struct ruler {
	struct section *x;
	double side;         /* u of what is measured */
	double inner, outer; /* on paper, from there to the next line */
};

static double ruler_step(const struct section *x)
{
	return x->room.narrow ? 4.2 * MM : 6 * MM;
}

static void length(struct ruler *r, const char *letter, double low, double high, const char *words)
{
	const bool in_wood = high <= -r->x->deck + 1e-6;
	double *away = in_wood ? &r->inner : &r->outer;

	if (!(high - low > 1e-6))
		return;
	/* a letter without room stands beyond the end: in the wood at its lower one, not in the
	 * covering */
	dimension_between(r->x->d, (struct point){r->side, in_wood ? high : low},
			  (struct point){r->side, in_wood ? low : high}, in_wood ? -*away : *away,
			  letter);
	*away += (in_wood ? -1 : 1) * ruler_step(r->x);
	section_key(r->x, letter, high - low, words);
}

void section_fastener_lengths(struct section *x, const struct section_foot *f)
{
	const struct fastener_result *r = &x->s->r->fastener;
	const struct job_fastener *k = &x->s->job->fastener;
	const double row = k->count > 1 && !isnan(k->spacing) ? (k->count - 1) * k->spacing / 2 : 0;
	const double side = -row - f->D / 2, ratio = x->scale.ratio;
	struct ruler ruler = {x, side, fmax(f->half + side, 0) / ratio + 2 * ruler_step(x),
			      (side - x->u0) / ratio + 4 * MM};

	if (f->free) {
		length(&ruler, "R", f->face, f->rail, "from the rafter to the line of the rail");
		length(&ruler, "L", f->tip, f->tip + k->length, "length of the hanger bolt");
		length(&ruler, "T", f->tip, f->face, "wood thread, all of it in the rafter");
		return;
	}
	if (through(x)) {
		length(&ruler, "A", below(x), f->head, "head to the rafter's lower face");
		if (!isnan(k->length))
			length(&ruler, "L", f->tip, f->head, "length of the bolt under its head");
		return;
	}
	if (r->p_tot > 0)
		length(&ruler, "A", f->face, f->face + r->t_up,
		       sheet_text(x->s, "head to the %s's upper face", section_wood(x->s->job)));
	length(&ruler, "L", f->tip, f->head, "length of the screw under its head");
	if (!(r->p_tot > 0))
		return;
	const double end = f->face - r->p;

	const double block = section_has_block(x->s) ? x->s->r->block.high : HUGE_VAL;

	length(&ruler, "P", end, f->face,
	       sheet_text(x->s, "in the %s, tip not counted%s", section_wood(x->s->job),
			  r->p > block ? sheet_text(x->s, "; %s in a block", sheet_size(x->s, block))
				       : ""));
	length(&ruler, "T", end, end + r->p_t, "of it thread");
}

static const char *kind_words(const struct job_fastener *k)
{
	static const char *const one[] = {
		[FASTENER_LAG_SCREW] = "lag screw",
		[FASTENER_WOOD_SCREW] = "wood screw",
		[FASTENER_STRUCTURAL_SCREW] = "structural screw",
		[FASTENER_THROUGH_BOLT] = "bolt",
		[FASTENER_HANGER_BOLT] = "hanger bolt",
		[FASTENER_SEAM_CLAMP] = "clamp",
		[FASTENER_DECK_MOUNT] = "screw",
		[FASTENER_SHEET_SCREW] = "sheet screw",
	};

	return one[k->kind];
}

static void words(struct section *x, const struct section_foot *f)
{
	const struct job_fastener *k = &x->s->job->fastener;
	const struct fastener_result *r = &x->s->r->fastener;
	const char *lead = "", *long_by = "";

	if (!isnan(r->lead_hole_low) && r->lead_hole_low > 0)
		lead = sheet_text(x->s, ", lead hole %s",
				  sheet_drill(x->s, r->lead_hole_low, r->lead_hole_high));
	if (!isnan(k->length))
		long_by = sheet_text(x->s, " x %s", sheet_size(x->s, k->length));
	section_name(x, k->count > 1 ? k->spacing * (k->count - 1) / 2 : 0,
		     f->face - 0.35 * (f->face - f->tip),
		     sheet_text(x->s, "%d %s%s %s%s%s", k->count, kind_words(k),
				k->count > 1 ? "s" : "", sheet_shank(x->s, k->diameter), long_by,
				through(x) ? ", through the rafter" : lead));
}

void section_fasteners(struct section *x, const struct section_foot *f)
{
	const struct job_fastener *k = &x->s->job->fastener;
	const double spacing = isnan(k->spacing) ? 0 : k->spacing;

	for (int i = 0; i < k->count; i++) {
		const double u = (i - (k->count - 1) / 2.0) * spacing;

		if (f->free)
			hanger(x, f, u);
		else if (through(x))
			bolt(x, f, u);
		else
			screw(x, f, u);
	}
	words(x, f);
}
