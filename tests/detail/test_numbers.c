/* SPDX-License-Identifier: MIT */
/* Every number of the library counts for something: each size of a drawing, each quantity and each
   extent is changed in turn, and the drawing or the printed page must not stay as it was. A number
   that nothing shows is a mistake that nobody finds. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../guide/sample.h"
#include "detail/detail.h"
#include "drawing/svg.h"
#include "near.h"

#define LARGER                                                                                     \
	1.375 /* eighths stay eighths, and no two numbers of the library differ by it alone */

/* The schema has its own tests, and compiling it takes longer than all else here. */
bool __wrap_guide_validate(const void *library, struct problem_list *problems);
bool __wrap_guide_validate(const void *library, struct problem_list *problems)
{
	(void)library;
	(void)problems;
	return true;
}

static struct lettering *letters;

/* What one page shows: its text and its drawings, summed up. */
struct shown {
	unsigned long text, drawing;
};

static unsigned long sum(unsigned long so_far, const char *s)
{
	for (; *s; s++)
		so_far = so_far * 1099511628211ul ^ (unsigned char)*s;
	return so_far * 31 + 7;
}

static void on_block(void *context, const struct guide_block *b)
{
	struct shown *s = context;

	s->text = sum(sum(s->text, b->label), b->text);
}

static void add_number(unsigned long *so_far, double x)
{
	char text[40];

	snprintf(text, sizeof text, "%.9g", x);
	*so_far = sum(*so_far, text);
}

static void add_drawing(struct shown *s, struct drawing *d)
{
	for (const struct shape *shape = d ? drawing_first(d) : NULL; shape; shape = shape->next) {
		if (shape->text)
			s->drawing = sum(s->drawing, shape->text);
		for (int i = 0; i < shape->n; i++) {
			add_number(&s->drawing, shape->at[i].x);
			add_number(&s->drawing, shape->at[i].y);
		}
	}
	drawing_destroy(d);
}

/* The files that every page needs, and the page's own as changed. */
static struct guide_library *open_page(const struct sample *files, const struct guide_file *page)
{
	struct guide_file file[SAMPLE_FILES_MAX];
	size_t n = 0;
	struct problem_list problems = {.count = 0};
	struct guide_library *lib;

	for (size_t i = 0; i < files->files; i++) {
		const char *name = files->file[i].name;

		if (strncmp(name, "common", 6) == 0 || strcmp(name, "sources.xml") == 0 ||
		    strcmp(name, "covering.rng") == 0) {
			assert_true(n < SAMPLE_FILES_MAX - 1);
			file[n++] = files->file[i];
		}
	}
	file[n++] = *page;
	lib = guide_open_memory(file, n, &problems);
	for (size_t i = 0; i < problems.count; i++) {
		char line[2000];

		print_error("%s\n", problem_print(line, sizeof line, &problems.item[i]));
	}
	assert_non_null(lib);
	return lib;
}

static struct shown show(const struct sample *files, const struct guide_file *page, bool drawings)
{
	static const char *const of[] = {"foot", "pipe"}, *const view[] = {"section", "plan"};
	struct guide_library *lib = open_page(files, page);
	const struct guide_page p = guide_page_at(lib, 0);
	const struct guide_request ask = {.key = p.key, .units = SYSTEM_US, .depth = GUIDE_FULL};
	struct shown s = {5381, 5381};
	const struct guide_sink sink = {on_block, &s};
	struct problem_list problems = {.count = 0};

	if (!drawings)
		assert_true(guide_notes(lib, &ask, &sink, &problems));
	for (int o = 0; o < 2 && drawings; o++)
		for (int v = 0; v < 2; v++)
			add_drawing(&s, detail_draw(letters, lib, &ask, of[o], view[v]));
	guide_close(lib);
	return s;
}

/* The first number behind `after` in a tag of this name: its first character, and its length. NULL:
 * none. */
static const char *next_number(const char *text, const char *after, const char *tag,
			       const char *const *attribute, size_t *length)
{
	const char *opened = NULL;

	for (const char *c = text; *c; c++) {
		if (*c == '<')
			opened = strncmp(c + 1, tag, strlen(tag)) == 0 && c[1 + strlen(tag)] == ' '
					 ? c
					 : NULL;
		for (const char *const *a = attribute; opened && c > after && *c == ' ' && *a;
		     a++) {
			const size_t n = strlen(*a);

			if (strncmp(c + 1, *a, n) != 0 || strncmp(c + 1 + n, "=\"", 2) != 0)
				continue;
			*length = strcspn(c + n + 3, "\"");
			return c + n + 3;
		}
	}
	return NULL;
}

/* The number made larger, its unit kept; false if it has none of ours. */
static bool enlarge(char *to, size_t size, const char *from, size_t length, bool range)
{
	char text[64];
	double si;

	snprintf(text, sizeof text, "%.*s", (int)length, from);
	if (quantity_parse(text, DIM_LENGTH, &si) == QUANTITY_OK)
		snprintf(to, size, "%.6f in",
			 fabs(si) > 0 ? si / M_PER_IN * (range ? 1.01 : LARGER) : 0.75);
	else if (strstr(text, ":12"))
		snprintf(to, size, "%.4f:12", atof(text) + 0.25);
	else if (quantity_parse(text, DIM_PRESSURE, &si) == QUANTITY_OK)
		snprintf(to, size, "%.4f psf", atof(text) + (range ? 0.01 : 1));
	else if (quantity_parse(text, DIM_NONE, &si) == QUANTITY_OK)
		snprintf(to, size, "%.0f", si + 1);
	else
		return false;
	return true;
}

struct kind {
	const char *tag;
	const char *attribute[4];
	bool drawn;
};

static size_t check_kind(const struct sample *files, const struct guide_file *page,
			 const struct kind *kind, size_t *unused)
{
	const struct shown before = show(files, page, kind->drawn);
	const char *number = page->data;
	size_t length, n = 0;

	while ((number = next_number(page->data, number, kind->tag, kind->attribute, &length)) !=
	       NULL) {
		const size_t head = (size_t)(number - page->data);
		struct guide_file changed = *page;
		struct shown after;
		char larger[64], *bytes;

		n++;
		if (!enlarge(larger, sizeof larger, number, length,
			     strncmp(number - 5, "low=", 4) == 0)) {
			print_error("%s: `%.*s` is not read\n", page->name, (int)length, number);
			(*unused)++;
			continue;
		}
		bytes = malloc(page->size + sizeof larger);
		assert_non_null(bytes);
		memcpy(bytes, page->data, head);
		changed.size =
			head + (size_t)snprintf(bytes + head, page->size + sizeof larger - head,
						"%s%s", larger, number + length);
		changed.data = bytes;
		after = show(files, &changed, kind->drawn);
		if (after.text == before.text && after.drawing == before.drawing) {
			int line = 1;

			for (const char *c = page->data; c < number; c++)
				line += *c == '\n';
			print_error("%s:%d: <%s> %.*s is shown nowhere\n", page->name, line,
				    kind->tag, (int)length, number);
			(*unused)++;
		}
		free(bytes);
	}
	return n;
}

static void every_number_counts(void **state)
{
	static const struct kind kinds[] = {
		{"size", {"value", NULL}, true},
		{"quantity", {"value", "low", "high", NULL}, false},
		{"extent", {"least", NULL}, false},
	};
	struct sample files;
	size_t n = 0, unused = 0;

	(void)state;
	sample_read(&files, sample_directory());
	for (size_t i = 0; i < files.files; i++)
		for (size_t k = 0; k < sizeof kinds / sizeof *kinds; k++)
			if (strstr(files.file[i].data, "<covering ") &&
			    strstr(files.file[i].name, ".xml"))
				n += check_kind(&files, &files.file[i], &kinds[k], &unused);
	sample_free(&files);
	print_message("%zu numbers\n", n);
	assert_true(n > 800);
	assert_int_equal(unused, 0);
}

int main(void)
{
	const struct CMUnitTest tests[] = {cmocka_unit_test(every_number_counts)};
	bool missing;
	int failed;

	letters = lettering_create(&missing);
	failed = letters ? cmocka_run_group_tests(tests, NULL, NULL) : 1;
	lettering_destroy(letters);
	return failed;
}
