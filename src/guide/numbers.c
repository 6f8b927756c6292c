/* SPDX-License-Identifier: MIT */
/* Numbers of a page that programs read: the ranges of its limits and the least sizes of its
 * flashing pieces. */
#include "guide/guide.h"

#include <math.h>
#include <string.h>

#include "guide/claim.h"

enum dimension guide_quantity_dimension(const char *name)
{
	if (strncmp(name, "slope-", 6) == 0)
		return DIM_ANGLE;
	if (strcmp(name, "weight") == 0)
		return DIM_PRESSURE;
	if (strcmp(name, "life") == 0)
		return DIM_NONE;
	return DIM_LENGTH;
}

static void widen(const xmlNode *node, const char *attribute, enum dimension d, double *low,
		  double *high)
{
	double v;

	if (!node_has(node, attribute) ||
	    quantity_parse(node_attribute(node, attribute), d, &v) != QUANTITY_OK)
		return;
	*low = isnan(*low) || v < *low ? v : *low;
	*high = isnan(*high) || v > *high ? v : *high;
}

bool guide_quantity(const struct guide_library *lib, const char *key, const char *name, double *low,
		    double *high)
{
	static const char *const attribute[] = {"value", "low", "high"};
	const struct guide_entry *e = guide_table_find(&lib->page, key);
	const xmlNode *q = node_first(e ? node_child(e->node, "limits") : NULL);

	*low = *high = (double)NAN;
	for (; q; q = node_next(q))
		if (node_is(q, "quantity") && strcmp(node_attribute(q, "name"), name) == 0)
			for (size_t i = 0; i < 3; i++)
				widen(q, attribute[i], guide_quantity_dimension(name), low, high);
	return isfinite(*low) != 0;
}

/* Widens by the extents of one edge among the pieces below node. */
static void widen_pieces(const xmlNode *node, const char *edge, double pitch, double *low,
			 double *high)
{
	for (const xmlNode *p = node_first(node); p; p = node_next(p))
		for (const xmlNode *x = node_is(p, "piece") ? node_first(p) : NULL; x;
		     x = node_next(x))
			if (node_is(x, "extent") && strcmp(node_attribute(x, "edge"), edge) == 0 &&
			    claim_holds(x, pitch))
				widen(x, "least", DIM_LENGTH, low, high);
}

bool guide_extent(const struct guide_library *lib, const char *key, const char *section,
		  const char *edge, double pitch, double *least)
{
	const struct guide_entry *e = guide_table_find(&lib->page, key);
	const xmlNode *s = e ? node_child(e->node, section) : NULL;
	double low = (double)NAN, high = (double)NAN;

	widen_pieces(s, edge, pitch, &low, &high);
	for (const xmlNode *u = node_first(s); u; u = node_next(u)) {
		const struct guide_entry *part =
			guide_table_find(&lib->part, node_attribute(u, "part"));

		if (node_is(u, "use") && part)
			widen_pieces(part->node, edge, pitch, &low, &high);
	}
	*least = high;
	return isfinite(high) != 0;
}
