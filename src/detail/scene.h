/* SPDX-License-Identifier: MIT */
/* One detail while it is drawn. Internal to src/detail.

   Section: u up the slope (along the course where the library says so), v square to the roof
   outwards; plan: u along the course, v up the slope. The origin is where the centre line of the
   hole meets the top of the deck. */
#ifndef RP_DETAIL_SCENE_H
#define RP_DETAIL_SCENE_H

#include "detail/detail.h"
#include "detail/layers.h"

#define PI 3.14159265358979323846

/* The lapped pieces of the covering: piece k has its butt at butt + k E. */
struct lap {
	double E, L, t, tip, butt, base; /* tip: thickness at its upper end; E 0: none */
	double tilt;                     /* fall of the underside toward the head */
};

struct scene {
	struct drawing *d; /* NULL while sizes are only gathered */
	const struct lettering *lettering;
	enum unit_system units;
	bool resized; /* as in guide.h */
	char title[160];
	bool plan, along, pipe, wall;
	double theta; /* of the roof as drawn, rad */
	bool theta_of_job;
	double post_least; /* as in layers.h */
	bool boot_too_wide;
	int layers;
	struct detail_layer layer[DETAIL_LAYERS];
	struct lap lap;
	double cursor;         /* v of the top of what lies flat */
	double u0, u1, v0, v1; /* window of the covering, m */
	struct box bound;      /* of everything, turned, m */
	double scale;          /* world over paper */
	double paper;          /* one mm on paper, in m of the world */
};

/* scene.c: false if the library has no such drawing. */
bool scene_read(struct scene *s, const struct guide_library *lib,
		const struct guide_request *request, const char *of, const char *view);
const struct detail_layer *scene_find(const struct scene *s, const char *kind);

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
void section_piece(struct scene *s, struct detail_layer *l);
void section_fitting(struct scene *s, struct detail_layer *l);
/* section_fasteners.c */
#define SECTION_BASE (0.25 * M_PER_IN) /* thickness of a base plate as drawn */
/* v where the base of the foot lies. */
double section_foot_base(const struct scene *s, const struct detail_layer *foot);
void section_fastener(struct scene *s, struct detail_layer *l);
bool section_is_bolt(const struct detail_layer *l);
double section_bolt_exit(const struct scene *s);
/* u of the middle of a hook's base. */
double section_hook_base(const struct scene *s, const struct detail_layer *hook);
void section_hook(struct scene *s, struct detail_layer *l);
void section_clamp(struct scene *s, struct detail_layer *l);
/* Height above the origin of the highest fitting, along its own axis. */
double section_height(const struct scene *s);
void plan_frame(struct scene *s);
void plan_along(struct scene *s, double u, double width, enum drawing_dash dash);
void plan_edge(struct scene *s, enum drawing_dash dash, double u0, double v0, double u1, double v1);
/* plan_fittings.c */
void plan_diamond(struct scene *s, struct detail_layer *l);
void plan_ring(struct scene *s, struct detail_layer *l, enum fill fill, bool hidden);
void plan_rows(struct scene *s, struct detail_layer *l);
void plan_screws(struct scene *s, struct detail_layer *l);
void plan_hook(struct scene *s, struct detail_layer *l);
void plan_paint(struct scene *s);

/* Closed shape of the world, cut to the window along u. */
void scene_shape(struct scene *s, double width, enum fill fill, const struct point *at, int n);
void scene_box(struct scene *s, enum fill fill, double u0, double v0, double u1, double v1);
void scene_line(struct scene *s, double width, enum drawing_dash dash, const struct point *at,
		int n);
/* The number of the layer points here. */
void scene_point(struct detail_layer *l, double u, double v);

/* words.c: one part with its sizes; what the picture is and is not. Buffers hold SCENE_TEXT. */
#define SCENE_TEXT 400
void scene_layer_words(const struct scene *s, const struct detail_layer *l, char *text);
void scene_note(const struct scene *s, char *text);

#define SCENE_MARGIN (4 * MM)
#define SCENE_BALLOON (2.5 * MM)
/* balloons.c: rows that the numbers of one side take; picture is on paper. */
int scene_balloon_rows(const struct scene *s);
void scene_balloons(struct scene *s, struct box picture);
/* laps.c: how many times as thick the laps are drawn below the section, 0 for not at all; the
   height that this takes on paper; low is the y of the deck. */
double scene_laps_ratio(const struct scene *s);
double scene_laps_height(const struct scene *s, double width);
void scene_laps(const struct scene *s, double left, double low, double width);
/* key.c: lays the paper out round the scene and draws it. */
struct drawing *scene_sheet(struct scene *s);

#endif
