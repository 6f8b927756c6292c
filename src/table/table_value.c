/* SPDX-License-Identifier: MIT */
/* Strict reading of numbers in table files: a stray letter, comma or sign is an error, never half a
   number. The generator never calls setlocale, so strtod reads a decimal point. */
#include "table/table_value.h"

#include <stdlib.h>
#include <string.h>

static const char *digits(const char *p)
{
	while (*p >= '0' && *p <= '9')
		p++;
	return p;
}

bool table_number(const char *text, double *value)
{
	const char *p = *text == '-' ? text + 1 : text;
	const char *end = digits(p);

	if (end == p)
		return false;
	if (*end == '.') {
		const char *fraction = end + 1;

		end = digits(fraction);
		if (end == fraction)
			return false;
	}
	if (*end != '\0')
		return false;
	*value = strtod(text, NULL);
	return true;
}

bool table_integer(const char *text, double *value)
{
	return strchr(text, '.') == NULL && table_number(text, value);
}

bool table_fraction(const char *text, double *value)
{
	const char *slash = strchr(text, '/');
	const char *start = text, *end;
	double whole = 0.0, over, under;

	if (slash == NULL)
		return table_number(text, value);
	end = digits(text);
	if (*end == '-' && end != text) {
		whole = strtod(text, NULL);
		start = end + 1;
		end = digits(start);
	}
	if (end == start || end != slash)
		return false;
	end = digits(slash + 1);
	if (end == slash + 1 || *end != '\0')
		return false;
	over = strtod(start, NULL);
	under = strtod(slash + 1, NULL);
	if (under < 1.0)
		return false;
	*value = whole + over / under;
	return true;
}
