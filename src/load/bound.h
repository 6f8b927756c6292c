/* SPDX-License-Identifier: MIT */
/* The larger and the smaller of two numbers. Unlike fmax and fmin they hand on a NAN: a fact that
   is missing must never turn into the limit of a formula. */
#ifndef RP_LOAD_BOUND_H
#define RP_LOAD_BOUND_H

#include <math.h>

static inline double larger(double a, double b)
{
	return isnan(a) || a > b ? a : b;
}

static inline double smaller(double a, double b)
{
	return isnan(a) || a < b ? a : b;
}

#endif
