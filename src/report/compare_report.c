/* SPDX-License-Identifier: MIT */
#include "report/compare_report.h"

#include <math.h>

#include "report/caution.h"
#include "report/format.h"

const char *compare_subject(enum edition_difference_subject s)
{
	static const char *const words[] = {
		"velocity pressure", "roof coefficient", "pressure on the array",
		"ground snow",       "roof snow",        "drift",
		"combinations",      "earthquake"};

	return words[s];
}

static bool touches(const struct job *job, enum edition_difference_subject s)
{
	const struct job_earthquake *e = &job->earthquake;

	switch (s) {
	case EDITION_DIFFERENCE_SUBJECT_GROUND_SNOW:
	case EDITION_DIFFERENCE_SUBJECT_ROOF_SNOW:
	case EDITION_DIFFERENCE_SUBJECT_DRIFT:
		return job->site.ground_snow > 0;
	case EDITION_DIFFERENCE_SUBJECT_EARTHQUAKE:
		return isfinite(e->SDS) || isfinite(e->Ss);
	case EDITION_DIFFERENCE_SUBJECT_VELOCITY_PRESSURE:
	case EDITION_DIFFERENCE_SUBJECT_COEFFICIENT:
	case EDITION_DIFFERENCE_SUBJECT_ARRAY_PRESSURE:
	case EDITION_DIFFERENCE_SUBJECT_COMBINATION:
	case EDITION_DIFFERENCE_SUBJECT_COUNT:
		break;
	}
	return true;
}

const struct edition_difference_row *compare_difference(const struct comparison *c, int column,
							size_t *i)
{
	const enum edition left = c->view[column - 1].edition, right = c->view[column].edition;
	const enum edition from = left < right ? left : right, to = left < right ? right : left;

	while (*i < TABLE_EDITION_DIFFERENCE_COUNT) {
		const struct edition_difference_row *r = &table_edition_difference[(*i)++];

		if (r->edition > from && r->edition <= to && touches(c->job, r->subject))
			return r;
	}
	return NULL;
}

/* One line of the table: a value per edition. */
typedef const char *cell_text(const struct format *f, const struct compared *v);

static const char *verdict(const struct format *f, const struct compared *v)
{
	(void)f;
	if (v->snow_mismatch)
		return "not said";
	return v->verdict == HOLDS           ? "holds"
	       : v->verdict == DOES_NOT_HOLD ? "does not hold"
					     : "needs an engineer";
}

static const char *known(const struct format *f, double value, enum unit us)
{
	return isfinite(value) ? show(f, value, us) : "-";
}

static const char *qh(const struct format *f, const struct compared *v)
{
	return known(f, v->qh, UNIT_PSF);
}

static const char *Kd(const struct format *f, const struct compared *v)
{
	return document_text(f->document, "%s %s", show_factor(f, v->Kd, 2),
			     v->edition == ASCE7_22 ? "in the pressure" : "in qh");
}

static const char *GCp(const struct format *f, const struct compared *v)
{
	return isfinite(v->GCp_up) ? document_text(f->document, "%s in zone %s (%s)",
						   show_factor(f, v->GCp_up, 2), v->zone,
						   confidence_text(v->confidence))
				   : "-";
}

static const char *p_up(const struct format *f, const struct compared *v)
{
	return known(f, v->p_up, UNIT_PSF);
}

static const char *p_down(const struct format *f, const struct compared *v)
{
	return known(f, v->p_down, UNIT_PSF);
}

static const char *pf(const struct format *f, const struct compared *v)
{
	return known(f, v->pf, UNIT_PSF);
}

static const char *snow(const struct format *f, const struct compared *v)
{
	if (!isfinite(v->snow))
		return "-";
	return v->snow > 0 ? document_text(f->document, "%s %s", show(f, v->snow, UNIT_PSF),
					   v->snow_case)
			   : "none";
}

static const char *ratio(const struct format *f, const struct compared *v)
{
	return isfinite(v->ratio) ? show_ratio(f, v->ratio) : "-";
}

static const char *governs(const struct format *f, const struct compared *v)
{
	return isfinite(v->ratio) ? document_text(f->document, "%s, %s", v->governs, v->combination)
				  : "-";
}

static const char *spacing(const struct format *f, const struct compared *v)
{
	return isfinite(v->spacing) ? show_tape(f, v->spacing) : "-";
}

static const char *feet(const struct format *f, const struct compared *v)
{
	return v->attachments > 0 ? document_text(f->document, "%d", v->attachments) : "-";
}

static const char *reason(const struct format *f, const struct compared *v)
{
	struct format of = *f;

	of.code = v->edition;
	return v->reason ? remark_text(&of, &v->reason_remark) : "-";
}

static const struct {
	const char *name;
	cell_text *text;
} lines[] = {
	{"verdict", verdict},
	{"worst ratio", ratio},
	{"what governs", governs},
	{"feet", feet},
	{"largest spacing, worst zone", spacing},
	{"velocity pressure qh", qh},
	{"Kd", Kd},
	{"GCp, worst foot", GCp},
	{"wind up, strength level", p_up},
	{"wind down, strength level", p_down},
	{"flat roof snow pf", pf},
	{"largest snow on the array", snow},
	{"first reason for an engineer", reason},
};

static void mismatches(struct document *d, const struct comparison *c)
{
	for (int i = 0; i < c->count; i++)
		if (c->view[i].snow_mismatch)
			document_add(d, BLOCK_CAUTION, 0,
				     "%s expects the ground snow at %s level; this job gives it at "
				     "%s level. The two are never "
				     "put together: only the wind of that edition is shown, "
				     "without verdict, ratio or "
				     "spacing. Take the ground snow from the edition's own map.",
				     c->view[i].name,
				     c->view[i].edition == ASCE7_22 ? "strength" : "service",
				     c->job->site.ground_snow_level == SNOW_STRENGTH ? "strength"
										     : "service");
}

/* " (26.5 psf to 31.2 psf)" where the subject has one number; "" where it has none or one is not
 * known. */
static const char *numbers(const struct format *f, enum edition_difference_subject s,
			   const struct compared *a, const struct compared *b)
{
	double from = (double)NAN, to = (double)NAN;

	if (s == EDITION_DIFFERENCE_SUBJECT_VELOCITY_PRESSURE) {
		from = a->qh;
		to = b->qh;
	} else if (s == EDITION_DIFFERENCE_SUBJECT_ARRAY_PRESSURE) {
		from = a->p_up;
		to = b->p_up;
	} else if (s == EDITION_DIFFERENCE_SUBJECT_ROOF_SNOW) {
		from = a->pf;
		to = b->pf;
	} else if (s == EDITION_DIFFERENCE_SUBJECT_COEFFICIENT && isfinite(a->GCp_up + b->GCp_up)) {
		return document_text(f->document, " (%s to %s)", show_factor(f, a->GCp_up, 2),
				     show_factor(f, b->GCp_up, 2));
	}
	if (!isfinite(from + to))
		return "";
	return document_text(f->document, " (%s to %s)", show(f, from, UNIT_PSF),
			     show(f, to, UNIT_PSF));
}

static void differences(struct document *d, const struct comparison *c)
{
	const struct format f = {.document = d, .units = c->job->units, .code = c->job->site.code};

	for (int k = 1; k < c->count; k++) {
		const struct edition_difference_row *r;
		size_t i = 0;

		document_add(d, BLOCK_HEADING, 1, "What changes from %s to %s", c->view[k - 1].name,
			     c->view[k].name);
		if (c->view[k - 1].edition > c->view[k].edition)
			document_add(
				d, BLOCK_PARAGRAPH, 0,
				"The older edition stands to the right: what the newer one brought "
				"is told, read it the other way round.");
		while ((r = compare_difference(c, k, &i)) != NULL)
			document_add(d, BLOCK_BULLET, 0, "%s%s: %s (%s, %s)",
				     compare_subject(r->subject),
				     numbers(&f, r->subject, &c->view[k - 1], &c->view[k]), r->text,
				     r->source, confidence_text(r->status));
	}
}

void compare_report_build(struct document *d, const struct comparison *c)
{
	const struct format f = {.document = d, .units = c->job->units, .code = c->job->site.code};
	struct column columns[COMPARE_MAX + 1] = {{"", ALIGN_LEFT, true, true}};

	document_add(d, BLOCK_TITLE, 0, "%s",
		     c->job->title[0] ? c->job->title : "Editions side by side");
	mismatches(d, c);
	for (int i = 0; i < c->count; i++)
		columns[i + 1] = (struct column){c->view[i].name, ALIGN_LEFT, false, true};
	document_table(d, columns, c->count + 1);
	for (size_t i = 0; i < sizeof lines / sizeof *lines; i++) {
		document_row(d);
		document_cell(d, "%s", lines[i].name);
		for (int k = 0; k < c->count; k++)
			document_cell(d, "%s", lines[i].text(&f, &c->view[k]));
	}
	if (c->job->coefficients > 0)
		document_add(d, BLOCK_PARAGRAPH, 0,
			     "The coefficients entered in the job are used under every edition, "
			     "though they "
			     "were read in one.");
	differences(d, c);
	document_add(d, BLOCK_CAUTION, 0,
		     "Only the edition that the local building code has adopted counts; ask the "
		     "building "
		     "department, and a licensed engineer.");
	document_add(d, BLOCK_CAUTION, 0, "%s", caution_result);
}
