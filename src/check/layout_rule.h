/* SPDX-License-Identifier: MIT */
/* Where a foot may not stand, and where a rail may not be joined, whatever the loads are. Internal
 * to src/check. */
#ifndef RP_CHECK_LAYOUT_RULE_H
#define RP_CHECK_LAYOUT_RULE_H

#include "check/pass.h"

/* True if a foot here would stand on an obstacle or a pipe, or nearer than the clearance. */
bool foot_blocked(const struct context *c, double x, double y);
/* True if any foot or rail of the layout breaks one of these, or a bay is longer than the maker's
 * limit. */
bool layout_breaks_rule(const struct context *c, const struct layout *layout);
/* The same, told as remarks. */
void layout_rules_tell(struct context *c, const struct pass *pass);

#endif
