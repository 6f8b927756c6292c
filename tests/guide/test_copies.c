/* SPDX-License-Identifier: MIT */
/* Nothing long is written twice in the library: what several coverings share stands in a common
   part. Whole texts and single sentences of more than 80 characters are held against each other. */
#include "near.h"

#include <stdlib.h>
#include <string.h>

#include <libxml/parser.h>

#include "sample.h"

struct sentence {
	char *text;
	const char *file;
};

static struct sentence *sentence;
static size_t sentences;

static void add_sentence(const char *text, size_t length, const char *file)
{
	struct sentence *s;

	if (length <= 80)
		return;
	sentence = realloc(sentence, (sentences + 1) * sizeof *sentence);
	assert_non_null(sentence);
	s = &sentence[sentences++];
	s->file = file;
	s->text = malloc(length + 1);
	assert_non_null(s->text);
	memcpy(s->text, text, length);
	s->text[length] = '\0';
}

/* Whole texts and single sentences of a text, blanks run together. */
static void add_text(const char *raw, const char *file)
{
	char text[4096];
	size_t n = 0, start = 0;

	for (; *raw && n + 1 < sizeof text; raw++)
		if (!strchr(" \n\t", *raw))
			text[n++] = *raw;
		else if (n > 0 && text[n - 1] != ' ')
			text[n++] = ' ';
	while (n > 0 && text[n - 1] == ' ')
		n--;
	text[n] = '\0';
	for (size_t i = 0; i < n; i++)
		if (strchr(".!?", text[i]) && (text[i + 1] == ' ' || i + 1 == n)) {
			if (start > 0 || i + 1 < n)
				add_sentence(text + start, i + 1 - start, file);
			start = i + 2;
		}
	add_sentence(text, n, file);
}

static void gather_text(const xmlNode *n, const char *file)
{
	for (const xmlNode *c = n->children; c; c = c->next) {
		if (c->type == XML_TEXT_NODE && c->content)
			add_text((const char *)c->content, file);
		else if (c->type == XML_ELEMENT_NODE)
			gather_text(c, file);
	}
}

static int by_text(const void *a, const void *b)
{
	const struct sentence *x = a, *y = b;
	const int order = strcmp(x->text, y->text);

	return order != 0 ? order : strcmp(x->file, y->file);
}

static void nothing_long_stands_twice(void **state)
{
	struct sample files;

	(void)state;
	sample_read(&files, sample_directory());
	for (size_t i = 0; i < files.files; i++) {
		xmlDoc *doc = xmlReadMemory(files.file[i].data, (int)files.file[i].size,
					    files.file[i].name, NULL, XML_PARSE_NONET);

		assert_non_null(doc);
		if (!strstr(files.file[i].name, ".rng"))
			gather_text(xmlDocGetRootElement(doc), files.file[i].name);
		xmlFreeDoc(doc);
	}
	assert_true(sentences > 400);
	qsort(sentence, sentences, sizeof *sentence, by_text);
	for (size_t i = 1; i < sentences; i++)
		if (strcmp(sentence[i].text, sentence[i - 1].text) == 0 &&
		    sentence[i].file != sentence[i - 1].file)
			fail_msg("%s and %s: %s", sentence[i - 1].file, sentence[i].file,
				 sentence[i].text);
	for (size_t i = 0; i < sentences; i++)
		free(sentence[i].text);
	free(sentence);
	sample_free(&files);
}

int main(void)
{
	const struct CMUnitTest tests[] = {cmocka_unit_test(nothing_long_stands_twice)};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
