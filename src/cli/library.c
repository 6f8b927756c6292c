/* SPDX-License-Identifier: MIT */
#include "cli/library.h"

#include "cli/data_dir.h"
#include "cli/output.h"

struct guide_library *library_open(struct problem_list *problems)
{
	char dir[OUTPUT_PATH_MAX];

	if (!data_dir_details(dir, sizeof dir)) {
		problem_add(problems, PROBLEM_CANNOT_OPEN, "RAFTERPROOF_DATA", 0, NULL, NULL,
		            "a shorter name");
		return NULL;
	}
	return guide_open(dir, problems);
}
