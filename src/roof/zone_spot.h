/* SPDX-License-Identifier: MIT */
/* In which zone a spot of a rectangular plane lies. Internal to src/roof: see zone_map_of. */
#ifndef RP_ROOF_ZONE_SPOT_H
#define RP_ROOF_ZONE_SPOT_H

#include "roof/zone.h"

/* Plan distances of a spot from the edges of the roof and from the ridge. */
struct spot {
	double rake, eave, ridge, far_eave;
};

struct spot zone_spot_at(const struct zone_plane *p, double x, double y);

typedef enum zone zone_spot_fn(const struct zone_plane *p, struct spot s);
/* Figs. 30.4-2A (7-10), 30.3-2A */
zone_spot_fn zone_spot_flat;
/* Figs. 30.4-2B and 2C (7-10), 30.3-2B to 2D, as one rectangle a plane */
zone_spot_fn zone_spot_gable;
/* Figs. 30.4-5A, 5B (7-10), 30.3-5A, 5B */
zone_spot_fn zone_spot_monoslope;
/* 7-16 Fig. 29.4-7 */
zone_spot_fn zone_spot_tilted;

#endif
