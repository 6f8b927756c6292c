/* SPDX-License-Identifier: MIT */
#include "sheet/plan.h"

#include <math.h>

#include "sheet/rail_pieces.h"

#define MARGIN (3 * MM)
/* Capitals of 1.8 mm. */
#define SMALL (2.5 * MM)
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

/* How the sheet is shared between roof, dimensions and legend. */
struct share {
	bool below;   /* the legend, as a strip */
	double strip; /* its height and the room above it; 0: none */
	struct plan_room room;
	double x, y; /* what is left for the roof itself */
	struct scale scale;
};

static struct share share_of(const struct plan *p, double width, double height, bool below)
{
	const double w = p->window.x1 - p->window.x0, h = p->window.y1 - p->window.y0;
	struct share s = {.below = below};
	struct plan trial = *p;
	double last = 0;

	s.strip = p->legend && below ? plan_legend_height(p, width - 2 * MARGIN) + 3 * MM : 0;
	trial.view.scale = 1;
	/* a smaller scale may need more room for dimensions, and so a smaller scale again */
	for (int i = 0; i < 4 && (i == 0 || s.scale.ratio > last); i++) {
		last = s.scale.ratio;
		s.room = plan_dimension_room(&trial);
		s.x = width - 2 * MARGIN - s.room.left - s.room.right -
		      (p->legend && !below ? PLAN_LEGEND_WIDTH + 3 * MM : 0);
		s.y = height - 2 * MARGIN - s.room.below - s.room.above - s.strip;
		s.scale = scale_for_plan(p->s, w, h, fmax(s.x, 1 * MM), fmax(s.y, 1 * MM));
		trial.view.scale = 1 / s.scale.ratio;
	}
	return s;
}

/* The legend stands where it lets the scale be larger; at the right if that is the same. */
static struct share share_with(const struct plan *p, double width, double height)
{
	const struct share right = share_of(p, width, height, false);

	if (!p->legend)
		return right;
	const struct share below = share_of(p, width, height, true);

	return below.scale.ratio < right.scale.ratio ? below : right;
}

/* What is told elsewhere too is left out where it would cost scale. */
static struct share share_best(struct plan *p, double width, double height)
{
	p->full = false;
	const struct share bare = share_with(p, width, height);

	p->full = true;
	const struct share full = share_with(p, width, height);

	p->full = full.scale.ratio <= bare.scale.ratio;
	return p->full ? full : bare;
}

/* Everything between the dimensions and the legend, in the middle of its room. */
static void place(struct plan *p, double width, double height)
{
	const struct share s = share_best(p, width, height);
	const double w = p->window.x1 - p->window.x0, h = p->window.y1 - p->window.y0,
		     k = 1 / s.scale.ratio;

	p->scale = s.scale;
	p->below = s.below;
	p->strip = s.strip;
	p->view = (struct view){
		{MARGIN + s.room.left + (s.x - w * k) / 2 - p->window.x0 * k,
		 MARGIN + s.strip + s.room.below + (s.y - h * k) / 2 - p->window.y0 * k},
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

/* Marks in a row that a number, with the white round it, would hide. */
static void reserve_marks(const struct plan *p)
{
	const double thin = 0.3 * MM, k = p->view.scale, round = 1.3 * MM / k,
		     stroke = PLAN_JOINT / k;
	const struct pass *pass = p->s->pass;
	const int lines = p->s->r->passes > 0 ? pass->lines : 0;

	for (int i = 0; i < lines && p->s->job->rail.kind == SUPPORT_RAILS; i++) {
		const struct rail_line *rail = &pass->line[i];
		const struct box b = plan_box(p, rail->x0, rail->y, rail->x1, rail->y);

		drawing_reserve(p->d, (struct box){b.x0, b.y0 - thin, b.x1, b.y1 + thin});
	}
	for (int i = 0; i < lines; i++) {
		double at[SPLICE_MAX];
		const int n = rail_pieces_joints(p->s, i, at);

		for (int j = 0; j < n; j++)
			drawing_reserve(p->d, plan_box(p, at[j] - stroke, pass->line[i].y - stroke,
						       at[j] + stroke, pass->line[i].y + stroke));
	}
	for (int i = 0; i < p->s->job->pipes; i++) {
		const struct point at = {p->s->job->pipe[i].at, p->s->job->pipe[i].up};

		if (!isnan(at.x) && !isnan(at.y))
			drawing_reserve(p->d, plan_box(p, at.x - round, at.y - round, at.x + round,
						       at.y + round));
	}
}

struct plan plan_of(const struct sheet *s, struct drawing *d, enum plan_part part,
		    struct sheet_room room, bool legend)
{
	return (struct plan){.s = s,
			     .d = d,
			     .part = part,
			     .window = window_of(s->r, part),
			     .view = {{0, 0}, 1, 0},
			     .scale = {1, ""},
			     .size = room.narrow ? room.least : SMALL,
			     .room = room,
			     .legend = legend};
}

double plan_ratio(const struct sheet *s, enum plan_part part, double width, double height)
{
	struct drawing *d = drawing_create(s->lettering, width, height, NULL);

	if (!d)
		return HUGE_VAL;
	struct plan p =
		plan_of(s, d, part, (struct sheet_room){.width = width, .height = height}, true);
	const double ratio = share_best(&p, width, height).scale.ratio;

	drawing_destroy(d);
	return ratio;
}

double plan_size(const struct plan *p, double share)
{
	return fmax(share * p->size, p->room.least);
}

bool plan_tells_feet(const struct plan *p)
{
	return !p->room.narrow || p->part == PLAN_ARRAY;
}

double plan_dot(const struct plan *p)
{
	return plan_tells_feet(p) ? PLAN_DOT : 0.6 * PLAN_DOT;
}

void plan_name(const struct plan *p)
{
	drawing_set_title(p->d, p->part == PLAN_WHOLE ? "Roof plan" : "Layout of the attachments",
			  sheet_text(p->s, "%s, scale %s. %s", p->s->job->title, p->scale.text,
				     sheet_verdict(p->s)));
}

void plan_contents(const struct plan *p)
{
	/* a plan without legend, for the ladder, has none of what a legend would have to explain */
	if (p->legend)
		plan_zones(p);
	plan_clear_paths(p);
	plan_collectors(p);
	if (p->legend)
		plan_zone_borders(p);
	plan_rafters(p);
	plan_obstacles(p);
	plan_rails(p);
	plan_edges(p);
	reserve_marks(p);
	plan_attachments(p);
	if (plan_tells_feet(p))
		plan_numbers(p);
	plan_pipes(p);
	plan_dimensions(p);
	reserve_collectors(p);
	plan_clear_names(p);
	if (p->legend)
		plan_zone_labels(p);
	plan_slope_arrow(p);
}

struct drawing *plan_draw(const struct sheet *s, enum plan_part part, struct sheet_room room,
			  bool legend)
{
	if (room.narrow)
		return plan_draw_narrow(s, part, room, legend);
	struct drawing *d = drawing_create(s->lettering, room.width, room.height, NULL);

	if (!d)
		return NULL;
	struct plan p = plan_of(s, d, part, room, legend);

	place(&p, room.width, room.height);
	plan_name(&p);
	plan_contents(&p);
	if (p.below)
		plan_legend(&p, (struct point){MARGIN, MARGIN + p.strip - 3 * MM},
			    room.width - 2 * MARGIN);
	else if (legend)
		plan_legend(&p,
			    (struct point){room.width - MARGIN - PLAN_LEGEND_WIDTH,
					   room.height - MARGIN},
			    PLAN_LEGEND_WIDTH);
	return d;
}
