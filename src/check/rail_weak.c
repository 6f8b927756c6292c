/* SPDX-License-Identifier: MIT */
/* The rail bent down the slope and across it at once: stresses about both axes added, each force of
   one combination with the other. ASD, whatever the method of the job. The collectors' frames,
   clamped on top, would help; nothing is counted on them. */
#include "check/rail.h"

#include <math.h>

#include "check/attachment.h"
#include "resist/aluminium.h"

static void hold(double strong, double weak, const char *combination, double *ratio,
		 const char **worst)
{
	if (strong + weak > *ratio) {
		*ratio = strong + weak;
		*worst = combination;
	}
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
					hold(fabs(normal) * moment / M_x, slope * moment / M_y,
					     x->text, ratio, combination);
		}
	return true;
}
