/* SPDX-License-Identifier: MIT */
/* Joints of the rail; and the rail bent down the slope and across it at once: stresses about both
   axes added, each force of one combination with the other. ASD, whatever the method of the job.
   The collectors' frames, clamped on top, would help; nothing is counted on them. */
#include "check/rail.h"

#include <math.h>

#include "check/attachment.h"
#include "check/load_case.h"
#include "resist/aluminium.h"

static void hold(double strong, double weak, const char *combination, double *ratio,
		 const char **worst)
{
	if (strong + weak > *ratio) {
		*ratio = strong + weak;
		*worst = combination;
	}
}

/* Push of snow held above the array on its topmost rail, per area like the other loads. */
static double held(const struct context *c, const struct attachment *a, int snow, double factor)
{
	const double width = fmax(a->reaction_width, a->tributary_width);

	return held_force(c, a, snow, factor, NULL) / (width * a->tributary_depth);
}

/* In an earthquake; snow as the combination has it. */
static void quake(const struct context *c, const struct attachment *a, double moment, double M_x, double M_y,
		  double *ratio, const char **combination)
{
	double normal, slope;

	for (int k = 0; k < c->quake.asds && c->quake.known; k++)
		for (int way = -1; way <= 1; way += 2)
			for (int s = 0; s < (c->quake.asd[k].S > 0 ? c->snow.cases : 1); s++)
				if (array_load_quake(c, &c->quake.asd[k], way,
						     c->quake.asd[k].S > 0 ? array_snow(c, s, a->tributary.y1) : 0,
						     1, NULL, &normal, &slope))
					hold(fabs(normal + slope * a->tip) * moment / M_x,
					     fabs(slope) * moment / M_y, c->quake.asd[k].text, ratio,
					     combination);
}

bool rail_both_ways(const struct context *c, const struct attachment *a, int count, double moment,
		    double *ratio, const char **combination)
{
	const struct job_rail *rail = &c->job->rail;
	struct rail_alloy alloy;
	double normal, slope;

	if (!isfinite(rail->weak_section_modulus) || rail->weak_section_modulus <= 0 ||
	    !rail_alloy_find(rail->alloy, &alloy))
		return false;
	const double F = rail_allowable_stress(NULL, &alloy);
	const double M_x = isfinite(rail->allowable_moment) ? rail->allowable_moment
							    : rail->section_modulus * F;
	const double M_y = rail->weak_section_modulus * F;

	if (!(M_x > 0)) /* NAN too */
		return false;
	*ratio = 0;
	*combination = "";
	for (int i = 0; i < count; i++)
		quake(c, &a[i], moment, M_x, M_y, ratio, combination);
	for (int i = 0; i < count; i++)
		for (int k = 0; k < c->asds; k++) {
			const struct load_combination *x = &c->asd[k];

			if (array_load_up(c, x, a[i].p_up, 1, NULL, &normal, &slope))
				hold(fmax(0, normal) * moment / M_x, slope * moment / M_y, x->text,
				     ratio, combination);
			for (int s = 0; s < c->snow.cases; s++)
				if (array_load_down(c, x, a[i].p_down,
						    array_snow(c, s, a[i].tributary.y1), 1, NULL,
						    &normal, &slope))
					hold(fabs(normal) * moment / M_x,
					     (slope + held(c, &a[i], s, x->S)) * moment / M_y,
					     x->text, ratio, combination);
		}
	return true;
}

struct bent {
	const struct beam *beam;
	const struct beam_forces *forces;
};

static double moment_at(const void *context, double x)
{
	const struct bent *b = context;

	return beam_moment_at(b->beam, b->forces, x);
}

static struct splice_rail spliced(const struct context *c, const struct line *line,
				  const double *foot, int feet)
{
	const double reach = c->job->rail.splice_reach;

	return (struct splice_rail){.x0 = line->x0,
				    .x1 = line->x1,
				    .stock = c->job->rail.stock_length,
				    .reach = isfinite(reach) ? reach : 0.5,
				    .feet = feet,
				    .foot = foot};
}

bool rail_comes_in_lengths(const struct context *c)
{
	return c->job->rail.kind == SUPPORT_RAILS && isfinite(c->job->rail.stock_length) &&
	       c->job->rail.stock_length > 0;
}

bool rail_cannot_be_laid(const struct context *c, const struct line *line, const double *x, int count)
{
	const struct splice_rail rail = spliced(c, line, x, count);
	double at[SPLICE_MAX];

	return rail_comes_in_lengths(c) && count >= 2 && splice_lay(&rail, at) < 0;
}

int rail_joints(const struct context *c, const struct line *line, const struct beam *beam,
		const struct beam_forces *forces, double at[SPLICE_MAX])
{
	const struct bent bent = {beam, forces};
	const struct splice_rail rail = spliced(c, line, beam->support, (int)beam->supports);
	const int n = rail_comes_in_lengths(c) ? splice_lay_easy(&rail, moment_at, &bent, at) : 0;

	return n > 0 ? n : 0;
}

double rail_splice_moment(const struct context *c, const struct line *line, const struct beam *beam,
			  const struct beam_forces *forces)
{
	double at[SPLICE_MAX], worst = 0;
	const int n = rail_joints(c, line, beam, forces, at);

	for (int i = 0; i < n; i++)
		worst = fmax(worst, fabs(beam_moment_at(beam, forces, at[i])));
	return worst;
}
