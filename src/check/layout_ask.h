/* SPDX-License-Identifier: MIT */
/* What the search for the fewest feet asks of a real job (roof/search.h), and what is remembered of
   the answers. Internal to src/check. */
#ifndef RP_CHECK_LAYOUT_ASK_H
#define RP_CHECK_LAYOUT_ASK_H

#include "check/pass.h"
#include "roof/search.h"

#define MEMO 4096

/* What is known of a foot between two neighbours. */
struct memo {
	short line, a, b, c;
	struct search_cost cost;
	double p_up, p_down, tip, ratio; /* at its plain share of the rail */
	double asked; /* the rafter under it alone was asked whether it is within this limit; 0: it is known */
};

/* Ratios of rafters that are known, of up to so many feet, by what each of them carries: area, lift
   before and after twice its dead load, wind down. More of any of them is never better. */
#define SAMPLE_FEET 3
#define SAMPLES 6
#define SAMPLE_SETS 512
struct rafter_sample {
	double ratio; /* 0: none */
	double load[SAMPLE_FEET][4];
};
struct rafter_samples {
	unsigned char place, line[SAMPLE_FEET], at[SAMPLE_FEET]; /* from 1, 0: none */
	unsigned char next; /* to be written over */
	struct rafter_sample sample[SAMPLES];
};

/* Ratio of a line by itself on a set of places, bit by bit. */
#define WHOLES 4096
struct whole_line {
	uint64_t place[SEARCH_RAFTER_MAX / 64];
	int line;
	double ratio;
};

enum answer { NOT_ASKED, PROPORTIONAL, OTHERWISE };

struct finder {
	struct context *c;
	struct pass *pass; /* store for trial runs */
	const double *cantilever;
	struct search_problem problem;
	struct search_line line[LINE_MAX];
	enum answer proportional[LINE_MAX]; /* feet of this line: ratio to width */
	double rail;                        /* capacity, N m; NAN */
	bool worked_out;                    /* what layout_rafter said last is the ratio itself, no bound */
	/* cleared entry by entry as they come into use */
	bool memo_used[MEMO], samples_used[SAMPLE_SETS], wholes_used[WHOLES];
	struct memo memo[MEMO];
	struct rafter_samples samples[SAMPLE_SETS];
	struct whole_line wholes[WHOLES];
	struct layout layout;
	struct search_state state;
};

/* Empties the memory and fills in who answers (problem.cost and so on). */
void layout_ask_prepare(struct finder *f);
/* A layout of the search as the check has it. */
void layout_spread(const struct finder *f, const struct search_layout *from, struct layout *to);

/* layout_rafter.c: ratio of the rafters of a place under the attachments of the pass, or less: at
   least what makes it exceed the search's limit where it does. */
double layout_rafter(struct finder *f, int place);

/* layout_bar.c: the rule because of which fewer than these feet cannot stand at all; BAR_NONE where
   it is loads that forbid them. Feet beyond SEARCH_FEET_MAX ask why no number can. The answer of the
   search is kept, its tables are not. */
enum search_bar layout_bar(struct finder *f, int feet);

#endif
