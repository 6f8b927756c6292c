/* SPDX-License-Identifier: MIT */
/* What each thing in the materials list must be, in words; and what the list leaves out. Internal to src/sheet. */
#ifndef RP_SHEET_MATERIAL_NOTE_H
#define RP_SHEET_MATERIAL_NOTE_H

#include "guide/sizes.h"
#include "sheet/sheet.h"

/* "lag screws, 5/16 in by 4 in under the head, 2-1/2 in of thread or more, with washer" */
const char *material_screw(const struct sheet *s);
const char *material_foot_flashing(const struct sheet *s, const struct guide_sizes *sizes);
/* Each size of pipe by itself: no boot fits all of them. */
const char *material_pipe_flashing(const struct sheet *s);
/* Paragraphs under the list: what belongs to the job and is not in it. */
void material_left_out(const struct sheet *s, struct document *d);

#endif
