/* SPDX-License-Identifier: MIT */
#include "sheet/plan.h"

#include <math.h>

#define MARGIN (3 * MM)
#define SMALL (2.2 * MM)
/* Shown round the array in the larger view, m. */
#define ROUND_ARRAY 0.45

static struct rectangle window_of(const struct result *r, enum plan_part part)
{
	struct rectangle w = {0, 0, r->plane_length, r->plane_slope};

	if (part == PLAN_WHOLE)
		return w;
	w.x0 = fmax(0, r->array.x0 - ROUND_ARRAY);
	w.y0 = fmax(0, r->array.y0 - ROUND_ARRAY);
	w.x1 = fmin(r->plane_length, r->array.x1 + ROUND_ARRAY);
	w.y1 = fmin(r->plane_slope, r->array.y1 + ROUND_ARRAY);
	return w;
}

/* What is left for the roof itself. */
static void room_left(const struct plan *p, double width, double height, bool below, double *x,
		      double *y)
{
	const struct plan_room room = plan_dimension_room(p);

	*x = width - 2 * MARGIN - room.left - room.right -
	     (p->legend && !below ? PLAN_LEGEND_WIDTH + 3 * MM : 0);
	*y = height - 2 * MARGIN - room.below - room.above -
	     (p->legend && below ? plan_legend_height(p) + 3 * MM : 0);
}

/* Everything between the dimensions and the legend, in the middle of its room. */
static void place(struct plan *p, double width, double height)
{
	const struct plan_room room = plan_dimension_room(p);
	const double w = p->window.x1 - p->window.x0, h = p->window.y1 - p->window.y0;
	double x, y, x_below, y_below;

	room_left(p, width, height, false, &x, &y);
	room_left(p, width, height, true, &x_below, &y_below);
	p->scale = scale_for_plan(p->s, w, h, x, y);
	const struct scale below = scale_for_plan(p->s, w, h, x_below, y_below);

	p->below = p->legend && y_below > 0 && below.ratio < p->scale.ratio;
	if (p->below) {
		p->scale = below;
		x = x_below;
		y = y_below;
	}
	const double k = 1 / p->scale.ratio, low = p->below ? plan_legend_height(p) + 3 * MM : 0;

	p->view = (struct view){{MARGIN + room.left + (x - w * k) / 2 - p->window.x0 * k,
				 MARGIN + low + room.below + (y - h * k) / 2 - p->window.y0 * k},
				k,
				0};
	drawing_view(p->d, p->view);
	drawing_set_main_view(p->d, p->view);
}

static void reserve_collectors(const struct plan *p)
{
	for (int i = 0; i < p->s->r->collectors; i++) {
		const struct rectangle *c = &p->s->r->collector[i];

		drawing_reserve(p->d, plan_box(p, c->x0, c->y0, c->x1, c->y1));
	}
}

/* A number on an edge hides either. */
static void reserve_edges(const struct plan *p)
{
	const double thin = 0.25 * MM;

	for (int i = 0; i < p->s->r->collectors; i++) {
		const struct rectangle *c = &p->s->r->collector[i];
		const struct box b = plan_box(p, c->x0, c->y0, c->x1, c->y1);

		drawing_reserve(p->d, (struct box){b.x0 - thin, b.y0, b.x0 + thin, b.y1});
		drawing_reserve(p->d, (struct box){b.x1 - thin, b.y0, b.x1 + thin, b.y1});
		drawing_reserve(p->d, (struct box){b.x0, b.y0 - thin, b.x1, b.y0 + thin});
		drawing_reserve(p->d, (struct box){b.x0, b.y1 - thin, b.x1, b.y1 + thin});
	}
}

struct drawing *plan_draw(const struct sheet *s, enum plan_part part, double width, double height,
			  bool legend)
{
	struct drawing *d = drawing_create(s->lettering, width, height, NULL);

	if (!d)
		return NULL;
	struct plan p = {.s = s,
			 .d = d,
			 .part = part,
			 .window = window_of(s->r, part),
			 .view = {{0, 0}, 1, 0},
			 .size = SMALL,
			 .legend = legend};

	place(&p, width, height);
	drawing_set_title(
		d, part == PLAN_WHOLE ? "Roof plan" : "Layout of the attachments",
		sheet_text(s, "%s, scale %s. %s", s->job->title, p.scale.text, sheet_verdict(s)));
	plan_zones(&p);
	plan_clear_paths(&p);
	plan_collectors(&p);
	plan_zone_borders(&p);
	plan_rafters(&p);
	plan_obstacles(&p);
	plan_rails(&p);
	plan_edges(&p);
	reserve_edges(&p);
	plan_attachments(&p);
	plan_pipes(&p);
	plan_dimensions(&p);
	reserve_collectors(&p);
	plan_zone_labels(&p);
	plan_slope_arrow(&p);
	if (legend)
		plan_legend(&p, p.below ? (struct point){MARGIN, MARGIN + plan_legend_height(&p)}
					: (struct point){width - MARGIN - PLAN_LEGEND_WIDTH,
							 height - MARGIN});
	return d;
}
