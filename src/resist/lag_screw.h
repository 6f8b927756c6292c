/* SPDX-License-Identifier: MIT */
/* A lag screw in the side grain of a rafter: the lengths that count, withdrawal, the screw's own
   tension, lead hole and edge room. Side load is in lag_lateral.h. NDS-2018 12.1.4, 12.2.1,
   Appendix L. SI throughout (m, N, Pa). */
#ifndef RP_RESIST_LAG_SCREW_H
#define RP_RESIST_LAG_SCREW_H

#include <stdbool.h>

#include "resist/connection.h"
#include "step/step.h"

/* One screw through everything that lies on a rafter. The four lengths differ, and each check has
   its own. */
struct lag_screw_geometry {
	double D;     /* nominal diameter */
	double L;     /* under the head */
	double T;     /* thread, tip included */
	double Dr;    /* root diameter */
	double E;     /* tapered tip */
	double Fyb;   /* bending yield strength */
	double t_up;  /* between head and rafter face: plate, covering, sheathing, gap */
	double depth; /* of the rafter under the screw */
	double p_tot; /* in the wood, tip included: L - t_up, never more than the depth */
	double p;     /* in the wood without the tip: for the 4D and 8D rules */
	double p_t;   /* thread in the wood without the tip: for withdrawal */
	double l_m;   /* bearing length of the main member: for the yield equations */
	bool through; /* the point comes out of the far side of the rafter */
};

/* Fills *out. T is NAN where the maker does not give it: then the Appendix L minimum, for L from
   1-1/2 in. False, and *out not to be used, when D is not a listed lag screw, T is longer than L,
   or L, t_up or depth make no sense (not finite, not positive; t_up may be 0). A screw too short to
   reach the wood is not an error: its lengths are 0. */
bool lag_screw_geometry_find(struct trace *trace, double D, double L, double T, double t_up,
                             double depth, struct lag_screw_geometry *out);

/* True inside the range that the withdrawal equation is tabulated for: G 0.31 to 0.73, D 1/4 in to
   1-1/4 in. */
bool lag_withdrawal_covers(double G, double D);
/* W, reference withdrawal per length of thread, N/m. NDS Eq. 12.2-1. Caller asks
   lag_withdrawal_covers first. */
double lag_withdrawal(struct trace *trace, double G, double D);
/* W'p of one screw, N: W CD CM Ct Ceg times the thread in the wood. */
double lag_withdrawal_capacity(struct trace *trace, double W, double p_t,
                               const struct connection_factors *f);

/* Allowable tension of the screw's root section, N; no load duration factor belongs to it (NDS
   11.2.3). Common practice: NDS asks for this check (12.2.1.4) and gives no number. */
double lag_tension(struct trace *trace, double Dr);

/* Lead hole for the thread, smallest and largest bit, m. False where none is listed for this G. The
   shank hole is D. */
bool lag_lead_hole(struct trace *trace, double D, double G, double *low, double *high);
/* How far the screw may miss the middle of a face b wide: b/2 - 1.5 D, m. Negative: it does not fit
   at all. NDS Tables 12.5.1C (load along the grain) and 12.5.1E. */
double lag_edge_room(struct trace *trace, double b, double D);
/* True if a hole that misses by `tolerance` still keeps 1.5 D of wood. */
bool lag_edge_fits(double b, double D, double tolerance);

/* Least penetration for side load, 4 D, and the one from which tabulated values count in full, 8 D;
   of p, tip not counted. */
double lag_penetration_least(struct trace *trace, double D);
double lag_penetration_full(double D);

#endif
