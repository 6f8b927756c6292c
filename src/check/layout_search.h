/* SPDX-License-Identifier: MIT */
/* The search of src/roof/search.h on a real job: what a foot, a rail and a rafter take is asked of
   this room. Internal to src/check. */
#ifndef RP_CHECK_LAYOUT_SEARCH_H
#define RP_CHECK_LAYOUT_SEARCH_H

#include "check/pass.h"

/* Improves on a layout. `layout` comes in with the one that a walk from the widest bay down has
   found (pass: how it rates) and goes out with the best: the fewest feet that hold, or the wanted
   number; unchanged where nothing better was found. Notes in the result how far that is proved.
   False where the search has nothing to say. The pass is overwritten: rate the layout again. */
bool layout_search(struct context *c, struct layout *layout, struct pass *pass);
/* Says in remarks what the search proved. */
void layout_search_tell(struct context *c);

#endif
