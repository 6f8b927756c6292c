/* SPDX-License-Identifier: MIT */
/* Every input and where it came from, so that the reader can say "that is not my house". What was
   assumed comes first, with how to find it out. */
#include <assert.h>
#include <stdio.h>
#include <string.h>

#include "report/check_part.h"
#include "report/field_value.h"

/* For the names of all fields one after another: the longest has 30 letters. */
#define NAMES_ROOM ((size_t)FIELD_COUNT * 48)

static bool assumed(const struct job *job, const struct field *field)
{
	return !field_repeats(field) && job->origin[field->id] == ORIGIN_ASSUMED;
}

static void add_assumed(const struct part *p)
{
	bool any = false;

	for (int i = 0; i < FIELD_COUNT; i++)
		any = any || assumed(p->job, &field_table[i]);
	if (!any)
		return;
	document_add(p->d, BLOCK_HEADING, 2, "Assumed, because it is not known");
	for (int i = 0; i < FIELD_COUNT; i++) {
		const struct field *field = &field_table[i];

		if (!assumed(p->job, field))
			continue;
		document_add(p->d, BLOCK_BULLET, 0, "%s.%s = %s. To find out: %s", field->element,
		             field->attribute, field_text(&p->f, p->job, field, 0),
		             field->measured ? field->measured : "ask.");
	}
}

/* " (assumed)"; nothing for what the job file says. */
static const char *origin_of(const struct part *p, const struct field *field)
{
	const enum field_origin origin = field_origin_of(p->job, field);

	return origin == ORIGIN_FILE ? "" : document_text(p->d, " (%s)", field_origin_text(origin));
}

static void add_row(const struct part *p, const struct field *field, int n)
{
	const bool many = field_repeats(field) && field_occurrences(p->job, field) > 1;
	const char *name =
		many ? document_text(p->d, "%s[%d].%s", field->element, n + 1, field->attribute)
		     : document_text(p->d, "%s.%s", field->element, field->attribute);

	document_pair(p->d, name, "", "%s%s", field_text(&p->f, p->job, field, n),
	              origin_of(p, field));
}

static bool same_element(const struct field *a, const struct field *b)
{
	return strcmp(a->element, b->element) == 0;
}

/* One element: its rows occurrence by occurrence. */
static void add_element(const struct part *p, int first, int end)
{
	for (int n = 0; n < field_occurrences(p->job, &field_table[first]); n++)
		for (int i = first; i < end; i++)
			if (field_present(p->job, &field_table[i], n) &&
			    (field_repeats(&field_table[i]) || p->job->origin[i] != ORIGIN_ABSENT))
				add_row(p, &field_table[i], n);
}

static bool absent(const struct part *p, int i)
{
	return !field_repeats(&field_table[i]) && p->job->origin[i] == ORIGIN_ABSENT;
}

/* A name behind the others of a list, which has room for all there are. */
static void add_name(char *list, size_t *length, const char *element, const char *attribute)
{
	const size_t room = NAMES_ROOM - *length;
	const int n = snprintf(list + *length, room, "%s%s%s%s", *length > 0 ? ", " : "", element,
			       *attribute ? "." : "", attribute);

	assert(n > 0 && (size_t)n < room);
	*length += (size_t)n;
}

/* Fields of an element that nothing stands in for; an element of which that is true altogether, by its name alone. */
static void add_absent(const struct part *p)
{
	char list[NAMES_ROOM] = "", whole[NAMES_ROOM] = "";
	size_t names = 0, wholes = 0;

	for (int i = 0, end; i < FIELD_COUNT; i = end) {
		int n = 0;

		for (end = i; end < FIELD_COUNT && same_element(&field_table[i], &field_table[end]); end++)
			n += absent(p, end);
		if (n == end - i)
			add_name(whole, &wholes, field_table[i].element, "");
		for (int k = i; k < end && n < end - i; k++)
			if (absent(p, k))
				add_name(list, &names, field_table[k].element, field_table[k].attribute);
	}
	if (*list)
		document_add(p->d, BLOCK_PARAGRAPH, 0,
		             "Not given, and nothing put in its place: %s.", list);
	if (*whole)
		document_add(p->d, BLOCK_PARAGRAPH, 0, "Nothing at all is given of: %s.", whole);
}

void part_inputs(const struct part *p)
{
	document_add(p->d, BLOCK_HEADING, 1, "Inputs and where they came from");
	add_assumed(p);
	document_add(p->d, BLOCK_HEADING, 2, "All inputs");
	document_add(p->d, BLOCK_PARAGRAPH, 0,
	             "From the job file, unless another origin stands behind the value.");
	document_pairs(p->d);
	/* The title stands at the top of the report. */
	for (int i = FIELD_JOB_TITLE + 1, end; i < FIELD_COUNT; i = end) {
		for (end = i + 1;
		     end < FIELD_COUNT && same_element(&field_table[i], &field_table[end]);)
			end++;
		add_element(p, i, end);
	}
	add_absent(p);
}
