/* SPDX-License-Identifier: MIT */
#include "report/feet_notes.h"

#include <math.h>
#include <string.h>

#include "report/cover_notes.h"
#include "report/flashing_sizes.h"
#include "report/pipe_place_notes.h"
#include "table/lookup_covering.h"

/* What the answers rest on. */
struct seen {
	bool courses; /* the covering lies in courses */
	bool butts;   /* where they lie is measured */
	bool joints;  /* it has joints between its pieces */
	bool seams;   /* it has seams between whose pans the feet must stand, and where is not given */
};

/* Clamps stand on the seams, brackets on ribs as their maker says; any other foot in the pan. */
static bool seams_open(const struct job *job)
{
	const struct covering_plate_row *row =
		covering_plate_row(job->roof.covering, 12.0 * tan(job->roof.pitch));

	return row && row->laid == COVERING_PLATE_LAID_SEAMS && !isfinite(job->roof.first_seam) &&
	       job->fastener.kind != FASTENER_SEAM_CLAMP &&
	       strcmp(job->roof.covering, "metal-exposed-fastener") != 0;
}

static struct seen seen_of(const struct job *job)
{
	return (struct seen){flashing_has_courses(job), job_given(job, FIELD_ROOF_FIRST_BUTT),
			     covering_joint_row(job->roof.covering) != NULL, seams_open(job)};
}

static bool on_joint(const struct course_place *p)
{
	return isfinite(p->to_joint) && !(fabs(p->joint_side) <= 0);
}

static bool badly(const struct course_place *p)
{
	bool bad = on_joint(p) || (p->landing != LANDING_WELL && p->landing != LANDING_UNKNOWN);

	for (int b = 0; b < BORDER_COUNT; b++)
		bad = bad || border_close(&p->border[b]);
	return bad;
}

static bool open_question(const struct seen *seen, const struct course_place *p)
{
	return (seen->courses && !seen->butts) || (seen->joints && isnan(p->to_joint)) ||
	       seen->seams;
}

static const char *unknown(const struct seen *seen, const struct course_place *p)
{
	if (seen->seams)
		return "seams";
	if (!seen->courses || seen->butts)
		return "joints";
	return seen->joints && isnan(p->to_joint) ? "butts, joints" : "butts";
}

static const char *add(struct document *d, const char *text, const char *more)
{
	return *text ? document_text(d, "%s; %s", text, more) : more;
}

/* Everything that is wrong first, then what must still be looked at. */
static const char *answer(struct document *d, const struct format *f, const struct seen *seen,
			  const struct course_place *p)
{
	const char *text = "";

	if (p->landing != LANDING_WELL && p->landing != LANDING_UNKNOWN)
		text = add(d, text, landing_words(p->landing));
	if (on_joint(p) && p->landing != LANDING_AT_JOINT)
		text = add(d, text, landing_words(LANDING_AT_JOINT));
	for (int b = 0; b < BORDER_COUNT; b++)
		if (border_close(&p->border[b]))
			text = add(d, text,
				   document_text(d, "too near the %s by %s", border_words((enum border)b),
						 show_tape(f, p->border[b].least - p->border[b].distance)));
	if (open_question(seen, p))
		text = add(d, text, document_text(d, "not known: %s", unknown(seen, p)));
	return *text ? text : "clear";
}

/* The border that leaves least to spare. */
static const char *nearest_border(struct document *d, const struct format *f, const struct course_place *p)
{
	int nearest = -1;

	for (int b = 0; b < BORDER_COUNT; b++) {
		const struct border_room *room = &p->border[b];

		if (isfinite(room->distance) &&
		    (nearest < 0 || room->distance - room->least < p->border[nearest].distance - p->border[nearest].least))
			nearest = b;
	}
	if (nearest < 0)
		return "-";
	return document_text(d, "%s %s (%s)", border_words((enum border)nearest),
			     show_tape(f, fmax(0, p->border[nearest].distance)), show_tape(f, p->border[nearest].least));
}

static const char *length_or_dash(const struct format *f, double length)
{
	return isfinite(length) ? show_tape(f, fabs(length)) : "-";
}

struct cells {
	const char *course, *butt, *beside, *border, *answer;
};

static struct cells cells_of(struct document *d, const struct format *f, const struct seen *seen,
			     const struct course_place *p)
{
	const bool known = seen->courses && seen->butts;

	return (struct cells){
		known && p->course > 0 ? document_text(d, "%d", p->course) : "-",
		known ? length_or_dash(f, p->below) : "-",
		length_or_dash(f, isfinite(p->to_seam) ? p->to_seam : p->to_joint),
		nearest_border(d, f, p),
		answer(d, f, seen, p),
	};
}

static bool same(const struct cells *a, const struct cells *b)
{
	return strcmp(a->course, b->course) == 0 && strcmp(a->butt, b->butt) == 0 &&
	       strcmp(a->beside, b->beside) == 0 && strcmp(a->border, b->border) == 0 &&
	       strcmp(a->answer, b->answer) == 0;
}

/* Neighbors of whom the same is said share a row. */
static void add_rows(struct document *d, const struct format *f, const struct seen *seen, const struct pass *pass)
{
	int next;

	for (int i = 0; i < pass->attachments; i = next) {
		const struct cells cells = cells_of(d, f, seen, &pass->attachment[i].course);

		for (next = i + 1; next < pass->attachments; next++) {
			const struct cells other = cells_of(d, f, seen, &pass->attachment[next].course);

			if (!same(&cells, &other))
				break;
		}
		document_row(d);
		document_cell(d, next > i + 1 ? "%d-%d" : "%d", pass->attachment[i].number,
			      pass->attachment[next - 1].number);
		document_cell(d, "%s", cells.answer);
		document_cell(d, "%s", cells.course);
		document_cell(d, "%s", cells.butt);
		document_cell(d, "%s", cells.beside);
		document_cell(d, "%s", cells.border);
	}
}

static const char *how_to_know(const struct seen *seen)
{
	const bool butts = seen->courses && !seen->butts;

	if (seen->seams)
		return " For seams give roof.first-seam, or look beside each hole: a foot stands in the pan.";
	if (!butts)
		return " Look for joints on the roof beside each hole, or give them (roof.joints).";
	return seen->joints ? " For butts give roof.first-butt; look for joints on the roof beside each "
			      "hole, or give them (roof.joints)."
			    : " For butts give roof.first-butt.";
}

static void add_count(struct document *d, const struct seen *seen, const struct pass *pass)
{
	int bad = 0, open = 0;

	for (int i = 0; i < pass->attachments; i++) {
		const struct course_place *p = &pass->attachment[i].course;

		bad += badly(p);
		open += !badly(p) && open_question(seen, p);
	}
	const int clear = pass->attachments - bad - open;

	document_add(d, BLOCK_PARAGRAPH, 0,
		     "%d feet, held against whatever this covering has of butts, battens, joints and seams and against "
		     "the borders of the roof: %s%s%s.%s",
		     pass->attachments, clear > 0 ? document_text(d, "%d clear", clear) : "",
		     bad > 0 ? document_text(d, "%s%d not clear", clear > 0 ? ", " : "", bad) : "",
		     open > 0 ? document_text(d, "%s%d not known", clear + bad > 0 ? ", " : "", open) : "",
		     open > 0 ? how_to_know(seen) : "");
	document_add(d, BLOCK_PARAGRAPH, 0,
		     "Borders are counted from the edge of the flashing, to a valley by our rule, else by common practice. A "
		     "valley or a wall is known only from roof.woven-valley and roof.wall.");
}

void feet_notes(struct document *d, const struct format *f, const struct job *job, const struct pass *pass)
{
	const struct seen seen = seen_of(job);
	const bool seams = pass->attachments > 0 && isfinite(pass->attachment[0].course.to_seam);
	const struct column columns[] = {
		{"foot", ALIGN_RIGHT, true, false},
		{"answer", ALIGN_LEFT, false, true}, /* next to the foot: seen without a push on a phone */
		{"course", ALIGN_RIGHT, false, false},
		{"below the butt", ALIGN_RIGHT, false, false},
		{seams ? "from a seam" : "from a joint", ALIGN_RIGHT, false, false},
		{"nearest border (least)", ALIGN_LEFT, false, false},
	};

	if (pass->attachments == 0)
		return;
	document_add(d, BLOCK_HEADING, 2, "Every foot in the covering");
	add_count(d, &seen, pass);
	document_table(d, columns, (int)(sizeof columns / sizeof *columns));
	add_rows(d, f, &seen, pass);
}

static bool of_covering(enum remark_id id)
{
	static const enum remark_id ids[] = {
		REMARK_COVERING_PITCH, REMARK_COVERING_STOP, REMARK_LAYERS,	   REMARK_VALLEY,
		REMARK_COURSE_MOVED,   REMARK_COURSE_CLOSE,  REMARK_COURSE_UNMEASURED, REMARK_SEAM_CLOSE,
		REMARK_JOINTS_RANDOM,  REMARK_JOINTS_UNSEEN, REMARK_BORDER_CLOSE,  REMARK_JOINT_CLOSE,
		REMARK_JOINT_STUCK,    REMARK_EXPOSURE_OVER, REMARK_EXPOSURE_GRADE, REMARK_EXPOSURE_UNLISTED,
		REMARK_LAP_SHORT,      REMARK_METAL_NEVER,   REMARK_METAL_APART,   REMARK_METAL_UNLISTED};

	for (size_t i = 0; i < sizeof ids / sizeof *ids; i++)
		if (ids[i] == id)
			return true;
	return false;
}

void covering_notes(struct document *d, const struct job *job, const struct result *r)
{
	const struct format f = {.document = d, .units = job->units};
	const struct pass *pass = &r->pass[r->judged];

	document_add(d, BLOCK_HEADING, 1, "This job: %s", job->title);
	for (int i = 0; i < r->remarks; i++)
		if (of_covering(r->remark[i].id))
			document_add(d, BLOCK_BULLET, 0, "%s", remark_text(&f, &r->remark[i]));
	if (r->passes == 0)
		return;
	feet_notes(d, &f, job, pass);
	pipe_place_notes(d, &f, job, r);
	if (flashing_has_courses(job))
		cover_notes(d, &f, job, pass);
}
