/* SPDX-License-Identifier: MIT */
/* Adjustment of lag screw values: service factors, distances along the grain, several screws in a
   row.

   NDS-2018 11.3.2 to 11.3.6, 12.2.1.3, 12.5.1, 12.5.2. Wet service is taken as used wet; screws put
   into wet wood that dries later lose nothing while they stand in one row along the grain (Table
   11.3.3), which is how a foot's screws stand in a rafter. Eq. 11.3-1 rests on one reading; it
   gives the cells of Tables 11.3.6A and C that the tests hold. */
#include "resist/connection.h"

#include <assert.h>
#include <math.h>
#include <stddef.h>

#include "resist/resist_steps.h"
#include "table/lookup_wood.h"

#define DEG_F_COLD 68.0 /* any temperature up to 100 F has the same factor */

/* Actual over what gives 1, in diameters; 0 below the least. */
static double distance_factor(const double *in)
{
	const double actual = in[0], least = in[1], full = in[2], D = in[3];

	if (!at_least(actual, least * D))
		return 0.0;
	return fmin(1.0, actual / (full * D));
}

#define IN_LEAST { "n_min", UNIT_NONE, "least, in diameters" }
#define IN_FULL { "n_full", UNIT_NONE, "for no reduction, in diameters" }
#define IN_D { "D", UNIT_IN, "nominal diameter" }

const struct step step_end_distance_factor = {
	.name = "end-distance-factor", .symbol = "C_delta", .unit = UNIT_NONE,
	.title = "geometry factor for end distance along the grain",
	.formula = "e / (n_full D), at most 1; not permitted, 0, below n_min D",
	.clause = { "NDS-2018 12.5.1.2(a), Table 12.5.1A" },
	.confidence = ONE_SOURCE,
	.note = "softwood: 3.5 D and 7 D toward the end, 2 D and 4 D away from it; D from 1/4 in",
	.in = { { "e", UNIT_IN, "end distance" }, IN_LEAST, IN_FULL, IN_D },
	.value = distance_factor
};

const struct step step_spacing_factor = {
	.name = "spacing-factor", .symbol = "C_delta", .unit = UNIT_NONE,
	.title = "geometry factor for spacing in a row along the grain",
	.formula = "s / (n_full D), at most 1; not permitted, 0, below n_min D",
	.clause = { "NDS-2018 12.5.1.2(c), Table 12.5.1B" },
	.confidence = ONE_SOURCE,
	.note = "3 D and 4 D; D from 1/4 in",
	.in = { { "s", UNIT_IN, "spacing" }, IN_LEAST, IN_FULL, IN_D },
	.value = distance_factor
};

/* Eq. 11.3-1; gamma of a dowel between wood and metal, lb/in. */
static double group_factor(const double *in)
{
	const double n = in[0], D = in[1], s = in[2], EAm = in[3], EAs = in[4];
	const double gamma = 270000.0 * pow(D, 1.5);
	const double more = gamma * s / 2.0 * (1.0 / EAm + 1.0 / EAs); /* u - 1 */
	const double m = 1.0 + more - sqrt(more * (more + 2.0));
	const double R = fmin(EAs / EAm, EAm / EAs);
	const double mn = pow(m, n), m2n = mn * mn;

	return m * (1.0 - m2n) / (n * ((1.0 + R * mn) * (1.0 + m) - 1.0 + m2n)) * (1.0 + R) /
	       (1.0 - m);
}

const struct step step_group_factor = {
	.name = "group-factor",
	.symbol = "Cg",
	.unit = UNIT_NONE,
	.title = "group action factor of n screws in one row, wood to metal",
	.formula = "m (1 - m^2n) / (n ((1 + R m^n)(1 + m) - 1 + m^2n)) (1 + R)/(1 - m), m = u - "
	           "sqrt(u^2 - 1), "
		   "u = 1 + 270000 D^1.5 s/2 (1/EAm + 1/EAs), R = min(EAs/EAm, EAm/EAs)",
	.clause = { "NDS-2018 11.3.6, Eq. 11.3-1" },
	.confidence = ONE_SOURCE,
	.note = "two or more of D 1/4 in and up in a row with the load",
	.in = { { "n", UNIT_NONE, "screws in the row" },
	        { "D", UNIT_IN, "nominal diameter" },
	        { "s", UNIT_IN, "spacing" },
	        { "EAm", UNIT_LB, "stiffness E A of the wood" },
	        { "EAs", UNIT_LB, "stiffness E A of the metal" } },
	.value = group_factor
};

double connection_group_factor(struct trace *trace, int n, double D, double s, double EAm,
                               double EAs)
{
	if (n < 2 || !at_least(D, 0.25 * M_PER_IN))
		return 1.0;
	return STEP(trace, step_group_factor, (double)n, D, s, EAm, EAs);
}

/* Rows that the published tables hold: a missing one is a mistake of this program. */
static double connection_factor(const char *factor, const char *use)
{
	const struct connection_factor_row *r = connection_factor_row(factor, use);

	assert(r != NULL);
	return r->value;
}

static const struct connection_geometry_row *distance_rule(const char *item, const char *loading)
{
	const struct connection_geometry_row *r = connection_geometry_row(item, loading);

	assert(r != NULL);
	return r;
}

bool connection_factors_find(double CD, bool wet, double temperature, bool end_grain,
                             struct connection_factors *out)
{
	const double T = isnan(temperature) ? DEG_F_COLD : unit_from_si(temperature, UNIT_DEG_F);
	const struct load_duration_row *impact = load_duration_row("impact");
	const struct connection_factor_row *Ct = connection_temperature_row(T, wet);

	assert(impact != NULL);
	if (!(CD > 0.0) || Ct == NULL)
		return false;
	*out = (struct connection_factors){
		.CD = fmin(CD, impact->CD_connection),
		.CM_withdrawal = connection_factor("CM", wet ? "withdrawal-wet" : "withdrawal-dry"),
		.CM_lateral = connection_factor("CM", wet ? "lateral-wet" : "lateral-dry-dry"),
		.Ct = Ct->value,
		.Ceg_withdrawal = end_grain ? connection_factor("Ceg", "lag-withdrawal") : 1.0,
		.Ceg_lateral = end_grain ? connection_factor("Ceg", "lateral") : 1.0
	};
	return true;
}

struct screw_placement screw_placement(struct trace *trace, double D, double end_distance,
                                       double spacing, enum end_bearing bearing)
{
	struct screw_placement p = { .permitted = true,
		                     .withdrawal_permitted = true,
		                     .C_delta = 1.0 };

	if (!at_least(D, 0.25 * M_PER_IN)) /* 12.5.1.1 */
		return p;
	if (!isnan(end_distance)) {
		const struct connection_geometry_row *r = distance_rule(
			"end-distance", bearing == BEARS_TOWARD_END ? "parallel-tension-softwood"
								    : "parallel-compression");

		p.C_delta = STEP(trace, step_end_distance_factor, end_distance, r->minimum_D,
		                 r->full_D, D);
		p.withdrawal_permitted = at_least(
			end_distance, distance_rule("withdrawal-only", "end")->minimum_D * D);
	}
	if (!isnan(spacing)) {
		const struct connection_geometry_row *r =
			distance_rule("spacing-in-row", "parallel");

		p.C_delta = fmin(p.C_delta, STEP(trace, step_spacing_factor, spacing, r->minimum_D,
		                                 r->full_D, D));
		p.withdrawal_permitted =
			p.withdrawal_permitted &&
			at_least(spacing,
		                 distance_rule("withdrawal-only", "spacing")->minimum_D * D);
	}
	p.permitted = p.C_delta > 0.0;
	return p;
}

bool small_screw_room_find(double D, struct small_screw_room *out)
{
	const struct connection_geometry_row *spacing = distance_rule("small-screw", "spacing");
	const struct connection_geometry_row *end = distance_rule("small-screw", "end");
	const struct connection_geometry_row *edge = distance_rule("small-screw", "edge");

	if (at_least(D, 0.25 * M_PER_IN))
		return false;
	*out = (struct small_screw_room){spacing->full_D * D, spacing->minimum_D * D,
					 end->full_D * D, end->minimum_D * D, edge->full_D * D};
	return true;
}
