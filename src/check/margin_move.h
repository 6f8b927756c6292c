/* SPDX-License-Identifier: MIT */
/* By what a crew may be wrong in each input. Internal to src/check: see margin_find. */
#ifndef RP_CHECK_MARGIN_MOVE_H
#define RP_CHECK_MARGIN_MOVE_H

#include "check/margin.h"

#define PSF (N_PER_LBF / (M_PER_FT * M_PER_FT))
#define MPH (M_PER_MI / 3600)

/* Moves one input; false where the step leads nowhere. sign 1 is most often the worse way, -1 the
   other; the caller sorts them by what they do. */
typedef bool margin_move(struct job *job, int sign);

/* NULL: no input but the curves of the wind coefficients. */
extern margin_move *const margin_moves[MARGIN_COUNT];

#endif
