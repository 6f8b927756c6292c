/* SPDX-License-Identifier: MIT */
/* Answers an unknown name with the nearest known one, or with the list of what is accepted in
   its place. */
#include <stdio.h>
#include <string.h>

#include "job/draft.h"

#define NAME_MAX_LENGTH 40

/* Number of letters to change, add or drop to turn a into b (Levenshtein 1966), NAME_MAX_LENGTH
   for long names. */
static size_t edit_distance(const char *a, const char *b)
{
	const size_t n = strlen(a), m = strlen(b);
	size_t row[NAME_MAX_LENGTH + 1];

	if (n > NAME_MAX_LENGTH || m > NAME_MAX_LENGTH)
		return NAME_MAX_LENGTH;
	for (size_t j = 0; j <= m; j++)
		row[j] = j;
	for (size_t i = 1; i <= n; i++) {
		size_t diagonal = row[0];

		row[0] = i;
		for (size_t j = 1; j <= m; j++) {
			const size_t change = diagonal + (a[i - 1] != b[j - 1]);
			size_t least = row[j - 1] < row[j] ? row[j - 1] : row[j];

			least++;
			diagonal = row[j];
			row[j] = change < least ? change : least;
		}
	}
	return row[m];
}

/* A third of the letters may be wrong. */
static bool near_enough(size_t distance, const char *name)
{
	return 3 * distance <= strlen(name) + 1;
}

static void add(char *buf, size_t size, const char *separator, const char *text)
{
	const size_t n = strlen(buf);

	snprintf(buf + n, size - n, "%s%s", n > 0 ? separator : "", text);
}

const char *suggest_attribute(char *buf, size_t size, enum element e, const char *attribute)
{
	const struct element_row *r = &element_table[e];
	const struct field *best = NULL;
	size_t best_distance = NAME_MAX_LENGTH;

	buf[0] = '\0';
	for (size_t i = r->first; i <= (size_t)r->last; i++) {
		const size_t distance = edit_distance(attribute, field_table[i].attribute);

		if (distance < best_distance) {
			best_distance = distance;
			best = &field_table[i];
		}
	}
	if (best && near_enough(best_distance, attribute)) {
		snprintf(buf, size, "%s.%s", best->element, best->attribute);
		return buf;
	}
	for (size_t i = 0; i < FIELD_COUNT; i++)
		if (strcmp(attribute, field_table[i].attribute) == 0) {
			snprintf(buf, size, "%s.%s", field_table[i].element, attribute);
			return buf;
		}
	for (size_t i = r->first; i <= (size_t)r->last; i++)
		add(buf, size, ", ", field_table[i].attribute);
	return buf;
}

const char *suggest_element(char *buf, size_t size, enum element parent, const char *name)
{
	enum element best = ELEMENT_COUNT;
	size_t best_distance = NAME_MAX_LENGTH;

	buf[0] = '\0';
	for (size_t e = parent == ELEMENT_COUNT ? ELEMENT_JOB : ELEMENT_SITE; e < ELEMENT_COUNT;
	     e++) {
		const size_t distance = edit_distance(name, element_table[e].name);

		if (distance < best_distance) {
			best_distance = distance;
			best = (enum element)e;
		}
	}
	if (best < ELEMENT_COUNT && near_enough(best_distance, name)) {
		if (parent != ELEMENT_COUNT && element_table[best].parent != parent)
			snprintf(buf, size, "%s belongs inside %s", element_table[best].name,
				 element_table[element_table[best].parent].name);
		else
			add(buf, size, "", element_table[best].name);
		return buf;
	}
	for (size_t e = ELEMENT_JOB + 1; e < ELEMENT_COUNT; e++)
		if (parent == ELEMENT_COUNT || element_table[e].parent == parent)
			add(buf, size, ", ", element_table[e].name);
	if (buf[0] == '\0')
		add(buf, size, "", "nothing stands inside this element");
	return buf;
}
