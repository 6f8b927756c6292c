/* SPDX-License-Identifier: MIT */
/* FNV-1a against published values, and what enters a job's fingerprint. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <cmocka.h>
#include <stdlib.h>
#include <string.h>

#include "../check/sample_job.h"
#include "sheet/sheet.h"

/* G. Fowler, L. C. Noll, K.-P. Vo, D. Eastlake: The FNV Non-Cryptographic Hash Algorithm (RFC
 * 9923), test values of FNV-1a, 64 bits. */
static void published(void **state)
{
	static const struct {
		const char *text;
		uint64_t want;
	} row[] = {
		{"", UINT64_C(0xcbf29ce484222325)},
		{"a", UINT64_C(0xaf63dc4c8601ec8c)},
		{"foobar", UINT64_C(0x85944171f73967e8)},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++)
		assert_true(fnv1a(FNV_START, row[i].text, strlen(row[i].text)) == row[i].want);
}

static void facts_alone(void **state)
{
	struct job *a = calloc(2, sizeof *a), *b = a + 1;

	(void)state;
	assert_non_null(a);
	*a = sample_job();
	*b = sample_job();
	assert_true(job_fingerprint(a) == job_fingerprint(b));
	strcpy(b->title, "another name");
	b->units = SYSTEM_SI;
	assert_true(job_fingerprint(a) == job_fingerprint(b));
	/* the last bits of a conversion do not count, the least thing a tape can tell does */
	b->fastener.length = a->fastener.length * (1 + 1e-14);
	assert_true(job_fingerprint(a) == job_fingerprint(b));
	b->fastener.length = a->fastener.length + M_PER_IN / 64;
	assert_false(job_fingerprint(a) == job_fingerprint(b));
	*b = sample_job();
	strcpy(b->roof.covering, "wood-shake");
	assert_false(job_fingerprint(a) == job_fingerprint(b));
	free(a);
}

static void printed(void **state)
{
	char buf[FINGERPRINT_TEXT];

	(void)state;
	assert_string_equal(fingerprint_print(buf, UINT64_C(0x0123456789abcdef)),
			    "0123-4567-89ab-cdef");
}

int main(void)
{
	const struct CMUnitTest tests[] = {cmocka_unit_test(published),
					   cmocka_unit_test(facts_alone),
					   cmocka_unit_test(printed)};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
