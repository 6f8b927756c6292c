/* SPDX-License-Identifier: MIT */
/* What the search for the fewest attachments proved, and the blocks that the layout asks for. */
#include <math.h>

#include "report/json_part.h"

static const char *bar_key(enum search_bar bar)
{
	static const char *const key[] = {
		[BAR_NONE] = "", [BAR_SPACING] = "longest-span", [BAR_CANTILEVER] = "cantilever",
		[BAR_JOINTS] = "joints", [BAR_ASIDE] = "stagger", [BAR_TOGETHER] = "several",
		[BAR_PLACES] = "places",
	};

	return key[bar];
}

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
	put_number(j, object, "one_fewer_at_least", s->fewer ? s->fewer_bound : (double)NAN);
	if (s->bar == BAR_NONE)
		put(j, object, "rule", json_null());
	else
		put_text(j, object, "rule", bar_key(s->bar));
}

void put_blocks(struct json *j, json_t *root, const struct result *r)
{
	const struct block_result *b = &r->block;

	if (b->kind == 0 || b->feet == 0) {
		put(j, root, "blocks", json_null());
		return;
	}
	json_t *object = put_object(j, root, "blocks");

	put_int(j, object, "count", b->feet);
	put_int(j, object, "first_attachment", b->first);
	put_text(j, object, "size", b->size);
	put_text(j, object, "laid", b->flat ? "flat" : "on edge");
	put_quantity(j, object, "along_rafter", b->wide, UNIT_IN);
	put_quantity(j, object, "height", b->high, UNIT_IN);
	put_quantity(j, object, "longest", b->clear, UNIT_IN);
	put_text(j, object, "species", b->species);
	put_text(j, object, "grade", b->grade);
	put_text(j, object, "ends", b->hanger ? "hangers" : "nails");
	put_int(j, object, "nails_per_end", b->hanger ? 0 : b->rows * b->columns);
	put_quantity(j, object, "nail_diameter", b->hanger ? (double)NAN : b->nail_D, UNIT_IN);
	put_quantity(j, object, "nail_length", b->hanger ? (double)NAN : b->nail_L, UNIT_IN);
}
