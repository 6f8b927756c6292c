/* SPDX-License-Identifier: MIT */
/* Where a general check ends. A stop ends the calculation; other reasons let it go on as a bound, and still make the
   verdict `needs an engineer`. */
#include "check/context.h"

#include <math.h>

#include "table/lookup_limit.h"

#include "check/courses.h"

/* Where each edition says that a rule ends. */
enum stop { STOP_HEIGHT, STOP_STEEP, STOP_OPEN, STOP_COUNT };
static const char *stop_clause(const struct context *c, enum stop stop)
{
	static const char *const clause[][STOP_COUNT] = {
		[ASCE7_10] = { "ASCE/SEI 7-10 30.4", "ASCE/SEI 7-10 30.4", "ASCE/SEI 7-10 30.8" },
		[ASCE7_16] = { "ASCE/SEI 7-16 30.3", "ASCE/SEI 7-16 30.3", "ASCE/SEI 7-16 30.7" },
		[ASCE7_22] = { "ASCE/SEI 7-22 30.3", "ASCE/SEI 7-22 30.3", "ASCE/SEI 7-22 30.5, from memory" },
	};
	const enum edition e = c->job->site.code;

	return e >= ASCE7_10 && e <= ASCE7_22 ? clause[e][stop] : "ASCE/SEI 7 chapter 30";
}

/* Figures for forms that are not carried here (7-10: 30.4-3 to 30.4-7). */
static const char *form_figures(const struct context *c, enum roof_form f)
{
	const bool old = c->job->site.code == ASCE7_10;

	switch (f) {
	case FORM_MULTISPAN:
		return old ? " (ASCE/SEI 7-10 Figs. 30.4-4 and 30.4-6)" : " (ASCE/SEI 7-16, 7-22 Figs. 30.3-4 and 30.3-6)";
	case FORM_CURVED:
		return old ? " (ASCE/SEI 7-10 Figs. 27.4-3 and 30.4-7)" : " (ASCE/SEI 7-16, 7-22 Figs. 27.3-3 and 30.3-7)";
	case FORM_STEPPED:
		return old ? " (ASCE/SEI 7-10 Fig. 30.4-3)" : " (ASCE/SEI 7-16, 7-22 Fig. 30.3-3)";
	case FORM_FLAT:
	case FORM_GABLE:
	case FORM_HIP:
	case FORM_MONOSLOPE:
	case FORM_OTHER:
		break;
	}
	return "";
}

static bool stop_form(struct context *c)
{
	static const char *const form[] = { "flat", "gable", "hip", "monoslope", "other", "multispan", "curved", "stepped" };
	const enum roof_form f = c->job->building.form;

	if (f == FORM_HIP && c->job->building.plane == PLANE_UNKNOWN) {
		REMARK(c->r, PLANE, 0);
		return true;
	}
	if (f < FORM_OTHER)
		return false;
	REMARK_T(c->r, FORM, (0), form[f], form_figures(c, f));
	return true;
}

bool check_stops(struct context *c)
{
	const struct job *job = c->job;
	bool stop = stop_form(c);

	if (!at_most(job->building.mean_roof_height, limit_of(LIMIT_LOW_RISE_HEIGHT))) {
		REMARK_T(c->r, HEIGHT, (job->building.mean_roof_height), stop_clause(c, STOP_HEIGHT));
		stop = true;
	}
	if (isfinite(job->framing.temperature) && !at_most(unit_from_si(job->framing.temperature, UNIT_DEG_F), limit_printed(LIMIT_WOOD_HOT))) {
		REMARK(c->r, HOT_WOOD, job->framing.temperature);
		stop = true;
	}
	if (!at_most(c->theta, limit_of(LIMIT_STEEPEST_FIGURE))) {
		REMARK_T(c->r, STEEP, (c->theta), stop_clause(c, STOP_STEEP));
		stop = true;
	}
	if (job->building.enclosure == OPEN_BUILDING) {
		REMARK_T(c->r, OPEN_BUILDING, (0), stop_clause(c, STOP_OPEN));
		stop = true;
	}
	return stop;
}

static void framing(struct context *c)
{
	static const struct {
		const char *kind, *why;
	} words[] = {
		[FRAMING_UNKNOWN] = { "unknown", "Look at the eave: metal plates at the joints mean a truss." },
		[FRAMING_RAFTER] = { "rafter", "" },
		[FRAMING_TRUSS] = { "truss", "A chord carries compression and bending at once and its spare capacity "
		                             "stands only on the truss maker's drawing." },
		[FRAMING_I_JOIST] = { "i-joist", "A flange is thin and its maker rates every hole in it." },
		[FRAMING_PANEL] = { "structural panel", "Screws into a panel's skin need the panel maker." },
		[FRAMING_STEEL] = { "steel", "Purlins lose strength under uplift; ask for the engineer's value." },
	};
	static const char *const ridge[] = { "unknown", "board", "beam", "wall" };
	static const char *const ties[] = { "unknown", "no", "yes" };
	const struct job_framing *f = &c->job->framing;

	if (f->kind != FRAMING_RAFTER && f->kind != FRAMING_UNKNOWN && f->allowable_uplift > 0 && f->allowable_down > 0) {
		REMARK_T(c->r, FRAMING_ENTERED, (0), words[f->kind].kind, f->report);
		return;
	}
	if (f->kind != FRAMING_RAFTER) {
		REMARK_T(c->r, NOT_RAFTER, (0), words[f->kind].kind, words[f->kind].why);
		return;
	}
	const bool ridged = c->job->building.form == FORM_GABLE || c->job->building.form == FORM_HIP;

	if (!ridged || f->ridge == RIDGE_BEAM || f->ridge == RIDGE_WALL)
		return;
	if (!at_least(c->theta, limit_slope(LIMIT_RIDGE_BOARD_RISE)) || f->ties != ANSWER_YES)
		REMARK_T(c->r, RIDGE, (c->theta), ridge[f->ridge], ties[f->ties]);
}

static void covering(struct context *c)
{
	const struct covering_row *k = c->covering;

	if (!k || k->guide != COVERING_GUIDE_YES) {
		REMARK_T(c->r, COVERING_STOP, (0), k ? k->name : c->job->roof.covering,
		         k ? "it is not to be opened by this guide; ask a roofer of that trade."
		           : "the program has no numbers for it; ask a roofer of that trade.");
		return;
	}
	const double least = atan(k->min_rise_in / 12.0);

	if (!at_least(c->theta, least))
		REMARK_T(c->r, COVERING_PITCH, (least, c->theta), k->name);
	cover_tell(c);
}

void check_doubts(struct context *c)
{
	const struct job *job = c->job;

	if (job->site.topography == TOPOGRAPHY_UNSURE)
		REMARK(c->r, TOPOGRAPHY, 0);
	framing(c);
	covering(c);
	if (job->roof.condition == CONDITION_DAMAGED)
		REMARK(c->r, DAMAGED, 0);
	if (job->roof.layers > 1)
		REMARK(c->r, LAYERS, job->roof.layers);
}

void check_assumptions(struct context *c)
{
	for (int i = 0; i < FIELD_COUNT; i++)
		if (c->job->origin[i] == ORIGIN_ASSUMED)
			REMARK_T(c->r, ASSUMED_FIELD, (0), field_table[i].attribute, field_table[i].fallback,
			         field_table[i].measured);
}
