/* SPDX-License-Identifier: MIT */
/* How the hole of a foot lies in the pieces of the covering: part of a result. */
#ifndef RP_COURSE_PLACE_H
#define RP_COURSE_PLACE_H

#include <stdbool.h>

/* id, words, key for programs */
#define LANDINGS(L)                                                                                \
	L(UNKNOWN, "not known: not enough is measured", "unknown")                                 \
	L(WELL, "lands well", "well")                                                              \
	L(AT_BUTT, "too near a butt", "at-butt")                                           \
	L(ON_BATTEN, "on a batten", "on-batten")                                                   \
	L(AT_SEAM, "too near a seam", "at-seam")                                                   \
	L(AT_JOINT, "too near a joint", "at-joint")

/* Where flashings keep away from: id, words, key for programs. */
#define BORDERS(B)                                                                                 \
	B(VALLEY, "valley", "valley")                                                              \
	B(WALL, "wall", "wall")                                                                    \
	B(HIP, "hip", "hip")                                                                       \
	B(RIDGE, "ridge", "ridge")                                                                 \
	B(RAKE, "rake", "rake")                                                                    \
	B(EAVE, "eave", "eave")

enum border {
#define B(id, words, key) BORDER_##id,
	BORDERS(B)
#undef B
		BORDER_COUNT
};
const char *border_words(enum border border);
const char *border_key(enum border border);

/* From the edge of a foot's flashing (of its hole, where no plate can be sized) to a border, and what it
   keeps; m, NAN where there is none or it is not known. */
struct border_room {
	double distance, least;
};
bool border_close(const struct border_room *room);

enum landing {
#define L(id, words, key) LANDING_##id,
	LANDINGS(L)
#undef L
		LANDING_COUNT
};
const char *landing_words(enum landing landing);
const char *landing_key(enum landing landing);

/* Lengths in m, NAN where unknown. */
struct course_place {
	enum landing landing;
	int course;   /* that holds the hole, the eave's is 1; 0 unknown */
	double below; /* from the hole up to the butt that covers it */
	double above; /* from its own course's butt up to the hole */
	double plate_down, plate_up,
		plate_side; /* least extents of the flashing plate from the hole */
	double move_up,
		move_down; /* of the line, until it lands well; NAN when it does, or unknown */
	bool can_move;     /* one of them stays within the collector's clamp range */
	double to_seam;    /* along the eave to the nearest seam or rib */

	/* joints.c, where the joints repeat: along the eave, positive to the right */
	double to_joint;             /* from the joint that is nearest for its rule to the hole */
	bool joint_unseen; /* joints were measured, but not on both sides of this hole */
	double joint_side;           /* of the foot, until it is clear of them; 0 when it is */
	bool side_fits;              /* the rafter has that room beside its middle */
	double joint_up, joint_down; /* of the line, until this foot is clear and lands well */
	bool line_fits;              /* one of these stays within the clamp range and leaves fewer feet of the line on joints */

	struct border_room border[BORDER_COUNT]; /* border.c */
};

#endif
