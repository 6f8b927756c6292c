/* SPDX-License-Identifier: MIT */
/* For the calculation sheet: how the line load on the governing rafter comes about where no collector lies over it, from
   the effective wind area to pounds per foot. The same numbers as the case itself: what is traced is asked again, not
   worked out another way. Drift, slid snow and earthquake are told in sections of their own. */
#include <math.h>

#include "check/attachment.h"
#include "check/check_steps.h"
#include "check/rafter_load.h"

/* in: L b */
static double wind_area(const double *in)
{
	return in[0] * fmax(in[1], in[0] / 3);
}

const struct step step_rafter_wind_area = {
	.name = "rafter-wind-area", .symbol = "A", .unit = UNIT_FT2,
	.title = "effective wind area of a rafter: its span by its width, a third of the span at the least",
	.formula = "L max(b, L/3)",
	.clause = { [ASCE7_10] = "ASCE/SEI 7-10 26.2", [ASCE7_16] = "ASCE/SEI 7-16 26.2", [ASCE7_22] = "ASCE/SEI 7-22 26.2" },
	.confidence = FROM_MEMORY,
	.in = { { "L", UNIT_FT, "span along the slope" }, { "b", UNIT_FT, "roof that the rafter carries, half way to its neighbours" } },
	.value = wind_area,
};

/* in: fD D theta fS S fL Lr fW p b */
static double line_load(const double *in)
{
	const double c = cos(in[2] * RAD_PER_DEG);

	return (in[0] * in[1] * c + (in[3] * in[4] + in[5] * in[6]) * c * c + in[7] * in[8]) * in[9];
}

const struct step step_rafter_line_load = {
	.name = "rafter-line-load", .symbol = "w", .unit = UNIT_PLF,
	.title = "line load on the rafter where no collector lies over it",
	.formula = "(fD D cos theta + (fS S + fL Lr) cos^2 theta + fW p) b",
	.clause = { [ASCE7_10] = "ASCE/SEI 7-10 2.3.2, 2.4.1, statics", [ASCE7_16] = "ASCE/SEI 7-16 2.3.1, 2.4.1, statics",
	            [ASCE7_22] = "ASCE/SEI 7-22 2.3.1, 2.4.1, statics" },
	.confidence = DERIVED,
	.note = "square to the rafter, down positive; under collectors only the roof's own weight is left, the rest comes by the feet",
	.in = { { "fD", UNIT_NONE, "factor of dead load" },
	        { "D", UNIT_PSF, "dead load of the roof per area of slope" },
	        { "theta", UNIT_DEG, "roof angle" },
	        { "fS", UNIT_NONE, "factor of snow" },
	        { "S", UNIT_PSF, "snow on the roof per area of plan" },
	        { "fL", UNIT_NONE, "factor of roof live load" },
	        { "Lr", UNIT_PSF, "roof live load per area of plan" },
	        { "fW", UNIT_NONE, "factor of wind" },
	        { "p", UNIT_PSF, "wind on the roof, strength level, down positive" },
	        { "b", UNIT_FT, "roof that the rafter carries, half way to its neighbours" } },
	.value = line_load,
};

void rafter_tell_load(struct context *c, const struct rafter_place *p, const struct rafter_case *k, struct trace *trace)
{
	const struct load_combination *f = k->k;

	if (!trace || k->quake != 0)
		return;
	const double wind = f->W > 0 ? rafter_wind_tell(c, p, k->array ? rafter_covered(c, p) : 0, k->lift, trace) : 0;

	STEP(trace, step_rafter_line_load, f->D, c->job->roof.dead_load, c->theta, (1 - k->snow_off) * f->S, k->roof_snow,
	     f->Lr, c->r->Lr, f->W, wind, p->width);
}
