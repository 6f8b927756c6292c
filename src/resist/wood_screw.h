/* SPDX-License-Identifier: MIT */
/* A wood screw in the side grain of a rafter. NDS-2018 12.1.5, 12.2.2, Appendix L Table L3. The
   lengths are those of a lag screw (lag_screw.h) under other rules; SI throughout. */
#ifndef RP_RESIST_WOOD_SCREW_H
#define RP_RESIST_WOOD_SCREW_H

#include <stdbool.h>

#include "resist/lag_lateral.h"

/* Fills *out. T is NAN where the maker does not give it: then two thirds of the length, 4 D at
   least (cut thread). False, and *out not to be used, when D is no listed wood screw, T is longer
   than L or a length makes no sense. The tip 2 D counts as no thread: NDS writes no deduction, so
   this is the safe side. */
bool wood_screw_geometry_find(struct trace *trace, double D, double L, double T, double t_up,
			      double depth, struct lag_screw_geometry *out);

/* True inside the range that the equation is tabulated for: G 0.31 to 0.73, No. 6 to No. 24. */
bool wood_screw_withdrawal_covers(double G, double D);
/* W, reference withdrawal per length of thread, N/m. Eq. 12.2-2. */
double wood_screw_withdrawal(struct trace *trace, double G, double D);

/* Least penetration for side load, 6 D of p_tot (tip counted), m. 12.1.5.6. */
double wood_screw_penetration_least(struct trace *trace, double D);

/* Side load through a steel plate t thick: as lag_lateral_find, with the least penetration of wood
   screws. */
bool wood_screw_lateral_find(struct trace *trace, const struct lag_screw_geometry *s, double G,
			     double theta, double t, double gap, struct lag_lateral *out);

/* Lead hole for a screw loaded in withdrawal, m: both 0 where none is asked for (G to 0.5). From
   memory. */
bool wood_screw_lead_hole(struct trace *trace, const struct lag_screw_geometry *s, double G,
			  double *low, double *high);

#endif
