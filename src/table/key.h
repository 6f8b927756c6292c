/* SPDX-License-Identifier: MIT */
/* Comparison of table keys, for the look-ups. */
#ifndef RP_TABLE_KEY_H
#define RP_TABLE_KEY_H

#include <stdbool.h>
#include <string.h>

/* Exactly equal. Most keys already differ in their first letter, which spares the call. */
static inline bool same_key(const char *a, const char *b)
{
	return *a == *b && strcmp(a, b) == 0;
}

#endif
