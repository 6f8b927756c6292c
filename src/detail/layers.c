/* SPDX-License-Identifier: MIT */
/* Layers of the library with their sizes by name. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "detail/scene.h"

double known(double a, double b)
{
	return isnan(a) ? b : a;
}

bool scene_is(const struct scene_layer *l, const char *kind)
{
	return strcmp(l->kind, kind) == 0;
}

const struct scene_layer *scene_find(const struct scene *s, const char *kind)
{
	for (int i = 0; i < s->layers; i++)
		if (scene_is(&s->layer[i], kind))
			return &s->layer[i];
	return NULL;
}

static void take_size(struct scene_layer *l, const char *name, double value)
{
#define S(member, text)                                                                            \
	if (strcmp(name, text) == 0)                                                               \
		l->member = value;
	LAYER_SIZES(S)
#undef S
}

static void on_title(void *context, const char *title)
{
	struct scene *s = context;

	snprintf(s->title, sizeof s->title, "%s", title);
}

static void on_layer(void *context, const struct guide_layer *layer)
{
	struct scene *s = context;
	struct scene_layer *l = &s->layer[s->layers];

	if (s->layers == SCENE_LAYERS)
		return;
	s->layers++;
	memset(l, 0, sizeof *l);
	snprintf(l->kind, sizeof l->kind, "%s", layer->kind);
	snprintf(l->label, sizeof l->label, "%s", layer->label);
	l->woven = layer->woven;
	l->plumb = layer->plumb;
#define S(member, text) l->member = (double)NAN;
	LAYER_SIZES(S)
#undef S
	for (int i = 0; i < layer->sizes; i++) {
		take_size(l, layer->size[i].name, layer->size[i].value);
		l->of_job = l->of_job || layer->size[i].of_job;
	}
}

/* A section's layers serve as a plan: its title loses what it says of the cut. */
static void rename_section(struct scene *s)
{
	char *comma = strrchr(s->title, ',');
	const size_t room = sizeof s->title;

	if (!comma)
		comma = s->title + strlen(s->title);
	snprintf(comma, room - (size_t)(comma - s->title), ", seen from above");
}

/* Where the pitch is not known: 6:12, or 1/4:12 on coverings made for flat roofs, and never less
 * than the covering wants. */
static double usual_pitch(const struct guide_library *lib, const char *key)
{
	double low, high;

	if (!guide_quantity(lib, key, "slope-least", &low, &high) || low < atan2(1.9, 12.0))
		return fmax(known(low, 0), atan2(0.25, 12.0));
	return fmax(low, atan2(6.0, 12.0));
}

static struct scene_layer *find_lapped(struct scene *s)
{
	for (int i = 0; i < s->layers; i++)
		if (s->layer[i].exposure > 0 && isfinite(s->layer[i].butt_up) &&
		    !scene_is(&s->layer[i], "felt-strip"))
			return &s->layer[i];
	return NULL;
}

/* Sizes of the job that follow from others. Where the lines of feet differ, the plate is that of
   the worst line, and the butt is drawn as on it. Felts go with the pieces: interlaid ones with
   their lower edge twice the exposure above the butt (IRC R905.8.7), the one over the plate across
   its upper edge. */
static void fit_to_job(struct scene *s, const struct guide_sizes *sizes)
{
	struct scene_layer *piece = find_lapped(s);
	const struct scene_layer *plate = scene_find(s, "plate");

	if (piece && sizes && isnan(sizes->hole_to_butt) && sizes->plate_up > sizes->reach)
		piece->butt_up = sizes->plate_up - sizes->reach;
	for (int i = 0; i < s->layers; i++) {
		struct scene_layer *l = &s->layer[i];

		if (!scene_is(l, "felt-strip"))
			continue;
		if (piece && l->exposure > 0)
			l->butt_up = piece->butt_up + 2 * piece->exposure;
		else if (plate && plate->up + 2 * M_PER_IN > l->up) {
			l->up = plate->up + 5 * M_PER_IN;
			l->down = -(plate->up - 4 * M_PER_IN);
		}
	}
}

/* A pipe wider than usual gets a wider sleeve, with 1/4 in of room all round (common practice), and
 * what sits on it. */
static void fit_sleeve(struct scene *s)
{
	const struct scene_layer *inside = scene_find(s, "pipe-insulation");
	double more = 0;

	for (int i = 0; inside && i < s->layers; i++) {
		struct scene_layer *l = &s->layer[i];

		if (scene_is(l, "sleeve"))
			more = fmax(0, inside->diameter + 0.5 * M_PER_IN - l->diameter);
		if (more > 0 && (scene_is(l, "sleeve") || scene_is(l, "cap") ||
				 (scene_is(l, "boot") && isfinite(l->diameter)))) {
			l->diameter += more;
			l->of_job = true;
		}
	}
}

bool scene_read(struct scene *s, const struct guide_library *lib,
		const struct guide_request *request, const char *of, const char *view)
{
	const struct guide_layer_sink sink = {on_title, on_layer, s};
	bool is_along = false;

	s->plan = strcmp(view, "plan") == 0;
	s->units = request->units;
	if (!guide_drawing(lib, request, of, view, &sink)) {
		if (!s->plan || !guide_drawing(lib, request, of, "section", &sink))
			return false;
		rename_section(s);
	}
	guide_drawing_along(lib, request->key, of, &is_along);
	s->along = is_along;
	s->theta = request->sizes ? request->sizes->pitch : (double)NAN;
	s->theta_of_job = isfinite(s->theta) != 0;
	if (!s->theta_of_job)
		s->theta = usual_pitch(lib, request->key);
	fit_to_job(s, request->sizes);
	fit_sleeve(s);
	return s->layers > 0;
}
