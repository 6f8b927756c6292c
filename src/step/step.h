/* SPDX-License-Identifier: MIT */
/* The step table. Every formula of the program is one `struct step`: its symbol, unit, clause, text and the pure
   function that computes it in the clause's own units. A calculation runs its formulas through `STEP`, which
   converts from SI and back and, when a trace is given, records the line so that any report can show symbol,
   formula, the values put in, the result and the clause, and `rafterproof step NAME` can recompute it alone. */
#ifndef RP_STEP_H
#define RP_STEP_H

#include <assert.h>
#include <stddef.h>

#include "quantity/quantity.h"

/* How sure a value is. Printed with it wherever it decides something. */
enum confidence {
	CONFIRMED,       /* text seen in two places, or a published number reproduced by arithmetic */
	ONE_SOURCE,      /* one reading */
	FROM_MEMORY,     /* known, not confirmed: look it up */
	SAFE_SIDE,       /* a bound, deliberately on the safe side */
	OUR_RULE,        /* a rule of this program, stricter than or beside the code */
	COMMON_PRACTICE, /* habit of the trade without a published source */
	USER_ENTERED,    /* read from the book by the user, page given */
	DERIVED,         /* plain statics or geometry */
	CONFIDENCE_COUNT
};
const char *confidence_text(enum confidence c);

/* Editions of the loading standard. A clause that is the same everywhere, or belongs to another standard, stands at
   EDITION_ANY. */
enum edition { EDITION_ANY, ASCE7_10, ASCE7_16, ASCE7_22, EDITION_COUNT };

#define STEP_INPUT_MAX 10

struct step_var {
	const char *symbol;  /* as the standard prints it: "Kz"; also the key of `rafterproof step` */
	enum unit unit;      /* of the clause; UNIT_NONE for a factor */
	const char *meaning;
};

struct step {
	const char *name;    /* stable kebab-case: "wind-velocity-pressure" */
	const char *symbol;  /* of the result: "qh" */
	enum unit unit;      /* of the result, in the clause */
	const char *title;   /* a few plain words */
	const char *formula; /* as text, right-hand side: "0.00256 Kz Kzt Kd Ke V^2" */
	const char *clause[EDITION_COUNT]; /* full citation: "ASCE/SEI 7-16 Eq. 26.10-1" */
	enum confidence confidence;
	const char *note;    /* status in words, limits, or another reading; NULL if there is nothing to say */
	struct step_var in[STEP_INPUT_MAX]; /* ends at the first NULL symbol */
	double (*value)(const double *in);  /* pure; in and result in the clause's units */
};

/* One line of a calculation. */
struct step_record {
	const struct step *step;
	double in[STEP_INPUT_MAX]; /* SI */
	double result;             /* SI */
};

/* Caller's store for records. `dropped` counts what did not fit (never silently lost). */
struct trace {
	struct step_record *record;
	size_t count, capacity, dropped;
};

size_t step_input_count(const struct step *s);
/* Clause of an edition, else of EDITION_ANY, else of the first edition that has one; never NULL. */
const char *step_clause(const struct step *s, enum edition e);

/* Runs s on n SI values and returns SI; n must equal the number of inputs (asserted). trace may be NULL. */
double step_run(struct trace *trace, const struct step *s, const double *in, size_t n);

/* The same. Without a trace nothing is recorded, and where the compiler sees the step it does all but the formula itself
   beforehand: a search runs millions of them. */
static inline double step_quick(struct trace *trace, const struct step *s, const double *in, size_t n)
{
	double clause_in[STEP_INPUT_MAX];

	if (trace)
		return step_run(trace, s, in, n);
	assert(n > 0 && n <= STEP_INPUT_MAX && s->in[n - 1].symbol);
	assert(n == STEP_INPUT_MAX || !s->in[n].symbol);
	for (size_t i = 0; i < n; i++)
		clause_in[i] = unit_scale_from_si(in[i], s->in[i].unit);
	return unit_scale_to_si(s->value(clause_in), s->unit);
}

/* STEP(trace, step_wind_velocity_pressure, Kz, Kzt, Kd, Ke, V) */
#define STEP(trace, s, ...)                                                     \
	step_quick((trace), &(s), (const double[]){ __VA_ARGS__ },              \
	           sizeof((const double[]){ __VA_ARGS__ }) / sizeof(double))

#endif
