/* SPDX-License-Identifier: MIT */
/* The governing rafter and rail as a beam: supports, loads, and what came out, with as many digits
   as a second program needs to find the same. */
#include <math.h>

#include "report/check_part.h"

#define COLUMNS(c) ((int)(sizeof(c) / sizeof *(c)))
#define DIGITS 6

static const char *number(const struct part *p, double si, enum unit us)
{
	const enum unit u = shown_unit(&p->f, us);

	return show_significant(&p->f, unit_from_si(fabs(si) < 1e-9 ? 0 : si, u), DIGITS);
}

static const char *with_unit(const struct part *p, double si, enum unit us)
{
	return show_exact(&p->f, fabs(si) < 1e-9 ? 0 : si, shown_unit(&p->f, us), DIGITS);
}

static const char *titled(const struct part *p, const char *words, enum unit us)
{
	return document_text(p->d, "%s, %s", words, unit_text(shown_unit(&p->f, us)));
}

static void heading(const struct part *p, const struct shown_beam *b, bool rafter)
{
	document_add(p->d, BLOCK_HEADING, 2, "%s %d as a beam, to recompute it",
		     rafter ? "Rafter" : "Rail line", b->number);
	document_add(p->d, BLOCK_PARAGRAPH, 0,
		     "Its governing case: %s%s%s%s%s. Places %s; loads square to the %s, down "
		     "positive, with "
		     "their factors; reactions up, sagging moments positive. Of constant stiffness "
		     "on supports "
		     "that give no way and hold no moment: any beam program finds the same.",
		     b->combination ? b->combination : "-", b->snow ? ", snow: " : "",
		     b->snow ? b->snow : "", b->sideways ? ", " : "",
		     b->sideways ? b->sideways : "",
		     rafter ? "along the slope from the outer face of the lower wall"
			    : document_text(p->d, "along the eave from %s", left_end(p->job)),
		     rafter ? "rafter" : "roof");
	if (b->cut)
		document_add(p->d, BLOCK_PARAGRAPH, 0,
			     "It has more loads than are shown here: the list is not whole.");
}

static void supports(const struct part *p, const struct shown_beam *b)
{
	const struct column columns[] = {
		{titled(p, "support at", UNIT_FT), ALIGN_RIGHT, true, false},
		{titled(p, "reaction", UNIT_LB), ALIGN_RIGHT, false, false},
		{titled(p, "moment there", UNIT_LB_FT), ALIGN_RIGHT, false, false}};

	document_table(p->d, columns, COLUMNS(columns));
	for (int i = 0; i < b->supports; i++) {
		document_row(p->d);
		document_cell(p->d, "%s", number(p, b->support[i].x, UNIT_FT));
		document_cell(p->d, "%s", number(p, b->support[i].reaction, UNIT_LB));
		document_cell(p->d, "%s", number(p, b->support[i].moment, UNIT_LB_FT));
	}
}

static void stretches(const struct part *p, const struct shown_beam *b)
{
	const struct column columns[] = {
		{titled(p, "load from", UNIT_FT), ALIGN_RIGHT, true, false},
		{titled(p, "to", UNIT_FT), ALIGN_RIGHT, true, false},
		{titled(p, "w", UNIT_PLF), ALIGN_RIGHT, false, false}};

	if (b->stretches == 0)
		return;
	document_table(p->d, columns, COLUMNS(columns));
	for (int i = 0; i < b->stretches; i++) {
		document_row(p->d);
		document_cell(p->d, "%s", number(p, b->stretch[i].x0, UNIT_FT));
		document_cell(p->d, "%s", number(p, b->stretch[i].x1, UNIT_FT));
		document_cell(p->d, "%s", number(p, b->stretch[i].w, UNIT_PLF));
	}
}

static void forces(const struct part *p, const struct shown_beam *b)
{
	const struct column columns[] = {
		{titled(p, "force at", UNIT_FT), ALIGN_RIGHT, true, false},
		{titled(p, "P", UNIT_LB), ALIGN_RIGHT, false, false},
		{titled(p, "moment there", UNIT_LB_FT), ALIGN_RIGHT, false, false}};

	if (b->points == 0)
		return;
	document_table(p->d, columns, COLUMNS(columns));
	for (int i = 0; i < b->points; i++) {
		document_row(p->d);
		document_cell(p->d, "%s", number(p, b->point[i].x, UNIT_FT));
		document_cell(p->d, "%s", number(p, b->point[i].P, UNIT_LB));
		document_cell(p->d, "%s", number(p, b->point[i].moment, UNIT_LB_FT));
	}
}

static void peak(const struct part *p, const char *name, const struct beam_peak *at, enum unit us)
{
	if (fabs(at->value) > 0)
		document_pair(p->d, name, NULL, "%s at %s", with_unit(p, at->value, us),
			      with_unit(p, at->x, UNIT_FT));
}

/* What a solver alone does not tell: which of its numbers goes into the check. */
static const char *used(const struct part *p, enum check_id governs)
{
	if (governs == CHECK_RAFTER_SHEAR)
		return document_text(
			p->d,
			"For shear, uniform load within the depth of the rafter of a support "
			"is left out and a force at x from it, nearer than the depth d, counts x/d "
			"(NDS 3.4.3.1); on more than two supports shear is taken d off the "
			"support, or right "
			"at it where a foot stands nearer.");
	if (governs == CHECK_RAFTER_BENDING || governs == CHECK_RAFTER_UPLIFT ||
	    governs == CHECK_RAFTER_PARTIAL)
		return document_text(
			p->d, "fb = M / S above takes the largest moment over the whole section, "
			      "or the moment at "
			      "a foot over the section less its hole, whichever stresses more.");
	return "";
}

static void results(const struct part *p, const struct shown_beam *b)
{
	document_pairs(p->d);
	document_pair(p->d, "beam", NULL, "from %s to %s", with_unit(p, b->start, UNIT_FT),
		      with_unit(p, b->end, UNIT_FT));
	peak(p, "largest sagging moment", &b->sagging, UNIT_LB_FT);
	peak(p, "largest hogging moment", &b->hogging, UNIT_LB_FT);
	peak(p, "largest shear", &b->shear, UNIT_LB);
	if (isfinite(b->inner))
		document_pair(p->d, "over an inner support", NULL,
			      "%s, if it ran on there without turning: the end of a span held fast",
			      with_unit(p, b->inner, UNIT_LB_FT));
	if (b->across > 0)
		document_pair(p->d, "down the slope", NULL,
			      "%s all along, at once, about its other axis",
			      with_unit(p, b->across, UNIT_PLF));
	if (b->EI > 0) {
		const bool us = p->job->units == SYSTEM_US;

		document_pair(
			p->d, "stiffness E I", NULL, "%s %s",
			show_significant(&p->f,
					 us ? b->EI / (unit_to_si(1, UNIT_LB) * M_PER_IN * M_PER_IN)
					    : b->EI,
					 DIGITS),
			us ? "lb in2" : "N m2");
		peak(p, "largest deflection", &b->bow, UNIT_IN);
	}
}

void part_beam(const struct part *p, const struct shown_beam *b, bool rafter)
{
	if (!b->known || p->r->passes == 0)
		return;
	heading(p, b, rafter);
	supports(p, b);
	stretches(p, b);
	forces(p, b);
	results(p, b);
	const char *more = rafter && p->pass->rafters > 0
				   ? used(p, p->pass->rafter[p->pass->governing_rafter].governs)
				   : "";

	if (*more)
		document_add(p->d, BLOCK_PARAGRAPH, 0, "%s", more);
}
