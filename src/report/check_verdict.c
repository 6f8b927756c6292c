/* SPDX-License-Identifier: MIT */
/* What is read first: the verdict in words with the fact behind it, the caution, the reasons, what
   would help. */
#include <math.h>
#include <stdbool.h>

#include "report/caution.h"
#include "report/check_part.h"

/* Told where it belongs, with the inputs and with the wind: not a second time in a list. */
static bool told_elsewhere(enum remark_id id)
{
	return id == REMARK_ASSUMED_FIELD || id == REMARK_FLUSH_LOST;
}

static int remarks_of(const struct result *r, enum remark_kind kind, const struct remark **first)
{
	int n = 0;

	for (int i = 0; i < r->remarks; i++) {
		if (remark_kind(r->remark[i].id) != kind || told_elsewhere(r->remark[i].id))
			continue;
		if (n++ == 0)
			*first = &r->remark[i];
	}
	return n;
}

/* "rafter at 0.87 of what it can carry (rafter 9: bending of the rafter, load down)" */
static const char *weakest(const struct part *p, enum link link)
{
	const struct pass *pass = p->pass;
	const char *place = link_place(&p->f, link, pass->link_at[link]);

	return document_text(p->d,
	                     "the weakest link is the %s, at %s of what it can carry (%s%s%s)",
	                     link_words(link), show_ratio(&p->f, pass->link_ratio[link]), place,
	                     *place ? ": " : "", check_words(pass->link_governs[link]));
}

const char *part_not_checked(const struct part *p)
{
	const char *none = "", *part = "";

	for (int i = 0; i < LINK_COUNT; i++) {
		const enum link link = (enum link)i;

		if (link == LINK_RAIL && p->job->rail.kind != SUPPORT_RAILS)
			continue;
		if (isnan(p->pass->link_ratio[i]))
			none = document_text(p->d, "%s%s%s", none, *none ? ", " : " Not checked: ", link_words(link));
		else if (*link_gaps(p, link))
			part = document_text(p->d, "%s%s%s", part, *part ? ", " : " Checked in part: ",
			                     link_words(link));
	}
	return document_text(p->d, "%s%s%s%s", none, *none ? "." : "", part, *part ? "." : "");
}

static void add_verdict(const struct part *p)
{
	const char *words = verdict_words(p->r->verdict);
	const enum link link = p->r->passes > 0 ? pass_weakest(p->pass) : LINK_COUNT;
	const bool over = link != LINK_COUNT && p->pass->link_ratio[link] > 1.0;
	const struct remark *first = NULL;
	int more;

	switch (p->r->verdict) {
	case HOLDS:
		if (link != LINK_COUNT)
			document_add(p->d, BLOCK_VERDICT, 0, "%s: %s.%s", words, weakest(p, link),
			             part_not_checked(p));
		else
			document_add(p->d, BLOCK_VERDICT, 0, "%s.%s", words, part_not_checked(p));
		return;
	case DOES_NOT_HOLD:
		if (over)
			document_add(p->d, BLOCK_VERDICT, 0, "%s: %s.", words, weakest(p, link));
		else if (remarks_of(p->r, REMARK_FAILS, &first) > 0)
			document_add(p->d, BLOCK_VERDICT, 0, "%s: %s", words,
			             remark_text(&p->f, first));
		else
			document_add(p->d, BLOCK_VERDICT, 0, "%s.", words);
		return;
	case NEEDS_ENGINEER:
		more = remarks_of(p->r, REMARK_ENGINEER, &first) - 1;
		if (!first)
			document_add(p->d, BLOCK_VERDICT, 0, "%s.", words);
		else if (more <= 0)
			document_add(p->d, BLOCK_VERDICT, 0, "%s: %s", words,
			             remark_text(&p->f, first));
		else
			document_add(p->d, BLOCK_VERDICT, 0, "%s: %s (and %d more reason%s below)",
			             words, remark_text(&p->f, first), more, more == 1 ? "" : "s");
		return;
	}
}

void part_remarks(const struct part *p, enum remark_kind kind, const char *heading)
{
	const struct remark *first = NULL;

	if (remarks_of(p->r, kind, &first) == 0)
		return;
	document_add(p->d, BLOCK_HEADING, 2, "%s", heading);
	for (int i = 0; i < p->r->remarks; i++) {
		struct remark whole;

		if (remark_kind(p->r->remark[i].id) == kind && !told_elsewhere(p->r->remark[i].id) &&
		    remark_fold(&p->f, p->r, i, &whole))
			document_add(p->d, BLOCK_BULLET, 0, "%s", remark_text(&p->f, &whole));
	}
}

/* Which set of wind coefficients the tables show, where there are two. */
static void add_passes(const struct part *p)
{
	if (p->r->passes < 2)
		return;
	document_add(p->d, BLOCK_PARAGRAPH, 0,
	             "The wind coefficients are not all confirmed, so everything was computed "
	             "twice: with the %s (worst "
	             "ratio %s) and with the %s (worst ratio %s). The tables show the %s, which "
	             "decides.",
	             p->r->pass[0].name, show_ratio(&p->f, p->r->pass[0].ratio), p->r->pass[1].name,
	             show_ratio(&p->f, p->r->pass[1].ratio), p->pass->name);
}

void part_verdict(const struct part *p)
{
	add_verdict(p);
	document_add(p->d, BLOCK_CAUTION, 0, "%s", caution_result);
	if (p->job->title[0])
		document_add(p->d, BLOCK_PARAGRAPH, 0, "Job: %s", p->job->title);
	add_passes(p);
	part_remarks(p, REMARK_ENGINEER, "Why an engineer is needed");
	const bool open = p->r->verdict == NEEDS_ENGINEER;

	part_remarks(p, REMARK_FAILS, open ? "What fails besides, as far as it can be computed" : "Why it does not hold");
	part_remarks(p, REMARK_REMEDY, open ? "What would mend that; an engineer is needed all the same" : "What would make it hold");
	part_remarks(p, REMARK_LOOK_UP, "To be looked up in the book");
}
