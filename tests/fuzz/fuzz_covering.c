/* SPDX-License-Identifier: MIT */
/* Bytes as a covering's file in a library that is otherwise whole: refused with a reason, or a page
   that prints in both unit systems, with its drawings. */
#include "fuzz.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "guide/guide.h"

static const char common[] =
	"<common><part id='defers' title='First'><caution status='our-rule'>Gives "
	"way.</caution></part>"
	"<part id='order' title='Order'><step status='derived'>First.</step></part></common>";
static const char sources[] =
	"<sources><source id='book'><title>A book</title><seen>page 3</seen></source></sources>";

/* Read once and kept until the program ends. */
static const char *schema(size_t *size)
{
	static char bytes[GUIDE_FILE_MAX];
	static size_t length;
	const char *directory = getenv("GUIDE_LIBRARY");
	char path[4096];
	FILE *f;

	if (length == 0) {
		MUST(directory != NULL);
		snprintf(path, sizeof path, "%s/covering.rng", directory);
		f = fopen(path, "rb");
		MUST(f != NULL);
		length = fread(bytes, 1, sizeof bytes, f);
		fclose(f);
	}
	*size = length;
	return bytes;
}

static void on_block(void *context, const struct guide_block *b)
{
	(void)context;
	MUST(b->text && b->label && b->source && b->section);
	MUST(problem_text_is_clean(b->text));
}

static void on_title(void *context, const char *title)
{
	(void)context;
	MUST(title != NULL);
}

static void on_layer(void *context, const struct guide_layer *layer)
{
	(void)context;
	for (int i = 0; i < layer->sizes; i++)
		MUST(isfinite(layer->size[i].value));
}

static void print_page(const struct guide_library *lib, enum unit_system units)
{
	static struct problem_list problems;
	const struct guide_sink sink = {on_block, NULL};
	const struct guide_layer_sink layers = {on_title, on_layer, NULL};
	const struct guide_request ask = {.key = "fuzz", .units = units, .depth = GUIDE_FULL};

	memset(&problems, 0, sizeof problems);
	MUST(guide_notes(lib, &ask, &sink, &problems) == guide_page_find(lib, "fuzz", NULL));
	guide_drawing(lib, &ask, "foot", "section", &layers);
	guide_drawing(lib, &ask, "pipe", "section", &layers);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
	static struct problem_list problems;
	struct guide_file file[] = {{"common.xml", common, sizeof common - 1},
				    {"covering.rng", NULL, 0},
				    {"fuzz.xml", (const char *)data, size},
				    {"sources.xml", sources, sizeof sources - 1}};
	struct guide_library *lib;

	file[1].data = schema(&file[1].size);
	memset(&problems, 0, sizeof problems);
	lib = guide_open_memory(file, sizeof file / sizeof *file, &problems);
	MUST((lib != NULL) == !problem_any(&problems));
	if (!lib)
		return 0;
	for (int units = 0; units < SYSTEM_COUNT; units++)
		print_page(lib, (enum unit_system)units);
	guide_close(lib);
	return 0;
}
