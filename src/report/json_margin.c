/* SPDX-License-Identifier: MIT */
#include <math.h>

#include "report/caution.h"
#include "report/json_part.h"
#include "report/margin_report.h"

static void put_side(struct json *j, json_t *row, const char *key, const struct margin_row *r, bool worse,
		     const struct margin_side *s)
{
	json_t *object = NULL;

	if (!s->known) {
		put(j, row, key, json_null());
		return;
	}
	object = put_object(j, row, key);
	put_text(j, object, "step", margin_words(r, worse, j->f.units));
	put_number(j, object, "ratio", isfinite(s->ratio) ? s->ratio : (double)NAN);
	put_bool(j, object, "holds", s->holds);
}

static void put_row(struct json *j, json_t *row, const struct margin_row *r)
{
	const struct field *f = &field_table[margin_field(r->id)];

	put_text(j, row, "field", document_text(j->f.document, "%s.%s", f->element, f->attribute));
	put_text(j, row, "origin", field_origin_text(r->origin));
	put_side(j, row, "worse", r, true, &r->worse);
	put_side(j, row, "better", r, false, &r->better);
	put_text(j, row, "verify", f->measured);
}

static void put_growth(struct json *j, json_t *parent, const char *key, const struct growth *g,
		       enum unit us)
{
	json_t *object = put_object(j, parent, key);

	put_quantity(j, object, "now", g->now, us);
	put_quantity(j, object, "most", g->most, us);
	put_bool(j, object, "end_of_trials", g->no_end);
}

static void put_margin(struct json *j, json_t *root, const struct margin *m)
{
	json_t *rows = NULL, *growth = NULL;

	put_bool(j, root, "holds", m->holds);
	put_number(j, root, "ratio", m->ratio);
	put_check(j, root, "governs", m->governs);
	put_int(j, root, "attachments", m->attachments);
	rows = put_array(j, root, "inputs");
	for (int i = 0; i < m->rows && !j->failed; i++)
		put_row(j, append_object(j, rows), &m->row[i]);
	growth = put_object(j, root, "growth");
	put_growth(j, growth, "wind_speed", &m->growth[GROWTH_WIND], UNIT_MPH);
	put_growth(j, growth, "ground_snow", &m->growth[GROWTH_SNOW], UNIT_PSF);
	put_growth(j, growth, "spacing", &m->growth[GROWTH_SPACING], UNIT_FT);
	put_growth(j, growth, "columns", &m->growth[GROWTH_COLUMNS], UNIT_NONE);
}

int json_margin_write(FILE *f, const void *what)
{
	const struct margin_view *v = what;
	struct json j;
	json_t *root = json_begin(&j, "margin", v->job->units);

	if (root) {
		put_text(&j, root, "title", v->job->title);
		put_bool(&j, root, "rated", v->margin->rated);
		if (v->margin->rated)
			put_margin(&j, root, v->margin);
		put_text(&j, root, "caution", caution_result);
	}
	return json_end(&j, root, f);
}
