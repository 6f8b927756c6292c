/* SPDX-License-Identifier: MIT */
/* Earthquake force on a component fixed to a roof: ASCE/SEI 7-10, 7-16 and 7-22 chapter 13. */
#ifndef RP_LOAD_ASCE7_SEISMIC_H
#define RP_LOAD_ASCE7_SEISMIC_H

#include <stdbool.h>

#include "step/step.h"

struct seismic_component {
	double SDS; /* g */
	double Ip;
	double z, h;   /* where it is fixed and mean roof height, m; z above h counts as h */
	double ap, Rp; /* 7-10, 7-16 */
	double Hf, Rmu, CAR, Rpo; /* 7-22: read from the printed standard; NAN: not given */
};

/* Parts of the component's weight. */
struct seismic_share {
	bool known;        /* false: a fact of the edition is missing */
	double horizontal; /* Fp / Wp, in any direction on plan */
	double vertical;   /* 0.2 SDS, up or down at the same time */
	enum confidence confidence;
};

struct seismic_share asce7_seismic(enum edition edition, const struct seismic_component *c,
				   struct trace *trace);

/* SDS = 2/3 Fa Ss (11.4), g. */
double asce7_SDS(double Fa, double Ss, struct trace *trace);

#endif
