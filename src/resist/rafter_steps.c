/* SPDX-License-Identifier: MIT */
/* The rafter's formulas one by one: line loads, and moment and deflection at a place as the sum of
   what each load does there. The sum is a second way to what rafter.c finds by walking along the
   beam, and each term can be recomputed alone. Simple beam, elastic beam theory. Lengths may be
   horizontal with vertical loads, or along the slope with loads across it. */
#include <math.h>

#include "resist/rafter.h"
#include "resist/resist_steps.h"

#define IN_PER_FT 12.0

static double line_load_plan(const double *in)
{
	return in[0] * in[1];
}

const struct step step_rafter_line_load_plan = {
	.name = "rafter-line-load-plan", .symbol = "w", .unit = UNIT_PLF,
	.title = "line load on one rafter from a load on plan",
	.formula = "p s",
	.clause = { "statics" },
	.confidence = DERIVED,
	.note = "per horizontal foot: snow and live load",
	.in = { { "p", UNIT_PSF, "load on plan" }, { "s", UNIT_FT, "rafter spacing" } },
	.value = line_load_plan
};

double rafter_line_load_plan(struct trace *trace, double pressure, double spacing)
{
	return STEP(trace, step_rafter_line_load_plan, pressure, spacing);
}

static double line_load_slope(const double *in)
{
	return in[0] * in[1] / cos(in[2] * RAD_PER_DEG);
}

const struct step step_rafter_line_load_slope = {
	.name = "rafter-line-load-slope", .symbol = "w", .unit = UNIT_PLF,
	.title = "line load on one rafter from a weight per area of roof",
	.formula = "p s / cos theta",
	.clause = { "statics" },
	.confidence = DERIVED,
	.note = "per horizontal foot: dead load",
	.in = { { "p", UNIT_PSF, "weight per area of roof" },
	        { "s", UNIT_FT, "rafter spacing" },
	        { "theta", UNIT_DEG, "slope" } },
	.value = line_load_slope
};

double rafter_line_load_slope(struct trace *trace, double pressure, double spacing, double theta)
{
	return STEP(trace, step_rafter_line_load_slope, pressure, spacing, theta);
}

static double normal_line_load(const double *in)
{
	const double c = cos(in[1] * RAD_PER_DEG);

	return in[0] * c * c;
}

const struct step step_rafter_normal_line_load = {
	.name = "rafter-normal-line-load",
	.symbol = "w_n",
	.unit = UNIT_PLF,
	.title = "vertical line load as a load across the rafter, per slope foot",
	.formula = "w cos^2 theta",
	.clause = { "statics" },
	.confidence = DERIVED,
	.in = { { "w", UNIT_PLF, "vertical, per horizontal foot" },
	        { "theta", UNIT_DEG, "slope" } },
	.value = normal_line_load
};

static double normal_point(const double *in)
{
	return in[0] * cos(in[1] * RAD_PER_DEG);
}

const struct step step_rafter_normal_point = {
	.name = "rafter-normal-point", .symbol = "P_n", .unit = UNIT_LB,
	.title = "part of a vertical force across the rafter",
	.formula = "P cos theta",
	.clause = { "statics" },
	.confidence = DERIVED,
	.in = { { "P", UNIT_LB, "vertical force" }, { "theta", UNIT_DEG, "slope" } },
	.value = normal_point
};

static double slope_length(const double *in)
{
	return in[0] / cos(in[1] * RAD_PER_DEG);
}

const struct step step_rafter_slope_length = {
	.name = "rafter-slope-length", .symbol = "L_s", .unit = UNIT_FT,
	.title = "span along the slope",
	.formula = "L / cos theta",
	.clause = { "geometry" },
	.confidence = DERIVED,
	.in = { { "L", UNIT_FT, "horizontal span" }, { "theta", UNIT_DEG, "slope" } },
	.value = slope_length
};

static double moment_uniform(const double *in)
{
	const double w = in[0], L = in[3], x = in[4];
	const double x0 = fmax(in[1], 0.0), x1 = fmax(x0, fmin(in[2], L));
	const double F = w * (x1 - x0), middle = (x0 + x1) / 2.0;
	const double M = F * (L - middle) / L * x;

	if (x <= x0)
		return M;
	return x < x1 ? M - w * (x - x0) * (x - x0) / 2.0 : M - F * (x - middle);
}

const struct step step_rafter_moment_uniform = {
	.name = "rafter-moment-uniform", .symbol = "M_w", .unit = UNIT_LB_FT,
	.title = "moment at x from a uniform load on part of a simple span",
	.formula = "w (x1 - x0) (1 - (x0 + x1)/(2 L)) x, less the moment of the load left of x",
	.clause = { "statics" },
	.confidence = DERIVED,
	.note = "w L^2/8 at midspan when the load covers the span",
	.in = { { "w", UNIT_PLF, "line load" },
	        { "x0", UNIT_FT, "where it begins" },
	        { "x1", UNIT_FT, "where it ends" },
	        { "L", UNIT_FT, "span" },
	        { "x", UNIT_FT, "place" } },
	.value = moment_uniform
};

static double moment_point(const double *in)
{
	const double P = in[0], a = in[1], L = in[2], x = in[3];

	return x < a ? P * (L - a) / L * x : P * a / L * (L - x);
}

const struct step step_rafter_moment_point = {
	.name = "rafter-moment-point", .symbol = "M_P", .unit = UNIT_LB_FT,
	.title = "moment at x from a force on a simple span",
	.formula = "P (L - a) x / L for x < a, else P a (L - x) / L",
	.clause = { "statics" },
	.confidence = DERIVED,
	.in = { { "P", UNIT_LB, "force" },
	        { "a", UNIT_FT, "where it acts" },
	        { "L", UNIT_FT, "span" },
	        { "x", UNIT_FT, "place" } },
	.value = moment_point
};

/* Influence on the deflection at x, times E I: of a force at b from the right end, x on its left.
   in. */
static double influence(double P, double b, double L, double x)
{
	return P * b * x * (L * L - b * b - x * x) / (6.0 * L);
}

static double deflection_point(const double *in)
{
	const double P = in[0], a = in[1] * IN_PER_FT, L = in[2] * IN_PER_FT, x = in[3] * IN_PER_FT,
		     EI = in[4] * in[5];

	return (x <= a ? influence(P, L - a, L, x) : influence(P, a, L, L - x)) / EI;
}

const struct step step_rafter_deflection_point = {
	.name = "rafter-deflection-point", .symbol = "delta_P", .unit = UNIT_IN,
	.title = "deflection at x from a force on a simple span",
	.formula = "P b x (L^2 - b^2 - x^2) / (6 E I L), b = L - a, x < a; mirrored beyond",
	.clause = { "elastic beam theory" },
	.confidence = DERIVED,
	.in = { { "P", UNIT_LB, "force across the rafter" },
	        { "a", UNIT_FT, "where it acts, along the slope" },
	        { "L", UNIT_FT, "span along the slope" },
	        { "x", UNIT_FT, "place" },
	        { "E'", UNIT_PSI, "adjusted modulus" },
	        { "I", UNIT_IN4, "moment of inertia" } },
	.value = deflection_point
};

/* Integral of influence() for 1 per length from b0 to b1. */
static double influence_part(double b0, double b1, double L, double x)
{
	const double sum = b1 * b1 + b0 * b0;

	return x * (b1 - b0) * (b1 + b0) * ((L * L - x * x) / 2.0 - sum / 4.0) / (6.0 * L);
}

static double deflection_uniform(const double *in)
{
	const double w = in[0] / IN_PER_FT, L = in[3] * IN_PER_FT, x = in[4] * IN_PER_FT,
		     EI = in[5] * in[6];
	const double x0 = fmax(in[1] * IN_PER_FT, 0.0), x1 = fmax(x0, fmin(in[2] * IN_PER_FT, L));
	const double left = fmin(x1, fmax(x0, x)); /* parts the load at x */

	return w * (influence_part(L - x1, L - left, L, x) + influence_part(x0, left, L, L - x)) /
	       EI;
}

const struct step step_rafter_deflection_uniform = {
	.name = "rafter-deflection-uniform", .symbol = "delta_w", .unit = UNIT_IN,
	.title = "deflection at x from a uniform load on part of a simple span",
	.formula = "integral of w b x (L^2 - b^2 - x^2) / (6 E I L) over the load",
	.clause = { "elastic beam theory" },
	.confidence = DERIVED,
	.note = "5 w L^4/(384 E I) at midspan when the load covers the span",
	.in = { { "w", UNIT_PLF, "line load across the rafter, per slope foot" },
	        { "x0", UNIT_FT, "where it begins, along the slope" },
	        { "x1", UNIT_FT, "where it ends" },
	        { "L", UNIT_FT, "span along the slope" },
	        { "x", UNIT_FT, "place" },
	        { "E'", UNIT_PSI, "adjusted modulus" },
	        { "I", UNIT_IN4, "moment of inertia" } },
	.value = deflection_uniform
};

static double span_ratio(const double *in)
{
	return in[0] * IN_PER_FT / in[1];
}

const struct step step_rafter_ratio = {
	.name = "rafter-ratio",
	.symbol = "L/delta",
	.unit = UNIT_NONE,
	.title = "span over deflection",
	.formula = "L_s / delta",
	.clause = { "IRC Table R301.7 (from memory) limits it from below" },
	.confidence = FROM_MEMORY,
	.note = "rafters steeper than 3:12 without ceiling 180, flexible ceiling 240, plaster 360; "
	        "snow or live load only",
	.in = { { "L_s", UNIT_FT, "span along the slope" }, { "delta", UNIT_IN, "deflection" } },
	.value = span_ratio
};

/* Load i of the rafter as vertical on the level (wind apart, along the slope): both give moments of
   the same kind. */
double rafter_moment_at(struct trace *trace, const struct rafter *r, double x)
{
	const double c = cos(r->theta), L = r->span;
	double M = 0.0;

	for (size_t i = 0; i < r->uniforms; i++) {
		const struct rafter_uniform *u = &r->uniform[i];

		if (fabs(u->vertical) > 0.0)
			M += STEP(trace, step_rafter_moment_uniform, u->vertical, u->x0, u->x1, L,
			          x);
		if (fabs(u->normal) > 0.0)
			M += STEP(trace, step_rafter_moment_uniform, u->normal, u->x0 / c,
			          u->x1 / c, L / c, x / c);
	}
	for (size_t i = 0; i < r->points; i++) {
		const struct rafter_point *p = &r->point[i];

		if (p->x < 0.0 || p->x > L)
			continue;
		if (fabs(p->vertical) > 0.0)
			M += STEP(trace, step_rafter_moment_point, p->vertical, p->x, L, x);
		if (fabs(p->normal) > 0.0)
			M += STEP(trace, step_rafter_moment_point, p->normal, p->x / c, L / c,
			          x / c);
	}
	return M;
}

double rafter_deflection_at(struct trace *trace, const struct rafter *r, double E, double I,
                            double x)
{
	const double c = cos(r->theta), L = r->span / c;
	double delta = 0.0;

	for (size_t i = 0; i < r->uniforms; i++) {
		const struct rafter_uniform *u = &r->uniform[i];
		const double w = STEP(trace, step_rafter_normal_line_load, u->vertical, r->theta) +
		                 u->normal;

		delta += STEP(trace, step_rafter_deflection_uniform, w, u->x0 / c, u->x1 / c, L,
		              x / c, E, I);
	}
	for (size_t i = 0; i < r->points; i++) {
		const struct rafter_point *p = &r->point[i];

		if (p->x >= 0.0 && p->x <= r->span)
			delta += STEP(trace, step_rafter_deflection_point,
			              STEP(trace, step_rafter_normal_point, p->vertical, r->theta) +
			                      p->normal,
			              p->x / c, L, x / c, E, I);
	}
	return delta;
}
