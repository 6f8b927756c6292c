/* SPDX-License-Identifier: MIT */
/* rafterproof fastener key=value...: which lag screws hold a load. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "cli/command.h"
#include "job/size.h"
#include "report/fastener_report.h"
#include "table/lookup_wood.h"

#define KEY_SIZE 16
#define VALUE_SIZE 64
#define ACCEPTED                                                                                   \
	"uplift, slope, species or G, size or breadth and depth, plate, layers, gap, height, "     \
	"arm, "                                                                                    \
	"tolerance, temperature, CD, wet, count, each as key=value"

enum key_kind { KEY_QUANTITY, KEY_SPECIES, KEY_SIZE_NAME, KEY_WET, KEY_COUNT };

struct key {
	const char *name;
	enum key_kind kind;
	enum dimension dimension;
	size_t offset;    /* of a double in struct fastener_question */
	double low, high; /* accepted, SI */
};

#define IN M_PER_IN
#define LB N_PER_LBF
#define QUANTITY(name, dim, member, low, high)                                                     \
	{                                                                                          \
		name, KEY_QUANTITY, DIM_##dim, offsetof(struct fastener_question, member), low,    \
			high                                                                       \
	}
static const struct key keys[] = {
	QUANTITY("uplift", FORCE, uplift, 0, 1e6 * LB),
	QUANTITY("load", FORCE, uplift, 0, 1e6 * LB),
	QUANTITY("slope", FORCE, slope, 0, 1e6 * LB),
	QUANTITY("G", NONE, G, 0.31, 0.73),
	QUANTITY("breadth", LENGTH, breadth, 0.5 * IN, 24 * IN),
	QUANTITY("depth", LENGTH, depth, 1 * IN, 48 * IN),
	QUANTITY("plate", LENGTH, plate, 0.02 * IN, 2 * IN),
	QUANTITY("layers", LENGTH, layers, 0, 24 * IN),
	QUANTITY("gap", LENGTH, gap, 0, 24 * IN),
	QUANTITY("height", LENGTH, height, 0, 120 * IN),
	QUANTITY("arm", LENGTH, arm, 0.125 * IN, 48 * IN),
	QUANTITY("tolerance", LENGTH, tolerance, 0, 6 * IN),
	QUANTITY("temperature", TEMPERATURE, temperature, 230, 339), /* to 150 degF */
	QUANTITY("CD", NONE, CD, 0.9, 1.6),
	{"species", KEY_SPECIES, DIM_NONE, 0, 0, 0},
	{"size", KEY_SIZE_NAME, DIM_NONE, 0, 0, 0},
	{"wet", KEY_WET, DIM_NONE, 0, 0, 0},
	{"count", KEY_COUNT, DIM_NONE, 0, 0, 0},
};
#define KEYS (sizeof keys / sizeof *keys)

static void tell(struct problem_list *problems, enum problem_code code, const char *key,
		 const char *given, const char *accepted)
{
	char path[PROBLEM_TEXT_MAX];

	snprintf(path, sizeof path, "fastener.%s", key);
	problem_add(problems, code, "command line", 0, path, given, accepted);
}

static void read_quantity(const struct key *k, const char *text, struct fastener_question *q,
			  struct problem_list *problems)
{
	double *value = (double *)(void *)((char *)q + k->offset);
	const enum quantity_error e = quantity_parse(text, k->dimension, value);
	char accepted[PROBLEM_TEXT_MAX];

	snprintf(accepted, sizeof accepted, "a number%s%s",
		 k->dimension == DIM_NONE ? ", decimal point" : " with ",
		 k->dimension == DIM_NONE ? "" : dimension_units(k->dimension));
	if (e == QUANTITY_NO_UNIT || e == QUANTITY_WRONG_UNIT)
		tell(problems, PROBLEM_WRONG_UNIT, k->name, text, accepted);
	else if (e != QUANTITY_OK)
		tell(problems, PROBLEM_NOT_A_VALUE, k->name, text, accepted);
	else if (!at_least(*value, k->low) || !at_most(*value, k->high))
		tell(problems, PROBLEM_OUT_OF_RANGE, k->name, text,
		     "a value that a screw in a roof can have");
}

static void read_species(const char *text, struct fastener_question *q,
			 struct problem_list *problems)
{
	const struct wood_gravity_row *row = wood_gravity_row(text);

	if (!row) {
		tell(problems, PROBLEM_NOT_A_CHOICE, "species", text,
		     "a species group of NDS Table 12.3.3A, such as Spruce-Pine-Fir");
		return;
	}
	q->species = row->species;
	q->G = row->G;
}

static void read_size(const char *text, struct fastener_question *q, struct problem_list *problems)
{
	char name[VALUE_SIZE];

	snprintf(name, sizeof name, "%s", text);
	if (!size_normalise(name) || !size_find(name, &q->breadth, &q->depth))
		tell(problems, PROBLEM_NOT_A_CHOICE, "size", text, "a lumber size such as 2x6");
}

static void read_value(const struct key *k, const char *text, struct fastener_question *q,
		       struct problem_list *problems)
{
	char *end;

	switch (k->kind) {
	case KEY_QUANTITY:
		read_quantity(k, text, q, problems);
		break;
	case KEY_SPECIES:
		read_species(text, q, problems);
		break;
	case KEY_SIZE_NAME:
		read_size(text, q, problems);
		break;
	case KEY_WET:
		q->wet = strcmp(text, "yes") == 0;
		if (!q->wet && strcmp(text, "no") != 0)
			tell(problems, PROBLEM_NOT_A_CHOICE, "wet", text, "yes or no");
		break;
	case KEY_COUNT:
		q->count = (int)strtol(text, &end, 10);
		if (*end || q->count < 1 || q->count > 8)
			tell(problems, PROBLEM_OUT_OF_RANGE, "count", text,
			     "a whole number, 1 to 8");
		break;
	}
}

static const struct key *find_key(const char *word, const char *equals)
{
	for (size_t i = 0; equals && i < KEYS; i++)
		if (strlen(keys[i].name) == (size_t)(equals - word) &&
		    strncmp(keys[i].name, word, (size_t)(equals - word)) == 0)
			return &keys[i];
	return NULL;
}

static void read_words(const struct command *c, const struct options *o,
		       struct fastener_question *q, struct problem_list *problems)
{
	bool given[KEYS] = {false};

	for (size_t i = 0; i < o->words; i++) {
		const char *equals = strchr(o->word[i], '=');
		const struct key *k = find_key(o->word[i], equals);

		if (!k) {
			command_misused(c, problems, o->word[i], ACCEPTED);
			continue;
		}
		if (given[k - keys])
			tell(problems, PROBLEM_TWICE, k->name, o->word[i], "once");
		given[k - keys] = true;
		read_value(k, equals + 1, q, problems);
	}
}

static enum exit_status write_out(const struct fastener_list *list, const struct options *o,
				  struct problem_list *problems)
{
	struct document *d;

	if (o->json)
		return command_write_json(json_fastener_write, list, o, problems);
	d = document_create(NULL);
	if (d)
		fastener_report_build(d, list);
	return command_write_text(d, o, problems);
}

enum exit_status command_fastener(const struct command *c, const struct options *o,
				  struct problem_list *problems)
{
	struct fastener_list list = {
		.question = {.uplift = (double)NAN,
			     .CD = 1.6,
			     .G = (double)NAN,
			     .breadth = 1.5 * IN,
			     .depth = 5.5 * IN,
			     .plate = 0.25 * IN,
			     .gap = (double)NAN,
			     .arm = (double)NAN,
			     .temperature = (double)NAN,
			     .tolerance = 0.25 * IN,
			     .count = 1},
		.units = o->units,
	};
	struct fastener_question *q = &list.question;

	read_words(c, o, q, problems);
	if (!problem_any(problems) && isnan(q->uplift))
		tell(problems, PROBLEM_MISSING, "uplift", NULL,
		     "the pull of one foot, such as uplift=300lb");
	if (!problem_any(problems) && isnan(q->G))
		tell(problems, PROBLEM_MISSING, "species", NULL,
		     "the wood, such as species=Spruce-Pine-Fir, or G=0.42");
	if (isnan(q->gap)) /* safe side: nothing between plate and rafter bears */
		q->gap = q->layers;
	if (q->gap > q->layers)
		tell(problems, PROBLEM_DISAGREE, "gap", NULL, "no more than the layers");
	if (q->slope > 0 && q->height > 0 && isnan(q->arm))
		tell(problems, PROBLEM_MISSING, "arm", NULL,
		     "from the screw to the compressed edge of the base, such as arm=2in");
	if (problem_any(problems))
		return EXIT_INPUT;
	fastener_table_fill(q, &list.table);
	const enum exit_status written = write_out(&list, o, problems);

	return written == EXIT_HOLDS && list.table.least < 0 ? EXIT_DOES_NOT_HOLD : written;
}
