/* SPDX-License-Identifier: MIT */
/* Fills in what was not given: defaults and conservative assumptions of the field table, and
   values that follow from others. Tells what is missing. */
#include <assert.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "job/draft.h"
#include "job/size.h"
#include "job/value.h"
#include "table/lookup_snow.h"

static void *row_base(const struct draft *d, enum element e, int row)
{
	return (char *)d->job + element_table[e].array + (size_t)row * element_table[e].stride;
}

static bool bit_set(const uint32_t bits[ELEMENT_COUNT][ROWS_MAX], enum element e, int row,
		    const struct field *f)
{
	return (bits[e][row] >> (f->id - element_table[e].first)) & 1u;
}

/* Line to name for something that is not there: its element's, or the root's. */
static int missing_line(const struct draft *d, enum element e, int row)
{
	const int own = d->source.row_line[e][row];

	return own > 0 ? own : d->source.row_line[ELEMENT_JOB][0];
}

/* An element of which nothing at all was given is told once, with the fields that it cannot do
   without. */
static bool whole_element_missing(struct draft *d, enum element e)
{
	char needed[PROBLEM_TEXT_MAX] = "an element with ";
	const char *separator = "";

	if (element_table[e].max > 1 || d->source.row_line[e][0] > 0 || d->given[e][0] != 0)
		return false;
	for (size_t i = element_table[e].first; i <= (size_t)element_table[e].last; i++) {
		const size_t n = strlen(needed);

		if (field_table[i].need != NEED_REQUIRED)
			continue;
		snprintf(needed + n, sizeof needed - n, "%s%s", separator,
			 field_table[i].attribute);
		separator = ", ";
	}
	if (separator[0] == '\0')
		return false;
	problem_add(d->problems, PROBLEM_MISSING, d->source.name, missing_line(d, e, 0),
		    element_table[e].name, NULL, needed);
	return true;
}

static void tell_missing(struct draft *d, enum element e, int row, const struct field *f)
{
	char path[80], accepted[ACCEPTED_MAX];

	problem_add(d->problems, PROBLEM_MISSING, d->source.name, missing_line(d, e, row),
		    draft_path(path, sizeof path, f, row), NULL,
		    value_accepted(accepted, sizeof accepted, f, PROBLEM_MISSING, d->job->units));
}

static void fill_field(struct draft *d, enum element e, int row, const struct field *f)
{
	const bool given = bit_set(d->given, e, row, f), unknown = bit_set(d->unknown, e, row, f);
	enum problem_code code;

	if (given && !unknown)
		return;
	if (f->need == NEED_REQUIRED) {
		tell_missing(d, e, row, f);
		return;
	}
	if (!f->fallback)
		return;
	code = value_store(f, row_base(d, e, row), f->fallback);
	/* a fallback that does not read is our own slip; a test reads them all */
	assert(code == PROBLEM_NONE);
	(void)code;
	if (d->job->origin[f->id] == ORIGIN_ABSENT)
		d->job->origin[f->id] = f->need == NEED_DEFAULT ? ORIGIN_DEFAULT : ORIGIN_ASSUMED;
}

/* A size stands for breadth and depth that are not measured. */
static void follow_size(struct job *job)
{
	struct job_framing *const f = &job->framing;
	double b, d;

	if (f->size[0] == '\0' || !size_find(f->size, &b, &d))
		return;
	if (isnan(f->breadth)) {
		f->breadth = b;
		job->origin[FIELD_FRAMING_BREADTH] = job->origin[FIELD_FRAMING_SIZE];
	}
	if (isnan(f->depth)) {
		f->depth = d;
		job->origin[FIELD_FRAMING_DEPTH] = job->origin[FIELD_FRAMING_SIZE];
	}
}

/* Rafters measured one by one: the first of them, and for strength the widest gap. */
static void follow_rafters(struct job_framing *f)
{
	double widest = 0.0;

	if (f->measured < 2)
		return;
	for (int i = 1; i < f->measured; i++)
		widest = fmax(widest, f->at[i] - f->at[i - 1]);
	if (isnan(f->spacing))
		f->spacing = widest;
	if (isnan(f->first))
		f->first = f->at[0];
}

/* The ground snow of a place in Alaska, where the job gives none itself. */
static void follow_snow_place(struct job *job)
{
	const struct snow_ground_alaska_row *row = snow_ground_alaska_row(job->site.snow_place);

	if (row == NULL || job->origin[FIELD_SITE_GROUND_SNOW] != ORIGIN_ABSENT)
		return;
	job->site.ground_snow = unit_to_si(row->pg_psf, UNIT_PSF);
	job->site.ground_snow_level = SNOW_SERVICE;
	job->site.snow_from_place = true;
	job->origin[FIELD_SITE_GROUND_SNOW] = job->origin[FIELD_SITE_SNOW_PLACE];
	job->origin[FIELD_SITE_GROUND_SNOW_LEVEL] = job->origin[FIELD_SITE_SNOW_PLACE];
}

/* What a collector is filled with matters only when its filled weight is to be computed. */
static void drop_fluid(struct job *job)
{
	struct job_collector *const c = &job->collector;

	if (job->origin[FIELD_COLLECTOR_FLUID] != ORIGIN_ASSUMED)
		return;
	if (c->kind == COLLECTOR_PV || !isnan(c->filled_weight)) {
		c->fluid = FLUID_NONE;
		job->origin[FIELD_COLLECTOR_FLUID] = ORIGIN_ABSENT;
	}
}

/* A gap between one thing and nothing. */
static void drop_gaps(struct job_collector *c)
{
	if (c->columns == 1 && isnan(c->column_gap))
		c->column_gap = 0.0;
	if (c->rows == 1 && isnan(c->row_gap))
		c->row_gap = 0.0;
}

void draft_fill(struct draft *d)
{
	for (size_t e = 0; e < ELEMENT_COUNT; e++) {
		const bool absent = whole_element_missing(d, (enum element)e);

		for (int row = 0; row < draft_rows(d, (enum element)e); row++)
			for (size_t i = element_table[e].first; i <= (size_t)element_table[e].last;
			     i++)
				if (!absent || field_table[i].need != NEED_REQUIRED)
					fill_field(d, (enum element)e, row, &field_table[i]);
	}
	follow_size(d->job);
	follow_rafters(&d->job->framing);
	follow_snow_place(d->job);
	drop_fluid(d->job);
	drop_gaps(&d->job->collector);
}
