/* SPDX-License-Identifier: MIT */
/* Blocks between rafters: which ones may be set, and what a foot on one does to them. Internal to
   src/check. */
#ifndef RP_CHECK_BLOCK_H
#define RP_CHECK_BLOCK_H

#include "check/context.h"

/* Kinds of block in the order in which they are tried, numbered from 1. */
int block_kinds(void);
/* Places with blocks of this kind for the context; false, and *why says what speaks against it. */
bool block_set(struct context *c, int kind, const char **why);
/* Takes the blocks away again. */
void block_clear(struct context *c);
/* Whether the job leaves this kind to choose. */
bool block_wanted(const struct context *c, int kind);

/* fastener_check for a foot that stands on a block, the block and its ends with it; holds: of enum
   held. */
bool block_foot_check(const struct context *c, struct trace *trace, const struct attachment *a,
		      const struct force *f, double up, double slope, unsigned holds,
		      struct check_value check[CHECK_COUNT]);

/* Records how the values of the screw in the block and of the nails in its ends come about. */
void block_show(const struct context *c, struct trace *trace);

/* Which feet stand on blocks, and what is to be said of them. why: what spoke against blocks, or
 * NULL. */
void block_tell(struct context *c);
void block_refuse(struct context *c, const char *why);

#endif
