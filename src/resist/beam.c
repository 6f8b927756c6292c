/* SPDX-License-Identifier: MIT */
/* Continuous beam on simple supports: reactions, support moments, largest moments and shear.

   Three-moment equation (elastic beam theory, constant stiffness, supports that do not move):
   M[i-1] L[i-1] + 2 M[i] (L[i-1] + L[i]) + M[i+1] L[i] = -(6 A a / L left + 6 A b / L right), where
   the terms on the right are those of the loads on the two spans, each taken as a simple beam. End
   moments come from the overhangs. Not covered: supports that settle or lift off, shear
   deformation, moments as loads. */
#include "resist/beam.h"

#include <assert.h>
#include <math.h>

#include "resist/beam_walk.h"

/* What the loads of one span do to it as a simple beam. */
struct span {
	double left, right;             /* reactions */
	double turn_left, turn_right;   /* 6 A b / L, 6 A a / L: 6 EI times the end rotations */
};

static bool described_well(const struct beam *b)
{
	if (!isfinite(b->start) || !isfinite(b->end) || b->supports < 2 ||
	    b->supports > BEAM_SUPPORT_MAX || b->uniforms > BEAM_LOAD_MAX ||
	    b->points > BEAM_LOAD_MAX - b->uniforms)
		return false;
	if (!(b->start <= b->support[0]) || !(b->support[b->supports - 1] <= b->end))
		return false;
	for (size_t i = 1; i < b->supports; i++)
		if (!(b->support[i - 1] < b->support[i]))
			return false;
	for (size_t i = 0; i < b->uniforms; i++) {
		const struct beam_uniform *u = &b->uniform[i];

		if (!isfinite(u->x0) || !isfinite(u->x1) || !isfinite(u->w) || !(u->x0 <= u->x1))
			return false;
	}
	for (size_t i = 0; i < b->points; i++)
		if (!isfinite(b->point[i].x) || !isfinite(b->point[i].P))
			return false;
	return true;
}

/* w from c to e, measured from the left end of a span L long. */
static void span_uniform(struct span *s, double L, double w, double c, double e)
{
	const double F = w * (e - c), middle = (c + e) / 2.0;
	const double c2 = L - e, e2 = L - c; /* the same seen from the right end */

	s->right += F * middle / L;
	s->left += F * (L - middle) / L;
	/* integral of w x (L^2 - x^2)/L from c to e, with the difference of powers split into
	   factors */
	s->turn_right += F * middle * (L * L - (e * e + c * c) / 2.0) / L;
	s->turn_left += F * (L - middle) * (L * L - (e2 * e2 + c2 * c2) / 2.0) / L;
}

static void span_point(struct span *s, double L, double P, double a)
{
	const double b = L - a;

	s->left += P * b / L;
	s->right += P * a / L;
	s->turn_right += P * a * (L * L - a * a) / L;
	s->turn_left += P * b * (L * L - b * b) / L;
}

/* First support to the right of x; 0 on the left overhang, n on the right one and from the last
   support on. */
static size_t field_of(const struct beam *b, double x)
{
	size_t low = 0, high = b->supports;

	while (low < high) {
		const size_t middle = low + (high - low) / 2;

		if (b->support[middle] <= x)
			low = middle + 1;
		else
			high = middle;
	}
	return low;
}

/* Loads of the fields: span[i] lies right of support i; overhang force and moment about the end
   support (hogging). */
struct loading {
	struct span span[BEAM_SUPPORT_MAX];
	double force[2], moment[2];
	double total;
};

/* Only the spans there are: there is room for many more. */
static void clear(struct loading *l, size_t supports)
{
	for (size_t i = 0; i < supports; i++)
		l->span[i] = (struct span){ 0 };
	l->force[0] = l->force[1] = l->moment[0] = l->moment[1] = l->total = 0.0;
}

static void place_uniform(const struct beam *b, const struct beam_uniform *u, struct loading *l)
{
	const size_t n = b->supports;
	double x = fmax(u->x0, b->start);
	const double end = fmin(u->x1, b->end);

	for (size_t field = field_of(b, x); x < end; field++) {
		const double to = field < n ? fmin(end, b->support[field]) : end;
		const double F = u->w * (to - x), middle = (x + to) / 2.0;

		l->total += F;
		if (field == 0) {
			l->force[0] += F;
			l->moment[0] += F * (b->support[0] - middle);
		} else if (field == n) {
			l->force[1] += F;
			l->moment[1] += F * (middle - b->support[n - 1]);
		} else {
			const double origin = b->support[field - 1];

			span_uniform(&l->span[field - 1], b->support[field] - origin, u->w,
			             x - origin, to - origin);
		}
		x = to;
	}
}

static void place_point(const struct beam *b, const struct beam_point *p, struct loading *l)
{
	const size_t n = b->supports, field = field_of(b, p->x);

	if (p->x < b->start || p->x > b->end)
		return;
	l->total += p->P;
	if (field == 0) {
		l->force[0] += p->P;
		l->moment[0] += p->P * (b->support[0] - p->x);
	} else if (field == n) {
		l->force[1] += p->P;
		l->moment[1] += p->P * (p->x - b->support[n - 1]);
	} else {
		const double origin = b->support[field - 1];

		span_point(&l->span[field - 1], b->support[field] - origin, p->P, p->x - origin);
	}
}

/* Both ends are eliminated at once and meet in the middle: two chains of divisions that do not wait for each other, and
   the same bits for a beam and its mirror image. */
void beam_three_moment(size_t n, const double *span, const double *rhs, double *scratch,
                       double *moment)
{
	size_t low = 1, high = n - 2;

	if (n < 3)
		return;
	/* up to `low`: M[i] = scratch[i] M[i+1] + moment[i]; down to `high`: the same of M[i-1] */
	double from_left = 0.0, from_right = 0.0, left = moment[0], right = moment[n - 1];

	for (; low < high; low++, high--) {
		const double p = 2.0 * (span[low - 1] + span[low]) + span[low - 1] * from_left;
		const double q = 2.0 * (span[high] + span[high - 1]) + span[high] * from_right;

		left = (rhs[low] - span[low - 1] * left) * (1.0 / p);
		right = (rhs[high] - span[high] * right) * (1.0 / q);
		from_left = -span[low] / p;
		from_right = -span[high - 1] / q;
		moment[low] = left;
		moment[high] = right;
		scratch[low] = from_left;
		scratch[high] = from_right;
	}
	if (low == high) {
		const double p = 2.0 * (span[low - 1] + span[low]) + (span[low - 1] * from_left + span[low] * from_right);

		moment[low] = (rhs[low] - (span[low - 1] * left + span[low] * right)) / p;
		low--;
		high++;
	} else { /* low = high + 1: each is given by the other */
		const double p = 1.0 - from_left * from_right;

		moment[high] = (left + from_left * right) / p;
		moment[low] = (right + from_right * left) / p;
		low = high - 1;
		high += 2;
	}
	for (; low > 0; low--, high++) {
		moment[low] += scratch[low] * moment[low + 1];
		moment[high] += scratch[high] * moment[high - 1];
	}
}

static void solve_moments(const struct beam *b, const struct loading *l, double *moment)
{
	const size_t n = b->supports;
	double span[BEAM_SUPPORT_MAX], rhs[BEAM_SUPPORT_MAX], scratch[BEAM_SUPPORT_MAX];

	for (size_t i = 0; i + 1 < n; i++)
		span[i] = b->support[i + 1] - b->support[i];
	for (size_t i = 1; i + 1 < n; i++)
		rhs[i] = -(l->span[i - 1].turn_right + l->span[i].turn_left);
	moment[0] = -l->moment[0];
	moment[n - 1] = -l->moment[1];
	beam_three_moment(n, span, rhs, scratch, moment);
}

static void sum_reactions(const struct beam *b, const struct loading *l, struct beam_forces *out)
{
	const size_t n = b->supports;

	for (size_t i = 0; i < n; i++)
		out->reaction[i] = 0.0;
	out->reaction[0] += l->force[0];
	out->reaction[n - 1] += l->force[1];
	for (size_t i = 0; i + 1 < n; i++) {
		const double turn =
			(out->moment[i + 1] - out->moment[i]) / (b->support[i + 1] - b->support[i]);

		out->reaction[i] += l->span[i].left + turn;
		out->reaction[i + 1] += l->span[i].right - turn;
	}
}

static void take_moment(struct beam_forces *out, double M, double x)
{
	if (M > out->sagging.value)
		out->sagging = (struct beam_peak){ M, x };
	if (M < out->hogging.value)
		out->hogging = (struct beam_peak){ M, x };
}

static void take_shear(struct beam_forces *out, double V, double x)
{
	if (fabs(V) > fabs(out->shear.value))
		out->shear = (struct beam_peak){ V, x };
}

static void take_piece(const struct beam_piece *p, struct beam_forces *out)
{
	/* where the shear changes sign inside the piece (infinite or no number without line load: not
	   inside); elsewhere the moment peaks at a piece's end */
	const double s = p->V / p->w;

	take_moment(out, p->M, p->x);
	if (s > 0.0 && s < p->length)
		take_moment(out, beam_piece_moment(p, s), p->x + s);
	take_shear(out, p->V, p->x);
	take_shear(out, beam_piece_shear(p, p->length), p->x + p->length);
}

static void find_peaks(const struct beam *beam, struct beam_forces *out, struct beam_pieces *pieces)
{
	struct beam_events events;
	struct beam_walk walk;

	out->sagging = out->hogging = out->shear = (struct beam_peak){ 0.0, beam->start };
	pieces->count = 0;
	beam_events_fill(beam, &events);
	beam_walk_begin(&walk, beam, out, &events);
	while (beam_walk_next(&walk, &pieces->at[pieces->count])) {
		take_piece(&pieces->at[pieces->count], out);
		pieces->count++;
		assert(pieces->count < sizeof pieces->at / sizeof *pieces->at);
	}
}

bool beam_solve_pieces(const struct beam *beam, struct beam_forces *out, struct beam_pieces *pieces)
{
	struct loading l;

	if (!described_well(beam))
		return false;
	clear(&l, beam->supports);
	for (size_t i = 0; i < beam->uniforms; i++)
		place_uniform(beam, &beam->uniform[i], &l);
	for (size_t i = 0; i < beam->points; i++)
		place_point(beam, &beam->point[i], &l);
	solve_moments(beam, &l, out->moment);
	sum_reactions(beam, &l, out);
	out->load = l.total;
	find_peaks(beam, out, pieces);
	return true;
}

bool beam_solve(const struct beam *beam, struct beam_forces *out)
{
	struct beam_pieces pieces;

	return beam_solve_pieces(beam, out, &pieces);
}

/* The last piece that begins at x or before; NULL off the beam. */
static const struct beam_piece *piece_at(const struct beam *beam, const struct beam_pieces *pieces, double x)
{
	size_t i = pieces->count;

	while (i > 0 && pieces->at[i - 1].x > x)
		i--;
	return i == 0 || x > beam->end ? NULL : &pieces->at[i - 1];
}

double beam_moment_in(const struct beam *beam, const struct beam_pieces *pieces, double x)
{
	const struct beam_piece *p = piece_at(beam, pieces, x);

	return p ? beam_piece_moment(p, x - p->x) : 0.0;
}

double beam_shear_in(const struct beam *beam, const struct beam_pieces *pieces, double x)
{
	const struct beam_piece *p = piece_at(beam, pieces, x);

	return p ? beam_piece_shear(p, x - p->x) : 0.0;
}

struct beam_peak beam_worst_moment(const struct beam_forces *f)
{
	return f->sagging.value >= -f->hogging.value ? f->sagging : f->hogging;
}
