/* SPDX-License-Identifier: MIT */
/* Libraries for tests: the real one, read into memory, and a small one to be spoilt. */
#ifndef RP_TESTS_GUIDE_SAMPLE_H
#define RP_TESTS_GUIDE_SAMPLE_H

#include <stddef.h>

#include "guide/guide.h"

#define SAMPLE_FILES_MAX 128

struct sample {
	struct guide_file file[SAMPLE_FILES_MAX];
	char *owned[SAMPLE_FILES_MAX]; /* bytes to free */
	size_t files;
};

/* Directory of the real library, from the environment; never NULL. */
const char *sample_directory(void);
/* Every file of a directory. */
void sample_read(struct sample *s, const char *directory);
/* The real schema, one covering "barn", one refusal "nest", a common file and a sources file. */
void sample_small(struct sample *s);
/* Replaces the first `from` in a file by `to`; fails the test if it is not there. */
void sample_edit(struct sample *s, const char *name, const char *from, const char *to);
/* Adds a file, or takes the place of one of that name. size 0: text is a string. */
void sample_put(struct sample *s, const char *name, const char *text, size_t size);
void sample_free(struct sample *s);

/* Opens; every problem printed. */
struct guide_library *sample_open(const struct sample *s, struct problem_list *problems);

/* Everything that a sink was handed, one line a block. */
#define SEEN_MAX (512 * 1024)
struct seen {
	size_t length, blocks;
	char text[SEEN_MAX];
};
struct guide_sink seen_sink(struct seen *seen);
/* Every placeholder known, by a value that prints: lengths 0.3 m, counts and pitch sensible. */
struct guide_sizes sample_sizes(void);

#endif
