/* SPDX-License-Identifier: MIT */
/* Tables of NDS-2018 typed a second time, with sums: Table 12.3.3A, Table 2.3.2, Tables 11.3.3
   and 11.3.4, Tables 2.3.3, 2.3.5, 2.3.6, 4.3.8. */
#include "table/lookup_wood.h"

#include <math.h>

#include "near.h"

/* Table 12.3.3A as read on p. 87, in alphabetical order. */
static void specific_gravity(void **state)
{
	static const struct {
		const char *species;
		double G;
	} rows[] = {
		{"Alaska Cedar", 0.47},
		{"Alaska Hemlock", 0.46},
		{"Alaska Spruce", 0.41},
		{"Alaska Yellow Cedar", 0.46},
		{"Balsam Fir", 0.36},
		{"Coast Sitka Spruce", 0.39},
		{"Douglas Fir-Larch", 0.50},
		{"Douglas Fir-Larch (North)", 0.49},
		{"Douglas Fir-South", 0.46},
		{"Eastern Hemlock", 0.41},
		{"Eastern Hemlock-Balsam Fir", 0.36},
		{"Eastern Hemlock-Tamarack", 0.41},
		{"Eastern Hemlock-Tamarack (North)", 0.47},
		{"Eastern Softwoods", 0.36},
		{"Eastern Spruce", 0.41},
		{"Eastern White Pine", 0.36},
		{"Engelmann Spruce-Lodgepole Pine", 0.38},
		{"Hem-Fir", 0.43},
		{"Hem-Fir (North)", 0.46},
		{"Mixed Southern Pine", 0.51},
		{"Mountain Hemlock", 0.47},
		{"Northern Pine", 0.42},
		{"Northern Species", 0.35},
		{"Northern White Cedar", 0.31},
		{"Ponderosa Pine", 0.43},
		{"Red Pine", 0.44},
		{"Redwood", 0.37},
		{"Sitka Spruce", 0.43},
		{"Southern Pine", 0.55},
		{"Spruce-Pine-Fir", 0.42},
		{"Spruce-Pine-Fir (South)", 0.36},
		{"Western Cedars", 0.36},
		{"Western Cedars (North)", 0.35},
		{"Western Hemlock", 0.47},
		{"Western Hemlock (North)", 0.46},
		{"Western White Pine", 0.40},
		{"Western Woods", 0.36},
		{"Plywood Structural 1 or Marine", 0.50},
		{"Plywood, other or unknown grade", 0.42},
		{"OSB, all grades", 0.50},
	};

	(void)state;
	assert_int_equal(sizeof rows / sizeof *rows, TABLE_WOOD_GRAVITY_COUNT);
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
		assert_near(wood_gravity_row(rows[i].species)->G, rows[i].G, 0);
	assert_near(wood_gravity_row("SPF")->G, 0.42, 0);
	assert_near(wood_gravity_row("DF-L")->G, 0.50, 0);
	assert_near(wood_gravity_row("SYP")->G, 0.55, 0);
	assert_near(wood_gravity_row("SPF-S")->G, 0.36, 0);
	assert_null(wood_gravity_row("spf"));
	assert_null(wood_gravity_row("Oak"));
	assert_null(wood_gravity_row(""));
	/* Permit letters quote 298 lb/in for a 5/16 in lag: G 0.54, which no group has. */
	for (size_t i = 0; i < TABLE_WOOD_GRAVITY_COUNT; i++)
		assert_true(fabs(table_wood_gravity[i].G - 0.54) > 0.005);
}

static void aliases_lead_somewhere(void **state)
{
	(void)state;
	for (size_t i = 0; i < TABLE_WOOD_SPECIES_ALIAS_COUNT; i++) {
		const struct wood_species_alias_row *r = &table_wood_species_alias[i];

		assert_string_equal(wood_species_name(r->alias), r->species);
		assert_string_equal(wood_species_name(r->species), r->species);
		assert_non_null(wood_gravity_row(r->alias));
	}
	assert_null(wood_species_name("lumber"));
}

static void load_duration(void **state)
{
	static const struct {
		const char *duration;
		double CD, connection;
	} rows[] = {{"dead", 0.9, 0.9},        {"occupancy", 1.0, 1.0},       {"snow", 1.15, 1.15},
		    {"roof-live", 1.25, 1.25}, {"wind-earthquake", 1.6, 1.6}, {"impact", 2.0, 1.6}};
	double sum = 0;

	(void)state;
	assert_int_equal(TABLE_LOAD_DURATION_COUNT, 6);
	for (size_t i = 0; i < 6; i++) {
		assert_near(load_duration_row(rows[i].duration)->CD, rows[i].CD, 0);
		assert_near(load_duration_row(rows[i].duration)->CD_connection, rows[i].connection,
			    0);
		sum += table_load_duration[i].CD;
	}
	assert_near(sum, 7.9, 1e-14);
	assert_null(load_duration_row("wind"));
}

static void connection_factors(void **state)
{
	static const struct {
		const char *factor, *use;
		double value;
	} rows[] = {
		{"CM", "lateral-dry-dry", 1.0},
		{"CM", "lateral-wet-dry-thick", 0.4},
		{"CM", "lateral-wet-dry-thin", 0.7},
		{"CM", "lateral-wet-dry-one-row", 1.0},
		{"CM", "lateral-wet", 0.7},
		{"CM", "withdrawal-dry", 1.0},
		{"CM", "withdrawal-wet", 0.7},
		{"CM", "nail-withdrawal-same", 1.0},
		{"CM", "nail-withdrawal-mixed", 0.25},
		{"CM", "head-pull-through-wet", 0.7},
		{"Ct", "100-dry", 1.0},
		{"Ct", "100-wet", 1.0},
		{"Ct", "125-dry", 0.8},
		{"Ct", "125-wet", 0.7},
		{"Ct", "150-dry", 0.7},
		{"Ct", "150-wet", 0.5},
		{"Ceg", "lateral", 0.67},
		{"Ceg", "lag-withdrawal", 0.75},
		{"Ceg", "screw-or-nail-withdrawal", 0.0},
		{"Ctn", "lateral", 0.83},
		{"Ctn", "withdrawal", 0.67},
		{"Cdi", "diaphragm-nail", 1.1},
	};

	(void)state;
	assert_int_equal(sizeof rows / sizeof *rows, TABLE_CONNECTION_FACTOR_COUNT);
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
		assert_near(connection_factor_row(rows[i].factor, rows[i].use)->value,
			    rows[i].value, 0);
	assert_null(connection_factor_row("CM", "lateral"));
	assert_null(connection_factor_row("Cm", "lateral-wet"));
}

static void temperature(void **state)
{
	static const struct {
		double T;
		bool wet;
		double connection, Fb, E;
	} rows[] = {
		{70, false, 1.0, 1.0, 1.0},    {100, true, 1.0, 1.0, 1.0},
		{100.1, false, 0.8, 0.8, 0.9}, {125, false, 0.8, 0.8, 0.9},
		{125, true, 0.7, 0.7, 0.9},    {125.1, false, 0.7, 0.7, 0.9},
		{150, false, 0.7, 0.7, 0.9},   {150, true, 0.5, 0.5, 0.9},
		{125.1, true, 0.5, 0.5, 0.9},  {100.1, true, 0.7, 0.7, 0.9},
	};
	static const char *const strength[] = {"Fb", "Fv", "Fc", "Fc_perp"};
	static const char *const stiff[] = {"Ft", "E", "Emin"};

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		assert_near(connection_temperature_row(rows[i].T, rows[i].wet)->value,
			    rows[i].connection, 0);
		for (size_t k = 0; k < 4; k++)
			assert_near(
				member_temperature_row(strength[k], rows[i].T, rows[i].wet)->value,
				rows[i].Fb, 0);
		for (size_t k = 0; k < 3; k++)
			assert_near(member_temperature_row(stiff[k], rows[i].T, rows[i].wet)->value,
				    rows[i].E, 0);
	}
	assert_null(connection_temperature_row(150.1, false));
	assert_null(member_temperature_row("Fb", 151, true));
	assert_null(connection_temperature_row((double)NAN, false));
}

static void member_factors(void **state)
{
	static const struct {
		const char *factor, *property, *use;
		double value, threshold; /* 0: none */
	} rows[] = {
		{"CM", "Fb", "wet", 0.85, 1150},     {"CM", "Ft", "wet", 1.0, 0},
		{"CM", "Fv", "wet", 0.97, 0},        {"CM", "Fc_perp", "wet", 0.67, 0},
		{"CM", "Fc", "wet", 0.8, 750},       {"CM", "E", "wet", 0.9, 0},
		{"CM", "Emin", "wet", 0.9, 0},       {"Ci", "Fb", "incised", 0.8, 0},
		{"Ci", "Fv", "incised", 0.8, 0},     {"Ci", "Fc_perp", "incised", 1.0, 0},
		{"Ci", "E", "incised", 0.95, 0},     {"Ci", "Emin", "incised", 0.95, 0},
		{"Cr", "Fb", "repetitive", 1.15, 0}, {"Cfu", "Fb", "flat-6-8", 1.15, 0},
	};

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct member_factor_row *r =
			member_factor_row(rows[i].factor, rows[i].property, rows[i].use);

		assert_non_null(r);
		assert_near(r->value, rows[i].value, 0);
		if (rows[i].threshold > 0)
			assert_near(r->threshold_psi, rows[i].threshold, 0);
		else
			assert_true(isnan(r->threshold_psi));
	}
	assert_null(member_factor_row("Cr", "Fv", "repetitive"));
}

static void lrfd(void **state)
{
	static const struct {
		const char *property;
		double KF, phi;
	} rows[] = {{"connection", 3.32, 0.65}, {"Fb", 2.54, 0.85}, {"Ft", 2.70, 0.80},
		    {"Fv", 2.88, 0.75},         {"Fc", 2.40, 0.90}, {"Fc_perp", 1.67, 0.90},
		    {"Emin", 1.76, 0.85}};

	(void)state;
	assert_int_equal(TABLE_LRFD_FACTOR_COUNT, 7);
	for (size_t i = 0; i < 7; i++) {
		const struct lrfd_factor_row *r = lrfd_factor_row(rows[i].property);

		assert_near(r->KF, rows[i].KF, 0);
		assert_near(r->phi, rows[i].phi, 0);
		/* The conversion keeps one safety: KF phi is 2.16, or 1.5 for Fc_perp and Emin,
		   within the last printed digit of KF. */
		assert_within(r->KF * r->phi, i < 5 ? 2.16 : 1.5, 0.005 * rows[i].phi);
	}
	assert_null(lrfd_factor_row("E"));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(specific_gravity),
		cmocka_unit_test(aliases_lead_somewhere),
		cmocka_unit_test(load_duration),
		cmocka_unit_test(connection_factors),
		cmocka_unit_test(temperature),
		cmocka_unit_test(member_factors),
		cmocka_unit_test(lrfd),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
