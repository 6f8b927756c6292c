/* SPDX-License-Identifier: MIT */
/* By influence: the part that each span's load has in a reaction. Dead load and wind lie on all of
   the rail; of balanced snow half may be gone (ASCE/SEI 7 7.5), from those spans that press the
   foot down. A worker stands at either end or in the middle of a span. */
#include "check/levered.h"

#include <math.h>

#include "check/attachment.h"
#include "check/load_case.h"
#include "check/rail_pattern.h"
#include "resist/beam.h"

struct rail_beam {
	struct beam beam;
	double support[BEAM_SUPPORT_MAX];
	struct beam_uniform load;
	struct beam_point point;
};

static bool lay(struct rail_beam *b, const struct line *line, const struct attachment *a, int count)
{
	if (count < 2 || count > BEAM_SUPPORT_MAX)
		return false;
	for (int i = 0; i < count; i++)
		b->support[i] = fmin(fmax(a[i].x, line->x0), line->x1);
	b->beam = (struct beam){.start = line->x0,
				.end = line->x1,
				.supports = (size_t)count,
				.support = b->support,
				.uniform = &b->load,
				.point = &b->point};
	return true;
}

/* Reactions less half of what each of the spans, ends included, presses on a foot. */
static void snow(struct rail_beam *b, struct attachment *a, int count)
{
	struct beam_forces f;

	b->beam.uniforms = 1;
	b->beam.points = 0;
	for (int i = 0; i < count; i++)
		a[i].lift_width = 0;
	for (int k = 0; k <= count; k++) {
		b->load = (struct beam_uniform){k > 0 ? b->support[k - 1] : b->beam.start,
						k < count ? b->support[k] : b->beam.end, 1};
		if (!(b->load.x1 > b->load.x0) || !beam_solve(&b->beam, &f))
			continue;
		for (int i = 0; i < count; i++)
			a[i].lift_width += fmin(f.reaction[i], f.reaction[i] / 2);
	}
}

static void worker(struct rail_beam *b, struct attachment *a, int count)
{
	struct beam_forces f;

	b->beam.uniforms = 0;
	b->beam.points = 1;
	for (int k = 0; k <= count; k++) {
		const double x = k == 0       ? b->beam.start
				 : k == count ? b->beam.end
					      : (b->support[k - 1] + b->support[k]) / 2;

		b->point = (struct beam_point){x, 1};
		if (!beam_solve(&b->beam, &f))
			continue;
		for (int i = 0; i < count; i++) {
			a[i].worker_down = fmax(a[i].worker_down, f.reaction[i]);
			a[i].worker_up = fmax(a[i].worker_up, -f.reaction[i]);
		}
	}
}

void levered_prepare(const struct context *c, const struct line *line, struct attachment *a,
		     int count)
{
	struct rail_beam b;
	bool snows = false;

	for (int i = 0; i < count; i++) {
		a[i].lift_width = a[i].reaction_width;
		a[i].worker_down = 1; /* he may stand right over the foot */
		a[i].worker_up = 0;
	}
	for (int i = 0; i < c->snow.cases; i++)
		snows = snows || c->snow.snow[i].array > 0;
	if (c->job->rail.kind != SUPPORT_RAILS || !lay(&b, line, a, count))
		return;
	if (snows)
		snow(&b, a, count);
	if (rail_worker(c) > 0)
		worker(&b, a, count);
}

bool levered_force(const struct context *c, const struct attachment *a,
		   const struct load_combination *k, int case_of_snow, struct trace *trace,
		   struct force *f)
{
	const double P = k->Lr * rail_worker(c) * a->worker_up;
	struct load_combination even = *k, white = {.text = k->text, .S = k->S, .CD = k->CD};
	double normal, slope;

	if (!(a->reaction_width < 0 || (case_of_snow >= 0 && a->lift_width < 0) || P > 0))
		return false;
	even.S = even.Lr = 0;
	if (!array_load_down(c, &even, a->p_down, 0, a->reaction_width * a->tributary_depth, trace,
			     &normal, &slope))
		return false;
	f->normal = normal - P * c->cos_theta;
	f->slope = slope - P * c->sin_theta;
	if (case_of_snow >= 0 &&
	    array_load_down(c, &white, 0, array_snow(c, case_of_snow, a->tributary.y1),
			    (case_of_snow == 0 ? a->lift_width : a->reaction_width) *
				    a->tributary_depth,
			    trace, &normal, &slope)) {
		f->normal += normal;
		f->slope += slope;
	}
	f->normal += f->slope * a->tip;
	return f->normal < 0;
}
