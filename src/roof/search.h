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

#define SEARCH_RAFTER_MAX 128
#define SEARCH_LINE_MAX 128
#define SEARCH_FEET_MAX 256
/* Room for the tables of all lines, the square of its places each: eight lines of 64 places. */
#define SEARCH_TABLE_MAX 32768

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

struct search_problem {
	const double *x; /* of the rafters, rising, m */
	int lines;
	const struct search_line *line;
	double floor; /* a ratio that no layout gets below */
	bool grows; /* a longer bay never lowers the ratio of a foot: longer ones need not be asked
		       for */
	bool rafters_add; /* a further foot never lowers the ratio of a rafter */
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
	/* The last word on a whole layout: its worst ratio, HUGE_VAL where it must not be. */
	double (*accept)(void *context, const struct search_layout *layout);
};

struct search_answer {
	bool found;
	bool complete; /* every possibility was looked at or ruled out: what was found is the best
			  there is, and what was not found does not exist */
	double ratio;  /* worst of the best layout */
	double uneven; /* sum of the squares of what the feet carry, m2 */
	struct search_layout layout;
};

/* Store of a search; the caller owns it. */
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
/* Width of rail nearest to a foot, m. */
double search_carried(const struct search_problem *p, int line, int a, int b, int c);
/* Sets the moment equation of foot m - 1 of the layout after foot m was set; `first` is the first
   foot of the line. Returns a ratio of the line that whatever follows cannot undercut. */
double search_prefix(struct search_state *s, int line, int first, int m);

/* Feet that the lines need at the least when no ratio is to be above `limit`, by what single feet
   can carry; fills the state. SEARCH_FEET_MAX + 1 where a line cannot stand at all; SEARCH_NO_ROOM
   where the tables are too small for the roof. */
#define SEARCH_NO_ROOM (-1)
int search_least(const struct search_problem *p, double limit, struct search_state *s);

/* The best layout with exactly `feet` feet and no ratio above `limit`. `work` bounds the effort
   (about steps of the search); what is left of it comes back in it. */
void search_best(const struct search_problem *p, int feet, double limit, long *work,
		 struct search_state *s);

#endif
