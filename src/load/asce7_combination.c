/* SPDX-License-Identifier: MIT */
/* Load combinations: ASCE/SEI 7-10 2.3.2 and 2.4.1, 7-16 and 7-22 2.3.1, 2.3.6, 2.4.1, 2.4.5. The
   rows are a table; this file hands them out in the words of the room. S multiplies the snow of the
   edition's own level: 7-22 puts 0.7 before its strength-level snow in ASD. */
#include "load/asce7_combination.h"

#include <assert.h>
#include <math.h>

#include "table/lookup_combination.h"

static enum combination_use use_of(enum load_combination_use use)
{
	switch (use) {
	case LOAD_COMBINATION_USE_UPLIFT:
		return COMBINATION_UPLIFT;
	case LOAD_COMBINATION_USE_SEISMIC:
		return COMBINATION_SEISMIC;
	case LOAD_COMBINATION_USE_DOWN:
	case LOAD_COMBINATION_USE_COUNT:
		break;
	}
	return COMBINATION_DOWN;
}

/* The table signs W for a pressure given as a magnitude; here the effect carries the sign. */
static struct load_combination combination(const struct load_combination_row *row)
{
	return (struct load_combination){.use = use_of(row->use),
					 .id = row->id,
					 .text = row->text,
					 .clause = row->source,
					 .D = row->D,
					 .Lr = row->Lr,
					 .S = row->S,
					 .W = fabs(row->W),
					 .Ev = row->Ev,
					 .Eh = row->Eh,
					 .CD = row->CD,
					 .lambda = row->lambda,
					 .confidence = row->status};
}

int asce7_combinations(enum edition edition, enum combination_method method, bool earthquake,
		       struct load_combination out[COMBINATION_MAX])
{
	const struct load_combination_list list = load_combinations(
		edition, method == COMBINATION_ASD ? LOAD_COMBINATION_METHOD_ASD
						   : LOAD_COMBINATION_METHOD_LRFD);
	int n = 0;

	for (size_t i = 0; i < list.count; i++) {
		if (list.row[i].use == LOAD_COMBINATION_USE_SEISMIC && !earthquake)
			continue;
		assert(n < COMBINATION_MAX);
		out[n++] = combination(&list.row[i]);
	}
	return n;
}

double combination_sum(const struct load_combination *c, const struct load_effect *e)
{
	return c->D * e->D + c->Lr * e->Lr + c->S * e->S + c->W * e->W + c->Ev * e->Ev +
	       c->Eh * e->Eh;
}
