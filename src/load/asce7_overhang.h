/* SPDX-License-Identifier: MIT */
/* Wind on a roof overhang, top and underside together: ASCE/SEI 7-10 30.10, 7-16 30.9, 7-22 30.7.
   Collectors on it do not feel the underside; the rafter's tail does. */
#ifndef RP_LOAD_ASCE7_OVERHANG_H
#define RP_LOAD_ASCE7_OVERHANG_H

#include "load/asce7_pressure.h"

/* Net uplift coefficient of an overhang in the zone of `place` (its sign is not asked). The
   figure's own curve where the edition has one; else the roof's coefficient there, `roof`, less the
   pressure of the wall on the soffit; the more onerous of both where the figure is of one source. Not
   known where neither is. */
struct wind_coefficient asce7_overhang_coefficient(enum edition edition,
						   const struct wind_place *place,
						   const struct wind_coefficient *roof,
						   enum wind_curve curve, struct trace *trace);

#endif
