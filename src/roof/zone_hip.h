/* SPDX-License-Identifier: MIT */
/* Zones of one plane of a hip roof. Internal to src/roof: see zone_map_of. */
#ifndef RP_ROOF_ZONE_HIP_H
#define RP_ROOF_ZONE_HIP_H

#include "roof/zone.h"

void zone_hip_fill(struct zone_map *m, const struct zone_plane *p);

#endif
