/* SPDX-License-Identifier: MIT */
/* Deflection of a solved beam, and moment and shear at a place. Elastic beam theory: EI v'' = -M, v
   down.

   On each piece the slope is a cubic and the deflection of the fourth degree, both exact. The slope
   at the left end of a span follows from v = 0 at both its ends. The largest deflection is where
   the slope is 0: between two places where the moment changes sign the slope only rises or only
   falls, so a root is bracketed and halved down to the last bits; v is flat there, so its error is
   of second order in them. */
#include "resist/beam.h"

#include <assert.h>
#include <math.h>

#include "resist/beam_walk.h"

/* Slope and deflection, times EI, at the left end of a piece. */
struct bow {
	double slope, v;
};

static double slope_at(const struct beam_piece *p, const struct bow *b, double s)
{
	return b->slope - s * (p->M + s * (p->V / 2.0 - s * p->w / 6.0));
}

static double bow_at(const struct beam_piece *p, const struct bow *b, double s)
{
	return b->v + s * (b->slope - s * (p->M / 2.0 + s * (p->V / 6.0 - s * p->w / 24.0)));
}

static void take(struct beam_peak *peak, double v, double x)
{
	if (fabs(v) > fabs(peak->value))
		*peak = (struct beam_peak){ v, x };
}

/* Places inside the piece where the moment changes sign, rising; returns how many. */
static int moment_roots(const struct beam_piece *p, double root[2])
{
	/* M + V s - w s^2/2 = 0; the form that does not cancel */
	const double D = p->V * p->V + 2.0 * p->w * p->M;
	const double q = p->V + copysign(sqrt(fmax(D, 0.0)), p->V);
	const double a = q / p->w, b = -2.0 * p->M / q;
	int n = 0;

	if (D < 0.0)
		return 0;
	if (fmin(a, b) > 0.0 && fmin(a, b) < p->length)
		root[n++] = fmin(a, b);
	if (fmax(a, b) > 0.0 && fmax(a, b) < p->length && (n == 0 || fmax(a, b) > root[0]))
		root[n++] = fmax(a, b);
	return n;
}

static double slope_root(const struct beam_piece *p, const struct bow *b, double low, double high)
{
	const bool falls = slope_at(p, b, low) > 0.0;

	for (int i = 0; i < 64; i++) { /* 64 halvings leave less than the spacing of doubles */
		const double middle = (low + high) / 2.0;

		if (!(middle > low && middle < high)) /* neighbours already */
			return middle;
		if ((slope_at(p, b, middle) > 0.0) == falls)
			low = middle;
		else
			high = middle;
	}
	return (low + high) / 2.0;
}

static void piece_peak(const struct beam_piece *p, const struct bow *b, struct beam_peak *peak)
{
	double cut[4] = { 0.0 };
	const int inner = moment_roots(p, cut + 1);

	cut[inner + 1] = p->length;
	for (int i = 0; i <= inner; i++) {
		if ((slope_at(p, b, cut[i]) > 0.0) != (slope_at(p, b, cut[i + 1]) > 0.0)) {
			const double s = slope_root(p, b, cut[i], cut[i + 1]);

			take(peak, bow_at(p, b, s), p->x + s);
		}
	}
	take(peak, bow_at(p, b, 0.0), p->x);
	take(peak, bow_at(p, b, p->length), p->x + p->length);
}

/* Goes over the pieces of one field, from *at on, with the given start; with a peak to fill, looks for it too. Leaves *at
   behind the field. */
static struct bow over_field(const struct beam_pieces *pieces, size_t *at, size_t field, struct bow b,
                             struct beam_peak *peak)
{
	for (; *at < pieces->count && pieces->at[*at].field == field; ++*at) {
		const struct beam_piece *p = &pieces->at[*at];

		if (peak != NULL)
			piece_peak(p, &b, peak);
		b = (struct bow){ slope_at(p, &b, p->length), bow_at(p, &b, p->length) };
	}
	return b;
}

/* Keeps the peak that is larger for the length it belongs to. */
static void keep_worse(struct beam_peak peak, double length, double EI, struct beam_peak *worst,
                       double *worst_length)
{
	peak.value /= EI;
	if (fabs(peak.value) * *worst_length > fabs(worst->value) * length ||
	    !(*worst_length > 0.0)) {
		*worst = peak;
		*worst_length = length;
	}
}

void beam_deflect_in(const struct beam *beam, const struct beam_pieces *pieces, double EI, struct beam_bow *out)
{
	const size_t n = beam->supports;
	const double left = beam->support[0] - beam->start, right = beam->end - beam->support[n - 1];
	const struct bow level = { 0.0, 0.0 };
	size_t at = 0;
	struct bow tip, b = level;
	struct beam_peak peak;

	assert(EI > 0.0);
	*out = (struct beam_bow){ .span.x = beam->support[0], .overhang.x = beam->start };
	tip = over_field(pieces, &at, 0, level, NULL);
	for (size_t i = 1; i < n; i++) {
		const double L = beam->support[i] - beam->support[i - 1];
		size_t look = at, start = 0;

		b = over_field(pieces, &look, i, level, NULL);
		b = (struct bow){ -b.v / L, 0.0 };
		/* the left overhang goes on with the slope of the first span */
		if (i == 1 && left > 0.0) {
			const double slope = b.slope - tip.slope;

			peak = (struct beam_peak){ 0.0, beam->start };
			over_field(pieces, &start, 0, (struct bow){ slope, -tip.v - slope * left }, &peak);
			keep_worse(peak, left, EI, &out->overhang, &out->overhang_length);
		}
		peak = (struct beam_peak){ 0.0, beam->support[i - 1] };
		b = over_field(pieces, &at, i, b, &peak);
		keep_worse(peak, L, EI, &out->span, &out->span_length);
	}
	if (right > 0.0) {
		b.v = 0.0; /* at the last support, but for rounding */
		peak = (struct beam_peak){ 0.0, beam->end };
		over_field(pieces, &at, n, b, &peak);
		keep_worse(peak, right, EI, &out->overhang, &out->overhang_length);
	}
}

void beam_deflect(const struct beam *beam, const struct beam_forces *forces, double EI, struct beam_bow *out)
{
	struct beam_events events;
	struct beam_walk walk;
	struct beam_pieces pieces;

	pieces.count = 0;
	beam_events_fill(beam, &events);
	beam_walk_begin(&walk, beam, forces, &events);
	while (beam_walk_next(&walk, &pieces.at[pieces.count]))
		pieces.count++;
	beam_deflect_in(beam, &pieces, EI, out);
}

static bool piece_of(const struct beam *beam, const struct beam_forces *forces, double x,
                     struct beam_piece *found)
{
	struct beam_events events;
	struct beam_walk walk;
	struct beam_piece p;
	bool any = false;

	beam_events_fill(beam, &events);
	beam_walk_begin(&walk, beam, forces, &events);
	while (beam_walk_next(&walk, &p) && p.x <= x) {
		*found = p;
		any = true;
	}
	return any;
}

double beam_moment_at(const struct beam *beam, const struct beam_forces *forces, double x)
{
	struct beam_piece p;

	if (!piece_of(beam, forces, x, &p) || x > beam->end)
		return 0.0;
	return beam_piece_moment(&p, x - p.x);
}

double beam_shear_at(const struct beam *beam, const struct beam_forces *forces, double x)
{
	struct beam_piece p;

	if (!piece_of(beam, forces, x, &p) || x > beam->end)
		return 0.0;
	return beam_piece_shear(&p, x - p.x);
}
