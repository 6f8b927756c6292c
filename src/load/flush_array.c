/* SPDX-License-Identifier: MIT */
/* The conditions of ASCE/SEI 7-16 and 7-22 29.4.4 for collectors parallel to the roof. Each is a
   limit on geometry and is met within the last bits of a unit conversion. Distances are those on
   the roof surface. */
#include <math.h>

#include "load/asce7_solar.h"
#include "load/load_steps.h"
#include "table/lookup_limit.h"

static const struct {
	const char *text, *clause;
	enum confidence confidence;
} condition[FLUSH_CONDITION_COUNT] = {
#define C(id, text, clause, confidence) [FLUSH_##id] = {text, clause, confidence},
	FLUSH_CONDITIONS(C)
#undef C
};

const char *flush_condition_text(enum flush_condition c)
{
	return condition[c].text;
}

const char *flush_condition_clause(enum flush_condition c)
{
	return condition[c].clause;
}

enum confidence flush_condition_confidence(enum flush_condition c)
{
	return condition[c].confidence;
}

static bool gaps_open(const struct flush_array *a)
{
	const double least = limit_of(LIMIT_GAP_LEAST);

	return (a->columns <= 1 || at_least(a->column_gap, least)) &&
	       (a->rows <= 1 || at_least(a->row_gap, least));
}

unsigned solar_flush_failed(const struct flush_array *a)
{
	const double gap_spacing = limit_of(LIMIT_GAP_APART);
	const double clear = STEP(NULL, step_solar_edge_distance, a->h2);
	const bool met[FLUSH_CONDITION_COUNT] = {
		[FLUSH_PARALLEL] = at_most(fabs(a->tilt), limit_of(LIMIT_PARALLEL_TILT)),
		[FLUSH_HEIGHT] = at_most(a->h2, limit_of(LIMIT_FLUSH_TOP)),
		[FLUSH_GAP] = gaps_open(a),
		[FLUSH_GAP_SPACING] = at_most(a->along, gap_spacing) && at_most(a->up, gap_spacing),
		[FLUSH_EDGE] = at_least(a->to_edge, clear),
		[FLUSH_RIDGE] = at_least(a->to_ridge, clear),
	};
	unsigned failed = 0;

	for (int c = 0; c < FLUSH_CONDITION_COUNT; c++)
		if (!met[c])
			failed |= FLUSH_BIT(c);
	return failed;
}
