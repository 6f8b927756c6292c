/* SPDX-License-Identifier: MIT */
#include "report/json_part.h"

#include <math.h>

#include "report/check_part.h"

static void add_force(struct json *j, json_t *parent, const char *key, const struct force *f)
{
	json_t *object = put_object(j, parent, key);

	put_quantity(j, object, "normal", f->normal, UNIT_LB);
	put_quantity(j, object, "down_slope", f->slope, UNIT_LB);
	put_text(j, object, "combination", f->combination);
	put_number(j, object, "CD", f->CD);
}

static void add_borders(struct json *j, json_t *parent, const struct course_place *c)
{
	json_t *array = put_array(j, parent, "borders");

	for (int b = 0; b < BORDER_COUNT && !j->failed; b++) {
		if (!isfinite(c->border[b].distance))
			continue;
		json_t *object = append_object(j, array);

		put_text(j, object, "border", border_key((enum border)b));
		put_quantity(j, object, "distance", c->border[b].distance, UNIT_IN);
		put_quantity(j, object, "least", c->border[b].least, UNIT_IN);
		put_bool(j, object, "clear", !border_close(&c->border[b]));
	}
}

/* How the hole lies in the covering. */
static void add_course(struct json *j, json_t *parent, const struct course_place *c)
{
	json_t *object = put_object(j, parent, "covering");

	put_text(j, object, "landing", landing_key(c->landing));
	if (c->course > 0)
		put_int(j, object, "course", c->course);
	else
		put(j, object, "course", json_null());
	put_quantity(j, object, "to_butt_above", c->below, UNIT_IN);
	put_quantity(j, object, "above_own_butt", c->above, UNIT_IN);
	put_quantity(j, object, "plate_down", c->plate_down, UNIT_IN);
	put_quantity(j, object, "plate_up", c->plate_up, UNIT_IN);
	put_quantity(j, object, "plate_side", c->plate_side, UNIT_IN);
	put_quantity(j, object, "move_up", c->move_up, UNIT_IN);
	put_quantity(j, object, "move_down", c->move_down, UNIT_IN);
	put_bool(j, object, "within_clamp_range", c->can_move);
	put_quantity(j, object, "to_seam", c->to_seam, UNIT_IN);
	put_quantity(j, object, "to_joint", c->to_joint, UNIT_IN);
	put_quantity(j, object, "joint_side", c->joint_side, UNIT_IN);
	put_bool(j, object, "joint_side_on_rafter", c->side_fits);
	put_quantity(j, object, "joint_up", c->joint_up, UNIT_IN);
	put_quantity(j, object, "joint_down", c->joint_down, UNIT_IN);
	put_bool(j, object, "joint_within_clamp_range", c->line_fits);
	put_bool(j, object, "joint_unseen", c->joint_unseen);
	add_borders(j, object, c);
}

static void add_attachment(struct json *j, json_t *object, const struct result *r, const struct attachment *a)
{
	const struct stand *at = &r->place[a->rafter];

	put_int(j, object, "attachment", a->number);
	put_int(j, object, "line", a->line + 1);
	put_int(j, object, "place", a->rafter + 1);
	if (at->frame >= 0)
		put_int(j, object, "rafter", at->frame + 1);
	else
		put(j, object, "rafter", json_null());
	put_number(j, object, "next_rafter_share", at->right);
	put_bool(j, object, "on_block", place_on_block(r, a->rafter));
	put_quantity(j, object, "x", a->x, UNIT_IN);
	put_quantity(j, object, "y", a->y, UNIT_IN);
	put_quantity(j, object, "tributary_width", a->tributary_width, UNIT_IN);
	put_quantity(j, object, "tributary_depth", a->tributary_depth, UNIT_IN);
	put_quantity(j, object, "reaction_width", a->reaction_width, UNIT_IN);
	put_quantity(j, object, "area", a->area, UNIT_FT2);
	put_text(j, object, "zone", zone_text(a->zone));
	put_bool(j, object, "exposed", a->exposed);
	add_course(j, object, &a->course);
	put_number(j, object, "GCp_up", a->GCp_up);
	put_number(j, object, "GCp_down", a->GCp_down);
	put_text(j, object, "confidence", confidence_text(a->confidence));
	put_quantity(j, object, "p_up", a->p_up, UNIT_PSF);
	put_quantity(j, object, "p_down", a->p_down, UNIT_PSF);
	add_force(j, object, "uplift", &a->uplift);
	add_force(j, object, "down", &a->down);
	add_force(j, object, "slope", &a->slope);
	put_checks(j, object, "checks", a->check);
	put_governs(j, object, a->check, a->ratio, a->governs);
}

static const char *place_kind(enum link link)
{
	static const char *const kinds[LINK_COUNT] = { "collector", "line", "attachment",
		                                       "attachment", "rafter" };

	return kinds[link];
}

static void add_chain(struct json *j, json_t *parent, const struct pass *pass)
{
	json_t *array = put_array(j, parent, "chain");

	for (int i = 0; i < LINK_COUNT && !j->failed; i++) {
		json_t *object = append_object(j, array);

		put_text(j, object, "link", link_words((enum link)i));
		put_bool(j, object, "checked", !isnan(pass->link_ratio[i]));
		put_number(j, object, "ratio", pass->link_ratio[i]);
		if (isnan(pass->link_ratio[i])) {
			put(j, object, "governs", json_null());
			put(j, object, "at", json_null());
			continue;
		}
		put_check(j, object, "governs", pass->link_governs[i]);
		if (pass->link_at[i] <= 0) {
			put(j, object, "at", json_null());
			continue;
		}
		json_t *at = put_object(j, object, "at");

		put_text(j, at, "kind", place_kind((enum link)i));
		put_int(j, at, "number", pass->link_at[i]);
	}
}

static void add_zones(struct json *j, json_t *parent, const struct pass *pass)
{
	static const char *const limited_by[SPACING_END_COUNT] = { "check", "maker", "array" };
	json_t *array = put_array(j, parent, "zones");

	for (int i = 0; i < ZONE_COUNT && !j->failed; i++) {
		const struct zone_spacing *z = &pass->zone[i];

		if (!z->present)
			continue;
		json_t *object = append_object(j, array);

		put_text(j, object, "zone", zone_text((enum zone)i));
		put_quantity(j, object, "spacing", z->spacing, UNIT_IN);
		put_quantity(j, object, "exact_spacing", z->exact, UNIT_IN);
		put_quantity(j, object, "area", z->area, UNIT_FT2);
		put_number(j, object, "GCp_up", z->GCp_up);
		put_number(j, object, "GCp_down", z->GCp_down);
		put_text(j, object, "figure", z->figure);
		put_text(j, object, "confidence", confidence_text(z->confidence));
		put_quantity(j, object, "p_up", z->p_up, UNIT_PSF);
		put_quantity(j, object, "p_down", z->p_down, UNIT_PSF);
		put_text(j, object, "limited_by", limited_by[z->end]);
		if (z->end == SPACING_BY_CHECK && z->exact > 0)
			put_check(j, object, "governs", z->governs);
		else
			put(j, object, "governs", json_null());
	}
}

static void add_pass(struct json *j, json_t *object, const struct result *r, const struct pass *pass)
{
	put_text(j, object, "coefficients", pass->name);
	put_bool(j, object, "holds", pass->holds);
	put_bool(j, object, "complete", pass->complete);
	put_number(j, object, "ratio", pass_weakest(pass) == LINK_COUNT ? (double)NAN : pass->ratio);
	add_chain(j, object, pass);
	put_checks(j, object, "collector", pass->collector);
	add_zones(j, object, pass);
	json_t *array = put_array(j, object, "attachments");

	for (int i = 0; i < pass->attachments && !j->failed; i++)
		add_attachment(j, append_object(j, array), r, &pass->attachment[i]);
	put_lines(j, object, pass);
	put_rafters(j, object, pass);
}

void put_passes(struct json *j, json_t *root, const struct result *r)
{
	json_t *array = put_array(j, root, "passes");

	for (int i = 0; i < r->passes && !j->failed; i++)
		add_pass(j, append_object(j, array), r, &r->pass[i]);
}
