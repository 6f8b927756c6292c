/* SPDX-License-Identifier: MIT */
/* The user's own unit prices: one `item,price` on a line, the item being a key of the materials
   list; `currency,EUR` names what they are in. Empty lines and lines that begin with # do not
   count. A price has at most four decimals and a decimal point; sums are exact. */
#ifndef RP_SHEET_PRICES_H
#define RP_SHEET_PRICES_H

#include <stdbool.h>
#include <stdint.h>

#include "problem/problem.h"

#define PRICES_MAX 64
#define PRICE_UNIT 10000 /* parts of one unit of money */
#define PRICES_FILE_MAX 65536u

struct prices {
	int n;
	char currency[8];
	struct {
		char item[32];
		int64_t price; /* in parts of PRICE_UNIT */
	} row[PRICES_MAX];
};

/* Every fault is a problem with its line. Items that no list knows are faults too: a price with a
   slip in its name would be left out of the sum unseen. known: NULL-terminated keys. */
bool prices_read_file(const char *path, const char *const *known, struct prices *prices,
		      struct problem_list *problems);
bool prices_read_memory(const char *name, const char *bytes, size_t size, const char *const *known,
			struct prices *prices, struct problem_list *problems);
/* False if the item has no price. */
bool prices_find(const struct prices *prices, const char *item, int64_t *price);

#endif
