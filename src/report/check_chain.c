/* SPDX-License-Identifier: MIT */
/* The chain from the collector to the rafter: the worst ratio of each link, where, and what
   governs. */
#include <math.h>

#include "report/check_part.h"

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
			document_cell(p->d, "not checked");
			continue;
		}
		document_cell(p->d, "%s", show_ratio(&p->f, pass->link_ratio[i]));
		document_cell(p->d, "%s%s", place,
		              link == weakest ? *place ? " (weakest)" : "weakest" : "");
		document_cell(p->d, "%s", check_words(pass->link_governs[i]));
	}
	document_add(p->d, BLOCK_PARAGRAPH, 0,
	             "A ratio is demand over capacity: 1.00 is the limit. Ratios and demands are "
	             "rounded up, capacities "
	             "down.");
}
