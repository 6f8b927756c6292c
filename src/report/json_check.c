/* SPDX-License-Identifier: MIT */
#include "report/json_check.h"

#include "report/caution.h"
#include "report/check_part.h"
#include "report/json_part.h"

static const char *kind_key(enum remark_kind kind)
{
	static const char *const keys[REMARK_KIND_COUNT] = {
		[REMARK_ENGINEER] = "engineer",   [REMARK_FAILS] = "fails",
		[REMARK_LOOK_UP] = "look-up",     [REMARK_ASSUMED] = "assumed",
		[REMARK_UNCHECKED] = "unchecked", [REMARK_REMEDY] = "remedy",
		[REMARK_NOTE] = "note",
	};

	return keys[kind];
}

static const char *remark_name(enum remark_id id)
{
	static const char *const names[REMARK_COUNT] = {
#define R(id, kind, text) #id,
		REMARKS(R)
#undef R
	};

	return names[id];
}

static void add_remarks(struct json *j, json_t *root, const struct result *r)
{
	json_t *array = put_array(j, root, "remarks");

	for (int i = 0; i < r->remarks && !j->failed; i++) {
		const struct remark *m = &r->remark[i];
		json_t *object = append_object(j, array);

		put_id(j, object, "id", remark_name(m->id));
		put_text(j, object, "kind", kind_key(remark_kind(m->id)));
		put_text(j, object, "text", remark_text(&j->f, m));
	}
	put_int(j, root, "remarks_dropped", r->remarks_dropped);
}

static void add_root(struct json *j, json_t *root, const struct job *job, const struct result *r)
{
	const struct pass *pass = &r->pass[r->judged];
	const enum link weakest = r->passes > 0 ? pass_weakest(pass) : LINK_COUNT;

	put_text(j, root, "verdict", verdict_key(r->verdict));
	put_text(j, root, "caution", caution_result);
	put_text(j, root, "units", job->units == SYSTEM_US ? "us" : "si");
	put_text(j, root, "title", job->title);
	put_text(j, root, "weakest_link", weakest == LINK_COUNT ? NULL : link_words(weakest));
	add_remarks(j, root, r);
	put_inputs(j, root, job);
	put_roof(j, root, r, job->fastener.kind);
	put_loads(j, root, job, r);
	put_parts(j, root, r);
	put_flashing(j, root, job, r);
	put_search(j, root, r);
	put_blocks(j, root, r);
	put_int(j, root, "judged", r->judged);
	put_passes(j, root, r);
	put_pipe_holes(j, root, job, r);
	put_steps(j, root, job, r);
	put_beams(j, root, r);
	json_t *cautions = put_array(j, root, "cautions");

	for (int i = 0; caution_roof_work[i] && !j->failed; i++)
		if (json_array_append_new(cautions, json_string(caution_roof_work[i])) != 0)
			j->failed = true;
}

int json_check_write(FILE *f, const struct job *job, const struct result *r)
{
	struct json j;
	json_t *root = json_begin(&j, "check", job->units);

	j.f.code = job->site.code;

	if (root)
		add_root(&j, root, job, r);
	return json_end(&j, root, f);
}
