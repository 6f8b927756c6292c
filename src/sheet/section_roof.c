/* SPDX-License-Identifier: MIT */
/* What carries a covering in a section: rafter or steel member, deck. */
#include <math.h>

#include "sheet/section.h"

#define USUAL_DEPTH 0.2   /* of a member whose depth the job does not tell, m */
#define STEEL_WALL 0.0015 /* likewise of a steel member's wall */
#define LIP 0.018         /* of a steel member, seen from its side, m */

const char *section_member(const struct job *job)
{
	return job->framing.kind == FRAMING_STEEL ? "joist" : "rafter";
}

const char *section_wood(const struct job *job)
{
	return job->framing.kind == FRAMING_TRUSS ? "top chord" : section_member(job);
}

double section_member_depth(const struct job *job)
{
	return job->framing.depth > 0 ? job->framing.depth : USUAL_DEPTH;
}

static void rafter(struct section *x, double low, double face)
{
	const struct job_framing *k = &x->s->job->framing;

	section_block(x, FILL_LIGHT, x->u0, low, x->u1, face);
	section_name(x, x->u1 - 0.15 * (x->u1 - x->u0), low + 0.25 * (face - low),
		     sheet_text(x->s, "%s%s%s, %s thick, %s deep%s",
				k->kind == FRAMING_TRUSS ? "top chord of the truss" : "rafter",
				k->size[0] ? " " : "", k->size, sheet_size(x->s, k->breadth), sheet_size(x->s, k->depth),
				sheet_on_seams(x->s->job) ? "; the seam need not lie over it" : ""));
}

/* Along the line that the plan shows it on, so seen from its side: web, flanges, edges of the lips.
   Which shape it is the job does not tell. */
static void steel(struct section *x, double low, double face)
{
	const struct job *job = x->s->job;
	const double given = job->fastener.steel_thickness, wall = given > 0 ? given : STEEL_WALL;

	section_block(x, FILL_LIGHT, x->u0, low, x->u1, face);
	section_block(x, FILL_BLACK, x->u0, face - wall, x->u1, face);
	section_block(x, FILL_BLACK, x->u0, low, x->u1, low + wall);
	for (int i = 0; i < 2; i++) {
		const double v = i ? low + LIP : face - LIP;

		drawing_line_as(x->d, LAYER_MATERIAL, 0.13 * MM, DASH_SHORT_DASH,
				(struct point){x->u0, v}, (struct point){x->u1, v});
	}
	section_name(
		x, x->u1 - 0.15 * (x->u1 - x->u0), low + 0.25 * (face - low),
		sheet_text(
			x->s,
			"steel joist, seen from its side%s%s: it runs up the slope, as on the "
			"plan. "
			"Where purlins run along the eave, feet can stand only where a line of "
			"feet lies on one: then this plan is not theirs. Its shape, and on which "
			"side it is open, are not in the job",
			given > 0 ? ", steel " : "", given > 0 ? sheet_size(x->s, given) : ""));
}

static void member(struct section *x)
{
	const struct job *job = x->s->job;
	const double face = -x->deck, low = face - section_member_depth(job);

	if (x->what != SECTION_OF_FOOT)
		return;
	if (job->framing.kind == FRAMING_STEEL)
		steel(x, low, face);
	else
		rafter(x, low, face);
}

static void boards(struct section *x, double breadth, double spacing)
{
	for (double u = -ceil(-x->u0 / spacing) * spacing; u < x->u1; u += spacing) {
		const double a = fmax(u - breadth / 2, x->u0), b = fmin(u + breadth / 2, x->u1);

		if (b > a)
			section_block(x, FILL_WHITE, a, -x->deck, b, 0);
	}
}

static const char *deck_words(const struct sheet *s)
{
	switch (s->job->roof.deck) {
	case DECK_PLYWOOD:
		return "plywood deck";
	case DECK_OSB:
		return "OSB deck";
	case DECK_BOARDS:
		return "board deck";
	case DECK_SPACED_BOARDS:
		return "spaced boards";
	case DECK_UNKNOWN:
	case DECK_OTHER:
		return "deck";
	}
	return "deck";
}

static bool deck_not_told(const struct section *x)
{
	return x->s->job->roof.deck == DECK_UNKNOWN || x->s->job->roof.deck == DECK_OTHER;
}

void section_roof(struct section *x)
{
	const struct section_layer *spaced = section_find(x, "spaced-board");

	member(x);
	if (!(x->deck > 0))
		return;
	if (x->s->job->roof.deck == DECK_SPACED_BOARDS || (spaced && deck_not_told(x))) {
		boards(x, spaced ? section_size(spaced, "breadth", 0.14) : 0.14,
		       spaced ? section_size(spaced, "spacing", 0.25) : 0.25);
	} else {
		const struct point at[] = {
			{x->u0, -x->deck}, {x->u1, -x->deck}, {x->u1, 0}, {x->u0, 0}};

		section_area(x, FILL_WHITE, at, 4);
		drawing_hatch(x->d, LAYER_HATCH, at, 4, 45 * RAD_PER_DEG, 1.2 * MM);
	}
	section_name_along(x, x->u1 - 0.1 * (x->u1 - x->u0), -x->deck / 2,
			   0.2 * (x->u1 - x->u0),
			   sheet_text(x->s, "%s %s", deck_words(x->s), sheet_size(x->s, x->deck)));
}
