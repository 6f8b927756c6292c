/* SPDX-License-Identifier: MIT */
#include "detail/detail.h"

#include "detail/scene.h"

static void no_title(void *context, const char *title)
{
	(void)context;
	(void)title;
}

static void no_layer(void *context, const struct guide_layer *layer)
{
	(void)context;
	(void)layer;
}

bool detail_known(const struct guide_library *lib, const char *key, const char *of,
		  const char *view)
{
	const struct guide_request request = {.key = key};
	const struct guide_layer_sink sink = {no_title, no_layer, NULL};

	return guide_drawing(lib, &request, of, view, &sink) ||
	       guide_drawing(lib, &request, of, "section", &sink);
}

struct drawing *detail_draw(const struct lettering *lettering, const struct guide_library *lib,
			    const struct guide_request *request, const char *of, const char *view)
{
	struct scene s = {.lettering = lettering};

	if (!scene_read(&s, lib, request, of, view))
		return NULL;
	if (s.plan)
		plan_frame(&s);
	else
		section_frame(&s);
	return scene_sheet(&s);
}
