/* SPDX-License-Identifier: MIT */
/* One detail while it is drawn. Internal to src/detail.

   Section: u up the slope (along the course where the library says so), v square to the roof
   outwards; plan: u along the course, v up the slope. The origin is where the centre line of the
   hole meets the top of the deck. */
#ifndef RP_DETAIL_SCENE_H
#define RP_DETAIL_SCENE_H

#include "detail/detail.h"

#define SCENE_LAYERS 24
#define PI 3.14159265358979323846

/* Sizes of a layer: member, name in the library. */
#define LAYER_SIZES(S)                                                                             \
	S(down, "down")                                                                            \
	S(up, "up") S(side, "side") S(thickness, "thickness") S(base, "base") S(height, "height")  \
		S(diameter, "diameter") S(length, "length") S(exposure, "exposure")                \
			S(butt_up, "butt-up") S(breadth, "breadth") S(gap, "gap")                  \
				S(turn_up, "turn-up") S(spacing, "spacing")

/* m; NAN where the library gives none. */
struct scene_layer {
	char kind[24], label[96];
	bool woven, plumb, of_job;
#define S(member, name) double member;
	LAYER_SIZES(S)
#undef S
	double foot;     /* v of its underside, m */
	struct point at; /* where its number points */
	bool shown;
};

/* The lapped pieces of the covering: piece k has its butt at butt + k E. */
struct lap {
	double E, L, t, tip, butt, base; /* tip: thickness at its upper end; E 0: none */
	double tilt;                     /* fall of the underside toward the head */
};

struct scene {
	struct drawing *d; /* NULL while sizes are only gathered */
	const struct lettering *lettering;
	enum unit_system units;
	char title[160];
	bool plan, along;
	double theta; /* of the roof as drawn, rad */
	bool theta_of_job;
	int layers;
	struct scene_layer layer[SCENE_LAYERS];
	struct lap lap;
	double cursor;         /* v of the top of what lies flat */
	double u0, u1, v0, v1; /* window of the covering, m */
	struct box bound;      /* of everything, turned, m */
	double scale;          /* world over paper */
	double paper;          /* one mm on paper, in m of the world */
};

/* layers.c: reads the layers; false if there are none. */
bool scene_read(struct scene *s, const struct guide_library *lib,
		const struct guide_request *request, const char *of, const char *view);
bool scene_is(const struct scene_layer *l, const char *kind);
const struct scene_layer *scene_find(const struct scene *s, const char *kind);
/* a, or b where a is not known. */
double known(double a, double b);

/* lap.c */
void lap_set(struct scene *s);
/* v of the underside and of the top of piece k at u. */
double lap_under(const struct lap *p, double butt, double u);
double lap_top(const struct lap *p, double butt, double u);
/* Where a sheet woven into the pieces lies at u: on the piece that the hole goes through, below its
 * butt on the one below. */
double lap_woven(const struct lap *p, double u);
/* v of what a foot stands on at the hole. */
double scene_surface(const struct scene *s);

/* section.c, section_pieces.c, section_fittings.c, plan.c */
void section_frame(struct scene *s);
void section_paint(struct scene *s);
void section_piece(struct scene *s, struct scene_layer *l);
void section_fitting(struct scene *s, struct scene_layer *l);
/* Height above the origin of the highest fitting, along its own axis. */
double section_height(const struct scene *s);
void plan_frame(struct scene *s);
void plan_paint(struct scene *s);

/* Closed shape of the world, cut to the window along u. */
void scene_shape(struct scene *s, double width, enum fill fill, const struct point *at, int n);
void scene_box(struct scene *s, enum fill fill, double u0, double v0, double u1, double v1);
void scene_line(struct scene *s, double width, enum drawing_dash dash, const struct point *at,
		int n);
/* The number of the layer points here. */
void scene_point(struct scene_layer *l, double u, double v);

/* words.c: one part with its sizes; what the picture is and is not. Buffers hold SCENE_TEXT. */
#define SCENE_TEXT 400
void scene_layer_words(const struct scene *s, const struct scene_layer *l, char *text);
void scene_note(const struct scene *s, char *text);

/* key.c: lays the paper out round the scene and draws it. */
struct drawing *scene_sheet(struct scene *s);

#endif
