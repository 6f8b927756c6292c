/* SPDX-License-Identifier: MIT */
#include "report/margin_report.h"

#include <math.h>

#include "report/caution.h"
#include "report/format.h"

#define VERIFY_MOST 4

static const char *field_name(struct document *d, enum margin_id id)
{
	const struct field *f = &field_table[margin_field(id)];

	return document_text(d, "%s %s", f->element, f->attribute);
}

static const char *side_text(const struct format *f, const struct margin_side *s)
{
	if (!s->known)
		return "-";
	if (!isfinite(s->ratio))
		return "not rated";
	/* within the limit, but a rule is broken (the least edge distance, say) */
	return document_text(f->document, "%s%s", show_ratio(f, s->ratio),
			     s->holds ? "" : s->ratio <= 1 ? " breaks a rule" : " fails");
}

static void table(const struct format *f, const struct margin *m)
{
	static const struct column columns[] = {{"input", ALIGN_LEFT, true, true},
						{"worse by", ALIGN_LEFT, false, true},
						{"ratio then", ALIGN_RIGHT, false, false},
						{"better by", ALIGN_LEFT, false, true},
						{"ratio then", ALIGN_RIGHT, false, false}};

	document_table(f->document, columns, sizeof columns / sizeof *columns);
	for (int i = 0; i < m->rows; i++) {
		const struct margin_row *r = &m->row[i];

		document_row(f->document);
		document_cell(f->document, "%s%s", field_name(f->document, r->id),
			      r->origin == ORIGIN_ASSUMED ? " (assumed)" : "");
		document_cell(f->document, "%s", r->worse.known ? margin_words(r, true, f->units) : "-");
		document_cell(f->document, "%s", side_text(f, &r->worse));
		document_cell(f->document, "%s",
			      r->better.known ? margin_words(r, false, f->units) : "-");
		document_cell(f->document, "%s", side_text(f, &r->better));
	}
}

/* How much depends on knowing it. What is assumed is assumed on the safe side: there it counts how far
   the truth may be better, too. What makes it fail outweighs any number. */
static double stake(const struct margin *m, const struct margin_row *r)
{
	double most = 0;

	if (r->worse.known)
		most = fmax(r->worse.ratio - m->ratio, m->holds && !r->worse.holds ? 1e6 : 0);
	if (r->origin == ORIGIN_ASSUMED && r->better.known)
		most = fmax(most, m->ratio - r->better.ratio);
	return most;
}

/* What to look at first: assumed inputs before those that are given, those with more at stake first. */
static void verify(struct document *d, const struct margin *m)
{
	bool told[MARGIN_COUNT] = {false};
	int said = 0;

	document_add(d, BLOCK_HEADING, 1, "What to verify on site first");
	for (int assumed = 1; assumed >= 0; assumed--)
		while (said < VERIFY_MOST) {
			const struct margin_row *best = NULL;

			for (int i = 0; i < m->rows; i++) {
				const struct margin_row *r = &m->row[i];

				if ((r->origin == ORIGIN_ASSUMED) == (assumed == 1) && !told[r->id] &&
				    stake(m, r) > (best ? stake(m, best) : 0))
					best = r;
			}
			if (!best)
				break;
			told[best->id] = true;
			document_add(d, BLOCK_NUMBERED, ++said, "%s%s: %s", field_name(d, best->id),
				     assumed ? " (assumed until now)" : "",
				     field_table[margin_field(best->id)].measured);
		}
	if (said == 0)
		document_add(d, BLOCK_PARAGRAPH, 0,
			     "None of the steps above raises the worst ratio.");
}

static const char *growth_value(const struct format *f, enum growth_id id, double value, enum rounding rounding)
{
	switch (id) {
	case GROWTH_WIND:
		return show_rounded(f, value, UNIT_MPH, rounding);
	case GROWTH_SNOW:
		return show_rounded(f, value, UNIT_PSF, rounding);
	case GROWTH_SPACING:
		return show_tape(f, value);
	case GROWTH_COLUMNS:
	case GROWTH_COUNT:
		break;
	}
	return document_text(f->document, "%.0f", value);
}

static void growths(const struct format *f, const struct margin *m)
{
	static const char *const names[] = {"wind speed on these feet", "ground snow on these feet",
					    "one even spacing of all feet", "columns of collectors"};

	document_add(f->document, BLOCK_HEADING, 1, "How far it may grow");
	document_pairs(f->document);
	for (int i = 0; i < (int)GROWTH_COUNT; i++) {
		const struct growth *g = &m->growth[i];
		const char *now = growth_value(f, (enum growth_id)i, g->now, SHOW_NEAREST);

		/* the layout found goes farther where it may, and nowhere else */
		if (i == GROWTH_SPACING)
			now = document_text(f->document, "bays of up to %s, as laid out", now);
		if (isnan(g->most))
			document_pair(f->document, names[i], "", "now %s; holds at no value tried",
				      now);
		else
			document_pair(f->document, names[i],
				      g->no_end ? "the end of what was tried, or of the roof"
						: "beyond this it fails",
				      "now %s; up to %s", now,
				      growth_value(f, (enum growth_id)i, g->most, SHOW_DOWN));
	}
}

void margin_report_build(struct document *d, const struct margin_view *v)
{
	const struct format f = {.document = d, .units = v->job->units, .code = v->job->site.code};
	const struct margin *m = v->margin;

	document_add(d, BLOCK_TITLE, 0, "%s",
		     v->job->title[0] ? v->job->title : "Which input decides");
	if (!m->rated) {
		document_add(d, BLOCK_CAUTION, 0,
			     "No layout is rated, so nothing can be moved: "
			     "`rafterproof check` says why.");
		return;
	}
	document_add(d, BLOCK_PARAGRAPH, 0,
		     "As it stands, with %d attachments, the worst ratio is %s (%s). Each line "
		     "below moves one input alone "
		     "on the same attachments and checks everything again; what raises the ratio "
		     "most comes first.",
		     m->attachments, show_ratio(&f, m->ratio), check_words(m->governs));
	table(&f, m);
	verify(d, m);
	growths(&f, m);
	document_add(d, BLOCK_CAUTION, 0, "%s", caution_result);
}
