/* SPDX-License-Identifier: MIT */
/* Connections and factors; design values of lumber stand in lookup_lumber.c. */
#include "table/lookup_wood.h"

#include <math.h>
#include <stddef.h>

#include "quantity/quantity.h"
#include "table/key.h"

/* Printed diameters are multiples of 1/16 in or of 0.001 in; a conversion costs less than this. */
#define SAME_IN 1e-6

static bool listed_species(const char *name)
{
	for (size_t i = 0; i < TABLE_WOOD_GRAVITY_COUNT; i++)
		if (same_key(table_wood_gravity[i].species, name))
			return true;
	for (size_t i = 0; i < TABLE_LUMBER_4A_COUNT; i++)
		if (same_key(table_lumber_4a[i].species, name))
			return true;
	return false;
}

const char *wood_species_name(const char *name)
{
	if (listed_species(name))
		return name;
	for (size_t i = 0; i < TABLE_WOOD_SPECIES_ALIAS_COUNT; i++)
		if (same_key(table_wood_species_alias[i].alias, name))
			return table_wood_species_alias[i].species;
	return NULL;
}

const struct wood_gravity_row *wood_gravity_row(const char *species)
{
	const char *name = wood_species_name(species);

	for (size_t i = 0; name != NULL && i < TABLE_WOOD_GRAVITY_COUNT; i++)
		if (same_key(table_wood_gravity[i].species, name))
			return &table_wood_gravity[i];
	return NULL;
}

const struct lag_screw_row *lag_screw_row(double D_in)
{
	for (size_t i = 0; i < TABLE_LAG_SCREW_COUNT; i++)
		if (fabs(table_lag_screw[i].D_in - D_in) <= SAME_IN)
			return &table_lag_screw[i];
	return NULL;
}

const struct bending_yield_row *bending_yield_row(const char *fastener, double D_in)
{
	for (size_t i = 0; i < TABLE_BENDING_YIELD_COUNT; i++) {
		const struct bending_yield_row *r = &table_bending_yield[i];
		const double from = r->bound == BENDING_YIELD_BOUND_ABOVE ? r->D_from_in + SAME_IN
									  : r->D_from_in - SAME_IN;

		if (same_key(r->fastener, fastener) && D_in >= from && D_in <= r->D_to_in + SAME_IN)
			return r;
	}
	return NULL;
}

const struct lead_hole_row *lead_hole_row(const char *fastener, double G)
{
	for (size_t i = 0; i < TABLE_LEAD_HOLE_COUNT; i++) {
		const struct lead_hole_row *r = &table_lead_hole[i];

		if (same_key(r->fastener, fastener) && G > r->G_above && G <= r->G_to)
			return r;
	}
	return NULL;
}

const struct connection_geometry_row *connection_geometry_row(const char *item, const char *loading)
{
	for (size_t i = 0; i < TABLE_CONNECTION_GEOMETRY_COUNT; i++)
		if (same_key(table_connection_geometry[i].item, item) &&
		    same_key(table_connection_geometry[i].loading, loading))
			return &table_connection_geometry[i];
	return NULL;
}

const struct load_duration_row *load_duration_row(const char *duration)
{
	for (size_t i = 0; i < TABLE_LOAD_DURATION_COUNT; i++)
		if (same_key(table_load_duration[i].duration, duration))
			return &table_load_duration[i];
	return NULL;
}

const struct connection_factor_row *connection_factor_row(const char *factor, const char *use)
{
	for (size_t i = 0; i < TABLE_CONNECTION_FACTOR_COUNT; i++)
		if (same_key(table_connection_factor[i].factor, factor) &&
		    same_key(table_connection_factor[i].use, use))
			return &table_connection_factor[i];
	return NULL;
}

const struct member_factor_row *member_factor_row(const char *factor, const char *property,
						  const char *use)
{
	for (size_t i = 0; i < TABLE_MEMBER_FACTOR_COUNT; i++)
		if (same_key(table_member_factor[i].factor, factor) &&
		    same_key(table_member_factor[i].property, property) &&
		    same_key(table_member_factor[i].use, use))
			return &table_member_factor[i];
	return NULL;
}

/* The temperature classes of NDS Tables 2.3.3 and 11.3.4; NULL above 150 F, where neither has a
   value. */
static const char *temperature_class(double T_degF, bool wet)
{
	if (at_most(T_degF, 100.0))
		return wet ? "100-wet" : "100-dry";
	if (at_most(T_degF, 125.0))
		return wet ? "125-wet" : "125-dry";
	if (at_most(T_degF, 150.0))
		return wet ? "150-wet" : "150-dry";
	return NULL;
}

const struct connection_factor_row *connection_temperature_row(double T_degF, bool wet)
{
	const char *use = temperature_class(T_degF, wet);

	return use == NULL ? NULL : connection_factor_row("Ct", use);
}

const struct member_factor_row *member_temperature_row(const char *property, double T_degF,
						       bool wet)
{
	const char *use = temperature_class(T_degF, wet);

	return use == NULL ? NULL : member_factor_row("Ct", property, use);
}

const struct lrfd_factor_row *lrfd_factor_row(const char *property)
{
	for (size_t i = 0; i < TABLE_LRFD_FACTOR_COUNT; i++)
		if (same_key(table_lrfd_factor[i].property, property))
			return &table_lrfd_factor[i];
	return NULL;
}
