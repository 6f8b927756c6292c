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

/* id, as written, takes a value, what is accepted */
#define OPTIONS(O)                                                                                 \
	O(FORMAT, "--format", true, "text or json")                                                \
	O(WIDTH, "--width", true, "a whole number, 40 to 200")                                     \
	O(UNITS, "--units", true, "us or si")                                                      \
	O(SET, "--set", true, "field=value, such as roof.pitch=6:12")                              \
	O(ATTACHMENT, "--attachment", true, "a whole number from 1, as in the report")             \
	O(HOLES, "--holes", true, "a whole number, 2 to 256")                                      \
	O(NOTES, "--notes", true, "none, brief or full")                                           \
	O(CODES, "--codes", true, "two or three of asce7-10, asce7-16, asce7-22, with commas between")  \
	O(OUTPUT, "-o", true, "a file name")                                                       \
	O(PAPER, "--paper", true, "letter or a4")                                                  \
	O(VIEW, "--view", true, "plan, layout, site, rack, attachment, block, pipe, pipe-2 to pipe-8, flashing, flashing-2 or flashing-3")                                \
	O(PRICES, "--prices", true, "a file of item,price lines")                                  \
	O(JOB, "--job", true, "a job file")                                                        \
	O(LIBRARY, "--library", true, "a directory")                                               \
	O(SHEET, "--sheet", false, "")                                                             \
	O(COMPRESS, "--compress", false, "")

enum option_id {
#define O(id, name, takes, accepted) OPTION_##id,
	OPTIONS(O)
#undef O
		OPTION_COUNT
};
#define OPTION_BIT(id) (1u << OPTION_##id)

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
