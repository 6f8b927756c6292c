/* SPDX-License-Identifier: MIT */
/* Stresses of a rafter as one beam. Internal to rafter_whole_*.c. */
#ifndef RP_CHECK_RAFTER_WHOLE_STRESS_H
#define RP_CHECK_RAFTER_WHOLE_STRESS_H

#include "check/rafter_whole.h"

/* One rafter under rating. */
struct rating {
	struct context *c;
	const struct pass *pass;
	int rafter; /* index into result.frame_x */
	struct rafter_whole whole;
	bool array;
	struct check_value *check;
	int *pattern, at; /* pattern under way, -1: even snow */
	const struct check_value *target;
	enum check_id governs;
	bool telling; /* of the target's case: traces what makes it up */
	struct trace *trace;
	struct rafter_stage *stage; /* its loads; NULL: one by one */
};

/* Holds one solved case against what the wood takes; keeps the worst of each kind in check[]. While
   q is telling, traces what makes up the target. */
void rafter_whole_stresses(struct rating *q, struct check_value check[CHECK_COUNT],
			   const struct whole_beam *b, const struct beam_forces *f,
			   const struct rafter_case *k);

#endif
