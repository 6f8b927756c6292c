/* SPDX-License-Identifier: MIT */
/* Which fasteners of one kind hold one load on one foot: every listed diameter in every usual
   length, by the functions of the check itself. And what a hole that misses the rafter's centre
   leaves. Pure. */
#ifndef RP_FASTENER_TABLE_H
#define RP_FASTENER_TABLE_H

#include <stdbool.h>

#include "check/check.h"

struct fastener_question {
	enum fastener_kind kind;
	bool lrfd;           /* the load is factored; else an allowable-stress one */
	double uplift;       /* of the foot, normal to the roof, N; 0 or more */
	double slope;        /* down the slope, N; 0 or more */
	double CD;           /* load duration of that load, in ASD */
	double lambda;       /* time effect of its combination, in LRFD */
	const char *species; /* as listed; NULL where G was given */
	double G;
	double breadth, depth; /* of the rafter, m */
	double plate;          /* steel under the head, m */
	double layers;         /* between plate and rafter, m */
	double gap;            /* the part of them without bearing, m */
	double height, arm; /* of the foot: line of the rail, compressed edge; arm NAN: not known */
	double temperature; /* of the wood, K; NAN: to 100 F */
	double tolerance;   /* that the crew's holes may miss, m */
	double spacing;     /* between two fasteners of the foot, along the rafter, m; NAN: one */
	double end_distance; /* to the rafter's end, m; NAN: ample */
	double steel_thickness, steel_strength; /* that a sheet screw bites, m, Pa; NAN */
	bool wet;
	int count; /* fasteners in the foot */
};

enum fastener_state {
	FASTENER_STATE_HOLDS,
	FASTENER_STATE_OVERLOADED,
	FASTENER_STATE_SHORT,   /* less than the least penetration in the rafter */
	FASTENER_STATE_NO_ROOM, /* the edge distance 1.5 D cannot be kept */
	FASTENER_STATE_UNRATED, /* outside the tables, too near together, or a couple without arm */
	FASTENER_STATE_COUNT
};

struct fastener_row {
	double D, L; /* m; L: length, wood thread of a hanger bolt, washer of a through-bolt; NAN */
	enum fastener_state state;
	double p_t;      /* thread in the rafter, m; NAN: none */
	double pull, Wp; /* on one fastener with the couple's share; least capacity, N */
	double side, Z;  /* N */
	double ratio; /* worst of pull, side, both together, the fastener itself; NAN unrated */
	enum check_id governs;
	double lead_low, lead_high; /* m; NAN none listed */
	bool through;               /* the point comes out below */
	const char *why;            /* not rated: the reason; NULL */
};

enum miss_state {
	MISS_KEEPS,  /* 1.5 D of wood and more */
	MISS_EDGE,   /* less than 1.5 D: not permitted, no reduction buys it */
	MISS_BREAKS, /* the screw's side comes through the rafter's face */
	MISS_WOOD,   /* no wood at all */
	MISS_STATE_COUNT
};

#define MISS_MAX 4
struct miss_row {
	double D, room;        /* m; how far a hole may miss */
	double edge[MISS_MAX]; /* wood from the screw's centre to the nearer face, m */
	enum miss_state state[MISS_MAX];
};

/* For comparison: a smooth nail through the same layers, m, N; D 0: none to compare. */
struct fastener_nail {
	double D, L, p; /* p in the rafter */
	double pull;    /* in withdrawal, adjusted as the screws' */
};

#define FASTENER_ROW_MAX 64
struct fastener_table {
	int rows;
	struct fastener_row row[FASTENER_ROW_MAX];
	int misses; /* 0: no wood is drilled */
	struct miss_row miss[8];
	double miss_by[MISS_MAX]; /* 0, 1/4, 1/2, 3/4 in, in m */
	int least;                /* index of the thinnest, then shortest that holds; -1 none */
	int nearest;      /* nothing holds: the lowest ratio of those that fit; -1 none */
	struct fastener_nail nail;
	double Z_bearing; /* side load of the nearest if nothing stood between plate and wood, N; NAN */
};

/* False where this kind has no values but its own test report's. */
bool fastener_kind_listed(enum fastener_kind kind);
/* The kind must be listed. The workspace is the caller's; what it held is lost. */
void fastener_table_fill(const struct fastener_question *q, struct check_workspace *w,
			 struct fastener_table *out);
const char *fastener_state_words(enum fastener_state s);
const char *miss_state_words(enum miss_state s);

#endif
