/* SPDX-License-Identifier: MIT */
#include "report/format.h"

#include <assert.h>
#include <math.h>
#include <string.h>

#include "guide/fill.h"

#define NUMBER_SIZE 512
#define UNKNOWN "not known"

/* Enough to tell a result from its neighbour, no more than a tape, a scale or a table can mean. */
int unit_decimals(enum unit u)
{
	static const unsigned char decimals[UNIT_COUNT] = {
		[UNIT_NONE] = 2,  [UNIT_PERCENT] = 1, [UNIT_IN] = 3,    [UNIT_FT] = 2,
		[UNIT_MM] = 1,    [UNIT_CM] = 1,      [UNIT_M] = 3,     [UNIT_IN2] = 2,
		[UNIT_FT2] = 1,   [UNIT_M2] = 2,      [UNIT_IN3] = 3,   [UNIT_CM3] = 2,
		[UNIT_LITRE] = 2, [UNIT_GAL] = 2,     [UNIT_IN4] = 3,   [UNIT_CM4] = 2,
		[UNIT_DEG] = 1,   [UNIT_RAD] = 4,     [UNIT_M_S] = 1,   [UNIT_KIP] = 3,
		[UNIT_KN] = 3,    [UNIT_KG] = 1,      [UNIT_PLF] = 1,   [UNIT_N_MM] = 1,
		[UNIT_KN_M] = 3,  [UNIT_PSF] = 1,     [UNIT_KSI] = 3,   [UNIT_KPA] = 3,
		[UNIT_KN_M2] = 3, [UNIT_MPA] = 2,     [UNIT_N_MM2] = 2, [UNIT_KG_M2] = 1,
		[UNIT_LB_FT] = 1, [UNIT_NM] = 1,      [UNIT_KNM] = 3,   [UNIT_PCF] = 1,
		[UNIT_KN_M3] = 2, [UNIT_LB_IN] = 1,
	};

	assert(u < UNIT_COUNT);
	return decimals[u];
}

enum unit shown_unit(const struct format *f, enum unit us)
{
	return unit_in_system(us, f->units);
}

int shown_decimals(const struct format *f, enum unit us, int decimals)
{
	const enum unit shown = shown_unit(f, us);

	if (shown == us || unit_dimension(us) == DIM_TEMPERATURE)
		return decimals;
	/* A unit ten times larger needs one decimal more. */
	const double larger = log10(unit_to_si(1.0, shown) / unit_to_si(1.0, us));
	const int more = (int)(larger > 0.0 ? ceil(larger) : floor(larger));
	const int kept = decimals + more;

	return kept < 0 ? 0 : kept > 9 ? 9 : kept;
}

static const char *print(char *buf, size_t size, double value, int decimals, enum rounding rounding)
{
	switch (rounding) {
	case SHOW_NEAREST:
		return number_print(buf, size, value, decimals);
	case SHOW_UP:
		return number_print_up(buf, size, value, decimals);
	case SHOW_DOWN:
		return number_print_down(buf, size, value, decimals);
	}
	assert(!"no such rounding");
	return buf;
}

/* A large number needs no decimals: five digits tell more than any load is known to. */
static int kept_decimals(double value, int decimals)
{
	while (decimals > 0 && fabs(value) >= pow(10.0, 5 - decimals))
		decimals--;
	return decimals;
}

static const char *with_unit(const struct format *f, const char *number, enum unit u)
{
	const char *unit = unit_text(u);

	return document_text(f->document, "%s%s%s", number, *unit ? NBSP : "", unit);
}

const char *show_number(const struct format *f, double si, enum unit us, enum rounding rounding)
{
	const enum unit u = shown_unit(f, us);
	char number[NUMBER_SIZE];

	if (isnan(si))
		return "-";
	const double value = unit_from_si(si, u);

	print(number, sizeof number, value, kept_decimals(value, unit_decimals(u)), rounding);
	return document_text(f->document, "%s", number);
}

const char *show_rounded(const struct format *f, double si, enum unit us, enum rounding rounding)
{
	if (isnan(si))
		return UNKNOWN;
	return with_unit(f, show_number(f, si, us, rounding), shown_unit(f, us));
}

const char *show(const struct format *f, double si, enum unit us)
{
	return show_rounded(f, si, us, SHOW_NEAREST);
}

const char *show_decimals(const struct format *f, double si, enum unit us, int decimals)
{
	const enum unit u = shown_unit(f, us);
	char number[NUMBER_SIZE];

	if (isnan(si))
		return UNKNOWN;
	number_print(number, sizeof number, unit_from_si(si, u), shown_decimals(f, us, decimals));
	return with_unit(f, number, u);
}

static void trim(char *number)
{
	size_t n = strlen(number);

	if (!strchr(number, '.'))
		return;
	while (n > 0 && number[n - 1] == '0')
		number[--n] = '\0';
	if (n > 0 && number[n - 1] == '.')
		number[n - 1] = '\0';
}

const char *show_significant(const struct format *f, double value, int digits)
{
	char number[NUMBER_SIZE];
	int decimals = 0;

	if (isnan(value))
		return UNKNOWN;
	if (isfinite(value) && (value > 0.0 || value < 0.0)) {
		decimals = digits - 1 - (int)floor(log10(fabs(value)));
		decimals = decimals < 0 ? 0 : decimals > 9 ? 9 : decimals;
	}
	number_print(number, sizeof number, value, decimals);
	trim(number);
	return document_text(f->document, "%s", number);
}

const char *show_exact(const struct format *f, double si, enum unit u, int digits)
{
	if (isnan(si))
		return UNKNOWN;
	return with_unit(f, show_significant(f, unit_from_si(si, u), digits), u);
}

/* The blanks inside a reading hold together. */
static const char *held(const struct format *f, const char *text)
{
	char out[NUMBER_SIZE * 2];
	size_t n = 0;

	for (; *text && n + 3 < sizeof out; text++) {
		if (*text == ' ') {
			out[n++] = NBSP[0];
			out[n++] = NBSP[1];
		} else {
			out[n++] = *text;
		}
	}
	out[n] = '\0';
	return document_text(f->document, "%s", out);
}

const char *show_tape(const struct format *f, double si)
{
	char text[NUMBER_SIZE];

	if (isnan(si))
		return UNKNOWN;
	return held(f, tape_print(text, sizeof text, si, f->units, 8));
}

static const char *in_style(const struct format *f, double si, enum guide_size_style style)
{
	const struct guide_size_row row = { .style = style };
	char text[NUMBER_SIZE];

	if (isnan(si))
		return UNKNOWN;
	return held(f, guide_size_print(text, sizeof text, &row, si, f->units));
}

const char *show_least(const struct format *f, double si)
{
	return in_style(f, si, GUIDE_LEAST);
}

const char *show_part(const struct format *f, double si)
{
	return in_style(f, si, GUIDE_LENGTH);
}

const char *show_pitch(const struct format *f, double theta)
{
	char text[NUMBER_SIZE];

	if (isnan(theta))
		return UNKNOWN;
	return held(f, pitch_print(text, sizeof text, theta));
}

const char *show_factor(const struct format *f, double value, int decimals)
{
	char number[NUMBER_SIZE];

	if (isnan(value))
		return UNKNOWN;
	return document_text(f->document, "%s",
	                     number_print(number, sizeof number, value, decimals));
}

const char *show_weight(const struct format *f, double si)
{
	const enum unit u = f->units == SYSTEM_SI ? UNIT_KG : UNIT_LB;
	char number[NUMBER_SIZE];

	if (isnan(si))
		return UNKNOWN;
	const double value = unit_from_si(si, u);

	number_print(number, sizeof number, value, f->units == SYSTEM_SI && value < 100 ? 1 : 0);
	return with_unit(f, number, u);
}

const char *show_ratio(const struct format *f, double ratio)
{
	char number[NUMBER_SIZE];

	if (isnan(ratio))
		return "not checked";
	return document_text(f->document, "%s", number_print_up(number, sizeof number, ratio, 2));
}
