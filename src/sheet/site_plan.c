/* SPDX-License-Identifier: MIT */
#include "sheet/site_plan.h"

#include <math.h>

#include "drawing/dimension.h"
#include "sheet/site_words.h"

#define ROUND (16 * MM) /* for dimensions, all round the house and its lines */

static bool on_end(const struct sheet *s)
{
	return s->job->building.form == FORM_HIP && s->job->building.plane == PLANE_END;
}

/* Of the whole roof across the eave, on plan. */
static double depth(const struct sheet *s)
{
	const struct job_building *b = &s->job->building;
	const double across = on_end(s) ? b->length : b->width;

	if (b->form == FORM_GABLE || b->form == FORM_HIP)
		return across + 2 * b->eave_overhang;
	return fmax(across, s->r->plane_slope * cos(s->job->roof.pitch));
}

static void set_lines(struct place *p)
{
	const struct job_building *b = &p->s->job->building;
	const double given[SIDES] = {b->line_below, b->line_behind, b->line_left, b->line_right};
	const double most = fmax(b->length, b->width);

	for (int i = 0; i < SIDES; i++) {
		p->line[i] = fmin(given[i], isnan(given[i]) ? given[i] : most);
		p->shortened[i] = given[i] > most;
	}
}

static struct place place_of(const struct sheet *s, struct drawing *d)
{
	const struct job_building *b = &s->job->building;
	const double along = on_end(s) ? b->width : b->length,
		     across = on_end(s) ? b->length : b->width;
	struct place p = {.s = s, .d = d};
	const double w = s->r->plane_length, h = depth(s);

	p.roof = (struct rectangle){0, 0, w, h};
	p.walls = (struct rectangle){(w - along) / 2, (h - across) / 2, (w + along) / 2,
				     (h + across) / 2};
	set_lines(&p);
	return p;
}

/* Everything that is drawn to scale. */
static struct rectangle bounds(const struct place *p)
{
	struct rectangle r = p->roof;

	if (!isnan(p->line[BELOW]))
		r.y0 = fmin(r.y0, p->walls.y0 - p->line[BELOW]);
	if (!isnan(p->line[BEHIND]))
		r.y1 = fmax(r.y1, p->walls.y1 + p->line[BEHIND]);
	if (!isnan(p->line[LEFT]))
		r.x0 = fmin(r.x0, p->walls.x0 - p->line[LEFT]);
	if (!isnan(p->line[RIGHT]))
		r.x1 = fmax(r.x1, p->walls.x1 + p->line[RIGHT]);
	return r;
}

static void open_view(struct place *p)
{
	const struct rectangle r = bounds(p);
	const double w = r.x1 - r.x0, h = r.y1 - r.y0;
	const double room_x = drawing_width(p->d) - 2 * SITE_MARGIN - PLAN_LEGEND_WIDTH - 2 * ROUND,
		     room_y = drawing_height(p->d) - 2 * SITE_MARGIN - 2 * ROUND;
	const struct scale scale = scale_for_plan(p->s, w, h, room_x, room_y);
	const double k = 1 / scale.ratio;
	const struct view view = {{SITE_MARGIN + ROUND + (room_x - w * k) / 2 - r.x0 * k,
				   SITE_MARGIN + ROUND + (room_y - h * k) / 2 - r.y0 * k},
				  k,
				  0};

	p->plan = (struct plan){
		.s = p->s, .d = p->d, .view = view, .scale = scale, .size = SITE_TEXT};
	drawing_view(p->d, view);
	drawing_set_main_view(p->d, view);
}

static void line(const struct place *p, enum drawing_layer layer, double x0, double y0, double x1,
		 double y1)
{
	drawing_line(p->d, layer, (struct point){x0, y0}, (struct point){x1, y1});
}

/* Ridge and hips by the array's plane; the far side is its mirror image. */
static void ridges(const struct place *p)
{
	const struct polygon *o = &p->s->r->outline;
	const double c = cos(p->s->job->roof.pitch), w = p->roof.x1, h = p->roof.y1;
	struct point top[2];
	int n = 0;

	if (p->s->job->building.form == FORM_GABLE)
		line(p, LAYER_RIDGE, 0, h / 2, w, h / 2);
	if (p->s->job->building.form != FORM_HIP)
		return;
	for (int i = 0; i < o->n && n < 2; i++)
		if (o->at[i].y > 1e-6)
			top[n++] = (struct point){o->at[i].x, o->at[i].y * c};
	if (n == 0)
		return;
	const struct point left = n > 1 && top[1].x < top[0].x ? top[1] : top[0],
			   right = n > 1 && top[1].x < top[0].x ? top[0] : top[n - 1];

	line(p, LAYER_RIDGE, 0, 0, left.x, left.y);
	line(p, LAYER_RIDGE, w, 0, right.x, right.y);
	line(p, LAYER_RIDGE, 0, h, left.x, h - left.y);
	line(p, LAYER_RIDGE, w, h, right.x, h - right.y);
	line(p, LAYER_RIDGE, left.x, left.y, on_end(p->s) ? left.x : right.x,
	     on_end(p->s) ? h - left.y : right.y);
}

static void plane(const struct place *p)
{
	const struct result *r = p->s->r;
	const double c = cos(p->s->job->roof.pitch);
	struct polygon seen = r->outline;

	for (int i = 0; i < seen.n; i++)
		seen.at[i].y *= c;
	if (seen.n > 2)
		drawing_shape(p->d, LAYER_THIN, 0, FILL_LIGHT, seen.at, seen.n);
	for (int i = 0; i < r->collectors; i++)
		drawing_rectangle(p->d, LAYER_COLLECTOR, FILL_WHITE, r->collector[i].x0,
				  r->collector[i].y0 * c, r->collector[i].x1,
				  r->collector[i].y1 * c);
}

static void house(const struct place *p)
{
	const struct rectangle *w = &p->walls;
	const struct point wall[] = {
		{w->x0, w->y0}, {w->x1, w->y0}, {w->x1, w->y1}, {w->x0, w->y1}};

	plane(p);
	drawing_rectangle(p->d, LAYER_EDGE, FILL_NONE, p->roof.x0, p->roof.y0, p->roof.x1,
			  p->roof.y1);
	ridges(p);
	for (int i = 0; i < 4; i++)
		drawing_line_as(p->d, LAYER_MATERIAL, 0.25 * MM, DASH_DASHED, wall[i],
				wall[(i + 1) % 4]);
}

/* The distance is said to scale or, with a break in words, shortened. */
static const char *distance(const struct place *p, enum side side, double given)
{
	return sheet_text(p->s, "%s%s", sheet_tape(p->s, given),
			  p->shortened[side] ? ", drawn shorter" : "");
}

static void property_lines(const struct place *p)
{
	const struct job_building *b = &p->s->job->building;
	const struct rectangle r = bounds(p), *w = &p->walls;
	const double over = 4 * MM / p->plan.view.scale, x = (w->x0 + w->x1) / 2,
		     y = (w->y0 + w->y1) / 2;
	const double at[SIDES] = {w->y0 - p->line[BELOW], w->y1 + p->line[BEHIND],
				  w->x0 - p->line[LEFT], w->x1 + p->line[RIGHT]};
	const double given[SIDES] = {b->line_below, b->line_behind, b->line_left, b->line_right};

	for (int i = 0; i < SIDES; i++) {
		const bool level = i == BELOW || i == BEHIND;
		const struct point from = level ? (struct point){r.x0 - over, at[i]}
						: (struct point){at[i], r.y0 - over},
				   to = level ? (struct point){r.x1 + over, at[i]}
					      : (struct point){at[i], r.y1 + over};
		const double wall = i == BELOW    ? w->y0
				    : i == BEHIND ? w->y1
				    : i == LEFT   ? w->x0
						  : w->x1;
		const struct point a = level ? (struct point){x, wall} : (struct point){wall, y},
				   e = level ? (struct point){x, at[i]} : (struct point){at[i], y};

		if (isnan(p->line[i]))
			continue;
		drawing_line_as(p->d, LAYER_FRAME, 0.5 * MM, DASH_DASH_DOT, from, to);
		dimension_between(p->d, a, e, 0, distance(p, (enum side)i, given[i]));
	}
}

static void dimensions(const struct place *p)
{
	const struct rectangle r = bounds(p), *w = &p->walls;
	const double k = p->plan.view.scale, below = (w->y0 - r.y0) * k + 8 * MM,
		     left = (w->x0 - r.x0) * k + 8 * MM;

	dimension_between(p->d, (struct point){w->x0, w->y0}, (struct point){w->x1, w->y0}, -below,
			  sheet_text(p->s, "%s wall to wall", sheet_tape(p->s, w->x1 - w->x0)));
	dimension_between(p->d, (struct point){w->x0, w->y0}, (struct point){w->x0, w->y1}, left,
			  sheet_text(p->s, "%s wall to wall", sheet_tape(p->s, w->y1 - w->y0)));
}

struct drawing *site_plan_draw(const struct sheet *s, double width, double height)
{
	struct drawing *d = drawing_create(s->lettering, width, height, NULL);

	if (!d)
		return NULL;
	struct place p = place_of(s, d);

	open_view(&p);
	drawing_set_title(d, "House and place",
			  sheet_text(s, "%s, scale %s. %s", s->job->title, p.plan.scale.text,
				     sheet_verdict(s)));
	house(&p);
	property_lines(&p);
	dimensions(&p);
	site_words(&p);
	return d;
}
