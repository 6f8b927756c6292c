/* SPDX-License-Identifier: MIT */
/* Joints of the rail; and the rail bent down the slope and across it at once: stresses about both
   axes added, each force of one combination with the other. ASD, whatever the method of the job.
   The collectors' frames, clamped on top, would help; nothing is counted on them. */
#include "check/rail.h"

#include <math.h>

#include "check/attachment.h"
#include "check/load_case.h"
#include "resist/aluminium.h"

/* Largest moment under 1 per area of array, and what the rail takes about either axis. */
struct bends {
	double moment, M_x, M_y;
};

static void hold(const struct bends *b, double normal, double along, const char *combination,
		 struct rail_bent *worst)
{
	const double ratio = normal * b->moment / b->M_x + along * b->moment / b->M_y;

	if (ratio > worst->ratio)
		*worst = (struct rail_bent){ratio, normal, along, combination};
}

/* Push of snow held above the array on its topmost rail, per area like the other loads. */
static double held(const struct context *c, const struct attachment *a, int snow, double factor)
{
	const double width = fmax(a->reaction_width, a->tributary_width);

	return held_force(c, a, snow, factor, NULL) / (width * a->tributary_depth);
}

/* In an earthquake; snow as the combination has it. */
static void quake(const struct context *c, const struct attachment *a, const struct bends *b,
		  struct rail_bent *worst)
{
	double normal, slope;

	for (int k = 0; k < c->quake.asds && c->quake.known; k++)
		for (int way = -1; way <= 1; way += 2)
			for (int s = 0; s < (c->quake.asd[k].S > 0 ? c->snow.cases : 1); s++)
				if (array_load_quake(c, &c->quake.asd[k], way,
						     c->quake.asd[k].S > 0 ? array_snow(c, s, a->tributary.y1) : 0,
						     1, NULL, &normal, &slope))
					hold(b, fabs(normal + slope * a->tip), fabs(slope),
					     c->quake.asd[k].text, worst);
}

bool rail_both_ways(const struct context *c, const struct attachment *a, int count, double moment,
		    struct rail_bent *worst)
{
	const struct job_rail *rail = &c->job->rail;
	struct rail_alloy alloy;
	double normal, slope;

	if (!isfinite(rail->weak_section_modulus) || rail->weak_section_modulus <= 0 ||
	    !rail_alloy_find(rail->alloy, &alloy))
		return false;
	const double F = rail_allowable_stress(NULL, &alloy);
	const double M_x = isfinite(rail->allowable_moment) ? rail->allowable_moment
							    : rail->section_modulus * F;
	const double M_y = rail->weak_section_modulus * F;

	if (!(M_x > 0)) /* NAN too */
		return false;
	const struct bends b = {moment, M_x, M_y};

	*worst = (struct rail_bent){.combination = ""};
	for (int i = 0; i < count; i++)
		quake(c, &a[i], &b, worst);
	for (int i = 0; i < count; i++)
		for (int k = 0; k < c->asds; k++) {
			const struct load_combination *x = &c->asd[k];

			if (array_load_up(c, x, a[i].p_up, 1, NULL, &normal, &slope))
				hold(&b, fmax(0, normal), slope, x->text, worst);
			for (int s = 0; s < c->snow.cases; s++)
				if (array_load_down(c, x, a[i].p_down,
						    array_snow(c, s, a[i].tributary.y1), 1, NULL,
						    &normal, &slope))
					hold(&b, fabs(normal), slope + held(c, &a[i], s, x->S),
					     x->text, worst);
		}
	return true;
}

struct bent {
	const struct beam *beam;
	const struct beam_forces *forces;
};

static double moment_at(const void *context, double x)
{
	const struct bent *b = context;

	return beam_moment_at(b->beam, b->forces, x);
}

bool rail_comes_in_lengths(const struct context *c)
{
	return c->job->rail.kind == SUPPORT_RAILS && isfinite(c->job->rail.stock_length) &&
	       c->job->rail.stock_length > 0;
}

int rail_joints_told(const struct context *c, const struct line *line, double at[SPLICE_MAX])
{
	const int number = (int)(line - c->line) + 1;
	int n = 0;

	for (int i = 0; i < c->job->rail_joints && c->job->rail.kind == SUPPORT_RAILS; i++) {
		const struct job_rail_joint *j = &c->job->rail_joint[i];
		int k = n;

		if (j->line != 0 && j->line != number)
			continue;
		for (; k > 0 && at[k - 1] > line->x0 + j->at; k--)
			at[k] = at[k - 1];
		at[k] = line->x0 + j->at;
		n++;
	}
	return n;
}

bool rail_is_joined(const struct context *c, const struct line *line)
{
	double at[SPLICE_MAX];

	return rail_joints_told(c, line, at) > 0 ||
	       (rail_comes_in_lengths(c) && !at_most(line->x1 - line->x0, c->job->rail.stock_length));
}

static struct splice_rail spliced(const struct context *c, const struct line *line,
				  const double *foot, int feet)
{
	const double reach = c->job->rail.splice_reach;

	return (struct splice_rail){.x0 = line->x0,
				    .x1 = line->x1,
				    .stock = rail_comes_in_lengths(c) ? c->job->rail.stock_length : HUGE_VAL,
				    .reach = isfinite(reach) ? reach : 0.5,
				    .feet = feet,
				    .foot = foot};
}

bool rail_cannot_be_laid(const struct context *c, const struct line *line, const double *x, int count)
{
	const struct splice_rail rail = spliced(c, line, x, count);
	double at[SPLICE_MAX];

	const int told = rail_joints_told(c, line, at);

	if (told > 0)
		return count >= 2 && !splice_fits(&rail, at, told);
	return rail_comes_in_lengths(c) && count >= 2 && splice_lay(&rail, at) < 0;
}

int rail_joints(const struct context *c, const struct line *line, const struct beam *beam,
		const struct beam_forces *forces, double at[SPLICE_MAX])
{
	const struct bent bent = {beam, forces};
	const struct splice_rail rail = spliced(c, line, beam->support, (int)beam->supports);
	int n = rail_joints_told(c, line, at);

	if (n == 0 && rail_comes_in_lengths(c))
		n = splice_lay_easy(&rail, moment_at, &bent, at);
	return n > 0 ? n : 0;
}

double rail_splice_moment(const struct context *c, const struct line *line, const struct beam *beam,
			  const struct beam_forces *forces)
{
	double at[SPLICE_MAX], worst = 0;
	const int n = rail_joints(c, line, beam, forces, at);

	for (int i = 0; i < n; i++)
		worst = fmax(worst, fabs(beam_moment_at(beam, forces, at[i])));
	return worst;
}
