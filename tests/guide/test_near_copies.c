/* SPDX-License-Identifier: MIT */
/* No two coverings share a copied paragraph with a word or a number changed here and there: what
   they share stands in a common part. Two sentences are near copies if half of all runs of three
   words in them occur in both, numbers counting as alike. (test_copies.c finds what is the same to
   the letter.) The key repeats what pages say on purpose. */
#include "near.h"

#include <ctype.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <libxml/parser.h>

#include "sample.h"

#define WORDS_LEAST                                                                                \
	12 /* numbers aside; shorter sentences say one plain fact, and there is one plain way to   \
	      say it */
#define RUNS_MAX 300
#define ALIKE 0.5
#define NUMBER 1 /* any number as a word */

struct sentence {
	const char *file;
	char start[80];
	size_t runs;
	uint64_t run[RUNS_MAX]; /* of three words each, in rising order, no two alike */
};

static struct sentence *sentence;
static size_t sentences;

static int by_value(const void *a, const void *b)
{
	const uint64_t x = *(const uint64_t *)a, y = *(const uint64_t *)b;

	return x < y ? -1 : x > y;
}

/* The next word: letters, or anything that starts with a digit or a brace as one and the same. 0 at
 * the end. */
static uint64_t next_word(const char **at, const char *end)
{
	uint64_t sum = UINT64_C(14695981039346656037);
	const char *s = *at;

	while (s < end && !isalnum((unsigned char)*s) && *s != '{')
		s++;
	if (s == end)
		return 0;
	if (*s == '{' || isdigit((unsigned char)*s)) {
		const char *close = *s == '{' ? memchr(s, '}', (size_t)(end - s)) : NULL;

		s = close ? close + 1 : s + 1;
		while (s < end && isalnum((unsigned char)*s))
			s++;
		*at = s;
		return NUMBER;
	}
	for (; s < end && isalnum((unsigned char)*s); s++)
		sum = (sum ^ (unsigned)tolower((unsigned char)*s)) * UINT64_C(1099511628211);
	*at = s;
	return sum;
}

/* False if it is too short to be judged. */
static bool read_sentence(struct sentence *s, const char *text, const char *end, const char *file)
{
	uint64_t a = 0, b = 0, word;
	size_t words = 0, all = 0, n = 0;

	s->file = file;
	snprintf(s->start, sizeof s->start, "%.*s", (int)(end - text), text);
	s->runs = 0;
	while ((word = next_word(&text, end)) != 0 && s->runs < RUNS_MAX) {
		words += word != NUMBER;
		if (++all >= 3)
			s->run[s->runs++] = (a * 31 + b) * 1000003 + word;
		a = b;
		b = word;
	}
	qsort(s->run, s->runs, sizeof s->run[0], by_value);
	for (size_t i = 0; i < s->runs; i++)
		if (n == 0 || s->run[i] != s->run[n - 1])
			s->run[n++] = s->run[i];
	s->runs = n;
	return words >= WORDS_LEAST;
}

/* Runs in both, as a share of runs in either. */
static double alike(const struct sentence *a, const struct sentence *b)
{
	size_t i = 0, j = 0, both = 0;

	while (i < a->runs && j < b->runs) {
		if (a->run[i] == b->run[j]) {
			both++;
			i++;
			j++;
		} else if (a->run[i] < b->run[j])
			i++;
		else
			j++;
	}
	return (double)both / (double)(a->runs + b->runs - both);
}

static void add_text(const char *text, const char *file)
{
	while (*text) {
		const char *end = text;

		while (*end &&
		       !(strchr(".!?", *end) && (end[1] == '\0' || isspace((unsigned char)end[1]))))
			end++;
		sentence = realloc(sentence, (sentences + 1) * sizeof *sentence);
		assert_non_null(sentence);
		sentences += read_sentence(&sentence[sentences], text, end, file);
		text = *end ? end + 1 : end;
	}
}

/* Claims only: with and else of one claim say the same by nature, so else is left out. */
static void gather(const xmlNode *n, const char *file)
{
	for (const xmlNode *c = n->children; c; c = c->next) {
		if (c->type == XML_TEXT_NODE && c->content)
			add_text((const char *)c->content, file);
		else if (c->type == XML_ELEMENT_NODE && strcmp((const char *)c->name, "else") != 0)
			gather(c, file);
	}
}

static void no_near_copies(void **state)
{
	struct sample files;
	size_t found = 0;

	(void)state;
	sample_read(&files, sample_directory());
	for (size_t i = 0; i < files.files; i++) {
		xmlDoc *doc = xmlReadMemory(files.file[i].data, (int)files.file[i].size,
					    files.file[i].name, NULL, XML_PARSE_NONET);
		const xmlNode *root;

		assert_non_null(doc);
		root = xmlDocGetRootElement(doc);
		if (strcmp((const char *)root->name, "covering") == 0 ||
		    strcmp((const char *)root->name, "refusal") == 0 ||
		    strcmp((const char *)root->name, "common") == 0)
			gather(root, files.file[i].name);
		xmlFreeDoc(doc);
	}
	assert_true(sentences > 500);
	for (size_t i = 0; i < sentences; i++)
		for (size_t j = i + 1; j < sentences; j++)
			if (sentence[i].file != sentence[j].file &&
			    alike(&sentence[i], &sentence[j]) >= ALIKE) {
				print_error("%s: %s\n  %s: %s\n", sentence[i].file,
					    sentence[i].start, sentence[j].file, sentence[j].start);
				found++;
			}
	free(sentence);
	sample_free(&files);
	assert_int_equal(found, 0);
}

static double likeness(const char *a, const char *b)
{
	static struct sentence x, y;

	assert_true(read_sentence(&x, a, a + strlen(a), "a"));
	assert_true(read_sentence(&y, b, b + strlen(b), "b"));
	return alike(&x, &y);
}

/* The measure itself: a copy with one word and one number changed is caught, another sentence on
 * the same thing is not. */
static void the_measure(void **state)
{
	static const char one[] = "Slide the plate up until its upper edge lies {2 in} under the "
				  "course above and press it down.";

	(void)state;
	assert_near(likeness(one, one), 1.0, 1e-12);
	assert_true(likeness(one, "Slide the plate up until its upper edge lies {3-1/2 in} under "
				  "the course above and push it "
				  "down.") >= ALIKE);
	assert_true(likeness(one, "The upper edge of the plate belongs under the course above; "
				  "slide it there, at least {2 in} "
				  "deep.") < ALIKE);
}

int main(void)
{
	const struct CMUnitTest tests[] = {cmocka_unit_test(the_measure),
					   cmocka_unit_test(no_near_copies)};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
