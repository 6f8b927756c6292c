/* SPDX-License-Identifier: MIT */
#include "report/json_part.h"

#include <math.h>

#include "report/check_part.h"

void put_check(struct json *j, json_t *object, const char *key, enum check_id id)
{
	static const char *const names[CHECK_COUNT] = {
#define C(id, link, words, unit) #id,
		CHECKS(C)
#undef C
	};

	put_id(j, object, key, names[id]);
}

void put_checks(struct json *j, json_t *parent, const char *key,
                const struct check_value check[CHECK_COUNT])
{
	json_t *array = put_array(j, parent, key);

	for (int i = 0; i < CHECK_COUNT && !j->failed; i++) {
		if (!check[i].rated)
			continue;
		json_t *object = append_object(j, array);

		put_check(j, object, "check", (enum check_id)i);
		put_text(j, object, "words", check_words((enum check_id)i));
		put_quantity(j, object, "demand", check[i].demand, check_unit((enum check_id)i));
		put_quantity(j, object, "capacity", check[i].capacity,
		             check_unit((enum check_id)i));
		put_number(j, object, "ratio", check[i].ratio);
		put_text(j, object, "combination", check[i].combination);
		put_number(j, object, "CD", check[i].CD);
	}
}

void put_governs(struct json *j, json_t *object, const struct check_value check[CHECK_COUNT], double ratio,
		 enum check_id id)
{
	const bool rated = any_rated(check);

	put_number(j, object, "ratio", rated ? ratio : (double)NAN);
	if (rated)
		put_check(j, object, "governs", id);
	else
		put(j, object, "governs", json_null());
}

void put_lines(struct json *j, json_t *parent, const struct pass *pass)
{
	json_t *array = put_array(j, parent, "lines");

	for (int i = 0; i < pass->lines && !j->failed; i++) {
		const struct rail_line *l = &pass->line[i];
		json_t *object = append_object(j, array);

		put_int(j, object, "line", l->line + 1);
		put_quantity(j, object, "y", l->y, UNIT_IN);
		put_quantity(j, object, "x0", l->x0, UNIT_IN);
		put_quantity(j, object, "x1", l->x1, UNIT_IN);
		put_int(j, object, "attachments", l->count);
		put_quantity(j, object, "longest_span", l->longest_span, UNIT_IN);
		put_quantity(j, object, "longest_cantilever", l->longest_cantilever, UNIT_IN);
		put_checks(j, object, "checks", l->check);
		put_governs(j, object, l->check, l->ratio, l->governs);
	}
}

void put_rafters(struct json *j, json_t *parent, const struct pass *pass)
{
	json_t *array = put_array(j, parent, "rafters");

	for (int i = 0; i < pass->rafters && !j->failed; i++) {
		const struct rafter_result *r = &pass->rafter[i];
		json_t *object = append_object(j, array);

		put_int(j, object, "rafter", r->rafter + 1);
		put_int(j, object, "feet", r->feet);
		put_checks(j, object, "before", r->before);
		put_checks(j, object, "after", r->after);
		put_number(j, object, "ratio_before", any_rated(r->before) ? r->ratio_before : (double)NAN);
		put_governs(j, object, r->after, r->ratio_after, r->governs);
		put_number(j, object, "rise_total", r->rise_total);
		put_number(j, object, "rise_dead", r->rise_dead);
		put_bool(j, object, "five_percent_passed", r->triggered);
	}
}
