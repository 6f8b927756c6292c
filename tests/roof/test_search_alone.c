/* SPDX-License-Identifier: MIT */
/* The feet that each line needs by itself, held against trying every subset of its places. What a
   line as a whole is told to be is more than its single feet tell, by a number that is drawn for
   each set of places. */
#include <math.h>
#include <stdint.h>

#include "near.h"
#include "resist/random.h"
#include "roof/search.h"

#define PLACES 8
#define LINES 3
#define SETS (1 << PLACES)

struct roof {
	double x[PLACES];
	struct search_line line[LINES];
	double more[LINES][SETS]; /* what the line has on top of its worst foot */
	double strength[PLACES];  /* of the rafters, m of rail */
	int lines;
};

static double share(const struct roof *r, int line, int a, int b, int c)
{
	const struct search_line *l = &r->line[line];

	return (c < 0 ? l->x1 : (r->x[b] + r->x[c]) / 2) -
	       (a < 0 ? l->x0 : (r->x[a] + r->x[b]) / 2);
}

/* No ratio per metre: then the search takes the plain share, as `whole` does. */
static struct search_cost cost(void *context, int line, int a, int b, int c)
{
	const struct roof *r = context;

	return (struct search_cost){0, 0, share(r, line, a, b, c) * fmax(0.5, 1 / r->strength[b])};
}

static double whole(void *context, int line, const unsigned char *rafter, int count, double *width)
{
	const struct roof *r = context;
	double ratio = 0;
	int set = 0;

	for (int i = 0; i < count; i++) {
		width[i] = share(r, line, i > 0 ? rafter[i - 1] : -1, rafter[i],
				 i + 1 < count ? rafter[i + 1] : -1);
		ratio = fmax(ratio, 0.5 * width[i]);
		set |= 1 << rafter[i];
	}
	return ratio + r->more[line][set];
}

static double rafter(void *context, int rafter, const struct search_layout *layout, int lines,
		     const double *width)
{
	const struct roof *r = context;
	double carried = 0;

	for (int l = 0, i = 0; l < lines; l++)
		for (int k = 0; k < layout->count[l]; k++, i++)
			carried += layout->rafter[i] == rafter ? width[i] : 0;
	return carried / r->strength[rafter];
}

static struct roof random_roof(uint64_t *seed)
{
	struct roof r = {.lines = LINES};
	double x = 0;

	for (int i = 0; i < PLACES; i++) {
		x += random_between(seed, 0.3, 0.7);
		r.x[i] = x;
		r.strength[i] = random_between(seed, 0.9, 3);
	}
	for (int l = 0; l < LINES; l++) {
		r.line[l] = (struct search_line){.x0 = r.x[0] - 0.1,
						 .x1 = x + 0.1,
						 .cantilever = HUGE_VAL,
						 .bay = HUGE_VAL,
						 .places = PLACES,
						 .copies = -1,
						 .apart = -1};
		for (int i = 0; i < PLACES; i++)
			r.line[l].place[i] = (unsigned char)i;
		for (int set = 0; set < SETS; set++)
			r.more[l][set] = random_between(seed, 0, 1.2);
	}
	return r;
}

/* Fewest feet with which the line holds as if it were the only one; SEARCH_FEET_MAX where none do.
 */
static int fewest(const struct roof *r, int line)
{
	int least = SEARCH_FEET_MAX;

	for (int set = 0; set < SETS; set++) {
		struct search_layout one = {.feet = 0};
		double width[PLACES];

		for (int i = 0; i < PLACES; i++)
			if (set >> i & 1)
				one.rafter[one.feet++] = (unsigned char)i;
		if (one.feet < 2 || one.feet >= least)
			continue;
		one.count[line] = (unsigned char)one.feet;
		double ratio = whole((void *)(uintptr_t)r, line, one.rafter, one.feet, width);

		for (int i = 0; i < one.feet; i++)
			ratio = fmax(ratio, width[i] / r->strength[one.rafter[i]]);
		if (ratio <= 1)
			least = one.feet;
	}
	return least;
}

static void test_every_line(void **state)
{
	(void)state;
	static struct search_state s;
	uint64_t seed = UINT64_C(0xD1B54A32D192ED03);
	int raised = 0, ruled_out = 0;

	search_begin(&s);
	for (int i = 0; i < 300; i++) {
		const struct roof r = random_roof(&seed);
		const struct search_problem p = {.x = r.x,
						 .lines = r.lines,
						 .line = r.line,
						 .grows = true,
						 .rafters_add = true,
						 .context = (void *)(uintptr_t)&r,
						 .cost = cost,
						 .whole = whole,
						 .rafter = rafter};
		const int single = search_least(&p, 1, &s);
		int sum = 0;

		for (int l = 0; l < LINES; l++)
			sum += fewest(&r, l);
		if (single > SEARCH_FEET_MAX)
			continue;
		s.layout = (struct search_layout){0};
		s.limit = 1;
		s.left = 1000000;
		s.wanted = 9;
		const bool room = search_alone(&s);

		assert_int_equal(room, sum <= s.wanted);
		ruled_out += !room;
		for (int l = 0; l < LINES && room; l++)
			assert_int_equal(s.least[l], fewest(&r, l));
		if (room)
			assert_int_equal(s.rest[0], sum);
		raised += room && sum > single;
		assert_int_equal(s.layout.feet, 0);
	}
	assert_true(raised > 30 && ruled_out > 30);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_every_line),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
