/* SPDX-License-Identifier: MIT */
/* Coverings: least rise and weights typed a second time (IRC 2018 R905, handbook weights), and what
   every row must have. */
#include "table/lookup_covering.h"

#include <math.h>
#include <string.h>

#include "near.h"

static void values(void **state)
{
	static const struct {
		const char *key;
		double rise, low, high, thin, thick;
		enum covering_slippery slippery;
	} rows[] = {
		{"asphalt-strip", 2, 2.0, 2.5, 0.19, 0.38, COVERING_SLIPPERY_NO},
		{"asphalt-laminated", 2, 2.2, 4.0, 0.25, 0.5, COVERING_SLIPPERY_NO},
		{"roll-roofing", 1, 0.9, 1.5, 0.12, 0.3, COVERING_SLIPPERY_NO},
		{"wood-shingle", 3, 2.0, 3.0, 0.57, 1.45, COVERING_SLIPPERY_NO},
		{"wood-shake", 4, 2.5, 4.5, 0.7, 2.5, COVERING_SLIPPERY_NO},
		{"clay-barrel", 2.5, 10, 19, 3, 5, COVERING_SLIPPERY_NO},
		{"concrete-tile", 2.5, 9, 16, 1.5, 4, COVERING_SLIPPERY_NO},
		{"slate", 4, 7, 10, 0.56, 0.75, COVERING_SLIPPERY_YES},
		{"metal-standing-seam-mechanical", 0.25, 0.6, 1.6, 0.03, 0.1,
		 COVERING_SLIPPERY_YES},
		{"metal-standing-seam-snap", 3, 0.6, 1.6, 0.03, 0.1, COVERING_SLIPPERY_YES},
		{"metal-exposed-fastener", 3, 0.6, 1.6, 0.02, 0.06, COVERING_SLIPPERY_YES},
		{"metal-shingle", 3, 0.5, 1.6, 1, 2, COVERING_SLIPPERY_UNKNOWN},
		{"bur-gravel", 0.25, 5.5, 8.0, 0.5, 1.5, COVERING_SLIPPERY_NO},
		{"modified-bitumen", 0.25, 1.0, 2.5, 0.15, 0.4, COVERING_SLIPPERY_UNKNOWN},
		{"epdm", 0.25, 0.3, 0.7, 0.05, 0.09, COVERING_SLIPPERY_YES},
		{"tpo-pvc", 0.25, 0.3, 0.6, 0.045, 0.09, COVERING_SLIPPERY_YES},
	};

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct covering_row *r = covering_row(rows[i].key);

		assert_non_null(r);
		assert_near(r->min_rise_in, rows[i].rise, 0);
		assert_near(r->weight_low_psf, rows[i].low, 0);
		assert_near(r->weight_high_psf, rows[i].high, 0);
		assert_near(r->thickness_low_in, rows[i].thin, 0);
		assert_near(r->thickness_high_in, rows[i].thick, 0);
		assert_int_equal(r->slippery, rows[i].slippery);
		assert_int_equal(r->guide, COVERING_GUIDE_YES);
	}
	assert_null(covering_row("asphalt"));
	assert_null(covering_row(""));
}

static void every_row(void **state)
{
	(void)state;
	assert_int_equal(TABLE_COVERING_COUNT, 27);
	for (size_t i = 0; i < TABLE_COVERING_COUNT; i++) {
		const struct covering_row *r = &table_covering[i];

		assert_true(isnan(r->weight_low_psf) == isnan(r->weight_high_psf));
		assert_true(isnan(r->weight_low_psf) || r->weight_low_psf <= r->weight_high_psf);
		assert_true(isnan(r->thickness_low_in) ||
			    r->thickness_low_in <= r->thickness_high_in);
		/* A covering with a guide can be weighed and has a least slope. */
		if (r->guide == COVERING_GUIDE_YES)
			assert_false(isnan(r->weight_low_psf) || isnan(r->thickness_low_in) ||
				     isnan(r->min_rise_in));
	}
}

static void refused_coverings(void **state)
{
	static const char *const no[] = {"fibre-cement-asbestos", "thatch", "green-roof",
					 "unknown"};

	(void)state;
	for (size_t i = 0; i < 4; i++)
		assert_int_equal(covering_row(no[i])->guide, COVERING_GUIDE_NO);
	assert_int_equal(covering_row("unknown")->slippery, COVERING_SLIPPERY_UNKNOWN);
	assert_true(isnan(covering_row("unknown")->weight_low_psf));
}

/* Typed a second time from the printed table (IRC 2018 Table R905.7.5(1); the rows of Table R905.8.6): columns 3:12 to
   below 4:12 and from 4:12 on; 0 is no row. */
static void exposures(void **state)
{
	static const struct {
		const char *key;
		double length;
		int grade;
		double low, steep;
	} rows[] = {
		{"wood-shingle", 16, 1, 3.75, 5},   {"wood-shingle", 16, 2, 3.5, 4},   {"wood-shingle", 16, 3, 3, 3.5},
		{"wood-shingle", 18, 1, 4.25, 5.5}, {"wood-shingle", 18, 2, 4, 4.5},   {"wood-shingle", 18, 3, 3.5, 4},
		{"wood-shingle", 24, 1, 5.75, 7.5}, {"wood-shingle", 24, 2, 5.5, 6.5}, {"wood-shingle", 24, 3, 5, 5.5},
		{"wood-shake", 18, 1, 0, 7.5},      {"wood-shake", 18, 2, 0, 5.5},     {"wood-shake", 18, 3, 0, 0},
		{"wood-shake", 24, 1, 0, 10},       {"wood-shake", 24, 2, 0, 7.5},     {"wood-shake", 24, 3, 0, 0},
	};
	size_t printed = 0;

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
		for (int steep = 0; steep < 2; steep++) {
			const double want = steep ? rows[i].steep : rows[i].low;
			const struct covering_exposure_row *r = covering_exposure_row(
				rows[i].key, rows[i].length + 0.25, rows[i].grade, steep ? 12 * tan(atan2(4, 12)) : 3.9);

			assert_int_equal(r != NULL, want > 0);
			if (r) {
				assert_near(r->most_in, want, 0);
				printed++;
			}
		}
	assert_int_equal(printed, TABLE_COVERING_EXPOSURE_COUNT);
	assert_null(covering_exposure_row("wood-shingle", 20, 1, 5));
	assert_null(covering_exposure_row("wood-shingle", 16, 1, 2.9));
	assert_true(covering_exposure_listed("wood-shake") && !covering_exposure_listed("slate"));
}

/* Slate by the three classes of the National Slate Association's manual (2010); 3 in under single-lap tile and 2 in under
   asphalt by common practice. */
static void laps(void **state)
{
	static const struct {
		const char *key;
		double rise, least;
	} rows[] = {
		{"slate", 4, 4},  {"slate", 7.9, 4}, {"slate", 8, 3},         {"slate", 19.9, 3},         {"slate", 20, 2},
		{"clay-s", 5, 3}, {"clay-s", 2.5, 3}, {"concrete-tile", 9, 3}, {"asphalt-laminated", 4, 2}, {"asphalt-strip", 2, 2},
	};

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		assert_non_null(covering_lap_row(rows[i].key, rows[i].rise));
		assert_near(covering_lap_row(rows[i].key, rows[i].rise)->least_in, rows[i].least, 0);
	}
	assert_int_equal(covering_lap_row("slate", 5)->lap, COVERING_LAP_LAP_DOUBLE);
	assert_int_equal(covering_lap_row("clay-s", 5)->lap, COVERING_LAP_LAP_SINGLE);
	assert_null(covering_lap_row("slate", 3.9));
	assert_null(covering_lap_row("epdm", 5));
}

/* Every covering that is laid in courses, tiles or panels has a rule for its joints; sheets have none. */
static void joint_rows(void **state)
{
	(void)state;
	for (size_t i = 0; i < TABLE_COVERING_PLATE_COUNT; i++) {
		const struct covering_plate_row *r = &table_covering_plate[i];

		assert_int_equal(covering_joint_row(r->key) != NULL, r->laid != COVERING_PLATE_LAID_SEAMS);
	}
	/* the side lap of the code for wood */
	assert_near(covering_joint_row("wood-shake")->own_in, 1.5, 0);
	assert_near(covering_joint_row("wood-shingle")->cover_in, 1.5, 0);
	assert_true(isnan(covering_joint_row("slate")->cover_in));
	assert_null(covering_joint_row("epdm"));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(values),
		cmocka_unit_test(every_row),
		cmocka_unit_test(refused_coverings), cmocka_unit_test(exposures),
		cmocka_unit_test(laps),              cmocka_unit_test(joint_rows),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
