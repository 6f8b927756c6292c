/* SPDX-License-Identifier: MIT */
/* Where a foot may not stand, and where a rail may not be joined, whatever the loads are. Internal
 * to src/check. */
#ifndef RP_CHECK_LAYOUT_RULE_H
#define RP_CHECK_LAYOUT_RULE_H

#include "check/pass.h"

/* True if a foot here would stand on an obstacle or a pipe, or nearer than the clearance. */
bool foot_blocked(const struct context *c, double x, double y);
/* True if a rail laid in full lengths from its left end would be joined before its second foot or
   after its last but one; x[] are the feet, rising. */
bool splice_in_end_span(const struct context *c, const struct line *line, const double *x,
			int count);
/* True if any foot or rail of the layout breaks one of these, or a bay is longer than the maker's
 * limit. */
bool layout_breaks_rule(const struct context *c, const struct layout *layout);
/* The same, told as remarks. */
void layout_rules_tell(struct context *c, const struct pass *pass);

#endif
