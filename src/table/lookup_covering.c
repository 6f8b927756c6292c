/* SPDX-License-Identifier: MIT */
#include "table/lookup_covering.h"

#include <math.h>

#include "quantity/quantity.h"
#include "table/key.h"

const struct covering_row *covering_row(const char *key)
{
	for (size_t i = 0; i < TABLE_COVERING_COUNT; i++)
		if (same_key(table_covering[i].key, key))
			return &table_covering[i];
	return NULL;
}

const struct covering_plate_row *covering_plate_row(const char *key, double rise)
{
	for (size_t i = 0; i < TABLE_COVERING_PLATE_COUNT; i++) {
		const struct covering_plate_row *r = &table_covering_plate[i];

		/* a pitch of 4:12 goes through atan and tan: its last bits must not move it below 4 */
		if (same_key(r->key, key) && at_least(rise, r->rise_from_in) && !at_least(rise, r->rise_below_in))
			return r;
	}
	return NULL;
}

/* Lengths are measured on site: a 24 in shake is seldom just that. */
#define LENGTH_TOLERANCE 0.5

const struct covering_exposure_row *covering_exposure_row(const char *key, double length, int grade, double rise)
{
	for (size_t i = 0; i < TABLE_COVERING_EXPOSURE_COUNT; i++) {
		const struct covering_exposure_row *r = &table_covering_exposure[i];

		if (same_key(r->key, key) && r->grade == grade && at_most(fabs(length - r->length_in), LENGTH_TOLERANCE) &&
		    at_least(rise, r->rise_from_in) && !at_least(rise, r->rise_below_in))
			return r;
	}
	return NULL;
}

bool covering_exposure_listed(const char *key)
{
	for (size_t i = 0; i < TABLE_COVERING_EXPOSURE_COUNT; i++)
		if (same_key(table_covering_exposure[i].key, key))
			return true;
	return false;
}

const struct covering_lap_row *covering_lap_row(const char *key, double rise)
{
	for (size_t i = 0; i < TABLE_COVERING_LAP_COUNT; i++) {
		const struct covering_lap_row *r = &table_covering_lap[i];

		if (same_key(r->key, key) && at_least(rise, r->rise_from_in) && !at_least(rise, r->rise_below_in))
			return r;
	}
	return NULL;
}

const struct covering_joint_row *covering_joint_row(const char *key)
{
	for (size_t i = 0; i < TABLE_COVERING_JOINT_COUNT; i++)
		if (same_key(table_covering_joint[i].key, key))
			return &table_covering_joint[i];
	return NULL;
}
