/* SPDX-License-Identifier: MIT */
#include "table/lookup_pair.h"

#include "table/key.h"

const struct metal_pair_row *metal_pair_row(enum metal_pair_how how, const char *upper, const char *lower)
{
	for (size_t i = 0; i < TABLE_METAL_PAIR_COUNT; i++) {
		const struct metal_pair_row *r = &table_metal_pair[i];

		if (r->how == how && same_key(r->upper, upper) && same_key(r->lower, lower))
			return r;
	}
	return NULL;
}
