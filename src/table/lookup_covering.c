/* SPDX-License-Identifier: MIT */
#include "table/lookup_covering.h"

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
