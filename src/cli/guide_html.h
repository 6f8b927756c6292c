/* SPDX-License-Identifier: MIT */
/* A page of the library as HTML, with its drawings. */
#ifndef RP_CLI_GUIDE_HTML_H
#define RP_CLI_GUIDE_HTML_H

#include "check/result.h"
#include "cli/command.h"
#include "detail/page.h"

/* A job and what a check found of it. */
struct job_found {
	const struct job *job;
	const struct result *result;
};

/* page->of_job_what: NULL, or a struct job_found whose feet in the covering end the page. */
enum exit_status guide_html(const struct command *c, const struct options *o, struct problem_list *problems,
                            const struct page_request *page);

#endif
