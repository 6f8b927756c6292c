/* SPDX-License-Identifier: MIT */
/* Joints of rails, against trying every set of places on a grid. */
#include <math.h>
#include <stdbool.h>
#include <stdlib.h>

#include "near.h"
#include "resist/random.h"
#include "roof/splice.h"

#define GRID 0.1
#define POINTS 128

static bool fits(const struct splice_rail *r, double x)
{
	for (int i = 1; i + 1 < r->feet && r->feet >= 4; i++) {
		const double d = x - r->foot[i];
		const double span = d > 0 ? (i + 2 < r->feet ? r->foot[i + 1] - r->foot[i] : 0)
					  : (i > 1 ? r->foot[i] - r->foot[i - 1] : 0);

		if (fabs(d) <= r->reach * span + 1e-9)
			return true;
	}
	return false;
}

/* Fewest joints, by trying every point of the grid; 99: no way. */
static int fewest(const struct splice_rail *r)
{
	const int end = (int)lround((r->x1 - r->x0) / GRID);
	int rest[POINTS];

	assert_in_range(end, 1, POINTS - 1);
	for (int from = end; from >= 0; from--) {
		rest[from] = (end - from) * GRID <= r->stock + 1e-9 ? 0 : 99;
		for (int to = from + 1; to < end && (to - from) * GRID <= r->stock + 1e-9; to++)
			if (fits(r, r->x0 + to * GRID) && rest[to] + 1 < rest[from])
				rest[from] = rest[to] + 1;
	}
	return rest[0];
}

static double wave(const void *context, double x)
{
	return sin(x * *(const double *)context);
}

static void is_laid(const struct splice_rail *r, const double *at, int n)
{
	double from = r->x0;

	for (int i = 0; i < n; i++) {
		assert_true(at[i] > from && at[i] - from <= r->stock + 1e-9);
		assert_true(fits(r, at[i]));
		from = at[i];
	}
	assert_true(r->x1 - from <= r->stock + 1e-9);
}

static double worst(const double *at, int n, double w)
{
	double most = 0;

	for (int i = 0; i < n; i++)
		most = fmax(most, fabs(wave(&w, at[i])));
	return most;
}

/* The rails lie on the grid, so that the best on the grid is as good as any. */
static void test_grid(void **state)
{
	(void)state;
	uint64_t seed = 5;
	int laid = 0, none = 0;

	for (int i = 0; i < 300; i++) {
		double foot[12], x = 0.3, at[SPLICE_MAX], easy[SPLICE_MAX];
		struct splice_rail r = {.x0 = 0, .foot = foot};

		r.feet = 2 + (int)random_between(&seed, 0, 5.99);
		for (int k = 0; k < r.feet; k++) {
			foot[k] = x;
			x += GRID * floor(random_between(&seed, 4, 12));
		}
		r.x1 = foot[r.feet - 1] + 0.3;
		r.stock = GRID * floor(random_between(&seed, 8, 30));
		r.reach = random_between(&seed, 0, 1) < 0.5 ? 0.5 : 0;
		const int n = splice_lay(&r, at), want = fewest(&r);
		const double w = random_between(&seed, 1, 4);

		if (want >= 99) {
			assert_int_equal(n, -1);
			none++;
			continue;
		}
		assert_int_equal(n, want);
		is_laid(&r, at, n);
		assert_int_equal(splice_lay_easy(&r, wave, &w, easy), n);
		is_laid(&r, easy, n);
		assert_true(worst(easy, n, w) <= worst(at, n, w) + 1e-12);
		laid += n > 0;
	}
	assert_true(laid > 50 && none > 20);
}

/* 10 m of rail on feet at 0.5, 2.5, 4.5, 7.5, 9.5 from pieces of 4 m. Full lengths from the left would
   be joined at 4 and 8; 8 lies in the end span. Within a fifth of a span from a foot the first joint
   may be at 4.1 to 4.5 and on to 5.1, no farther than 4; so it moves back to 2.5 + 0.4 = 2.9, the
   second to 2.9 + 4 = 6.9 (7.5 - 0.6 = 6.9), and 10 - 6.9 = 3.1 is left. */
static void test_by_hand(void **state)
{
	(void)state;
	const double foot[] = {0.5, 2.5, 4.5, 7.5, 9.5};
	struct splice_rail r = {.x0 = 0, .x1 = 10, .stock = 4, .reach = 0.2, .feet = 5, .foot = foot};
	double at[SPLICE_MAX];

	assert_int_equal(splice_lay(&r, at), 2);
	assert_near(at[0], 2.9, 1e-12);
	assert_near(at[1], 6.9, 1e-12);
	r.reach = 0.5;
	assert_int_equal(splice_lay(&r, at), 2);
	assert_near(at[0], 4.0, 1e-12);
	assert_near(at[1], 7.5, 1e-12);
	r.stock = 10;
	assert_int_equal(splice_lay(&r, at), 0);
	r.stock = 2; /* nothing may be joined before 2.5 */
	assert_int_equal(splice_lay(&r, at), -1);
}

/* The same rail with joints told: in the first span, past the foot, out of order, a piece too long. */
static void test_told(void **state)
{
	(void)state;
	const double foot[] = {0.5, 2.5, 4.5, 7.5, 9.5};
	struct splice_rail r = {.x0 = 0, .x1 = 10, .stock = 4, .reach = 0.2, .feet = 5, .foot = foot};
	static const struct {
		double at[3];
		int n;
		bool fits;
	} rows[] = {
		{{2.9, 6.9}, 2, true},       {{2.5, 6.5}, 2, false} /* 2 of 3 m from the nearer foot: 1 m */,
		{{3.0, 6.9}, 2, false},      {{2.9, 7.0}, 2, false} /* 4.1 m between */,
		{{1.0, 4.5, 7.0}, 3, false}, {{6.9, 2.9}, 2, false},
		{{2.6, 4.4, 7.4}, 3, true},  {{4.5}, 1, false} /* 5.5 m at the right */,
	};

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
		assert_int_equal(splice_fits(&r, rows[i].at, rows[i].n), rows[i].fits);
	r.stock = HUGE_VAL;
	assert_true(splice_fits(&r, (const double[]){4.5}, 1));
	assert_false(splice_fits(&r, (const double[]){9.0}, 1));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_grid),
		cmocka_unit_test(test_by_hand),
		cmocka_unit_test(test_told),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
