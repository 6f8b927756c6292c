/* SPDX-License-Identifier: MIT */
/* Every row of the field table is sane: one row for each path, a range with room in it, a
   fallback and an example that can be read, words that say something. */
#include "job/field.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "job/element.h"
#include "job/job.h"
#include "job/value.h"
#include "near.h"

static struct job job;

static const char *path_of(const struct field *f)
{
	static char path[80];

	snprintf(path, sizeof path, "%s.%s", f->element, f->attribute);
	return path;
}

#define ROW_TRUE(f, condition)                                                                     \
	do {                                                                                       \
		if (!(condition))                                                                  \
			fail_msg("%s: %s", path_of(f), #condition);                                \
	} while (0)

/* Trade words in small letters; symbols in the case of the standard. */
#define LETTERS "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-"

static void test_paths(void **state)
{
	(void)state;
	for (size_t i = 0; i < FIELD_COUNT; i++) {
		const struct field *f = &field_table[i];

		ROW_TRUE(f, f->id == (enum field_id)i);
		ROW_TRUE(f, field_find(path_of(f)) == f);
		ROW_TRUE(f, strspn(f->attribute, LETTERS) == strlen(f->attribute));
		ROW_TRUE(f, element_find(f->element) == element_of(f->id));
		ROW_TRUE(f, element_field(element_of(f->id), f->attribute) == f);
		ROW_TRUE(f, field_repeats(f) == (element_table[element_of(f->id)].max > 1));
	}
	assert_null(field_find("roof"));
	assert_null(field_find("roof."));
	assert_null(field_find("roof.Pitch"));
	assert_null(field_find("pitch"));
	assert_null(field_find(""));
}

/* Elements follow each other without gap or overlap, and know their fields. */
static void test_elements(void **state)
{
	(void)state;
	for (size_t e = 0; e < ELEMENT_COUNT; e++) {
		const struct element_row *r = &element_table[e];

		assert_int_equal(r->first, e == 0 ? 0 : element_table[e - 1].last + 1);
		assert_true(r->last >= r->first && r->last - r->first < 32);
		assert_true(r->max >= 1 && r->max <= ROWS_MAX);
		assert_true(strlen(r->meaning) > 10);
		for (size_t i = r->first; i <= (size_t)r->last; i++)
			assert_string_equal(field_table[i].element, r->name);
	}
	assert_int_equal(element_table[ELEMENT_COUNT - 1].last, FIELD_COUNT - 1);
}

static void test_ranges(void **state)
{
	(void)state;
	for (size_t i = 0; i < FIELD_COUNT; i++) {
		const struct field *f = &field_table[i];
		const bool number = f->type == FIELD_QUANTITY || f->type == FIELD_NUMBER ||
				    f->type == FIELD_INTEGER;

		ROW_TRUE(f, !number || f->min < f->max);
		ROW_TRUE(f, f->type != FIELD_QUANTITY || (unit_dimension(f->us) == f->dimension &&
							  unit_dimension(f->si) == f->dimension));
		ROW_TRUE(f, f->type != FIELD_QUANTITY || f->dimension != DIM_NONE);
		ROW_TRUE(f, f->type != FIELD_CHOICE || f->choice);
		ROW_TRUE(f, !number || f->size == (f->type == FIELD_INTEGER ? sizeof(int)
									    : sizeof(double)));
		ROW_TRUE(f, f->type != FIELD_CHOICE || f->size == sizeof(int));
		for (const struct field_choice *c = f->choice; c && c->word; c++)
			ROW_TRUE(f, strlen(c->meaning) >= 2);
	}
}

/* A fallback stands exactly where the need says so; fallback and example can be read. */
static void test_texts(void **state)
{
	(void)state;
	for (size_t i = 0; i < FIELD_COUNT; i++) {
		const struct field *f = &field_table[i];
		char row[sizeof(struct job_coefficient) + sizeof(struct job_pipe)];
		void *const base = field_repeats(f) ? (void *)row : (void *)&job;

		ROW_TRUE(f, (f->fallback != NULL) ==
				    (f->need == NEED_DEFAULT || f->need == NEED_ASSUMED));
		ROW_TRUE(f, !f->fallback || value_store(f, base, f->fallback) == PROBLEM_NONE);
		ROW_TRUE(f, f->example && value_store(f, base, f->example) == PROBLEM_NONE);
		ROW_TRUE(f, f->meaning && strlen(f->meaning) > 15 &&
				    f->meaning[strlen(f->meaning) - 1] == '.');
		ROW_TRUE(f, f->measured && strlen(f->measured) >= 5);
		ROW_TRUE(f, strchr(".?", f->measured[strlen(f->measured) - 1]));
		ROW_TRUE(f, !strstr(f->meaning, "  ") && !strstr(f->measured, "  "));
	}
}

/* No two fields share a byte of their struct. */
static void test_members(void **state)
{
	(void)state;
	for (size_t i = 0; i < FIELD_COUNT; i++)
		for (size_t j = 0; j < i; j++) {
			const struct field *f = &field_table[i], *g = &field_table[j];

			if (field_repeats(f) != field_repeats(g) ||
			    (field_repeats(f) && element_of(f->id) != element_of(g->id)))
				continue;
			ROW_TRUE(f, f->offset + f->size <= g->offset ||
					    g->offset + g->size <= f->offset);
		}
}

/* At each end of a range a value is accepted, just beyond it it is not. */
static void test_limits(void **state)
{
	char text[64];

	(void)state;
	for (size_t i = 0; i < FIELD_COUNT; i++) {
		const struct field *f = &field_table[i];
		char row[sizeof(struct job_coefficient) + sizeof(struct job_pipe)];
		void *const base = field_repeats(f) ? (void *)row : (void *)&job;
		const enum unit u = f->dimension == DIM_ANGLE ? UNIT_RAD : f->us;
		const double width = f->max - f->min;
		const struct {
			double value;
			enum problem_code code;
		} at[] = {
			{f->min, PROBLEM_NONE},
			{f->max, PROBLEM_NONE},
			{f->min - 1e-6 * width, PROBLEM_OUT_OF_RANGE},
			{f->max + 1e-6 * width, PROBLEM_OUT_OF_RANGE},
			{(f->min + f->max) / 2, PROBLEM_NONE},
		};

		if (f->type != FIELD_QUANTITY && f->type != FIELD_NUMBER)
			continue;
		for (size_t k = 0; k < sizeof at / sizeof at[0]; k++) {
			snprintf(text, sizeof text, "%.17g %s", unit_from_si(at[k].value, u),
				 unit_text(u));
			if (value_store(f, base, text) != at[k].code)
				fail_msg("%s=`%s`: want %d", path_of(f), text, at[k].code);
		}
	}
}

/* The ends of a range as they are printed are themselves accepted, in both systems. */
static void test_printed_ranges(void **state)
{
	char range[100], *to;

	(void)state;
	for (size_t i = 0; i < FIELD_COUNT; i++)
		for (int s = 0; s < SYSTEM_COUNT; s++) {
			const struct field *f = &field_table[i];
			char row[sizeof(struct job_coefficient) + sizeof(struct job_pipe)];
			void *const base = field_repeats(f) ? (void *)row : (void *)&job;

			if (f->type != FIELD_QUANTITY && f->type != FIELD_NUMBER &&
			    f->type != FIELD_INTEGER)
				continue;
			value_range(range, sizeof range, f, (enum unit_system)s);
			to = strstr(range, " to ");
			assert_non_null(to);
			*to = '\0';
			ROW_TRUE(f, value_store(f, base, range) == PROBLEM_NONE);
			ROW_TRUE(f, value_store(f, base, to + 4) == PROBLEM_NONE);
		}
}

static void test_known_ranges(void **state)
{
	char buf[ACCEPTED_MAX];

	(void)state;
	assert_string_equal(value_range(buf, sizeof buf, &field_table[FIELD_ROOF_PITCH], SYSTEM_US),
			    "0:12 to 24:12");
	assert_string_equal(
		value_range(buf, sizeof buf, &field_table[FIELD_SITE_WIND_SPEED], SYSTEM_US),
		"85 mph to 250 mph");
	/* 85 x 0.44704 = 37.998, 250 x 0.44704 = 111.76: up and down */
	assert_string_equal(
		value_range(buf, sizeof buf, &field_table[FIELD_SITE_WIND_SPEED], SYSTEM_SI),
		"38 m/s to 111.7 m/s");
	assert_string_equal(value_accepted(buf, sizeof buf, &field_table[FIELD_SITE_EXPOSURE],
					   PROBLEM_NOT_A_CHOICE, SYSTEM_US),
			    "B, C, D; or unknown");
	assert_string_equal(value_accepted(buf, sizeof buf, &field_table[FIELD_COLLECTOR_COLUMNS],
					   PROBLEM_OUT_OF_RANGE, SYSTEM_US),
			    "a whole number, 1 to 64; such as 2");
	for (size_t i = 0; i < FIELD_COUNT; i++) {
		/* the longest of these texts must not be cut */
		value_accepted(buf, sizeof buf, &field_table[i], PROBLEM_WRONG_UNIT, SYSTEM_SI);
		ROW_TRUE(&field_table[i], strlen(buf) + 1 < sizeof buf);
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_paths),          cmocka_unit_test(test_elements),
		cmocka_unit_test(test_ranges),         cmocka_unit_test(test_texts),
		cmocka_unit_test(test_members),        cmocka_unit_test(test_limits),
		cmocka_unit_test(test_printed_ranges), cmocka_unit_test(test_known_ranges),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
