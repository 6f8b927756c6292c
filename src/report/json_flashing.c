/* SPDX-License-Identifier: MIT */
#include <math.h>

#include "report/flashing_sizes.h"
#include "report/json_part.h"

static void put_size(struct json *j, json_t *object, const struct guide_size_row *row, double value)
{
	put_text(j, object, "name", row->name);
	put_text(j, object, "meaning", row->meaning);
	switch (row->style) {
	case GUIDE_PITCH:
		put_exact(j, object, "value", value, UNIT_DEG);
		return;
	case GUIDE_LEAST:
	case GUIDE_LENGTH:
		put_quantity(j, object, "value", value, UNIT_IN);
		return;
	case GUIDE_COUNT:
		put_number(j, object, "value", value);
		return;
	case GUIDE_HEAT:
		put_quantity(j, object, "value", value, UNIT_DEG_F);
		return;
	}
}

void put_flashing(struct json *j, json_t *root, const struct job *job, const struct result *r)
{
	const struct guide_sizes sizes = flashing_sizes(job, r);
	json_t *flashing = put_object(j, root, "flashing");

	put_text(j, flashing, "covering", job->roof.covering);
	json_t *array = put_array(j, flashing, "sizes");
	const struct guide_size_row *row;

	for (size_t i = 0; (row = guide_size_row(i)) != NULL && !j->failed; i++) {
		const double value = guide_size_value(&sizes, row);

		if (!isnan(value))
			put_size(j, append_object(j, array), row, value);
	}
}
