/* SPDX-License-Identifier: MIT */
#include "table/lookup_fastener.h"

#include <math.h>
#include <stddef.h>

#include "table/key.h"

/* Numbered screws are printed to 0.001 in, and the closest two of a table stand 0.013 in apart. */
#define SAME_IN 1e-3

const struct wood_screw_row *wood_screw_row(double D_in)
{
	for (size_t i = 0; i < TABLE_WOOD_SCREW_COUNT; i++)
		if (fabs(table_wood_screw[i].D_in - D_in) <= SAME_IN)
			return &table_wood_screw[i];
	return NULL;
}

const struct nail_row *nail_row(const char *kind, const char *penny)
{
	for (size_t i = 0; i < TABLE_NAIL_COUNT; i++)
		if (same_key(table_nail[i].kind, kind) && same_key(table_nail[i].penny, penny))
			return &table_nail[i];
	return NULL;
}

const struct sheet_screw_row *sheet_screw_row(double d_in)
{
	for (size_t i = 0; i < TABLE_SHEET_SCREW_COUNT; i++)
		if (fabs(table_sheet_screw[i].d_in - d_in) <= SAME_IN)
			return &table_sheet_screw[i];
	return NULL;
}
