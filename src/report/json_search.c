/* SPDX-License-Identifier: MIT */
/* What the search for the fewest attachments proved. */
#include <math.h>

#include "report/json_part.h"

void put_search(struct json *j, json_t *root, const struct result *r)
{
	const struct search_result *s = &r->search;

	if (!s->ran) {
		put(j, root, "search", json_null());
		return;
	}
	json_t *object = put_object(j, root, "search");

	put_bool(j, object, "found", s->found);
	put_int(j, object, "wanted", s->wanted);
	put_int(j, object, "attachments", s->feet);
	put_int(j, object, "at_least", s->wanted > 0 || s->bound < 0 ? 0 : s->bound);
	put_bool(j, object, "settled", s->settled);
	put_bool(j, object, "best", s->best);
	put_number(j, object, "one_fewer_ratio", s->fewer ? s->fewer_ratio : (double)NAN);
	if (s->fewer)
		put_check(j, object, "one_fewer_governs", s->fewer_governs);
	else
		put(j, object, "one_fewer_governs", json_null());
}
