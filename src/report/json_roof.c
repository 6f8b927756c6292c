/* SPDX-License-Identifier: MIT */
#include "report/json_part.h"

static void add_rectangle(struct json *j, json_t *object, const struct rectangle *r)
{
	put_quantity(j, object, "x0", r->x0, UNIT_IN);
	put_quantity(j, object, "y0", r->y0, UNIT_IN);
	put_quantity(j, object, "x1", r->x1, UNIT_IN);
	put_quantity(j, object, "y1", r->y1, UNIT_IN);
}

static void add_shapes(struct json *j, json_t *roof, const struct result *r)
{
	json_t *array = put_array(j, roof, "zone_shapes");

	for (int i = 0; i < r->shapes && !j->failed; i++) {
		const struct zone_shape *s = &r->shape[i];
		json_t *object = append_object(j, array);

		put_text(j, object, "zone", zone_text(s->zone));
		json_t *points = put_array(j, object, "points");

		for (int k = 0; k < s->shape.n && !j->failed; k++) {
			json_t *point = append_object(j, points);

			put_quantity(j, point, "x", s->shape.at[k].x, UNIT_IN);
			put_quantity(j, point, "y", s->shape.at[k].y, UNIT_IN);
		}
	}
}

static void put_outline(struct json *j, json_t *roof, const struct result *r)
{
	json_t *points = put_array(j, roof, "outline");

	for (int k = 0; k < r->outline.n && !j->failed; k++) {
		json_t *point = append_object(j, points);

		put_quantity(j, point, "x", r->outline.at[k].x, UNIT_IN);
		put_quantity(j, point, "y", r->outline.at[k].y, UNIT_IN);
	}
}

static void add_rafters(struct json *j, json_t *roof, const struct result *r)
{
	json_t *array = put_array(j, roof, "rafters");

	for (int i = 0; i < r->frames && !j->failed; i++) {
		json_t *object = append_object(j, array);

		put_int(j, object, "rafter", i + 1);
		put_quantity(j, object, "x", r->frame_x[i], UNIT_IN);
	}
}

/* Seams under clamps, marks on the deck, rafters and the blocks between them: what the attachments' `place` counts. */
static const char *place_kind(const struct result *r, enum fastener_kind kind, int i)
{
	if (kind == FASTENER_SEAM_CLAMP)
		return "seam";
	if (kind == FASTENER_DECK_MOUNT)
		return "deck";
	return place_on_block(r, i) ? "block" : "rafter";
}

static void add_places(struct json *j, json_t *roof, const struct result *r, enum fastener_kind kind)
{
	json_t *array = put_array(j, roof, "places");

	for (int i = 0; i < r->rafters && !j->failed; i++) {
		json_t *object = append_object(j, array);

		put_text(j, object, "is", place_kind(r, kind, i));
		put_int(j, object, "place", i + 1);
		put_quantity(j, object, "x", r->rafter_x[i], UNIT_IN);
	}
}

void put_roof(struct json *j, json_t *root, const struct result *r, enum fastener_kind kind)
{
	json_t *roof = put_object(j, root, "roof");

	put_quantity(j, roof, "plane_length", r->plane_length, UNIT_IN);
	put_quantity(j, roof, "plane_slope", r->plane_slope, UNIT_IN);
	put_outline(j, roof, r);
	add_shapes(j, roof, r);
	add_rafters(j, roof, r);
	add_places(j, roof, r, kind);
	json_t *collectors = put_array(j, roof, "collectors");

	for (int i = 0; i < r->collectors && !j->failed; i++)
		add_rectangle(j, append_object(j, collectors), &r->collector[i]);
	json_t *array = put_object(j, roof, "array");

	add_rectangle(j, array, &r->array);
	put_quantity(j, array, "to_eave", r->array_to_eave, UNIT_IN);
	put_quantity(j, array, "to_ridge", r->array_to_ridge, UNIT_IN);
	put_quantity(j, array, "to_left_rake", r->array_to_left, UNIT_IN);
	put_quantity(j, array, "to_right_rake", r->array_to_right, UNIT_IN);
}
