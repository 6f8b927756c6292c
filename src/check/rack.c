/* SPDX-License-Identifier: MIT */
/* A tilted collector on two lines of feet, its high edge up the slope, as a rigid braced frame on two hinges: statics of a
   strip one metre wide. Forces Fn square to the roof (away from it positive) and Ft along it (up the slope positive) act in
   the middle of the chord, at yc up the slope from the lower foot and zc over the roof. The feet are s apart:

       upper foot lifts (Fn yc - Ft zc) / s,   lower foot lifts the rest;   Ft is shared alike.

   The forces are handed on as pressures on the strip of collector that each line carries. */
#include "check/wind_rule.h"

#include <math.h>

#include "check/check_steps.h"

/* in: Fn yc Ft zc s */
static double upper(const double *in)
{
	return (in[0] * in[1] - in[2] * in[3]) / in[4];
}

const struct step step_rack_upper = {
	.name = "rack-upper-foot", .symbol = "R_u", .unit = UNIT_PLF,
	.title = "lift of the upper line of feet of a tilted collector",
	.formula = "(Fn yc - Ft zc)/s", .clause = { "statics" }, .confidence = DERIVED,
	.note = "the rack is braced; negative: it presses",
	.in = { { "Fn", UNIT_PLF, "force square to the roof, away from it" },
	        { "yc", UNIT_FT, "from the lower foot to the middle of the collector, along the roof" },
	        { "Ft", UNIT_PLF, "force along the roof, up the slope" },
	        { "zc", UNIT_FT, "middle of the collector over the roof" },
	        { "s", UNIT_FT, "from the lower to the upper foot" } },
	.value = upper,
};

/* in: Fn R_u */
static double lower(const double *in)
{
	return in[0] - in[1];
}

const struct step step_rack_lower = {
	.name = "rack-lower-foot", .symbol = "R_l", .unit = UNIT_PLF,
	.title = "lift of the lower line of feet of a tilted collector",
	.formula = "Fn - R_u", .clause = { "statics" }, .confidence = DERIVED,
	.in = { { "Fn", UNIT_PLF, "force square to the roof, away from it" },
	        { "R_u", UNIT_PLF, "lift of the upper line of feet" } },
	.value = lower,
};

/* in: R l */
static double spread(const double *in)
{
	return in[0] / in[1];
}

const struct step step_rack_spread = {
	.name = "rack-line-pressure", .symbol = "p", .unit = UNIT_PSF,
	.title = "pull, push or slide of a line of feet, spread over the strip of collector that it carries",
	.formula = "R/l", .clause = { "statics" }, .confidence = DERIVED,
	.note = "of the force along the roof each line takes half",
	.in = { { "R", UNIT_PLF, "what the line of feet takes" },
	        { "l", UNIT_FT, "length of collector, up the slope, that the line of feet carries" } },
	.value = spread,
};

/* in: fW p A */
static double slide(const double *in)
{
	return in[0] * in[1] * in[2];
}

const struct step step_rack_slide = {
	.name = "rack-slide", .symbol = "Vw", .unit = UNIT_LB,
	.title = "wind along the roof on a foot of a tilted row, added to the down-slope force",
	.formula = "fW p A", .clause = { "statics" }, .confidence = DERIVED,
	.in = { { "fW", UNIT_NONE, "factor of wind in the combination" },
	        { "p", UNIT_PSF, "wind along the roof on the foot's strip, strength level" },
	        { "A", UNIT_FT2, "area that the attachment carries" } },
	.value = slide,
};

struct frame {
	double yc, zc, s;
};

static struct frame frame_of(const struct context *c)
{
	const struct job_rail *rail = &c->job->rail;
	const double Lp = c->r->wind.Lp, cos_tilt = cos(c->tilt);

	return (struct frame){ .yc = (Lp / 2 - rail->lower_inset) * cos_tilt,
		               /* the underside stands at `clearance`; the middle of the box lies half its depth higher */
		               .zc = c->job->collector.clearance + Lp / 2 * sin(c->tilt) +
		                     c->job->collector.depth / 2 * cos_tilt,
		               .s = (Lp - rail->lower_inset - rail->upper_inset) * cos_tilt };
}

/* Lift of one line under a strip's forces. */
static double lift(const struct frame *f, bool rear, double Fn, double Ft, struct trace *trace)
{
	const double up = STEP(trace, step_rack_upper, Fn, f->yc, Ft, f->zc, f->s);

	return rear ? up : STEP(trace, step_rack_lower, Fn, up);
}

static void keep(struct attachment *a, double R)
{
	a->p_up = fmax(a->p_up, R);
	a->p_down = fmax(a->p_down, -R);
}

/* Pressures square to the collector, away from the roof and toward it, one at a time. */
static void pressed(const struct context *c, const struct frame *f, bool rear, const struct array_pressure *p,
                    struct attachment *a, struct trace *trace)
{
	const double Lp = c->r->wind.Lp, out = cos(c->tilt) * Lp, along = sin(c->tilt) * Lp;

	keep(a, lift(f, rear, p->up * out, -p->up * along, trace));
	keep(a, lift(f, rear, -p->down * out, p->down * along, trace));
	a->p_shear = fmax(p->up, p->down) * along / 2;
}

/* Fh blows up the slope and down it, each with Fv and, for the most down force, without. */
static void structure(const struct context *c, const struct frame *f, bool rear, struct attachment *a,
                      struct trace *trace)
{
	for (int sign = -1; sign <= 1; sign += 2)
		for (int lifts = 0; lifts <= 1; lifts++) {
			const double Fv = lifts * c->Fv, Fh = sign * c->Fh;

			keep(a, lift(f, rear, Fv * c->cos_theta - Fh * c->sin_theta,
			             Fv * c->sin_theta + Fh * c->cos_theta, trace));
		}
	a->p_shear = fmax(a->p_shear, (c->Fv * c->sin_theta + c->Fh * c->cos_theta) / 2);
}

void rack_share(const struct context *c, const struct line *line, const struct array_pressure *p, struct attachment *a,
                struct trace *trace)
{
	a->p_up = p->up;
	a->p_down = p->down;
	a->p_shear = a->tip = 0;
	if (!c->rack || !p->known)
		return;
	const struct frame f = frame_of(c);
	const double depth = line->y_high - line->y_low;

	a->p_up = a->p_down = 0;
	pressed(c, &f, line->rear, p, a, trace);
	if (c->r->wind.rule == WIND_STRUCTURE)
		structure(c, &f, line->rear, a, trace);
	a->p_up = STEP(trace, step_rack_spread, a->p_up, depth);
	a->p_down = STEP(trace, step_rack_spread, a->p_down, depth);
	a->p_shear = STEP(trace, step_rack_spread, a->p_shear, depth);
	/* the whole strip's down-slope weight tips the frame: onto the lower feet, off the upper ones */
	a->tip = (line->rear ? -1 : 1) * f.zc / f.s * c->r->wind.Lp / depth;
}

double rack_slide(const struct attachment *a, double factor, double area, struct trace *trace)
{
	return a->p_shear > 0 && factor > 0 ? STEP(trace, step_rack_slide, factor, a->p_shear, area) : 0;
}
