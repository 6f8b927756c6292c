/* SPDX-License-Identifier: MIT */
/* Fewest holes: of all ways to put feet of several rail lines on rafters, the one with the lowest
   worst ratio among those with a given number of feet, and of equals the most even. Exhaustive:
   branch and bound, in which a branch is dropped only for what no way of going on could mend:
   - a foot between two known neighbours carries at least half of both bays (or the cantilever);
   - the moments of a continuous rail behind the last foot set hardly depend on what follows: they
   are carried as a range;
   - a table says how many feet more the rest of a line needs at the least;
   - a rafter is not relieved by a further foot (where `rafters_add` says that this is so).
   Knows nothing of wind, wood or rails: that is asked through functions. Pure. */
#ifndef RP_ROOF_SEARCH_H
#define RP_ROOF_SEARCH_H

#include <stdbool.h>
#include <stdint.h>

#include "quantity/quantity.h"

#define SEARCH_RAFTER_MAX 128
#define SEARCH_LINE_MAX 128
#define SEARCH_FEET_MAX 256
/* Room for the tables of all lines, the square of its places each: eight lines of 64 places. */
#define SEARCH_TABLE_MAX 32768
/* Places of all lines: as the squares are limited, and 128 lines, by the mean of squares. */
#define SEARCH_SPOT_MAX 2048
/* What the questions cost, in steps of the search; measured, roughly. */
#define WORK_WHOLE 20
#define WORK_RAFTER 5
#define WORK_ACCEPT 400
#define SEARCH_NEVER 255 /* no number of feet is enough */

/* What a foot costs whatever else stands on its line, given its neighbours. Ratios of demand to
 * capacity; 0: not rated. */
struct search_cost {
	double width;  /* of foot and screws, per metre of rail that the foot carries */
	double moment; /* of the rail, per m2 of bending moment under a load of one per metre */
	double alone;  /* of the rafter, under this foot alone at its plain share of the rail */
};

struct search_line {
	double x0, x1;                          /* ends of the rail, m along the eave */
	double cantilever;                      /* most at either end, m; HUGE_VAL: no limit */
	double bay;                             /* longest bay, m; HUGE_VAL: no limit */
	int places;                             /* where a foot may stand */
	unsigned char place[SEARCH_RAFTER_MAX]; /* indices of rafters, rising */
	int least;                              /* feet that it must have, up to 4; 0: as it comes */
	int copies; /* an earlier line whose feet this one repeats; -1: none. Its places are not
		       looked at */
	int apart;  /* an earlier line with which it must not share a rafter; -1: none */
};

/* Feet of the lines one after the other. */
struct search_layout {
	int feet;
	unsigned char count[SEARCH_LINE_MAX];
	unsigned char rafter[SEARCH_FEET_MAX];
};

/* A foot between its neighbours on its line; -1: none on that side. */
struct search_foot {
	int line, a, c;
};

struct search_problem {
	const double *x; /* of the rafters, rising, m */
	int lines;
	const struct search_line *line;
	double floor; /* a ratio that no layout gets below */
	bool grows; /* a longer bay never lowers the ratio of a foot: longer ones need not be asked
		       for */
	bool rafters_add; /* a further foot never lowers the ratio of a rafter */
	bool even;        /* of equals the most even is wanted, not just any */
	bool any;         /* the first layout within the limit will do */
	void *context;
	/* Foot of a line on rafter b with its neighbours on a and c; -1: none on that side. */
	struct search_cost (*cost)(void *context, int line, int a, int b, int c);
	/* Ratio of a finished line by itself; fills the width of rail that each foot carries. */
	double (*whole)(void *context, int line, const unsigned char *rafter, int count,
			double *width);
	/* Ratio of one rafter under the feet that the first `lines` lines have on it; width[] is what
	   each foot of the layout carries. */
	double (*rafter)(void *context, int rafter, const struct search_layout *layout, int lines,
			 const double *width);
	/* Ratio of one rafter under these feet, each carrying its plain share of the rail, whatever
	   else stands on it; no more than `rafter` says. NULL: nothing is known of it. */
	double (*meet)(void *context, int rafter, const struct search_foot *foot, int feet);
	/* The last word on a whole layout: its worst ratio, HUGE_VAL where it must not be. */
	double (*accept)(void *context, const struct search_layout *layout);
};

struct search_answer {
	bool found;
	bool complete; /* every possibility was looked at or ruled out: what was found is the best
			  there is, and what was not found does not exist */
	double ratio;  /* worst of the best layout */
	double bound;  /* no layout has a lower one */
	double uneven; /* sum of the squares of what the feet carry, m2 */
	struct search_layout layout;
};

/* States of the lines, left to right, from which no way on was found (search_dead.c). */
#define SEARCH_DEAD_MAX 8192
#define SEARCH_DEAD_LINES 8
struct search_key {
	uint64_t stamp;  /* search and feet to come; 0: none */
	uint64_t last;   /* a byte for each line: spot of its last foot */
	uint64_t before; /* and of the one before */
};

/* A line that is laid left to right with all others (search_relaxed.c). */
struct search_front {
	int feet;           /* set so far, on the spots chain[] of the state */
	int first, last;    /* spots of the first place that may still be its first, and of the last foot set */
	int position;       /* rafter that is to be decided on next; SEARCH_RAFTER_MAX: none, the line is done */
	int need;           /* feet that it still needs at the least, all its copies together */
};

/* at_most, the plain cases first. */
static inline bool search_fits(double length, double limit)
{
	return length <= limit || at_most(length, limit);
}

/* Store of a search; the caller owns it. Zeroed, or begun by search_begin. */
struct search_state {
	const struct search_problem *p;
	struct search_answer best;
	int wanted;                    /* feet in all */
	double limit;                  /* no ratio above this is of interest */
	long left;                     /* work still allowed */
	int least[SEARCH_LINE_MAX];    /* feet that each line needs; of a line that is repeated, all
					  together */
	int rest[SEARCH_LINE_MAX + 1]; /* feet that this line and those after it need */
	int room[SEARCH_LINE_MAX + 1]; /* feet that this line and those after it have places for */
	double moment[SEARCH_LINE_MAX]; /* no rail of this line has a larger one over a foot, m2,
					   under one per metre */
	int repeats[SEARCH_LINE_MAX]; /* lines that stand on this line's rafters, itself included */
	int table_at[SEARCH_LINE_MAX];
	unsigned char table[SEARCH_TABLE_MAX];
	/* by the pair of the last two feet: the farthest spot of the next one that the limit allows,
	   0 for none; SEARCH_ENDS is added where the line may end there */
	unsigned char far[SEARCH_TABLE_MAX];
	/* the same for the first foot; and feet in all if it stands there, or there or later */
	int spot_at[SEARCH_LINE_MAX];
	unsigned char first_far[SEARCH_SPOT_MAX], first[SEARCH_SPOT_MAX], start[SEARCH_SPOT_MAX];
	struct search_front front[SEARCH_LINE_MAX];
	int fronts; /* that are no copies */
	unsigned char chain[SEARCH_SPOT_MAX];
	unsigned char met[SEARCH_FEET_MAX]; /* lines that stand on rafters being decided on */
	int mets;
	uint64_t round; /* of search_relaxed */
	int buried;     /* in this round */
	bool dead_wide; /* all of dead[] is in use, not just the first few */
	struct search_key dead[SEARCH_DEAD_MAX];
	struct search_layout hint;   /* with one foot more than wanted: where to begin; feet 0: none */
	bool alone, stands;          /* whether one line can stand by itself is asked; it can */
	bool evening;                /* what is as good as the best but more even is looked for */
	int owed;                    /* feet of lines yet to come that repeat one already set */
	struct search_layout layout; /* being built */
	unsigned char spot[SEARCH_FEET_MAX]; /* of each foot: index into its line's places */
	double width[SEARCH_FEET_MAX];
	/* of each foot: moment over it = fixed + carry * moment over the next */
	double fixed[SEARCH_FEET_MAX], carry[SEARCH_FEET_MAX];
};

/* Ratio of a foot by itself between its neighbours, as far as it can be told: no line that has it
   is better than this. HUGE_VAL where a bay or an end is too long. */
double search_single(const struct search_problem *p, int line, int a, int b, int c);
/* What a foot costs between its neighbours: the worst over the lines that stand on its rafters. */
struct search_cost search_cost_of(const struct search_problem *p, int line, int a, int b, int c);
/* Width of rail nearest to a foot, m. */
double search_carried(const struct search_problem *p, int line, int a, int b, int c);
/* Sets the moment equation of foot m - 1 of the layout after foot m was set; `first` is the first
   foot of the line. Returns a ratio of the line that whatever follows cannot undercut. */
double search_prefix(struct search_state *s, int line, int first, int m);

/* Feet that the lines need at the least when no ratio is to be above `limit`, by what single feet
   can carry; fills the state. SEARCH_FEET_MAX + 1 where a line cannot stand at all; SEARCH_NO_ROOM
   where the tables are too small for the roof. */
#define SEARCH_NO_ROOM (-1)
#define SEARCH_ENDS 128
int search_least(const struct search_problem *p, double limit, struct search_state *s);

/* Whether `feet` feet can stand within the limit as far as single feet and those that meet on a
   rafter tell: no layout that holds is left out. Fills the state's layout with the first that it
   finds. search_least must have been called with this limit. Ends for want of work with s->left at
   0: then false proves nothing. */
#define SEARCH_ANY 0 /* in place of a number: whether any can stand */
bool search_relaxed(struct search_state *s, int feet);
/* A number of feet below which none stand within the limit, as far as search_relaxed can tell; the
   state's layout has that many. SEARCH_FEET_MAX + 1 where there is no such layout, whatever the
   number; SEARCH_NO_ROOM as above. Where the work runs out, what is certain so far, and no layout. */
int search_fewest(const struct search_problem *p, double limit, long *work, struct search_state *s);
/* What the rest depends on: the last two feet of each line and how many feet are still to be set.
   False where that is too much for a key. */
bool search_key(const struct search_state *s, int remaining, struct search_key *key);
/* Makes a store fit for its first use. */
void search_begin(struct search_state *s);
/* True if it, or what is no worse off, was buried in this search. */
bool search_is_dead(const struct search_state *s, const struct search_key *key);
void search_bury(struct search_state *s, const struct search_key *key);

/* Raises the feet that lines need to these. */
void search_raise(struct search_state *s, const int least[]);
/* search.c: whether the line can stand on `feet` feet, its copies' included, within s->limit by
   itself: its rail as a whole, and its rafters as if no other line stood on them. To be asked in
   rising numbers, from what single feet need. The state's layout must be empty, and is again. */
bool search_stands(struct search_state *s, int line, int feet);
/* search_alone.c: raises the feet that each line needs to what it needs by itself. False where all lines
   together then need more than are wanted. */
bool search_alone(struct search_state *s);
/* search.c: every layout of s->wanted feet within this limit, or, in the evening, every one as good as
   the best that may be more even; what is better goes into s->best. */
void search_within(struct search_state *s, double limit, bool evening);

/* The best layout with exactly `feet` feet and no ratio above `limit`. `work` bounds the effort
   (about steps of the search); what is left of it comes back in it. */
void search_best(const struct search_problem *p, int feet, double limit, long *work,
		 struct search_state *s);

#endif
