/* SPDX-License-Identifier: MIT */
#include "table/lookup_wind.h"

#include <stdbool.h>

#include "table/key.h"

const struct wind_exposure_row *wind_exposure_row(enum edition e, char exposure)
{
	for (size_t i = 0; i < TABLE_WIND_EXPOSURE_COUNT; i++)
		if (table_wind_exposure[i].edition == e &&
		    table_wind_exposure[i].exposure[0] == exposure)
			return &table_wind_exposure[i];
	return NULL;
}

const struct wind_directionality_row *wind_directionality_row(enum edition e)
{
	for (size_t i = 0; i < TABLE_WIND_DIRECTIONALITY_COUNT; i++)
		if (table_wind_directionality[i].edition == e)
			return &table_wind_directionality[i];
	return NULL;
}

const struct wind_internal_row *wind_internal_row(enum edition e, const char *enclosure)
{
	for (size_t i = 0; i < TABLE_WIND_INTERNAL_COUNT; i++)
		if (table_wind_internal[i].edition == e &&
		    same_key(table_wind_internal[i].enclosure, enclosure))
			return &table_wind_internal[i];
	return NULL;
}

const struct wind_topography_row *wind_topography_row(const char *shape, char exposure)
{
	for (size_t i = 0; i < TABLE_WIND_TOPOGRAPHY_COUNT; i++)
		if (table_wind_topography[i].exposure[0] == exposure &&
		    same_key(table_wind_topography[i].shape, shape))
			return &table_wind_topography[i];
	return NULL;
}

/* A slope class runs from above one limit up to and with the next; the first one of a form holds
   its lower end too: a roof of 0 deg has no class below it. */
static bool in_class(const struct wind_gcp_row *r, double slope_deg)
{
	const bool above = !at_most(slope_deg, r->slope_gt_deg) ||
			   (r->form == WIND_GCP_FORM_FLAT && slope_deg >= 0.0);

	return above && at_most(slope_deg, r->slope_le_deg);
}

/* Figures 30.4-2A and 30.3-2A hold for flat, gable and hip roofs up to 7 deg; 30.4-5A and 30.3-5A
   send a monoslope of 3 deg or less there. */
static enum wind_gcp_form figure_form(enum wind_gcp_form form, double slope_deg)
{
	if (form == WIND_GCP_FORM_MONOSLOPE)
		return at_most(slope_deg, 3.0) ? WIND_GCP_FORM_FLAT : form;
	return at_most(slope_deg, 7.0) ? WIND_GCP_FORM_FLAT : form;
}

/* Whether a row stands before the figure of this form and slope; the table is sorted by edition,
   form and slope. */
static bool before(const struct wind_gcp_row *r, enum edition e, enum wind_gcp_form form,
		   double slope_deg)
{
	if (r->edition != e)
		return r->edition < e;
	if (r->form != form)
		return r->form < form;
	return !at_most(slope_deg, r->slope_le_deg);
}

/* Sorted, so a row of the same form and no steeper class is of the same figure. */
static bool in_block(const struct wind_gcp_row *r, enum edition e, enum wind_gcp_form form,
		     double slope_le_deg)
{
	return r->edition == e && r->form == form && r->slope_le_deg <= slope_le_deg;
}

struct wind_gcp_block wind_gcp_block(enum edition e, enum wind_gcp_form form, double slope_deg)
{
	const enum wind_gcp_form figure = figure_form(form, slope_deg);
	struct wind_gcp_block block = {NULL, 0};
	size_t low = 0, high = TABLE_WIND_GCP_COUNT;

	while (low < high) {
		const size_t middle = low + (high - low) / 2;

		if (before(&table_wind_gcp[middle], e, figure, slope_deg))
			low = middle + 1;
		else
			high = middle;
	}
	if (low == TABLE_WIND_GCP_COUNT || !in_block(&table_wind_gcp[low], e, figure, 90.0) ||
	    !in_class(&table_wind_gcp[low], slope_deg))
		return block;
	block.row = &table_wind_gcp[low];
	while (low < TABLE_WIND_GCP_COUNT &&
	       in_block(&table_wind_gcp[low], e, figure, block.row->slope_le_deg))
		low++;
	block.count = (size_t)(&table_wind_gcp[low] - block.row);
	return block;
}

const struct wind_gcp_row *wind_gcp_in_block(struct wind_gcp_block block, const char *zone,
					     enum wind_gcp_sign sign, enum wind_gcp_curve curve,
					     double A_ft2)
{
	const struct wind_gcp_row *found = NULL;

	/* The pieces of a curve stand in rising order of area: the last one that begins below A, or
	   else the first. */
	for (size_t i = 0; i < block.count; i++) {
		const struct wind_gcp_row *r = &block.row[i];

		if (r->sign == sign && r->curve == curve && same_key(r->zone, zone) &&
		    (found == NULL || r->A1_ft2 <= A_ft2))
			found = r;
	}
	return found;
}

const struct wind_gcp_row *wind_gcp_row(enum edition e, enum wind_gcp_form form, double slope_deg,
					const char *zone, enum wind_gcp_sign sign,
					enum wind_gcp_curve curve, double A_ft2)
{
	return wind_gcp_in_block(wind_gcp_block(e, form, slope_deg), zone, sign, curve, A_ft2);
}

const struct wind_overhang_row *wind_overhang_row(enum edition e, enum wind_overhang_form form,
						  double slope_deg, const char *zone,
						  enum wind_overhang_curve curve, double A_ft2)
{
	const struct wind_overhang_row *found = NULL;

	for (size_t i = 0; i < TABLE_WIND_OVERHANG_COUNT; i++) {
		const struct wind_overhang_row *r = &table_wind_overhang[i];
		const bool above = !at_most(slope_deg, r->slope_gt_deg) || r->slope_gt_deg <= 0.0;

		if (r->edition == e && r->form == form && r->curve == curve && above &&
		    at_most(slope_deg, r->slope_le_deg) && same_key(r->zone, zone) &&
		    (found == NULL || r->A1_ft2 <= A_ft2))
			found = r;
	}
	return found;
}
