/* SPDX-License-Identifier: MIT */
/* Takes a solved beam down as what a second program needs: supports, stretches of constant load,
   forces; and what came out. */
#include "check/shown_beam.h"

#include <math.h>
#include <string.h>

#include "resist/rafter.h"

/* A stretch of the same load as the one before it is part of it. */
static void add_stretch(struct shown_beam *s, const struct beam_piece *p)
{
	struct beam_uniform *last = s->stretches > 0 ? &s->stretch[s->stretches - 1] : NULL;
	const double touch = 1e-9; /* m, N/m: apart by the last bits */

	if (fabs(p->w) < touch)
		return;
	if (last && fabs(last->x1 - p->x) < touch && fabs(last->w - p->w) <= 1e-12 * fabs(p->w)) {
		last->x1 = p->x + p->length;
		return;
	}
	if (s->stretches == SHOWN_STRETCH_MAX) {
		s->cut = true;
		return;
	}
	s->stretch[s->stretches++] = (struct beam_uniform){p->x, p->x + p->length, p->w};
}

/* Forces at one place are one force; in order of place. */
static void add_point(struct shown_beam *s, const struct beam_point *p)
{
	const double touch = 1e-9; /* m */
	int at = s->points;

	while (at > 0 && s->point[at - 1].x > p->x + touch)
		at--;
	if (at > 0 && fabs(s->point[at - 1].x - p->x) <= touch) {
		s->point[at - 1].P += p->P;
		return;
	}
	if (s->points == SHOWN_STRETCH_MAX) {
		s->cut = true;
		return;
	}
	memmove(&s->point[at + 1], &s->point[at], (size_t)(s->points - at) * sizeof *s->point);
	s->point[at] = (struct shown_point){p->x, p->P, 0};
	s->points++;
}

static double inside(double x, const struct beam *b)
{
	return fmin(fmax(x, b->start), b->end);
}

bool shown_beam_take(struct shown_beam *s, const struct beam *b)
{
	struct beam_forces f;
	struct beam_pieces pieces;

	*s = (struct shown_beam){.start = b->start, .end = b->end, .inner = NAN};
	if (!beam_solve_pieces(b, &f, &pieces))
		return false;
	for (size_t i = 0; i < b->supports; i++)
		s->support[s->supports++] =
			(struct shown_support){b->support[i], f.reaction[i], f.moment[i]};
	for (size_t i = 0; i < pieces.count; i++)
		add_stretch(s, &pieces.at[i]);
	for (size_t i = 0; i < b->points; i++)
		if (b->point[i].x >= b->start && b->point[i].x <= b->end)
			add_point(s, &b->point[i]);
	for (int i = 0; i < s->points; i++)
		s->point[i].moment = beam_moment_in(b, &pieces, inside(s->point[i].x, b));
	s->sagging = f.sagging;
	s->hogging = f.hogging;
	s->shear = f.shear;
	s->known = true;
	return true;
}

void shown_beam_steps(const struct shown_beam *s, struct trace *trace)
{
	const double least = 1e-6; /* m: an overhang of nothing is none */
	struct rafter_uniform w[SHOWN_STRETCH_MAX];
	struct rafter_point P[SHOWN_STRETCH_MAX];

	if (!trace || !s->known || s->cut || s->supports != 2 ||
	    s->support[0].x - s->start > least || s->end - s->support[1].x > least ||
	    s->stretches + s->points > BEAM_LOAD_MAX)
		return;
	const double at = fabs(s->hogging.value) > s->sagging.value ? s->hogging.x : s->sagging.x;

	for (int i = 0; i < s->stretches; i++)
		w[i] = (struct rafter_uniform){s->stretch[i].x0 - s->start,
					       s->stretch[i].x1 - s->start, 0, s->stretch[i].w};
	for (int i = 0; i < s->points; i++)
		P[i] = (struct rafter_point){s->point[i].x - s->start, 0, s->point[i].P};
	/* level, for the places are those along the beam already */
	const struct rafter level = {.span = s->end - s->start,
				     .theta = 0,
				     .uniforms = (size_t)s->stretches,
				     .points = (size_t)s->points,
				     .uniform = w,
				     .point = P};

	rafter_moment_at(trace, &level, at - s->start);
}
