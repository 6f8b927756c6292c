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

void check_valley(struct context *c)
{
	const struct pass *pass = &c->r->pass[c->r->judged];
	const double level = c->job->roof.woven_valley;
	const double clear = wide(c->job->roof.covering) ? VALLEY_CLEAR_WIDE : VALLEY_CLEAR;
	double inside = HUGE_VAL;

	if (!isfinite(level) || c->r->passes == 0)
		return;
	for (int i = 0; i < pass->attachments; i++) {
		const double x = pass->attachment[i].x;

		/* which side the valley lies on is not asked: the nearer edge counts */
		inside = fmin(inside, fmin(x - c->r->array.x0, c->r->array.x1 - x));
	}
	if (!isfinite(inside))
		return;
	const double square = STEP(NULL, step_valley_distance, level + fmax(0, inside), c->theta);

	if (!at_least(square, clear))
		REMARK(c->r, VALLEY, square, clear);
}
