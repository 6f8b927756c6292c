/* SPDX-License-Identifier: MIT */
/* US and SI input give one verdict: every quantity of the examples is written again in its SI unit, read back, and checked. */
#include <dirent.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "check/check.h"
#include "job/job_read.h"
#include "near.h"
#include "sample_units.h"

static struct check_workspace workspace;

static void compare(const char *path)
{
	static struct job us, si;
	static struct result a, b;
	struct problem_list problems = { .count = 0 };

	print_message("%s\n", path);
	assert_true(job_read_file(path, NULL, 0, &us, &problems));
	si = us;
	rewrite_in_si(&si);
	check_run(&us, &a, &workspace);
	check_run(&si, &b, &workspace);
	assert_int_equal(a.verdict, b.verdict);
	assert_int_equal(a.passes, b.passes);
	assert_int_equal(a.remarks, b.remarks);
	for (int p = 0; p < a.passes; p++) {
		assert_int_equal(a.pass[p].attachments, b.pass[p].attachments);
		assert_near(b.pass[p].ratio, a.pass[p].ratio, 1e-7);
		for (int i = 0; i < a.pass[p].attachments; i++) {
			assert_int_equal(a.pass[p].attachment[i].rafter, b.pass[p].attachment[i].rafter);
			assert_int_equal(a.pass[p].attachment[i].zone, b.pass[p].attachment[i].zone);
		}
	}
}

static void test_one_verdict(void **state)
{
	(void)state;
	const char *dir = getenv("EXAMPLES");
	DIR *open = opendir(dir);
	int jobs = 0;

	assert_non_null(open);
	for (const struct dirent *e; (e = readdir(open)) != NULL;) {
		char path[1024];

		if (!strstr(e->d_name, ".xml"))
			continue;
		snprintf(path, sizeof path, "%s/%s", dir, e->d_name);
		compare(path);
		jobs++;
	}
	closedir(open);
	assert_true(jobs >= 5);
}

int main(void)
{
	const struct CMUnitTest tests[] = { cmocka_unit_test(test_one_verdict) };

	return cmocka_run_group_tests(tests, NULL, NULL);
}
