/* SPDX-License-Identifier: MIT */
#include "report/sources_report.h"

#include <string.h>

#include "check/step_table.h"
#include "report/caution.h"
#include "table/tables.h"

static const struct {
	const char *table, *action;
} actions[] = {
	{"wind-gcp", "Where it decides, the check asks for it: read GCp in the printed figure at "
		     "the area that the report "
		     "names and enter it as `coefficient` with its page; it replaces the "
		     "curve, and its bound where it has one."},
	{"wind-overhang", "Where it decides, the check asks for it: read the net GCp of the overhang in the printed "
			  "figure and enter it as `coefficient` of zone oh2, oh3 and so on, with its page."},
	{"limit", "Compare the limit with the clause that is named; where the book draws the line elsewhere and the job "
		  "lies between the two, the check is not to be used."},
	{"wind-solar-gcrn", "An answer that rests on this chart is a bound: compare it with the "
			    "printed figure, or have an "
			    "engineer use the book."},
	{"wind-topography", "Work Kzt out from the printed figure and enter it as `site.Kzt`."},
	{"wind-exposure", "Compare the constants with the printed table of your edition."},
	{"wind-internal",
	 "Compare with the printed table; an enclosed house has 0.18 in every edition."},
	{"snow-exposure",
	 "Read Ce in the printed table; if it is larger, enter the roof snow that follows as "
	 "`site.roof-snow-minimum`."},
	{"snow-thermal",
	 "Read Ct in the printed table and enter it as `snow.Ct` with its page."},
	{"snow-slope", "Compare the curve with the printed figure; below its first angle Cs is 1 "
		       "whatever the curve."},
	{"snow-slippery",
	 "Where in doubt the surface is taken as not slippery; compare with the printed list."},
	{"load-combination", "Compare with chapter 2 of your edition; the report names the "
			     "combination that governs each "
			     "check."},
	{"lrfd-factor", "Compare with NDS Table N1 and N2, or run the job with `site.method` asd."},
	{"roof-live-irc",
	 "Compare with the printed table of the IRC, or leave `live.rule` at the formula."},
	{"member-factor",
	 "Compare with the NDS; all of them are 1 for dry lumber that is not incised, but Cr."},
	{"covering", "Measure the build-up on the roof and enter `roof.built-up`; take the least "
		     "pitch from the covering's "
		     "maker."},
	{"wood-gravity",
	 "Compare with NDS Table 12.3.3A, or name a species group that is confirmed."},
	{"lumber-4a", "Compare with the NDS Supplement for this species and grade."},
	{"lumber-4b", "Compare with the NDS Supplement for this grade and width."},
	{"lumber-section", "Measure breadth and depth and enter them."},
	{"lead-hole", "Follow the screw maker's lead hole where there is one."},
	{"nds-difference", "Read NDS-2024 where the code of 2024 is in force."},
	{"edition-difference", "Only words: read the edition itself where a change decides."},
	{"code-trigger", "Ask the building department for the text of the rule."},
};

const char *source_action(const char *table)
{
	for (size_t i = 0; table && i < sizeof actions / sizeof *actions; i++)
		if (strcmp(actions[i].table, table) == 0)
			return actions[i].action;
	if (!table)
		return "Compare the formula with the clause that it names; `rafterproof step NAME` "
		       "computes it alone.";
	return "Compare with the printed table that is named; where the two differ, the book rules "
	       "and the check is not to "
	       "be used.";
}

bool sources_table_known(const char *name)
{
	for (size_t i = 0; i < TABLE_COUNT; i++)
		if (strcmp(table_info[i].name, name) == 0)
			return true;
	return false;
}

static void overview(struct document *d)
{
	static const struct column columns[] = {
		{"table", ALIGN_LEFT, true, false},       {"rows", ALIGN_RIGHT, false, false},
		{"confirmed", ALIGN_RIGHT, false, false}, {"one source", ALIGN_RIGHT, false, false},
		{"memory", ALIGN_RIGHT, false, false},    {"other", ALIGN_RIGHT, false, false},
		{"standard", ALIGN_LEFT, false, true},
	};

	document_add(d, BLOCK_HEADING, 1, "Tables");
	document_table(d, columns, (int)(sizeof columns / sizeof *columns));
	for (size_t i = 0; i < TABLE_COUNT; i++) {
		const struct table_info *t = &table_info[i];
		const size_t sure = t->status[CONFIRMED], one = t->status[ONE_SOURCE],
			     memory = t->status[FROM_MEMORY];

		document_row(d);
		document_cell(d, "%s", t->name);
		document_cell(d, "%zu", t->rows);
		document_cell(d, "%zu", sure);
		document_cell(d, "%zu", one);
		document_cell(d, "%zu", memory);
		document_cell(d, "%zu", t->rows - sure - one - memory);
		document_cell(d, "%s", t->standard);
	}
}

static bool shown(const struct table_doubt *r, const struct table_info *t, bool all)
{
	return strcmp(r->table, t->name) == 0 && (all || r->status == FROM_MEMORY);
}

static void rows(struct document *d, const struct table_info *t, bool all)
{
	bool begun = false;

	for (size_t i = 0; i < TABLE_DOUBT_COUNT; i++) {
		const struct table_doubt *r = &table_doubt[i];

		if (!shown(r, t, all))
			continue;
		if (!begun) {
			document_add(d, BLOCK_HEADING, 2, "%s: %s", t->name, t->title);
			document_add(d, BLOCK_PARAGRAPH, 0, "%s, %s. %s", t->standard, t->clause,
				     source_action(t->name));
			begun = true;
		}
		/* a row without a source of its own has the table's, which the heading names */
		const bool own = strcmp(r->source, t->source) != 0;

		document_add(d, BLOCK_BULLET, 0, "%s (%s%s%s%s%s)", r->row,
			     confidence_text(r->status), own ? "; " : "", own ? r->source : "",
			     r->note ? "; " : "", r->note ? r->note : "");
	}
}

static void steps(struct document *d)
{
	document_add(d, BLOCK_HEADING, 1, "Formulas from memory");
	document_add(d, BLOCK_PARAGRAPH, 0, "%s", source_action(NULL));
	for (size_t i = 0; i < step_table_count; i++) {
		const struct step *s = step_table[i];

		if (s->confidence == FROM_MEMORY)
			document_add(d, BLOCK_BULLET, 0, "%s: %s = %s. %s%s%s", s->name, s->symbol,
				     s->formula, step_clause(s, EDITION_ANY), s->note ? "; " : "",
				     s->note ? s->note : "");
	}
}

void sources_report_build(struct document *d, const struct sources_list *list)
{
	document_add(d, BLOCK_TITLE, 0, "What is not confirmed, and what to do about it");
	document_add(d, BLOCK_PARAGRAPH, 0,
		     "A number from memory is known but was not seen again in print. Nothing is "
		     "said to hold on a remembered "
		     "wind coefficient alone; one of one source is used and named. Below stands each such number and formula, with what "
		     "you do about it; "
		     "rafterproof sources TABLE also lists what rests on one source, on a bound or "
		     "on practice.");
	if (!list->table)
		overview(d);
	if (!list->table)
		document_add(d, BLOCK_HEADING, 1, "Numbers from memory");
	for (size_t i = 0; i < TABLE_COUNT; i++)
		if (!list->table || strcmp(list->table, table_info[i].name) == 0)
			rows(d, &table_info[i], list->table != NULL);
	if (!list->table)
		steps(d);
	document_add(d, BLOCK_CAUTION, 0, "%s", caution_result);
}
