/* SPDX-License-Identifier: MIT */
/* What each way of holding on must be told, and that a tested value comes with its report. */
#include "job/job_read.h"

#include <string.h>

#include "example.h"
#include "near.h"

#define SET_MAX 14

static struct job job;
static struct problem_list problems;

static bool read_with(const char *const *set)
{
	return example_job(set, SET_MAX, &job, &problems);
}

static bool missing(const char *field)
{
	for (size_t i = 0; i < problems.count; i++)
		if (problems.item[i].code == PROBLEM_MISSING &&
		    strcmp(problems.item[i].field, field) == 0)
			return true;
	return false;
}

/* Each kind with all it needs is read; with any one of it left away, that one is named and nothing
 * else. */
static void test_each_kind(void **state)
{
	static const struct {
		const char *kind;
		const char *set[SET_MAX];
	} row[] = {
		{"fastener.kind=lag-screw", {NULL}},
		{"fastener.kind=wood-screw", {NULL}},
		{"fastener.kind=hanger-bolt", {NULL}},
		{"fastener.kind=through-bolt", {"fastener.washer-diameter=1-3/8 in"}},
		{"fastener.kind=structural-screw",
		 {"fastener.allowable-uplift=450 lb", "fastener.allowable-side=250 lb",
		  "fastener.safety-factor=5", "fastener.report=Report 1"}},
		{"fastener.kind=seam-clamp",
		 {"roof.seam-spacing=16 in", "roof.first-seam=9 in", "mount.allowable-slope=300 lb",
		  "fastener.safety-factor=3", "fastener.report=Report 2"}},
		{"fastener.kind=deck-mount",
		 {"fastener.deck=plywood", "fastener.deck-thickness=15/32 in",
		  "mount.allowable-slope=300 lb", "fastener.safety-factor=5",
		  "fastener.report=Report 3"}},
		{"fastener.kind=sheet-screw", {"fastener.steel-thickness=0.060 in"}},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		size_t n = 0;

		while (n < SET_MAX && row[i].set[n])
			n++;
		for (size_t without = 0; without <= n; without++) {
			const char *set[SET_MAX + 1] = {row[i].kind};
			size_t k = 1;

			for (size_t j = 0; j < n; j++)
				if (j != without)
					set[k++] = row[i].set[j];
			if (without == n) {
				assert_true(read_with(set));
				continue;
			}
			char field[64];
			const size_t length = strcspn(row[i].set[without], "=");

			memcpy(field, row[i].set[without], length);
			field[length] = '\0';
			assert_false(read_with(set));
			if (problems.count != 1 || !missing(field))
				fail_msg("%s without %s", row[i].kind, field);
		}
	}
}

/* Diameter and length: asked of what has them. */
static void test_sizes(void **state)
{
	static const char *const lag[] = {"fastener.kind=lag-screw", NULL};
	char text[EXAMPLE_MAX];
	(void)state;

	memset(&problems, 0, sizeof problems);
	example_read(text);
	example_change(text, " diameter=\"5/16 in\" length=\"4 in\"", "");
	assert_false(job_read_memory("house.xml", text, strlen(text), lag, 1, &job, &problems));
	assert_int_equal(problems.count, 2);
	assert_true(missing("fastener.diameter") && missing("fastener.length"));
}

/* Rows share a foot's screws alike, and two of them stand apart. */
static void test_rows(void **state)
{
	static const char *const alike[] = {"fastener.count=4", "fastener.rows=2",
					    "fastener.spacing=2 in", "fastener.row-spacing=1 in",
					    NULL},
				 *const side_by_side[] = {"fastener.count=2", "fastener.rows=2",
							  "fastener.row-spacing=1 in", NULL},
				 *const odd[] = {"fastener.count=3", "fastener.rows=2",
						 "fastener.spacing=2 in",
						 "fastener.row-spacing=1 in", NULL},
				 *const untold[] = {"fastener.count=4", "fastener.rows=2",
						    "fastener.spacing=2 in", NULL};

	(void)state;
	assert_true(read_with(alike));
	assert_true(read_with(side_by_side)); /* one in each row: nothing along the rafter */
	assert_false(read_with(odd));
	assert_int_equal(problems.item[0].code, PROBLEM_DISAGREE);
	assert_false(read_with(untold));
	assert_true(missing("fastener.row-spacing"));
}

static void test_reasons(void **state)
{
	static const char *const sharing[] = {"framing.sharing=0.3", NULL},
				 *const none[] = {"framing.sharing=0", NULL},
				 *const too_much[] = {"framing.sharing=0.6", NULL},
				 *const told[] = {"framing.sharing=0.3",
						  "framing.sharing-reason=Letter", NULL},
				 *const engineer[] = {"framing.allowable-uplift=300 lb", NULL};

	(void)state;
	assert_false(read_with(sharing));
	assert_true(missing("framing.sharing-reason"));
	assert_true(read_with(none));
	assert_true(read_with(told));
	assert_false(read_with(too_much));
	assert_false(read_with(engineer));
	assert_true(missing("framing.report"));
}

/* Inner supports, tails, and the ends of blocks. The example's house is 28 ft wide, its rafters 5-1/2 in deep. */
static void test_framing(void **state)
{
	static const struct {
		bool read;
		const char *set[SET_MAX], *missing;
	} row[] = {
		{true, {"framing.inner-support=8 ft"}, NULL},
		{true, {"framing.inner-support=13 ft", "framing.continuous=no"}, NULL},
		{false, {"framing.inner-support=13 ft 1 in"}, NULL},
		{false, {"framing.continuous=yes"}, "framing.inner-support"},
		{true, {"framing.tail-depth=5-1/2 in"}, NULL},
		{false, {"framing.tail-depth=6 in"}, NULL},
		{true, {"mount.between=blocking", "mount.block-size=4 X 6"}, NULL},
		{false, {"mount.block-size=4x7"}, NULL},
		{false, {"mount.block-report=Report 9"}, "mount.block-end-uplift"},
		{false,
		 {"mount.block-end-uplift=300 lb", "mount.block-end-down=500 lb",
		  "mount.block-end-slope=250 lb"},
		 "mount.block-report"},
		{true,
		 {"mount.block-end-uplift=300 lb", "mount.block-end-down=500 lb",
		  "mount.block-end-slope=250 lb", "mount.block-report=Report 9"},
		 NULL},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++)
		if (read_with(row[i].set) != row[i].read ||
		    (row[i].missing && !missing(row[i].missing)))
			fail_msg("row %d: %s", (int)i, row[i].set[0]);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_each_kind),
		cmocka_unit_test(test_sizes),
		cmocka_unit_test(test_rows), cmocka_unit_test(test_reasons),
		cmocka_unit_test(test_framing),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
