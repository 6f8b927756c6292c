/* SPDX-License-Identifier: MIT */
/* Which block: on edge or flat, wide enough for the 4 D that a force across its grain asks of the
   loaded edge (NDS Table 12.5.1C), no higher than the rafters, deep enough for the screw. Doubled
   pieces are none: the screw would stand in their joint. */
#include "check/block.h"

#include <math.h>
#include <string.h>

#include "check/fastener.h"
#include "check/place.h"
#include "resist/nail.h"
#include "resist/wood_screw.h"
#include "table/lookup_fastener.h"
#include "table/lookup_wood.h"

/* By the wood they take. */
static const struct kind {
	const char *size;
	bool flat;
} kinds[] = {{"2x6", true}, {"2x8", true},  {"4x4", false}, {"4x6", false},
	     {"4x6", true}, {"4x8", false}, {"4x8", true},  {"4x10", false}};

/* Common practice: nails an inch apart, three quarters from the edges; no more than so many. */
#define NAIL_EDGE (0.75 * M_PER_IN)
#define NAIL_PITCH (1.0 * M_PER_IN)
#define ROWS_MOST 4
#define COLUMNS_MOST 3

int block_kinds(void)
{
	return (int)(sizeof kinds / sizeof *kinds);
}

bool block_wanted(const struct context *c, int kind)
{
	const char *size = c->job->mount.block_size;

	return size[0] == '\0' || strcmp(size, kinds[kind - 1].size) == 0;
}

static bool lumber(struct context *c, struct block_result *r, const char **why)
{
	const struct job_mount *m = &c->job->mount;
	const struct lumber_section_row *row = lumber_section_row(r->size);
	const char *species = m->block_species[0] ? m->block_species : "Spruce-Pine-Fir (South)";
	const char *grade = m->block_grade[0] ? m->block_grade : "No.3";

	*why = "no design values are tabulated for the blocks' lumber.";
	if (!row || !lumber_piece_find(species, grade, row->b_in * M_PER_IN, row->d_in * M_PER_IN,
				       &c->block.piece))
		return false;
	const double b = row->b_in * M_PER_IN, d = row->d_in * M_PER_IN;

	r->wide = r->flat ? d : b;
	r->high = r->flat ? b : d;
	r->species = c->block.piece.species;
	r->grade = c->block.piece.grade;
	*why = "a block that fits the screw is higher than the rafters.";
	return at_most(r->high, c->job->framing.depth);
}

/* Room on either side of the screw: any force along the rafters goes across the block's grain. */
static bool edges(const struct context *c, const struct block_result *r)
{
	const struct job_fastener *f = &c->job->fastener;
	const struct connection_geometry_row *row =
		connection_geometry_row("edge-distance", "perpendicular-loaded-edge");
	struct small_screw_room room;
	const double least = small_screw_room_find(f->diameter, &room) ? room.edge
			     : row                                     ? row->full_D * f->diameter
								       : HUGE_VAL;

	return at_least(r->wide / 2 - f->drilling_tolerance, least);
}

/* The screw in the wood of a block so high: what it takes along itself and across. */
static bool screw_in_block(const struct context *c, struct trace *trace, double high, struct block *b)
{
	const struct job *job = c->job;
	const struct job_fastener *f = &job->fastener;
	const double G = b->piece.G, across = 90 * RAD_PER_DEG;
	double gap;

	fastener_layers(c, &b->layers, &gap);
	const double above = job->mount.plate_thickness + b->layers;

	if (f->kind == FASTENER_LAG_SCREW) {
		if (!lag_screw_geometry_find(trace, f->diameter, f->length, f->thread_length, above,
					     high, &b->screw) ||
		    !lag_withdrawal_covers(G, f->diameter) ||
		    !lag_lateral_find(trace, &b->screw, G, across, job->mount.plate_thickness, gap,
				      &b->lateral))
			return false;
		b->W = lag_withdrawal(trace, G, b->screw.D);
	} else {
		if (!wood_screw_geometry_find(trace, f->diameter, f->length, f->thread_length,
					      above, high, &b->screw) ||
		    !wood_screw_withdrawal_covers(G, f->diameter) ||
		    !wood_screw_lateral_find(trace, &b->screw, G, across,
					     job->mount.plate_thickness, gap, &b->lateral))
			return false;
		b->W = wood_screw_withdrawal(trace, G, b->screw.D);
	}
	return b->lateral.permitted;
}

static bool screw(struct context *c, const struct block_result *r, const char **why)
{
	const struct job_fastener *f = &c->job->fastener;

	*why = "only one lag screw or wood screw a foot is rated in a block.";
	if (f->count != 1 || (f->kind != FASTENER_LAG_SCREW && f->kind != FASTENER_WOOD_SCREW))
		return false;
	*why = "the widest block has not the 4 D beside the screw that NDS Table 12.5.1C asks for.";
	if (!edges(c, r))
		return false;
	*why = "the screw does not reach far enough into a block, or is outside the published "
	       "tables.";
	return screw_in_block(c, NULL, r->high, &c->block);
}

static bool nail_in_end(const struct context *c, struct trace *trace, const struct nail_row *nail,
			struct block *b)
{
	struct dowel_yield y;

	if (!nail || !nail_lateral_find(trace, fmin(b->piece.G, c->G), nail->D_in * M_PER_IN,
					nail->L_in * M_PER_IN, c->job->framing.breadth, &y))
		return false;
	b->nail = y.value;
	return true;
}

void block_show(const struct context *c, struct trace *trace)
{
	struct block shown = c->block;

	screw_in_block(c, trace, c->r->block.high, &shown);
	if (!c->r->block.hanger)
		nail_in_end(c, trace, nail_row("common", "16d"), &shown);
}

static int places_in(double length, int most)
{
	const int n = 1 + (int)floor(fmax(0, length - 2 * NAIL_EDGE) / NAIL_PITCH + 1e-9);

	return n < most ? n : most;
}

static bool ends(struct context *c, struct block_result *r, const char **why)
{
	const struct job_mount *m = &c->job->mount;
	const struct nail_row *nail = nail_row("common", "16d");
	struct block *b = &c->block;

	r->hanger = m->block_end_uplift > 0 && m->block_end_down > 0 && m->block_end_slope > 0;
	b->grid = (struct block_grid){.columns = 0};
	if (r->hanger)
		return true;
	*why = "a 16d nail through the rafter does not reach far enough into a block; the tested values of a "
	       "hanger (`mount.block-end-uplift` and those beside it) stand for nails.";
	if (!nail_in_end(c, NULL, nail, b))
		return false;
	r->nail_D = nail->D_in * M_PER_IN;
	r->nail_L = nail->L_in * M_PER_IN;
	b->grid.columns = r->columns = places_in(r->wide, COLUMNS_MOST);
	b->grid.rows = r->rows = places_in(r->high, ROWS_MOST);
	b->grid.wide = r->columns > 1 ? r->wide - 2 * NAIL_EDGE : 0;
	b->grid.high = r->rows > 1 ? r->high - 2 * NAIL_EDGE : 0;
	r->column_pitch = r->columns > 1 ? b->grid.wide / (r->columns - 1) : 0;
	r->row_pitch = r->rows > 1 ? b->grid.high / (r->rows - 1) : 0;
	return true;
}

bool block_set(struct context *c, int kind, const char **why)
{
	struct block_result r = {
		.kind = kind, .size = kinds[kind - 1].size, .flat = kinds[kind - 1].flat};

	*why = "the rafters or their lumber are not rated here.";
	if (c->job->framing.kind != FRAMING_RAFTER || !c->lumber_known ||
	    c->job->fastener.kind == FASTENER_SEAM_CLAMP)
		return false;
	if (!lumber(c, &r, why) || !screw(c, &r, why) || !ends(c, &r, why))
		return false;
	place_with_blocks(c);
	*why = "the rafters are fewer than two or too many for blocks between all of them.";
	if (!c->r->blocks)
		return false;
	r.p_t = c->block.screw.p_t;
	c->r->block = r;
	return true;
}

void block_clear(struct context *c)
{
	c->r->block = (struct block_result){0};
	place_on_frames(c);
}
