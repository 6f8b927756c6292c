/* SPDX-License-Identifier: MIT */
#include "report/cover_notes.h"

#include <math.h>

#include "table/lookup_covering.h"

/* Wood: what shows, and what each grade may show here. */
static void add_exposure(struct document *d, const struct format *f, const struct job *job)
{
	const struct job_roof *roof = &job->roof;
	const struct covering_exposure_row *row[3];
	const char *most[3] = {"none listed", "none listed", "none listed"};

	for (int grade = 1; grade <= 3; grade++) {
		row[grade - 1] =
			covering_exposure_row(roof->covering, roof->piece_length / M_PER_IN, grade,
					      12 * tan(roof->pitch));
		if (row[grade - 1])
			most[grade - 1] = show_tape(f, row[grade - 1]->most_in * M_PER_IN);
	}
	if (row[0])
		document_add(d, BLOCK_PARAGRAPH, 0,
			     "The courses show %s. %s, for pieces %s long at this pitch: %s of grade No. 1, %s "
			     "of No. 2, %s of No. 3.",
			     show_tape(f, roof->course_exposure), row[0]->where, show_tape(f, roof->piece_length),
			     most[0], most[1], most[2]);
}

static const char *way(struct document *d, const struct format *f, double length, const char *where)
{
	return isnan(length) ? "-" : document_text(d, "%s %s", show_tape(f, length), where);
}

/* What to do with one foot, the easiest first. */
static const char *way_out(const struct course_place *p)
{
	if (p->side_fits)
		return "aside, still on its rafter";
	if (p->line_fits)
		return "move the line, within the clamp range";
	return "neither: set pieces so that no joint comes there, or another rafter";
}

static void add_foot(struct document *d, const struct format *f, const struct attachment *a)
{
	const struct course_place *p = &a->course;

	document_row(d);
	document_cell(d, "%d", a->number);
	document_cell(d, p->course > 0 ? "%d" : "-", p->course);
	document_cell(d, "%s", show_tape(f, fabs(p->to_joint)));
	document_cell(d, "%s",
		      way(d, f, fabs(p->joint_side), p->joint_side < 0 ? "left" : "right"));
	document_cell(d, "%s", way(d, f, p->joint_up, "up"));
	document_cell(d, "%s", way(d, f, p->joint_down, "down"));
	document_cell(d, "%s", way_out(p));
}

static bool on_joint(const struct course_place *p)
{
	return isfinite(p->to_joint) && !(fabs(p->joint_side) <= 0);
}

static void add_joints(struct document *d, const struct format *f, const struct pass *pass,
		       const struct covering_joint_row *row)
{
	static const struct column columns[] = {
		{"foot", ALIGN_RIGHT, true, false},
		{"course", ALIGN_RIGHT, false, false},
		{"from the joint", ALIGN_RIGHT, false, false},
		{"foot aside", ALIGN_RIGHT, false, false},
		{"or line up", ALIGN_RIGHT, false, false},
		{"or line down", ALIGN_RIGHT, false, false},
		{"what to do", ALIGN_LEFT, false, true},
	};
	int met = 0, unseen = 0;

	for (int i = 0; i < pass->attachments; i++) {
		met += on_joint(&pass->attachment[i].course);
		unseen += pass->attachment[i].course.joint_unseen;
	}
	document_add(d, BLOCK_PARAGRAPH, 0, "%s %s from every %s of %s own course%s.",
		     met > 0 ? "These feet do not keep" : unseen > 0 ? "Every hole beside which joints were measured keeps"
								      : "Every hole keeps",
		     show_tape(f, row->own_in * M_PER_IN), row->joint, met > 0 ? "their" : "its",
		     isfinite(row->cover_in) ? " and of the course that covers the plate" : "");
	if (met == 0)
		return;
	document_table(d, columns, (int)(sizeof columns / sizeof *columns));
	for (int i = 0; i < pass->attachments; i++)
		if (on_joint(&pass->attachment[i].course))
			add_foot(d, f, &pass->attachment[i]);
}

void cover_notes(struct document *d, const struct format *f, const struct job *job,
		 const struct pass *pass)
{
	const struct covering_joint_row *row = covering_joint_row(job->roof.covering);
	bool known = false;

	add_exposure(d, f, job);
	for (int i = 0; i < pass->attachments; i++)
		known = known || isfinite(pass->attachment[i].course.to_joint);
	if (row && known)
		add_joints(d, f, pass, row);
	else
		document_add(d, BLOCK_PARAGRAPH, 0,
			     "Where the joints between the pieces of a course lie is not known "
			     "here: look on "
			     "the roof that no hole comes on one.");
}
