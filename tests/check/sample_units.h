/* SPDX-License-Identifier: MIT */
/* A job written in the other system of units. */
#ifndef RP_TESTS_SAMPLE_UNITS_H
#define RP_TESTS_SAMPLE_UNITS_H

#include <math.h>

#include "job/field.h"
#include "job/job.h"
#include "near.h"

/* Twelve digits survive the way through text; what a person writes has fewer. */
static inline void rewrite_in_si(struct job *job)
{
	char text[64];

	for (int i = 0; i < FIELD_COUNT; i++) {
		const struct field *f = &field_table[i];
		double *value = (double *)(void *)((char *)job + f->offset);

		if (f->type != FIELD_QUANTITY || field_repeats(f) || !isfinite(*value))
			continue;
		quantity_print(text, sizeof text, *value, f->si, 12);
		assert_int_equal(quantity_parse(text, f->dimension, value), QUANTITY_OK);
	}
	job->units = SYSTEM_SI;
}

#endif
