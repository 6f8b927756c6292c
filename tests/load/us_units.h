/* SPDX-License-Identifier: MIT */
/* Short ways between US units and SI for the tests of loads. */
#ifndef RP_TESTS_LOAD_US_UNITS_H
#define RP_TESTS_LOAD_US_UNITS_H

#include "quantity/quantity.h"

static inline double psf(double x)
{
	return unit_to_si(x, UNIT_PSF);
}
static inline double in_psf(double si)
{
	return unit_from_si(si, UNIT_PSF);
}
static inline double ft(double x)
{
	return unit_to_si(x, UNIT_FT);
}
static inline double in_ft(double si)
{
	return unit_from_si(si, UNIT_FT);
}
static inline double ft2(double x)
{
	return unit_to_si(x, UNIT_FT2);
}
static inline double inch(double x)
{
	return unit_to_si(x, UNIT_IN);
}
static inline double mph(double x)
{
	return unit_to_si(x, UNIT_MPH);
}
static inline double deg(double x)
{
	return unit_to_si(x, UNIT_DEG);
}

#endif
