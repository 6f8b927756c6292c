/* SPDX-License-Identifier: MIT */
#include "load/asce7_tilted.h"
#include "report/json_part.h"

static void add_conditions(struct json *j, json_t *rack, unsigned failed)
{
	json_t *array = put_array(j, rack, "conditions_not_met");

	for (int i = 0; i < TILTED_CONDITION_COUNT && !j->failed; i++) {
		if (!(failed & TILTED_BIT(i)))
			continue;
		json_t *object = append_object(j, array);

		put_text(j, object, "text", tilted_condition_text((enum tilted_condition)i));
		put_text(j, object, "clause", tilted_condition_clause((enum tilted_condition)i));
	}
}

void put_rack(struct json *j, json_t *wind, const struct wind_result *w)
{
	static const char *const rule[] = {
		[WIND_FLUSH] = "29.4.4", [WIND_TILTED] = "29.4.3", [WIND_STRUCTURE] = "29.4.1"};

	put_text(j, wind, "rule", rule[w->rule]);
	if (w->rule == WIND_FLUSH)
		return;
	json_t *rack = put_object(j, wind, "rack");

	put_quantity(j, rack, "tilt", w->tilt, UNIT_DEG);
	put_quantity(j, rack, "h1", w->h1, UNIT_IN);
	add_conditions(j, rack, w->tilted_failed);
	if (w->rule == WIND_TILTED) {
		put_number(j, rack, "gammap", w->gammap);
		put_number(j, rack, "gammac", w->gammac);
		put_quantity(j, rack, "Lb", w->Lb, UNIT_FT);
		return;
	}
	put_number(j, rack, "GCr_lateral", w->GCr_h);
	put_number(j, rack, "GCr_uplift", w->GCr_v);
	put_quantity(j, rack, "Fh", w->Fh, UNIT_LB);
	put_quantity(j, rack, "Fv", w->Fv, UNIT_LB);
}
