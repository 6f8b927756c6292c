/* SPDX-License-Identifier: MIT */
#include "table/lookup_covering.h"

#include "table/key.h"

const struct covering_row *covering_row(const char *key)
{
	for (size_t i = 0; i < TABLE_COVERING_COUNT; i++)
		if (same_key(table_covering[i].key, key))
			return &table_covering[i];
	return NULL;
}
