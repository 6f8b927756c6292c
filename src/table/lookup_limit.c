/* SPDX-License-Identifier: MIT */
#include "table/lookup_limit.h"

#include <assert.h>
#include <math.h>

static_assert((int)LIMIT_COUNT == (int)TABLE_LIMIT_COUNT, "one row for each limit");

double limit_printed(enum limit_id id)
{
	return table_limit[id].value;
}

double limit_of(enum limit_id id)
{
	const struct limit_row *r = &table_limit[id];

	switch (r->unit) {
	case LIMIT_UNIT_IN:
		return unit_to_si(r->value, UNIT_IN);
	case LIMIT_UNIT_FT:
		return unit_to_si(r->value, UNIT_FT);
	case LIMIT_UNIT_DEG:
		return unit_to_si(r->value, UNIT_DEG);
	case LIMIT_UNIT_FAHRENHEIT:
		return unit_to_si(r->value, UNIT_DEG_F);
	case LIMIT_UNIT_RATIO:
	case LIMIT_UNIT_NUMBER:
	case LIMIT_UNIT_COUNT:
		break;
	}
	return r->value;
}

double limit_slope(enum limit_id id)
{
	return atan(table_limit[id].value / 12.0);
}
