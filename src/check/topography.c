/* SPDX-License-Identifier: MIT */
/* Kzt: as entered, or from the hill that the job describes, if ASCE/SEI 7 26.8.1 makes it count. A condition that nobody
   answered is taken as met, so that the hill counts. */
#include "check/wind_rule.h"

#include <math.h>

#include "load/asce7_wind.h"
#include "table/lookup_wind.h"

static const enum wind_hill_shape shape_of[] = { [TERRAIN_RIDGE] = HILL_RIDGE,
	                                         [TERRAIN_ESCARPMENT] = HILL_ESCARPMENT,
	                                         [TERRAIN_HILL] = HILL_AXISYMMETRIC };
static const char letter[] = { 'B', 'C', 'D' };

/* Least height that counts: 60 ft in exposure B, 15 ft in C and D (26.8.1 item 5, from memory). */
static double least_height(enum exposure e)
{
	return (e == EXPOSURE_B ? 60 : 15) * M_PER_FT;
}

const char *hill_dismissed(const struct job *job)
{
	const struct job_hill *hill = &job->hill;

	if (hill->isolated == ANSWER_NO)
		return "ground as high stands upwind within 100 times its height or 2 miles.";
	if (hill->prominent == ANSWER_NO)
		return "it is less than twice as high as what stands upwind within 2 miles.";
	if (hill->upper_half == ANSWER_NO)
		return "the house stands on its lower half.";
	if (!at_least(hill->H, 0.2 * hill->Lh))
		return "H/Lh is below 0.2.";
	if (!at_least(hill->H, least_height(job->site.exposure)))
		return "it is lower than 15 ft (60 ft in exposure B).";
	return NULL;
}

static void unanswered(struct context *c)
{
	const struct job_hill *hill = &c->job->hill;
	const struct {
		enum yes_no answer;
		const char *field;
	} asked[] = { { hill->isolated, "isolated" },
		      { hill->prominent, "prominent" },
		      { hill->upper_half, "upper-half" } };

	for (size_t i = 0; i < sizeof asked / sizeof *asked; i++)
		if (asked[i].answer == ANSWER_UNKNOWN)
			REMARK_T(c->r, HILL_UNANSWERED, (0), asked[i].field);
}

double check_Kzt(struct context *c)
{
	static const char *const name[] = { "", "ridge", "escarpment", "hill" };
	const struct job *job = c->job;
	const struct job_hill *hill = &job->hill;
	const char exposure = letter[job->site.exposure];

	if (job->site.topography != TOPOGRAPHY_DESCRIBED || hill->shape == TERRAIN_UNKNOWN)
		return job->site.Kzt;
	const char *why = hill_dismissed(job);

	if (why) {
		REMARK_T(c->r, HILL_OUT, (0), name[hill->shape], why);
		return 1;
	}
	unanswered(c);
	const struct wind_hill w = { shape_of[hill->shape], exposure, hill->H, hill->Lh,
		                     /* only an escarpment differs before and behind its crest */
		                     hill->shape == TERRAIN_ESCARPMENT ? hill->x : -fabs(hill->x),
		                     isfinite(hill->z) ? hill->z : job->building.mean_roof_height };
	const double Kzt = asce7_topographic_factor(c->code->edition, &w, &c->r->trace[SECTION_WIND]);
	const struct wind_topography_row *row = wind_topography_row(name[hill->shape], exposure);

	REMARK_T(c->r, HILL_COUNTS, (Kzt, hill->H / hill->Lh), name[hill->shape]);
	if (row && row->status == FROM_MEMORY)
		REMARK_T(c->r, HILL_FROM_MEMORY, (row->K1_over_HLh), name[hill->shape],
		         exposure == 'B' ? "B" : exposure == 'C' ? "C" : "D");
	return Kzt;
}
