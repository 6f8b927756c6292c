/* SPDX-License-Identifier: MIT */
/* Where a rail that comes in lengths is joined: as few joints as can be, none in an end span or past
   an outer foot, each near enough to a foot. Pure. */
#ifndef RP_ROOF_SPLICE_H
#define RP_ROOF_SPLICE_H

#include <stdbool.h>

#define SPLICE_MAX 64
#define SPLICE_FEET 4 /* fewer leave no span between two others */

struct splice_rail {
	double x0, x1; /* ends, m */
	double stock;  /* longest piece, m */
	double reach;  /* of a joint from the nearest foot, as a share of its span; 1/2: anywhere */
	int feet;
	const double *foot; /* rising, m */
};

/* Joints, from left to right, laid in the longest pieces from the left end: no way of laying has
   fewer. Returns how many, -1 where there is no way. */
int splice_lay(const struct splice_rail *rail, double at[SPLICE_MAX]);
/* As many joints where the largest bending moment at one of them is lowest, to the step of the places
   that are tried. `moment` tells it, signed. */
int splice_lay_easy(const struct splice_rail *rail, double (*moment)(const void *context, double x),
		    const void *context, double at[SPLICE_MAX]);
/* True if joints told, rising, stand where joints may and no piece is longer than the stock. */
bool splice_fits(const struct splice_rail *rail, const double *at, int joints);

#endif
