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

double rail_splice_moment(const struct context *c, const struct line *line, const struct beam *beam,
			  const struct beam_forces *forces)
{
	const double stock = c->job->rail.stock_length;
	double worst = 0;

	if (!isfinite(stock) || stock <= 0)
		return 0;
	for (double at = line->x0 + stock; at < line->x1 && !at_least(at, line->x1); at += stock)
		worst = fmax(worst, fabs(beam_moment_at(beam, forces, at)));
	return worst;
}
