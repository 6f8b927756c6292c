/* SPDX-License-Identifier: MIT */
/* Sections up the slope, to scale: the attachment with screw, foot, deck, covering and flashing,
   and a pipe through the covering. What lies on the roof comes from the covering library's drawings
   with the job's own sizes in them; foot, screw and rafter come from the job and its result.

   Frame: u up the slope, v square to the roof outwards; the origin is where the hole's centre line
   meets the deck's top. The view is turned by the pitch, so that plumb things stand plumb; up the
   slope is to the right. */
#ifndef RP_SHEET_SECTION_H
#define RP_SHEET_SECTION_H

#include "sheet/sheet.h"

enum section_of { SECTION_OF_FOOT, SECTION_OF_PIPE, SECTION_OF_RACK, SECTION_OF_BLOCK };

/* which: of the job's pipes, from 0. NULL when memory ran out. */
struct drawing *section_draw(const struct sheet *s, enum section_of what, int which,
			     struct sheet_room room);
/* False if the job has nothing to draw: no such pipe, nothing tilted. */
bool section_exists(const struct sheet *s, enum section_of what, int which);

/* Internal to src/sheet. */
#define SECTION_MARGIN (3 * MM)
#define SECTION_LABEL_WIDTH (68 * MM) /* column of names at the right */
#define SECTION_LAYERS 24
#define SECTION_LABELS 24
#define SECTION_KEYS 8

struct section_layer {
	char kind[24], label[96];
	bool woven, plumb, turned;
	int sizes;
	struct {
		char name[16];
		double value;
	} size[GUIDE_LAYER_SIZES];
	double below; /* v of its underside, m; set by section_stack */
};

struct section_label {
	struct point at; /* u, v of what is named */
	double slack;    /* so far down the slope it is named as well, m */
	const char *text;
};

struct section {
	const struct sheet *s;
	struct drawing *d;
	enum section_of what;
	const struct job_pipe *pipe; /* that is drawn; NULL: none */
	struct sheet_room room;
	double high, low; /* on paper, above and below picture and dimensions; of a narrow room */
	double theta;
	double u0, u1;          /* of the roof that is drawn, m */
	double x0, y0, x1, y1;  /* bounds of everything, turned, m */
	double under_collector; /* v of its underside; NAN: beyond the drawing */
	struct scale scale;
	int layers;
	struct section_layer layer[SECTION_LAYERS];
	bool from_library;
	double post_least; /* the job's post is shorter than its flashing asks, m; 0: long enough */
	bool boot_too_wide; /* for its pan */
	/* lapped covering: NAN where there is none */
	double E, L, t, butt, lap_base;
	double deck;    /* thickness under the origin, m */
	double surface; /* top of an even covering, m */
	double bed;     /* what a flange lies on there: below gravel, if any */
	double patched; /* top of the patches on it; set by section_flashing */
	int keys;
	struct section_key {
		const char *letter, *text;
	} key[SECTION_KEYS];
	int labels;
	struct section_label label[SECTION_LABELS];
};

/* section_layers.c: reads and stacks them. */
void section_collect(struct section *x);
/* Of the job, for the library's drawing; of several pipes those of the one that is drawn. */
struct guide_sizes section_sizes(const struct section *x);
double section_size(const struct section_layer *l, const char *name, double otherwise);
bool section_is(const struct section_layer *l, const char *kind);
/* First layer of a kind, or NULL. */
const struct section_layer *section_find(const struct section *x, const char *kind);
void section_name(struct section *x, double u, double v, const char *text);
/* The same for what reaches down the slope by `slack` from there: the line to it may end anywhere. */
void section_name_along(struct section *x, double u, double v, double slack, const char *text);
/* Explains a letter that stands on a dimension line. */
void section_key(struct section *x, const char *letter, double length, const char *words);
void section_key_text(struct section *x, const char *letter, const char *words);
/* Widens the bounds of the drawing. */
void section_reach(struct section *x, double u, double v);
/* Top of the covering at u, m. */
double section_top(const struct section *x, double u);
/* Polygon of n corners u, v. */
void section_area(struct section *x, enum fill fill, const struct point *at, int n);
void section_block(struct section *x, enum fill fill, double u0, double v0, double u1, double v1);
/* section_page.c: names, letters, title; after everything else. */
void section_page(struct section *x);
/* section.c: of the drawing, when the scale is known. */
void section_title(struct section *x);
/* Scale, sources, what is lacking. */
const char *section_says(const struct section *x);
/* A small triangle of the pitch with 12 of run, its acute corner at `at` on paper, and its words. */
void section_pitch(struct section *x, struct point at, struct point words);
/* On paper, beside what is drawn: dimensions at the left, right and below; at the foot of the page
   the pitch and what the letters mean. By enum section_of. */
struct section_beside {
	double left, right, below, notes;
};
extern const struct section_beside section_beside[];
/* section_narrow.c: the same for a narrow room. Names are numbers at the right, told below. */
void section_place_narrow(struct section *x);
void section_page_narrow(struct section *x);
/* section_roof.c: rafter or steel member, and deck. */
void section_roof(struct section *x);
/* What the screws go into: "rafter", "joist". */
const char *section_member(const struct job *job);
/* The part of it that is drawn: "top chord" of a truss. */
const char *section_wood(const struct job *job);
/* Its depth, m; a usual one where the job does not tell. */
double section_member_depth(const struct job *job);
/* section_covering.c */
void section_stack(struct section *x);
void section_covering(struct section *x);
/* v of the underside at u of the lapped piece whose butt is given. */
double section_piece_bottom(const struct section *x, double butt, double u);
/* section_flashing.c: plates and what stands on them; the cap after the post. */
void section_flashing(struct section *x);
void section_flashing_cap(struct section *x);
/* section_foot.c */
struct section_foot {
	double D, head, tip, face; /* v of the head's underside, the tip, the rafter's upper face */
	double plate;              /* thickness of the base plate */
	double half;               /* half its length */
	double rail;               /* v of the rail line */
	bool free;                 /* a hanger bolt: no base plate; head is the top of the covering */
};
/* Base and screws that the flashing goes over; the rest after the flashing. */
void section_foot_low(struct section *x);
void section_foot_high(struct section *x);
/* True where the flashing goes over the base plate, which stands on wood or deck. */
bool section_base_below(const struct section *x);
/* Words on screws that come out below or cannot be reached; "" for none. */
const char *section_screws_lack(const struct section *x);
/* v of the base plate's underside. */
double section_base(const struct section *x);
/* Half the width of the post as drawn. */
double section_post_half(const struct section *x);
void section_foot_extent(struct section *x);
/* section_fastener.c */
/* Something goes into the wood or through it, of known size. */
bool section_has_shaft(const struct job *job);
double section_tip(const struct section *x, const struct section_foot *f);
void section_fasteners(struct section *x, const struct section_foot *f);
/* After everything that would cover them. */
void section_fastener_lengths(struct section *x, const struct section_foot *f);
/* section_rack.c: a row of tilted collectors from its side. */
bool section_is_tilted(const struct sheet *s);
void section_rack(struct section *x);
void section_rack_extent(struct section *x);
/* After the names, whose lines cross them. */
void section_rack_dimensions(struct section *x);
/* section_block.c: a foot on a block between two rafters. */
bool section_has_block(const struct sheet *s);
void section_on_block(struct section *x);
void section_block_extent(struct section *x);
/* section_pipe.c: the hole before the flashing, the rest after it. */
void section_pipe_hole(struct section *x);
void section_pipe(struct section *x);
void section_pipe_extent(struct section *x);

#endif
