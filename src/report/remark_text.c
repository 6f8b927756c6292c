/* SPDX-License-Identifier: MIT */
/* Fills the templates of check/remark.h. A place is {i unit decimals}, {i unit up|down}, {i tape}, {i pitch}, {i n},
   {i -}, {ti} or {code}. */
#define _POSIX_C_SOURCE 200809L /* strcasecmp */
#include "report/format.h"

#include <assert.h>
#include <ctype.h>
#include <math.h>
#include <string.h>
#include <strings.h>

#include "load/loading_code.h"

#define PLACE_MAX 24 /* "0 kN/m2 3" and room */
#define SENTENCE_MAX 2048

enum place_kind { PLACE_CODE, PLACE_TEXT, PLACE_UNIT, PLACE_TAPE, PLACE_PITCH, PLACE_WHOLE, PLACE_FACTOR };

struct place {
	enum place_kind kind;
	int index;
	enum unit unit;
	int decimals;
	enum rounding rounding; /* not SHOW_NEAREST: to the usual decimals of the unit */
};

/* As printed ("lb/ft") or by its short name in the list of units ("plf"). */
static bool find_unit(const char *text, enum unit *unit)
{
	static const char *const names[UNIT_COUNT] = {
#define U(id, text, dim, factor, zero) #id,
		UNITS(U)
#undef U
	};

	for (int u = 0; u < UNIT_COUNT; u++) {
		if (*text && (strcmp(text, unit_text((enum unit)u)) == 0 ||
		              strcasecmp(text, names[u]) == 0)) {
			*unit = (enum unit)u;
			return true;
		}
	}
	return false;
}

/* The inside of a pair of braces. */
static bool parse_place(const char *from, size_t n, struct place *p)
{
	char text[PLACE_MAX];

	*p = (struct place){ .kind = PLACE_TEXT };
	if (n < 2 || n >= sizeof text)
		return false;
	memcpy(text, from, n);
	text[n] = '\0';
	if (strcmp(text, "code") == 0) {
		p->kind = PLACE_CODE;
		return true;
	}
	const char *digit = text[0] == 't' ? text + 1 : text;

	if (*digit < '0' || *digit > '2')
		return false;
	p->index = *digit - '0';
	if (text[0] == 't')
		return n == 2;
	if (text[1] != ' ')
		return false;
	char *unit = text + 2, *last = strrchr(unit, ' ');

	if (last && last[1] >= '0' && last[1] <= '9' && !last[2]) {
		p->decimals = last[1] - '0';
		*last = '\0';
	} else if (last && (strcmp(last, " up") == 0 || strcmp(last, " down") == 0)) {
		p->rounding = last[1] == 'u' ? SHOW_UP : SHOW_DOWN;
		*last = '\0';
	}
	p->kind = strcmp(unit, "tape") == 0    ? PLACE_TAPE
	          : strcmp(unit, "pitch") == 0 ? PLACE_PITCH
	          : strcmp(unit, "n") == 0     ? PLACE_WHOLE
	          : strcmp(unit, "-") == 0     ? PLACE_FACTOR
	                                       : PLACE_UNIT;
	return p->kind != PLACE_UNIT || find_unit(unit, &p->unit);
}

bool remark_template_valid(const char *template)
{
	for (const char *open = template; (open = strchr(open, '{')) != NULL;) {
		const char *shut = strchr(open, '}');
		struct place p;

		if (!shut || !parse_place(open + 1, (size_t)(shut - open - 1), &p))
			return false;
		open = shut + 1;
	}
	return true;
}

/* A bare number in these remarks is a ratio of demand to capacity, and is never printed smaller
   than it is. */
static bool speaks_of_ratios(const struct remark *m)
{
	const enum remark_kind kind = remark_kind(m->id);

	return kind == REMARK_FAILS || kind == REMARK_REMEDY || m->id == REMARK_BEFORE_FAILS ||
	       m->id == REMARK_BETTER_FACT || m->id == REMARK_PARTIAL_RAFTER;
}

static const char *factor(const struct format *f, const struct remark *m, double value,
                          int decimals)
{
	char number[400];

	if (isnan(value))
		return "not known";
	if (!speaks_of_ratios(m))
		return show_factor(f, value, decimals);
	return document_text(f->document, "%s",
	                     number_print_up(number, sizeof number, value, decimals));
}

static const char *code_name(enum edition edition)
{
	const struct loading_code *code = loading_code_of(edition);

	return code ? code->name : "ASCE/SEI 7";
}

static const char *fill(const struct format *f, const struct remark *m, const struct place *p)
{
	const double value = m->value[p->index];

	switch (p->kind) {
	case PLACE_CODE:
		return code_name(f->code);
	case PLACE_TEXT:
		return m->text[p->index] ? m->text[p->index] : "not known";
	case PLACE_UNIT:
		if (p->rounding != SHOW_NEAREST)
			return show_rounded(f, value, p->unit, p->rounding);
		return show_decimals(f, value, p->unit, p->decimals);
	case PLACE_TAPE:
		return show_tape(f, value);
	case PLACE_PITCH:
		return show_pitch(f, value);
	case PLACE_WHOLE:
		return show_factor(f, value, 0);
	case PLACE_FACTOR:
		return factor(f, m, value, p->decimals);
	}
	assert(!"a place of no kind");
	return "";
}

/* What does not fit is cut; 2 KiB hold the longest template with three texts of TEXT_MAX. */
static void append(char *out, size_t *n, const char *text, size_t bytes)
{
	const size_t room = SENTENCE_MAX - 1 - *n;
	const size_t fits = bytes < room ? bytes : room;

	memcpy(out + *n, text, fits);
	*n += fits;
	out[*n] = '\0';
}

const char *remark_text(const struct format *f, const struct remark *m)
{
	const char *from = remark_template(m->id), *open, *shut;
	char out[SENTENCE_MAX] = "";
	size_t n = 0;

	while ((open = strchr(from, '{')) != NULL && (shut = strchr(open, '}')) != NULL) {
		struct place p;
		const bool known = parse_place(open + 1, (size_t)(shut - open - 1), &p);

		append(out, &n, from, (size_t)(open - from));
		/* A test keeps every template readable; a report does not stop for one that is not.
		 */
		const char *value = known ? fill(f, m, &p) : "(?)";

		append(out, &n, value, strlen(value));
		from = shut + 1;
	}
	append(out, &n, from, strlen(from));
	/* A text may begin the sentence. */
	out[0] = (char)toupper((unsigned char)out[0]);
	return document_text(f->document, "%s", out);
}
