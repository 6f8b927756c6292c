/* SPDX-License-Identifier: MIT */
/* How near the feet come to a valley. A flashing keeps 18 in square to the valley's line, 24 in where the valley is woven (strip
   shingles) or the covering is tile or slate: half the widths of the code's linings and a margin (our rule). */
#include "check/valley.h"

#include <math.h>
#include <string.h>

#include "roof/flashing.h"

static bool wide(const char *covering)
{
	static const char *const keys[] = { "asphalt-strip", "slate", "concrete-tile", "clay-" };

	for (size_t i = 0; i < sizeof keys / sizeof *keys; i++)
		if (strncmp(covering, keys[i], strlen(keys[i])) == 0)
			return true;
	return false;
}

double valley_clear(const char *covering)
{
	return wide(covering) ? VALLEY_CLEAR_WIDE : VALLEY_CLEAR;
}

void check_valley(struct context *c)
{
	const struct pass *pass = &c->r->pass[c->r->judged];
	const struct border_room *worst = NULL;

	if (c->r->passes == 0)
		return;
	for (int i = 0; i < pass->attachments; i++) {
		const struct border_room *room = &pass->attachment[i].course.border[BORDER_VALLEY];

		if (border_close(room) && (!worst || room->distance < worst->distance))
			worst = room;
	}
	if (worst)
		REMARK(c->r, VALLEY, worst->distance, worst->least);
}
