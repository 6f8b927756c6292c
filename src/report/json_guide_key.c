/* SPDX-License-Identifier: MIT */
#include <string.h>

#include "report/json_guide.h"

struct walk {
	struct json *j;
	json_t *questions, *answers;
};

static void on_question(void *context, const struct guide_question *q)
{
	struct walk *w = context;
	json_t *object = append_object(w->j, w->questions);

	put_int(w->j, object, "number", q->number);
	put_text(w->j, object, "id", q->id);
	put_text(w->j, object, "text", q->text);
	put_text(w->j, object, "status", guide_status_text(q->status));
	w->answers = put_array(w->j, object, "answers");
}

static void put_keys(struct json *j, json_t *array, const char *keys)
{
	while (*keys) {
		const size_t n = strcspn(keys, " ");
		json_t *text = json_stringn(keys, n);

		if (!text || json_array_append_new(array, text) != 0)
			j->failed = true;
		keys += n;
		keys += strspn(keys, " ");
	}
}

static void on_answer(void *context, const struct guide_answer *a)
{
	struct walk *w = context;
	json_t *object = append_object(w->j, w->answers);

	put_text(w->j, object, "text", a->text);
	put_text(w->j, object, "status", guide_status_text(a->status));
	if (a->next > 0)
		put_int(w->j, object, "next", a->next);
	else
		put(w->j, object, "next", json_null());
	put_keys(w->j, put_array(w->j, object, "coverings"), a->coverings);
}

void put_guide_key(struct json *j, json_t *root, const struct guide_library *lib,
		   enum unit_system units)
{
	struct walk w = {j, put_array(j, root, "key"), NULL};
	const struct guide_key_sink sink = {on_question, on_answer, &w};

	guide_key(lib, units, &sink);
}

void put_recognise(struct json *j, json_t *page, const struct guide_library *lib, const char *key,
		   enum unit_system units)
{
	static const char *const element[] = {"look",  "butts",  "thickness", "lines",
					      "sound", "weight", "age"};
	json_t *object = put_object(j, page, "recognise");
	char text[GUIDE_CLAIM_MAX];

	for (size_t i = 0; i < sizeof element / sizeof *element; i++) {
		guide_recognise(lib, key, element[i], units, text, sizeof text);
		put_text(j, object, element[i], text);
	}
}
