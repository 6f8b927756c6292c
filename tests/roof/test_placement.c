/* SPDX-License-Identifier: MIT */
/* Feet along one line: held against trying every subset of rafters. */
#include <math.h>
#include <stdlib.h>

#include "near.h"
#include "roof/placement.h"

#define SMALL 11

static double constant(const void *context, double xa, double xb)
{
	(void)xa;
	(void)xb;
	return *(const double *)context;
}

struct set {
	int at[SMALL], count;
};

static struct set members(unsigned bits)
{
	struct set s = { .count = 0 };

	for (int i = 0; i < SMALL; i++)
		if (bits & (1u << i))
			s.at[s.count++] = i;
	return s;
}

/* The rules of the header, said once more: under the line, ends within the cantilever or at the outermost rafter, bays
   within the limit or between neighbours. */
static int allowed(const struct placement *p, const struct set *s, int low, int last)
{
	const double limit = *(const double *)p->context;

	if (s->count < 2 || s->at[0] < low || s->at[s->count - 1] > last)
		return 0;
	if (s->at[0] != low && p->rafter[s->at[0]] - p->x0 > p->left + 1e-9)
		return 0;
	if (s->at[s->count - 1] != last && p->x1 - p->rafter[s->at[s->count - 1]] > p->right + 1e-9)
		return 0;
	for (int i = 1; i < s->count; i++) {
		const int bays = s->at[i] - s->at[i - 1];

		if (bays > 1 && (bays > p->bays || p->rafter[s->at[i]] - p->rafter[s->at[i - 1]] > limit + 1e-9))
			return 0;
	}
	return 1;
}

static int fewest(const struct placement *p)
{
	int low = 0, last = SMALL - 1, best = SMALL + 1;

	while (low < SMALL && p->rafter[low] < p->x0)
		low++;
	while (last >= 0 && p->rafter[last] > p->x1)
		last--;
	for (unsigned bits = 1; bits < 1u << SMALL; bits++) {
		const struct set s = members(bits);

		if (s.count < best && allowed(p, &s, low, last))
			best = s.count;
	}
	return best;
}

static double between(double low, double high)
{
	return low + (high - low) * rand() / RAND_MAX;
}

static void test_as_few_as_brute_force(void **state)
{
	(void)state;
	srand(7);
	for (int n = 0; n < 400; n++) {
		double rafter[SMALL], limit = between(0.3, 2.5);
		int chosen[SMALL];

		rafter[0] = between(0, 0.4);
		for (int i = 1; i < SMALL; i++)
			rafter[i] = rafter[i - 1] + between(0.25, 0.75);
		const struct placement p = { .x0 = between(0, 1), .x1 = between(3, 5), .rafter = rafter,
			                     .rafters = SMALL, .bays = 1 + rand() % 6, .left = between(0, 0.8),
			                     .right = between(0, 0.8), .limit = constant, .context = &limit };

		assert_int_equal(placement_find(&p, chosen, SMALL), fewest(&p));
	}
}

/* Seven rafters 0.4 m apart, bays of up to three: 0, 3, 6 and not 0, 2, 5, 6 nor 0, 1, ...; ends given no cantilever. */
static void test_even(void **state)
{
	(void)state;
	const double rafter[] = { 0, 0.4, 0.8, 1.2, 1.6, 2.0, 2.4 }, limit = 1.2;
	const struct placement p = { .x0 = 0, .x1 = 2.4, .rafter = rafter, .rafters = 7, .bays = 7, .limit = constant,
		                     .context = &limit };
	int chosen[7];

	assert_int_equal(placement_find(&p, chosen, 7), 3);
	assert_int_equal(chosen[0], 0);
	assert_int_equal(chosen[1], 3);
	assert_int_equal(chosen[2], 6);
}

static void test_stagger_leaves_out_the_first(void **state)
{
	(void)state;
	const double rafter[] = { 0, 0.4, 0.8, 1.2, 1.6 }, limit = 0.8;
	const struct placement p = { .x0 = 0, .x1 = 1.6, .rafter = rafter, .rafters = 5, .skip = 1, .bays = 2,
		                     .left = 0.4, .right = 0.4, .limit = constant, .context = &limit };
	int chosen[5];

	assert_int_equal(placement_find(&p, chosen, 5), 2);
	assert_int_equal(chosen[0], 1);
	assert_int_equal(chosen[1], 3);
}

static void test_no_rafter_or_one(void **state)
{
	(void)state;
	const double rafter[] = { 1, 3 }, limit = 5;
	struct placement p = { .x0 = 1.5, .x1 = 2.5, .rafter = rafter, .rafters = 2, .bays = 2, .limit = constant,
		               .context = &limit };
	int chosen[2];

	assert_int_equal(placement_find(&p, chosen, 2), 0);
	p.x1 = 3.5;
	assert_int_equal(placement_find(&p, chosen, 2), 1);
	assert_int_equal(chosen[0], 1);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_as_few_as_brute_force),
		cmocka_unit_test(test_even),
		cmocka_unit_test(test_stagger_leaves_out_the_first),
		cmocka_unit_test(test_no_rafter_or_one),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
