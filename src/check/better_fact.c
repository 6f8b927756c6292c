/* SPDX-License-Identifier: MIT */
/* An assumed species or grade is the weakest one; the stamp on the wood may well say better. The
   job is rated again, feet where they are, with a common group and grade, so that a crew knows
   whether a look at the stamp is worth the ladder. */
#include "check/better_fact.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "check/context.h"
#include "check/pass.h"

static void same_feet(const struct pass *p, struct layout *out)
{
	memset(out, 0, sizeof *out);
	for (int i = 0; i < p->attachments; i++) {
		const struct attachment *a = &p->attachment[i];

		out->rafter[a->line][out->count[a->line]++] = a->rafter;
	}
}

void better_fact_find(const struct job *job, struct result *r, struct check_workspace *w)
{
	const char *species = "Spruce-Pine-Fir", *grade = "No.2";
	const struct pass *p = &r->pass[r->judged];
	const bool any_species = job->origin[FIELD_FRAMING_SPECIES] == ORIGIN_ASSUMED;
	const bool any_grade = job->origin[FIELD_FRAMING_GRADE] == ORIGIN_ASSUMED;
	struct layout layout;

	if ((!any_species && !any_grade) || r->passes == 0 || !p->complete ||
	    job->framing.kind != FRAMING_RAFTER)
		return;
	w->job = *job;
	if (any_species)
		snprintf(w->job.framing.species, sizeof w->job.framing.species, "%s", species);
	if (any_grade)
		snprintf(w->job.framing.grade, sizeof w->job.framing.grade, "%s", grade);
	same_feet(p, &layout);
	layout.block = r->block.kind;
	struct pass *again = &w->result.pass[1];

	again->complete = false;
	check_layout(&w->job, &w->result,
		     r->passes == 2 && r->judged == 0 ? CURVE_RECALLED : CURVE_SAFE_SIDE, &layout,
		     again);
	if (again->complete && again->ratio < p->ratio)
		REMARK_T(r, BETTER_FACT, (again->ratio, p->ratio),
			 any_species ? species : job->framing.species,
			 any_grade ? grade : job->framing.grade);
}
