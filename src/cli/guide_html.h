/* SPDX-License-Identifier: MIT */
/* A page of the library as HTML, with its drawings. */
#ifndef RP_CLI_GUIDE_HTML_H
#define RP_CLI_GUIDE_HTML_H

#include "cli/command.h"
#include "detail/page.h"

enum exit_status guide_html(const struct command *c, const struct options *o, struct problem_list *problems,
                            const struct page_request *page);

#endif
