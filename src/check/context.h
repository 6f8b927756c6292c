/* SPDX-License-Identifier: MIT */
/* What the files of this room share while one job is checked. Internal to src/check. */
#ifndef RP_CHECK_CONTEXT_H
#define RP_CHECK_CONTEXT_H

#include "check/result.h"
#include "load/loading_code.h"
#include "resist/lag_lateral.h"
#include "resist/lumber.h"
#include "table/lookup_covering.h"

/* IBC 1607.14.4.1 (2021), ASCE/SEI 7-22 4.16.1: room under or between collectors above this counts as a place to stand. */
#define ROOM_TO_STAND (24 * M_PER_IN)
/* Government limit for thermal collectors on the simple permit path (California Solar Permitting Guidebook, SWH Toolkit
   Document 4): heavier ones have their roof designed. */
#define COLLECTOR_WEIGHT_LIMIT (5 * UNIT_PSF_IN_PA)
#define UNIT_PSF_IN_PA (N_PER_LBF / (M_PER_FT * M_PER_FT))

/* One line of feet: under a rail, or under the edge of one collector on direct feet. */
struct line {
	int row;
	double y;              /* of the feet, m up the slope */
	double x0, x1;         /* of what stands on it */
	double y_low, y_high;  /* of the strip of collector that this line carries */
};

struct context {
	const struct job *job;
	struct result *r;
	double theta, sin_theta, cos_theta;
	int lines;
	struct line line[LINE_MAX];

	/* loads.c */
	const struct loading_code *code;
	const struct covering_row *covering; /* NULL: not in the table */
	double built_up;                     /* covering and underlayment under the foot, m */
	struct wind_velocity wind;
	struct array_surroundings around;
	unsigned exposed_sides;
	unsigned flush_failed;
	double GCpi;
	struct snow_loads snow;
	struct load_combination combination[COMBINATION_MAX];
	int combinations;

	/* fastener.c */
	double G;                            /* of the rafter, for fastenings */
	struct lag_screw_geometry screw;
	struct lag_lateral lateral;
	struct screw_placement placement;
	bool fastener_rated;

	/* rafter.c */
	bool lumber_known;
	struct lumber_piece lumber;

	/* of the pass under way */
	enum wind_curve curve;
	bool curve_matters;                  /* a coefficient was used that has a second curve */
	bool coefficient_missing;            /* a zone without any coefficient was met */
	bool couple_unknown;                 /* a standoff's couple met no known lever arm */
	double Cg;                           /* group factor of the screws of a foot */
};

void remark_add(struct result *r, enum remark_id id, const double value[3], const char *const text[3]);

/* REMARK(r, HEIGHT, h): up to three values, no text. REMARK_T(r, RIDGE, (theta), "board", "no"): values in parentheses,
   then up to three texts. */
#define REMARK(r, id, ...) \
	remark_add((r), REMARK_##id, (const double[3]){ __VA_ARGS__ }, (const char *const[3]){ 0 })
#define RP_UNWRAP(...) __VA_ARGS__
#define REMARK_T(r, id, values, ...)                                        \
	remark_add((r), REMARK_##id, (const double[3]){ RP_UNWRAP values }, \
	           (const char *const[3]){ __VA_ARGS__ })

/* applicability.c: reasons that end the calculation; reasons that only decide the verdict; facts assumed. */
bool check_stops(struct context *c);
void check_doubts(struct context *c);
void check_assumptions(struct context *c);

/* geometry.c: plane, rafters, collectors, lines, distances to the roof's edges. */
void check_geometry(struct context *c);

/* loads.c: velocity pressure, zones, snow cases, dead load, combinations. False when the code has no rows for this job. */
bool check_loads(struct context *c);

#endif
