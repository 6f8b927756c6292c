/* SPDX-License-Identifier: MIT */
/* Reads a dimensioned value as a person writes it on site: `5-5/8 in`, `13 ft 6 in`, `6:12`,
   `1.44 kPa`. Numbers are read the same in every locale: a decimal fraction is rewritten as a
   whole number and a power of ten before strtod sees it, so no decimal mark is left for a locale
   to have an opinion on. */
#include "quantity/quantity.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define TEXT_LIMIT 64

static bool is_digit(char c)
{
	return c >= '0' && c <= '9';
}

static bool is_blank(char c)
{
	return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

static const char *skip_blanks(const char *s)
{
	while (is_blank(*s))
		s++;
	return s;
}

static const char *skip_digits(const char *s)
{
	while (is_digit(*s))
		s++;
	return s;
}

/* Appends the digits from..to to mantissa without leading zeros; *n counts what stands there. */
static void append_digits(char *mantissa, size_t *n, const char *from, const char *to)
{
	for (; from < to; from++)
		if (*n > 0 || *from != '0')
			mantissa[(*n)++] = *from;
}

/* `12`, `12.5`, `.5`, `1.5e3`, unsigned. Returns the end, NULL if there is no number. */
static const char *read_decimal(const char *s, double *value)
{
	const char *const whole_end = skip_digits(s);
	const char *fraction = whole_end, *end = whole_end;
	char mantissa[TEXT_LIMIT + 16];
	size_t n = 0;
	long exponent = 0;

	if (*whole_end == '.') {
		fraction = whole_end + 1;
		end = skip_digits(fraction);
	}
	if (whole_end == s && end == fraction)
		return NULL;
	append_digits(mantissa, &n, s, whole_end);
	append_digits(mantissa, &n, fraction, end);
	exponent = -(long)(end - fraction);
	if (*end == 'e' || *end == 'E') {
		const char *const digits = end + 1 + (end[1] == '-' || end[1] == '+');

		if (is_digit(*digits)) {
			/* at most 60 digits: strtol saturates, and the clamp keeps the sum in
			   range */
			long e = strtol(end + 1, NULL, 10);

			e = e > 9999 ? 9999 : e < -9999 ? -9999 : e;
			exponent += e;
			end = skip_digits(digits);
		}
	}
	if (n == 0)
		mantissa[n++] = '0';
	snprintf(mantissa + n, sizeof mantissa - n, "e%ld", exponent);
	*value = strtod(mantissa, NULL);
	return end;
}

/* `5/16`, both whole and at most nine digits, so that each is exact. Returns the end, NULL if it
   is no fraction. */
static const char *read_fraction(const char *s, double *value)
{
	const char *const slash = skip_digits(s);
	const char *end;
	double over, under;

	if (slash == s || *slash != '/')
		return NULL;
	end = skip_digits(slash + 1);
	if (end == slash + 1 || slash - s > 9 || end - slash > 10)
		return NULL;
	over = (double)strtol(s, NULL, 10);
	under = (double)strtol(slash + 1, NULL, 10);
	if (!(under > 0.0))
		return NULL;
	*value = over / under;
	return end;
}

/* A number with what a tape adds to it: `5/16`, `5-5/8`, `5 5/8`, `5.625`. Unsigned. NULL if
   there is none. */
static const char *read_number(const char *s, double *value)
{
	const char *const digits_end = skip_digits(s);
	const char *end = read_fraction(s, value);
	double part;

	if (end)
		return end;
	if (*digits_end == '/' && digits_end != s)
		return NULL; /* a fraction that is none: 5/0, 5/ */
	end = read_decimal(s, value);
	if (!end)
		return NULL;
	if (end == digits_end && (*end == '-' || is_blank(*end))) {
		const char *const fraction_end =
			read_fraction(*end == '-' ? end + 1 : skip_blanks(end), &part);

		if (fraction_end && part < 1.0) {
			*value += part;
			return fraction_end;
		}
	}
	return end;
}

static const char *read_sign(const char *s, double *sign)
{
	*sign = 1.0;
	if (*s == '-' || *s == '+') {
		*sign = *s == '-' ? -1.0 : 1.0;
		s = skip_blanks(s + 1);
	}
	return s;
}

/* True if text matches unit at the start of s, a run of blanks in s standing for one; *end is
   behind it. */
static bool unit_matches(const char *s, const char *text, const char **end)
{
	for (; *text != '\0'; text++) {
		if (*text == ' ') {
			if (!is_blank(*s))
				return false;
			s = skip_blanks(s);
		} else if (*s++ != *text) {
			return false;
		}
	}
	*end = s;
	return true;
}

/* The longest unit that s begins with and that ends at a word's end. UNIT_COUNT if there is
   none. */
static enum unit read_unit(const char *s, const char **end)
{
	enum unit best = UNIT_COUNT, u;
	const char *best_end = s, *text, *e;

	for (size_t i = 0; (text = unit_spelling(i, &u)); i++)
		if (*text == *s && unit_matches(s, text, &e) && e > best_end) {
			best = u;
			best_end = e;
		}
	*end = best_end;
	return best;
}

/* What is left after a value: nothing, or an error that says what kind of thing it is. */
static enum quantity_error expect_end(const char *s)
{
	return *skip_blanks(s) == '\0' ? QUANTITY_OK : QUANTITY_TRAILING;
}

/* `:12` of a pitch, after its rise. */
static enum quantity_error read_run(const char *s, double rise, double *si)
{
	double run;
	const char *const end = read_number(skip_blanks(s), &run);

	if (!end)
		return QUANTITY_BAD_PITCH;
	if (*skip_blanks(end) != '\0')
		return QUANTITY_TRAILING;
	if (!isfinite(rise) || !isfinite(run))
		return QUANTITY_NOT_NUMBER;
	if (!(run > 0.0))
		return QUANTITY_BAD_PITCH;
	*si = atan(rise / run);
	return QUANTITY_OK;
}

/* `6 in` or `-6"` after the feet of a length; *inches is what was read. */
static enum quantity_error read_inches(const char *s, double *inches)
{
	const char *end;

	end = read_number(skip_blanks(*s == '-' ? s + 1 : s), inches);
	if (!end || read_unit(skip_blanks(end), &end) != UNIT_IN)
		return QUANTITY_TRAILING;
	return expect_end(end);
}

static bool whole(double x)
{
	return !(floor(x) < x);
}

/* Everything after the first number. */
static enum quantity_error read_rest(const char *s, double sign, double number, enum dimension d,
				     double *si)
{
	const char *end;
	double inches = 0.0;
	enum unit u;

	if (*s == '\0') {
		if (d != DIM_NONE)
			return QUANTITY_NO_UNIT;
		*si = sign * number;
		return QUANTITY_OK;
	}
	if (*s == ':' && d == DIM_ANGLE)
		return read_run(s + 1, sign * number, si);
	if (*s == ',' || *s == '.')
		return QUANTITY_NOT_NUMBER;
	if (is_digit(*s) || *s == '-')
		return QUANTITY_TRAILING;
	u = read_unit(s, &end);
	if (u == UNIT_COUNT ||
	    (*end != '\0' && !is_blank(*end) && !(u == UNIT_FT && (is_digit(*end) || *end == '-'))))
		return QUANTITY_WRONG_UNIT;
	if (d == DIM_ANGLE && u == UNIT_PERCENT) {
		*si = atan(sign * number / 100.0);
		return expect_end(end);
	}
	if (unit_dimension(u) != d)
		return QUANTITY_WRONG_UNIT;
	end = skip_blanks(end);
	if (*end != '\0') {
		/* only whole feet are followed by inches: `13.5 ft 6 in` is a slip */
		if (u != UNIT_FT || !whole(number) || read_inches(end, &inches) != QUANTITY_OK)
			return QUANTITY_TRAILING;
		*si = sign * (number * M_PER_FT + inches * M_PER_IN);
		return QUANTITY_OK;
	}
	*si = unit_to_si(sign * number, u);
	return QUANTITY_OK;
}

enum quantity_error quantity_parse(const char *text, enum dimension d, double *si)
{
	const char *s = skip_blanks(text), *end;
	double sign, number, value = 0.0;
	enum quantity_error e;

	if (*s == '\0')
		return QUANTITY_EMPTY;
	if (strlen(text) > TEXT_LIMIT)
		return QUANTITY_TRAILING;
	end = read_number(read_sign(s, &sign), &number);
	if (!end || !isfinite(number))
		return QUANTITY_NOT_NUMBER;
	e = read_rest(skip_blanks(end), sign, number, d, &value);
	if (e != QUANTITY_OK)
		return e;
	if (!isfinite(value))
		return QUANTITY_NOT_NUMBER;
	*si = value;
	return QUANTITY_OK;
}

const char *quantity_error_text(enum quantity_error e)
{
	switch (e) {
	case QUANTITY_OK:
		return "is a value";
	case QUANTITY_EMPTY:
		return "is empty";
	case QUANTITY_NOT_NUMBER:
		return "has no number that can be read (decimal point, no thousands marks)";
	case QUANTITY_NO_UNIT:
		return "has a number but no unit";
	case QUANTITY_WRONG_UNIT:
		return "has a unit that is not known here";
	case QUANTITY_TRAILING:
		return "has something left over after the value";
	case QUANTITY_BAD_PITCH:
		return "is no pitch: rise:run needs a run above zero";
	}
	return "";
}
