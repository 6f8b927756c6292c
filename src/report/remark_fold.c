/* SPDX-License-Identifier: MIT */
/* Remarks that say one thing of several zones, of two loads or for several reasons are read as one. */
#include <string.h>

#include "report/format.h"

static const char *word(const struct remark *m, int i)
{
	return m->text[i] ? m->text[i] : "";
}

/* True where `next` says of something else what `first` says, so that one sentence can hold both. */
static bool akin(const struct remark *first, const struct remark *next)
{
	if (first->id != next->id)
		return false;
	if (first->id == REMARK_MINIMUM_PRESSURE)
		return strcmp(word(first, 0), word(next, 0)) == 0;
	if (first->id == REMARK_FIVE_PERCENT)
		return strcmp(word(first, 1), word(next, 1)) == 0;
	return first->id == REMARK_TILTED_LIMIT;
}

/* Adds what `next` says to `m`, whose texts are those of a remark of the same kind. */
static void join(const struct format *f, struct remark *m, const struct remark *next)
{
	struct document *d = f->document;

	if (m->id == REMARK_MINIMUM_PRESSURE)
		m->text[1] = document_text(d, "%s and zone %s", word(m, 1), word(next, 1));
	else if (m->id == REMARK_FIVE_PERCENT)
		m->text[0] = document_text(d, "%s rises by %s, and its %s", word(m, 0),
					   show_rounded(f, m->value[0], UNIT_PERCENT, SHOW_UP), word(next, 0));
	else
		m->text[0] = document_text(d, "%s [%s] %s", word(m, 0), word(m, 1), word(next, 0));
	if (m->id == REMARK_TILTED_LIMIT)
		m->text[1] = next->text[1];
	memcpy(m->value, next->value, sizeof m->value);
}

bool remark_fold(const struct format *f, const struct result *r, int i, struct remark *out)
{
	for (int k = 0; k < i; k++)
		if (akin(&r->remark[k], &r->remark[i]))
			return false;
	*out = r->remark[i];
	for (int k = i + 1; k < r->remarks; k++)
		if (akin(&r->remark[i], &r->remark[k]))
			join(f, out, &r->remark[k]);
	return true;
}
