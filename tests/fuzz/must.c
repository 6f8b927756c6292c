/* SPDX-License-Identifier: MIT */
#include "fuzz.h"

#include <stdio.h>
#include <stdlib.h>

void must(int holds, const char *what)
{
	if (holds)
		return;
	fprintf(stderr, "does not hold: %s\n", what);
	abort();
}
