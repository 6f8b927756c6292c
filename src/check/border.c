/* SPDX-License-Identifier: MIT */
/* How much room the flashing of each foot has to the borders of the roof plane. Valleys: 18 in square to
   the line, 24 in where it is woven or the covering is tile or slate (derived from the widths of the
   code's linings). Elsewhere common practice: wall 12 in; hip and ridge 12 in or a course, whichever is
   more; rake 12 in; eave 12 in above two courses. A clamp on a seam makes no hole: it keeps away from
   valleys alone. */
#include <math.h>
#include <string.h>

#include "check/courses.h"
#include "check/valley.h"
#include "check/wind_rule.h"
#include "roof/flashing.h"

#define FOOT_ROOM (12.0 * M_PER_IN)

#define B(id, words, key) words,
static const char *const words_of[] = {BORDERS(B)};
#undef B
#define B(id, words, key) key,
static const char *const key_of[] = {BORDERS(B)};
#undef B

const char *border_words(enum border border)
{
	return words_of[border];
}

const char *border_key(enum border border)
{
	return key_of[border];
}

bool border_close(const struct border_room *room)
{
	return isfinite(room->distance) && !at_least(room->distance, room->least);
}

static double known(double x)
{
	return isfinite(x) ? x : 0;
}

/* Level distance from the array's edge to something beside it, as the flashing has it. Which side it lies
   on is not asked: the nearer edge counts. */
static double beside(const struct context *c, double from_array, double x, double side)
{
	const double inside = fmin(x - c->r->array.x0, c->r->array.x1 - x);

	return fmax(0, from_array + fmax(0, inside) - side);
}

static void plane_borders(const struct context *c, const struct rectangle *plate, double E, struct border_room *room)
{
	const enum roof_form form = c->job->building.form;
	const bool end = form == FORM_HIP && c->job->building.plane == PLANE_END;
	const double course = fmax(FOOT_ROOM, E);

	if (form == FORM_HIP)
		room[BORDER_HIP] = (struct border_room){plane_to_hip(c, plate), course};
	else if (form == FORM_GABLE || form == FORM_MONOSLOPE || form == FORM_FLAT)
		room[BORDER_RAKE] = (struct border_room){fmin(plate->x0, c->r->plane_length - plate->x1), FOOT_ROOM};
	if (form == FORM_GABLE || (form == FORM_HIP && !end))
		room[BORDER_RIDGE] = (struct border_room){c->r->plane_slope - plate->y1, course};
	room[BORDER_EAVE] = (struct border_room){plate->y0, 2 * E + FOOT_ROOM};
}

void borders_fill(const struct context *c, const struct courses *k, struct attachment *a)
{
	const struct job_roof *roof = &c->job->roof;
	struct course_place *p = &a->course;
	struct border_room *room = p->border;
	const bool clamp = c->job->fastener.kind == FASTENER_SEAM_CLAMP;
	const double side = clamp ? 0 : known(p->plate_side);
	const struct rectangle plate = {a->x - side, a->y - known(p->plate_down), a->x + side, a->y + known(p->plate_up)};

	for (int i = 0; i < BORDER_COUNT; i++)
		room[i] = (struct border_room){(double)NAN, (double)NAN};
	if (isfinite(roof->woven_valley))
		room[BORDER_VALLEY] = (struct border_room){
			STEP(NULL, step_valley_distance, beside(c, roof->woven_valley, a->x, side), c->theta),
			valley_clear(roof->covering)};
	if (clamp)
		return;
	if (isfinite(roof->wall))
		room[BORDER_WALL] = (struct border_room){beside(c, roof->wall, a->x, side), FOOT_ROOM};
	plane_borders(c, &plate, k->E > 0 ? k->E : 0, room);
}

void borders_tell(struct context *c, const struct pass *pass)
{
	for (int b = BORDER_VALLEY + 1; b < BORDER_COUNT; b++) {
		int close = 0, first = 0;

		for (int i = pass->attachments - 1; i >= 0; i--)
			if (border_close(&pass->attachment[i].course.border[b])) {
				close++;
				first = i;
			}
		if (close > 0)
			REMARK_T(c->r, BORDER_CLOSE,
				 (close, pass->attachment[first].number, pass->attachment[first].course.border[b].least),
				 border_words((enum border)b));
	}
}
