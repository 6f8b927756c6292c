/* SPDX-License-Identifier: MIT */
/* The field table: rows of every input, element by element from the .inc files, and the look-up
   by path. Ranges are wide: they refuse a slip of the pen (a wind of 1150 mph), not an unusual
   house. What lies inside a range but outside what can be computed is answered by the check. */
#include "job/field.h"

#include <string.h>

#include "job/job.h"

#include "job/choice.inc"

/* Units as constants, for ranges. */
#define IN M_PER_IN
#define FT M_PER_FT
#define MPH (M_PER_MI / 3600.0)
#define LB N_PER_LBF
#define PSF (N_PER_LBF / (M_PER_FT * M_PER_FT))
#define DEG RAD_PER_DEG
#define LITRE 1e-3
#define DEG_F(x) (((x) + 459.67) * (5.0 / 9.0))

#define MEMBER_OF(type, member) offsetof(struct type, member), sizeof(((struct type *)0)->member)
#define WHOLE(type) 0, sizeof(type)
#define IN_JOB(member) MEMBER_OF(job, member)

/* Rows: id, element, attribute, where it is stored, what it may be, need, fallback, example,
   meaning, how it is measured. */
#define QUANTITY(id, el, at, where, dim, us, si, min, max, need, fallback, example, meaning,       \
		 measured)                                                                         \
	{                                                                                          \
		FIELD_##id, el, at, FIELD_QUANTITY, DIM_##dim, UNIT_##us, UNIT_##si, min, max,     \
			NEED_##need, fallback, NULL, where, example, meaning, measured             \
	}
#define NUMBER(id, el, at, where, min, max, need, fallback, example, meaning, measured)            \
	{                                                                                          \
		FIELD_##id, el, at, FIELD_NUMBER, DIM_NONE, UNIT_NONE, UNIT_NONE, min, max,        \
			NEED_##need, fallback, NULL, where, example, meaning, measured             \
	}
#define INTEGER(id, el, at, where, min, max, need, fallback, example, meaning, measured)           \
	{                                                                                          \
		FIELD_##id, el, at, FIELD_INTEGER, DIM_NONE, UNIT_NONE, UNIT_NONE, min, max,       \
			NEED_##need, fallback, NULL, where, example, meaning, measured             \
	}
#define CHOICE(id, el, at, where, choice, need, fallback, example, meaning, measured)              \
	{                                                                                          \
		FIELD_##id, el, at, FIELD_CHOICE, DIM_NONE, UNIT_NONE, UNIT_NONE, 0, 0,            \
			NEED_##need, fallback, choice, where, example, meaning, measured           \
	}
#define TEXT(type, id, el, at, where, choice, need, fallback, example, meaning, measured)          \
	{                                                                                          \
		FIELD_##id, el, at, FIELD_##type, DIM_NONE, UNIT_NONE, UNIT_NONE, 0, 0,            \
			NEED_##need, fallback, choice, where, example, meaning, measured           \
	}

const struct field field_table[FIELD_COUNT] = {
#include "job/field_site.inc"
#include "job/field_roof.inc"
#include "job/field_framing.inc"
#include "job/field_collector.inc"
#include "job/field_support.inc"
#include "job/field_load.inc"
#include "job/field_metals.inc"
#include "job/field_wind.inc"
#include "job/field_pipe.inc"
#include "job/field_obstacle.inc"
#include "job/field_rail_joint.inc"
};

const struct field *field_find(const char *path)
{
	for (size_t i = 0; i < FIELD_COUNT; i++) {
		const size_t n = strlen(field_table[i].element);

		if (strncmp(path, field_table[i].element, n) == 0 && path[n] == '.' &&
		    strcmp(path + n + 1, field_table[i].attribute) == 0)
			return &field_table[i];
	}
	return NULL;
}

bool field_repeats(const struct field *f)
{
	return f->id == FIELD_RAFTER_AT || f->id == FIELD_SUPPORT_AT || f->id == FIELD_JOINT_COURSE || f->id == FIELD_JOINT_AT ||
	        f->id >= FIELD_PIPE_DIAMETER;
}

const char *field_origin_text(enum field_origin o)
{
	switch (o) {
	case ORIGIN_ABSENT:
		return "not given";
	case ORIGIN_DEFAULT:
		return "default";
	case ORIGIN_ASSUMED:
		return "assumed";
	case ORIGIN_FILE:
		return "job file";
	case ORIGIN_OVERRIDE:
		return "--set";
	}
	return "";
}

bool job_given(const struct job *job, enum field_id id)
{
	return job->origin[id] == ORIGIN_FILE || job->origin[id] == ORIGIN_OVERRIDE;
}
