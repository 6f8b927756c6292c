/* SPDX-License-Identifier: MIT */
/* The governing rail as a beam with its loads, for whoever recomputes it. Places along the eave
   from the left rake edge, loads square to the roof. */
#include "check/rail_show.h"

#include <math.h>

#include "check/attachment.h"
#include "check/check_steps.h"
#include "check/load_case.h"
#include "resist/aluminium.h"

/* in: q l */
static double line_load(const double *in)
{
	return in[0] * in[1];
}

const struct step step_rail_line_load = {
	.name = "rail-line-load",
	.symbol = "w",
	.unit = UNIT_PLF,
	.title = "line load on a rail from its worst foot's load per area, either way",
	.formula = "q l",
	.clause = {"statics"},
	.confidence = DERIVED,
	.note = "q: the force above on 1 ft2",
	.in = {{"q", UNIT_PSF, "load per area of array, normal to the roof"},
	       {"l", UNIT_FT, "length of collector, up the slope, that the rail carries"}},
	.value = line_load,
};

/* One square foot, so that a force in lb is a load in psf. */
#define ONE_FT2 (M_PER_FT * M_PER_FT)

struct case_shown {
	const char *snow, *sideways;
	bool up; /* it lifts the rail */
};

static bool same(double a, double b)
{
	return fabs(a - b) <= 1e-12 * fabs(b);
}

/* Finds the foot, snow and direction that make `q`, among the combinations of this name. */
static bool explain_quake(const struct context *c, const struct attachment *a, int count, double q,
			  const char *text, struct case_shown *out, struct trace *trace)
{
	double normal, slope;

	for (int k = 0; k < c->quake.combinations + c->quake.asds && c->quake.known; k++) {
		const struct load_combination *x =
			k < c->quake.combinations ? &c->quake.combination[k]
						  : &c->quake.asd[k - c->quake.combinations];

		for (int i = 0; i < count && x->text == text; i++)
			for (int way = -1; way <= 1; way += 2)
				for (int s = x->S > 0 ? 0 : -1; s < (x->S > 0 ? c->snow.cases : 0);
				     s++) {
					const double lies =
						s < 0 ? 0 : array_snow(c, s, a[i].tributary.y1);

					if (!array_load_quake(c, x, way, lies, 1, NULL, &normal,
							      &slope) ||
					    !same(fabs(normal + slope * a[i].tip), q))
						continue;
					array_load_quake(c, x, way, lies, ONE_FT2, trace, &normal,
							 &slope);
					out->snow = s < 0 ? NULL : c->snow.snow[s].name;
					out->sideways = way > 0 ? "earthquake toward the eave"
								: "earthquake toward the ridge";
					out->up = normal + slope * a[i].tip < 0;
					return true;
				}
	}
	return false;
}

static bool explain_case(const struct context *c, const struct attachment *a,
			 const struct load_combination *x, double q, struct case_shown *out,
			 struct trace *trace)
{
	double normal, slope;

	if (array_load_up(c, x, a->p_up, 1, NULL, &normal, &slope) && same(normal, q)) {
		array_load_up(c, x, a->p_up, ONE_FT2, trace, &normal, &slope);
		out->sideways = "wind away from the roof";
		out->up = true;
		return true;
	}
	for (int s = 0; s < c->snow.cases; s++) {
		const double lies = array_snow(c, s, a->tributary.y1);

		if (!array_load_down(c, x, a->p_down, lies, 1, NULL, &normal, &slope) ||
		    !same(normal, q))
			continue;
		array_load_down(c, x, a->p_down, lies, ONE_FT2, trace, &normal, &slope);
		out->snow = x->S > 0 ? c->snow.snow[s].name : NULL;
		out->sideways = x->W > 0 ? "wind toward the roof" : NULL;
		return true;
	}
	return false;
}

static void explain(const struct context *c, const struct attachment *a, int count, double q,
		    const char *text, struct case_shown *out, struct trace *trace)
{
	for (int i = 0; i < count; i++)
		for (int k = 0; k < c->combinations + c->asds; k++) {
			const struct load_combination *x = k < c->combinations
								   ? &c->combination[k]
								   : &c->asd[k - c->combinations];

			if (x->text == text && explain_case(c, &a[i], x, q, out, trace))
				return;
		}
	explain_quake(c, a, count, q, text, out, trace);
}

static double EI_of(const struct context *c)
{
	struct rail_alloy alloy;

	return rail_alloy_find(c->job->rail.alloy, &alloy) ? alloy.E * c->job->rail.inertia : 0;
}

/* The load of the check that governs; of bending where none of a beam does. */
static double choose(enum check_id governs, const struct rail_loads *w, const char **text)
{
	if (governs == CHECK_RAIL_DEFLECTION) {
		*text = w->service_text;
		return w->service;
	}
	if (governs == CHECK_RAIL_SPLICE) {
		*text = w->splice_text;
		return w->splice;
	}
	if (governs == CHECK_RAIL_BOTH_WAYS) {
		*text = w->both_text;
		return w->normal;
	}
	*text = w->moment_text;
	return w->moment;
}

void rail_show(struct context *c, const struct line *line, const struct attachment *a, int count,
	       const struct beam *unit, const struct rail_line *rail,
	       const struct rail_loads *loads, struct trace *trace)
{
	struct shown_beam *s = &c->r->rail_beam;
	const double depth = line->y_high - line->y_low;
	const char *text;
	const double w = choose(rail->governs, loads, &text);
	struct beam beam = *unit;
	struct case_shown k = {NULL, NULL, false};
	struct beam_forces f;
	struct beam_bow bow;

	if (s->known && rail->governs == CHECK_RAIL_MOMENT)
		return; /* an uneven load governs */
	explain(c, a, count, w / depth, text, &k, trace);
	STEP(trace, step_rail_line_load, w / depth, depth);
	const struct beam_uniform load = {line->x0, line->x1, k.up ? -w : w};

	beam.uniform = &load;
	if (!shown_beam_take(s, &beam))
		return;
	s->number = rail->line + 1;
	s->combination = text;
	s->snow = k.snow;
	s->sideways = k.sideways;
	s->across = rail->governs == CHECK_RAIL_BOTH_WAYS ? loads->along : 0;
	shown_beam_steps(s, trace);
	if (rail->governs != CHECK_RAIL_DEFLECTION)
		return;
	s->EI = EI_of(c);
	if (beam_solve(&beam, &f)) {
		beam_deflect(&beam, &f, s->EI, &bow);
		s->bow = bow.span;
	}
}
