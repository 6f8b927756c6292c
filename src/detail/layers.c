/* SPDX-License-Identifier: MIT */
/* Layers of the library with their sizes by name. */
#include "detail/layers.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

double known(double a, double b)
{
	return isnan(a) ? b : a;
}

bool layer_is(const struct detail_layer *l, const char *kind)
{
	return strcmp(l->kind, kind) == 0;
}

const struct detail_layer *layer_find(const struct detail_layer *layer, int layers,
				      const char *kind)
{
	for (int i = 0; i < layers; i++)
		if (layer_is(&layer[i], kind))
			return &layer[i];
	return NULL;
}

bool layer_carries(const struct detail_layer *l)
{
	return layer_is(l, "block") && l->base < -2 * M_PER_IN; /* no deck is thicker */
}

void layers_take_out(struct detail_layers *r, const char *kind)
{
	int kept = 0;

	for (int i = 0; i < r->layers; i++)
		if (!layer_is(&r->layer[i], kind))
			r->layer[kept++] = r->layer[i];
	r->layers = kept;
}

void layers_take_out_carriers(struct detail_layers *r)
{
	int kept = 0;

	for (int i = 0; i < r->layers; i++)
		if (!layer_carries(&r->layer[i]))
			r->layer[kept++] = r->layer[i];
	r->layers = kept;
}

double layer_size(const struct detail_layer *l, const char *name)
{
#define S(member, text)                                                                            \
	if (strcmp(name, text) == 0)                                                               \
		return l->member;
	LAYER_SIZES(S)
#undef S
	return (double)NAN;
}

static void take_size(struct detail_layer *l, const char *name, double value, bool of_job)
{
#define S(member, text)                                                                            \
	if (strcmp(name, text) == 0) {                                                             \
		l->member = value;                                                                 \
		l->usual.member = of_job ? (double)NAN : value;                                    \
	}
	LAYER_SIZES(S)
#undef S
}

static void on_title(void *context, const char *title)
{
	struct detail_layers *r = context;

	snprintf(r->title, sizeof r->title, "%s", title);
}

static void on_layer(void *context, const struct guide_layer *layer)
{
	struct detail_layers *r = context;
	struct detail_layer *l = &r->layer[r->layers];

	if (r->layers == DETAIL_LAYERS)
		return;
	r->layers++;
	memset(l, 0, sizeof *l);
	snprintf(l->kind, sizeof l->kind, "%s", layer->kind);
	snprintf(l->label, sizeof l->label, "%s", layer->label);
	l->woven = layer->woven;
	l->plumb = layer->plumb;
	l->turned = layer->turned;
#define S(member, text) l->member = l->usual.member = (double)NAN;
	LAYER_SIZES(S)
#undef S
	for (int i = 0; i < layer->sizes; i++) {
		take_size(l, layer->size[i].name, layer->size[i].value, layer->size[i].of_job);
		l->of_job = l->of_job || layer->size[i].of_job;
	}
}

/* A section's layers serve as a plan: its title loses what it says of the cut. */
static void rename_section(struct detail_layers *r)
{
	char *comma = strrchr(r->title, ',');
	const size_t room = sizeof r->title;

	if (!comma)
		comma = r->title + strlen(r->title);
	snprintf(comma, room - (size_t)(comma - r->title), ", seen from above");
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

/* The job's foot stands below the plate that the library sets it on: its post comes up through the
   raised seal, and its screws are not seen. 1-1/2 in across where nothing says more, the seal
   1/4 in wider all round (common practice). */
static void put_base_below(struct detail_layers *r)
{
	if (r->pipe || !layer_find(r->layer, r->layers, "boss"))
		return;
	for (int i = 0; i < r->layers; i++)
		if (layer_is(&r->layer[i], "boss"))
			r->layer[i].diameter = fmax(r->layer[i].diameter, 2 * M_PER_IN);
	for (int i = 0; i < r->layers; i++) {
		struct detail_layer *l = &r->layer[i];

		if (!layer_is(l, "foot"))
			continue;
		snprintf(l->kind, sizeof l->kind, "post");
		snprintf(l->label, sizeof l->label, "post, its base below the plate");
		l->diameter = l->usual.diameter = 1.5 * M_PER_IN;
		l->down = l->up = l->side = (double)NAN;
		layers_take_out(r, "screw");
		layers_take_out(r, "sealant");
		return;
	}
}

bool detail_layers_read(struct detail_layers *r, const struct guide_library *lib,
			const struct guide_request *request, const char *of, const char *view)
{
	const struct guide_layer_sink sink = {on_title, on_layer, r};

	memset(r, 0, sizeof *r);
	r->plan = strcmp(view, "plan") == 0;
	r->wall = strcmp(of, "wall") == 0;
	r->pipe = r->wall || strcmp(of, "pipe") == 0;
	if (!guide_drawing(lib, request, of, view, &sink)) {
		if (!r->plan || !guide_drawing(lib, request, of, "section", &sink))
			return false;
		rename_section(r);
	}
	guide_drawing_along(lib, request->key, of, &r->along);
	r->theta = request->sizes ? request->sizes->pitch : (double)NAN;
	r->theta_of_job = isfinite(r->theta) != 0;
	if (!r->theta_of_job)
		r->theta = usual_pitch(lib, request->key);
	if (r->wall)
		r->theta = atan2(1, 0);
	if (request->base_below)
		put_base_below(r);
	layers_fit(r, request);
	return r->layers > 0;
}
