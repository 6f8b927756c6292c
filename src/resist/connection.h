/* SPDX-License-Identifier: MIT */
/* What changes the reference value of a fastener in wood: load duration, wet service, temperature,
   end grain, spacing and end distance, several fasteners in a row. NDS-2018 chapter 11 and 12.5. SI
   throughout. */
#ifndef RP_RESIST_CONNECTION_H
#define RP_RESIST_CONNECTION_H

#include <stdbool.h>

#include "step/step.h"

struct connection_factors {
	double CD;                        /* load duration, at most 1.6 (11.3.2) */
	double CM_withdrawal, CM_lateral; /* wet service, Table 11.3.3 */
	double Ct;                        /* temperature, Table 11.3.4 */
	double Ceg_withdrawal, Ceg_lateral; /* end grain: 12.2.1.3, 12.5.2.2 */
};

/* Fills *out for a lag screw made and kept dry, or used wet. temperature: sustained, of the wood,
   K; NAN means not above 100 F. False above 150 F, which NDS does not cover. */
bool connection_factors_find(double CD, bool wet, double temperature, bool end_grain,
                             struct connection_factors *out);

/* Which way the load on a row along the grain points. */
enum end_bearing {
	BEARS_TOWARD_END,  /* the screw is pushed toward the near end of the piece */
	BEARS_AWAY_FROM_END
};

struct screw_placement {
	bool permitted;            /* false: below a least distance, no side load at all */
	bool withdrawal_permitted; /* false: below the 4 D of Table 12.5.1E */
	double C_delta;            /* 1 or less; 0 when not permitted */
};

/* Screws in a row along a softwood rafter, load along the grain; end_distance NAN: ample; spacing
   NAN: one screw. NDS 12.5.1.1, 12.5.1.2, Tables 12.5.1A, B, E. Screws under 1/4 in have C_delta
   1. */
struct screw_placement screw_placement(struct trace *trace, double D, double end_distance,
                                       double spacing, enum end_bearing bearing);

/* What the NDS commentary recommends for screws under 1/4 in through steel, for which NDS itself asks
   only that the wood does not split (12.1.5.7), m: between them and to the rafter's end, without
   lead holes and with them; to the edge. False from 1/4 in up, where Tables 12.5.1 rule. */
struct small_screw_room {
	double spacing, spacing_bored, end, end_bored, edge;
};
bool small_screw_room_find(double D, struct small_screw_room *out);

/* Cg of n screws in one row with the load, wood main member (E Am) and metal plate (E As), spacing
   s. NDS Eq. 11.3-1 with gamma 270,000 D^1.5. 1 for one screw or D below 1/4 in. EA in N. */
double connection_group_factor(struct trace *trace, int n, double D, double s, double EAm,
                               double EAs);

#endif
