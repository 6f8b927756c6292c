/* SPDX-License-Identifier: MIT */
#include "cli/fastener_key.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "job/size.h"
#include "table/lookup_wood.h"

#define VALUE_SIZE 64
#define ACCEPTED                                                                                   \
	"kind, method, uplift, slope, species or G, size or breadth and depth, plate, layers, "    \
	"gap, height, arm, tolerance, temperature, CD or lambda, wet, count, spacing, "            \
	"end-distance, steel, Fu, each as key=value"

enum key_kind {
	KEY_QUANTITY,
	KEY_SPECIES,
	KEY_SIZE_NAME,
	KEY_WET,
	KEY_COUNT,
	KEY_FASTENER,
	KEY_METHOD
};

struct key {
	const char *name;
	enum key_kind kind;
	enum dimension dimension;
	size_t offset;    /* of a double in struct fastener_question */
	double low, high; /* accepted, SI */
};

#define IN M_PER_IN
#define LB N_PER_LBF
#define KSI (1000 * LB / (IN * IN))
#define QUANTITY(name, dim, member, low, high)                                                     \
	{                                                                                          \
		name, KEY_QUANTITY, DIM_##dim, offsetof(struct fastener_question, member), low,    \
			high                                                                       \
	}
static const struct key keys[] = {
	{"kind", KEY_FASTENER, DIM_NONE, 0, 0, 0},
	{"method", KEY_METHOD, DIM_NONE, 0, 0, 0},
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
	QUANTITY("lambda", NONE, lambda, 0.6, 1.0),
	QUANTITY("spacing", LENGTH, spacing, 0.25 * IN, 48 * IN),
	QUANTITY("end-distance", LENGTH, end_distance, 0, 480 * IN),
	QUANTITY("steel", LENGTH, steel_thickness, 0.01 * IN, 0.5 * IN),
	QUANTITY("Fu", PRESSURE, steel_strength, 30 * KSI, 120 * KSI),
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
		     "a value that a fastener in a roof can have");
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

static const char *const kind_names[] = {
	[FASTENER_LAG_SCREW] = "lag-screw",       [FASTENER_WOOD_SCREW] = "wood-screw",
	[FASTENER_STRUCTURAL_SCREW] = NULL,       [FASTENER_THROUGH_BOLT] = "through-bolt",
	[FASTENER_HANGER_BOLT] = "hanger-bolt",   [FASTENER_SEAM_CLAMP] = NULL,
	[FASTENER_DECK_MOUNT] = NULL,             [FASTENER_SHEET_SCREW] = "sheet-screw",
};

static void read_fastener(const char *text, struct fastener_question *q,
			  struct problem_list *problems)
{
	for (size_t i = 0; i < sizeof kind_names / sizeof *kind_names; i++)
		if (kind_names[i] && strcmp(kind_names[i], text) == 0) {
			q->kind = (enum fastener_kind)i;
			return;
		}
	tell(problems, PROBLEM_NOT_A_CHOICE, "kind", text,
	     strcmp(text, "nail") == 0
		     ? "lag-screw, wood-screw or hanger-bolt: a nail is shown beside each for "
		       "comparison, no foot is rated on nails" :
	     "lag-screw, wood-screw, hanger-bolt, through-bolt or sheet-screw; a maker's own screw, "
	     "a clamp or a mount on the deck alone has the table of its test report");
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
	case KEY_FASTENER:
		read_fastener(text, q, problems);
		break;
	case KEY_METHOD:
		q->lrfd = strcmp(text, "lrfd") == 0;
		if (!q->lrfd && strcmp(text, "asd") != 0)
			tell(problems, PROBLEM_NOT_A_CHOICE, "method", text, "asd or lrfd");
		break;
	case KEY_WET:
		q->wet = strcmp(text, "yes") == 0;
		if (!q->wet && strcmp(text, "no") != 0)
			tell(problems, PROBLEM_NOT_A_CHOICE, "wet", text, "yes or no");
		break;
	case KEY_COUNT:
		q->count = (int)strtol(text, &end, 10);
		if (end == text || *end || q->count < 1 || q->count > 8)
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

static void needs_of_kind(const struct fastener_question *q, struct problem_list *problems)
{
	if (q->kind == FASTENER_SHEET_SCREW) {
		if (isnan(q->steel_thickness))
			tell(problems, PROBLEM_MISSING, "steel", NULL,
			     "the bare thickness of the steel framing, such as steel=0.06in");
		return;
	}
	if (isnan(q->G))
		tell(problems, PROBLEM_MISSING, "species", NULL,
		     "the wood, such as species=Spruce-Pine-Fir, or G=0.42");
	else if (q->kind == FASTENER_THROUGH_BOLT && !q->species)
		tell(problems, PROBLEM_MISSING, "species", NULL,
		     "the species, such as species=Spruce-Pine-Fir: what a washer bears does not "
		     "follow from G");
}

/* What goes with what. */
static void agree(struct fastener_question *q, struct problem_list *problems)
{
	/* a hanger bolt bends by its height and needs no base */
	const bool leans = q->slope > 0 && q->height > 0 && q->kind != FASTENER_HANGER_BOLT;

	if (isnan(q->gap)) /* safe side: nothing between plate and rafter bears */
		q->gap = q->layers;
	if (q->gap > q->layers)
		tell(problems, PROBLEM_DISAGREE, "gap", NULL, "no more than the layers");
	if (leans && isnan(q->arm))
		tell(problems, PROBLEM_MISSING, "arm", NULL,
		     "from the screw to the compressed edge of the base, such as arm=2in");
	if (q->count > 1 && isnan(q->spacing))
		tell(problems, PROBLEM_MISSING, "spacing", NULL,
		     "from one fastener of the foot to the next, such as spacing=2in");
	if (q->lrfd && !isnan(q->CD))
		tell(problems, PROBLEM_DISAGREE, "CD", NULL, "lambda in its place with method=lrfd");
	if (!q->lrfd && !isnan(q->lambda))
		tell(problems, PROBLEM_DISAGREE, "lambda", NULL, "method=lrfd beside it, or CD");
}

struct fastener_question fastener_question_default(void)
{
	const double none = (double)NAN;

	return (struct fastener_question){.kind = FASTENER_LAG_SCREW,
					  .uplift = none,
					  .CD = none,
					  .lambda = none,
					  .G = none,
					  .breadth = 1.5 * IN,
					  .depth = 5.5 * IN,
					  .plate = 0.25 * IN,
					  .gap = none,
					  .arm = none,
					  .temperature = none,
					  .tolerance = 0.25 * IN,
					  .spacing = none,
					  .end_distance = none,
					  .steel_thickness = none,
					  .steel_strength = none,
					  .count = 1};
}

void fastener_read(const struct command *c, const struct options *o, struct fastener_question *q,
		   struct problem_list *problems)
{
	read_words(c, o, q, problems);
	if (!problem_any(problems) && isnan(q->uplift))
		tell(problems, PROBLEM_MISSING, "uplift", NULL,
		     "the pull of one foot, such as uplift=300lb");
	if (!problem_any(problems))
		needs_of_kind(q, problems);
	agree(q, problems);
	if (isnan(q->CD)) /* wind */
		q->CD = 1.6;
	if (isnan(q->lambda))
		q->lambda = 1.0;
}
