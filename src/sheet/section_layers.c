/* SPDX-License-Identifier: MIT */
/* Layers of a section: those of the library's drawing with the job's sizes in them. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "detail/layers.h"
#include "report/flashing_sizes.h"
#include "sheet/section.h"

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

void section_collect(struct section *x)
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
	add_plain_pipe(x);
}
