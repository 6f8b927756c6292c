/* SPDX-License-Identifier: MIT */
/* Dimensions of a drawing: a distance between two points, distances in a chain, and running
   dimensions from one corner, as a tape lies on the roof. Offsets are metres on paper; points
   belong to the open view. */
#ifndef RP_DRAWING_DIMENSION_H
#define RP_DRAWING_DIMENSION_H

#include "drawing/drawing.h"

#define DIMENSION_TEXT (2.2 * MM)

/* The line stands `away` to the left of the way from a to b; negative: to the right. */
void dimension_between(struct drawing *d, struct point a, struct point b, double away,
		       const char *text);
void dimension_between_as(struct drawing *d, struct point a, struct point b, double away,
			  double size, const char *text);

#define RUNNING_MAX 160

/* Marks at rising distances from `zero` along x, or along y if `up`. The line stands `away` below
   (to the left of) zero, its labels beyond it; labels too near to each other are moved apart. */
struct running {
	struct point zero;
	bool up;
	double away;
	double size; /* of the labels */
	int n;       /* at most RUNNING_MAX; more are left out */
	const double *at;
	const char *const *text;
	double from; /* where the line begins, from zero; beyond zero it is drawn with a break */
};
/* Distances one after the other along x, the line `away` above zero, or along y, at the right of
   it. A text wider than its distance stands square to the line, beyond it. */
struct chain {
	struct point zero;
	bool up;
	double away;
	double size; /* of the texts */
	int n;       /* marks, at most CHAIN_MAX; there is a text less */
	const double *at;
	const char *const *text;
};
#define CHAIN_MAX 8
/* Room on paper that the texts take beyond the line, at this scale (paper over world). */
double dimension_chain_room(const struct drawing *d, const struct chain *c, double scale);
void dimension_chain(struct drawing *d, const struct chain *c);

/* Room on paper that the labels take beyond the line. */
double dimension_running_room(const struct drawing *d, const struct running *r);
void dimension_running(struct drawing *d, const struct running *r);

/* A label with a thin line that ends in a dot at what it names. `elbow` is the end of the line near
   the label, which stands to the right of it, or to the left if `left`. All on the open view. */
void dimension_leader(struct drawing *d, struct point what, struct point elbow, bool left,
		      double size, const char *text);

/* Moves n rising places apart to at least `pitch`, as little as can be (least squares). */
void dimension_spread(double *place, int n, double pitch);

#endif
