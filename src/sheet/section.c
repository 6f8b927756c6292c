/* SPDX-License-Identifier: MIT */
#include "sheet/section.h"

#include <math.h>
#include <stdlib.h>

#define HEAD (12 * MM) /* title and what the drawing is */

const struct section_beside section_beside[] = {
	[SECTION_OF_FOOT] = {14 * MM, 2 * MM, 1 * MM, 22 * MM},
	[SECTION_OF_PIPE] = {2 * MM, 2 * MM, 5 * MM, 9 * MM},
	[SECTION_OF_RACK] = {12 * MM, 8 * MM, 16 * MM, 28 * MM},
	[SECTION_OF_BLOCK] = {10 * MM, 2 * MM, 10 * MM, 4 * MM},
};

bool section_exists(const struct sheet *s, enum section_of what, int which)
{
	switch (what) {
	case SECTION_OF_FOOT:
		return true;
	case SECTION_OF_PIPE:
		return which < s->job->pipes;
	case SECTION_OF_RACK:
		return section_is_tilted(s);
	case SECTION_OF_BLOCK:
		return section_has_block(s);
	}
	return false;
}

void section_name_along(struct section *x, double u, double v, double slack, const char *text)
{
	if (x->labels < SECTION_LABELS && *text)
		x->label[x->labels++] =
			(struct section_label){{u, v}, slack, sheet_text(x->s, "%s", text)};
}

void section_name(struct section *x, double u, double v, const char *text)
{
	section_name_along(x, u, v, 0, text);
}

void section_area(struct section *x, enum fill fill, const struct point *at, int n)
{
	drawing_shape(x->d, LAYER_MATERIAL, -1, fill, at, n);
}

void section_block(struct section *x, enum fill fill, double u0, double v0, double u1, double v1)
{
	const struct point at[] = {{u0, v0}, {u1, v0}, {u1, v1}, {u0, v1}};

	section_area(x, fill, at, 4);
}

void section_key(struct section *x, const char *letter, double length, const char *words)
{
	if (x->keys < SECTION_KEYS)
		x->key[x->keys++] = (struct section_key){
			letter, sheet_text(x->s, "%s  %s", sheet_size(x->s, length), words)};
}

void section_key_text(struct section *x, const char *letter, const char *words)
{
	if (x->keys < SECTION_KEYS)
		x->key[x->keys++] = (struct section_key){letter, words};
}

void section_reach(struct section *x, double u, double v)
{
	const double c = cos(x->theta), s = sin(x->theta), px = c * u - s * v, py = s * u + c * v;

	x->x0 = fmin(x->x0, px);
	x->x1 = fmax(x->x1, px);
	x->y0 = fmin(x->y0, py);
	x->y1 = fmax(x->y1, py);
}

static const char *title_of(const struct section *x, const char *covering)
{
	switch (x->what) {
	case SECTION_OF_FOOT:
		return sheet_text(x->s, "Attachment, %s: section up the slope", covering);
	case SECTION_OF_PIPE:
		return sheet_text(x->s, "Pipe P%d, %s: section up the slope",
				  (int)(x->pipe - x->s->job->pipe) + 1, covering);
	case SECTION_OF_RACK:
		return "Tilted row of collectors, from its side";
	case SECTION_OF_BLOCK:
		return "Foot on a block between two rafters, seen up the slope";
	}
	return "";
}

void section_title(struct section *x)
{
	struct guide_page page = {.name = x->s->job->roof.covering};

	if (x->s->library)
		guide_page_find(x->s->library, x->s->job->roof.covering, &page);
	drawing_set_title(x->d, title_of(x, page.name),
			  sheet_text(x->s, "%s, scale %s. %s", x->s->job->title, x->scale.text,
				     sheet_verdict(x->s)));
}

/* What is drawn up and down the slope: the plate and one course more, within bounds. */
static void extent(struct section *x)
{
	double down = 0.15, up = 0.2;

	for (int i = 0; i < x->layers; i++) {
		down = fmax(down, section_size(&x->layer[i], "down", 0) + 0.04);
		up = fmax(up, section_size(&x->layer[i], "up", 0) + 0.04);
	}
	x->u0 = -fmin(down, 0.40);
	x->u1 = fmin(up, 0.80);
	if (x->what == SECTION_OF_FOOT)
		section_foot_extent(x);
	else
		section_pipe_extent(x);
	section_reach(x, x->u0, -x->deck);
	section_reach(x, x->u1, -x->deck);
	section_reach(x, x->u0, section_top(x, x->u0));
	section_reach(x, x->u1, section_top(x, x->u1));
}

static void place(struct section *x)
{
	if (x->room.narrow) {
		section_place_narrow(x);
		return;
	}
	const double width = x->room.width, height = x->room.height;
	const struct section_beside *r = &section_beside[x->what];
	const double left = SECTION_MARGIN + r->left, low = SECTION_MARGIN + r->notes + r->below;
	const double room_x = width - left - r->right - SECTION_LABEL_WIDTH - SECTION_MARGIN;
	const double room_y = height - SECTION_MARGIN - HEAD - low;

	x->scale = scale_for_detail(x->s, x->x1 - x->x0, x->y1 - x->y0, room_x, room_y);
	const double k = 1 / x->scale.ratio;
	const struct view view = {{left + (room_x - (x->x1 - x->x0) * k) / 2 - x->x0 * k,
				   low + (room_y - (x->y1 - x->y0) * k) / 2 - x->y0 * k},
				  k,
				  x->theta};

	drawing_view(x->d, view);
	drawing_set_main_view(x->d, view);
}

static void draw_rack(struct section *x)
{
	section_rack_extent(x);
	place(x);
	section_rack(x);
}

static void draw_block(struct section *x)
{
	x->theta = 0;
	section_block_extent(x);
	place(x);
	section_on_block(x);
}

static void draw_covering(struct section *x)
{
	section_collect(x);
	extent(x);
	place(x);
	section_roof(x);
	section_covering(x);
	if (x->what == SECTION_OF_FOOT) {
		section_foot_low(x);
		section_flashing(x);
		section_foot_high(x);
	} else {
		section_pipe_hole(x);
		section_flashing(x);
		section_pipe(x);
	}
}

struct drawing *section_draw(const struct sheet *s, enum section_of what, int which,
			     struct sheet_room room)
{
	struct drawing *d = drawing_create(s->lettering, room.width, room.height, NULL);
	struct section *x = d ? calloc(1, sizeof *x) : NULL;

	if (!x) {
		drawing_destroy(d);
		return NULL;
	}
	x->s = s;
	x->d = d;
	x->what = what;
	x->room = room;
	x->pipe = what == SECTION_OF_PIPE ? &s->job->pipe[which] : NULL;
	x->theta = s->job->roof.pitch;
	x->deck = isnan(s->job->roof.deck_thickness) ? 0 : s->job->roof.deck_thickness;
	x->x0 = x->y0 = HUGE_VAL;
	x->x1 = x->y1 = -HUGE_VAL;
	if (what == SECTION_OF_RACK)
		draw_rack(x);
	else if (what == SECTION_OF_BLOCK)
		draw_block(x);
	else
		draw_covering(x);
	section_title(x);
	if (room.narrow)
		section_page_narrow(x);
	else
		section_page(x);
	if (what == SECTION_OF_RACK) {
		drawing_view(d, drawing_main_view(d));
		section_rack_dimensions(x);
	}
	if (room.narrow)
		d = drawing_cut(d, x->low - NARROW_MARGIN, NULL);
	free(x);
	return d;
}
