/* SPDX-License-Identifier: MIT */
/* The result's list of remarks: fixed store, each said once, what does not fit counted. */
#include "check/context.h"

#include <string.h>

static bool same(const struct remark *a, const struct remark *b)
{
	for (int i = 0; i < 3; i++) {
		const char *s = a->text[i] ? a->text[i] : "", *t = b->text[i] ? b->text[i] : "";

		if (memcmp(&a->value[i], &b->value[i], sizeof(double)) != 0 || strcmp(s, t) != 0)
			return false;
	}
	return a->id == b->id;
}

void remark_add(struct result *r, enum remark_id id, const double value[3], const char *const text[3])
{
	struct remark m = { .id = id };

	memcpy(m.value, value, sizeof m.value);
	memcpy(m.text, text, sizeof m.text);
	for (int i = 0; i < r->remarks; i++)
		if (same(&r->remark[i], &m))
			return;
	if (r->remarks == REMARK_MAX)
		r->remarks_dropped++;
	else
		r->remark[r->remarks++] = m;
}
