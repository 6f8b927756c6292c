/* SPDX-License-Identifier: MIT */
/* What has to be bought for the layout found, without spares: counts and lengths from the result,
 * prices from the user. */
#ifndef RP_SHEET_MATERIALS_H
#define RP_SHEET_MATERIALS_H

#include "report/document.h"
#include "sheet/prices.h"
#include "sheet/sheet.h"

/* key, name */
#define MATERIALS(M)                                                                               \
	M(COLLECTOR, "collector", "collectors")                                                    \
	M(FOOT, "foot", "feet with their bolts")                                                   \
	M(SCREW, "screw", "screws for the feet")                                                   \
	M(BLOCK, "block", "blocks between rafters")                                                \
	M(BLOCK_NAIL, "block-nail", "nails for the blocks")                                        \
	M(BLOCK_HANGER, "block-hanger", "hangers for the blocks")                                  \
	M(FOOT_FLASHING, "foot-flashing", "flashings for the feet")                                \
	M(PIPE_FLASHING, "pipe-flashing", "flashings for pipes")                                   \
	M(RAIL, "rail", "rail")                                                                    \
	M(RAIL_JOINT, "rail-joint", "joints of the rail")                                          \
	M(END_CLAMP, "end-clamp", "end clamps")                                                    \
	M(MID_CLAMP, "mid-clamp", "middle clamps")                                                 \
	M(SEALANT, "sealant", "cartridges of sealant")                                             \
	M(PIPE, "pipe", "pipe")                                                                    \
	M(INSULATION, "insulation", "pipe insulation")

enum material_id {
#define M(id, key, name) MATERIAL_##id,
	MATERIALS(M)
#undef M
		MATERIAL_COUNT
};

struct material {
	enum material_id id;
	bool length; /* amount is in m, and priced by the foot or metre; else a count */
	double amount;
	const char *note; /* what it must be, in words */
	bool priced;
	int64_t each, total; /* in parts of PRICE_UNIT */
};

struct materials {
	int n;
	struct material row[MATERIAL_COUNT];
	int64_t total; /* of what has a price */
	int unpriced;  /* rows without one */
};

const char *material_key(enum material_id id);
const char *material_name(enum material_id id);
/* NULL-terminated, for prices_read. */
const char *const *material_keys(void);

/* From the collectors to the storage tank, m: as given, else by storeys and level ways; NAN if neither is. */
double pipe_run(const struct job_pipe *p);
/* prices: NULL for none. Notes live in the sheet's store. */
struct materials materials_of(const struct sheet *s, const struct prices *prices);
void materials_report(const struct sheet *s, struct document *d, const struct materials *m,
		      const struct prices *prices);
/* "1,234.50" never: plain digits, a point, two decimals, four where they count. */
const char *money_print(char *buf, size_t size, int64_t value);

#endif
