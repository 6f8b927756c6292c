/* SPDX-License-Identifier: MIT */
/* Where the hole of a pipe lies in the covering, as it is asked of every foot (courses.h): the butts,
   battens, seams, joints and borders, and the least move that makes it clear. A pipe may move freely. */
#ifndef RP_PIPE_PLACE_H
#define RP_PIPE_PLACE_H

#include "check/result.h"
#include "job/job.h"

struct pipe_place {
	bool given;           /* the job says where it goes through */
	bool on_joint, near_seam, near_border; /* what is wrong beside the landing */
	bool butts, joints;   /* asked, and not known; joints: or seams */
	bool seamed;          /* the covering has seams in place of joints */
	bool clear;           /* nothing is wrong and nothing is open */
	enum landing landing; /* of the hole's worst part */
	int course;           /* that holds the middle; 0 unknown */
	double across, along; /* the hole, level and up the slope, m */
	double to_seam;       /* from the hole's edge, m; NAN none or not known */
	struct border_room border[BORDER_COUNT];
	double up, down, left, right; /* least move that leaves nothing wrong, m; NAN none within PIPE_MOVE_MOST */
};

#define PIPE_MOVE_MOST (36.0 * M_PER_IN)

/* Pipe `which`, from 0, of a job that was checked. */
struct pipe_place pipe_place(const struct job *job, const struct result *r, int which);

#endif
