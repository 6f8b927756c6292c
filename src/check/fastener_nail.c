/* SPDX-License-Identifier: MIT */
/* One smooth common nail, 16d, through the same plate and layers into the same wood: what NDS gives
   it in withdrawal from side grain (12.2.3). Its place is beside screws, to see why they are taken.
 */
#include "check/fastener_nail.h"

#include <math.h>

#include "resist/connection.h"
#include "resist/lrfd.h"
#include "resist/nail.h"
#include "table/lookup_fastener.h"
#include "table/lookup_wood.h"

struct fastener_nail fastener_nail_compare(const struct fastener_question *q)
{
	const struct nail_row *row = nail_row("common", "16d");
	struct fastener_nail n = {0};
	struct connection_factors k;

	if (q->kind == FASTENER_SHEET_SCREW || q->kind == FASTENER_THROUGH_BOLT || !row ||
	    !(q->G > 0) ||
	    !connection_factors_find(q->lrfd ? 1 : q->CD, q->wet, q->temperature, false, &k))
		return n;
	n.D = row->D_in * M_PER_IN;
	n.L = row->L_in * M_PER_IN;
	n.p = fmin(fmax(0, n.L - q->plate - q->layers), q->depth);
	/* wet wood dries under a roof: once wet, once dry */
	const struct connection_factor_row *CM = connection_factor_row(
		"CM", q->wet ? "nail-withdrawal-mixed" : "nail-withdrawal-same");

	n.pull = CM ? nail_withdrawal(NULL, NAIL_SMOOTH, q->G, n.D) * n.p * k.CD * CM->value * k.Ct
		    : 0;
	if (q->lrfd)
		n.pull = lrfd_connection(NULL, n.pull, q->lambda);
	return n;
}
