/* SPDX-License-Identifier: MIT */
/* The layers of a drawing of the covering library with the job's sizes in them: the one reader
   behind the details of the guide and the sections of the sheets. */
#ifndef RP_DETAIL_LAYERS_H
#define RP_DETAIL_LAYERS_H

#include "guide/guide.h"
#include "roof/polygon.h"

#define DETAIL_LAYERS 24
/* What a boot keeps off each seam of its pan (common practice). */
#define SEAM_CLEAR (3 * M_PER_IN)

/* Sizes of a layer: member, name in the library. */
#define LAYER_SIZES(S)                                                                             \
	S(down, "down")                                                                            \
	S(up, "up")                                                                                \
	S(side, "side")                                                                            \
	S(thickness, "thickness") S(base, "base") S(height, "height") S(diameter, "diameter")      \
		S(length, "length") S(exposure, "exposure") S(butt_up, "butt-up")                  \
			S(breadth, "breadth") S(gap, "gap") S(turn_up, "turn-up")                  \
				S(spacing, "spacing")

/* m; NAN where the library gives none. */
struct detail_layer {
	char kind[24], label[96];
	bool woven, plumb, turned, of_job;
	enum guide_fastener as; /* of the screw or bolt: what the job has in its place */
#define S(member, name) double member;
	LAYER_SIZES(S)
	struct {
		LAYER_SIZES(S)
	} usual; /* as the library has them, NAN where the job gives the size */
#undef S
	/* for who draws */
	double foot;     /* v of its underside, m */
	struct point at; /* where its number points */
	bool shown;
};

struct detail_layers {
	char title[160];
	bool plan, along, pipe; /* pipe: of a pipe, not of a foot */
	bool wall;              /* of a pipe through a wall: drawn upright */
	double theta;           /* of the roof as drawn, rad */
	bool theta_of_job;
	double post_least; /* the job's post is shorter than this, m; 0: long enough */
	bool boot_too_wide; /* its corners come nearer than SEAM_CLEAR to the seams of its pan */
	int layers;
	struct detail_layer layer[DETAIL_LAYERS];
};

/* Reads the drawing (of "foot", "pipe" or "wall"; a plan that the library lacks is made of the
   section's layers) and lets it follow the job: plates reach as far up as pitch and courses ask, a
   sleeve takes the pipe with its insulation and stands high enough, its flange grows with it. False
   if there is no such drawing. */
bool detail_layers_read(struct detail_layers *r, const struct guide_library *lib,
			const struct guide_request *request, const char *of, const char *view);

/* layers_fit.c */
void layers_fit(struct detail_layers *r, const struct guide_request *request);
/* layers.c: every layer of a kind; every block between two rafters. */
void layers_take_out(struct detail_layers *r, const char *kind);
void layers_take_out_carriers(struct detail_layers *r);

bool layer_is(const struct detail_layer *l, const char *kind);
/* First layer of a kind, or NULL. */
const struct detail_layer *layer_find(const struct detail_layer *layer, int layers,
				      const char *kind);
/* A block between two rafters that carries the foot; not a filler flush with the deck. */
bool layer_carries(const struct detail_layer *l);
/* By its name in the library; NAN if the layer has no such size. */
double layer_size(const struct detail_layer *l, const char *name);
/* a, or b where a is not known. */
double known(double a, double b);

#endif
