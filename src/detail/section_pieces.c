/* SPDX-License-Identifier: MIT */
/* What lies along the roof: framing, deck, sheets, pieces of covering, plates and patches. */
#include <math.h>

#include "detail/scene.h"

#define IN(x) ((x)*M_PER_IN)
/* Sheets thinner than this on paper become a heavy line. */
#define THIN_SHEET (0.7 * MM)
#define HEAVY (0.6 * MM)

static void hatched(struct scene *s, double u0, double v0, double u1, double v1, double angle,
		    double pitch)
{
	const struct point at[] = {{fmax(u0, s->u0), v0},
				   {fmin(u1, s->u1), v0},
				   {fmin(u1, s->u1), v1},
				   {fmax(u0, s->u0), v1}};

	if (at[1].x > at[0].x)
		drawing_hatch(s->d, LAYER_HATCH, at, 4, angle, pitch);
}

static void flat_sheet(struct scene *s, double u0, double u1, double foot, double t, enum fill fill,
		       enum drawing_dash dash)
{
	if (t / s->paper * MM < THIN_SHEET)
		scene_line(s, HEAVY, dash,
			   (const struct point[]){{u0, foot + t / 2}, {u1, foot + t / 2}}, 2);
	else
		scene_box(s, fill, u0, foot, u1, foot + t);
}

/* Rafter or purlin: along the section, or cut across at every place. */
static void framing(struct scene *s, struct detail_layer *l)
{
	const double top = l->foot + l->thickness, low = fmax(l->foot, s->v0);

	if (!s->along && layer_is(l, "purlin")) {
		const double place[] = {-l->down, l->up};

		for (int i = 0; i < 2; i++)
			if (isfinite(place[i]))
				scene_box(s, FILL_LIGHT, place[i] - l->side, low,
					  place[i] + l->side, top);
		scene_point(l, known(l->up, 0), (low + top) / 2);
		return;
	}
	if (s->along && l->side < IN(6)) {
		const double spacing = known(l->spacing, 4 * (s->u1 - s->u0));

		for (double u = 0; u < s->u1 + l->side; u += spacing) {
			scene_box(s, FILL_LIGHT, u - l->side, low, u + l->side, top);
			if (u > 0)
				scene_box(s, FILL_LIGHT, -u - l->side, low, -u + l->side, top);
		}
		scene_point(l, 0, (low + top) / 2);
		return;
	}
	scene_shape(s, 0, FILL_LIGHT,
		    (const struct point[]){{s->u0, low}, {s->u1, low}, {s->u1, top}, {s->u0, top}},
		    4);
	scene_line(s, 0.25 * MM, DASH_SOLID, (const struct point[]){{s->u0, top}, {s->u1, top}}, 2);
	scene_line(s, 0.25 * MM, low > l->foot ? DASH_DASH_DOT : DASH_SOLID,
		   (const struct point[]){{s->u0, low}, {s->u1, low}}, 2);
	scene_point(l, s->u0 + 0.12 * (s->u1 - s->u0), (low + top) / 2);
}

static void boards(struct scene *s, struct detail_layer *l, double first)
{
	double shown = (double)NAN;

	for (double u = first + ceil((s->u0 - first - l->breadth) / l->spacing) * l->spacing;
	     u < s->u1; u += l->spacing) {
		if (fmin(u + l->breadth, s->u1) - fmax(u, s->u0) < IN(0.3))
			continue;
		scene_box(s, FILL_WHITE, u, l->foot, u + l->breadth, l->foot + l->thickness);
		hatched(s, u, l->foot, u + l->breadth, l->foot + l->thickness, 1.0, 0.9 * MM);
		if (u > s->u0 && isnan(shown))
			shown = u + l->breadth / 2;
	}
	scene_point(l, known(shown, 0), l->foot + l->thickness / 2);
}

static void lapped(struct scene *s, struct detail_layer *l)
{
	const struct lap *p = &s->lap;
	double butt = p->butt;

	while (butt + p->L > s->u0)
		butt -= p->E;
	for (; butt < s->u1; butt += p->E) {
		const double head = butt + p->L;

		scene_shape(s, 0.2 * MM, layer_is(l, "tile") ? FILL_LIGHT : FILL_WHITE,
			    (const struct point[]){{butt, lap_under(p, butt, butt)},
						   {head, lap_under(p, butt, head)},
						   {head, lap_top(p, butt, head)},
						   {butt, lap_top(p, butt, butt)}},
			    4);
	}
	scene_point(l, p->butt + fmin(1.0 * p->E, (s->u1 - p->butt) / 2),
		    lap_top(p, p->butt, p->butt + 0.3 * p->E));
	l->at.y = lap_top(p, p->butt, l->at.x) - p->t / 2;
}

/* A sheet woven into the pieces, from u0 to u1, raised by `more`. */
static void woven(struct scene *s, double u0, double u1, double more, double width,
		  enum drawing_dash dash, double turn_up)
{
	const struct lap *p = &s->lap;
	double butt = p->butt - p->E, a = u0;
	struct point end;

	while (butt > u0)
		butt -= p->E;
	for (butt += p->E; a < u1 - 1e-9;) {
		/* ways end at the butt of the hole's own piece and at its head */
		const double own = p->butt - p->E, head = own + p->L;
		double b = u1;

		if (a < own - 1e-9 && own < b)
			b = own;
		else if (a < head - 1e-9 && head < b)
			b = head;
		scene_line(s, width, dash,
			   (const struct point[]){{a, lap_woven(p, a + 1e-6) + more},
						  {b, lap_woven(p, b - 1e-6) + more}},
			   2);
		if (b < u1 - 1e-9)
			scene_line(s, width, dash,
				   (const struct point[]){{b, lap_woven(p, b - 1e-6) + more},
							  {b, lap_woven(p, b + 1e-6) + more}},
				   2);
		a = b;
	}
	end = (struct point){u1, lap_woven(p, u1 - 1e-6) + more};
	if (turn_up > 0)
		scene_line(s, width, dash,
			   (const struct point[]){end, {u1 - turn_up, end.y + turn_up}}, 2);
}

/* Strips laid between the courses: each lies on the lowest piece that is there at its lower edge.
 */
static void strips(struct scene *s, struct detail_layer *l)
{
	const struct lap *p = &s->lap;

	for (double u = l->butt_up - 4 * p->E; u < s->u1; u += p->E) {
		double butt = p->butt - 6 * p->E;

		while (butt + p->L <= u)
			butt += p->E;
		const double head = fmin(butt + p->L, u + l->length);

		scene_line(s, 0.45 * MM, DASH_SHORT_DASH,
			   (const struct point[]){{u, lap_top(p, butt, u)},
						  {head, lap_top(p, butt, head)},
						  {u + l->length, p->base}},
			   3);
	}
	scene_point(l, s->u0 + IN(1.5), p->base + 0.01 * p->t);
}

static void sheet_round_hole(struct scene *s, struct detail_layer *l)
{
	const double down = known(l->down, 0), up = known(l->up, 0), t = known(l->thickness, 0);
	const bool in_lap = l->woven && s->lap.E > 0 && !layer_is(l, "deck-flashing");

	if (layer_is(l, "felt-strip")) {
		woven(s, -down, up, 1.0 * s->paper, 0.45 * MM, DASH_SHORT_DASH, 0);
		scene_point(l, up - IN(0.7), lap_woven(&s->lap, up - IN(0.7)) + 1.0 * s->paper);
	} else if (in_lap) {
		woven(s, -down, up, 0, HEAVY, DASH_SOLID, known(l->turn_up, 0));
		scene_point(l, -0.8 * down, lap_woven(&s->lap, -0.8 * down));
	} else {
		flat_sheet(s, -down, up, l->foot, t, FILL_GREY, DASH_SOLID);
		if (layer_is(l, "deck-flashing")) /* the sheet above laps over it */
			scene_line(
				s, 0.45 * MM, DASH_SHORT_DASH,
				(const struct point[]){{0.55 * up, l->foot + t + 0.8 * s->paper},
						       {up + IN(0.2), l->foot + t + 0.8 * s->paper},
						       {up + IN(0.5), l->foot + t}},
				3);
		scene_point(l, -0.85 * down, l->foot + t / 2);
	}
}

static void stones(struct scene *s, struct detail_layer *l)
{
	const double r = l->thickness / 2;

	for (double u = s->u0 + r; u < s->u1 - r; u += 2.1 * r)
		drawing_circle(s->d, LAYER_MATERIAL, FILL_WHITE, (struct point){u, l->foot + r},
			       0.9 * r);
	scene_point(l, s->u1 - IN(1.5), l->foot + r);
}

static void spanning(struct scene *s, struct detail_layer *l)
{
	const double top = l->foot + l->thickness;
	const bool felt = layer_is(l, "underlayment");
	/* a ribbed sheet is drawn with its ribs */
	const bool ribbed = layer_is(l, "panel") && s->along && scene_find(s, "rib");

	if (!ribbed)
		flat_sheet(s, s->u0, s->u1, l->foot, l->thickness,
			   layer_is(l, "membrane") ? FILL_GREY : FILL_WHITE,
			   felt ? DASH_DASHED : DASH_SOLID);
	if (layer_is(l, "insulation-board") || layer_is(l, "foam")) {
		hatched(s, s->u0, l->foot, s->u1, top, 0.8, 2.4 * MM);
		if (layer_is(l, "insulation-board"))
			hatched(s, s->u0, l->foot, s->u1, top, -0.8, 2.4 * MM);
	}
	if (layer_is(l, "deck"))
		hatched(s, s->u0, l->foot, s->u1, top, 1.0, 1.2 * MM);
	scene_point(l, s->u1 - (felt ? 0.18 : 0.1) * (s->u1 - s->u0), (l->foot + top) / 2);
}

/* The sheet goes up over each rib: it is hollow below. */
static void rib(struct scene *s, double u, double side, double foot, double height)
{
	const struct point at[] = {{u - 2 * side, foot},
				   {u - side, foot + height},
				   {u + side, foot + height},
				   {u + 2 * side, foot}};

	scene_line(s, HEAVY, DASH_SOLID, at, 4);
}

static void ribs(struct scene *s, struct detail_layer *l)
{
	const struct detail_layer *panel = scene_find(s, "panel");
	const double foot = panel ? panel->foot : 0;

	if (!s->along) { /* cut beside them: the next one is seen from its side */
		scene_line(s, 0.18 * MM, DASH_SOLID,
			   (const struct point[]){{s->u0, s->cursor + l->height},
						  {s->u1, s->cursor + l->height}},
			   2);
		scene_point(l, 0.8 * s->u1, s->cursor + l->height);
		return;
	}
	for (int k = -3; k <= 3; k++) {
		const double u = k * l->spacing, side = l->side;

		if (layer_is(l, "rib")) {
			const double flat = fmax(l->spacing / 2, 2 * side);

			rib(s, u, side, foot, l->height);
			scene_line(s, HEAVY, DASH_SOLID,
				   (const struct point[]){{u - flat, foot}, {u - 2 * side, foot}},
				   2);
			scene_line(s, HEAVY, DASH_SOLID,
				   (const struct point[]){{u + 2 * side, foot}, {u + flat, foot}},
				   2);
		} else
			scene_box(s, FILL_GREY, u - side, foot, u + side, foot + l->height);
	}
	scene_point(l, l->spacing < s->u1 ? l->spacing : 0, known(l->height, 0) / 2 + s->cursor);
}

void section_piece(struct scene *s, struct detail_layer *l)
{
	if (layer_is(l, "rafter") || layer_is(l, "purlin"))
		framing(s, l);
	else if (layer_is(l, "spaced-board"))
		boards(s, l, -l->breadth / 2);
	else if (layer_is(l, "batten"))
		boards(s, l, s->lap.E > 0 ? s->lap.butt + s->lap.L - l->breadth : 0);
	else if (layer_is(l, "block")) {
		scene_box(s, FILL_WHITE, -known(l->down, l->side), l->foot, known(l->up, l->side),
			  l->foot + l->thickness);
		hatched(s, -known(l->down, l->side), l->foot, known(l->up, l->side),
			l->foot + l->thickness, 0.5, 1.6 * MM);
		scene_point(l, -0.8 * known(l->down, l->side), l->foot + l->thickness / 2);
	} else if (s->lap.E > 0 && l->length > 0 && l->exposure > 0 && !layer_is(l, "felt-strip"))
		lapped(s, l);
	else if (layer_is(l, "felt-strip") && l->length > 0 && s->lap.E > 0)
		strips(s, l);
	else if (layer_is(l, "gravel"))
		stones(s, l);
	else if (layer_is(l, "deck") || layer_is(l, "underlayment") ||
		 layer_is(l, "insulation-board") || layer_is(l, "membrane") ||
		 layer_is(l, "foam") || layer_is(l, "panel") || layer_is(l, "course") ||
		 layer_is(l, "tile"))
		spanning(s, l);
	else if (layer_is(l, "seam") || layer_is(l, "rib"))
		ribs(s, l);
	else if (layer_is(l, "plate") || layer_is(l, "deck-flashing") ||
		 layer_is(l, "felt-strip") || (layer_is(l, "patch") && isnan(l->diameter)))
		sheet_round_hole(s, l);
}
