/* SPDX-License-Identifier: MIT */
/* Runs a target on files, and on what is left of each when it is cut short or one byte of it is
   turned over: bytes that nobody thought of, the same ones every time. */
#include "fuzz.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define SIZE_MAX_READ (2u * 1024u * 1024u)
#define SPOILT 40 /* pieces and flips tried of each file */

/* In memory of exactly its size, so that a checker sees a read past its end. */
static void run(const uint8_t *data, size_t size)
{
	uint8_t *copy = malloc(size > 0 ? size : 1);

	MUST(copy != NULL);
	memcpy(copy, data, size);
	MUST(LLVMFuzzerTestOneInput(copy, size) == 0);
	free(copy);
}

static void run_spoilt(uint8_t *data, size_t size)
{
	const size_t stride = size / SPOILT + 1;

	for (size_t at = 0; at < size; at += stride) {
		const uint8_t was = data[at];

		run(data, at);
		data[at] = (uint8_t)(was ^ (1u << at % 8));
		run(data, size);
		data[at] = was;
	}
}

int main(int argc, char **argv)
{
	uint8_t *data = malloc(SIZE_MAX_READ);

	MUST(data != NULL && argc > 1);
	for (int i = 1; i < argc; i++) {
		FILE *f = fopen(argv[i], "rb");
		size_t size;

		MUST(f != NULL);
		size = fread(data, 1, SIZE_MAX_READ, f);
		fclose(f);
		run(data, size);
		run_spoilt(data, size);
	}
	free(data);
	printf("%d files\n", argc - 1);
	return 0;
}
