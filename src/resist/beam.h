/* SPDX-License-Identifier: MIT */
/* A continuous beam of constant stiffness on simple supports, with an overhang at either end: the
   rail on its feet, the rafter on its walls. Three-moment equation, solved directly; shear, moment
   and deflection are exact between the loads. SI. Loads and reactions: positive loads act down,
   positive reactions up; a sagging moment is positive; deflection down is positive. Uplift is a
   negative load. */
#ifndef RP_RESIST_BEAM_H
#define RP_RESIST_BEAM_H

#include <stdbool.h>
#include <stddef.h>

/* a rail foot on every rafter of the longest roof taken (128 rafters), and two to spare */
#define BEAM_SUPPORT_MAX 130
#define BEAM_LOAD_MAX 192 /* uniform and point loads together */

struct beam_uniform {
	double x0, x1; /* m, x0 <= x1; loads may overlap and lie in any order */
	double w;      /* N/m */
};

struct beam_point {
	double x; /* m */
	double P; /* N */
};

struct beam {
	double start, end;     /* of the beam, m */
	size_t supports;       /* 2 to BEAM_SUPPORT_MAX */
	const double *support; /* strictly rising, between start and end */
	/* together at most BEAM_LOAD_MAX; parts off the beam do not count */
	size_t uniforms, points;
	const struct beam_uniform *uniform;
	const struct beam_point *point;
};

struct beam_peak {
	double value; /* signed; 0 where there is none */
	double x;     /* m */
};

struct beam_forces {
	double reaction[BEAM_SUPPORT_MAX]; /* N, up positive */
	double moment[BEAM_SUPPORT_MAX];   /* N m at the supports */
	double load;                       /* on the beam in all, N */
	struct beam_peak sagging, hogging; /* largest moment of either sign, anywhere */
	struct beam_peak shear;            /* largest in magnitude, anywhere */
};

/* False, and *out not to be used, when the description breaks a rule above or holds a value that is
   not finite. */
bool beam_solve(const struct beam *beam, struct beam_forces *out);

/* Where the line load is constant: shear is linear, moment quadratic. */
struct beam_piece {
	size_t field;    /* 0: left overhang; i: supports i-1 to i; supports: right overhang */
	double x, length;
	double w, V, M;  /* line load on the piece; shear and moment at its left end */
};

/* A solved beam, cut at each start and end of a load, each point load and each support. */
struct beam_pieces {
	size_t count;
	struct beam_piece at[2 * BEAM_LOAD_MAX + BEAM_SUPPORT_MAX + 1];
};

/* beam_solve, which also leaves the pieces, for whoever asks for moment and shear at several places. */
bool beam_solve_pieces(const struct beam *beam, struct beam_forces *out, struct beam_pieces *pieces);
/* beam_moment_at and beam_shear_at of a beam in pieces. */
double beam_moment_in(const struct beam *beam, const struct beam_pieces *pieces, double x);
double beam_shear_in(const struct beam *beam, const struct beam_pieces *pieces, double x);

/* Largest moment in magnitude. */
struct beam_peak beam_worst_moment(const struct beam_forces *forces);

/* Largest deflections for their length: limits are parts of the span. */
struct beam_bow {
	struct beam_peak span;    /* of the span where |deflection| / length is largest */
	double span_length;       /* m */
	struct beam_peak overhang; /* of the worse overhang, likewise */
	double overhang_length;   /* m; 0: none */
};
/* EI in N m2, above 0. forces come from beam_solve of the same beam. */
void beam_deflect(const struct beam *beam, const struct beam_forces *forces, double EI,
                  struct beam_bow *out);

/* The same of a beam in pieces; its loads are not looked at. */
void beam_deflect_in(const struct beam *beam, const struct beam_pieces *pieces, double EI, struct beam_bow *out);

/* Moment and shear of a solved beam at one place; shear just right of x. */
double beam_moment_at(const struct beam *beam, const struct beam_forces *forces, double x);
double beam_shear_at(const struct beam *beam, const struct beam_forces *forces, double x);

/* The heart, for any number of supports n >= 2: given span lengths span[n-1] and right-hand sides
   rhs[n] (0 and n-1 unused), and the end moments already in moment[0] and moment[n-1], fills
   moment[1..n-2]. scratch[n]. Two passes, no pivoting: the matrix is symmetric and diagonally
   dominant. */
void beam_three_moment(size_t n, const double *span, const double *rhs, double *scratch,
                       double *moment);

#endif
