/* SPDX-License-Identifier: MIT */
/* Earthquake on the array and its feet. The force acts at the weight of the array, filled, in
   either direction on plan, with the vertical part up or down as the combination signs it; snow is
   no part of the weight. Across the ridge the horizontal force has a part normal to the roof and
   one along the slope; along the eave it is all sideways. */
#include "check/load_case.h"

#include <math.h>

#include "check/check_steps.h"
#include "load/asce7_seismic.h"

/* in: fD d fEv ev fS S fEh fp theta A */
static double normal(const double *in)
{
	const double theta = in[8] * RAD_PER_DEG, d = in[1];

	return ((in[0] + in[2] * in[3]) * d * cos(theta) + in[4] * in[5] * cos(theta) * cos(theta) -
		in[6] * in[7] * d * sin(theta)) *
	       in[9];
}

static double along(const double *in)
{
	const double theta = in[8] * RAD_PER_DEG, d = in[1];

	return ((in[0] + in[2] * in[3]) * d * sin(theta) + in[4] * in[5] * sin(theta) * cos(theta) +
		in[6] * in[7] * d * cos(theta)) *
	       in[9];
}

#define QUAKE_INPUTS                                                                               \
	{                                                                                          \
		{"fD", UNIT_NONE, "factor of dead load in the combination"},                       \
			{"d", UNIT_PSF, "filled weight of the array per area of slope"},           \
			{"fEv", UNIT_NONE, "factor of the vertical earthquake effect, signed"},    \
			{"ev", UNIT_NONE, "vertical part, of the weight"},                         \
			{"fS", UNIT_NONE, "factor of snow"},                                       \
			{"S", UNIT_PSF, "snow on the array per area of plan"},                     \
			{"fEh", UNIT_NONE,                                                         \
			 "factor of the horizontal effect, negative toward the ridge"},            \
			{"fp", UNIT_NONE, "horizontal part, of the weight"},                       \
			{"theta", UNIT_DEG, "roof angle"},                                         \
		{                                                                                  \
			"A", UNIT_FT2, "area that the attachment carries"                          \
		}                                                                                  \
	}

const struct step step_attachment_quake_normal = {
	.name = "attachment-quake-normal",
	.symbol = "N",
	.unit = UNIT_LB,
	.title = "down force on an attachment in an earthquake, normal to the roof",
	.formula = "((fD + fEv ev) d cos(theta) + fS S cos(theta)^2 - fEh fp d sin(theta)) A",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 12.4.2.3, 13.3.1; statics",
		   [ASCE7_16] = "ASCE/SEI 7-16 2.3.6, 2.4.5, 13.3.1; statics",
		   [ASCE7_22] = "ASCE/SEI 7-22 2.3.6, 2.4.5, 13.3.1; statics"},
	.confidence = DERIVED,
	.note = "negative: away from the roof",
	.in = QUAKE_INPUTS,
	.value = normal,
};

const struct step step_attachment_quake_slope = {
	.name = "attachment-quake-slope",
	.symbol = "V",
	.unit = UNIT_LB,
	.title = "down-slope force on an attachment in an earthquake",
	.formula =
		"((fD + fEv ev) d sin(theta) + fS S sin(theta) cos(theta) + fEh fp d cos(theta)) A",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 12.4.2.3, 13.3.1; statics",
		   [ASCE7_16] = "ASCE/SEI 7-16 2.3.6, 2.4.5, 13.3.1; statics",
		   [ASCE7_22] = "ASCE/SEI 7-22 2.3.6, 2.4.5, 13.3.1; statics"},
	.confidence = DERIVED,
	.note = "negative: up the slope",
	.in = QUAKE_INPUTS,
	.value = along,
};

bool array_load_quake(const struct context *c, const struct load_combination *k, int sign,
		      double snow, double area, struct trace *trace, double *down, double *slope)
{
	const double d = c->r->dead.array_filled, ev = c->quake.vertical, fp = c->quake.horizontal;

	if (!c->quake.known || k->use != COMBINATION_SEISMIC)
		return false;
	*down = STEP(trace, step_attachment_quake_normal, k->D, d, k->Ev, ev, k->S, snow,
		     sign * k->Eh, fp, c->theta, area);
	*slope = STEP(trace, step_attachment_quake_slope, k->D, d, k->Ev, ev, k->S, snow,
		      sign * k->Eh, fp, c->theta, area);
	return true;
}

double quake_cross(const struct context *c, const struct load_combination *k, double area)
{
	return k->Eh * c->quake.horizontal * c->r->dead.array_filled * area;
}

static double SDS(const struct context *c, struct trace *t)
{
	const struct job_earthquake *e = &c->job->earthquake;

	return isfinite(e->SDS) ? e->SDS : asce7_SDS(e->Fa, e->Ss, t);
}

static bool facts_of_7_22(struct context *c)
{
	const struct job_earthquake *e = &c->job->earthquake;

	if (c->code->edition != ASCE7_22 || isfinite(e->SDS + e->CAR + e->Rpo + e->Hf + e->Rmu))
		return true;
	REMARK(c->r, SEISMIC_FACTS, 0);
	return false;
}

void quake_prepare(struct context *c)
{
	static const char *const category[] = {"unknown", "A", "B", "C", "D", "E", "F"};
	const struct job_earthquake *e = &c->job->earthquake;
	const double h = c->job->building.mean_roof_height;
	struct trace *t = &c->r->trace[SECTION_DEAD];

	c->r->quake = (struct quake_result){0};
	if (e->category == SEISMIC_A) {
		REMARK(c->r, SEISMIC_EXEMPT, 0);
		return;
	}
	if (!isfinite(e->SDS) && !isfinite(e->Ss * e->Fa))
		return;
	if (!facts_of_7_22(c))
		return;
	if (c->rack) /* its couple comes onto the feet as that of its weight down the slope: tip of rack.c */
		REMARK(c->r, SEISMIC_RACK, 0);
	const struct seismic_component component = {.SDS = SDS(c, t),
						    .Ip = e->Ip,
						    .z = h,
						    .h = h,
						    .ap = e->ap,
						    .Rp = e->Rp,
						    .Hf = e->Hf,
						    .Rmu = e->Rmu,
						    .CAR = e->CAR,
						    .Rpo = e->Rpo};
	const struct seismic_share s = asce7_seismic(c->code->edition, &component, t);

	c->r->quake = (struct quake_result){s.known, component.SDS, s.horizontal, s.vertical};
	c->quake.known = s.known;
	c->quake.horizontal = s.horizontal;
	c->quake.vertical = s.vertical;
	REMARK(c->r, SEISMIC, component.SDS, s.horizontal, s.vertical);
	if (e->category != SEISMIC_UNKNOWN)
		REMARK_T(c->r, SEISMIC_EXEMPT_UNUSED, (0), category[e->category]);
}
