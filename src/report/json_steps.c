/* SPDX-License-Identifier: MIT */
/* The calculation in JSON: every value in the unit of its clause, so that a line can be compared
   with the printed book. */
#include "report/json_part.h"
#include "report/json_step.h"

void put_steps(struct json *j, json_t *root, const struct job *job, const struct result *r)
{
	json_t *sections = put_array(j, root, "calculation");

	for (int i = 0; i < SECTION_COUNT && !j->failed; i++) {
		const struct trace *trace = &r->trace[i];
		json_t *section = append_object(j, sections);

		put_text(j, section, "section", section_words((enum trace_section)i));
		json_t *lines = put_array(j, section, "steps");

		for (size_t k = 0; k < trace->count && !j->failed; k++)
			put_step_line(j, append_object(j, lines), r->record[i][k].step,
			              r->record[i][k].in, r->record[i][k].result, job->site.code);
		put_int(j, section, "dropped", (long long)trace->dropped);
	}
}
