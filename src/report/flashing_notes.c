/* SPDX-License-Identifier: MIT */
#include "report/flashing_notes.h"

#include <math.h>
#include <string.h>

#include "report/cover_notes.h"
#include "report/feet_notes.h"
#include "report/flashing_sizes.h"
#include "report/format.h"
#include "report/guide_report.h"
#include "report/pipe_notes.h"
#include "report/pipe_place_notes.h"

/* Numbers of the attachments of a line. */
static const char *feet_text(struct document *d, const struct pass *pass,
                             const struct rail_line *line)
{
	if (line->count == 0)
		return "-";
	return document_text(d, "%d-%d", pass->attachment[line->first].number,
	                     pass->attachment[line->first].number + line->count - 1);
}

/* Whether the holes of a line land well, and how far it would have to move. */
static const char *landing_text(struct document *d, const struct format *f, const struct job *job,
                                const struct pass *pass, const struct rail_line *line)
{
	const struct course_place *at;
	const char *text;

	if (line->count == 0)
		return "";
	at = &pass->attachment[line->first].course;
	/* joints are told foot by foot, below */
	text = landing_words(at->landing == LANDING_AT_JOINT && at->course > 0 && job_given(job, FIELD_ROOF_FIRST_BUTT)
	                             ? LANDING_WELL
	                             : at->landing == LANDING_AT_JOINT ? LANDING_UNKNOWN : at->landing);
	if (!isnan(at->move_down))
		text = document_text(d, "%s: down %s", text, show_tape(f, at->move_down));
	if (!isnan(at->move_up))
		text = document_text(d, "%s%s up %s", text, isnan(at->move_down) ? ":" : " or",
		                     show_tape(f, at->move_up));
	return text;
}

/* Each line of feet in the courses: what to lift, how long the plate is, whether the foot must
   move. */
static void add_lines(struct document *d, const struct format *f, const struct job *job,
                      const struct pass *pass)
{
	static const struct column columns[] = {
		{ "line", ALIGN_RIGHT, true, false },
		{ "feet", ALIGN_LEFT, false, false },
		{ "up slope", ALIGN_RIGHT, false, false },
		{ "course", ALIGN_RIGHT, false, false },
		{ "above its butt", ALIGN_RIGHT, false, false },
		{ "to the butt above", ALIGN_RIGHT, false, false },
		{ "least plate", ALIGN_RIGHT, false, false },
		{ "courses to open", ALIGN_RIGHT, false, false },
		{ "hole", ALIGN_LEFT, false, true },
	};

	document_table(d, columns, (int)(sizeof columns / sizeof *columns));
	for (int i = 0; i < pass->lines; i++) {
		const struct flashing_foot foot = flashing_of_line(job, &pass->line[i]);

		document_row(d);
		document_cell(d, "%d", pass->line[i].line + 1);
		document_cell(d, "%s", feet_text(d, pass, &pass->line[i]));
		document_cell(d, "%s", show_tape(f, pass->line[i].y));
		document_cell(d, foot.course > 0 ? "%d" : "-", foot.course);
		document_cell(d, "%s",
		              isnan(foot.above_butt) ? "-" : show_tape(f, foot.above_butt));
		document_cell(d, "%s", isnan(foot.butt_up) ? "-" : show_tape(f, foot.butt_up));
		document_cell(d, "%s",
		              isnan(foot.plate_length) ? "-" : show_least(f, foot.plate_length));
		document_cell(d, foot.open > 0 ? "%d" : "-", foot.open);
		document_cell(d, "%s", landing_text(d, f, job, pass, &pass->line[i]));
	}
	document_add(
		d, BLOCK_PARAGRAPH, 0,
		"Courses are counted from %s. The plate is the shortest that does what the piece "
	        "it replaces did (our "
		"rule); holes for pipes are counted with %s of room all round (common practice).",
		job_given(job, FIELD_ROOF_FIRST_BUTT) ? "the first butt line given"
						      : "the eave edge: measure the first butt "
							"line and give roof.first-butt",
		show_tape(f, PIPE_GAP));
	if (isnan(job->roof.piece_length))
		document_add(d, BLOCK_PARAGRAPH, 0,
		             "The plate cannot be sized: measure the whole length of a piece and "
		             "give roof.piece-length.");
}

static const char *size_text(const struct format *f, const struct guide_size_row *row, double value)
{
	switch (row->style) {
	case GUIDE_PITCH:
		return show_pitch(f, value);
	case GUIDE_LEAST:
		return show_least(f, value);
	case GUIDE_LENGTH:
		return show_part(f, value);
	case GUIDE_COUNT:
		return show_factor(f, value, 0);
	case GUIDE_HEAT:
		return show(f, value, UNIT_DEG_F);
	}
	return "";
}

/* Pitch, pipes, screws and rafters: the sheets tell them on other pages. */
static bool told_by_sheets(const char *name)
{
	static const char *const begins[] = { "pitch", "feet", "pipes", "fastener-", "rafter-", "foot-height" };

	for (size_t i = 0; i < sizeof begins / sizeof *begins; i++)
		if (strncmp(name, begins[i], strlen(begins[i])) == 0)
			return true;
	return false;
}

/* What is known of this job. */
static void add_sizes(struct document *d, const struct format *f, const struct guide_sizes *sizes, bool sheets)
{
	const struct guide_size_row *row;

	document_add(d, BLOCK_HEADING, 2, "Sizes on this job");
	document_pairs(d);
	for (size_t i = 0; (row = guide_size_row(i)) != NULL; i++) {
		const double value = guide_size_value(sizes, row);

		if (!isnan(value) && !(sheets && told_by_sheets(row->name)))
			document_pair(d, row->name, "", "%s: %s", size_text(f, row, value),
			              row->meaning);
	}
}

/* Only one of many problems is told: the report goes on without the notes. */
static void add_excuse(struct document *d, const struct problem_list *problems)
{
	char line[PROBLEM_TEXT_MAX * 6];

	document_add(d, BLOCK_PARAGRAPH, 0, "The notes on this covering cannot be printed: %s",
	             problem_any(problems) ? problem_print(line, sizeof line, &problems->item[0])
	                                   : "the covering library was not found.");
}

static bool add_notes(struct document *d, const struct flashing_request *ask, const struct job *job,
                      const struct guide_sizes *sizes, struct problem_list *problems)
{
	const struct guide_request request = {
		.key = job->roof.covering,
		.sizes = sizes,
		.units = job->units,
		.depth = ask->length == NOTES_FULL ? GUIDE_FULL : GUIDE_BRIEF,
	};
	struct guide_library *lib = ask->details ? guide_open_page(ask->details, job->roof.covering, problems) : NULL;
	const bool short_of = ask->sheets && ask->length == NOTES_BRIEF;
	const bool printed = lib && guide_report_page(d, lib, &request,
	                                              short_of ? GUIDE_ON_SHEETS : GUIDE_IN_REPORT, problems);

	guide_close(lib);
	return printed;
}

void flashing_notes(void *ctx, struct document *d, const struct job *job, const struct result *r)
{
	const struct flashing_request *ask = ctx;
	const struct format f = { .document = d, .units = job->units };
	const struct guide_sizes sizes = flashing_sizes(job, r);
	const struct pass *pass = &r->pass[r->judged];
	struct problem_list problems = { .count = 0 };

	document_add(d, BLOCK_HEADING, 1, "Flashing: %s", job->roof.covering);
	if (flashing_has_courses(job) && pass->lines > 0)
		add_lines(d, &f, job, pass);
	feet_notes(d, &f, job, pass);
	pipe_place_notes(d, &f, job, r);
	if (flashing_has_courses(job) && pass->lines > 0)
		cover_notes(d, &f, job, pass);
	add_sizes(d, &f, &sizes, ask->sheets);
	pipe_notes(d, &f, job, r);
	if (ask->length != NOTES_FULL)
		document_add(d, BLOCK_PARAGRAPH, 0, "%srafterproof guide %s.",
		             ask->sheets ? "Left out here: how to know the covering, tools, signs of failure, whom to "
		                           "call, and what holds for every covering. All of it: "
		                         : "All notes on this covering: ",
		             job->roof.covering);
	if (ask->length != NOTES_NONE && !add_notes(d, ask, job, &sizes, &problems))
		add_excuse(d, &problems);
}
