/* SPDX-License-Identifier: MIT */
/* Load combinations as factor columns. See lookup.h for what all look-ups have in common. */
#ifndef RP_TABLE_LOOKUP_COMBINATION_H
#define RP_TABLE_LOOKUP_COMBINATION_H

#include <stddef.h>

#include "step/step.h"
#include "table/tables.h"

/* struct load_combination_row { enum edition edition; enum load_combination_method method; const
   char *id, *variant, *text; enum load_combination_use use; double D, Lr, S, W, Ev, Eh, CD, lambda;
   }

   id is the number that the standard prints ("3", "6a"), variant the load chosen where it says "or"
   ("S", "Lr") or "". method: LOAD_COMBINATION_METHOD_ASD, _LRFD. use: LOAD_COMBINATION_USE_DOWN: W
   is the pressure toward the roof; LOAD_COMBINATION_USE_UPLIFT: W is the suction, D the dry array
   alone, counted against it; LOAD_COMBINATION_USE_SEISMIC: no wind. W carries the sign of its
   effect on a force that is positive toward the roof and multiplies the magnitude of the pressure:
   +0.6 in D + 0.6W pressing down, -0.6 in 0.6D + 0.6W lifting. Ev is signed in the same way. CD
   (ASD; NDS Table 2.3.2, the shortest duration in the combination) and lambda (LRFD; NDS Table N3)
   are NAN for the other method. S multiplies the snow of the edition's own level (7-22: strength).

   All combinations of an edition and method in the order of the standard. count 0 if there is none
   (EDITION_ANY). */
struct load_combination_list {
	const struct load_combination_row *row;
	size_t count;
};
struct load_combination_list load_combinations(enum edition e, enum load_combination_method method);

#endif
