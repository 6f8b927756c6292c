/* SPDX-License-Identifier: MIT */
/* The commands that draw, in the program that does not. */
#include "cli/guide_html.h"
#include "cli/hand_over.h"

#define APART(name)                                                                                          \
	enum exit_status command_##name(const struct command *c, const struct options *o,                    \
	                                struct problem_list *problems)                                       \
	{                                                                                                    \
		(void)c;                                                                                     \
		return hand_over(o, problems);                                                               \
	}

APART(draw)
APART(sheets)
APART(field)
APART(materials)

enum exit_status guide_html(const struct command *c, const struct options *o, struct problem_list *problems,
                            const struct page_request *page)
{
	(void)c;
	(void)page;
	return hand_over(o, problems);
}
