/* SPDX-License-Identifier: MIT */
#include "sheet/site_plan.h"

#include <math.h>

#include "drawing/dimension.h"
#include "sheet/site_words.h"

#define ROUND (16 * MM) /* for dimensions, all round the house and its lines */
#define ROUND_NARROW (12 * MM)

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

static void set_view(struct place *p, struct scale scale, struct view view)
{
	p->plan = (struct plan){.s = p->s,
				.d = p->d,
				.view = view,
				.scale = scale,
				.size = site_text(p),
				.room = p->room};
	drawing_view(p->d, view);
	drawing_set_main_view(p->d, view);
}

static void name(const struct place *p)
{
	drawing_set_title(p->d, "House and place",
			  sheet_text(p->s, "%s, scale %s. %s", p->s->job->title, p->plan.scale.text,
				     sheet_verdict(p->s)));
}

/* Further room at the left or below for what a short distance to a property line there is called:
   beyond that line, before the house's own dimension. */
static double line_room(const struct place *p, enum side side)
{
	return isnan(p->line[side]) ? 0 : 10 * MM;
}

/* Under the words above it, as wide as the room; the y below it and its dimensions. */
static double open_view_narrow(struct place *p)
{
	const struct rectangle r = bounds(p);
	const double w = r.x1 - r.x0, h = r.y1 - r.y0, left = ROUND_NARROW + line_room(p, LEFT),
		     room = p->room.width - 2 * NARROW_MARGIN - left - ROUND_NARROW;
	const struct scale scale = scale_for_screen(p->s, w, h, room, p->room.height / 4);
	const double k = 1 / scale.ratio;

	set_view(p, scale, (struct view){{0, 0}, k, 0});
	name(p);
	/* no dimension stands above the house */
	const double y = site_words_above(p) - 5 * MM;

	set_view(p, scale,
		 (struct view){{NARROW_MARGIN + left + (room - w * k) / 2 - r.x0 * k, y - r.y1 * k},
			       k,
			       0});
	return y - h * k - line_room(p, BELOW) - ROUND_NARROW;
}

static void open_view(struct place *p)
{
	const struct rectangle r = bounds(p);
	const double w = r.x1 - r.x0, h = r.y1 - r.y0, left = ROUND + line_room(p, LEFT),
		     below = ROUND + line_room(p, BELOW);
	const double room_x = drawing_width(p->d) - 2 * SITE_MARGIN - PLAN_LEGEND_WIDTH - left -
			      ROUND,
		     room_y = drawing_height(p->d) - 2 * SITE_MARGIN - below - ROUND;
	const struct scale scale = scale_for_plan(p->s, w, h, room_x, room_y);
	const double k = 1 / scale.ratio;
	const struct view view = {{SITE_MARGIN + left + (room_x - w * k) / 2 - r.x0 * k,
				   SITE_MARGIN + below + (room_y - h * k) / 2 - r.y0 * k},
				  k,
				  0};

	set_view(p, scale, view);
	name(p);
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

/* Thin: at this scale there is no room for two lines between two collectors. */
static void collector(const struct place *p, const struct rectangle *r, double c)
{
	const struct point at[] = {
		{r->x0, r->y0 * c}, {r->x1, r->y0 * c}, {r->x1, r->y1 * c}, {r->x0, r->y1 * c}};

	drawing_shape(p->d, LAYER_COLLECTOR, 0.18 * MM, FILL_WHITE, at, 4);
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
		collector(p, &r->collector[i], c);
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
		dimension_between_as(p->d, a, e, 0, site_text(p),
				     distance(p, (enum side)i, given[i]));
	}
}

/* With its words where they fit on the line. */
static const char *wall_to_wall(const struct place *p, double m)
{
	const char *tape = sheet_tape(p->s, m), *words = sheet_text(p->s, "%s wall to wall", tape);

	return sheet_width(p->s, words, site_text(p)) + 3 * MM < m * p->plan.view.scale ? words
											: tape;
}

/* How far beyond the property line its distance is written; 0 where it fits on the way there. */
static double overshoot(const struct place *p, enum side side, double given)
{
	if (isnan(p->line[side]))
		return 0;
	const double wide = sheet_width(p->s, distance(p, side, given), site_text(p)) + 4 * MM;

	return wide > p->line[side] * p->plan.view.scale ? wide : 0;
}

static void dimensions(const struct place *p)
{
	const struct job_building *b = &p->s->job->building;
	const struct rectangle r = bounds(p), *w = &p->walls;
	const double k = p->plan.view.scale,
		     below = (w->y0 - r.y0) * k +
			     fmax(8 * MM, 4 * MM + overshoot(p, BELOW, b->line_below)),
		     left = (w->x0 - r.x0) * k +
			    fmax(8 * MM, 4 * MM + overshoot(p, LEFT, b->line_left));

	dimension_between_as(p->d, (struct point){w->x0, w->y0}, (struct point){w->x1, w->y0},
			     -below, site_text(p), wall_to_wall(p, w->x1 - w->x0));
	dimension_between_as(p->d, (struct point){w->x0, w->y0}, (struct point){w->x0, w->y1}, left,
			     site_text(p), wall_to_wall(p, w->y1 - w->y0));
}

struct drawing *site_plan_draw(const struct sheet *s, struct sheet_room room)
{
	struct drawing *d = drawing_create(s->lettering, room.width, room.height, NULL);
	double low = 0;

	if (!d)
		return NULL;
	struct place p = place_of(s, d);

	p.room = room;
	if (room.narrow)
		low = open_view_narrow(&p);
	else
		open_view(&p);
	house(&p);
	property_lines(&p);
	dimensions(&p);
	if (room.narrow)
		return drawing_cut(d, site_words_below(&p, low) - NARROW_MARGIN, NULL);
	site_words(&p);
	return d;
}
