/* SPDX-License-Identifier: MIT */
/* A formula with values in place of its symbols. The step table writes formulas for people ("1800
   G^1.5 D^0.75"): what stands side by side is multiplied, and words may stand between. */
#include "report/step_text.h"

#include <ctype.h>
#include <string.h>

#define LINE_SIZE 1024

enum token_kind {
	TOKEN_BLANK,
	TOKEN_OPERAND,
	TOKEN_OPEN,
	TOKEN_CLOSE,
	TOKEN_FUNCTION,
	TOKEN_OTHER
};

struct token {
	enum token_kind kind;
	size_t length;
	int input; /* index of the input met, or -1 */
};

static bool in_name(char c)
{
	return isalnum((unsigned char)c) || c == '_' || c == '\'';
}

static size_t name_length(const char *s)
{
	size_t n = 0;

	while (in_name(s[n]))
		n++;
	return n;
}

static bool any_lower_only(const char *s, size_t n)
{
	for (size_t i = 0; i < n; i++)
		if (!islower((unsigned char)s[i]))
			return false;
	return true;
}

static bool word_in(const char *s, size_t n, const char *const *list)
{
	for (; *list; list++)
		if (strlen(*list) == n && strncmp(*list, s, n) == 0)
			return true;
	return false;
}

/* Words between formulas ("at most 1", "if", "else"), as against names of values. The step table
   writes names of three letters and more with a capital, a digit or an underscore, or has them as
   inputs. */
static bool is_prose(const char *s, size_t n)
{
	static const char *const small[] = { "if", "at", "of", "to", "in",
		                             "or", "is", "no", "by", NULL };

	return any_lower_only(s, n) && (n >= 3 || word_in(s, n, small));
}

/* The name of a function with its power, so that "cos^2 theta" stays one thing; 0 if it is none. */
static size_t function_length(const char *s, size_t name)
{
	static const char *const functions[] = { "sin", "cos",   "tan", "atan", "sqrt", "exp",
		                                 "ln",  "log10", "min", "max",  NULL };
	size_t n = name;

	if (!word_in(s, name, functions))
		return 0;
	if (s[n] == '^' && isdigit((unsigned char)s[n + 1]))
		for (n++; isdigit((unsigned char)s[n]);)
			n++;
	return n;
}

static size_t number_length(const char *s)
{
	size_t n = 0;

	while (isdigit((unsigned char)s[n]) || (s[n] == '.' && isdigit((unsigned char)s[n + 1])))
		n++;
	return n;
}

/* The longest symbol of an input that stands here as a whole word. */
static int find_input(const struct step *s, const char *at, size_t *length)
{
	int found = -1;

	*length = 0;
	for (int i = 0; i < STEP_INPUT_MAX && s->in[i].symbol; i++) {
		const size_t n = strlen(s->in[i].symbol);

		if (n > *length && strncmp(at, s->in[i].symbol, n) == 0 && !in_name(at[n])) {
			*length = n;
			found = i;
		}
	}
	return found;
}

static struct token next_token(const struct step *s, const char *at)
{
	struct token t = { .kind = TOKEN_OTHER, .length = 1, .input = -1 };

	if (*at == ' ') {
		t.kind = TOKEN_BLANK;
		t.length = strspn(at, " ");
	} else if ((t.input = find_input(s, at, &t.length)) >= 0) {
		t.kind = TOKEN_OPERAND;
	} else if ((t.length = number_length(at)) > 0) {
		t.kind = TOKEN_OPERAND;
	} else if ((t.length = name_length(at)) > 0) {
		const size_t function = function_length(at, t.length);

		t.kind = function                 ? TOKEN_FUNCTION
		         : is_prose(at, t.length) ? TOKEN_OTHER
		                                  : TOKEN_OPERAND;
		t.length = function ? function : t.length;
	} else {
		t.length = 1;
		t.kind = *at == '(' ? TOKEN_OPEN : *at == ')' ? TOKEN_CLOSE : TOKEN_OTHER;
	}
	return t;
}

static bool ends_operand(enum token_kind k)
{
	return k == TOKEN_OPERAND || k == TOKEN_CLOSE;
}

static bool starts_operand(enum token_kind k)
{
	return k == TOKEN_OPERAND || k == TOKEN_OPEN || k == TOKEN_FUNCTION;
}

/* What does not fit is cut: the formulas of the step table are far shorter. */
static void append(char *out, size_t *n, const char *text, size_t bytes)
{
	const size_t room = LINE_SIZE - 1 - *n;
	const size_t fits = bytes < room ? bytes : room;

	memcpy(out + *n, text, fits);
	*n += fits;
	out[*n] = '\0';
}

static void append_value(char *out, size_t *n, const char *value)
{
	const bool negative = value[0] == '-';

	append(out, n, "(", negative);
	append(out, n, value, strlen(value));
	append(out, n, ")", negative);
}

/* Where a walk over a formula stands. */
struct walk {
	char out[LINE_SIZE];
	size_t n;
	enum token_kind before;
	bool blank; /* before the next token */
};

/* A number that touches an input, as in "m^2n": both in parentheses. */
static size_t append_pair(struct walk *w, const struct step *s, const char *at, size_t number,
                          const char *const *value, unsigned *shown)
{
	size_t length;
	const int input = find_input(s, at + number, &length);

	append(w->out, &w->n, "(", 1);
	append(w->out, &w->n, at, number);
	append(w->out, &w->n, " x ", 3);
	append_value(w->out, &w->n, value[input]);
	append(w->out, &w->n, ")", 1);
	*shown |= 1u << input;
	return number + length;
}

static size_t put_token(struct walk *w, const struct step *s, const char *at, const struct token *t,
                        const char *const *value, unsigned *shown)
{
	size_t length, used = t->length;

	if (ends_operand(w->before) && starts_operand(t->kind))
		append(w->out, &w->n, " x ", 3);
	else if (w->blank)
		append(w->out, &w->n, " ", 1);
	if (t->input >= 0) {
		append_value(w->out, &w->n, value[t->input]);
		*shown |= 1u << t->input;
	} else if (isdigit((unsigned char)*at) && find_input(s, at + used, &length) >= 0) {
		used = append_pair(w, s, at, used, value, shown);
	} else {
		append(w->out, &w->n, at, used);
	}
	w->before = t->kind;
	w->blank = false;
	return used;
}

const char *step_text_put_in(const struct format *f, const struct step *s, const char *const *value,
                             unsigned *shown)
{
	struct walk w = { .before = TOKEN_OTHER };

	*shown = 0;
	for (const char *at = s->formula; *at;) {
		const struct token t = next_token(s, at);

		if (t.kind == TOKEN_BLANK) {
			w.blank = true;
			at += t.length;
		} else {
			at += put_token(&w, s, at, &t, value, shown);
		}
	}
	return document_text(f->document, "%s", w.out);
}
