/* SPDX-License-Identifier: MIT */
/* Fills sizes into text. Numbers go through src/quantity only, so they look alike in every locale.
 */
#include "guide/fill.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#define LITERAL_MAX 40

/* Dimensions that the library writes, tried in this order. */
static const enum dimension literal_dimension[] = {DIM_LENGTH, DIM_ANGLE,  DIM_PRESSURE,
						   DIM_FORCE,  DIM_MOMENT, DIM_TEMPERATURE,
						   DIM_AREA,   DIM_NONE};

static bool is_blank(char c)
{
	return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

/* The unit that text ends with, a blank after the number; UNIT_NONE for a pitch or a bare number.
   `13 ft 6 in` counts as inches. */
static enum unit last_unit(const char *text)
{
	const char *word = "";

	for (const char *s = text; *s != '\0'; s++)
		if (*s >= '0' && *s <= '9' && is_blank(s[1]))
			word = s + 1;
	while (is_blank(*word))
		word++;
	for (int u = UNIT_NONE + 1; u < UNIT_COUNT; u++)
		if (strcmp(unit_text((enum unit)u), word) == 0)
			return (enum unit)u;
	return UNIT_NONE;
}

/* Runs of blanks become one; to has room for length + 1. */
static void copy_words(char *to, const char *text, size_t length)
{
	size_t n = 0;

	for (size_t i = 0; i < length; i++)
		if (!is_blank(text[i]))
			to[n++] = text[i];
		else if (n > 0 && to[n - 1] != ' ')
			to[n++] = ' ';
	to[n] = '\0';
}

bool guide_literal_parse(const char *text, size_t length, enum dimension *dimension,
			 enum unit *unit, double *si)
{
	char copy[LITERAL_MAX];

	if (length == 0 || length >= sizeof copy)
		return false;
	copy_words(copy, text, length);
	for (size_t i = 0; i < sizeof literal_dimension / sizeof literal_dimension[0]; i++) {
		if (quantity_parse(copy, literal_dimension[i], si) != QUANTITY_OK)
			continue;
		*dimension = literal_dimension[i];
		*unit = last_unit(copy);
		/* other spellings of units are for job files, not for the library */
		return *unit != UNIT_NONE || *dimension == DIM_NONE || *dimension == DIM_ANGLE;
	}
	return false;
}

/* Drops zeros behind the point: `6.0 mm` to `6 mm`. number is the part before the unit. */
static void drop_zeros(char *s)
{
	char *point = strchr(s, '.'), *end;

	if (!point)
		return;
	for (end = point + 1; *end >= '0' && *end <= '9'; end++)
		;
	while (end[-1] == '0')
		memmove(end - 1, end, strlen(end) + 1), end--;
	if (end[-1] == '.')
		memmove(end - 1, end, strlen(end) + 1);
}

/* Two decimals below 1 mm, one below 10, none below 1 m; metres from there. */
static void print_metric(char *buf, size_t size, double si)
{
	const double mm = fabs(si) * 1000.0;

	if (mm >= 1000.0)
		quantity_print(buf, size, si, UNIT_M, 2);
	else
		quantity_print(buf, size, si, UNIT_MM, mm < 1.0 ? 2 : mm < 10.0 ? 1 : 0);
	drop_zeros(buf);
}

/* 15/32 in of plywood or 2-5/16 in of thread: what is a fraction by birth stays that fraction. */
static bool is_fraction(double si)
{
	const double parts = si / M_PER_IN * 64.0;

	return fabs(parts - round(parts)) < 1e-6;
}

/* Sheet thicknesses read in decimals, everything else as a tape shows it. */
static void print_inches(char *buf, size_t size, double si)
{
	if (fabs(si) < 0.1 * M_PER_IN) {
		quantity_print(buf, size, si, UNIT_IN, 3);
		drop_zeros(buf);
	} else {
		tape_print(buf, size, si, SYSTEM_US, is_fraction(si) ? 64 : 16);
	}
}

static void print_converted(char *buf, size_t size, double si, enum dimension d, enum unit written,
			    enum unit_system units)
{
	const bool us = units == SYSTEM_US;

	switch (d) {
	case DIM_LENGTH:
		if (us)
			print_inches(buf, size, si);
		else
			print_metric(buf, size, si);
		return;
	case DIM_ANGLE:
		quantity_print(buf, size, si, UNIT_DEG, 1);
		break;
	case DIM_PRESSURE: /* weights of roofs: kg/m2 says more on site than kPa */
		if (written == UNIT_PSI)
			quantity_print(buf, size, si, UNIT_MPA, 1);
		else
			quantity_print(buf, size, si, us ? UNIT_PSF : UNIT_KG_M2,
				       fabs(si) < 100.0 ? 1 : 0);
		break;
	case DIM_MOMENT:
		quantity_print(buf, size, si, us ? UNIT_LB_FT : UNIT_NM, 0);
		break;
	case DIM_FORCE:
		if (us)
			quantity_print(buf, size, si, UNIT_LB, 0);
		else if (fabs(si) >= 10000.0)
			quantity_print(buf, size, si, UNIT_KN, 0);
		else
			quantity_print(buf, size, si, UNIT_N, 0);
		break;
	case DIM_TEMPERATURE:
		quantity_print(buf, size, si, us ? UNIT_DEG_F : UNIT_DEG_C, 0);
		break;
	case DIM_AREA:
		quantity_print(buf, size, si, us ? UNIT_FT2 : UNIT_M2, 1);
		break;
	case DIM_NONE:
	case DIM_VOLUME:
	case DIM_INERTIA:
	case DIM_SPEED:
	case DIM_LINE_LOAD:
	case DIM_WEIGHT_DENSITY:
	case DIM_COUNT:
		quantity_print(buf, size, unit_from_si(si, written), written, 2);
		break;
	}
	drop_zeros(buf);
}

bool guide_literal_print(char *buf, size_t size, const char *text, size_t length,
			 enum unit_system units)
{
	enum dimension d;
	enum unit u;
	double si;
	bool as_written;
	char copy[LITERAL_MAX];

	if (!guide_literal_parse(text, length, &d, &u, &si))
		return false;
	/* A pitch stands as rise:12 for US readers; degrees everybody reads. */
	if (d == DIM_ANGLE)
		as_written = u == UNIT_DEG || units == SYSTEM_US;
	else
		as_written = d == DIM_NONE || unit_in_system(u, units) == u;
	copy_words(copy, text, length);
	if (as_written)
		snprintf(buf, size, "%s", copy);
	else
		print_converted(buf, size, si, d, u, units);
	return true;
}

/* Rounded up to the next part; a part in 1e9 may come from conversions. */
static double up_to(double si, double part)
{
	return ceil(si / part - 1e-9) * part;
}

double guide_least(double value, enum unit_system units)
{
	if (units == SYSTEM_SI)
		return up_to(value, 0.001);
	return is_fraction(value) ? value : up_to(value, M_PER_IN / 8.0);
}

const char *guide_size_print(char *buf, size_t size, const struct guide_size_row *row, double value,
			     enum unit_system units)
{
	switch (row->style) {
	case GUIDE_PITCH:
		pitch_print(buf, size, value);
		break;
	case GUIDE_LEAST:
		if (units == SYSTEM_US)
			tape_print(buf, size, guide_least(value, units), SYSTEM_US,
				   is_fraction(value) ? 64 : 8);
		else
			print_metric(buf, size, guide_least(value, units));
		break;
	case GUIDE_LENGTH:
		if (units == SYSTEM_US)
			print_inches(buf, size, value);
		else
			print_metric(buf, size, value);
		break;
	case GUIDE_COUNT:
		number_print(buf, size, value, 0);
		break;
	case GUIDE_HEAT:
		quantity_print(buf, size, value, units == SYSTEM_US ? UNIT_DEG_F : UNIT_DEG_C, 0);
		break;
	}
	return buf;
}

/* One pair of braces, text between them. */
static enum guide_fill fill_braces(char *out, size_t size, const char *text, size_t length,
				   const struct guide_sizes *sizes, enum unit_system units)
{
	const struct guide_size_row *row;
	double value;

	if (length > 0 && !(text[0] >= 'a' && text[0] <= 'z'))
		return guide_literal_print(out, size, text, length, units) ? GUIDE_FILLED
									   : GUIDE_BAD_QUANTITY;
	row = guide_size_find(text, length);
	if (!row)
		return GUIDE_BAD_NAME;
	value = guide_size_value(sizes, row);
	if (!isfinite(value))
		return GUIDE_SIZE_UNKNOWN;
	guide_size_print(out, size, row, value, units);
	return GUIDE_FILLED;
}

enum guide_fill guide_fill(char *buf, size_t size, const char *text,
			   const struct guide_sizes *sizes, enum unit_system units, const char **at)
{
	const char *s = text;
	size_t n = 0;

	for (; *s != '\0'; s++) {
		char filled[GUIDE_FILLED_MAX] = {*s, '\0'};
		size_t length;

		if (at)
			*at = s;
		if (*s > ' ' && *s != '{' && *s != '}' && n + 1 < size) {
			buf[n++] = *s;
			continue;
		}
		if (is_blank(*s)) {
			if (n == 0 || buf[n - 1] == ' ')
				continue;
			filled[0] = ' ';
		} else if (*s == '{') {
			const char *end = strpbrk(s + 1, "{}");
			enum guide_fill result;

			if (!end || *end != '}')
				return GUIDE_BAD_BRACES;
			result = fill_braces(filled, sizeof filled, s + 1, (size_t)(end - s - 1),
					     sizes, units);
			if (result != GUIDE_FILLED)
				return result;
			s = end;
		} else if (*s == '}') {
			return GUIDE_BAD_BRACES;
		}
		length = strlen(filled);
		if (n + length >= size)
			return GUIDE_TOO_LONG;
		memcpy(buf + n, filled, length);
		n += length;
	}
	if (n > 0 && buf[n - 1] == ' ')
		n--;
	buf[n] = '\0';
	return GUIDE_FILLED;
}
