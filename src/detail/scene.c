/* SPDX-License-Identifier: MIT */
/* A scene from the layers that were read. */
#include "detail/scene.h"

#include <stdio.h>
#include <string.h>

const struct detail_layer *scene_find(const struct scene *s, const char *kind)
{
	return layer_find(s->layer, s->layers, kind);
}

bool scene_read(struct scene *s, const struct guide_library *lib,
		const struct guide_request *request, const char *of, const char *view)
{
	struct detail_layers r;

	if (!detail_layers_read(&r, lib, request, of, view))
		return false;
	s->units = request->units;
	s->resized = request->resized;
	snprintf(s->title, sizeof s->title, "%s", r.title);
	s->plan = r.plan;
	s->along = r.along;
	s->pipe = r.pipe;
	s->wall = r.wall;
	s->theta = r.theta;
	s->theta_of_job = r.theta_of_job;
	s->post_least = r.post_least;
	s->boot_too_wide = r.boot_too_wide;
	s->layers = r.layers;
	memcpy(s->layer, r.layer, sizeof s->layer);
	return true;
}
