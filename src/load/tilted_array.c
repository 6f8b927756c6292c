/* SPDX-License-Identifier: MIT */
/* The conditions of ASCE/SEI 7-16 and 7-22 29.4.3 for tilted collectors. Each is a limit on
   geometry and is met within the last bits of a unit conversion. */
#include <math.h>

#include "load/asce7_tilted.h"
#include "load/bound.h"
#include "load/load_steps.h"
#include "table/lookup_limit.h"

static const struct {
	const char *text, *clause;
	enum confidence confidence;
} condition[TILTED_CONDITION_COUNT] = {
#define C(id, text, clause, confidence) [TILTED_##id] = {text, clause, confidence},
	TILTED_CONDITIONS(C)
#undef C
};

const char *tilted_condition_text(enum tilted_condition c)
{
	return condition[c].text;
}

const char *tilted_condition_clause(enum tilted_condition c)
{
	return condition[c].clause;
}

enum confidence tilted_condition_confidence(enum tilted_condition c)
{
	return condition[c].confidence;
}

static double clear_value(const double *in)
{
	return larger(2.0 * (in[0] - in[1]), 4.0);
}

const struct step step_solar_tilted_clear = {
	.name = "solar-tilted-clear",
	.symbol = "dmin",
	.unit = UNIT_FT,
	.title = "least distance of tilted collectors from roof edges",
	.formula = "max(2 (h2 - hpt), 4)",
	.clause = {[ASCE7_16] = "ASCE/SEI 7-16 29.4.3", [ASCE7_22] = "ASCE/SEI 7-22 29.4.3"},
	.confidence = FROM_MEMORY,
	.in = {{"h2", UNIT_FT, "height of the high edge above the roof"},
	       {"hpt", UNIT_FT, "height of the parapet above the roof"}},
	.value = clear_value,
};

static bool form_listed(const struct tilted_array *a)
{
	return a->roof == WIND_ROOF_FLAT || a->roof == WIND_ROOF_GABLE || a->roof == WIND_ROOF_HIP;
}

static bool gaps_open(const struct tilted_array *a)
{
	const double least = limit_of(LIMIT_GAP_LEAST);

	return (a->columns <= 1 || at_least(a->column_gap, least)) &&
	       (a->rows <= 1 || at_least(a->row_gap, least));
}

unsigned solar_tilted_failed(const struct tilted_array *a)
{
	const double gap_spacing = limit_of(LIMIT_GAP_APART);
	const bool met[TILTED_CONDITION_COUNT] = {
		[TILTED_FORM] = form_listed(a),
		[TILTED_SLOPE] = at_most(a->theta, limit_of(LIMIT_LOW_SLOPE_FIGURE)),
		[TILTED_CHORD] = at_most(a->Lp, limit_of(LIMIT_TILTED_CHORD)),
		[TILTED_TILT] = a->tilt >= 0.0 && at_most(a->tilt, limit_of(LIMIT_TILTED_TILT)),
		[TILTED_LOW_EDGE] = at_most(a->h1, limit_of(LIMIT_TILTED_LOW_EDGE)),
		[TILTED_HIGH_EDGE] = at_most(a->h2, limit_of(LIMIT_TILTED_HIGH_EDGE)),
		[TILTED_GAP] = gaps_open(a),
		[TILTED_GAP_SPACING] =
			at_most(a->along, gap_spacing) && at_most(a->Lp, gap_spacing),
		[TILTED_EDGE] =
			at_least(a->to_edge, STEP(NULL, step_solar_tilted_clear, a->h2, a->hpt)),
	};
	unsigned failed = 0;

	for (int c = 0; c < TILTED_CONDITION_COUNT; c++)
		if (!met[c])
			failed |= TILTED_BIT(c);
	return failed;
}
