/* SPDX-License-Identifier: MIT */
/* One job under several editions of the loading standard, side by side. Pure, like the check. */
#ifndef RP_CHECK_COMPARE_H
#define RP_CHECK_COMPARE_H

#include "check/check.h"

#define COMPARE_MAX 3

struct compared {
	enum edition edition;
	const char *name;
	bool snow_mismatch; /* the ground snow is of the other level: nothing that snow touches is
			       computed */
	enum verdict verdict;
	double Kd, qh;               /* Pa */
	double p_up, p_down, GCp_up; /* worst of the feet, strength level; NAN: none */
	const char *zone;
	enum confidence confidence;
	double pf, snow; /* flat roof, and largest case on the array, Pa on plan */
	const char *snow_case;
	double ratio; /* of the weakest link; NAN: not rated */
	const char *governs, *combination;
	int attachments;
	double spacing;     /* smallest of the zones the array touches, m; NAN: none */
	const char *reason; /* first reason for an engineer, as a template is named; NULL */
	struct remark reason_remark;
};

/* Fills out[0..n-1] for the editions; the job's own method, layout wishes and entered coefficients
 * go into each. */
void compare_editions(const struct job *job, const enum edition edition[], int n,
		      struct check_workspace *w, struct compared out[]);
/* True if the ground snow of the job is at the level that the edition expects, or there is none. */
bool compare_snow_fits(const struct job *job, enum edition edition);

#endif
