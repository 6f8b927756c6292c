/* SPDX-License-Identifier: MIT */
/* The column beside a plan, or the strip below it: name, scale, north, verdict, caution, and the
 * key (plan_key.c). */
#include "sheet/plan_legend.h"

#include <math.h>

#include "report/caution.h"

/* Outline of the array, in words: among the marks of the tape an edge would be taken for a foot. */
static void array_place(struct legend *c)
{
	const struct plan *p = c->p;
	const struct rectangle *a = &p->s->r->array;

	if (p->part != PLAN_ARRAY || !p->full)
		return;
	c->y -= LEGEND_LINE;
	legend_words(c, 0,
		     sheet_text(p->s, "Array %s by %s, %s from %s, %s up from the eave edge%s",
				sheet_tape(p->s, a->x1 - a->x0), sheet_tape(p->s, a->y1 - a->y0),
				sheet_tape(p->s, a->x0), plan_left_end(p), sheet_tape(p->s, a->y0),
				p->s->f.units == SYSTEM_SI ? ", all in mm" : ""));
	c->y += LEGEND_LINE;
}

static void head(struct legend *c)
{
	const struct plan *p = c->p;

	drawing_text(p->d, LAYER_TEXT, (struct point){c->x, c->y},
		     (struct lettering_spec){3.2 * MM, true, ANCHOR_LEFT, ANCHOR_MIDDLE, 0, false},
		     drawing_title(p->d));
	c->y -= 1.3 * LEGEND_LINE;
	drawing_text(p->d, LAYER_TEXT, (struct point){c->x, c->y}, legend_plain(p, false),
		     sheet_text(p->s, "Scale %s", p->scale.text));
	c->y -= LEGEND_LINE;
	drawing_text(p->d, LAYER_TEXT, (struct point){c->x, c->y}, legend_plain(p, false),
		     sheet_text(p->s, "Pitch %s, falling down the sheet", plan_pitch(p->s)));
	array_place(c);
	c->y -= 1.2 * LEGEND_LINE;
	c->y = plan_scale_and_north(p, (struct point){c->x, c->y}, c->width);
}

/* Where its line runs is not among the job's facts. */
static const char *valley(const struct sheet *s)
{
	if (isnan(s->job->roof.woven_valley))
		return "";
	return sheet_text(s, " Not drawn: a valley %s%s along the eave from the array.",
			  sheet_tape(s, s->job->roof.woven_valley),
			  s->f.units == SYSTEM_SI ? " mm" : "");
}

static void about(struct legend *c)
{
	const struct plan *p = c->p;
	const double width = c->width - 2 * MM;

	c->y = sheet_paragraph(p->s, p->d, (struct point){c->x, c->y + 1 * MM}, width, p->size,
			       sheet_text(p->s, "%s. Job %s: %s.%s", sheet_verdict(p->s),
					  p->s->fingerprint, p->s->job->title, valley(p->s)));
	c->y = sheet_paragraph(p->s, p->d, (struct point){c->x, c->y}, width, plan_size(p, 0.8),
			       caution_result) -
	       0.4 * LEGEND_LINE;
}

/* Parts below each other. */
static double column(const struct plan *p, struct point at, double width,
		     void (*const *part)(struct legend *c), int n)
{
	const struct view open = drawing_view_open(p->d);
	struct legend c = {p, at.x, at.y - LEGEND_LINE / 2, width};

	drawing_view(p->d, VIEW_PAPER);
	for (int i = 0; i < n; i++)
		part[i](&c);
	drawing_view(p->d, open);
	return c.y + LEGEND_LINE / 2;
}

double plan_legend_above(const struct plan *p, struct point upper_left, double width)
{
	return column(p, upper_left, width, (void (*const[])(struct legend *)){head}, 1);
}

static void gap(struct legend *c)
{
	c->y -= LEGEND_LINE;
}

double plan_legend_below(const struct plan *p, struct point upper_left, double width)
{
	return column(p, upper_left, width,
		      (void (*const[])(struct legend *)){legend_symbols, legend_zones, gap, about},
		      4);
}

#define PARTS 4

/* Parts of a strip stand beside each other; where four have no room the first two share a column.
 */
double plan_legend(const struct plan *p, struct point upper_left, double width)
{
	typedef void part_fn(struct legend * c);
	static part_fn *const part[PARTS] = {head, about, legend_symbols, legend_zones};
	const int columns = !p->below ? 1 : width >= PARTS * PLAN_LEGEND_WIDTH ? PARTS : PARTS - 1;
	const struct view open = drawing_view_open(p->d);
	struct legend c = {0};
	double low = upper_left.y;

	drawing_view(p->d, VIEW_PAPER);
	for (int i = 0, last = -1; i < PARTS; i++) {
		const int column = columns == PARTS ? i : columns == 1 ? 0 : i < 2 ? 0 : i - 1;

		if (column != last)
			c = (struct legend){p, upper_left.x + column * width / columns,
					    upper_left.y - 2 * MM + (i > 1 ? 0.4 * LEGEND_LINE : 0),
					    width / columns - (columns > 1 ? 3 * MM : 0)};
		last = column;
		part[i](&c);
		low = fmin(low, c.y + LEGEND_LINE / 2);
	}
	drawing_view(p->d, open);
	return low;
}

double plan_legend_height(const struct plan *p, double width)
{
	struct plan trial = *p;

	trial.below = true;
	trial.d = drawing_create(p->s->lettering, width, 1, NULL);
	if (!trial.d)
		return 0;
	const double height = 1 - plan_legend(&trial, (struct point){0, 1}, width);

	drawing_destroy(trial.d);
	return height;
}
