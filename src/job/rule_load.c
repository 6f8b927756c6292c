/* SPDX-License-Identifier: MIT */
/* Cross-field rules of snow and earthquake. */
#include "job/rule.h"

#include <math.h>

static void snow(const struct rule *r)
{
	const struct job_snow *s = &r->job->snow;

	if (s->lower_roof == ANSWER_YES && isnan(s->lower_roof_width) &&
	    r->source->line[FIELD_SNOW_LOWER_ROOF_WIDTH] == 0)
		rule_tell(r, PROBLEM_MISSING, FIELD_SNOW_LOWER_ROOF, "snow.lower-roof-width", NULL,
			  "the level width of the lower roof, such as 10 ft");
	if (HAVE(r, FIELD_SNOW_DRIFT_LOAD) != HAVE(r, FIELD_SNOW_DRIFT_WIDTH))
		rule_tell(r, PROBLEM_MISSING,
			  HAVE(r, FIELD_SNOW_DRIFT_LOAD) ? FIELD_SNOW_DRIFT_LOAD : FIELD_SNOW_DRIFT_WIDTH,
			  "snow.drift-load, snow.drift-width", NULL, "both, or neither");
	else if (HAVE(r, FIELD_SNOW_DRIFT_LOAD) && s->drift_source[0] == '\0')
		rule_tell(r, PROBLEM_MISSING, FIELD_SNOW_DRIFT_LOAD, "snow.drift-source", NULL,
			  "edition, clause and page that the drift was worked out by");
	if (HAVE(r, FIELD_SNOW_CT) && s->Ct_source[0] == '\0')
		rule_tell(r, PROBLEM_MISSING, FIELD_SNOW_CT, "snow.Ct-source", NULL,
		          "edition, table and page that Ct was read from");
	if (HAVE(r, FIELD_SNOW_LOCAL_FACTOR) && s->local_rule[0] == '\0')
		rule_tell(r, PROBLEM_MISSING, FIELD_SNOW_LOCAL_FACTOR, "snow.local-rule", NULL,
			  "the name of the rule that the factor comes from");
}

static void earthquake(const struct rule *r)
{
	if (HAVE(r, FIELD_EARTHQUAKE_SDS) &&
	    (HAVE(r, FIELD_EARTHQUAKE_SS) || HAVE(r, FIELD_EARTHQUAKE_FA)))
		rule_tell(r, PROBLEM_DISAGREE, FIELD_EARTHQUAKE_SDS,
			  "earthquake.SDS, earthquake.Ss, earthquake.Fa", "both",
			  "SDS alone, or Ss and Fa");
	else if (HAVE(r, FIELD_EARTHQUAKE_SS) && HAVE(r, FIELD_SITE_CODE) &&
		 r->job->site.code == ASCE7_22)
		rule_tell(r, PROBLEM_DISAGREE, FIELD_EARTHQUAKE_SS, "earthquake.Ss, site.code",
			  "Ss with asce7-22", "earthquake.SDS of the 7-22 maps, which have no Fa");
	else if (HAVE(r, FIELD_EARTHQUAKE_SS) != HAVE(r, FIELD_EARTHQUAKE_FA))
		rule_tell(r, PROBLEM_MISSING,
			  HAVE(r, FIELD_EARTHQUAKE_SS) ? FIELD_EARTHQUAKE_SS : FIELD_EARTHQUAKE_FA,
			  "earthquake.Ss, earthquake.Fa", NULL, "both, or SDS in their place");
}

void rules_of_loads(const struct rule *r)
{
	snow(r);
	earthquake(r);
}
