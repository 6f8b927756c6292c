/* SPDX-License-Identifier: MIT */
/* Prints numbers, quantities, tape readings and pitches, the same in every locale: only whole
   numbers go through snprintf, the decimal point is put in by hand. */
#include "quantity/quantity.h"

#include <assert.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

enum rounding { ROUND_NEAREST, ROUND_OUTWARD, ROUND_INWARD };

#define DECIMALS_MAX 12

/* A value that a conversion there and back has moved by its last bits is still the value that
   was written: 800 lb kept in N must not be printed down to 799. A part in 1e12 is some thousand
   times what those bits cost. */
#define SLACK 1e-12

/* Whole number to print for a magnitude that has been scaled by ten to the decimals. unity is
   what 1 scales to: the limit of every ratio gets no slack, so a ratio above 1 by its last bit
   is not printed as 1.00. */
static double round_scaled(double scaled, double unity, enum rounding rounding)
{
	const double near = floor(scaled + 0.5);
	/* beyond ten digits there is none to spare */
	const double slack = fmin(SLACK * scaled, 1e-2);
	const bool at_near = fabs(scaled - near) <= slack;
	const bool at_unity = !(near < unity) && !(near > unity);

	switch (rounding) {
	case ROUND_NEAREST:
		return floor(scaled + 0.5 + slack);
	case ROUND_OUTWARD:
		return at_near && !(at_unity && scaled > unity) ? near : ceil(scaled);
	case ROUND_INWARD:
		return at_near && !(at_unity && scaled < unity) ? near : floor(scaled);
	}
	return near;
}

/* Adds the n bytes at text to buf as far as they fit; *at is where buf ends. */
static void put(char *buf, size_t size, size_t *at, const char *text, size_t n)
{
	const size_t room = size - 1 - *at;
	const size_t take = n < room ? n : room;

	memcpy(buf + *at, text, take);
	*at += take;
	buf[*at] = '\0';
}

static const char *print_rounded(char *buf, size_t size, double value, int decimals,
				 enum rounding rounding)
{
	char digits[400]; /* 309 digits of the largest double, and the leading zeros below */
	double scale = 1.0, whole;
	const char *sign;
	size_t n, places, at = 0;

	assert(size > 0 && decimals >= 0 && decimals <= DECIMALS_MAX);
	if (!isfinite(value)) {
		snprintf(buf, size, "%s", isnan(value) ? "nan" : value > 0.0 ? "inf" : "-inf");
		return buf;
	}
	/* 1e15 < 2^53: above it a double has no digit left behind the point to print */
	while (decimals > 0 && fabs(value) * pow(10.0, decimals) >= 1e15)
		decimals--;
	for (int i = 0; i < decimals; i++)
		scale *= 10.0;
	whole = fabs(value) * scale;
	if (whole < 1e15)
		whole = round_scaled(whole, scale, rounding);
	sign = value < 0.0 && whole > 0.0 ? "-" : "";
	places = (size_t)decimals;
	snprintf(digits, sizeof digits, "%0*.0f", decimals + 1, whole);
	n = strlen(digits);
	put(buf, size, &at, sign, strlen(sign));
	put(buf, size, &at, digits, n - places);
	if (places > 0) {
		put(buf, size, &at, ".", 1);
		put(buf, size, &at, digits + n - places, places);
	}
	return buf;
}

const char *number_print(char *buf, size_t size, double value, int decimals)
{
	return print_rounded(buf, size, value, decimals, ROUND_NEAREST);
}

const char *number_print_up(char *buf, size_t size, double value, int decimals)
{
	return print_rounded(buf, size, value, decimals, ROUND_OUTWARD);
}

const char *number_print_down(char *buf, size_t size, double value, int decimals)
{
	return print_rounded(buf, size, value, decimals, ROUND_INWARD);
}

const char *quantity_print(char *buf, size_t size, double si, enum unit u, int decimals)
{
	size_t n;

	number_print(buf, size, unit_from_si(si, u), decimals);
	n = strlen(buf);
	if (*unit_text(u) != '\0')
		snprintf(buf + n, size - n, " %s", unit_text(u));
	return buf;
}

static long long divisor(long long a, long long b)
{
	while (b != 0) {
		const long long rest = a % b;

		a = b;
		b = rest;
	}
	return a;
}

const char *tape_print(char *buf, size_t size, double si, enum unit_system system, int denominator)
{
	double parts;
	long long inches, over;
	const char *sign;
	char feet[32] = "", fraction[32] = "";

	assert(size > 0 && denominator > 0);
	/* beyond this a length is no tape reading, and would not fit in whole parts */
	if (system == SYSTEM_SI || !(fabs(si) < 1e9))
		return quantity_print(buf, size, si, system == SYSTEM_SI ? UNIT_MM : UNIT_IN, 0);
	parts = round_scaled(fabs(si) / M_PER_IN * denominator, 0.0, ROUND_NEAREST);
	sign = si < 0.0 && parts > 0.0 ? "-" : "";
	inches = (long long)parts / denominator;
	over = (long long)parts % denominator;
	if (inches >= 24) {
		snprintf(feet, sizeof feet, "%lld ft ", inches / 12);
		inches %= 12;
	}
	if (over > 0) {
		const long long common = divisor(over, denominator);

		snprintf(fraction, sizeof fraction, "%lld/%lld", over / common,
			 denominator / common);
	}
	if (over == 0)
		snprintf(buf, size, "%s%s%lld in", sign, feet, inches);
	else if (inches == 0 && feet[0] == '\0')
		snprintf(buf, size, "%s%s in", sign, fraction);
	else
		snprintf(buf, size, "%s%s%lld-%s in", sign, feet, inches, fraction);
	return buf;
}

/* Drops zeros, and then the point, from the end of a number with decimals. */
static void trim_zeros(char *s)
{
	size_t n = strlen(s);

	if (!strchr(s, '.'))
		return;
	while (s[n - 1] == '0')
		s[--n] = '\0';
	if (s[n - 1] == '.')
		s[n - 1] = '\0';
}

const char *pitch_print(char *buf, size_t size, double theta)
{
	char rise[32], degrees[32];

	quantity_print(degrees, sizeof degrees, theta, UNIT_DEG, 1);
	/* steeper than 80 deg (68:12) a rise over 12 says nothing to anybody */
	if (!(fabs(theta) <= 80.0 * RAD_PER_DEG)) {
		snprintf(buf, size, "%s", degrees);
		return buf;
	}
	number_print(rise, sizeof rise, 12.0 * tan(theta), 2);
	trim_zeros(rise);
	snprintf(buf, size, "%s:12 (%s)", rise, degrees);
	return buf;
}
