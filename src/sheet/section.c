/* SPDX-License-Identifier: MIT */
#include "sheet/section.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "detail/layers.h"
#include "report/flashing_sizes.h"

#define DIMENSIONS (12 * MM) /* beyond the drawing, all round */
#define NOTES (12 * MM)      /* at the foot of the page */
#define FORCES (16 * MM)     /* more of them below a rack */

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

double section_size(const struct section_layer *l, const char *name, double otherwise)
{
	for (int i = 0; i < l->sizes; i++)
		if (strcmp(l->size[i].name, name) == 0)
			return l->size[i].value;
	return otherwise;
}

bool section_is(const struct section_layer *l, const char *kind)
{
	return strcmp(l->kind, kind) == 0;
}

const struct section_layer *section_find(const struct section *x, const char *kind)
{
	for (int i = 0; i < x->layers; i++)
		if (section_is(&x->layer[i], kind))
			return &x->layer[i];
	return NULL;
}

void section_name(struct section *x, double u, double v, const char *text)
{
	if (x->labels < SECTION_LABELS && *text)
		x->label[x->labels++] =
			(struct section_label){{u, v}, sheet_text(x->s, "%s", text)};
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

static void set_title(struct section *x)
{
	struct guide_page page = {.name = x->s->job->roof.covering};

	if (x->s->library)
		guide_page_find(x->s->library, x->s->job->roof.covering, &page);
	drawing_set_title(x->d, title_of(x, page.name),
			  sheet_text(x->s, "%s, scale %s. %s", x->s->job->title, x->scale.text,
				     sheet_verdict(x->s)));
}

static void add_size(struct section_layer *l, const char *name, double value)
{
	if (isnan(value) || l->sizes == GUIDE_LAYER_SIZES)
		return;
	snprintf(l->size[l->sizes].name, sizeof l->size[l->sizes].name, "%s", name);
	l->size[l->sizes++].value = value;
}

static void take_layer(struct section *x, const struct detail_layer *g)
{
	struct section_layer *l = &x->layer[x->layers++];

	snprintf(l->kind, sizeof l->kind, "%s", g->kind);
	snprintf(l->label, sizeof l->label, "%s", g->label);
	l->woven = g->woven;
	l->plumb = g->plumb;
	l->turned = g->turned;
#define S(member, name) add_size(l, name, g->member);
	LAYER_SIZES(S)
#undef S
}

struct guide_sizes section_sizes(const struct section *x)
{
	return x->pipe ? flashing_sizes_of_pipe(x->s->job, x->s->r,
						(int)(x->pipe - x->s->job->pipe))
		       : flashing_sizes(x->s->job, x->s->r);
}

static void collect(struct section *x)
{
	const struct guide_sizes sizes = section_sizes(x);
	const struct guide_request request = {.key = x->s->job->roof.covering,
					      .sizes = &sizes,
					      .units = x->s->f.units,
					      .depth = GUIDE_BRIEF};
	const char *of = x->what == SECTION_OF_FOOT ? "foot" : "pipe";
	struct detail_layers drawn;

	/* the library's title is of a usual foot; this drawing has one of its own */
	x->from_library =
		x->s->library && detail_layers_read(&drawn, x->s->library, &request, of, "section");
	for (int i = 0; x->from_library && i < drawn.layers && x->layers < SECTION_LAYERS; i++)
		take_layer(x, &drawn.layer[i]);
	if (x->from_library) {
		x->post_least = drawn.post_least;
		x->boot_too_wide = drawn.boot_too_wide;
	}
	section_stack(x);
}

/* A pipe that the library does not draw on this covering still has its own size. */
static void add_plain_pipe(struct section *x)
{
	const struct job_pipe *p = x->pipe;
	struct section_layer *l;

	if (!p || section_find(x, "pipe") || x->layers + 2 > SECTION_LAYERS)
		return;
	if (!isnan(p->insulated_diameter)) {
		l = &x->layer[x->layers++];
		*l = (struct section_layer){
			.kind = "pipe-insulation",
			.label = "insulation",
			.plumb = true,
			.sizes = 2,
			.size = {{"diameter", p->insulated_diameter}, {"height", 0.30}}};
	}
	l = &x->layer[x->layers++];
	*l = (struct section_layer){.kind = "pipe",
				    .label = "pipe",
				    .plumb = true,
				    .sizes = 2,
				    .size = {{"diameter", p->diameter}, {"height", 0.36}}};
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
	x->u1 = fmin(up, 0.55);
	if (x->what == SECTION_OF_FOOT)
		section_foot_extent(x);
	else
		section_pipe_extent(x);
	section_reach(x, x->u0, -x->deck);
	section_reach(x, x->u1, -x->deck);
	section_reach(x, x->u0, section_top(x, x->u0));
	section_reach(x, x->u1, section_top(x, x->u1));
}

static void place(struct section *x, double width, double height)
{
	const double room_x = width - 2 * SECTION_MARGIN - SECTION_LABEL_WIDTH - 2 * DIMENSIONS;
	const double notes = NOTES + (x->what == SECTION_OF_RACK ? FORCES : 0);
	const double room_y = height - 2 * SECTION_MARGIN - 2 * DIMENSIONS - notes;

	x->scale = scale_for_detail(x->s, x->x1 - x->x0, x->y1 - x->y0, room_x, room_y);
	const double k = 1 / x->scale.ratio;
	const struct view view = {
		{SECTION_MARGIN + DIMENSIONS + (room_x - (x->x1 - x->x0) * k) / 2 - x->x0 * k,
		 SECTION_MARGIN + DIMENSIONS + notes + (room_y - (x->y1 - x->y0) * k) / 2 -
			 x->y0 * k},
		k,
		x->theta};

	drawing_view(x->d, view);
	drawing_set_main_view(x->d, view);
}

static void draw_rack(struct section *x, double width, double height)
{
	section_rack_extent(x);
	place(x, width, height);
	section_rack(x);
}

static void draw_block(struct section *x, double width, double height)
{
	x->theta = 0;
	section_block_extent(x);
	place(x, width, height);
	section_on_block(x);
}

static void draw_covering(struct section *x, double width, double height)
{
	collect(x);
	add_plain_pipe(x);
	extent(x);
	place(x, width, height);
	section_roof(x);
	section_covering(x);
	if (x->what == SECTION_OF_FOOT) {
		section_foot(x);
		section_flashing(x);
	} else {
		section_flashing(x);
		section_pipe(x);
	}
}

struct drawing *section_draw(const struct sheet *s, enum section_of what, int which, double width,
			     double height)
{
	struct drawing *d = drawing_create(s->lettering, width, height, NULL);
	struct section *x = d ? calloc(1, sizeof *x) : NULL;

	if (!x) {
		drawing_destroy(d);
		return NULL;
	}
	x->s = s;
	x->d = d;
	x->what = what;
	x->pipe = what == SECTION_OF_PIPE ? &s->job->pipe[which] : NULL;
	x->theta = s->job->roof.pitch;
	x->deck = isnan(s->job->roof.deck_thickness) ? 0 : s->job->roof.deck_thickness;
	x->x0 = x->y0 = HUGE_VAL;
	x->x1 = x->y1 = -HUGE_VAL;
	if (what == SECTION_OF_RACK)
		draw_rack(x, width, height);
	else if (what == SECTION_OF_BLOCK)
		draw_block(x, width, height);
	else
		draw_covering(x, width, height);
	set_title(x);
	section_page(x);
	if (what == SECTION_OF_RACK) {
		drawing_view(d, drawing_main_view(d));
		section_rack_dimensions(x);
	}
	free(x);
	return d;
}
