/* SPDX-License-Identifier: MIT */
/* Printed tables of roof pressures and factors, whole:
   - IRC 2018 Table R301.2(2), 90 roof cells (ASD, 30 ft, exposure B, on ASCE/SEI 7-10, GCpi 0.18):
   irc2018-roof-cells.csv. p = 0.6 qh (GCp -/+ 0.18) with Kh at 30 ft unrounded. The table cuts most
   uplift cells to whole psf (toward zero), keeps tenths in the 180 mph column and a few others, and
   prints no downward cell below 10 psf: column `printing` says which. Two cut cells, -26 and -33,
   are -25.99 and -32.98 here: its maker's factors differ in the fourth digit, so 0.02 psf are
     granted.
   - a Florida engineer's permit table and RAS 128 on ASCE/SEI 7-10, 45 cells, exposures B to D:
   asce7-10-roof-cells.csv. The maker multiplies a base cell by factors of two decimals, which is up
   to 0.4 % at 1.21; rows that are farther off say so.
   - IRC 2018 Table R301.2(3), the 30 height and exposure factors, which are Kz(h)/Kz(30 ft, B):
   irc2018-height-exposure.csv. Six are confirmed, the rest were remembered; all follow from the
   formula to half a digit.

   And from memory, as a check that two recollections agree and no more: cells of IRC 2021 Table
   R301.2.1(1), which stands on ASCE/SEI 7-16, at 90 mph. */
#include "near.h"

#include "csv.h"
#include "load/loading_code.h"
#include "load/us_units.h"

static const char *path_irc2018, *path_cells, *path_heights;

static double slope_of(const char *class)
{
	if (strcmp(class, "0-7") == 0)
		return deg(5.0);
	if (strcmp(class, "7-27") == 0)
		return deg(18.0);
	assert_string_equal(class, "27-45");
	return deg(36.0);
}

/* ASD pressure in psf by our own path: velocity, coefficient, net pressure, 0.6W. */
static double asd_psf(enum edition edition, double V_mph, char exposure, double h_ft,
		      struct wind_place place, enum wind_curve curve)
{
	const struct wind_site site = {
		.V = mph(V_mph), .exposure = exposure, .Kzt = 1.0, .elevation = NAN, .h = ft(h_ft)};
	const struct wind_velocity wind = asce7_wind_velocity(edition, &site, NULL);
	const struct wind_coefficient c = asce7_wind_coefficient(edition, &place, curve, NULL);
	const double GCpi = asce7_internal_coefficient(edition, WIND_ENCLOSED);

	assert_true(wind.known);
	assert_true(c.known);
	return 0.6 * in_psf(asce7_roof_pressure(edition, &wind, c.GCp, GCpi, false, NULL).p);
}

static void irc_2018_roof_cells(void **state)
{
	struct csv c;
	int rows = 0, floors = 0;

	(void)state;
	csv_open(&c, path_irc2018);
	while (csv_next(&c)) {
		const bool up = strcmp(csv_text(&c, "sign"), "-") == 0;
		const struct wind_place place = {.roof = WIND_ROOF_GABLE,
						 .theta = slope_of(csv_text(&c, "slope_deg")),
						 .zone = csv_text(&c, "zone"),
						 .sign = up ? WIND_UP : WIND_DOWN,
						 .A = ft2(csv_number(&c, "area_ft2"))};
		const double p = asd_psf(ASCE7_10, csv_number(&c, "V_mph"), 'B', 30.0, place,
					 CURVE_RECALLED);
		const double printed = csv_number(&c, "printed_psf");
		const char *printing = csv_text(&c, "printing");

		if (strcmp(printing, "cut") == 0) {
			const double dropped = fabs(p) - fabs(printed);

			assert_true((p < 0.0) == (printed < 0.0));
			assert_true(dropped >= -0.02 && dropped < csv_number(&c, "tolerance_psf"));
		} else if (strcmp(printing, "floor") == 0) {
			assert_near(printed, 10.0, 1e-12);
			assert_true(p > 0.0 && p < 10.0);
			floors++;
		} else {
			assert_row(csv_text(&c, "source"), p, printed,
				   csv_number(&c, "tolerance_psf"));
		}
		rows++;
	}
	assert_int_equal(rows, 90);
	assert_true(floors > 0 && floors < 45);
}

static void asce_7_10_roof_cells(void **state)
{
	struct csv c;
	int rows = 0;

	(void)state;
	csv_open(&c, path_cells);
	while (csv_next(&c)) {
		const struct wind_place place = {.roof = WIND_ROOF_GABLE,
						 .theta = slope_of(csv_text(&c, "slope_deg")),
						 .zone = csv_text(&c, "zone"),
						 .sign = WIND_UP,
						 .A = ft2(csv_number(&c, "area_ft2"))};
		const double p =
			asd_psf(ASCE7_10, csv_number(&c, "V_mph"), csv_text(&c, "exposure")[0],
				csv_number(&c, "h_ft"), place, CURVE_RECALLED);
		const double printed = csv_number(&c, "printed_psf");

		assert_row(csv_text(&c, "source"), p, printed,
			   0.01 * csv_number(&c, "tolerance_percent") * fabs(printed));
		rows++;
	}
	assert_int_equal(rows, 45);
}

static double Kz(enum edition edition, char exposure, double h_ft)
{
	const struct wind_site site = {
		.V = mph(100.0), .exposure = exposure, .Kzt = 1.0, .elevation = NAN, .h = ft(h_ft)};

	return asce7_wind_velocity(edition, &site, NULL).Kz;
}

static void height_exposure_factors(void **state)
{
	struct csv c;
	int rows = 0;

	(void)state;
	csv_open(&c, path_heights);
	while (csv_next(&c)) {
		const double factor =
			Kz(ASCE7_10, csv_text(&c, "exposure")[0], csv_number(&c, "h_ft")) /
			Kz(ASCE7_10, 'B', 30.0);

		assert_row(csv_text(&c, "source"), factor, csv_number(&c, "printed_factor"),
			   csv_number(&c, "tolerance"));
		rows++;
	}
	assert_int_equal(rows, 30);
}

/* IRC 2021 Table R301.2.1(1), 90 mph, from memory: ASD psf at 10, 20, 50, 100 ft2; NAN not
   remembered. Built as that of 2018, but on the curves of 7-16. Most cells agree with the
   remembered curve to 0.1 psf. Three lines do not: from 50 ft2 on the cells fall faster than the
   curve (ends at some 238 in place of 250 ft2, 242 in place of 300, 142 in place of 150). There the
   curve lies on the safe side, by up to 0.27 psf of 9.1; `apart` holds how far. One of the two
   recollections is wrong in these lines; a copy of the figures has 250, 300 and 150. A fourth,
   2n and 3r over 27 degrees, ends at -1.23, as that copy reads, in place of -1.20. */
struct remembered {
	double theta_deg;
	enum wind_roof roof;
	const char *zones[3];
	enum wind_sign sign;
	double cell[4];
	double apart; /* psf that the curve exceeds the cells by, at most */
};

static const struct remembered irc2021[] = {
	{3.0, WIND_ROOF_GABLE, {"1"}, WIND_UP, {-13.9, NAN, NAN, NAN}, 0.0},
	{3.0, WIND_ROOF_GABLE, {"2"}, WIND_UP, {-18.4, NAN, NAN, NAN}, 0.0},
	{3.0, WIND_ROOF_GABLE, {"3"}, WIND_UP, {-25.0, NAN, NAN, NAN}, 0.0},
	{14.0, WIND_ROOF_GABLE, {"2n", "2r", "3e"}, WIND_UP, {-23.6, -20.3, -16.0, -12.8}, 0.17},
	{14.0, WIND_ROOF_GABLE, {"3r"}, WIND_UP, {-28.0, -24.0, -18.7, -14.7}, 0.0},
	{23.0, WIND_ROOF_GABLE, {"1", "2e"}, WIND_UP, {-12.4, -12.4, -10.5, -9.1}, 0.27},
	{23.0, WIND_ROOF_GABLE, {"2n", "2r", "3e"}, WIND_UP, {-19.9, -17.4, -14.0, -11.5}, 0.17},
	{23.0, WIND_ROOF_GABLE, {"3r"}, WIND_UP, {-23.6, NAN, NAN, NAN}, 0.0},
	{35.0, WIND_ROOF_GABLE, {"1", "2e", "2r"}, WIND_UP, {-14.7, -12.4, -9.4, -7.2}, 0.0},
	{35.0, WIND_ROOF_GABLE, {"1", "2e", "2r"}, WIND_DOWN, {8.0, 7.1, 5.9, 5.0}, 0.0},
	{35.0, WIND_ROOF_GABLE, {"2n", "3r"}, WIND_UP, {-16.2, -14.4, -12.1, -10.3}, 0.17},
	{35.0, WIND_ROOF_GABLE, {"3e"}, WIND_UP, {-19.9, -17.6, -14.7, -12.4}, 0.0},
	{23.0, WIND_ROOF_HIP, {"1"}, WIND_UP, {-11.7, -10.4, -8.6, -7.3}, 0.0},
};

static void irc_2021_remembered_cells(void **state)
{
	static const double area[4] = {10.0, 20.0, 50.0, 100.0};

	(void)state;
	for (size_t i = 0; i < sizeof irc2021 / sizeof irc2021[0]; i++) {
		const struct remembered *r = &irc2021[i];

		for (int z = 0; z < 3 && r->zones[z] != NULL; z++) {
			for (int k = 0; k < 4; k++) {
				const struct wind_place place = {.roof = r->roof,
								 .theta = deg(r->theta_deg),
								 .zone = r->zones[z],
								 .sign = r->sign,
								 .A = ft2(area[k])};

				double p;

				if (isnan(r->cell[k]))
					continue;
				p = asd_psf(ASCE7_16, 90.0, 'B', 30.0, place, CURVE_RECALLED);
				assert_row("IRC 2021 Table R301.2.1(1), 90 mph (from memory)", p,
					   r->cell[k], fmax(0.1, r->apart));
				/* farther apart than that only outward */
				assert_true(fabs(p) >= fabs(r->cell[k]) - 0.1);
			}
		}
	}
}

/* Permit calculation (Washington), ASCE/SEI 7-16, gable 21 degrees, near 10.8 ft2: largest
   coefficients printed as 1.5 (1, 2e), 2.5 (2n, 2r, 3r) and 3.6 (3e); another sheet of the same
   office has 3e and 3r the other way round. So the safe side holds 3.6 for both. The sheets print
   maxima: the curves of the other zones have them at 10 ft2 and below. */
static void permit_coefficients_7_16(void **state)
{
	static const struct {
		const char *zone;
		double GCp;
	} row[] = {{"1", -1.5},  {"2e", -1.5}, {"2n", -2.5},
		   {"2r", -2.5}, {"3e", -3.6}, {"3r", -3.6}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const struct wind_place place = {.roof = WIND_ROOF_GABLE,
						 .theta = deg(21.0),
						 .zone = row[i].zone,
						 .sign = WIND_UP,
						 .A = ft2(10.0)};
		const struct wind_coefficient c =
			asce7_wind_coefficient(ASCE7_16, &place, CURVE_SAFE_SIDE, NULL);

		assert_true(c.known && c.bounded == (row[i].zone[0] == '3'));
		assert_row(row[i].zone, c.GCp, row[i].GCp, 1e-9);
	}
}

int main(int argc, char **argv)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(irc_2018_roof_cells),
		cmocka_unit_test(asce_7_10_roof_cells),
		cmocka_unit_test(height_exposure_factors),
		cmocka_unit_test(irc_2021_remembered_cells),
		cmocka_unit_test(permit_coefficients_7_16),
	};

	if (argc != 4) {
		fprintf(stderr, "usage: %s IRC-CELLS ASCE-CELLS HEIGHTS\n", argv[0]);
		return EXIT_FAILURE;
	}
	path_irc2018 = argv[1];
	path_cells = argv[2];
	path_heights = argv[3];
	return cmocka_run_group_tests(tests, NULL, NULL);
}
