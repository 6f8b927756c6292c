/* SPDX-License-Identifier: MIT */
/* One text as every kind of quantity: a finite value or a reason, and a value that is printed reads
 * back. */
#include "fuzz.h"

#include <math.h>
#include <string.h>

#include "quantity/quantity.h"

#define TEXT_MAX 4096

static void as_dimension(const char *text, enum dimension d)
{
	char printed[64];
	double si = 0, again = 0;
	const enum quantity_error e = quantity_parse(text, d, &si);

	if (e != QUANTITY_OK) {
		MUST(strlen(quantity_error_text(e)) > 0);
		return;
	}
	MUST(isfinite(si));
	if (d != DIM_LENGTH || !(fabs(si) < 1e6))
		return;
	quantity_print(printed, sizeof printed, si, UNIT_IN, 6);
	MUST(quantity_parse(printed, d, &again) == QUANTITY_OK);
	/* half of the last digit, and the last bits of a large number */
	MUST(fabs(again - si) <= 0.5e-6 * M_PER_IN + 1e-12 * fabs(si));
	tape_print(printed, sizeof printed, si, SYSTEM_US, 8);
	tape_print(printed, sizeof printed, si, SYSTEM_SI, 8);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
	char text[TEXT_MAX + 1];
	const size_t n = size < TEXT_MAX ? size : TEXT_MAX;

	if (n > 0)
		memcpy(text, data, n);
	text[n] = '\0';
	for (int d = 0; d < DIM_COUNT; d++)
		as_dimension(text, (enum dimension)d);
	return 0;
}
