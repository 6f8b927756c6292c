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

/* Fasteners that one end needs. 0 when one carries nothing. */
int block_end_count(double end_force, double one);

#endif
