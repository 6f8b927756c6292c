/* SPDX-License-Identifier: MIT */
/* What the files of this room share while one job is checked. Internal to src/check. */
#ifndef RP_CHECK_CONTEXT_H
#define RP_CHECK_CONTEXT_H

#include <stddef.h>

#include "check/result.h"
#include "load/asce7_tilted.h"
#include "load/loading_code.h"
#include "resist/blocking.h"
#include "resist/lag_lateral.h"
#include "resist/lumber.h"
#include "resist/member.h"
#include "resist/rafter_grid.h"
#include "resist/sheet_screw.h"
#include "table/lookup_covering.h"

/* One line of feet: under a rail, or under the edge of one collector on direct feet. */
struct line {
	int row;
	double y;              /* of the feet, m up the slope */
	double x0, x1;         /* of what stands on it */
	double y_low, y_high;  /* of the strip of collector that this line carries */
	bool rear;             /* the upper of its two lines */
};

/* What one fastener carries where it is no lag screw. */
struct fastening {
	double pull, side;                   /* allowable, N; before CD where it applies */
	double tension, washer;              /* of a bolt, N; before LRFD */
	double Fc_perp;                      /* adjusted, under its washer, Pa; before LRFD */
	struct sheet_screw_joint sheet;
	struct sheet_screw strength;
};

/* The blocks between rafters that are tried: a screw in one, and its ends; c->r->block has the rest. */
struct block {
	struct lumber_piece piece;
	struct lag_screw_geometry screw; /* a wood screw's too */
	struct lag_lateral lateral;      /* across the grain */
	double W;                        /* reference withdrawal, N/m */
	double layers;                   /* between foot and block, m */
	double nail;                     /* reference side load of one nail in side grain, N */
	struct block_grid grid;
};

/* A look-up of a wind coefficient and what it gave: the same few are asked for again and again. */
#define COEFFICIENT_MEMO 64
struct coefficient_memo {
	bool set;
	enum wind_curve curve;
	enum zone zone;
	enum wind_sign sign;
	double A;
	struct wind_coefficient found;
};

/* Wind on a piece of a rafter's strip, likewise. */
#define STRIP_MEMO 512
struct strip_memo {
	bool lift, missing, matters, overhang;
	enum wind_curve curve;
	int column;
	double y0, y1, length, p;
};

/* Wind on one piece of a rafter as the loads it makes, neighbours with the same wind as one: at `factor` 1. */
#define WIND_MEMO 16
#define WIND_PIECES (4 * ZONE_SHAPE_MAX + 50) /* a border at every corner of a zone and both ends of 16 rows */
struct wind_memo {
	bool lift, under, missing, matters;
	enum wind_curve curve;
	int column, pieces;
	double start, length, share;
	double from, to[WIND_PIECES], w[WIND_PIECES]; /* on plan, m; Pa */
};

/* Where loads begin, end and act on rafters of one length (rafter_mesh.c). */
#define MESH_MEMO 4
#define MESH_PIECES 12
struct foot_unit {
	double normal, slope; /* N per m2 of array */
};
struct rafter_mesh {
	int pieces, supports;                     /* supports 0: one span by itself */
	double start[MESH_PIECES], length[MESH_PIECES];
	bool room;                                /* else its places are too many */
	double origin;                            /* what the mesh is measured from, along the slope, m */
	struct rafter_grid grid;
	/* right of each cut: which piece of the rafter, under a row, where a row keeps people off */
	unsigned char piece[BEAM_CUT_MAX], covered[BEAM_CUT_MAX], spared[BEAM_CUT_MAX];
	double beside[SNOW_CASE_MAX][BEAM_CUT_MAX]; /* snow that the array moves there, Pa on plan */
	struct foot_unit filled, dry, snow, quake; /* of a foot, by a unit of each load */
};

/* A rafter as it stands today, which no layout of the feet changes but for the spans that are looked at. */
#define BEFORE_MEMO 64
#define BEFORE_SPANS 8
struct before_memo {
	enum wind_curve curve;
	int column, spans;
	double run, start[BEFORE_SPANS], length[BEFORE_SPANS]; /* of the roof there, of each span, on plan, m */
	bool whole, low_loaded, high_loaded, missing, matters;
	struct {
		double dead, live, snow, moment; /* N m */
	} bends[BEFORE_SPANS];
	int checks;
	enum check_id id[LINK_COUNT * 2];
	struct check_value check[LINK_COUNT * 2];
};

/* Adjusted values of the rafter's lumber for each load duration, likewise. */
#define LUMBER_MEMO 8

/* Stability of a section against toppling, likewise. */
#define STABLE_MEMO 16
struct stable_memo {
	double depth, lu, Emin, Fb_star;
	struct stability found;
};

/* What one lag screw carries under each load duration (LRFD: time effect factor), likewise. */
struct screw_memo {
	double CD;
	double Wp, Z, tension; /* N */
};

/* How much the search for the fewest feet may work. */
enum effort {
	EFFORT_QUICK, /* one of many trials: a layout that holds is enough */
	EFFORT_FULL,
	EFFORT_PROOF /* and it says what stands in the way of one foot fewer */
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
	bool layers_given;                   /* no job but a question: what lies between foot and rafter, as told, m */
	double layers, layers_gap;
	struct wind_velocity wind;
	struct array_surroundings around;
	unsigned exposed_sides;
	unsigned flush_failed;
	double GCpi;
	double tilt;                         /* collectors against the roof, rad */
	bool rack;                           /* tilted more than flush rules allow */
	double foot_height;                  /* over which a foot is bent by the force along the roof, m; 0 on a braced rack */
	struct tilted_factors tilted;        /* 29.4.3 */
	double Fh, Fv;                       /* 29.4.1, of a strip one metre wide, N/m */
	struct snow_loads snow;
	struct load_combination combination[COMBINATION_MAX]; /* of the job's method, without earthquake */
	int combinations;
	struct load_combination asd[COMBINATION_MAX]; /* of ASD, for tested allowables */
	int asds;
	bool lrfd;

	/* quake.c, snow_extra.c */
	struct {
		bool known;
		double horizontal, vertical; /* of the array's weight */
		struct load_combination combination[COMBINATION_MAX], asd[COMBINATION_MAX];
		int combinations, asds;
	} quake;
	double held_length; /* of slippery roof above the array, on plan, m; 0: nothing slides against it */
	double ice;         /* on the overhang, Pa on plan; 0 none */

	/* fastener.c */
	double G;                            /* of the rafter, for fastenings */
	struct lag_screw_geometry screw;
	struct lag_lateral lateral;
	struct screw_placement placement;
	bool fastener_rated, too_near;
	struct fastening fastening;          /* kinds other than lag screws */
	double hole, hole_depth;             /* in the rafter's top edge, m; 0: none */
	bool edge_held;                      /* a rafter's lower edge needs no more than held ends, if that */
	double tie_factor;                   /* of raised ties, on the allowed span */
	double net_share;                    /* of a rafter's section modulus beside the hole; 1: no hole */

	struct block block;

	/* rafter.c */
	bool lumber_known;
	struct lumber_piece lumber;

	enum effort effort;

	struct coefficient_memo memo[COEFFICIENT_MEMO];
	bool columns_known;
	unsigned char column[RAFTER_MAX]; /* of each rafter, the first with the same wind (rafter_wind.c) */
	int lumbers;
	double duration[LUMBER_MEMO];
	struct lumber_values adjusted[LUMBER_MEMO];
	int meshes, stables;
	struct stable_memo stable[STABLE_MEMO];
	int screws;
	struct screw_memo carries[LUMBER_MEMO];

	/* of the pass under way */
	enum wind_curve curve;
	bool curve_matters;                  /* a coefficient was used that has a second curve */
	bool coefficient_missing;            /* a zone without any coefficient was met */
	bool couple_unknown;                 /* a standoff's couple met no known lever arm */
	double Cg;                           /* group factor of the screws of a foot */

	bool strip_known[STRIP_MEMO], blown_known[WIND_MEMO], before_known[BEFORE_MEMO];

	/* From here on nothing is cleared beforehand: the flags say what is known. */
	struct wind_memo blown[WIND_MEMO];
	struct strip_memo strip[STRIP_MEMO];
	struct before_memo before[BEFORE_MEMO];
	struct rafter_mesh mesh[MESH_MEMO];
};

/* What stands behind is large and rarely used whole: clearing it would cost more than a look-up saves. */
#define CONTEXT_CLEARED offsetof(struct context, blown)

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
