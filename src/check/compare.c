/* SPDX-License-Identifier: MIT */
/* Runs the check once for each edition. A ground snow of the wrong level is not put in: the wind of
   that edition is then computed on the bare roof and no verdict, ratio or spacing is given for it.
 */
#include "check/compare.h"

#include <math.h>

#include "load/loading_code.h"

bool compare_snow_fits(const struct job *job, enum edition edition)
{
	const struct loading_code *code = loading_code_of(edition);
	const enum ground_snow level = job->site.ground_snow_level == SNOW_STRENGTH
					       ? GROUND_SNOW_STRENGTH
					       : GROUND_SNOW_SERVICE;

	return !(job->site.ground_snow > 0) || (code && code->ground_snow == level);
}

static void wind(const struct pass *p, struct compared *v)
{
	v->p_up = v->p_down = v->GCp_up = (double)NAN;
	for (int i = 0; i < p->attachments; i++) {
		const struct attachment *a = &p->attachment[i];

		v->p_down = fmax(v->p_down, a->p_down); /* fmax passes over a NAN */
		if (isfinite(v->p_up) && a->p_up <= v->p_up)
			continue;
		v->p_up = a->p_up;
		v->GCp_up = a->GCp_up;
		v->zone = zone_text(a->zone);
		v->confidence = a->confidence;
	}
}

static void snow(const struct snow_result *s, struct compared *v)
{
	v->pf = s->pf;
	v->snow = 0;
	for (int i = 0; i < s->cases; i++)
		if (s->snow[i].array + s->snow[i].surcharge > v->snow) {
			v->snow = s->snow[i].array + s->snow[i].surcharge;
			v->snow_case = s->snow[i].name;
		}
}

static const char *combination(const struct pass *p)
{
	const enum link l = check_link(p->governs);
	const int at = p->link_at[l];

	switch (l) {
	case LINK_COLLECTOR:
		return p->collector[p->governs].combination;
	case LINK_RAIL:
		return at > 0 ? p->line[at - 1].check[p->governs].combination : "";
	case LINK_FOOT:
	case LINK_FASTENER:
		return at > 0 ? p->attachment[at - 1].check[p->governs].combination : "";
	case LINK_RAFTER:
		for (int i = 0; i < p->rafters; i++)
			if (p->rafter[i].rafter + 1 == at)
				return p->rafter[i].after[p->governs].combination;
		return "";
	case LINK_COUNT:
		break;
	}
	return "";
}

static void strength(const struct pass *p, struct compared *v)
{
	v->ratio = p->ratio > 0 ? p->ratio : (double)NAN;
	v->governs = p->ratio > 0 ? check_words(p->governs) : "";
	v->combination = p->ratio > 0 ? combination(p) : "";
	v->attachments = p->attachments;
	for (int z = 0; z < (int)ZONE_COUNT; z++)
		if (p->zone[z].present)
			v->spacing = fmin(v->spacing, p->zone[z].exact);
}

static void reasons(const struct result *r, struct compared *v)
{
	for (int i = 0; i < r->remarks && !v->reason; i++)
		if (remark_kind(r->remark[i].id) == REMARK_ENGINEER) {
			v->reason_remark = r->remark[i];
			v->reason = remark_template(r->remark[i].id);
		}
}

static void view(const struct result *r, struct compared *v)
{
	v->Kd = r->wind.Kd;
	v->qh = r->wind.qh;
	if (r->passes > 0)
		wind(&r->pass[r->judged], v);
	if (v->snow_mismatch)
		return;
	v->verdict = r->verdict;
	snow(&r->snow, v);
	if (r->passes > 0)
		strength(&r->pass[r->judged], v);
	reasons(r, v);
}

void compare_editions(const struct job *job, const enum edition edition[], int n,
		      struct check_workspace *w, struct compared out[])
{
	const double none = (double)NAN;

	for (int i = 0; i < n; i++) {
		const struct loading_code *code = loading_code_of(edition[i]);

		out[i] = (struct compared){.edition = edition[i],
					   .name = code ? code->name : "",
					   .snow_mismatch = !compare_snow_fits(job, edition[i]),
					   .p_up = none,
					   .p_down = none,
					   .GCp_up = none,
					   .zone = "",
					   .pf = none,
					   .snow = none,
					   .snow_case = "",
					   .ratio = none,
					   .governs = "",
					   .combination = "",
					   .spacing = none,
					   .verdict = NEEDS_ENGINEER};
		w->job = *job;
		w->job.site.code = edition[i];
		if (out[i].snow_mismatch)
			w->job.site.ground_snow = 0;
		check_run_plain(&w->job, &w->result);
		view(&w->result, &out[i]);
	}
}
