/* SPDX-License-Identifier: MIT */
/* Says what a field accepts. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "job/value.h"

bool value_may_be_unknown(const struct field *f)
{
	return f->need != NEED_REQUIRED && f->type != FIELD_TEXT && f->element[0] != 'j';
}

/* A limit in unit u with about four digits, never printed wider than it is. */
static void print_limit(char *buf, size_t size, double si, enum unit u, bool upper)
{
	const double value = unit_from_si(si, u);
	const bool outward = upper == (value < 0.0);
	int decimals = 3;
	size_t n;

	for (double m = fabs(value); m >= 10.0 && decimals > 0; m /= 10.0)
		decimals--;
	if (outward)
		number_print_up(buf, size, value, decimals);
	else
		number_print_down(buf, size, value, decimals);
	n = strlen(buf);
	if (strchr(buf, '.')) {
		while (buf[n - 1] == '0')
			n--;
		n -= buf[n - 1] == '.';
	}
	snprintf(buf + n, size - n, "%s%s", *unit_text(u) ? " " : "", unit_text(u));
}

const char *value_range(char *buf, size_t size, const struct field *f, enum unit_system system)
{
	const enum unit u = system == SYSTEM_US ? f->us : f->si;
	char low[48], high[48];

	if (f->dimension == DIM_ANGLE && strchr(f->example, ':')) {
		/* a pitch: the limits are whole rises by the choice of the table */
		number_print(low, sizeof low, 12.0 * tan(f->min), 0);
		number_print(high, sizeof high, 12.0 * tan(f->max), 0);
		snprintf(buf, size, "%s:12 to %s:12", low, high);
		return buf;
	}
	print_limit(low, sizeof low, f->min, u, false);
	print_limit(high, sizeof high, f->max, u, true);
	snprintf(buf, size, "%s to %s", low, high);
	return buf;
}

/* Adds to a text as far as it fits. */
static void add(char *buf, size_t size, const char *separator, const char *text)
{
	const size_t n = strlen(buf);

	snprintf(buf + n, size - n, "%s%s", n > 0 ? separator : "", text);
}

const char *value_accepted(char *buf, size_t size, const struct field *f, enum problem_code why,
			   enum unit_system system)
{
	char range[100];

	buf[0] = '\0';
	switch (f->type) {
	case FIELD_QUANTITY:
	case FIELD_NUMBER:
	case FIELD_INTEGER:
		if (f->type == FIELD_INTEGER)
			add(buf, size, "", "a whole number, ");
		add(buf, size, "", value_range(range, sizeof range, f, system));
		if (f->type == FIELD_QUANTITY && why != PROBLEM_OUT_OF_RANGE) {
			add(buf, size, "; units ", dimension_units(f->dimension));
		}
		add(buf, size, "; such as ", f->example);
		break;
	case FIELD_CHOICE:
	case FIELD_KEY:
		for (const struct field_choice *c = f->choice; c && c->word; c++)
			add(buf, size, ", ", c->word);
		if (!f->choice) {
			snprintf(range, sizeof range, "a key of at most %zu letters such as %s",
				 f->size - 1, f->example);
			add(buf, size, "", range);
		}
		break;
	case FIELD_SIZE:
		add(buf, size, "",
		    "a listed lumber size such as 2x6, 2x6-full-sawn, 2x6-pre-1970; or breadth and "
		    "depth");
		break;
	case FIELD_TEXT:
		snprintf(range, sizeof range, "a text of at most %zu letters", f->size - 1);
		add(buf, size, "", range);
		break;
	}
	if (value_may_be_unknown(f))
		add(buf, size, "; or ", "unknown");
	return buf;
}
