/* SPDX-License-Identifier: MIT */
/* The command line: options may stand anywhere after the command, `--option value` or
   `--option=value`; `--` ends them. Everything that is not understood is collected, so that one run
   tells all of it. */
#ifndef RP_CLI_OPTIONS_H
#define RP_CLI_OPTIONS_H

#include <stdbool.h>
#include <stddef.h>

#include "problem/problem.h"
#include "quantity/quantity.h"
#include "report/flashing_notes.h"

/* As options of a job file: more than there are fields would override one twice. */
#define SET_MAX 160
/* A step takes ten inputs at most; a few more so that what is too many can be named. */
#define WORD_MAX 32

/* id, as written, takes a value, what is accepted, what it is for */
#define OPTIONS(O)                                                                                 \
	O(FORMAT, "--format", true, "text or json", "how the answer is written")                                                \
	O(WIDTH, "--width", true, "a whole number, 40 to 200", "columns of the text")                                     \
	O(UNITS, "--units", true, "us or si", "units of the answer")                                                      \
	O(SET, "--set", true, "field=value, such as roof.pitch=6:12", "put in place of what the job file says; may be given many times")                              \
	O(ATTACHMENT, "--attachment", true, "a whole number from 1, as in the report", "every formula of this foot too")             \
	O(HOLES, "--holes", true, "a whole number, 2 to 256", "the best layout with this many attachments")                                      \
	O(NOTES, "--notes", true, "none, brief or full", "how much of the flashing guide")                                           \
	O(CODES, "--codes", true, "two or three of asce7-10, asce7-16, asce7-22, with commas between", "editions to compare")  \
	O(OUTPUT, "-o", true, "a file name", "write to this file in place of standard output; whole or not at all")                                                       \
	O(PAPER, "--paper", true, "letter or a4; for an SVG file also phone", "size of the sheets")                                                  \
	O(VIEW, "--view", true, "plan, layout, site, rack, attachment, block, pipe, pipe-2 to pipe-8, flashing, flashing-2 or flashing-3", "which drawing")                                \
	O(PRICES, "--prices", true, "a file of item,price lines", "your own prices")                                  \
	O(JOB, "--job", true, "a job file", "sizes are those of this job")                                                        \
	O(LIBRARY, "--library", true, "a directory", "read the coverings from here")                                               \
	O(SHEET, "--sheet", false, "", "as a page to print")                                                             \
	O(COMPRESS, "--compress", false, "", "each file compressed (gzip)")

enum option_id {
#define O(id, name, takes, accepted, meaning) OPTION_##id,
	OPTIONS(O)
#undef O
		OPTION_COUNT
};
#define OPTION_BIT(id) (1u << OPTION_##id)

struct option_row {
	const char *name;
	bool takes_value;
	const char *accepted, *meaning;
};
extern const struct option_row option_table[OPTION_COUNT];

struct options {
	bool json;
	bool html;           /* only where --sheet is an option */
	const char *job;     /* NULL: not given */
	const char *library; /* NULL: the one installed */
	bool sheet;
	int width; /* columns; TEXT_WIDTH_USUAL unless given */
	bool units_given;
	enum unit_system units;  /* SYSTEM_US unless given */
	int holes;               /* 0: not given */
	int attachment;          /* 0: not given */
	enum notes_length notes; /* NOTES_BRIEF unless given */
	const char *codes;       /* NULL: not given */
	const char *output;      /* NULL: standard output */
	bool a4;                 /* else US letter */
	bool phone;              /* a telephone's screen; neither of them */
	const char *view;        /* as --view takes it; plan unless given */
	const char *prices;      /* NULL: not given */
	bool compress;
	size_t sets, words;
	const char *set[SET_MAX];
	const char *word[WORD_MAX]; /* what is no option, in order */
	char *const *argv;          /* all of it, as the program was started */
};

/* Reads argv[first] and on; `allowed` is a set of OPTION_BIT of the command, whose name stands in
   messages. Problems are added to the list; *o is usable for reporting them even then. */
void options_parse(struct options *o, int argc, char *const argv[], int first, unsigned allowed,
                   const char *command, struct problem_list *problems);

#endif
