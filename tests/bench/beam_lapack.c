/* SPDX-License-Identifier: MIT */
/* The three-moment equations of a continuous beam at every size from 3 to 500 supports: our solver
   against LAPACK's for the same kind of matrix (dptsv: symmetric, positive definite, tridiagonal).
   Both get the spans' right-hand side ready made; LAPACK, which overwrites them, gets its matrix
   copied from one that is ready made too. The best of many rounds each, taken in turns. */
#define _POSIX_C_SOURCE 200809L
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "bench.h"
#include "resist/beam.h"
#include "resist/random.h"

#define MOST 500
#define ROUNDS 30
#define EACH 20000 /* supports solved per round, about */

void dptsv_(const int *n, const int *nrhs, double *d, double *e, double *b, const int *ldb,
	    int *info);

struct beam_case {
	int n;
	double span[MOST], rhs[MOST], d[MOST], e[MOST];
};

/* Interior supports 1 .. n-2: l M + 2 (l + r) M + r M = rhs. */
static void make(struct beam_case *c, int n, uint64_t *seed)
{
	c->n = n;
	for (int i = 0; i + 1 < n; i++)
		c->span[i] = random_between(seed, 0.4, 2);
	for (int i = 1; i + 1 < n; i++) {
		const double l = c->span[i - 1], r = c->span[i];

		c->rhs[i] = -(l * l * l + r * r * r) / 4;
		c->d[i - 1] = 2 * (l + r);
		c->e[i - 1] = r;
	}
}

static double ours(const struct beam_case *c, int times, double *moment)
{
	double scratch[MOST];
	const double start = bench_seconds();

	for (int t = 0; t < times; t++) {
		moment[0] = moment[c->n - 1] = 0;
		beam_three_moment((size_t)c->n, c->span, c->rhs, scratch, moment);
	}
	return (bench_seconds() - start) / times;
}

static double lapack(const struct beam_case *c, int times, double *moment)
{
	double d[MOST], e[MOST];
	const int n = c->n - 2, one = 1;
	int info = 0;
	const double start = bench_seconds();

	for (int t = 0; t < times; t++) {
		memcpy(d, c->d, (size_t)n * sizeof *d);
		memcpy(e, c->e, (size_t)n * sizeof *e);
		memcpy(moment + 1, c->rhs + 1, (size_t)n * sizeof *moment);
		dptsv_(&n, &one, d, e, moment + 1, &n, &info);
	}
	if (info != 0)
		exit(2);
	return (bench_seconds() - start) / times;
}

static int by_value(const void *a, const void *b)
{
	const double x = *(const double *)a, y = *(const double *)b;

	return (x > y) - (x < y);
}

int main(void)
{
	static struct beam_case c;
	static double a[MOST], b[MOST], ratio[MOST];
	uint64_t seed = 11;
	double worst = 0;
	int sizes = 0, slower = 0;

	for (int n = 3; n <= MOST; n++) {
		double best_ours = HUGE_VAL, best_lapack = HUGE_VAL;
		const int times = EACH / n + 1;

		make(&c, n, &seed);
		for (int round = 0; round < ROUNDS; round++) {
			best_ours = fmin(best_ours, ours(&c, times, a));
			best_lapack = fmin(best_lapack, lapack(&c, times, b));
		}
		for (int i = 1; i + 1 < n; i++)
			worst = fmax(worst, fabs(a[i] - b[i]) / fmax(fabs(b[i]), 1e-3));
		ratio[sizes++] = best_lapack / best_ours;
		slower += best_ours > best_lapack;
		if (n == 3 || n == 10 || n == 30 || n == 100 || n == 500)
			printf("%3d supports: ours %.3g s, LAPACK %.3g s\n", n, best_ours,
			       best_lapack);
	}
	qsort(ratio, (size_t)sizes, sizeof *ratio, by_value);
	printf("LAPACK/ours: least %.2f, median %.2f, most %.2f; slower at %d of %d sizes; largest "
	       "relative difference %.1e\n",
	       ratio[0], ratio[sizes / 2], ratio[sizes - 1], slower, sizes, worst);
	return worst > 1e-10;
}
