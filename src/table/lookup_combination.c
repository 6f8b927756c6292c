/* SPDX-License-Identifier: MIT */
#include "table/lookup_combination.h"

struct load_combination_list load_combinations(enum edition e, enum load_combination_method method)
{
	struct load_combination_list list = {NULL, 0};

	/* The rows of an edition and method stand together. */
	for (size_t i = 0; i < TABLE_LOAD_COMBINATION_COUNT; i++)
		if (table_load_combination[i].edition == e &&
		    table_load_combination[i].method == method) {
			if (list.row == NULL)
				list.row = &table_load_combination[i];
			list.count++;
		}
	return list;
}
