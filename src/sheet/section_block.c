/* SPDX-License-Identifier: MIT */
/* A block between two rafters with the foot that stands on it, cut square to the slope and seen up
   it: u along the eave from the middle of the bay, v square to the roof, 0 on the deck's top. */
#include <math.h>

#include "drawing/dimension.h"
#include "sheet/section.h"

#define BESIDE 0.03 /* of roof shown beyond the two rafters, m */

struct bay {
	struct section *x;
	const struct block_result *block;
	double half;  /* from the middle to a rafter's face */
	double face;  /* v of the rafters' upper face */
	double b, d;  /* of a rafter */
	double plate; /* v of the base plate's top */
};

static struct bay bay_of(struct section *x)
{
	const struct job *job = x->s->job;
	const struct block_result *block = &x->s->r->block;
	const double t_up = x->s->r->fastener.t_up;

	x->surface = isnan(job->roof.built_up) ? 0 : job->roof.built_up;
	return (struct bay){.x = x,
			    .block = block,
			    .half = block->clear / 2,
			    .face = -x->deck,
			    .b = job->framing.breadth,
			    .d = job->framing.depth,
			    .plate = -x->deck + fmax(t_up, job->mount.plate_thickness)};
}

bool section_has_block(const struct sheet *s)
{
	return s->r->block.feet > 0 && s->r->block.clear > 0;
}

void section_block_extent(struct section *x)
{
	const struct bay k = bay_of(x);
	const double u = k.half + k.b + BESIDE;

	x->u0 = -u;
	x->u1 = u;
	section_reach(x, -u, k.face - fmax(k.d, k.block->high));
	section_reach(x, u, k.plate + x->s->job->mount.height);
}

static void roof(const struct bay *k)
{
	struct section *x = k->x;
	const struct point board[] = {{x->u0, k->face}, {x->u1, k->face}, {x->u1, 0}, {x->u0, 0}};

	if (x->deck > 0) {
		section_area(x, FILL_WHITE, board, 4);
		drawing_hatch(x->d, LAYER_HATCH, board, 4, 45 * RAD_PER_DEG, 1.2 * MM);
		section_name(x, x->u1 - 0.02, -x->deck / 2,
			     sheet_text(x->s, "deck %s", sheet_size(x->s, x->deck)));
	}
	if (x->surface > 0) {
		section_block(x, FILL_GREY, x->u0, 0, x->u1, x->surface);
		section_name(x, x->u1 - 0.02, x->surface / 2,
			     "covering; its flashing: see the sheets before and after this one");
	}
}

/* End grain is crossed. */
static void rafter(const struct bay *k, double side)
{
	struct section *x = k->x;
	const double a = side < 0 ? -k->half - k->b : k->half, low = k->face - k->d;

	section_block(x, FILL_LIGHT, a, low, a + k->b, k->face);
	drawing_line(x->d, LAYER_THIN, (struct point){a, low}, (struct point){a + k->b, k->face});
	drawing_line(x->d, LAYER_THIN, (struct point){a + k->b, low}, (struct point){a, k->face});
	if (side > 0)
		section_name(x, a + 0.7 * k->b, low + 0.2 * k->d,
			     sheet_text(x->s, "rafter%s%s", x->s->job->framing.size[0] ? " " : "",
					x->s->job->framing.size));
}

static void block(const struct bay *k)
{
	struct section *x = k->x;
	const struct block_result *b = k->block;

	section_block(x, FILL_WHITE, -k->half, k->face - b->high, k->half, k->face);
	for (int i = 1; i < 4; i++)
		drawing_line_as(x->d, LAYER_THIN, 0.09 * MM, DASH_DASH_DOT,
				(struct point){-k->half, k->face - b->high * i / 4},
				(struct point){k->half, k->face - b->high * i / 4});
	section_name(
		x, 0.6 * k->half, k->face - 0.6 * b->high,
		sheet_text(x->s, "block %s%s, %s along the rafter, %s %s, below %d of the feet",
			   b->size, b->flat ? " laid flat" : " on edge", sheet_size(x->s, b->wide),
			   b->species ? b->species : "", b->grade ? b->grade : "", b->feet));
}

static void hanger(const struct bay *k, double side)
{
	const double face = side * k->half, low = k->face - k->block->high, t = 0.003 * side;
	const struct point at[] = {
		{face, k->face - 0.01},     {face, low - 0.003}, {face - side * 0.035, low - 0.003},
		{face - side * 0.035, low}, {face - t, low},     {face - t, k->face - 0.01}};

	section_area(k->x, FILL_BLACK, at, 6);
	if (side > 0)
		section_name(k->x, face - t, low + 0.3 * k->block->high,
			     sheet_text(k->x->s, "hanger at each end: %s",
					k->x->s->job->mount.block_report));
}

/* Through the rafter into the block's end grain; columns stand behind each other. */
static void nails(const struct bay *k, double side)
{
	const struct block_result *b = k->block;
	const double head = side * (k->half + k->b), tip = head - side * b->nail_L;
	const double middle = k->face - b->high / 2;

	for (int i = 0; i < b->rows; i++) {
		const double v = middle + (i - (b->rows - 1) / 2.0) * b->row_pitch;

		drawing_line_as(k->x->d, LAYER_MATERIAL, 0.5 * MM, DASH_SOLID,
				(struct point){head, v}, (struct point){tip, v});
		section_block(k->x, FILL_BLACK, head, v - b->nail_D, head + side * 0.002,
			      v + b->nail_D);
	}
	if (side > 0 && b->rows > 0)
		section_name(k->x, head, middle + (b->rows - 1) / 2.0 * b->row_pitch,
			     sheet_text(k->x->s,
					"each end: %d common nails %s, %d row%s of %d, through the "
					"rafter",
					b->rows * b->columns, sheet_block_nail(k->x->s), b->rows,
					b->rows > 1 ? "s" : "", b->columns));
}

static void foot(const struct bay *k)
{
	struct section *x = k->x;
	const struct job_fastener *f = &x->s->job->fastener;
	const double t = x->s->job->mount.plate_thickness, half = 0.035, post = 0.019,
		     top = k->plate + x->s->job->mount.height;

	section_block(x, FILL_GREY, -half, k->plate - t, half, k->plate);
	section_block(x, FILL_WHITE, -post, k->plate, post, top);
	section_name(x, post, (k->plate + top) / 2, "foot, in the middle of the bay");
	if (!sheet_has_screw(x->s->job))
		return;
	const double r = f->diameter / 2;

	section_block(x, FILL_WHITE, -r, k->plate - f->length, r, k->plate);
	section_block(x, FILL_BLACK, -1.6 * r, k->plate, 1.6 * r, k->plate + 1.3 * r);
	section_name(x, r, k->plate - 0.8 * f->length,
		     sheet_text(x->s, "screw %s x %s into the block: see sheet Attachment",
				sheet_shank(x->s, f->diameter), sheet_size(x->s, f->length)));
}

void section_on_block(struct section *x)
{
	const struct bay k = bay_of(x);
	const double low = k.face - fmax(k.d, k.block->high);

	roof(&k);
	rafter(&k, -1);
	rafter(&k, 1);
	block(&k);
	for (int side = -1; side <= 1; side += 2) {
		if (k.block->hanger)
			hanger(&k, side);
		else
			nails(&k, side);
	}
	foot(&k);
	dimension_between(x->d, (struct point){-k.half, low}, (struct point){k.half, low}, -6 * MM,
			  sheet_tape(x->s, 2 * k.half));
	dimension_between(x->d, (struct point){-k.half - k.b, k.face - k.block->high},
			  (struct point){-k.half - k.b, k.face}, 6 * MM,
			  sheet_tape(x->s, k.block->high));
}
