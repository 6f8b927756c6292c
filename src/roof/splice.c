/* SPDX-License-Identifier: MIT */
/* Laid from the left, each joint as far along as it may be: whatever is laid otherwise is never
   further with as many pieces, so that none needs fewer. Laid so from the right, the joints are as
   near to the left as they can be; between the two each has room to choose. */
#include "roof/splice.h"

#include <math.h>
#include <string.h>

#include "quantity/quantity.h"

#define TRIES 32    /* places in the room of a joint */
#define PLACES (2 * TRIES + 2)
#define HALVINGS 50 /* a span to the last bit */

/* The rail as seen from the other end. */
static struct splice_rail turned(const struct splice_rail *r, double *foot)
{
	struct splice_rail t = *r;

	t.x0 = -r->x1;
	t.x1 = -r->x0;
	t.foot = foot;
	for (int i = 0; i < r->feet; i++)
		foot[i] = -r->foot[r->feet - 1 - i];
	return t;
}

/* The farthest place for a joint at x or before it, but after `from`; `from` if there is none. */
static double place_before(const struct splice_rail *r, double from, double x)
{
	double best = from;

	if (r->feet < SPLICE_FEET)
		return from;
	for (int i = 1; i + 1 < r->feet; i++) {
		const double reach = i + 2 < r->feet ? r->reach * (r->foot[i + 1] - r->foot[i]) : 0;
		const double back = i > 1 ? r->reach * (r->foot[i] - r->foot[i - 1]) : 0;
		const double place = fmin(x, r->foot[i] + reach);

		if (place > best && at_least(place, r->foot[i] - back))
			best = place;
	}
	return best;
}

int splice_lay(const struct splice_rail *r, double at[SPLICE_MAX])
{
	double from = r->x0;
	int n = 0;

	while (!at_most(r->x1 - from, r->stock)) {
		const double next = place_before(r, from, from + r->stock);

		if (!(next > from) || n == SPLICE_MAX)
			return -1;
		at[n++] = from = next;
	}
	return n;
}

static bool allowed(const struct splice_rail *r, double x)
{
	return place_before(r, x - 1e-9, x) > x - 1e-9;
}

bool splice_fits(const struct splice_rail *r, const double *at, int joints)
{
	double from = r->x0;

	for (int i = 0; i < joints; i++) {
		if (!(at[i] > from) || !allowed(r, at[i]) || !at_most(at[i] - from, r->stock))
			return false;
		from = at[i];
	}
	return at_most(r->x1 - from, r->stock);
}

/* Where the rail does not bend between two places, if it bends either way there. */
static double still(double (*moment)(const void *, double), const void *context, double a, double b)
{
	const bool sagging = moment(context, a) > 0;

	for (int i = 0; i < HALVINGS; i++) {
		const double middle = (a + b) / 2;

		if ((moment(context, middle) > 0) == sagging)
			a = middle;
		else
			b = middle;
	}
	return a;
}

/* Places to try for one joint, from the right end of its room. */
static int places(const struct splice_rail *r, double low, double high,
		  double (*moment)(const void *, double), const void *context, double place[PLACES])
{
	double before = high;
	int n = 0;

	place[n++] = high;
	for (int i = 1; i <= TRIES && low < high; i++) {
		const double x = i < TRIES ? high - (high - low) * i / TRIES : low;

		if ((moment(context, x) > 0) != (moment(context, before) > 0)) {
			const double zero = still(moment, context, x, before);

			if (allowed(r, zero))
				place[n++] = zero;
		}
		if (i == TRIES || allowed(r, x))
			place[n++] = x;
		before = x;
	}
	return n;
}

/* The places of one joint: largest moment of it and those before, and which place that one took. */
struct choice {
	int count;
	double x[PLACES], worst[PLACES];
	int from[PLACES];
};

static void follow(const struct splice_rail *r, const struct choice *last, struct choice *now,
		   double (*moment)(const void *, double), const void *context)
{
	for (int i = 0; i < now->count; i++) {
		const double m = fabs(moment(context, now->x[i]));

		now->worst[i] = HUGE_VAL;
		for (int k = 0; k < last->count; k++)
			if (now->x[i] > last->x[k] && at_most(now->x[i] - last->x[k], r->stock) &&
			    fmax(m, last->worst[k]) < now->worst[i]) {
				now->worst[i] = fmax(m, last->worst[k]);
				now->from[i] = k;
			}
	}
}

int splice_lay_easy(const struct splice_rail *r, double (*moment)(const void *context, double x),
		    const void *context, double at[SPLICE_MAX])
{
	double right[SPLICE_MAX], foot[SPLICE_MAX];
	struct choice choice[SPLICE_MAX / 4 + 1];
	const int n = splice_lay(r, at);

	if (n <= 0 || n > SPLICE_MAX / 4 || r->feet > SPLICE_MAX)
		return n;
	const struct splice_rail t = turned(r, foot);

	if (splice_lay(&t, right) != n)
		return n;
	choice[0] = (struct choice){.count = 1, .x = {r->x0}};
	for (int i = 1; i <= n; i++) {
		choice[i].count = places(r, fmin(at[i - 1], -right[n - i]), at[i - 1], moment,
					 context, choice[i].x);
		follow(r, &choice[i - 1], &choice[i], moment, context);
	}
	int best = -1;

	for (int i = 0; i < choice[n].count; i++)
		if (at_most(r->x1 - choice[n].x[i], r->stock) && choice[n].worst[i] < HUGE_VAL &&
		    (best < 0 || choice[n].worst[i] < choice[n].worst[best]))
			best = i;
	for (int i = n; i >= 1 && best >= 0; i--) {
		at[i - 1] = choice[i].x[best];
		best = choice[i].from[best];
	}
	return n;
}
