/* SPDX-License-Identifier: MIT */
/* Fp of ASCE/SEI 7-10 13.3.1, 7-16 13.3.1, 7-22 13.3.1, as a part of the component's weight, with
   its bounds and the vertical effect that goes with it. Table 13.6-1 of 7-22 is not known here: its
   factors are typed by the user or nothing is computed. Overstrength belongs to anchorage in
   concrete and masonry (13.4.2) and is not computed; neither are exemptions (13.1.4): the caller
   knows category A alone. */
#include "load/asce7_seismic.h"

#include <math.h>

#include "load/bound.h"
#include "load/load_steps.h"

static double SDS_value(const double *in)
{
	return 2.0 / 3.0 * in[0] * in[1];
}

const struct step step_seismic_SDS = {
	.name = "seismic-SDS",
	.symbol = "SDS",
	.unit = UNIT_NONE,
	.title = "design spectral acceleration at short periods, in g",
	.formula = "2/3 Fa Ss",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 11.4.3, 11.4.4",
		   [ASCE7_16] = "ASCE/SEI 7-16 11.4.4, 11.4.5",
		   [ASCE7_22] = "ASCE/SEI 7-22 11.4"},
	.confidence = CONFIRMED,
	.note = "7-22 takes SDS from its own maps by site class: give SDS there",
	.in = {{"Fa", UNIT_NONE, "site coefficient"},
	       {"Ss", UNIT_NONE, "mapped acceleration at short periods, in g"}},
	.value = SDS_value,
};

#define FORCE_CLAUSES(n)                                                                           \
	{                                                                                          \
		[ASCE7_10] = "ASCE/SEI 7-10 Eq. 13.3-" n, [ASCE7_16] = "ASCE/SEI 7-16 Eq. 13.3-" n \
	}

static double force_value(const double *in)
{
	const double ap = in[0], SDS = in[1], z = in[2], h = in[3], Rp = in[4], Ip = in[5];
	const double z_h = smaller(1.0, larger(0.0, z / h));

	return 0.4 * ap * SDS * (1.0 + 2.0 * z_h) / (Rp / Ip);
}

const struct step step_seismic_force = {
	.name = "seismic-force",
	.symbol = "Fp/Wp",
	.unit = UNIT_NONE,
	.title = "horizontal earthquake force as a part of the weight, before its bounds",
	.formula = "0.4 ap SDS (1 + 2 z/h)/(Rp/Ip), z/h at most 1",
	.clause = FORCE_CLAUSES("1"),
	.confidence = CONFIRMED,
	.note = "ap 1.0 with Rp 1.5 is what public calculations use for attached arrays",
	.in = {{"ap", UNIT_NONE, "component amplification"},
	       {"SDS", UNIT_NONE, "design spectral acceleration, in g"},
	       {"z", UNIT_FT, "height of the fixing"},
	       {"h", UNIT_FT, "mean roof height"},
	       {"Rp", UNIT_NONE, "component response modification"},
	       {"Ip", UNIT_NONE, "component importance"}},
	.value = force_value,
};

static double force_7_22_value(const double *in)
{
	return 0.4 * in[0] * in[1] * (in[2] / in[3]) * (in[4] / in[5]);
}

const struct step step_seismic_force_7_22 = {
	.name = "seismic-force-7-22",
	.symbol = "Fp/Wp",
	.unit = UNIT_NONE,
	.title = "horizontal earthquake force as a part of the weight, before its bounds",
	.formula = "0.4 SDS Ip (Hf/Rmu) (CAR/Rpo)",
	.clause = {[ASCE7_22] = "ASCE/SEI 7-22 Eq. 13.3-1"},
	.confidence = ONE_SOURCE,
	.note = "the structure of the formula is confirmed; Hf, Rmu, CAR and Rpo are read from the "
		"printed standard",
	.in = {{"SDS", UNIT_NONE, "design spectral acceleration, in g"},
	       {"Ip", UNIT_NONE, "component importance"},
	       {"Hf", UNIT_NONE, "amplification with height"},
	       {"Rmu", UNIT_NONE, "ductility reduction of the building"},
	       {"CAR", UNIT_NONE, "resonance ductility factor"},
	       {"Rpo", UNIT_NONE, "component strength factor"}},
	.value = force_7_22_value,
};

#define BOUND_CLAUSES(n)                                                                           \
	{                                                                                          \
		[ASCE7_10] = "ASCE/SEI 7-10 Eq. 13.3-" n,                                          \
		[ASCE7_16] = "ASCE/SEI 7-16 Eq. 13.3-" n, [ASCE7_22] = "ASCE/SEI 7-22 Eq. 13.3-" n \
	}
#define BOUND_INPUTS                                                                               \
	{                                                                                          \
		{"SDS", UNIT_NONE, "design spectral acceleration, in g"},                          \
		{                                                                                  \
			"Ip", UNIT_NONE, "component importance"                                    \
		}                                                                                  \
	}

static double most_value(const double *in)
{
	return 1.6 * in[0] * in[1];
}

const struct step step_seismic_force_most = {
	.name = "seismic-force-most",
	.symbol = "Fp,max/Wp",
	.unit = UNIT_NONE,
	.title = "largest horizontal earthquake force that is asked for",
	.formula = "1.6 SDS Ip",
	.clause = BOUND_CLAUSES("2"),
	.confidence = CONFIRMED,
	.note = "7-22: from memory",
	.in = BOUND_INPUTS,
	.value = most_value,
};

static double least_value(const double *in)
{
	return 0.3 * in[0] * in[1];
}

const struct step step_seismic_force_least = {
	.name = "seismic-force-least",
	.symbol = "Fp,min/Wp",
	.unit = UNIT_NONE,
	.title = "smallest horizontal earthquake force that is asked for",
	.formula = "0.3 SDS Ip",
	.clause = BOUND_CLAUSES("3"),
	.confidence = CONFIRMED,
	.note = "7-22: from memory",
	.in = BOUND_INPUTS,
	.value = least_value,
};

static double vertical_value(const double *in)
{
	return 0.2 * in[0];
}

const struct step step_seismic_vertical = {
	.name = "seismic-vertical",
	.symbol = "Ev/Wp",
	.unit = UNIT_NONE,
	.title = "vertical earthquake force as a part of the weight, up or down",
	.formula = "0.2 SDS",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 13.3.1",
		   [ASCE7_16] = "ASCE/SEI 7-16 13.3.1.2",
		   [ASCE7_22] = "ASCE/SEI 7-22 13.3.1.2"},
	.confidence = CONFIRMED,
	.in = {{"SDS", UNIT_NONE, "design spectral acceleration, in g"}},
	.value = vertical_value,
};

/* Arrays that lie loose on a nearly level roof; no part of the check of fixed ones. */
static double gap_value(const double *in)
{
	const double over = larger(0.0, in[1] - 0.4);

	return larger(24.0, 12.0 * 5.0 * in[0] * over * over);
}

const struct step step_seismic_unattached_gap = {
	.name = "seismic-unattached-gap",
	.symbol = "delta_mpv",
	.unit = UNIT_IN,
	.title = "movement that an array lying loose on the roof must have room for",
	.formula = "12 (5 Ie (SDS - 0.4)^2), 24 at least",
	.clause = {[ASCE7_16] = "ASCE/SEI 7-16 13.6.12", [ASCE7_22] = "ASCE/SEI 7-22 13.6.12"},
	.confidence = ONE_SOURCE,
	.note = "not for arrays that are fixed; the standard limits where loose ones may stand",
	.in = {{"Ie", UNIT_NONE, "importance factor of the building"},
	       {"SDS", UNIT_NONE, "design spectral acceleration, in g"}},
	.value = gap_value,
};

double asce7_SDS(double Fa, double Ss, struct trace *trace)
{
	return STEP(trace, step_seismic_SDS, Fa, Ss);
}

struct seismic_share asce7_seismic(enum edition edition, const struct seismic_component *c,
				   struct trace *trace)
{
	struct seismic_share s = {.confidence = CONFIRMED};
	double share;

	if (edition == ASCE7_22) {
		share = STEP(trace, step_seismic_force_7_22, c->SDS, c->Ip, c->Hf, c->Rmu, c->CAR,
			     c->Rpo);
		s.confidence = USER_ENTERED;
	} else {
		share = STEP(trace, step_seismic_force, c->ap, c->SDS, c->z, c->h, c->Rp, c->Ip);
	}
	s.horizontal = smaller(larger(share, STEP(trace, step_seismic_force_least, c->SDS, c->Ip)),
			       STEP(trace, step_seismic_force_most, c->SDS, c->Ip));
	s.vertical = STEP(trace, step_seismic_vertical, c->SDS);
	s.known = isfinite(s.horizontal) && isfinite(s.vertical);
	return s;
}
