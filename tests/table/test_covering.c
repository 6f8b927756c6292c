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

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(values),
		cmocka_unit_test(every_row),
		cmocka_unit_test(refused_coverings),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
