/* SPDX-License-Identifier: MIT */
/* Load combinations: the factor columns against the combination as text, which is read here by a
   second method. ASCE/SEI 7-10 2.3.2, 2.4.1; 7-16 and 7-22 2.3.1, 2.3.6, 2.4.1, 2.4.5. */
#include "table/lookup_combination.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "near.h"

#define ASD LOAD_COMBINATION_METHOD_ASD
#define LRFD LOAD_COMBINATION_METHOD_LRFD
#define UPLIFT LOAD_COMBINATION_USE_UPLIFT
#define DOWN LOAD_COMBINATION_USE_DOWN
#define SEISMIC LOAD_COMBINATION_USE_SEISMIC

struct factors {
	double D, Lr, S, W, Ev, Eh;
};

static const char *take_number(const char *p, double *number)
{
	char *end;
	const double read = strtod(p, &end);

	*number = end == p ? 1.0 : read;
	return end;
}

/* E acts with the dead load (Ev down) or against it (Ev up), and sideways in both. */
static void add(struct factors *f, const char *name, size_t n, double factor, bool reduced_dead)
{
	if (n == 2 && memcmp(name, "Lr", 2) == 0)
		f->Lr += factor;
	else if (n == 2 && memcmp(name, "Ev", 2) == 0)
		f->Ev += factor;
	else if (n == 2 && memcmp(name, "Eh", 2) == 0)
		f->Eh += factor;
	else if (*name == 'D')
		f->D += factor;
	else if (*name == 'S')
		f->S += factor;
	else if (*name == 'W')
		f->W += factor;
	else if (*name == 'E') {
		f->Eh += factor;
		f->Ev += reduced_dead ? -factor : factor;
	} else
		fail_msg("unknown load %.*s", (int)n, name);
}

/* "D + 0.75(0.6W) + 0.75S" */
static struct factors read_text(const char *p)
{
	struct factors f = {0, 0, 0, 0, 0, 0};

	while (*p != '\0') {
		double factor, inner = 1.0, sign = 1.0;
		const char *name;
		size_t n;

		if (*p == '+' || *p == '-') {
			sign = *p == '-' ? -1.0 : 1.0;
			p += 2;
		}
		p = take_number(p, &factor);
		if (*p == '(')
			p = take_number(p + 1, &inner);
		name = p;
		n = strcspn(p, ") ");
		add(&f, name, n, sign * factor * inner, f.D < 1.0);
		p += n;
		p += *p == ')';
		p += *p == ' ';
	}
	return f;
}

static void factors_match_the_text(void **state)
{
	(void)state;
	for (size_t i = 0; i < TABLE_LOAD_COMBINATION_COUNT; i++) {
		const struct load_combination_row *r = &table_load_combination[i];
		const struct factors f = read_text(r->text);

		assert_row(r->text, r->D, f.D, 1e-15);
		assert_row(r->text, r->Lr, f.Lr, 1e-15);
		assert_row(r->text, r->S, f.S, 1e-15);
		/* Wind against dead load lifts. */
		assert_row(r->text, r->W, r->use == UPLIFT ? -f.W : f.W, 1e-15);
		assert_row(r->text, r->Ev, f.Ev, 1e-15);
		assert_row(r->text, r->Eh, f.Eh, 1e-15);
		assert_int_equal(r->use, r->Eh > 0              ? SEISMIC
					 : f.W > 0 && f.D < 1.0 ? UPLIFT
								: DOWN);
	}
}

/* NDS Table 2.3.2 and Table N3: the shortest load of the combination rules. */
static void duration(void **state)
{
	(void)state;
	for (size_t i = 0; i < TABLE_LOAD_COMBINATION_COUNT; i++) {
		const struct load_combination_row *r = &table_load_combination[i];
		const bool wind = r->W < 0 || r->W > 0 || r->Eh > 0;

		if (r->method == ASD) {
			assert_near(r->CD,
				    wind        ? 1.6
				    : r->Lr > 0 ? 1.25
				    : r->S > 0  ? 1.15
						: 0.9,
				    0);
			assert_true(isnan(r->lambda));
		} else {
			const bool full = r->Eh > 0 || fabs(r->W) > 0.99;

			assert_near(r->lambda, full ? 1.0 : r->Lr > 0 || r->S > 0 ? 0.8 : 0.6, 0);
			assert_true(isnan(r->CD));
		}
	}
}

static const struct load_combination_row *find(enum edition e, enum load_combination_method m,
					       const char *text)
{
	const struct load_combination_list list = load_combinations(e, m);

	for (size_t i = 0; i < list.count; i++)
		if (strcmp(list.row[i].text, text) == 0)
			return &list.row[i];
	fail_msg("no %s", text);
	return NULL;
}

static void lists(void **state)
{
	static const struct {
		enum edition edition;
		enum load_combination_method method;
		size_t count;
		double D, S, W; /* column sums, by hand */
	} rows[] = {
		/* D; Lr, S; W; W with Lr, S; uplift; three with E */
		{ASCE7_10, ASD, 10, 9.2, 1 + 0.75 + 0.75, 0.6 + 0.45 + 0.45 - 0.6},
		{ASCE7_16, ASD, 10, 9.2, 1 + 0.75 + 0.75, 0.6 + 0.45 + 0.45 - 0.6},
		{ASCE7_22, ASD, 10, 9.2, 0.7 + 0.525 + 0.1, 0.6 + 0.45 + 0.45 - 0.6},
		{ASCE7_10, LRFD, 8, 9.2, 1.6 + 0.5 + 0.2, 0.5 + 0.5 + 1 + 1 - 1},
		{ASCE7_16, LRFD, 8, 9.2, 1.6 + 0.5 + 0.2, 0.5 + 0.5 + 1 + 1 - 1},
		{ASCE7_22, LRFD, 8, 9.2, 1.0 + 0.3 + 0.15, 0.5 + 0.5 + 1 + 1 - 1},
	};
	size_t all = 0;

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct load_combination_list list =
			load_combinations(rows[i].edition, rows[i].method);
		double D = 0, S = 0, W = 0;

		assert_int_equal(list.count, rows[i].count);
		for (size_t k = 0; k < list.count; k++) {
			/* stand together */
			assert_int_equal(list.row[k].edition, rows[i].edition);
			assert_int_equal(list.row[k].method, rows[i].method);
			D += list.row[k].D;
			S += list.row[k].S;
			W += list.row[k].W;
		}
		assert_near(D, rows[i].D, 1e-13);
		assert_near(S, rows[i].S, 1e-13);
		assert_near(W, rows[i].W, 1e-13);
		all += list.count;
	}
	assert_int_equal(all, TABLE_LOAD_COMBINATION_COUNT);
	assert_int_equal(load_combinations(EDITION_ANY, ASD).count, 0);
}

static void status_of_the_editions(void **state)
{
	(void)state;
	assert_int_equal(find(ASCE7_10, ASD, "0.6D + 0.6W")->status, CONFIRMED);
	assert_int_equal(find(ASCE7_16, ASD, "0.6D + 0.6W")->status, CONFIRMED);
	assert_int_equal(find(ASCE7_22, ASD, "0.6D + 0.6W")->status, ONE_SOURCE);
	assert_int_equal(find(ASCE7_22, LRFD, "0.9D + 1.0W")->status, CONFIRMED);
	assert_int_equal(find(ASCE7_16, ASD, "D + S")->status, ONE_SOURCE);
	assert_int_equal(find(ASCE7_22, ASD, "D + 0.7S")->status, CONFIRMED);
	assert_string_equal(find(ASCE7_16, ASD, "0.6D + 0.6W")->id, "7");
	assert_string_equal(find(ASCE7_16, ASD, "D + S")->variant, "S");
	assert_null(find(ASCE7_16, ASD, "D + 0.6W")->variant);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(factors_match_the_text),
		cmocka_unit_test(duration),
		cmocka_unit_test(lists),
		cmocka_unit_test(status_of_the_editions),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
