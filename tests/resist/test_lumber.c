/* SPDX-License-Identifier: MIT */
/* Reference values found and adjusted. Numbers typed from NDS Supplement 2015/2018 Tables 4A, 4B
   and NDS-2018 4.3. */
#include "resist/lumber.h"

#include "near.h"
#include "us.h"

static const struct lumber_service ordinary = { .repetitive = true, .temperature = NAN };

static void found(void **state)
{
	static const struct {
		const char *species, *grade;
		double b, d, Fb, Fv, Fc_perp, E, Emin, G, CF;
	} row[] = {
		{ "Douglas Fir-Larch", "No.2", 1.5, 5.5, 900, 180, 625, 1600000, 580000, 0.50,
		  1.3 },
		{ "DF-L", "No.2", 1.5, 7.25, 900, 180, 625, 1600000, 580000, 0.50, 1.2 },
		{ "SPF", "No.2", 1.5, 5.5, 875, 135, 425, 1400000, 510000, 0.42, 1.3 },
		{ "Spruce-Pine-Fir", "No.1", 1.5, 3.5, 875, 135, 425, 1400000, 510000, 0.42, 1.5 },
		{ "Spruce-Pine-Fir (South)", "No.2", 1.5, 9.25, 775, 135, 335, 1100000, 400000,
		  0.36, 1.1 },
		{ "Spruce-Pine-Fir", "No.3", 1.5, 11.25, 500, 135, 425, 1200000, 440000, 0.42,
		  1.0 },
		/* full-sawn pieces take the factor of their own nominal size */
		{ "Spruce-Pine-Fir", "No.3", 2.0, 6.0, 500, 135, 425, 1200000, 440000, 0.42, 1.3 },
		{ "Spruce-Pine-Fir", "No.3", 2.0, 6.1, 500, 135, 425, 1200000, 440000, 0.42, 1.2 },
		{ "Southern Pine", "No.2", 1.5, 3.5, 1100, 175, 565, 1400000, 510000, 0.55, 1.0 },
		{ "Southern Pine", "No.2", 1.5, 5.5, 1000, 175, 565, 1400000, 510000, 0.55, 1.0 },
		{ "Southern Pine", "No.2", 1.5, 7.25, 925, 175, 565, 1400000, 510000, 0.55, 1.0 },
		{ "Southern Pine", "No.2", 1.5, 11.25, 750, 175, 565, 1400000, 510000, 0.55, 1.0 },
		{ "Southern Pine", "No.3", 1.5, 5.5, 575, 175, 565, 1300000, 470000, 0.55, 1.0 },
		/* redwood: fastenings take the lower, open-grain gravity of NDS Table 12.3.3A */
		{ "Redwood", "No.2", 1.5, 5.5, 925, 160, 650, 1200000, 440000, 0.37, 1.3 },
	};
	struct lumber_piece p;

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		assert_true(lumber_piece_find(row[i].species, row[i].grade, IN(row[i].b),
		                              IN(row[i].d), &p));
		assert_near(TO_PSI(p.Fb), row[i].Fb, 1e-12);
		assert_near(TO_PSI(p.Fv), row[i].Fv, 1e-12);
		assert_near(TO_PSI(p.Fc_perp), row[i].Fc_perp, 1e-12);
		assert_near(TO_PSI(p.E), row[i].E, 1e-12);
		assert_near(TO_PSI(p.Emin), row[i].Emin, 1e-12);
		assert_near(p.G, row[i].G, 1e-12);
		assert_near(p.CF, row[i].CF, 1e-12);
	}
}

static void not_found(void **state)
{
	struct lumber_piece p;

	(void)state;
	assert_false(lumber_piece_find("unknown", "No.2", IN(1.5), IN(5.5), &p));
	assert_false(lumber_piece_find("Spruce-Pine-Fir", "unknown", IN(1.5), IN(5.5), &p));
	assert_false(lumber_piece_find("Bamboo", "No.2", IN(1.5), IN(5.5), &p));
	/* a timber, a board */
	assert_false(lumber_piece_find("Spruce-Pine-Fir", "No.2", IN(5.5), IN(5.5), &p));
	assert_false(lumber_piece_find("Spruce-Pine-Fir", "No.2", IN(0.75), IN(5.5), &p));
	assert_false(lumber_piece_find("Spruce-Pine-Fir", "No.2", NAN, IN(5.5), &p));
	assert_false(lumber_piece_find("Spruce-Pine-Fir", "No.2", IN(1.5), -1.0, &p));
	/* a grade of 4 in wide pieces only */
	assert_false(lumber_piece_find("Spruce-Pine-Fir", "Construction", IN(1.5), IN(5.5), &p));
}

/* F'b of a roof rafter: SPF No. 2 2x6, 875 x 1.3 x 1.15 x CD. */
static void adjusted(void **state)
{
	struct lumber_service s = ordinary;
	struct lumber_piece p;
	struct lumber_values v;

	(void)state;
	assert_true(lumber_piece_find("SPF", "No.2", IN(1.5), IN(5.5), &p));
	assert_true(lumber_adjust(NULL, &p, 1.25, &s, &v));
	assert_near(TO_PSI(v.Fb_star), 875.0 * 1.3 * 1.15 * 1.25, 1e-12);
	assert_near(TO_PSI(v.Fv_prime), 135.0 * 1.25, 1e-12);
	assert_near(TO_PSI(v.Fc_perp_prime), 425.0, 1e-12); /* no load duration on it */
	assert_near(TO_PSI(v.E_prime), 1.4e6, 1e-12);
	assert_near(TO_PSI(v.Emin_prime), 510000.0, 1e-12);
	assert_near(lumber_bending(NULL, 1000.0, 0.5), 500.0, 1e-14);
	s.repetitive = false;
	assert_true(lumber_adjust(NULL, &p, 1.6, &s, &v));
	assert_near(TO_PSI(v.Fb_star), 875.0 * 1.3 * 1.6, 1e-12);
	s.incised = true; /* NDS-2018 Table 4.3.8 */
	assert_true(lumber_adjust(NULL, &p, 1.6, &s, &v));
	assert_near(TO_PSI(v.Fb_star), 875.0 * 1.3 * 1.6 * 0.8, 1e-12);
	assert_near(TO_PSI(v.Fv_prime), 135.0 * 1.6 * 0.8, 1e-12);
	assert_near(TO_PSI(v.Fc_perp_prime), 425.0, 1e-12);
	assert_near(TO_PSI(v.E_prime), 1.4e6 * 0.95, 1e-12);
	assert_false(lumber_adjust(NULL, &p, 0.0, &s, &v));
	assert_false(lumber_adjust(NULL, &p, NAN, &s, &v));
}

/* Wet service: 0.85 on Fb unless Fb CF is at most 1150 psi (NDS Supplement Table 4A; a threshold of
   1500, seen in one public code, would leave both of the first rows at 1.0). */
static void wet(void **state)
{
	const struct lumber_service s = { .wet = true, .temperature = NAN };
	static const struct {
		const char *species, *grade;
		double d, CM_b;
	} row[] = {
		{ "Douglas Fir-Larch", "No.2", 5.5, 0.85 },  /* 900 x 1.3 = 1170 */
		{ "Spruce-Pine-Fir", "No.2", 3.5, 0.85 },    /* 875 x 1.5 = 1312.5 */
		{ "Spruce-Pine-Fir", "No.2", 5.5, 1.0 },     /* 875 x 1.3 = 1137.5 */
		{ "Alaska Cedar", "Select Structural", 11.25, 1.0 }, /* 1150 x 1.0: at the limit */
		{ "Southern Pine", "Select Structural", 11.25, 0.85 }, /* 1600 */
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		struct lumber_piece p;
		struct lumber_values v;

		assert_true(
			lumber_piece_find(row[i].species, row[i].grade, IN(1.5), IN(row[i].d), &p));
		assert_true(lumber_adjust(NULL, &p, 1.0, &s, &v));
		assert_row(row[i].species, v.CM_b, row[i].CM_b, 0.0);
		assert_near(v.CM_v, 0.97, 0.0);
		assert_near(v.CM_cperp, 0.67, 0.0);
		assert_near(v.CM_E, 0.9, 0.0);
		assert_near(v.Fv_prime, p.Fv * 0.97, 1e-14);
	}
}

/* NDS-2018 Table 2.3.3 (from memory). */
static void warm(void **state)
{
	static const struct {
		double T;
		bool wet;
		double Ct, Ct_E;
	} row[] = { { 100.0, false, 1.0, 1.0 },
		    { 100.1, false, 0.8, 0.9 },
		    { 125.0, true, 0.7, 0.9 },
		    { 125.1, false, 0.7, 0.9 },
		    { 150.0, true, 0.5, 0.9 } };
	struct lumber_piece p;
	struct lumber_values v;
	struct lumber_service s = ordinary;

	(void)state;
	assert_true(lumber_piece_find("SPF", "No.2", IN(1.5), IN(5.5), &p));
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		s.temperature = DEGF(row[i].T);
		s.wet = row[i].wet;
		assert_true(lumber_adjust(NULL, &p, 1.0, &s, &v));
		assert_near(v.Ct, row[i].Ct, 0.0);
		assert_near(v.Ct_E, row[i].Ct_E, 0.0);
	}
	s.temperature = DEGF(150.1);
	assert_false(lumber_adjust(NULL, &p, 1.0, &s, &v));
}

int main(void)
{
	const struct CMUnitTest tests[] = { cmocka_unit_test(found), cmocka_unit_test(not_found),
		                            cmocka_unit_test(adjusted), cmocka_unit_test(wet),
		                            cmocka_unit_test(warm) };

	return cmocka_run_group_tests(tests, NULL, NULL);
}
