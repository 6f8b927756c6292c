/* SPDX-License-Identifier: MIT */
/* The existing-building code's thresholds (IEBC 503.3 and 503.4, 2018 and later; siblings 706.2,
   806). The 5 percent rule is read in two ways: by load type (dead load alone), or by the total
   design effect. Both are computed and either one triggers. Exceptions (Group R of up to five units
   built to the IRC, second covering) are not judged. */
#include "load/triggers.h"

#include <math.h>

#include "load/load_steps.h"
#include "table/lookup_snow.h"

static double rise_value(const double *in)
{
	const double before = in[0], after = in[1];

	if (before > 0.0)
		return (after - before) / before;
	return after > 0.0 ? (double)INFINITY : after - before;
}

const struct step step_load_rise = {
	.name = "load-rise",
	.symbol = "rise",
	.unit = UNIT_NONE,
	.title = "rise of a gravity load, or of its effect, by the work",
	.formula = "(after - before)/before",
	.clause = {[EDITION_ANY] = "IEBC 2018 503.3, 806.2; IEBC 2021 503.3"},
	.confidence = CONFIRMED,
	.note = "more than 0.05 asks for the strength of the current code; some section numbers "
		"are from memory",
	.in = {{"before", UNIT_NONE, "before the work, in any unit"},
	       {"after", UNIT_NONE, "after it, in the same unit"}},
	.value = rise_value,
};

static double lateral_value(const double *in)
{
	return in[0] / in[1];
}

const struct step step_lateral_rise = {
	.name = "lateral-rise",
	.symbol = "rise",
	.unit = UNIT_NONE,
	.title = "rise of the weight that pulls on the lateral system",
	.formula = "wa/we",
	.clause = {[EDITION_ANY] = "IEBC 2018 503.4, 806.3"},
	.confidence = COMMON_PRACTICE,
	.note = "the rule limits the demand-capacity ratio to a rise of 0.10, all work since "
		"construction counted; the "
		"weights stand for it in permit files",
	.in = {{"wa", UNIT_LB, "weight of the array"},
	       {"we", UNIT_LB,
		"weight of roof, ceiling and upper half of the walls before the work"}},
	.value = lateral_value,
};

struct gravity_trigger trigger_gravity(const struct gravity_change *c, struct trace *trace)
{
	const double limit = code_trigger_row("gravity-5-percent")->limit / 100.0;
	struct gravity_trigger t = {
		.rise_dead = STEP(trace, step_load_rise, c->dead_before, c->dead_after),
		.rise_live = STEP(trace, step_load_rise, c->live_before, c->live_after),
		.rise_snow = STEP(trace, step_load_rise, c->snow_before, c->snow_after),
		.rise_total = STEP(trace, step_load_rise, c->total_before, c->total_after),
		.clause = step_clause(&step_load_rise, EDITION_ANY),
	};

	/* a rise that is not known counts as one */
	t.by_type = !(t.rise_dead <= limit && t.rise_live <= limit && t.rise_snow <= limit);
	t.by_total = !(t.rise_total <= limit);
	t.triggered = t.by_type || t.by_total;
	if (!t.triggered)
		t.text = "No load type and no total effect rises by more than 5 percent.";
	else if (t.by_type && t.by_total)
		t.text = "A load type and the total effect rise by more than 5 percent: the "
			 "element must carry the loads of the current code.";
	else if (t.by_type)
		t.text = "A load type alone rises by more than 5 percent, the total effect does "
			 "not: by the stricter reading the element must carry the loads of the "
			 "current code.";
	else
		t.text = "The total effect rises by more than 5 percent, no load type alone does: "
			 "by the stricter reading the element must carry the loads of the current "
			 "code.";
	return t;
}

double trigger_lateral(double array, double existing, bool *triggered, struct trace *trace)
{
	const double rise = STEP(trace, step_lateral_rise, array, existing);

	*triggered = !(rise <= code_trigger_row("lateral-10-percent")->limit / 100.0);
	return rise;
}
