/* SPDX-License-Identifier: MIT */
#include "sheet/site_words.h"

#include <math.h>

#include "load/loading_code.h"
#include "report/caution.h"
#include "report/field_value.h"

double site_text(const struct place *p)
{
	return p->room.narrow ? p->room.least : SITE_TEXT;
}

static double words_width(const struct place *p)
{
	return p->room.narrow ? p->room.width - 2 * NARROW_MARGIN : PLAN_LEGEND_WIDTH - 2 * MM;
}

static double say(const struct place *p, struct point at, const char *text)
{
	return sheet_paragraph(p->s, p->d, at, words_width(p), site_text(p), text) - 0.4 * site_text(p);
}

/* The standard by its name, as on the first page; the job file has a key for it. */
static const char *value(const struct place *p, enum field_id id)
{
	const struct job *job = p->s->job;
	const struct loading_code *code =
		id == FIELD_SITE_CODE ? loading_code_of(job->site.code) : NULL;

	return code ? code->name : field_text(&p->s->f, job, &field_table[id], 0);
}

static double fact(const struct place *p, struct point at, const char *name, enum field_id id)
{
	const struct job *job = p->s->job;

	if (!field_present(job, &field_table[id], 0))
		return at.y;
	return say(p, at,
		   sheet_text(p->s, "%s: %s%s", name,
			      value(p, id), job->origin[id] == ORIGIN_ASSUMED ? " (assumed: verify)" : ""));
}

/* Walls are dashed where the roof goes beyond them. */
static const char *walls(const struct job_building *b)
{
	return b->eave_overhang > 0 || b->rake_overhang > 0
		       ? "Dashed: walls."
		       : "The roof ends at the walls.";
}

/* Which way a roof falls that has no ridge to tell it. */
static const char *fall(const struct job_building *b)
{
	return b->form == FORM_GABLE || b->form == FORM_HIP ? "" : " It falls down the sheet.";
}

static const char *lines_words(const struct place *p)
{
	int given = 0;

	for (int i = 0; i < SIDES; i++)
		given += !isnan(p->line[i]);
	if (given == SIDES)
		return "Property lines by the job file; no survey was made for this sheet.";
	return given > 0
		       ? "Property lines by the job file, where it tells them; no survey was made "
			 "for this sheet."
		       : "The job file tells no property lines; where the department asks for "
			 "them, add a plat.";
}

static double facts(const struct place *p, struct point at)
{
	static const struct {
		const char *name;
		enum field_id id;
	} row[] = {{"Address", FIELD_SITE_ADDRESS},
		   {"Lot", FIELD_SITE_PARCEL},
		   {"Loading standard", FIELD_SITE_CODE},
		   {"Risk category", FIELD_SITE_RISK_CATEGORY},
		   {"Basic wind speed", FIELD_SITE_WIND_SPEED},
		   {"Exposure", FIELD_SITE_EXPOSURE},
		   {"Ground snow", FIELD_SITE_GROUND_SNOW},
		   {"Roof form", FIELD_BUILDING_FORM},
		   {"Mean roof height", FIELD_BUILDING_MEAN_ROOF_HEIGHT},
		   {"Pitch", FIELD_ROOF_PITCH},
		   {"Covering", FIELD_ROOF_COVERING},
		   {"The array's plane faces, clockwise from north", FIELD_BUILDING_FACING}};

	for (size_t i = 0; i < sizeof row / sizeof *row; i++)
		at.y = fact(p, at, row[i].name, row[i].id);
	if (isnan(p->s->job->building.facing))
		at.y = say(p, at,
			   "The job file does not tell which way the plane faces: no north "
			   "is drawn.");
	at.y = say(
		p, at,
		sheet_text(p->s,
			   "Shaded: the roof plane that carries the array, %d collector%s.%s %s",
			   p->s->r->collectors, p->s->r->collectors == 1 ? "" : "s",
			   fall(&p->s->job->building), walls(&p->s->job->building)));
	return say(p, at, lines_words(p));
}

/* Title, scale bar, north; the y below them. */
static double above(const struct place *p, struct point at)
{
	const struct lettering_spec big = {3.2 * MM, true, ANCHOR_LEFT, ANCHOR_TOP, 0, false};

	drawing_view(p->d, VIEW_PAPER);
	drawing_text(p->d, LAYER_TEXT, at, big, drawing_title(p->d));
	at.y = say(p, (struct point){at.x, at.y - 6 * MM},
		   sheet_text(p->s, "Scale %s. %s", p->plan.scale.text, sheet_unit_note(p->s))) -
	       2 * MM;
	return plan_scale_and_north(&p->plan, at, words_width(p) + 2 * MM);
}

/* Verdict, facts of the place, caution; the y below them. */
static double below(const struct place *p, struct point at)
{
	drawing_view(p->d, VIEW_PAPER);
	at.y = say(p, at,
		   sheet_text(p->s, "%s. Job %s: %s", sheet_verdict(p->s), p->s->fingerprint,
			      p->s->job->title));
	at.y = facts(p, at);
	return sheet_paragraph(p->s, p->d, at, words_width(p), fmax(0.8 * site_text(p), p->room.least),
			       caution_result);
}

void site_words(const struct place *p)
{
	const double x = drawing_width(p->d) - SITE_MARGIN - PLAN_LEGEND_WIDTH;
	const double y = above(p, (struct point){x, drawing_height(p->d) - SITE_MARGIN});

	below(p, (struct point){x, y});
}

double site_words_above(const struct place *p)
{
	return above(p, (struct point){NARROW_MARGIN, p->room.height - NARROW_MARGIN});
}

double site_words_below(const struct place *p, double y)
{
	return below(p, (struct point){NARROW_MARGIN, y});
}
