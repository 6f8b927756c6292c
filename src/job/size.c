/* SPDX-License-Identifier: MIT */
/* Looks a lumber size up in the table of sections. */
#include "job/size.h"

#include <string.h>

#include "quantity/quantity.h"
#include "table/lookup_wood.h"

bool size_normalise(char *name)
{
	char *to = name;
	double b, d;

	for (const char *from = name; *from != '\0'; from++) {
		if (*from == ' ')
			continue;
		if (strncmp(from, "\xC3\x97", 2) == 0) { /* multiplication sign */
			*to++ = 'x';
			from++;
		} else {
			*to++ = *from == 'X' ? 'x' : *from;
		}
	}
	*to = '\0';
	return size_find(name, &b, &d);
}

bool size_find(const char *name, double *breadth, double *depth)
{
	const struct lumber_section_row *row = lumber_section_row(name);

	if (!row)
		return false;
	*breadth = unit_to_si(row->b_in, UNIT_IN);
	*depth = unit_to_si(row->d_in, UNIT_IN);
	return true;
}
