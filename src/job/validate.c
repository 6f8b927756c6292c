/* SPDX-License-Identifier: MIT */
/* Cross-field rules of site, framing, fastener and coefficients, and the help that all rules
   share. Those of roof and array stand in rule_roof.c and rule_array.c. */
#include "job/validate.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "job/rule.h"
#include "job/size.h"
#include "table/lookup_snow.h"

bool rule_have(const struct rule *r, ...)
{
	bool all = true;
	va_list ids;

	va_start(ids, r);
	for (int id = va_arg(ids, int); id != FIELD_COUNT; id = va_arg(ids, int))
		all = all && r->job->origin[id] != ORIGIN_ABSENT;
	va_end(ids);
	return all;
}

void rule_tell(const struct rule *r, enum problem_code code, enum field_id id, const char *fields,
	       const char *given, const char *accepted)
{
	const bool set = r->job->origin[id] == ORIGIN_OVERRIDE;
	const enum element e = element_of(id);
	int line = r->source->line[id];

	if (line == 0)
		line = r->source->row_line[e][0];
	problem_add(r->problems, code, set ? "--set" : r->source->name, set ? 0 : line, fields,
		    given, accepted);
}

void rule_tell_row(const struct rule *r, enum problem_code code, enum element e, int row,
		   const char *fields, const char *given, const char *accepted)
{
	const bool set = r->source->row_set[e][row];

	problem_add(r->problems, code, set ? "--set" : r->source->name,
		    set ? 0 : r->source->row_line[e][row], fields, given, accepted);
}

const char *rule_length(const struct rule *r, char *buf, size_t size, double si)
{
	return tape_print(buf, size, si, r->job->units, 16);
}

/* Ground snow and its level, or a place that tells both. */
static void snow_given(const struct rule *r)
{
	const struct job_source *s = r->source;

	if (HAVE(r, FIELD_SITE_SNOW_PLACE) && snow_ground_alaska_row(r->job->site.snow_place) == NULL)
		rule_tell(r, PROBLEM_NOT_A_CHOICE, FIELD_SITE_SNOW_PLACE, "site.snow-place", r->job->site.snow_place,
			  "a place of IBC 2021 Table 1608.2 as printed, such as Juneau or Barter Island; else ground-snow");

	if (!HAVE(r, FIELD_SITE_GROUND_SNOW) && s->line[FIELD_SITE_GROUND_SNOW] == 0 &&
	    s->line[FIELD_SITE_SNOW_PLACE] == 0 && s->row_line[ELEMENT_SITE][0] > 0)
		rule_tell(r, PROBLEM_MISSING, FIELD_SITE_GROUND_SNOW, "site.ground-snow", NULL,
			  "a pressure such as 30 psf, 0 psf where there is none; in Alaska snow-place");
	if (HAVE(r, FIELD_SITE_GROUND_SNOW) && !HAVE(r, FIELD_SITE_GROUND_SNOW_LEVEL) &&
	    s->line[FIELD_SITE_GROUND_SNOW_LEVEL] == 0)
		rule_tell(r, PROBLEM_MISSING, FIELD_SITE_GROUND_SNOW, "site.ground-snow-level", NULL,
			  "one of service, strength");
}

static void snow_level(const struct rule *r)
{
	const struct job_site *s = &r->job->site;
	const enum snow_level wanted = s->code == ASCE7_22 ? SNOW_STRENGTH : SNOW_SERVICE;

	/* nothing is nothing at either level */
	if (!HAVE(r, FIELD_SITE_CODE, FIELD_SITE_GROUND_SNOW, FIELD_SITE_GROUND_SNOW_LEVEL) ||
	    !(s->ground_snow > 0.0) || s->ground_snow_level == wanted)
		return;
	rule_tell(r, PROBLEM_LEVEL, FIELD_SITE_GROUND_SNOW_LEVEL,
		  "site.ground-snow-level, site.code",
		  wanted == SNOW_STRENGTH ? "service with asce7-22"
					  : "strength with asce7-10 or asce7-16",
		  wanted == SNOW_STRENGTH
			  ? "the strength-level value of the 7-22 map"
			  : "the 50-year service-level value of the edition's own map");
}

/* What a sawn rafter cannot be rated without. */
static void rafter_needs(const struct rule *r)
{
	const struct job_framing *f = &r->job->framing;

	if (!HAVE(r, FIELD_FRAMING_KIND) || f->kind != FRAMING_RAFTER)
		return;
	/* a size that was refused has had its own problem */
	if (isnan(f->breadth) && r->source->line[FIELD_FRAMING_SIZE] == 0 &&
	    r->source->line[FIELD_FRAMING_BREADTH] == 0)
		rule_tell(r, PROBLEM_MISSING, FIELD_FRAMING_KIND, "framing.size", NULL,
			  "a size such as 2x6, or breadth and depth as measured");
	else if (isnan(f->depth) && r->source->line[FIELD_FRAMING_SIZE] == 0 &&
		 r->source->line[FIELD_FRAMING_DEPTH] == 0)
		rule_tell(r, PROBLEM_MISSING, FIELD_FRAMING_KIND, "framing.depth", NULL,
			  "a length such as 5-1/2 in");
	if (isnan(f->span) && r->source->line[FIELD_FRAMING_SPAN] == 0)
		rule_tell(r, PROBLEM_MISSING, FIELD_FRAMING_KIND, "framing.span", NULL,
			  "the level distance between supports, such as 11 ft 0 in");
}

/* 1/16 in: how well lumber is measured. */
#define LUMBER_TOLERANCE (M_PER_IN / 16.0)

static void lumber_size(const struct rule *r)
{
	const struct job_framing *f = &r->job->framing;
	double b, d;

	if (HAVE(r, FIELD_FRAMING_SIZE) && size_find(f->size, &b, &d) &&
	    ((HAVE(r, FIELD_FRAMING_BREADTH) && !at_most(fabs(f->breadth - b), LUMBER_TOLERANCE)) ||
	     (HAVE(r, FIELD_FRAMING_DEPTH) && !at_most(fabs(f->depth - d), LUMBER_TOLERANCE))))
		rule_tell(r, PROBLEM_DISAGREE, FIELD_FRAMING_SIZE,
			  "framing.size, framing.breadth, framing.depth", f->size,
			  "the size alone, or breadth and depth as measured alone");
	if (HAVE(r, FIELD_FRAMING_BREADTH, FIELD_FRAMING_DEPTH) && !at_most(f->breadth, f->depth))
		rule_tell(r, PROBLEM_DISAGREE, FIELD_FRAMING_BREADTH,
			  "framing.breadth, framing.depth", "breadth above depth",
			  "breadth is the thin side, depth the tall one");
}

static void screw(const struct rule *r)
{
	const struct job_fastener *f = &r->job->fastener;
	char length[40];

	if (HAVE(r, FIELD_FASTENER_THREAD_LENGTH, FIELD_FASTENER_LENGTH) &&
	    !at_most(f->thread_length, f->length))
		rule_tell(r, PROBLEM_DISAGREE, FIELD_FASTENER_THREAD_LENGTH,
			  "fastener.thread-length, fastener.length",
			  rule_length(r, length, sizeof length, f->thread_length),
			  "no more thread than the screw is long");
	const int rows = f->rows > 1 ? f->rows : 1;

	if (HAVE(r, FIELD_FASTENER_COUNT) && rows > 1 && f->count % rows != 0)
		rule_tell(r, PROBLEM_DISAGREE, FIELD_FASTENER_ROWS, "fastener.rows, fastener.count",
			  NULL, "a count that divides by the rows");
	if (HAVE(r, FIELD_FASTENER_ROWS) && rows > 1 && isnan(f->row_spacing) &&
	    r->source->line[FIELD_FASTENER_ROW_SPACING] == 0)
		rule_tell(r, PROBLEM_MISSING, FIELD_FASTENER_ROWS, "fastener.row-spacing", NULL,
			  "the distance between two rows of screws, such as 1-1/2 in");
	if (HAVE(r, FIELD_FASTENER_COUNT) && f->count > rows && isnan(f->spacing) &&
	    r->source->line[FIELD_FASTENER_SPACING] == 0)
		rule_tell(r, PROBLEM_MISSING, FIELD_FASTENER_COUNT, "fastener.spacing", NULL,
			  "the distance between the screws of one foot, such as 2 in");
}

static void spacing(const struct rule *r)
{
	const struct job_mount *m = &r->job->mount;
	char length[40];

	if (HAVE(r, FIELD_MOUNT_SPACING, FIELD_MOUNT_MAX_SPACING) &&
	    !at_most(m->spacing, m->max_spacing))
		rule_tell(r, PROBLEM_DISAGREE, FIELD_MOUNT_SPACING,
			  "mount.spacing, mount.max-spacing",
			  rule_length(r, length, sizeof length, m->spacing),
			  "no more than the maker allows");
}

static bool same_coefficient(const struct job_coefficient *a, const struct job_coefficient *b)
{
	return a->zone[0] != '\0' && strcmp(a->zone, b->zone) == 0 && at_most(a->area, b->area) &&
	       at_least(a->area, b->area);
}

static void coefficients(const struct rule *r)
{
	char field[64];

	for (int i = 0; i < r->job->coefficients; i++) {
		const struct job_coefficient *c = &r->job->coefficient[i];
		const bool down = strcmp(c->zone, "down") == 0;

		snprintf(field, sizeof field, "coefficient[%d].GCp", i + 1);
		if (c->zone[0] != '\0' && !isnan(c->GCp) &&
		    (down ? !(c->GCp > 0.0) : !(c->GCp < 0.0)))
			rule_tell_row(r, PROBLEM_DISAGREE, ELEMENT_COEFFICIENT, i, field,
				      down ? "not above zero" : "not below zero",
				      "minus away from the roof, plus for zone down");
		for (int j = 0; j < i; j++)
			if (same_coefficient(c, &r->job->coefficient[j])) {
				snprintf(field, sizeof field, "coefficient[%d], coefficient[%d]",
					 j + 1, i + 1);
				rule_tell_row(r, PROBLEM_TWICE, ELEMENT_COEFFICIENT, i, field,
					      c->zone, "each zone and area once");
				break;
			}
	}
}

void job_validate(const struct job *job, const struct job_source *source,
		  struct problem_list *problems)
{
	const struct rule r = {job, source, problems};

	snow_given(&r);
	snow_level(&r);
	rules_of_wind(&r);
	rafter_needs(&r);
	lumber_size(&r);
	screw(&r);
	spacing(&r);
	coefficients(&r);
	rules_of_roof(&r);
	rules_of_array(&r);
	rules_of_framing(&r);
	rules_of_fastener(&r);
	rules_of_loads(&r);
	rules_of_access(&r);
}
