/* SPDX-License-Identifier: MIT */
/* Lumber: rows of NDS Supplement Tables 4A and 4B typed a second time, the printed rule of Emin,
   size factors, sizes. */
#include "table/lookup_wood.h"

#include <math.h>
#include <string.h>

#include "near.h"

/* The grades that house framing is made of. Dressed 2x8. Fb, Ft, Fv, Fc_perp, Fc, E/1000,
   Emin/1000. */
static void values(void **state)
{
	static const struct {
		const char *species, *grade;
		double Fb, Ft, Fv, Fc_perp, Fc, E, Emin, G;
	} rows[] = {
		{"Douglas Fir-Larch", "Select Structural", 1500, 1000, 180, 625, 1700, 1900, 690,
		 0.50},
		{"Douglas Fir-Larch", "No.1", 1000, 675, 180, 625, 1500, 1700, 620, 0.50},
		{"Douglas Fir-Larch", "No.2", 900, 575, 180, 625, 1350, 1600, 580, 0.50},
		{"Douglas Fir-Larch", "No.3", 525, 325, 180, 625, 775, 1400, 510, 0.50},
		{"Hem-Fir", "No.2", 850, 525, 150, 405, 1300, 1300, 470, 0.43},
		{"Hem-Fir", "No.3", 500, 300, 150, 405, 725, 1200, 440, 0.43},
		{"Spruce-Pine-Fir", "No.1/No.2", 875, 450, 135, 425, 1150, 1400, 510, 0.42},
		{"Spruce-Pine-Fir", "No.3", 500, 250, 135, 425, 650, 1200, 440, 0.42},
		{"Spruce-Pine-Fir (South)", "No.2", 775, 350, 135, 335, 1000, 1100, 400, 0.36},
		{"Spruce-Pine-Fir (South)", "No.3", 450, 200, 135, 335, 575, 1000, 370, 0.36},
		{"Western Woods", "No.2", 675, 300, 135, 335, 900, 1000, 370, 0.36},
		{"Southern Pine", "Select Structural", 1950, 1350, 175, 565, 1700, 1800, 660, 0.55},
		{"Southern Pine", "No.1", 1250, 800, 175, 565, 1500, 1600, 580, 0.55},
		{"Southern Pine", "No.2", 925, 550, 175, 565, 1350, 1400, 510, 0.55},
		{"Southern Pine", "No.3 and Stud", 525, 325, 175, 565, 775, 1300, 470, 0.55},
	};
	double Fb = 0, Fc_perp = 0, E = 0;

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct lumber l;

		if (!lumber_find(rows[i].species, rows[i].grade, 1.5, 7.25, &l))
			fail_msg("%s %s", rows[i].species, rows[i].grade);
		assert_string_equal(l.species, rows[i].species);
		assert_string_equal(l.grade, rows[i].grade);
		assert_near(l.Fb_psi, rows[i].Fb, 0);
		assert_near(l.Ft_psi, rows[i].Ft, 0);
		assert_near(l.Fv_psi, rows[i].Fv, 0);
		assert_near(l.Fc_perp_psi, rows[i].Fc_perp, 0);
		assert_near(l.Fc_psi, rows[i].Fc, 0);
		assert_near(l.E_psi, rows[i].E * 1000, 0);
		assert_near(l.Emin_psi, rows[i].Emin * 1000, 0);
		assert_near(l.G, rows[i].G, 0);
		Fb += l.Fb_psi;
		Fc_perp += l.Fc_perp_psi;
		E += l.E_psi;
	}
	/* DF-L 3925, HF 1350, SPF 1375, SPF-S 1225, WW 675, SP 4650 */
	assert_near(Fb, 13200.0, 0);
	/* 4 x 625 + 2 x 405 + 2 x 425 + 3 x 335 + 4 x 565 */
	assert_near(Fc_perp, 7425.0, 0);
	/* 6600 + 2500 + 2600 + 2100 + 1000 + 6100 */
	assert_near(E, 20900000.0, 0);
}

/* Southern Pine No. 2 by width: Fb of Table 4B since 2013-06-01, not the 1250, 1200, 975 of
   before. */
static void southern_pine_by_width(void **state)
{
	static const struct {
		double d, Fb, CF;
	} rows[] = {{3.5, 1100, 1}, {4.5, 1000, 1},  {5.5, 1000, 1},    {7.25, 925, 1},
		    {9.25, 800, 1}, {11.25, 750, 1}, {13.25, 750, 0.9}, {16, 750, 0.9}};
	struct lumber l;

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		assert_true(lumber_find("SP", "#2", 1.5, rows[i].d, &l));
		assert_near(l.Fb_psi, rows[i].Fb, 0);
		assert_near(l.CF_Fb, rows[i].CF, 0);
		assert_string_equal(l.species, "Southern Pine");
		assert_string_equal(l.grade, "No.2");
	}
	assert_true(lumber_find("Southern Pine", "No.2", 3.5, 7.25, &l));
	assert_near(l.CF_Fb, 1.1, 0);
	assert_near(l.CF_Fc, 1.0, 0);
	assert_true(lumber_find("Southern Pine", "No.2", 3.5, 5.5, &l));
	assert_near(l.CF_Fb, 1.0, 0);
	assert_true(lumber_find("Southern Pine", "No.3", 1.5, 5.5, &l));
	assert_near(l.Fb_psi, 575.0, 0);
	/* Construction is listed 4 in wide only. */
	assert_true(lumber_find("Southern Pine", "Construction", 1.5, 3.5, &l));
	assert_false(lumber_find("Southern Pine", "Construction", 1.5, 5.5, &l));
}

static void size_factors(void **state)
{
	static const struct {
		const char *grade;
		double b, d, Fb, Ft, Fc; /* Fb 0: not listed */
	} rows[] = {
		{"No.2", 1.5, 3.5, 1.5, 1.5, 1.15},
		{"No.2", 1.5, 4.5, 1.4, 1.4, 1.1},
		{"No.2", 1.5, 5.5, 1.3, 1.3, 1.1},
		{"No.2", 1.5, 7.25, 1.2, 1.2, 1.05},
		{"No.2", 1.5, 9.25, 1.1, 1.1, 1.0},
		{"No.2", 1.5, 11.25, 1.0, 1.0, 1.0},
		{"No.2", 1.5, 13.25, 0.9, 0.9, 0.9},
		{"No.2", 2.5, 7.25, 1.2, 1.2, 1.05},
		{"No.2", 3.5, 7.25, 1.3, 1.2, 1.05},
		{"No.2", 3.5, 9.25, 1.2, 1.1, 1.0},
		{"No.2", 3.5, 11.25, 1.1, 1.0, 1.0},
		{"No.2", 3.5, 13.25, 1.0, 0.9, 0.9},
		{"Stud", 1.5, 3.5, 1.1, 1.1, 1.05},
		{"Stud", 1.5, 5.5, 1.0, 1.0, 1.0},
		{"Stud", 1.5, 7.25, 0, 0, 0},
		{"Construction", 1.5, 3.5, 1.0, 1.0, 1.0},
		{"Construction", 1.5, 5.5, 0, 0, 0},
		{"Standard", 1.5, 3.5, 1.0, 1.0, 1.0},
		{"Utility", 1.5, 3.5, 0, 0, 0},
		/* full-sawn and pre-1970 pieces keep their nominal size */
		{"No.2", 2.0, 6.0, 1.3, 1.3, 1.1},
		{"No.2", 1.625, 5.625, 1.3, 1.3, 1.1},
		{"No.2", 2.0, 6.01, 1.2, 1.2, 1.05},
		{"No.2", 1.625, 7.5, 1.2, 1.2, 1.05},
		/* not dimension lumber */
		{"No.2", 1.49, 5.5, 0, 0, 0},
		{"No.2", 4.01, 7.25, 0, 0, 0},
		{"No.2", 1.5, 3.4, 0, 0, 0},
	};

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct lumber l;
		const bool found =
			lumber_find("Douglas Fir-Larch", rows[i].grade, rows[i].b, rows[i].d, &l);

		if (found != (rows[i].Fb > 0))
			fail_msg("%s %g x %g", rows[i].grade, rows[i].b, rows[i].d);
		if (!found)
			continue;
		assert_near(l.CF_Fb, rows[i].Fb, 0);
		assert_near(l.CF_Ft, rows[i].Ft, 0);
		assert_near(l.CF_Fc, rows[i].Fc, 0);
		assert_true(l.CF_source[0] != '\0');
	}
}

static void size_factor_sums(void **state)
{
	double Fb = 0, Ft = 0, Fc = 0;

	(void)state;
	for (size_t i = 0; i < TABLE_LUMBER_SIZE_FACTOR_COUNT; i++) {
		Fb += table_lumber_size_factor[i].CF_Fb;
		Ft += table_lumber_size_factor[i].CF_Ft;
		Fc += table_lumber_size_factor[i].CF_Fc;
	}
	/* structural 2 in and 4 in; stud and light framing twice; Southern Pine 2 in and 4 in */
	assert_near(Fb, 8.4 + 8.8 + 2 * 4.1 + 6.9 + 7.2, 1e-13);
	assert_near(Ft, 8.4 + 8.4 + 2 * 4.1 + 6.9 + 6.9, 1e-13);
	assert_near(Fc, 7.3 + 7.3 + 2 * 4.05 + 6.9 + 6.9, 1e-13);
}

static void names_of_grades(void **state)
{
	static const struct {
		const char *species, *grade, *listed; /* NULL: not listed */
	} rows[] = {
		{"SPF", "No.2", "No.1/No.2"},
		{"SPF", "No.1", "No.1/No.2"},
		{"SPF", "#2", "No.1/No.2"},
		{"SPF", "No. 2", "No.1/No.2"},
		{"SPF", "No.1/No.2", "No.1/No.2"},
		{"DF-L", "No.2", "No.2"},
		{"DF-L", "SS", "Select Structural"},
		{"DF-L", "No.1/No.2", NULL},
		{"DF-L(N)", "No.1", "No.1/No.2"},
		{"DF-L(N)", "No.1 & Btr", "No.1 & Btr"},
		{"SYP", "Stud", "No.3 and Stud"},
		{"DF-L", "No.4", NULL},
		{"DF-L", "", NULL},
		{"DF-L", "1", "No.1"},
		{"DF-L", "2", "No.2"},
		{"DF-L", "3", "No.3"},
		{"DF-L", "#1", "No.1"},
		{"DF-L", "#3", "No.3"},
		{"DF-L", "Const", NULL}, /* 4 in wide only */
		{"unknown", "No.2", NULL},
		{"Hem-Fir", "unknown", NULL},
		{"Balsam Fir", "No.2", NULL},
		{"Redwood", "No.2 open grain", "No.2 open grain"},
	};

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct lumber l;
		const bool found = lumber_find(rows[i].species, rows[i].grade, 1.5, 5.5, &l);

		if (found != (rows[i].listed != NULL))
			fail_msg("%s %s", rows[i].species, rows[i].grade);
		if (found)
			assert_string_equal(l.grade, rows[i].listed);
	}
}

static void result_is_left_alone(void **state)
{
	struct lumber l;

	(void)state;
	memset(&l, 0x5a, sizeof l);
	assert_false(lumber_find("Douglas Fir-Larch", "Stud", 1.5, 7.25, &l));
	for (size_t i = 0; i < sizeof l; i++)
		assert_int_equal(((const unsigned char *)&l)[i], 0x5a);
}

/* Emin = 1.03 E (1 - 1.645 x 0.25) / 1.66, printed to 10,000 psi (NDS Supplement, Appendix D). */
static void check_Emin(const char *grade, double E, double Emin)
{
	const double exact = 1.03 * E * (1.0 - 1.645 * 0.25) / 1.66;

	assert_row(grade, Emin, 10000.0 * floor(exact / 10000.0 + 0.5), 0);
}

static void minimum_modulus(void **state)
{
	(void)state;
	for (size_t i = 0; i < TABLE_LUMBER_4A_COUNT; i++)
		check_Emin(table_lumber_4a[i].grade, table_lumber_4a[i].E_psi,
			   table_lumber_4a[i].Emin_psi);
	for (size_t i = 0; i < TABLE_LUMBER_4B_COUNT; i++)
		check_Emin(table_lumber_4b[i].grade, table_lumber_4b[i].E_psi,
			   table_lumber_4b[i].Emin_psi);
}

/* Better grades are not weaker, deeper Southern Pine is not stronger; a slip of a digit shows. */
static void order(void **state)
{
	static const char *const falling[] = {"Select Structural", "No.1", "No.2", "No.3"};

	(void)state;
	for (size_t i = 0; i < TABLE_LUMBER_4A_COUNT; i++)
		for (size_t k = 0; k < 3; k++) {
			struct lumber better, worse;

			if (!lumber_find(table_lumber_4a[i].species, falling[k], 1.5, 5.5,
					 &better) ||
			    !lumber_find(table_lumber_4a[i].species, falling[k + 1], 1.5, 5.5,
					 &worse))
				continue;
			assert_true(better.Fb_psi >= worse.Fb_psi && better.Ft_psi >= worse.Ft_psi);
			assert_true(better.Fc_psi >= worse.Fc_psi && better.E_psi >= worse.E_psi);
		}
	for (size_t i = 1; i < TABLE_LUMBER_4B_COUNT; i++) {
		const struct lumber_4b_row *a = &table_lumber_4b[i - 1], *b = &table_lumber_4b[i];

		if (strcmp(a->grade, b->grade) != 0)
			continue;
		assert_true(a->width_to_in < b->width_from_in);
		assert_true(a->Fb_psi > b->Fb_psi && a->Ft_psi > b->Ft_psi &&
			    a->Fc_psi >= b->Fc_psi);
	}
	/* Sorted by species: the look-up searches by halves. */
	for (size_t i = 1; i < TABLE_LUMBER_4A_COUNT; i++)
		assert_true(strcmp(table_lumber_4a[i - 1].species, table_lumber_4a[i].species) <=
			    0);
	assert_int_equal(TABLE_LUMBER_4A_COUNT, 187);
	assert_int_equal(TABLE_LUMBER_4B_COUNT, 53);
}

/* Column sums of the copies of Tables 4A and 4B, added apart from the table files. */
static void sums(void **state)
{
	double a[8] = {0}, b[8] = {0};
	int widths = 0;

	(void)state;
	for (size_t i = 0; i < TABLE_LUMBER_4A_COUNT; i++) {
		const struct lumber_4a_row *r = &table_lumber_4a[i];
		const double value[] = {r->Fb_psi, r->Ft_psi, r->Fv_psi,   r->Fc_perp_psi,
					r->Fc_psi, r->E_psi,  r->Emin_psi, r->G};

		for (size_t k = 0; k < 8; k++)
			a[k] += value[k];
	}
	for (size_t i = 0; i < TABLE_LUMBER_4B_COUNT; i++) {
		const struct lumber_4b_row *r = &table_lumber_4b[i];
		const double value[] = {r->Fb_psi, r->Ft_psi, r->Fv_psi,   r->Fc_perp_psi,
					r->Fc_psi, r->E_psi,  r->Emin_psi, r->G};

		for (size_t k = 0; k < 8; k++)
			b[k] += value[k];
		widths += r->width_from_in;
	}
	for (size_t k = 0; k < 7; k++) {
		static const double want_a[] = {130550, 72875,     29105,   84390,
						175775, 220400000, 80470000};
		static const double want_b[] = {65675, 43175,    9275,    30095,
						77100, 82300000, 29940000};

		assert_near(a[k], want_a[k], 0);
		assert_near(b[k], want_b[k], 0);
	}
	assert_near(a[7], 77.63, 1e-12);
	assert_near(b[7], 53 * 0.55, 1e-12);
	assert_int_equal(widths, 10 * (2 + 5 + 8 + 10 + 12) + 3 * 4);
}

/* Dressed sizes of PS 20, full-sawn and pre-1970 sizes; S and I follow to the third place (Table 1B
   for the dressed). */
static void sizes(void **state)
{
	static const struct {
		const char *size;
		double b, d, S, I;
	} rows[] = {
		{"2x4", 1.5, 3.5, 3.062, 5.359},
		{"2x5", 1.5, 4.5, 5.062, 11.391},
		{"2x6", 1.5, 5.5, 7.562, 20.797},
		{"2x8", 1.5, 7.25, 13.141, 47.635},
		{"2x10", 1.5, 9.25, 21.391, 98.932},
		{"2x12", 1.5, 11.25, 31.641, 177.979},
		{"4x4", 3.5, 3.5, 7.146, 12.505},
		{"4x6", 3.5, 5.5, 17.646, 48.526},
		{"4x8", 3.5, 7.25, 30.661, 111.148},
		{"4x10", 3.5, 9.25, 49.911, 230.840},
		{"4x12", 3.5, 11.25, 73.828, 415.283},
		{"2x4-full-sawn", 2, 4, 5.333, 10.667},
		{"2x6-full-sawn", 2, 6, 12, 36},
		{"2x8-full-sawn", 2, 8, 21.333, 85.333},
		{"2x10-full-sawn", 2, 10, 33.333, 166.667},
		{"2x12-full-sawn", 2, 12, 48, 288},
		{"2x4-pre-1970", 1.625, 3.625, 3.559, 6.451},
		{"2x6-pre-1970", 1.625, 5.5, 8.193, 22.530},
		{"2x8-pre-1970", 1.625, 7.5, 15.234, 57.129},
		{"2x10-pre-1970", 1.625, 9.5, 24.443, 116.103},
		{"2x12-pre-1970", 1.625, 11.5, 35.818, 205.952},
	};

	(void)state;
	assert_int_equal(sizeof rows / sizeof *rows, TABLE_LUMBER_SECTION_COUNT);
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct lumber_section_row *r = lumber_section_row(rows[i].size);

		assert_non_null(r);
		assert_near(r->b_in, rows[i].b, 0);
		assert_near(r->d_in, rows[i].d, 0);
		assert_within(r->b_in * r->d_in * r->d_in / 6, rows[i].S, 0.00051);
		assert_within(r->b_in * pow(r->d_in, 3) / 12, rows[i].I, 0.00051);
	}
	assert_null(lumber_section_row("2X6"));
	assert_null(lumber_section_row("2x14"));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(values),
		cmocka_unit_test(southern_pine_by_width),
		cmocka_unit_test(size_factors),
		cmocka_unit_test(names_of_grades),
		cmocka_unit_test(size_factor_sums),
		cmocka_unit_test(result_is_left_alone),
		cmocka_unit_test(minimum_modulus),
		cmocka_unit_test(order),
		cmocka_unit_test(sums),
		cmocka_unit_test(sizes),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
