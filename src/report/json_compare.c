/* SPDX-License-Identifier: MIT */
#include <math.h>

#include "report/caution.h"
#include "report/compare_report.h"
#include "report/json_value.h"

static void put_edition(struct json *j, json_t *object, const struct compared *v)
{
	static const char *const verdicts[] = {"holds", "does not hold", "needs an engineer"};

	put_text(j, object, "edition", v->name);
	put_bool(j, object, "snow_level_mismatch", v->snow_mismatch);
	put_text(j, object, "verdict", v->snow_mismatch ? NULL : verdicts[v->verdict]);
	put_number(j, object, "ratio", v->ratio);
	put_text(j, object, "governs", v->governs);
	put_text(j, object, "combination", v->combination);
	put_int(j, object, "attachments", v->attachments);
	put_quantity(j, object, "spacing", v->spacing, UNIT_FT);
	put_quantity(j, object, "qh", v->qh, UNIT_PSF);
	put_number(j, object, "Kd", v->Kd);
	put_text(j, object, "Kd_in", v->edition == ASCE7_22 ? "pressure" : "velocity-pressure");
	put_text(j, object, "zone", v->zone);
	put_number(j, object, "GCp_up", v->GCp_up);
	put_text(j, object, "GCp_status",
		 isfinite(v->GCp_up) ? confidence_text(v->confidence) : NULL);
	put_quantity(j, object, "wind_up", v->p_up, UNIT_PSF);
	put_quantity(j, object, "wind_down", v->p_down, UNIT_PSF);
	put_quantity(j, object, "pf", v->pf, UNIT_PSF);
	put_quantity(j, object, "snow", v->snow, UNIT_PSF);
	put_text(j, object, "snow_case", v->snow_case);
	struct format f = j->f;

	f.code = v->edition;
	put_text(j, object, "reason", v->reason ? remark_text(&f, &v->reason_remark) : NULL);
}

static void put_differences(struct json *j, json_t *array, const struct comparison *c)
{
	for (int k = 1; k < c->count; k++) {
		const struct edition_difference_row *r;
		size_t i = 0;

		while (!j->failed && (r = compare_difference(c, k, &i)) != NULL) {
			json_t *object = append_object(j, array);

			put_text(j, object, "from", c->view[k - 1].name);
			put_text(j, object, "to", c->view[k].name);
			put_text(j, object, "subject", compare_subject(r->subject));
			put_text(j, object, "text", r->text);
			put_text(j, object, "clause", r->source);
			put_text(j, object, "status", confidence_text(r->status));
		}
	}
}

int json_compare_write(FILE *f, const void *what)
{
	const struct comparison *c = what;
	struct json j;
	json_t *root = json_begin(&j, "compare", c->job->units);

	if (root) {
		json_t *editions = NULL;

		put_text(&j, root, "title", c->job->title);
		editions = put_array(&j, root, "editions");
		for (int i = 0; i < c->count && !j.failed; i++)
			put_edition(&j, append_object(&j, editions), &c->view[i]);
		put_differences(&j, put_array(&j, root, "differences"), c);
		put_text(&j, root, "caution", caution_result);
		put_text(&j, root, "edition_caution",
			 "Only the edition that the local building code has adopted counts; ask "
			 "the building department, and "
			 "a licensed engineer.");
	}
	return json_end(&j, root, f);
}
