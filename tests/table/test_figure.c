/* SPDX-License-Identifier: MIT */
/* Which figure of the roof coefficients a roof gets: slope classes of ASCE/SEI 7-10
   Figs. 30.4-2, 30.4-5 and 7-16, 7-22 Figs. 30.3-2, 30.3-5 at, below and above their limits, and
   nothing outside them. */
#include "table/lookup_wind.h"

#include <math.h>

#include "near.h"

#define FLAT WIND_GCP_FORM_FLAT
#define GABLE WIND_GCP_FORM_GABLE
#define HIP WIND_GCP_FORM_HIP
#define MONO WIND_GCP_FORM_MONOSLOPE

static void slope_classes(void **state)
{
	const double deg20 = 20.0 * 3.14159265358979323846 / 180.0 / 3.14159265358979323846 * 180.0;

	(void)state;
	assert_string_equal(wind_gcp_block(ASCE7_16, GABLE, 0).row->figure, "30.3-2A");
	assert_string_equal(wind_gcp_block(ASCE7_16, HIP, 7).row->figure, "30.3-2A");
	assert_string_equal(wind_gcp_block(ASCE7_16, GABLE, 7.0001).row->figure, "30.3-2B");
	assert_string_equal(wind_gcp_block(ASCE7_16, GABLE, deg20).row->figure, "30.3-2B");
	assert_string_equal(wind_gcp_block(ASCE7_16, GABLE, 20.0000000000000036).row->figure,
			    "30.3-2B");
	assert_string_equal(wind_gcp_block(ASCE7_16, GABLE, 20.0001).row->figure, "30.3-2C");
	/* 5:12 is 22.6 deg: not "about 20" */
	assert_string_equal(wind_gcp_block(ASCE7_16, GABLE, 22.6199).row->figure, "30.3-2C");
	assert_string_equal(wind_gcp_block(ASCE7_16, GABLE, 27).row->figure, "30.3-2C");
	assert_string_equal(wind_gcp_block(ASCE7_16, GABLE, 27.001).row->figure, "30.3-2D");
	assert_string_equal(wind_gcp_block(ASCE7_16, GABLE, 45).row->figure, "30.3-2D");
	assert_string_equal(wind_gcp_block(ASCE7_16, MONO, 3).row->figure, "30.3-2A");
	assert_string_equal(wind_gcp_block(ASCE7_16, MONO, 3.01).row->figure, "30.3-5A");
	assert_string_equal(wind_gcp_block(ASCE7_16, MONO, 10).row->figure, "30.3-5A");
	assert_string_equal(wind_gcp_block(ASCE7_16, MONO, 30).row->figure, "30.3-5B");
}

static void nothing_outside(void **state)
{
	static const struct {
		enum edition edition;
		enum wind_gcp_form form;
		double slope;
	} rows[] = {
		{ASCE7_16, GABLE, 45.001}, {ASCE7_16, HIP, 27.001},        {ASCE7_22, HIP, 45.1},
		{ASCE7_10, HIP, 27.001},   {ASCE7_16, MONO, 30.001},       {ASCE7_16, FLAT, 7.001},
		{EDITION_ANY, GABLE, 20},  {ASCE7_16, GABLE, -1},          {ASCE7_16, MONO, -0.001},
		{ASCE7_16, GABLE, 90},     {ASCE7_16, GABLE, (double)NAN},
	};

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct wind_gcp_block b =
			wind_gcp_block(rows[i].edition, rows[i].form, rows[i].slope);

		assert_int_equal(b.count, 0);
		assert_null(wind_gcp_in_block(b, "1", WIND_GCP_SIGN_MINUS, WIND_GCP_CURVE_SAFE_SIDE,
					      10));
	}
	assert_null(wind_gcp_row(ASCE7_16, GABLE, 25, "1'", WIND_GCP_SIGN_MINUS,
				 WIND_GCP_CURVE_SAFE_SIDE, 10));
	assert_null(wind_gcp_row(ASCE7_16, GABLE, 25, "2", WIND_GCP_SIGN_MINUS,
				 WIND_GCP_CURVE_SAFE_SIDE, 10));
	assert_null(wind_gcp_row(ASCE7_16, GABLE, 25, "3R", WIND_GCP_SIGN_MINUS,
				 WIND_GCP_CURVE_SAFE_SIDE, 10));
	assert_null(wind_gcp_row(ASCE7_10, GABLE, 25, "2", WIND_GCP_SIGN_MINUS,
				 WIND_GCP_CURVE_RECALLED, 10));
}

static void rows_of_a_figure_stand_together(void **state)
{
	size_t blocks = 0, rows = 0;

	(void)state;
	/* Sorted by edition, form and slope: the look-up searches by halves. */
	for (size_t i = 1; i < TABLE_WIND_GCP_COUNT; i++) {
		const struct wind_gcp_row *a = &table_wind_gcp[i - 1], *b = &table_wind_gcp[i];

		assert_true(a->edition <= b->edition);
		if (a->edition == b->edition)
			assert_true(a->form <= b->form);
		if (a->edition == b->edition && a->form == b->form)
			assert_true(a->slope_le_deg <= b->slope_le_deg);
	}
	for (size_t i = 0; i < TABLE_WIND_GCP_COUNT; i++) {
		const struct wind_gcp_row *r = &table_wind_gcp[i];
		const struct wind_gcp_block b =
			wind_gcp_block(r->edition, r->form, r->slope_le_deg);

		assert_true(b.row <= r && r < b.row + b.count);
		if (b.row == r) {
			blocks++;
			rows += b.count;
		}
	}
	assert_int_equal(rows, TABLE_WIND_GCP_COUNT);
	/* flat 3; gable 2 + 3 + 3; hip 1 + 2 + 3; monoslope 2 in each edition */
	assert_int_equal(blocks, 23);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(slope_classes),
		cmocka_unit_test(nothing_outside),
		cmocka_unit_test(rows_of_a_figure_stand_together),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
