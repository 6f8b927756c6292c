/* SPDX-License-Identifier: MIT */
/* A rectangular wood beam: section, net section at a screw hole, stresses.

   NDS-2018 3.1.2 (net section), 3.3, 3.4 (bending, shear), 3.10 (bearing). Lateral stability is in
   stability.c. */
#include "resist/member.h"

#include <math.h>

#include "resist/resist_steps.h"

static double area(const double *in)
{
	return in[0] * in[1];
}

static double modulus(const double *in)
{
	return in[0] * in[1] * in[1] / 6.0;
}

static double inertia(const double *in)
{
	return in[0] * in[1] * in[1] * in[1] / 12.0;
}

#define IN_BD { "b", UNIT_IN, "breadth" }, { "d", UNIT_IN, "depth" }

const struct step step_section_area = { .name = "section-area",
	                                .symbol = "A",
	                                .unit = UNIT_IN2,
	                                .title = "area of a rectangle",
	                                .formula = "b d",
	                                .clause = { "geometry" },
	                                .confidence = DERIVED,
	                                .in = { IN_BD },
	                                .value = area };

const struct step step_section_modulus = { .name = "section-modulus",
	                                   .symbol = "S",
	                                   .unit = UNIT_IN3,
	                                   .title = "section modulus of a rectangle",
	                                   .formula = "b d^2 / 6",
	                                   .clause = { "NDS-2018 3.3.2" },
	                                   .confidence = DERIVED,
	                                   .in = { IN_BD },
	                                   .value = modulus };

const struct step step_section_inertia = { .name = "section-inertia",
	                                   .symbol = "I",
	                                   .unit = UNIT_IN4,
	                                   .title = "moment of inertia of a rectangle",
	                                   .formula = "b d^3 / 12",
	                                   .clause = { "geometry" },
	                                   .confidence = DERIVED,
	                                   .in = { IN_BD },
	                                   .value = inertia };

struct section section_rectangle(struct trace *trace, double b, double d)
{
	return (struct section){
		.b = b,
		.d = d,
		.A = STEP(trace, step_section_area, b, d),
		.S = STEP(trace, step_section_modulus, b, d),
		.I = STEP(trace, step_section_inertia, b, d)
	};
}

/* Rectangle b by d less a slot `hole` wide and `deep` down from the top edge: centroid y from the
   bottom and inertia about it. */
static void slotted(const double *in, double *y, double *I)
{
	const double b = in[0], d = in[1], h = in[2], s = fmin(in[3], in[1]);
	const double A = b * d - h * s;

	*y = (b * d * d / 2.0 - h * s * (d - s / 2.0)) / A;
	*I = b * d * d * d / 12.0 + b * d * (d / 2.0 - *y) * (d / 2.0 - *y) - h * s * s * s / 12.0 -
	     h * s * (d - s / 2.0 - *y) * (d - s / 2.0 - *y);
}

static double net_top(const double *in)
{
	double y, I;

	if (in[2] >= in[0])
		return 0.0;
	slotted(in, &y, &I);
	return I / (in[1] - y) / (in[0] * in[1] * in[1] / 6.0);
}

static double net_bottom(const double *in)
{
	double y, I;

	if (in[2] >= in[0])
		return 0.0;
	slotted(in, &y, &I);
	return I / y / (in[0] * in[1] * in[1] / 6.0);
}

#define IN_HOLE                                                                                    \
	{ "hole", UNIT_IN, "diameter of the hole" },                                               \
	{                                                                                          \
		"deep", UNIT_IN, "depth of the hole from the top edge"                             \
	}

const struct step step_net_section_top = {
	.name = "net-section-top", .symbol = "S_net/S", .unit = UNIT_NONE,
	.title = "section modulus left at the top fibre beside a hole in the top edge",
	.formula = "I_net / ((d - y) b d^2/6), y and I_net of the section that is left",
	.clause = { "NDS-2018 3.1.2; section by statics" }, .confidence = DERIVED,
	.in = { IN_BD, IN_HOLE }, .value = net_top
};

const struct step step_net_section_bottom = {
	.name = "net-section-bottom", .symbol = "S_net/S", .unit = UNIT_NONE,
	.title = "section modulus left at the bottom fibre beside a hole in the top edge",
	.formula = "I_net / (y b d^2/6), y and I_net of the section that is left",
	.clause = { "NDS-2018 3.1.2; section by statics" }, .confidence = DERIVED,
	.in = { IN_BD, IN_HOLE }, .value = net_bottom
};

struct net_section section_with_hole(struct trace *trace, double b, double d, double hole,
                                     double deep)
{
	return (struct net_section){ .top = STEP(trace, step_net_section_top, b, d, hole, deep),
		                     .bottom = STEP(trace, step_net_section_bottom, b, d, hole,
		                                    deep) };
}

static double bending_stress(const double *in)
{
	return in[0] / in[1];
}

const struct step step_bending_stress = { .name = "bending-stress",
	                                  .symbol = "fb",
	                                  .unit = UNIT_PSI,
	                                  .title = "bending stress",
	                                  .formula = "M / S",
	                                  .clause = { "NDS-2018 3.3.2, Eq. 3.3-2" },
	                                  .confidence = DERIVED,
	                                  .in = { { "M", UNIT_LB_IN_M, "moment" },
	                                          { "S", UNIT_IN3, "section modulus" } },
	                                  .value = bending_stress };

double member_bending_stress(struct trace *trace, double M, double S)
{
	return STEP(trace, step_bending_stress, fabs(M), S);
}

static double shear_stress(const double *in)
{
	return 1.5 * in[0] / (in[1] * in[2]);
}

const struct step step_shear_stress = { .name = "shear-stress",
	                                .symbol = "fv",
	                                .unit = UNIT_PSI,
	                                .title = "shear stress of a rectangle",
	                                .formula = "1.5 V / (b d)",
	                                .clause = { "NDS-2018 3.4.2, Eq. 3.4-2" },
	                                .confidence = DERIVED,
	                                .in = { { "V", UNIT_LB, "shear" }, IN_BD },
	                                .value = shear_stress };

double member_shear_stress(struct trace *trace, double V, double b, double d)
{
	return STEP(trace, step_shear_stress, fabs(V), b, d);
}

static double bearing_stress(const double *in)
{
	return in[0] / (in[1] * in[2]);
}

const struct step step_bearing_stress = { .name = "bearing-stress",
	                                  .symbol = "fc_perp",
	                                  .unit = UNIT_PSI,
	                                  .title = "bearing stress across the grain",
	                                  .formula = "R / (b lb)",
	                                  .clause = { "NDS-2018 3.10.2" },
	                                  .confidence = DERIVED,
	                                  .in = { { "R", UNIT_LB, "reaction" },
	                                          { "b", UNIT_IN, "breadth" },
	                                          { "lb", UNIT_IN, "bearing length" } },
	                                  .value = bearing_stress };

double member_bearing_stress(struct trace *trace, double R, double b, double lb)
{
	return STEP(trace, step_bearing_stress, R, b, lb);
}

static double bearing_factor(const double *in)
{
	const double lb = in[0], from_end = in[1];

	return !at_least(lb, 6.0) && at_least(from_end, 3.0) ? (lb + 0.375) / lb : 1.0;
}

const struct step step_bearing_factor = {
	.name = "bearing-factor",
	.symbol = "Cb",
	.unit = UNIT_NONE,
	.title = "bearing area factor",
	.formula = "(lb + 0.375)/lb for lb < 6 in at least 3 in from the end, else 1",
	.clause = { "NDS-2018 3.10.4" },
	.confidence = ONE_SOURCE,
	.note = "a copy (open source) has text and table of NDS 3.10.4",
	.in = { { "lb", UNIT_IN, "bearing length" },
	        { "from_end", UNIT_IN, "from the bearing to the end of the piece" } },
	.value = bearing_factor
};

double member_bearing_factor(struct trace *trace, double lb, double from_end)
{
	return STEP(trace, step_bearing_factor, lb, from_end);
}

static double notch_shear(const double *in)
{
	const double V = in[0], b = in[1], d = in[2], dn = in[3];

	return 1.5 * V / (b * dn) * (d / dn) * (d / dn);
}

const struct step step_member_notch_shear = {
	.name = "member-notch-shear",
	.symbol = "fv",
	.unit = UNIT_PSI,
	.title = "shear where a member is cut on its pulled side, or hangs on fasteners",
	.formula = "1.5 V/(b dn) (d/dn)^2",
	.clause = { "NDS-2018 3.4.3.2, 3.4.3.3 (from memory)" },
	.confidence = FROM_MEMORY,
	.note = "solved for stress: V'r = (2/3 F'v b dn)(dn/d)^2",
	.in = { { "V", UNIT_LB, "shear" },
	        { "b", UNIT_IN, "breadth" },
	        { "d", UNIT_IN, "depth" },
	        { "dn", UNIT_IN, "depth that is left, or held" } },
	.value = notch_shear
};

double member_notch_shear(struct trace *trace, double V, double b, double d, double dn)
{
	return STEP(trace, step_member_notch_shear, fabs(V), b, d, dn);
}
