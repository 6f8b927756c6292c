/* SPDX-License-Identifier: MIT */
/* A tilted row from its side: roof, two lines of feet, legs, collector, and the largest forces that
   the check found in each line of feet. u runs up the slope from the row's lower edge, v is 0 on
   the covering. Sizes of legs and rail are not in a job: they are drawn as thin members. */
#include <math.h>

#include "drawing/dimension.h"
#include "sheet/section_rack.h"

#define BESIDE 0.25 /* of roof shown before the first and after the last row, m */
#define LEG_HALF RACK_LEG_HALF
#define RAIL 0.038

bool section_is_tilted(const struct sheet *s)
{
	return s->job->collector.tilt > 0 && s->r->collectors > 0;
}

static double tilt_of(const struct section *x)
{
	return x->s->job->collector.tilt;
}

/* The lowest edge above y; false if no row lies there. */
bool rack_next_row(const struct result *r, double y, struct rack_row *row)
{
	bool found = false;

	for (int i = 0; i < r->collectors; i++) {
		const struct rectangle *c = &r->collector[i];

		if (c->y0 > y + 1e-6 && (!found || c->y0 < row->y0)) {
			*row = (struct rack_row){c->y0, c->y1, c->y0, c->y1};
			found = true;
		}
	}
	return found;
}

bool rack_in_row(const struct rack_row *row, double y)
{
	return y > row->y0 - 1e-6 && y < row->y1 + 1e-6;
}

/* Where the feet stand; where there is no layout, where the insets put them. */
static void set_feet(const struct sheet *s, struct rack_row *row)
{
	const struct job_rail *rail = &s->job->rail;
	const double shrink = cos(s->job->collector.tilt);
	bool any = false;

	row->front = row->y0 + rail->lower_inset * shrink;
	row->rear = row->y1 - rail->upper_inset * shrink;
	for (int i = 0; s->r->passes > 0 && i < s->pass->attachments; i++) {
		const double y = s->pass->attachment[i].y;

		if (!rack_in_row(row, y))
			continue;
		row->front = any ? fmin(row->front, y) : y;
		row->rear = any ? fmax(row->rear, y) : y;
		any = true;
	}
}

static void find_rows(struct rack *k)
{
	double y = -HUGE_VAL;

	while (k->rows < ROWS_SHOWN && rack_next_row(k->x->s->r, y, &k->row[k->rows])) {
		y = k->row[k->rows].y0;
		set_feet(k->x->s, &k->row[k->rows++]);
	}
}

/* Underside of the collector `along` from its row's lower edge. */
static double underside(const struct section *x, double along)
{
	return x->s->job->collector.clearance + along * tan(tilt_of(x));
}

static double top_of(const struct section *x, double along)
{
	return underside(x, along) + x->s->job->collector.depth * cos(tilt_of(x));
}

static struct rack rack_of(struct section *x)
{
	struct rack k = {.x = x};
	const double built_up = x->s->job->roof.built_up;

	find_rows(&k);
	x->surface = isnan(built_up) ? 0 : built_up;
	k.low = -x->surface - x->deck - x->s->job->framing.depth;
	return k;
}

void section_rack_extent(struct section *x)
{
	const struct rack k = rack_of(x);
	const double u1 = k.row[k.rows - 1].y1 - k.row[0].y0;

	x->u0 = -BESIDE;
	x->u1 = u1 + BESIDE;
	section_reach(x, x->u0, k.low);
	section_reach(x, x->u1, k.low);
	section_reach(x, x->u0, underside(x, 0));
	section_reach(x, u1, top_of(x, k.row[0].y1 - k.row[0].y0));
}

static void roof(const struct rack *k)
{
	struct section *x = k->x;
	const struct job *job = x->s->job;
	const double deck = -x->surface - x->deck, at = x->u1 - 0.06;
	const struct point board[] = {
		{x->u0, deck}, {x->u1, deck}, {x->u1, -x->surface}, {x->u0, -x->surface}};

	section_block(x, FILL_LIGHT, x->u0, k->low, x->u1, deck);
	section_name(x, at, (k->low + deck) / 2,
		     sheet_text(x->s, "rafter%s%s, %s deep", job->framing.size[0] ? " " : "",
				job->framing.size, sheet_size(x->s, job->framing.depth)));
	section_area(x, FILL_WHITE, board, 4);
	drawing_hatch(x->d, LAYER_HATCH, board, 4, 45 * RAD_PER_DEG, 1.2 * MM);
	if (x->deck > 0)
		section_name(x, at, -x->surface - x->deck / 2,
			     sheet_text(x->s, "deck %s", sheet_size(x->s, x->deck)));
	if (x->surface > 0) {
		section_block(x, FILL_BLACK, x->u0, -x->surface, x->u1, 0);
		section_name(
			x, at, -x->surface / 2,
			sheet_text(x->s, "covering, %s built up", sheet_size(x->s, x->surface)));
	}
}

/* Where the front leg is named: above the arrows of the forces, and so that the line to its name
   does not run through the height that is told beside the row. */
static double front_name(const struct rack *k, double v)
{
	const struct section *x = k->x;
	const double middle = underside(x, k->row[0].y1 - k->row[0].y0) / 2,
		     text = 8 * MM * x->scale.ratio;

	return fabs(v - middle) < text && middle - text > 0 ? middle - text : v;
}

/* Base plate, leg, rail; u of the foot on the drawing, along the row. */
static void leg(const struct rack *k, double u, double along, bool rear)
{
	struct section *x = k->x;
	const struct job_mount *mount = &x->s->job->mount;
	const double top = underside(x, along),
		     half = fmax(2 * LEG_HALF, isnan(mount->lever_arm) ? 0 : mount->lever_arm);
	const double rail = fmin(RAIL, top / 2);

	section_block(x, FILL_BLACK, u - half, 0, u + half, fmax(mount->plate_thickness, 0.003));
	section_block(x, FILL_WHITE, u - LEG_HALF, 0, u + LEG_HALF, top - rail);
	section_block(x, FILL_GREY, u - RAIL / 2, top - rail, u + RAIL / 2, top);
	section_name(x, u, rear ? 0.8 * top : front_name(k, 0.85 * top),
		     sheet_text(x->s, "%s leg: %s from the covering to the collector",
				rear ? "rear" : "front", sheet_size(x->s, top)));
}

static void brace(const struct rack *k, const struct rack_row *row, double u)
{
	struct section *x = k->x;
	const double along = row->rear - row->y0, span = row->rear - row->front;
	const struct point low = {u + row->front - row->y0, 0.01},
			   high = {u + along, underside(x, along) - RAIL};

	drawing_line_as(x->d, LAYER_MATERIAL, 0.35 * MM, DASH_DASHED, low, high);
	section_name(x, low.x + 0.25 * span, low.y + 0.25 * (high.y - low.y),
		     "brace, or a frame as stiff: the check takes the rack as braced");
}

#define ARC_PIECES 12

/* The angle at the low edge, and its name. */
static void tilt_arc(struct section *x, struct point edge, double r)
{
	const double t = tilt_of(x);
	struct point at[ARC_PIECES + 1];

	for (int i = 0; i <= ARC_PIECES; i++)
		at[i] = (struct point){edge.x + r * cos(t * i / ARC_PIECES),
				       edge.y + r * sin(t * i / ARC_PIECES)};
	drawing_path(x->d, LAYER_THIN, at, ARC_PIECES + 1);
	section_name(x, at[3 * ARC_PIECES / 4].x, at[3 * ARC_PIECES / 4].y,
		     sheet_text(x->s, "tilted %s against the roof",
				show_decimals(&x->s->f, t, UNIT_DEG, 1)));
}

static void collector(const struct rack *k, const struct rack_row *row, double u)
{
	struct section *x = k->x;
	const double t = tilt_of(x), deep = x->s->job->collector.depth, wide = row->y1 - row->y0;
	const double low = underside(x, 0), high = underside(x, wide);
	const struct point at[] = {{u, low},
				   {u + wide, high},
				   {u + wide - deep * sin(t), high + deep * cos(t)},
				   {u - deep * sin(t), low + deep * cos(t)}};

	drawing_shape(x->d, LAYER_COLLECTOR, -1, FILL_WHITE, at, 4);
	drawing_line_as(x->d, LAYER_THIN, 0.13 * MM, DASH_DASH_DOT, at[0],
			(struct point){u + 0.45 * wide, low});
	if (row != k->row)
		return;
	section_name(x, u + 0.8 * wide, underside(x, 0.8 * wide) + deep / 2,
		     sheet_text(x->s, "collector, %s deep, %s from edge to edge",
				sheet_size(x->s, deep), sheet_tape(x->s, wide / cos(t))));
	tilt_arc(x, at[0], 0.35 * wide);
}

void section_rack_dimensions(struct section *x)
{
	const struct rack rack = rack_of(x), *const k = &rack;
	const struct rack_row *row = &k->row[0];
	const double wide = row->y1 - row->y0, ratio = x->scale.ratio,
		     below = -(-k->low / ratio + 5 * MM), front = row->front - row->y0,
		     rear = row->rear - row->y0;

	/* from the foot to the edge: where it is too short for its text, that stands beyond the edge */
	dimension_between(x->d, (struct point){front, 0}, (struct point){0, 0}, -below,
			  sheet_tape(x->s, front));
	dimension_between(x->d, (struct point){front, 0}, (struct point){rear, 0}, below,
			  sheet_tape(x->s, rear - front));
	dimension_between(x->d, (struct point){0, 0}, (struct point){0, underside(x, 0)},
			  9 * MM + 0.02 / ratio, sheet_tape(x->s, underside(x, 0)));
	/* beyond the arrow that pushes on the rear foot */
	dimension_between(x->d, (struct point){wide, 0}, (struct point){wide, underside(x, wide)},
			  -fmax(5 * MM, rack_force_reach(x) + 3 * MM - (wide - rear) / ratio),
			  sheet_tape(x->s, underside(x, wide)));
	if (k->rows > 1)
		dimension_between(x->d, (struct point){0, 0},
				  (struct point){k->row[1].y0 - row->y0, 0}, below - 7 * MM,
				  sheet_text(x->s, "%s from row to row",
					     sheet_tape(x->s, k->row[1].y0 - row->y0)));
}

void section_rack(struct section *x)
{
	const struct rack k = rack_of(x);

	roof(&k);
	for (int i = 0; i < k.rows; i++) {
		const struct rack_row *row = &k.row[i];
		const double u = row->y0 - k.row[0].y0;
		const int names = x->labels;

		brace(&k, row, u);
		leg(&k, u + row->front - row->y0, row->front - row->y0, false);
		leg(&k, u + row->rear - row->y0, row->rear - row->y0, true);
		if (i > 0)
			x->labels = names;
		collector(&k, row, u);
	}
	rack_forces(x, k.row[0].front - k.row[0].y0, false);
	rack_forces(x, k.row[0].rear - k.row[0].y0, true);
}
