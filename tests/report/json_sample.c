/* SPDX-License-Identifier: MIT */
/* Prints the sample result as JSON, to be held against the schema: json_sample UNITS VERDICT
   ATTACHMENTS. */
#include <stdio.h>
#include <stdlib.h>

#include "report/json_check.h"
#include "sample.h"

int main(int argc, char *argv[])
{
	static struct job job;
	static struct result result;

	if (argc != 4)
		return 2;
	sample_job(&job, argv[1][0] == 's' ? SYSTEM_SI : SYSTEM_US);
	sample_result(&result, &job, (enum verdict)atoi(argv[2]), atoi(argv[3]));
	return json_check_write(stdout, &job, &result) == 0 && fclose(stdout) == 0 ? 0 : 1;
}
