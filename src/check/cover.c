/* SPDX-License-Identifier: MIT */
/* The cover that a roof in courses has: its measured exposure against the largest that is allowed,
   its lap against the least. A roof that falls short leaks with or without collectors; whoever
   opens it should know before. */
#include <math.h>

#include "check/courses.h"
#include "roof/flashing.h"
#include "table/lookup_covering.h"

/* Courses are measured over ten of them, to 1/8 in: what is nearer than this to a limit meets it.
 */
#define COVER_TOLERANCE (M_PER_IN / 16)

static bool over(double x, double limit_in)
{
	return !at_most(x, limit_in * M_PER_IN + COVER_TOLERANCE);
}

/* Highest grade number (lowest grade) that may show E; 0: none. */
static int lowest_grade(const struct job_roof *roof, double rise)
{
	int lowest = 0;

	for (int grade = 1; grade <= 3; grade++) {
		const struct covering_exposure_row *row = covering_exposure_row(
			roof->covering, roof->piece_length / M_PER_IN, grade, rise);

		if (row && !over(roof->course_exposure, row->most_in))
			lowest = grade;
	}
	return lowest;
}

static int listed_grades(const struct job_roof *roof, double rise)
{
	int n = 0;

	while (n < 3 &&
	       covering_exposure_row(roof->covering, roof->piece_length / M_PER_IN, n + 1, rise))
		n++;
	return n;
}

static void exposure(struct context *c, double rise)
{
	const struct job_roof *roof = &c->job->roof;
	const struct covering_exposure_row *row =
		covering_exposure_row(roof->covering, roof->piece_length / M_PER_IN,
				      roof->piece_grade > 0 ? roof->piece_grade : 1, rise);
	const int lowest = lowest_grade(roof, rise);

	if (!row)
		REMARK_T(c->r, EXPOSURE_UNLISTED, (roof->piece_length), "The code's table");
	else if (over(roof->course_exposure, row->most_in))
		REMARK_T(c->r, EXPOSURE_OVER, (roof->course_exposure, row->most_in * M_PER_IN),
			 row->where);
	else if (roof->piece_grade == 0 && lowest < listed_grades(roof, rise))
		REMARK_T(c->r, EXPOSURE_GRADE, (roof->course_exposure, lowest), row->where);
}

static void lap(struct context *c, const struct covering_lap_row *row)
{
	const struct job_roof *roof = &c->job->roof;
	const double L = roof->piece_length, E = roof->course_exposure;
	const double h = row->lap == COVERING_LAP_LAP_DOUBLE ? STEP(NULL, step_headlap, L, E)
							     : STEP(NULL, step_tile_headlap, L, E);

	if (!at_least(h, row->least_in * M_PER_IN - COVER_TOLERANCE))
		REMARK_T(c->r, LAP_SHORT, (L, h, row->least_in * M_PER_IN),
			 row->lap == COVERING_LAP_LAP_DOUBLE ? "length less twice what shows"
							     : "length less what shows");
}

void cover_tell(struct context *c)
{
	const struct job_roof *roof = &c->job->roof;
	const double rise = 12 * tan(c->theta);
	const struct covering_lap_row *row = covering_lap_row(roof->covering, rise);

	if (!(roof->piece_length > 0) || !(roof->course_exposure > 0))
		return;
	if (covering_exposure_listed(roof->covering))
		exposure(c, rise);
	if (row)
		lap(c, row);
}
