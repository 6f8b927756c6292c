/* SPDX-License-Identifier: MIT */
/* A foot that lands between two rafters stands on a block of lumber nailed or screwed to both. Half
   the force goes to each rafter in the worst case only if the foot stands in the middle; nearer one
   rafter it takes more. SI. */
#ifndef RP_RESIST_BLOCKING_H
#define RP_RESIST_BLOCKING_H

#include <stdbool.h>

#include "step/step.h"

struct block_load {
	double P;     /* force across the roof, up or down, N */
	double clear; /* between the rafters' faces, m */
	double at;    /* of the foot from the nearer rafter's face, m */
};

struct block_forces {
	double near_end, far_end; /* N */
	double M;                 /* N m */
};

/* Simple beam between the two rafters. */
struct block_forces block_forces(struct trace *trace, const struct block_load *load);

/* Allowable side load of one nail or screw driven through the rafter into the block's end grain, N:
   Z' times Ceg 0.67 (NDS 12.5.2.2). In withdrawal an end-grain nail counts nothing (12.2.3.3). */
double block_end_fastener(struct trace *trace, double Z_prime);

/* Twist of a block by a force along the rafters whose line lies h above its top, N m; all of it,
   both ends together. */
double block_twist(struct trace *trace, double F, double h, double d);
/* Of the twist T of a foot `at` from the nearer rafter's face, what that end takes, N m. */
double block_twist_end(struct trace *trace, double T, double at, double clear);
/* Largest shear stress of a rectangle b by d under a twisting moment, Pa. */
double block_twist_stress(struct trace *trace, double T, double b, double d);

/* Bending across the roof and along it together: fb1/F'b1 + fb2/(F'b2 (1 - (F'b1/FbE)^2)),
   NDS 3.9.2 without axial force and with the largest fb1 in the square, so that it grows as the
   force does; 1 is the limit. Infinite where F'b1 reaches FbE. */
double block_both_ways(struct trace *trace, double fb1, double Fb1, double fb2, double Fb2,
		       double FbE);
/* Nails or screws of one end in a grid: columns along the rafter, rows down it, of a rectangle
   `wide` by `high` from outermost to outermost. */
struct block_grid {
	int columns, rows;
	double wide, high; /* m */
};
/* On the worst of them: both forces of this end and its part of the twist, N; the two are added as
   if they pointed one way (safe side). Infinite where a twist meets a single fastener. */
double block_grid_force(struct trace *trace, const struct block_grid *grid, double P, double F,
			double T);

#endif
