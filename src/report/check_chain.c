/* SPDX-License-Identifier: MIT */
/* The chain from the collector to the rafter: the worst ratio of each link, where, and what
   governs. */
#include <math.h>

#include "report/check_part.h"

/* What of a remark is a gap in this link; NULL where it is none. */
static const char *gap(const struct remark *m, enum link link)
{
	if (link == LINK_FOOT && m->id == REMARK_UNCHECKED_FOOT)
		return m->text[0];
	if (link != LINK_RAIL)
		return NULL;
	if (m->id == REMARK_UNCHECKED_RAIL)
		return "bending";
	if (m->id == REMARK_UNCHECKED_RAIL_DEFLECTION)
		return "deflection";
	if (m->id == REMARK_UNCHECKED_RAIL_WEAK)
		return "bending down the slope";
	return m->id == REMARK_UNCHECKED_JOINTS || m->id == REMARK_UNCHECKED_SPLICE ? "joints" : NULL;
}

const char *link_gaps(const struct part *p, enum link link)
{
	const char *list = "";

	for (int i = 0; i < p->r->remarks && !isnan(p->pass->link_ratio[link]); i++) {
		const char *words = gap(&p->r->remark[i], link);

		if (words)
			list = document_text(p->d, "%s%s%s", list, *list ? ", " : "", words);
	}
	return list;
}

static const char *why_no_ratio(const struct part *p, enum link link)
{
	if (link == LINK_RAIL && p->job->rail.kind != SUPPORT_RAILS)
		return "no rails";
	for (int i = 0; i < p->r->remarks && link == LINK_FASTENER; i++)
		if (p->r->remark[i].id == REMARK_PENETRATION || p->r->remark[i].id == REMARK_PENETRATION_SCREW ||
		    p->r->remark[i].id == REMARK_FASTENER_UNRATED)
			return "fails: the reason stands above";
	return "not checked";
}

void part_chain(const struct part *p)
{
	static const struct column columns[] = {
		{ "link", ALIGN_LEFT, true, false },
		{ "worst ratio", ALIGN_RIGHT, false, false },
		{ "where", ALIGN_LEFT, false, true },
		{ "what governs", ALIGN_LEFT, false, true },
	};
	const struct pass *pass = p->pass;
	const enum link weakest = pass_weakest(pass);

	document_add(p->d, BLOCK_HEADING, 1, "The chain, link by link");
	document_table(p->d, columns, (int)(sizeof columns / sizeof *columns));
	for (int i = 0; i < LINK_COUNT; i++) {
		const enum link link = (enum link)i;
		const char *place = link_place(&p->f, link, pass->link_at[i]);

		document_row(p->d);
		document_cell(p->d, "%s", link_words(link));
		if (isnan(pass->link_ratio[i])) {
			document_cell(p->d, "-");
			document_cell(p->d, "%s", why_no_ratio(p, link));
			continue;
		}
		document_cell(p->d, "%s", show_ratio(&p->f, pass->link_ratio[i]));
		document_cell(p->d, "%s%s", place,
		              link == weakest ? *place ? " (weakest)" : "weakest" : "");
		const char *gaps = link_gaps(p, link);

		document_cell(p->d, "%s%s%s", check_words(pass->link_governs[i]), *gaps ? "; not checked: " : "", gaps);
	}
	document_add(p->d, BLOCK_PARAGRAPH, 0,
	             "A ratio is demand over capacity: 1.00 is the limit. Ratios and demands are "
	             "rounded up, capacities "
	             "down.");
}
