/* SPDX-License-Identifier: MIT */
/* What holds the foot: screws, bolts with washer and nut, hanger bolts, hooks, clamps. */
#include <math.h>

#include "detail/scene.h"

#define IN(x) ((x)*M_PER_IN)

/* As drawn, in diameters: head and nut, half their width; washer. */
#define NUT 0.8
#define NUT_HALF 0.9
#define WASHER 0.25
#define WASHER_HALF 1.5

static void block_at(struct scene *s, double u, double half, double v0, double v1)
{
	drawing_rectangle(s->d, LAYER_MATERIAL, FILL_BLACK, u - half, v0, u + half, v1);
}

/* From the underside of the head down; pointed or flat. */
static void shank(struct scene *s, double u, double top, double bottom, double D, bool pointed)
{
	const double r = D / 2, tip = pointed ? fmin((top - bottom) / 4, 2 * D) : 0;
	const struct point at[] = {{u - r, top},
				   {u + r, top},
				   {u + r, bottom + tip},
				   {u, bottom},
				   {u - r, bottom + tip}};
	const struct point blunt[] = {at[0], at[1], {u + r, bottom}, {u - r, bottom}};

	drawing_shape(s->d, LAYER_MATERIAL, 0.15 * MM, FILL_BLACK, pointed ? at : blunt,
		      pointed ? 5 : 4);
}

bool section_is_bolt(const struct detail_layer *l)
{
	return l->as == GUIDE_FASTENER_BOLT ||
	       (l->as == GUIDE_FASTENER_USUAL && layer_is(l, "bolt"));
}

/* v where a bolt comes out of the wood: below the lowest block at the hole, else the rafter. */
double section_bolt_exit(const struct scene *s)
{
	double out = 0;
	bool block = false;

	for (int i = 0; i < s->layers; i++)
		if (layer_carries(&s->layer[i])) {
			out = fmin(out, s->layer[i].base);
			block = true;
		}
	for (int i = 0; i < s->layers && !block; i++)
		if (layer_is(&s->layer[i], "rafter") || layer_is(&s->layer[i], "purlin") ||
		    layer_is(&s->layer[i], "deck"))
			out = fmin(out, s->layer[i].foot);
	return out;
}

/* Least length below the head that lets a nut go on. */
static double bolt_end(const struct scene *s, double head, const struct detail_layer *l)
{
	return fmin(head - l->length, section_bolt_exit(s) - (WASHER + NUT + 0.3) * l->diameter);
}

/* Below a membrane a head stays within what covers it. */
static double head_room(const struct scene *s, double head, double D)
{
	const double room = s->cursor - head;

	return scene_find(s, "membrane") && room > 0 ? fmin(0.65 * D, room) : 0.65 * D;
}

static void bolt(struct scene *s, const struct detail_layer *l, double u, double head)
{
	const double D = l->diameter, out = section_bolt_exit(s);

	shank(s, u, head, bolt_end(s, head, l), D, false);
	block_at(s, u, NUT_HALF * D, head, head + head_room(s, head, D));
	block_at(s, u, WASHER_HALF * D, out - WASHER * D, out);
	block_at(s, u, NUT_HALF * D, out - (WASHER + NUT) * D, out - WASHER * D);
}

/* The foot hangs between two nuts on the bolt's upper thread; the lower thread is in the wood. */
static void hanger(struct scene *s, const struct detail_layer *l, double u, double head,
		   double plate)
{
	const double D = l->diameter, top = head + (WASHER + NUT + 0.5) * D;

	shank(s, u, top, top - l->length, D, true);
	block_at(s, u, WASHER_HALF * D, head, head + WASHER * D);
	block_at(s, u, NUT_HALF * D, head + WASHER * D, head + (WASHER + NUT) * D);
	block_at(s, u, WASHER_HALF * D, head - plate - WASHER * D, head - plate);
	block_at(s, u, NUT_HALF * D, head - plate - (WASHER + NUT) * D, head - plate - WASHER * D);
}

/* One, by what it is; `head` is where its head or upper nut bears, on a plate this thick. */
static void one(struct scene *s, const struct detail_layer *l, double u, double head, double plate)
{
	if (section_is_bolt(l)) {
		bolt(s, l, u, head);
	} else if (l->as == GUIDE_FASTENER_HANGER_BOLT) {
		hanger(s, l, u, head, plate);
	} else {
		shank(s, u, head, head - l->length, l->diameter, true);
		block_at(s, u, NUT_HALF * l->diameter, head,
			 head + head_room(s, head, l->diameter));
	}
}

/* Two, a little inside the edges of a base of this half length. */
static void pair(struct scene *s, struct detail_layer *l, double off, double head, double plate)
{
	one(s, l, -off, head, plate);
	one(s, l, off, head, plate);
	scene_point(l, -off, head - 0.6 * l->length);
}

static void set_screw(struct scene *s, struct detail_layer *l, const struct detail_layer *clamp)
{
	const double v = s->cursor + known(clamp->base, 0) + clamp->height / 2;

	drawing_rectangle(s->d, LAYER_MATERIAL, FILL_BLACK, -clamp->side - l->length / 2,
			  v - l->diameter / 2, -clamp->side + l->length, v + l->diameter / 2);
	scene_point(l, -clamp->side - l->length / 3, v);
}

void section_fastener(struct scene *s, struct detail_layer *l)
{
	const struct detail_layer *post = scene_find(s, "post"), *foot = scene_find(s, "foot"),
				  *clamp = scene_find(s, "clamp"), *hook = scene_find(s, "hook");

	if (clamp) {
		set_screw(s, l, clamp);
	} else if (foot) {
		const double head = section_foot_base(s, foot) + SECTION_BASE;

		if (l->as == GUIDE_FASTENER_DECK) {
			pair(s, l, 0.7 * known(foot->down, foot->side), head, SECTION_BASE);
			return;
		}
		one(s, l, 0, head, SECTION_BASE);
		scene_point(l, 0, head - 0.9 * l->length);
	} else if (hook) {
		const double u = section_hook_base(s, hook);

		one(s, l, u, hook->thickness, hook->thickness);
		scene_point(l, u, hook->thickness - 0.8 * l->length);
	} else {
		const double base = post ? known(post->base, 0) : 0;

		pair(s, l, post ? fmax(IN(1), 1.35 * post->diameter / 2) : 0, base + SECTION_BASE,
		     SECTION_BASE);
	}
}

/* ---- hooks ---- */

/* Upper end of the piece that the hook's arm lies on. */
static double head_below(const struct scene *s)
{
	return s->lap.butt - s->lap.E + s->lap.L;
}

double section_hook_base(const struct scene *s, const struct detail_layer *hook)
{
	return head_below(s) + IN(0.75) + hook->up / 2;
}

/* Its base is screwed to the rafter above the batten and the head of the piece below; it rises over
   that head, comes out through the lap, clear of the piece below, and turns up for the rail. */
void section_hook(struct scene *s, struct detail_layer *l)
{
	const double t = l->thickness, gap = known(l->gap, IN(0.2)) + t / 2, head = head_below(s),
		     own = s->lap.butt - s->lap.E, rise = head + IN(0.5);
	const double over = lap_top(&s->lap, own, head) + gap,
		     end = lap_top(&s->lap, own, -l->down) + gap;
	const struct point at[] = {{head + IN(0.75) + l->up, t / 2},
				   {rise, t / 2},
				   {rise, over},
				   {-l->down, end},
				   {-l->down, end + IN(3)}};

	for (int i = 0; i < 4; i++)
		drawing_line_as(s->d, LAYER_MATERIAL, t / s->paper * MM, DASH_SOLID, at[i],
				at[i + 1]);
	scene_point(l, -0.7 * l->down, lap_top(&s->lap, own, -0.7 * l->down) + gap);
}

/* ---- clamps ---- */

void section_clamp(struct scene *s, struct detail_layer *l)
{
	const double foot = s->cursor + known(l->base, 0);
	const struct detail_layer *seam = scene_find(s, "seam");
	const double half = seam ? fmax(seam->side, 0.4 * s->paper) : 0;

	scene_box(s, FILL_LIGHT, -l->side, foot, -half, foot + l->height);
	scene_box(s, FILL_LIGHT, half, foot, l->side, foot + l->height);
	scene_box(s, FILL_LIGHT, -l->side,
		  foot + (seam ? fmin(seam->height, l->height - IN(0.2)) : 0), l->side,
		  foot + l->height);
	scene_point(l, 0.6 * l->side, foot + 0.6 * l->height);
}
