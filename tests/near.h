/* SPDX-License-Identifier: MIT */
/* Comparison of doubles for tests. cmocka 1.1.5 compares as float only, so this stands in; a failure shows both numbers
   with 17 digits and how far apart they are. */
#ifndef RP_TESTS_NEAR_H
#define RP_TESTS_NEAR_H

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

static inline void near_check(const char *what, double got, double want, double tol, double allowed,
                              const char *file, int line)
{
	const double diff = fabs(got - want);

	if (isfinite(got) && isfinite(want) && diff <= allowed)
		return;
	print_error("%s:%d: %s\n  got  %.17g\n  want %.17g\n  off  %.3g, allowed %.3g (tolerance %g)\n", file, line,
	            what, got, want, diff, allowed, tol);
	fail();
}

/* |got - want| <= rel |want| */
#define assert_near(got, want, rel) \
	near_check(#got, (got), (want), (rel), (rel) * fabs(want), __FILE__, __LINE__)
/* |got - want| <= abs: for values printed to a digit, half of that digit */
#define assert_within(got, want, tol) near_check(#got, (got), (want), (tol), (tol), __FILE__, __LINE__)
/* As assert_within, naming the row of a table. */
#define assert_row(what, got, want, tol) near_check((what), (got), (want), (tol), (tol), __FILE__, __LINE__)

#endif
