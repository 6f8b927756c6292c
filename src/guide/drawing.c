/* SPDX-License-Identifier: MIT */
/* Hands out a drawing layer by layer with its sizes in SI, those of the job where it knows them. */
#include "guide/guide.h"

#include <math.h>
#include <string.h>

#include "guide/claim.h"
#include "guide/fill.h"

/* As a picture and its key show it: as the lists print it. */
static double of_job_as_printed(const struct guide_request *request, const struct guide_size_row *row)
{
	const double value = guide_size_value(request->sizes, row);

	return row && row->style == GUIDE_LEAST && isfinite(value)
		       ? guide_least(value, request->units)
		       : value;
}

static void add_size(struct guide_layer *layer, const xmlNode *size,
		     const struct guide_request *request)
{
	const char *from = node_attribute(size, "from");
	const struct guide_size_row *row = guide_size_find(from, strlen(from));
	const double of_job = of_job_as_printed(request, row);
	double value = (double)NAN;

	if (layer->sizes == GUIDE_LAYER_SIZES ||
	    quantity_parse(node_attribute(size, "value"), DIM_LENGTH, &value) != QUANTITY_OK)
		return;
	layer->size[layer->sizes].name = node_attribute(size, "name");
	layer->size[layer->sizes].of_job = isfinite(of_job) != 0;
	layer->size[layer->sizes].value = isfinite(of_job) ? of_job : value;
	layer->sizes++;
}

static void hand_out_layer(const xmlNode *node, const struct guide_request *request,
			   const struct guide_layer_sink *sink)
{
	const char *label = node_attribute(node, "label");
	char filled[GUIDE_TEXT_MAX];

	if (guide_fill(filled, sizeof filled, label, request->sizes, request->units, NULL) ==
	    GUIDE_FILLED)
		label = filled;
	struct guide_layer layer = {.kind = node_attribute(node, "kind"),
				    .label = label,
				    .woven = node_has(node, "woven"),
				    .plumb = node_has(node, "plumb"),
				    .turned = node_has(node, "turned"),
				    .status = claim_status(node)};

	for (const xmlNode *s = node_first(node); s; s = node_next(s))
		if (node_is(s, "size"))
			add_size(&layer, s, request);
	sink->layer(sink->context, &layer);
}

static const xmlNode *find_drawing(const struct guide_library *lib, const char *key, const char *of, const char *view)
{
	const struct guide_entry *e = guide_table_find(&lib->page, key);
	const xmlNode *d = e ? node_first(e->node) : NULL;

	while (d && !(node_is(d, "drawing") && strcmp(node_attribute(d, "of"), of) == 0 &&
		      strcmp(node_attribute(d, "view"), view) == 0))
		d = node_next(d);
	return d;
}

bool guide_drawing_along(const struct guide_library *lib, const char *key, const char *of, bool *along)
{
	const xmlNode *d = find_drawing(lib, key, of, "section");

	*along = d && strcmp(node_attribute(d, "cut"), "along-course") == 0;
	return d != NULL;
}

bool guide_drawing(const struct guide_library *lib, const struct guide_request *request,
		   const char *of, const char *view, const struct guide_layer_sink *sink)
{
	const xmlNode *d = find_drawing(lib, request->key, of, view);

	if (!d)
		return false;
	sink->title(sink->context, node_attribute(d, "title"));
	for (const xmlNode *layer = node_first(d); layer; layer = node_next(layer))
		if (node_is(layer, "layer"))
			hand_out_layer(layer, request, sink);
	return true;
}
