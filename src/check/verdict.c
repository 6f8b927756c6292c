/* SPDX-License-Identifier: MIT */
/* From ratios to words. */
#include "check/verdict.h"

#include <math.h>

#include "check/attachment.h"
#include "check/metals.h"
#include "check/overhang.h"
#include "check/valley.h"
#include "check/block.h"
#include "check/layout_rule.h"
#include "check/layout_search.h"
#include "check/rafter_check.h"
#include "check/rafter_extra.h"
#include "check/rafter_load.h"
#include "check/rail.h"
#include "check/wind_rule.h"
#include "table/lookup_snow.h"

static bool any(const struct result *r, enum remark_kind kind)
{
	for (int i = 0; i < r->remarks; i++)
		if (remark_kind(r->remark[i].id) == kind)
			return true;
	return false;
}

static void fails(struct context *c, const struct pass *pass)
{
	for (int l = 0; l < (int)LINK_COUNT; l++) {
		const enum check_id id = pass->link_governs[l];
		const double ratio = pass->link_ratio[l], at = pass->link_at[l];
		const char *combination;

		if (!(ratio > 1))
			continue;
		switch ((enum link)l) {
		case LINK_COLLECTOR:
			combination = pass->collector[id].combination;
			REMARK_T(c->r, COLLECTOR_RATIO, (at, ratio), check_words(id), combination);
			break;
		case LINK_RAIL:
			combination = pass->line[(int)at - 1].check[id].combination;
			REMARK_T(c->r, RAIL_RATIO, (at, ratio), check_words(id), combination);
			break;
		case LINK_FOOT:
		case LINK_FASTENER:
			combination = pass->attachment[(int)at - 1].check[id].combination;
			REMARK_T(c->r, RATIO, (at, ratio), check_words(id), combination);
			break;
		case LINK_RAFTER:
			combination = "";
			for (int i = 0; i < pass->rafters; i++)
				if (pass->rafter[i].rafter + 1 == (int)at)
					combination = pass->rafter[i].after[id].combination;
			REMARK_T(c->r, RAFTER_RATIO, (at, ratio), check_words(id), combination);
			break;
		case LINK_COUNT:
			break;
		}
	}
}

/* Smallest effective area of the attachments in a zone: the coefficient is largest there. */
static double smallest_area(const struct pass *pass, enum zone zone)
{
	double area = HUGE_VAL;

	for (int i = 0; i < pass->attachments; i++)
		if (pass->attachment[i].zone == zone)
			area = fmin(area, pass->attachment[i].area);
	return area;
}

/* Effective wind area of a rafter: its span by its width, a third of the span at the least (ASCE/SEI 7-16 26.2). */
static double rafter_area(const struct context *c)
{
	const double length = c->job->framing.span / c->cos_theta;

	return length * fmax(c->job->framing.spacing, length / 3);
}

static struct wind_coefficient of_rafter(struct context *c, enum zone zone, enum wind_curve curve, double A)
{
	c->curve = curve;
	return check_coefficient(c, zone, WIND_UP, A, NULL);
}

static void coefficients(struct context *c, bool look_up)
{
	const struct pass *pass = &c->r->pass[c->r->judged];

	for (int z = 0; z < (int)ZONE_COUNT; z++) {
		const double A = smallest_area(pass, (enum zone)z);

		if (!isfinite(A))
			continue;
		c->curve = CURVE_RECALLED;
		const struct wind_coefficient recalled = array_coefficient(c, (enum zone)z, A);

		c->curve = CURVE_SAFE_SIDE;
		const struct wind_coefficient safe = array_coefficient(c, (enum zone)z, A);

		if (recalled.known && !recalled.bounded && recalled.confidence == ONE_SOURCE)
			REMARK_T(c->r, COEFFICIENT_ONE_SOURCE, (A, recalled.GCp), zone_text((enum zone)z),
			         recalled.figure);
		if (!recalled.known || !recalled.bounded)
			continue;
		const double At = rafter_area(c);

		/* where both curves agree for the feet, it is the rafters that they part on */
		if (look_up && !(fabs(recalled.GCp - safe.GCp) > 0) && pass->rafters > 0 && isfinite(At)) {
			const struct wind_coefficient one = of_rafter(c, (enum zone)z, CURVE_RECALLED, At),
						      two = of_rafter(c, (enum zone)z, CURVE_SAFE_SIDE, At);

			if (one.known && fabs(one.GCp - two.GCp) > 0) {
				REMARK_T(c->r, COEFFICIENT, (At, one.GCp, two.GCp), zone_text((enum zone)z), one.figure);
				continue;
			}
		}
		if (look_up)
			REMARK_T(c->r, COEFFICIENT, (A, recalled.GCp, safe.GCp), array_zone_name(c, (enum zone)z),
			         recalled.figure);
		else
			REMARK_T(c->r, COEFFICIENT_USED, (A, recalled.GCp, safe.GCp), zone_text((enum zone)z),
			         confidence_text(recalled.confidence), recalled.figure);
	}
}

static void rafters(struct context *c, const struct pass *pass)
{
	const struct rafter_result *worst = NULL;
	double rise_total = 0, rise_dead = 0;
	bool triggered = false;

	for (int i = 0; i < pass->rafters; i++) {
		const struct rafter_result *r = &pass->rafter[i];

		if (!worst || r->ratio_before > worst->ratio_before)
			worst = r;
		rise_total = fmax(rise_total, r->rise_total);
		rise_dead = fmax(rise_dead, r->rise_dead);
		triggered = triggered || r->triggered;
	}
	if (!worst)
		return;
	if (worst->ratio_before > 1)
		REMARK_T(c->r, BEFORE_FAILS, (worst->ratio_before), "without the array");
	const double limit = code_trigger_row("gravity-5-percent")->limit / 100;

	if (rise_dead > limit)
		REMARK_T(c->r, FIVE_PERCENT, (rise_dead), "dead load", verdict_iebc(c->job));
	if (rise_total > limit)
		REMARK_T(c->r, FIVE_PERCENT, (rise_total), "design moment", verdict_iebc(c->job));
	if (!triggered)
		REMARK_T(c->r, FIVE_PERCENT_OK, (0), verdict_iebc(c->job));
}

static void feet(struct context *c, const struct pass *pass)
{
	const double wanted = c->job->mount.spacing;
	double least = HUGE_VAL;

	bool tail = false;

	for (int i = 0; i < pass->rafters; i++)
		tail = tail || pass->rafter[i].tail;
	for (int i = 0; i < pass->attachments && !tail; i++)
		if (rafter_on_tail(c, &pass->attachment[i]))
			REMARK(c->r, OVERHANG_FOOT, pass->attachment[i].number);
	for (int z = 0; z < (int)ZONE_COUNT; z++)
		if (pass->zone[z].present)
			least = fmin(least, pass->zone[z].exact);
	if (isfinite(wanted) && !at_most(wanted, least) && !pass->holds)
		REMARK(c->r, FIXED_SPACING, wanted, least);
}

/* A tail is rated where the array loads it (rafter_whole_rate.c). */
static void unchecked_rafter(struct context *c)
{
	const bool seat = isfinite(c->job->framing.bearing_length) && c->job->framing.bearing_length > 0;
	const struct pass *pass = &c->r->pass[c->r->judged];
	bool tail = false;

	for (int i = 0; i < pass->rafters && c->r->passes > 0; i++)
		tail = tail || pass->rafter[i].tail;
	if (!tail)
		REMARK_T(c->r, UNCHECKED_RAFTER, (0), seat ? "its tail outside the wall."
		                                           : "its bearing and its tail outside the wall.");
	else if (!seat)
		REMARK_T(c->r, UNCHECKED_RAFTER, (0), "its bearing on the wall.");
}

static void unchecked_along_eave(struct context *c)
{
	const struct job *job = c->job;
	const bool wood = job->framing.kind != FRAMING_STEEL && job->fastener.kind != FASTENER_SEAM_CLAMP &&
			  job->fastener.kind != FASTENER_DECK_MOUNT;

	REMARK_T(c->r, CROSS_SLOPE, (0),
	         wood ? "across a rafter a screw needs 4 D of wood to the edge (NDS Table 12.5.1C)"
	              : "what the foot takes sideways stands in its maker's report");
}

static void unchecked(struct context *c)
{
	const struct job *job = c->job;
	const bool rails = job->rail.kind == SUPPORT_RAILS;

	if (rails && !isfinite(rail_capacity(c, NULL)))
		REMARK(c->r, UNCHECKED_RAIL, 0);
	else if (rails && (!isfinite(job->rail.inertia) || !isfinite(job->rail.deflection_limit)))
		REMARK_T(c->r, UNCHECKED_RAIL_DEFLECTION, (0),
			 isfinite(job->rail.inertia)            ? "no limit"
			 : isfinite(job->rail.deflection_limit) ? "no inertia"
								: "neither inertia nor limit");
	if (rails && isfinite(rail_capacity(c, NULL)) &&
	    !(isfinite(job->rail.weak_section_modulus) && job->rail.weak_section_modulus > 0))
		REMARK(c->r, UNCHECKED_RAIL_WEAK, 0);
	if (rails && job->rail.stock_length > 0 && job->rail.stock_length < c->r->array.x1 - c->r->array.x0 &&
	    !(job->rail.splice_moment > 0))
		REMARK(c->r, UNCHECKED_SPLICE, job->rail.stock_length);
	else if (rails && job->rail_joints > 0 && !(job->rail.splice_moment > 0))
		REMARK(c->r, UNCHECKED_JOINTS, 0);
	if (!rails)
		REMARK(c->r, UNCHECKED_FRAME, 0);
	if (!isfinite(job->mount.allowable_uplift))
		REMARK_T(c->r, UNCHECKED_FOOT, (0), "uplift");
	if (!isfinite(job->mount.allowable_down))
		REMARK_T(c->r, UNCHECKED_FOOT, (0), "down force");
	if (!isfinite(job->mount.allowable_slope))
		REMARK_T(c->r, UNCHECKED_FOOT, (0), "down-slope force");
	if (!isfinite(job->collector.rated_uplift) || !isfinite(job->collector.rated_down))
		REMARK(c->r, UNCHECKED_COLLECTOR, 0);
	if (job->fastener.kind == FASTENER_SEAM_CLAMP && rafter_rated(c))
		REMARK(c->r, SEAM_SPREAD, 0);
	else if (job->fastener.kind == FASTENER_SEAM_CLAMP)
		REMARK(c->r, SEAM_FRAMING, 0);
	if (job->framing.kind == FRAMING_RAFTER)
		unchecked_rafter(c);
	else
		REMARK_T(c->r, UNCHECKED_RAFTER, (0), "the framing is not a sawn rafter.");
	REMARK(c->r, UNCHECKED_CLAMPS, 0);
	unchecked_along_eave(c);
	REMARK(c->r, UNCHECKED_HEEL, 0);
	REMARK(c->r, UNCHECKED_DECK, 0);
	verdict_loads(c);
}

void verdict_give(struct context *c)
{
	struct result *r = c->r;
	const struct pass *judged = &r->pass[r->judged];
	const bool differ = r->passes == 2 && r->pass[0].holds && !r->pass[1].holds;

	if (r->passes > 0) {
		if (!judged->holds && !differ)
			fails(c, judged);
		coefficients(c, differ);
		overhang_tell(c, judged, differ);
		rafters(c, judged);
		rafter_ends_tell(c, judged);
		feet(c, judged);
		plane_remarks(c, judged);
		layout_rules_tell(c, judged);
		layout_search_tell(c);
	}
	if (c->couple_unknown)
		REMARK(r, LEVER_ARM, c->job->mount.height);
	block_tell(c);
	check_metals(c);
	check_valley(c);
	unchecked(c);
	if (any(r, REMARK_ENGINEER) || differ)
		r->verdict = NEEDS_ENGINEER;
	else if (r->passes > 0 && judged->holds && !any(r, REMARK_FAILS))
		r->verdict = HOLDS;
	else
		r->verdict = DOES_NOT_HOLD;
}
