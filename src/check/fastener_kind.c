/* SPDX-License-Identifier: MIT */
/* Fasteners that are no lag screws: wood screws and hanger bolts by the same equations, bolts on
   washers, screws with tested allowables, screws in steel, clamps on seams, feet screwed to the
   deck alone.

   A tested value holds for what was tested: it is entered with its report and never stretched.
   Where no standard says how pull and side load go together, their shares are added (our rule, the
   safe side). */
#include "check/fastener.h"

#include <math.h>

#include "resist/bolt.h"
#include "resist/wood_screw.h"
#include "table/lookup_wood.h"

#define PSI (N_PER_LBF / (M_PER_IN * M_PER_IN))
/* Plate and framing steel of unknown grade: the weakest usual one, A653 grade 33 (Fu 45 ksi). Safe
 * side. */
#define STEEL_FU (45.0e3 * PSI)
/* NDS 12.1.3.2: a bolt hole is 1/32 to 1/16 in wider than the bolt; the wider leaves less wood. */
#define BOLT_HOLE (M_PER_IN / 16)

static bool given(double x)
{
	return isfinite(x) && x > 0;
}

/* What every fastener in a rafter's top edge has in common; l: bearing length in it. False, and says so,
   where it may not stand there. */
static bool in_wood(struct context *c, double hole, double depth, double l)
{
	const struct job *job = c->job;
	struct fastener_result *f = &c->r->fastener;
	struct trace *t = &c->r->trace[SECTION_FASTENER];
	double all;

	fastener_layers(c, &all, &f->gap);
	f->t_up = job->mount.plate_thickness + all;
	c->hole = hole * (job->fastener.rows > 1 ? job->fastener.rows : 1);
	c->hole_depth = depth;
	if (job->mount.seat == SEAT_UNKNOWN)
		REMARK(c->r, SEAT_UNKNOWN, f->gap);
	const bool stands = fastener_stands(c, job->fastener.diameter, t);

	c->Cg = fastener_group_factor(c, job->fastener.diameter, t);
	fastener_group(c, job->fastener.diameter, l, t);
	return stands && !c->too_near;
}

static void lengths_shown(struct context *c)
{
	struct fastener_result *f = &c->r->fastener;

	f->p_tot = c->screw.p_tot;
	f->p = c->screw.p;
	f->p_t = c->screw.p_t;
	f->l_m = c->screw.l_m;
}

static void wood_screw(struct context *c)
{
	const struct job *job = c->job;
	struct fastener_result *f = &c->r->fastener;
	struct trace *t = &c->r->trace[SECTION_FASTENER];
	double all, gap;

	fastener_layers(c, &all, &gap);
	if (!wood_screw_geometry_find(t, job->fastener.diameter, job->fastener.length,
				      job->fastener.thread_length, job->mount.plate_thickness + all,
				      job->framing.depth, &c->screw)) {
		fastener_unrated(c, "its diameter is no wood screw's number, or the thickness of "
				    "what it passes through is "
				    "not known.");
		return;
	}
	const bool placed = in_wood(c, c->screw.D, c->screw.p_tot, c->screw.l_m);

	lengths_shown(c);
	if (c->G <= 0 || !wood_screw_withdrawal_covers(c->G, c->screw.D) ||
	    !wood_screw_lateral_find(t, &c->screw, c->G, 0, job->mount.plate_thickness, gap,
				     &c->lateral)) {
		fastener_unrated(c, "the wood's specific gravity or the plate's steel is outside "
				    "the published tables, or no "
				    "wood is reached.");
		return;
	}
	if (!c->lateral.permitted)
		REMARK(c->r, PENETRATION_SCREW, c->screw.p_tot,
		       wood_screw_penetration_least(NULL, c->screw.D));
	if (!wood_screw_lead_hole(t, &c->screw, c->G, &f->lead_hole_low, &f->lead_hole_high) ||
	    !given(f->lead_hole_high))
		f->lead_hole_low = f->lead_hole_high = (double)NAN;
	struct lag_lateral bearing;

	if (wood_screw_lateral_find(NULL, &c->screw, c->G, 0, job->mount.plate_thickness, 0, &bearing))
		fastener_gap_tell(c, gap, c->lateral.yield.value, bearing.yield.value);
	f->W = wood_screw_withdrawal(t, c->G, c->screw.D);
	f->Z = c->lateral.yield.value;
	f->mode = yield_mode_text(c->lateral.yield.mode);
	c->fastener_rated = c->lateral.permitted && placed;
}

/* The whole wood thread is turned in; the bolt stands free from the wood to the line of the rail.
 */
static void hanger_bolt(struct context *c)
{
	const struct job *job = c->job;
	const double T = job->fastener.thread_length;
	struct fastener_result *f = &c->r->fastener;
	struct trace *t = &c->r->trace[SECTION_FASTENER];

	if (!lag_screw_geometry_find(t, job->fastener.diameter, T, T, 0, job->framing.depth,
				     &c->screw) ||
	    c->G <= 0 || !lag_withdrawal_covers(c->G, c->screw.D)) {
		fastener_unrated(c, "its diameter or the wood's specific gravity is outside the "
				    "published tables.");
		return;
	}
	const bool placed = in_wood(c, c->screw.D, c->screw.p_tot, c->screw.l_m);

	lengths_shown(c);
	if (!at_least(c->screw.p, lag_penetration_least(t, c->screw.D)))
		REMARK(c->r, PENETRATION, c->screw.p);
	const double reach = f->gap + job->mount.height;
	const struct dowel_joint joint = {.D = c->screw.D,
					  .Dr = c->screw.Dr,
					  .lm = c->screw.l_m,
					  .Fem = dowel_bearing_wood(t, c->G, c->screw.D, 0),
					  .Fyb = c->screw.Fyb};
	const struct dowel_yield y = bolt_free_yield(t, &joint, reach);

	if (!lag_lead_hole(t, c->screw.D, c->G, &f->lead_hole_low, &f->lead_hole_high))
		f->lead_hole_low = f->lead_hole_high = (double)NAN;
	REMARK(c->r, HANGER_FREE, reach);
	f->W = lag_withdrawal(t, c->G, c->screw.D);
	f->Z = y.value;
	f->mode = yield_mode_text(y.mode);
	c->fastener_rated =
		at_least(c->screw.p, lag_penetration_least(NULL, c->screw.D)) && placed;
}

static void structural_screw(struct context *c)
{
	const struct job_fastener *s = &c->job->fastener;

	const double deep =
		fmin(fmax(0, s->length - c->job->mount.plate_thickness), c->job->framing.depth);
	const bool placed = in_wood(c, s->diameter, deep, deep);

	REMARK_T(c->r, TESTED, (s->safety_factor), "structural screw", s->report);
	c->fastening.pull = s->allowable_uplift;
	c->fastening.side = s->allowable_side;
	c->fastener_rated = given(c->fastening.pull) && given(c->fastening.side) && placed;
}

static void through_bolt(struct context *c)
{
	const struct job *job = c->job;
	const double D = job->fastener.diameter, hole = D + BOLT_HOLE;
	const struct lumber_service s = {job->framing.wet == ANSWER_YES,
					 job->framing.incised == ANSWER_YES, false,
					 fastener_temperature(c)};
	struct fastener_result *f = &c->r->fastener;
	struct trace *t = &c->r->trace[SECTION_FASTENER];
	struct dowel_joint joint;
	struct dowel_yield y;
	struct lumber_values v;

	const bool placed = in_wood(c, hole, job->framing.depth, job->framing.depth);

	if (!c->lumber_known || !lumber_adjust(t, &c->lumber, 1, &s, &v) ||
	    !bolt_lateral_find(t, D, job->framing.depth, c->G, 0, job->mount.plate_thickness,
			       f->gap, &joint, &y)) {
		fastener_unrated(c, "its diameter, the plate's steel or the lumber is outside the "
				    "published tables.");
		return;
	}
	struct dowel_yield bearing;

	if (bolt_lateral_find(NULL, D, job->framing.depth, c->G, 0, job->mount.plate_thickness, 0, &joint,
			      &bearing))
		fastener_gap_tell(c, f->gap, y.value, bearing.value);
	c->fastening.Fc_perp = v.Fc_perp_prime;
	c->fastening.washer =
		bolt_washer_bearing(t, job->fastener.washer_diameter, hole, job->framing.breadth,
				    BOLT_FROM_END, v.Fc_perp_prime);
	c->fastening.tension = lag_tension(t, joint.Dr);
	if (c->fastening.washer <= 0)
		fastener_unrated(c,
				 "the washer is wider than the rafter or no wider than the hole.");
	f->l_m = joint.lm;
	f->Z = y.value;
	f->mode = yield_mode_text(y.mode);
	c->fastener_rated = c->fastening.washer > 0 && placed;
}

static void sheet_screw(struct context *c)
{
	const struct job *job = c->job;
	struct trace *t = &c->r->trace[SECTION_FASTENER];
	struct sheet_screw_joint *j = &c->fastening.sheet;

	if (!sheet_screw_find(job->fastener.diameter, j) || !given(job->fastener.steel_thickness)) {
		fastener_unrated(c, "no strength of a screw of this diameter is tabulated, or the "
				    "steel is not known.");
		return;
	}
	j->t1 = job->mount.plate_thickness;
	j->t2 = job->fastener.steel_thickness;
	j->Fu1 = STEEL_FU;
	j->Fu2 = given(job->fastener.steel_strength) ? job->fastener.steel_strength : STEEL_FU;
	const bool rows_near = job->fastener.rows > 1 && !at_least(job->fastener.row_spacing, 3 * j->d);

	if (rows_near || (fastener_in_row(&job->fastener) > 1 &&
			  !at_least(job->fastener.spacing, 3 * j->d))) {
		fastener_unrated(c, "the screws stand closer than 3 d (AISI S100 J4.1).");
		return;
	}
	c->fastening.strength = sheet_screw_strength(t, j, c->lrfd);
	c->fastener_rated = true;
}

static void seam_clamp(struct context *c)
{
	const struct job_fastener *s = &c->job->fastener;

	REMARK(c->r, SEAM_LINES, c->job->roof.seam_spacing);
	REMARK_T(c->r, TESTED, (s->safety_factor), "clamp on this seam", s->report);
	if (!given(s->clip_allowable))
		REMARK_T(c->r, CLIPS_UNKNOWN, (0), "the clip's allowable");
	if (!given(s->clip_screw_allowable))
		REMARK_T(c->r, CLIPS_UNKNOWN, (0), "the allowable of its screws");
	c->fastener_rated =
		given(c->job->mount.allowable_uplift) && given(c->job->mount.allowable_slope);
}

static const char *deck_text(enum deck_kind k)
{
	static const char *const words[] = {"unknown", "plywood",       "osb",
					    "boards",  "spaced boards", "another deck"};

	return words[k];
}

static void deck_mount(struct context *c)
{
	const struct job *job = c->job;
	const struct job_fastener *s = &job->fastener;

	REMARK_T(c->r, TESTED, (s->safety_factor), "deck mount", s->report);
	REMARK(c->r, UNCHECKED_DECK_NAILS, 0);
	if (job->roof.deck != s->deck || s->deck == DECK_UNKNOWN || s->deck == DECK_OTHER ||
	    !at_least(job->roof.deck_thickness, s->deck_thickness) ||
	    job->origin[FIELD_ROOF_DECK_THICKNESS] == ORIGIN_ASSUMED)
		REMARK_T(c->r, DECK_UNLIKE, (s->deck_thickness, job->roof.deck_thickness),
			 deck_text(s->deck), deck_text(job->roof.deck));
	c->fastener_rated = given(job->mount.allowable_uplift) && given(job->mount.allowable_slope);
}

void fastener_kind_prepare(struct context *c)
{
	switch (c->job->fastener.kind) {
	case FASTENER_LAG_SCREW:
		return;
	case FASTENER_WOOD_SCREW:
		wood_screw(c);
		return;
	case FASTENER_STRUCTURAL_SCREW:
		structural_screw(c);
		return;
	case FASTENER_THROUGH_BOLT:
		through_bolt(c);
		return;
	case FASTENER_HANGER_BOLT:
		hanger_bolt(c);
		return;
	case FASTENER_SEAM_CLAMP:
		seam_clamp(c);
		return;
	case FASTENER_DECK_MOUNT:
		deck_mount(c);
		return;
	case FASTENER_SHEET_SCREW:
		sheet_screw(c);
		return;
	}
}
