/* SPDX-License-Identifier: MIT */
/* The table of placeholders: name to member. */
#include "guide/sizes.h"

#include <math.h>
#include <stddef.h>
#include <string.h>

static const struct guide_size_row row[] = {
#define G(member, name, style, meaning)                                                            \
	{name, GUIDE_##style, meaning, offsetof(struct guide_sizes, member)},
	GUIDE_SIZES(G)
#undef G
};

#define ROWS (sizeof row / sizeof row[0])

struct guide_sizes guide_sizes_unknown(void)
{
	return (struct guide_sizes){
#define G(member, name, style, meaning) .member = (double)NAN,
		GUIDE_SIZES(G)
#undef G
	};
}

const struct guide_size_row *guide_size_row(size_t index)
{
	return index < ROWS ? &row[index] : NULL;
}

const struct guide_size_row *guide_size_find(const char *name, size_t length)
{
	for (size_t i = 0; i < ROWS; i++)
		if (strlen(row[i].name) == length && memcmp(row[i].name, name, length) == 0)
			return &row[i];
	return NULL;
}

double guide_size_value(const struct guide_sizes *sizes, const struct guide_size_row *r)
{
	double value;

	if (!sizes || !r)
		return (double)NAN;
	memcpy(&value, (const char *)sizes + r->offset, sizeof value);
	return value;
}
