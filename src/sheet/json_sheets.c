/* SPDX-License-Identifier: MIT */
#include "sheet/json_sheets.h"

#include "report/caution.h"
#include "report/check_part.h"
#include "report/json_value.h"

static void add_sheets(struct json *j, json_t *root, const struct sheets_json *what)
{
	json_t *array;

	put_text(j, root, "file", what->file);
	put_text(j, root, "job", what->sheet->job->title);
	put_text(j, root, "fingerprint", what->sheet->fingerprint);
	put_text(j, root, "verdict", verdict_key(what->sheet->r->verdict));
	if (what->set->pages > 0)
		put_int(j, root, "pages", what->set->pages);
	else
		put(j, root, "pages", json_null());
	array = put_array(j, root, "sheets");
	for (int i = 0; i < what->set->n && !j->failed; i++) {
		const struct sheet_page *page = &what->set->page[i];
		json_t *object = append_object(j, array);

		put_text(j, object, "name", page->name);
		put_text(j, object, "kind", page->drawing ? "drawing" : "text");
		if (page->drawing) {
			put_exact(j, object, "width", drawing_width(page->drawing), UNIT_MM);
			put_exact(j, object, "height", drawing_height(page->drawing), UNIT_MM);
			put_number(j, object, "scale", 1 / drawing_main_view(page->drawing).scale);
		}
	}
	put_text(j, root, "caution", caution_result);
}

int json_sheets_write(FILE *f, const struct sheets_json *what)
{
	struct json j;
	json_t *root = json_begin(&j, what->command, what->sheet->f.units);

	if (root)
		add_sheets(&j, root, what);
	return json_end(&j, root, f);
}

static void add_material(struct json *j, json_t *array, const struct material *row, bool priced)
{
	json_t *object = append_object(j, array);
	char buf[48];

	put_text(j, object, "item", material_key(row->id));
	put_text(j, object, "name", material_name(row->id));
	if (row->length)
		put_quantity(j, object, "amount", row->amount, UNIT_FT);
	else
		put_int(j, object, "amount", (long long)row->amount);
	put_text(j, object, "note", row->note);
	if (!priced)
		return;
	put_text(j, object, "each", row->priced ? money_print(buf, sizeof buf, row->each) : NULL);
	put_text(j, object, "total", row->priced ? money_print(buf, sizeof buf, row->total) : NULL);
}

static void add_materials(struct json *j, json_t *root, const struct materials_json *what)
{
	json_t *array;
	char buf[48];

	put_text(j, root, "job", what->sheet->job->title);
	put_text(j, root, "fingerprint", what->sheet->fingerprint);
	put_text(j, root, "verdict", verdict_key(what->sheet->r->verdict));
	array = put_array(j, root, "materials");
	for (int i = 0; i < what->materials->n && !j->failed; i++)
		add_material(j, array, &what->materials->row[i], what->prices != NULL);
	put_text(j, root, "total",
		 what->prices ? money_print(buf, sizeof buf, what->materials->total) : NULL);
	put_text(j, root, "currency", what->prices ? what->prices->currency : NULL);
	put_int(j, root, "unpriced", what->materials->unpriced);
	put_text(j, root, "caution", caution_result);
}

int json_materials_write(FILE *f, const struct materials_json *what)
{
	struct json j;
	json_t *root = json_begin(&j, "materials", what->sheet->f.units);

	if (root)
		add_materials(&j, root, what);
	return json_end(&j, root, f);
}
