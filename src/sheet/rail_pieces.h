/* SPDX-License-Identifier: MIT */
/* Where the rails of a layout are joined, and what they are cut from. */
#ifndef RP_SHEET_RAIL_PIECES_H
#define RP_SHEET_RAIL_PIECES_H

#include "roof/splice.h"
#include "sheet/sheet.h"

/* Joints of a line of the pass, m along the eave, rising; how many. */
int rail_pieces_joints(const struct sheet *s, int line, double at[SPLICE_MAX]);

struct rail_pieces {
	int pieces, joints;
	double length; /* of all pieces, m */
	int stocks;    /* lengths as the rail comes that they are cut from; 0: that is not known */
	const char *words; /* the pieces, longest first: "2 of 8 ft 0 in, ..." */
};

struct rail_pieces rail_pieces_of(const struct sheet *s);

#endif
