/* SPDX-License-Identifier: MIT */
/* The library and the lettering that the tests of this room draw with. */
#ifndef RP_TESTS_SAMPLE_LIBRARY_H
#define RP_TESTS_SAMPLE_LIBRARY_H

#include <stdlib.h>

#include "detail/scene.h"
#include "near.h"

static struct guide_library *lib;
static struct lettering *letters;

static int set_up(void **state)
{
	static struct problem_list problems;
	bool missing;

	(void)state;
	lib = guide_open(getenv("GUIDE_LIBRARY"), &problems);
	letters = lettering_create(&missing);
	return lib && letters ? 0 : -1;
}

static int tear_down(void **state)
{
	(void)state;
	guide_close(lib);
	lettering_destroy(letters);
	return 0;
}

#endif
