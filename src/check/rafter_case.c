/* SPDX-License-Identifier: MIT */
/* Cases of a rafter that need not be solved, because one before them cannot come out better: no load
   of it is less, and what the wood takes under it, which falls with duration, is no more. The worst
   of each kind is kept only where a later one is above it, so that the answer is the same. */
#include "check/rafter_case.h"

#include "check/load_case.h"

double rafter_roof_snow(const struct context *c, int i, bool array)
{
	const struct snow_loads *s = &c->snow;

	if (!array)
		return i == 0 ? s->ps_before : s->leeward_before;
	return s->snow[i].roof + s->snow[i].surcharge; /* surcharge over the whole span: safe side */
}

int rafter_snow_cases(const struct context *c, bool array)
{
	return array ? c->snow.cases : 2;
}

/* A snow case without snow anywhere. */
static bool bare(const struct context *c, int i, bool array)
{
	const struct snow_load_case *s = &c->snow.snow[i];

	return rafter_roof_snow(c, i, array) <= 0 &&
	       (!array || (s->array <= 0 && s->surcharge <= 0 && s->beside <= 0 && s->strip <= 0));
}

static bool reaches(double a, double b, bool more)
{
	return a >= b && (more || a <= b);
}

bool rafter_case_outdone(const struct context *c, int at, int snow, bool array, bool more)
{
	const struct load_combination *k = &c->combination[at];
	const double S = snow < 0 || bare(c, snow, array) ? 0 : k->S, duration = case_duration(c, k);

	for (int i = 0; i < at; i++) {
		const struct load_combination *m = &c->combination[i];

		/* with snow of its own it was solved for this snow case too, or for any where here is none */
		if (reaches(m->D, k->D, more) && reaches(m->S, S, more) && reaches(m->Lr, k->Lr, more) &&
		    reaches(m->W, k->W, more) && case_duration(c, m) <= duration &&
		    (m->S <= 0 || rafter_snow_cases(c, array) > 0))
			return true;
	}
	return false;
}
