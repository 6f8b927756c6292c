/* SPDX-License-Identifier: MIT */
/* A rail line as a continuous beam on its feet: reactions, moment, deflection, cantilever. The load along it is uniform, from
   the worst pressure of any of its attachments, normal to the roof; bending about the other axis by the down-slope load
   is not rated. */
#include "check/rail.h"

#include <math.h>

#include "check/attachment.h"
#include "check/check_steps.h"
#include "check/load_case.h"
#include "check/rail_pattern.h"
#include "check/rail_show.h"
#include "resist/aluminium.h"
#include "resist/beam.h"
#include "resist/lrfd.h"

/* in: R w */
static double share(const double *in)
{
	return in[0] / in[1];
}

const struct step step_line_share = {
	.name = "rail-reaction-width", .symbol = "b", .unit = UNIT_FT,
	.title = "width of load that a foot takes from a continuous rail",
	.formula = "R / w", .clause = { "elastic beam theory, three-moment equation" }, .confidence = DERIVED,
	.in = { { "R", UNIT_LB, "support reaction under the line load" },
	        { "w", UNIT_PLF, "line load on the rail" } },
	.value = share,
};

static bool solve(const struct line *line, const struct attachment *a, int count, struct beam *beam, double *support,
                  struct beam_uniform *load, struct beam_forces *forces)
{
	for (int i = 0; i < count; i++)
		support[i] = fmin(fmax(a[i].x, line->x0), line->x1); /* a rafter on the very edge, to the last bit */
	*load = (struct beam_uniform){ line->x0, line->x1, 1 };
	*beam = (struct beam){ .start = line->x0, .end = line->x1, .supports = (size_t)count, .support = support,
		               .uniforms = 1, .uniform = load };
	return count >= 2 && count <= BEAM_SUPPORT_MAX && beam_solve(beam, forces);
}

bool rail_reactions(const struct line *line, struct attachment *a, int count)
{
	double support[BEAM_SUPPORT_MAX];
	struct beam beam;
	struct beam_uniform load;
	struct beam_forces forces;

	if (!solve(line, a, count, &beam, support, &load, &forces))
		return false;
	for (int i = 0; i < count; i++)
		a[i].reaction_width = forces.reaction[i];
	return true;
}

int rail_joints_of(const struct context *c, const struct line *line, const struct attachment *a, int count,
                   double at[SPLICE_MAX])
{
	double support[BEAM_SUPPORT_MAX];
	struct beam beam;
	struct beam_uniform load;
	struct beam_forces forces;

	return solve(line, a, count, &beam, support, &load, &forces) ? rail_joints(c, line, &beam, &forces, at) : 0;
}

double rail_capacity(const struct context *c, struct trace *trace)
{
	const struct job_rail *rail = &c->job->rail;
	struct rail_alloy alloy;

	if (isfinite(rail->allowable_moment))
		return rail->allowable_moment;
	if (!isfinite(rail->section_modulus) || !rail_alloy_find(rail->alloy, &alloy))
		return NAN;
	if (c->lrfd)
		return rail_allowable_moment(trace, rail->section_modulus, rail_design_stress(trace, &alloy));
	return rail_allowable_moment(trace, rail->section_modulus, rail_allowable_stress(trace, &alloy));
}

/* A tested moment is an allowable and goes with the combinations of ASD, a computed one with those of the method. */
static const struct load_combination *combinations(const struct context *c, bool allowable, int *count)
{
	*count = allowable ? c->asds : c->combinations;
	return allowable ? c->asd : c->combination;
}

/* The same in an earthquake, toward the eave and toward the ridge; along the eave it only pulls the rail. */
static double quake_load(const struct context *c, const struct attachment *a, bool allowable, const char **combination)
{
	const struct load_combination *list = allowable ? c->quake.asd : c->quake.combination;
	const int n = allowable ? c->quake.asds : c->quake.combinations;
	double worst = 0, normal, slope;

	for (int k = 0; k < n && c->quake.known; k++)
		for (int way = -1; way <= 1; way += 2)
			for (int s = list[k].S > 0 ? c->snow.cases - 1 : -1; s >= (list[k].S > 0 ? 0 : -1); s--)
				if (array_load_quake(c, &list[k], way, s < 0 ? 0 : array_snow(c, s, a->tributary.y1), 1, NULL,
				                     &normal, &slope) &&
				    fabs(normal + slope * a->tip) > worst) {
					worst = fabs(normal + slope * a->tip);
					*combination = list[k].text;
				}
	return worst;
}

/* Per area a foot loads the rail as the one before it does: nothing new. */
static bool loads_alike(const struct attachment *a, int i)
{
	return i > 0 && same_value(a[i].p_up, a[i - 1].p_up) && same_value(a[i].p_down, a[i - 1].p_down) &&
	       same_value(a[i].tributary.y1, a[i - 1].tributary.y1);
}

double rail_load(const struct context *c, const struct attachment *a, int count, bool allowable, const char **combination)
{
	double worst = 0, normal, slope;
	int ks;
	const struct load_combination *list = combinations(c, allowable, &ks);

	for (int i = 0; i < count; i++)
		for (int k = 0; k < ks && !loads_alike(a, i); k++) {
			const struct load_combination *x = &list[k];

			if (array_load_up(c, x, a[i].p_up, 1, NULL, &normal, &slope) && normal > worst) {
				worst = normal;
				*combination = x->text;
			}
			for (int s = 0; s < c->snow.cases; s++)
				if (array_load_down(c, x, a[i].p_down, array_snow(c, s, a[i].tributary.y1), 1, NULL,
				                    &normal, &slope) &&
				    normal > worst) {
					worst = normal;
					*combination = x->text;
				}
		}
	for (int i = 0; i < count; i++) {
		const char *text = "";
		const double quake = quake_load(c, &a[i], allowable, &text);

		if (quake > worst) {
			worst = quake;
			*combination = text;
		}
	}
	return worst;
}

static void set(struct rail_line *rail, enum check_id id, double demand, double capacity, const char *combination)
{
	rail->check[id] = (struct check_value){ true, demand, capacity, demand / capacity, combination, 1 };
	if (rail->check[id].ratio > rail->ratio) {
		rail->ratio = rail->check[id].ratio;
		rail->governs = id;
	}
}

static double stiffness(const struct context *c)
{
	struct rail_alloy alloy;

	return rail_alloy_find(c->job->rail.alloy, &alloy) ? alloy.E * c->job->rail.inertia : (double)NAN;
}

static void spans(const struct line *line, const struct attachment *a, int count, struct rail_line *rail)
{
	rail->longest_cantilever = fmax(a[0].x - line->x0, line->x1 - a[count - 1].x);
	for (int i = 1; i < count; i++)
		rail->longest_span = fmax(rail->longest_span, a[i].x - a[i - 1].x);
}

static void cantilevers(struct rail_line *rail)
{
	const double limit = rail->cantilever_limit;

	/* at_most: an end laid out to the limit must not fail by the last bit */
	if (rail->longest_cantilever > 0 && isfinite(limit))
		set(rail, CHECK_RAIL_CANTILEVER,
		    at_most(rail->longest_cantilever, limit) ? fmin(rail->longest_cantilever, limit)
		                                             : rail->longest_cantilever,
		    limit, "geometry");
}

void rail_run(struct context *c, const struct line *line, const struct attachment *a, int count, struct rail_line *rail,
              struct trace *trace)
{
	double support[BEAM_SUPPORT_MAX];
	struct beam beam;
	struct beam_uniform load;
	struct beam_forces forces;
	struct beam_bow bow;
	const char *combination = "";

	if (!solve(line, a, count, &beam, support, &load, &forces))
		return;
	spans(line, a, count, rail);
	cantilevers(rail);
	if (c->job->rail.kind != SUPPORT_RAILS)
		return;
	const double depth = line->y_high - line->y_low;
	const double w = rail_load(c, a, count, isfinite(c->job->rail.allowable_moment), &combination) * depth;
	struct rail_loads loads = { .moment = w, .moment_text = combination };
	const double capacity = rail_capacity(c, trace), EI = stiffness(c);

	if (isfinite(capacity))
		set(rail, CHECK_RAIL_MOMENT, fabs(beam_worst_moment(&forces).value) * w, capacity, combination);
	if (isfinite(EI) && isfinite(c->job->rail.deflection_limit)) {
		const char *service = "";
		const double w_service = rail_load(c, a, count, true, &service) * depth;

		loads.service = w_service;
		loads.service_text = service;
		beam_deflect(&beam, &forces, EI, &bow);
		set(rail, CHECK_RAIL_DEFLECTION, fabs(bow.span.value) * w_service,
		    bow.span_length / c->job->rail.deflection_limit, service);
	}
	struct rail_bent both;

	if (rail_both_ways(c, a, count, fabs(beam_worst_moment(&forces).value) * depth, &both)) {
		set(rail, CHECK_RAIL_BOTH_WAYS, both.ratio, 1, both.combination);
		loads.normal = both.normal * depth;
		loads.along = both.along * depth;
		loads.both_text = both.combination;
	}
	const double joint_capacity = c->job->rail.splice_moment;
	const double joint = joint_capacity > 0 ? rail_splice_moment(c, line, &beam, &forces) : 0;

	if (joint > 0) {
		const double w_tested = rail_load(c, a, count, true, &combination) * depth;

		set(rail, CHECK_RAIL_SPLICE, joint * w_tested, joint_capacity, combination);
		loads.splice = w_tested;
		loads.splice_text = combination;
	}
	rail_patterns(c, line, a, count, capacity, rail, trace ? &c->r->rail_beam : NULL);
	if (trace)
		rail_show(c, line, a, count, &beam, rail, &loads, trace);
	for (int i = 0; i < count && trace; i++)
		STEP(trace, step_line_share, forces.reaction[i] * w, w);
}
