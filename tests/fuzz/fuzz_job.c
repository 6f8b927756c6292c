/* SPDX-License-Identifier: MIT */
/* Bytes as a job file: a job or a problem with a reason, never neither. */
#include "fuzz.h"

#include <string.h>

#include "job/job_read.h"

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
	static struct job job;
	static struct problem_list problems;
	bool ok;

	memset(&problems, 0, sizeof problems);
	ok = job_read_memory("job.xml", (const char *)data, size, NULL, 0, &job, &problems);
	MUST(ok == !problem_any(&problems));
	for (size_t i = 0; i < problems.count; i++) {
		char line[2000];

		MUST(problem_text_is_clean(problem_print(line, sizeof line, &problems.item[i])));
	}
	return 0;
}
