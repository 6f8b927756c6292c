/* SPDX-License-Identifier: MIT */
/* The commands. One row each: the command line, the help and the message for an unknown one all
   read this list. */
#ifndef RP_CLI_COMMAND_H
#define RP_CLI_COMMAND_H

#include <stddef.h>

#include "cli/options.h"
#include "cli/output.h"
#include "report/document.h"

enum exit_status {
	EXIT_HOLDS = 0,
	EXIT_DOES_NOT_HOLD = 1,
	EXIT_NEEDS_ENGINEER = 2,
	EXIT_INPUT = 3,  /* what was given is wrong */
	EXIT_MACHINE = 4 /* disk, memory */
};

/* name, options beside --format, operands, what it does */
#define COMMANDS(C)                                                                                \
	C(check,                                                                                   \
	  OPTION_BIT(SET) | OPTION_BIT(WIDTH) | OPTION_BIT(UNITS) | OPTION_BIT(HOLES) | OPTION_BIT(ATTACHMENT) |       \
	          OPTION_BIT(NOTES) | OPTION_BIT(OUTPUT),                                          \
	  "JOB.xml [--set field=value]... [--units us|si] [--holes N] [--attachment N] [--notes "              \
	  "none|brief|full] [--width N] [-o FILE]",                                                \
	  "Say whether the roof of a job holds, where each attachment goes and how it is "         \
	  "flashed.")                                                                              \
	C(step, OPTION_BIT(WIDTH) | OPTION_BIT(UNITS) | OPTION_BIT(OUTPUT),                        \
	  "[NAME [symbol=value]...] [--width N] [-o FILE]",                                        \
	  "List the formulas, describe one, or compute one by itself.")                            \
	C(guide,                                                                                   \
	  OPTION_BIT(WIDTH) | OPTION_BIT(UNITS) | OPTION_BIT(JOB) | OPTION_BIT(LIBRARY) |          \
	          OPTION_BIT(SHEET) | OPTION_BIT(OUTPUT),                                          \
	  "[COVERING] [--format html [--sheet]] [--job JOB.xml] [--library DIRECTORY] "  \
	  "[--units us|si] [--width N] [-o FILE]",                                                 \
	  "List the roof coverings with a key to an unknown one, or tell how to go through one.")                               \
	C(export, OPTION_BIT(WIDTH) | OPTION_BIT(COMPRESS), "DIRECTORY [--compress]",              \
	  "Write the library of roof coverings as XML files.")                                     \
	C(fields, OPTION_BIT(WIDTH) | OPTION_BIT(UNITS) | OPTION_BIT(OUTPUT),                      \
	  "[FIELD] [--units us|si] [--width N] [-o FILE]",                                         \
	  "List what a job file may hold, or explain one field.")                                  \
	C(fastener, OPTION_BIT(WIDTH) | OPTION_BIT(UNITS) | OPTION_BIT(OUTPUT),                    \
	  "uplift=FORCE species=GROUP [key=value]... [--units us|si] [--width N] [-o FILE]",       \
	  "Say which screws or bolts hold a load on one foot, and what a hole off the centre does.")   \
	C(compare,                                                                                 \
	  OPTION_BIT(SET) | OPTION_BIT(WIDTH) | OPTION_BIT(UNITS) | OPTION_BIT(CODES) |            \
	          OPTION_BIT(OUTPUT),                                                              \
	  "JOB.xml [--codes asce7-10,asce7-16,asce7-22] [--set field=value]... [--units us|si] "   \
	  "[--width N] [-o FILE]",                                                                 \
	  "Put the check of one job under several editions of the loading standard side by side.") \
	C(sources, OPTION_BIT(WIDTH) | OPTION_BIT(OUTPUT), "[TABLE] [--width N] [-o FILE]",        \
	  "List the published numbers and formulas that are not confirmed, and what to do.")       \
	C(margin, OPTION_BIT(SET) | OPTION_BIT(WIDTH) | OPTION_BIT(UNITS) | OPTION_BIT(OUTPUT),    \
	  "JOB.xml [--set field=value]... [--units us|si] [--width N] [-o FILE]",                  \
	  "Say which input decides, what to verify first, and how far things may grow.")           \
	C(draw,                                                                                    \
	  OPTION_BIT(SET) | OPTION_BIT(UNITS) | OPTION_BIT(WIDTH) | OPTION_BIT(VIEW) |             \
	          OPTION_BIT(PAPER) | OPTION_BIT(OUTPUT),                                          \
	  "JOB.xml -o FILE.svg|FILE.dxf|FILE.pdf [--view plan|layout|site|rack|attachment|block|"  \
	  "pipe|pipe-N|flashing|flashing-N] "                                                                 \
	  "[--paper letter|a4|phone] [--set field=value]... [--units us|si] [--width N]",          \
	  "Draw roof plan, layout, house and place, tilted row, attachment, pipes, flashing.") \
	C(sheets,                                                                                  \
	  OPTION_BIT(SET) | OPTION_BIT(UNITS) | OPTION_BIT(WIDTH) | OPTION_BIT(PAPER) |            \
	          OPTION_BIT(PRICES) | OPTION_BIT(NOTES) | OPTION_BIT(OUTPUT),                     \
	  "JOB.xml -o FILE.pdf|FILE.html [--paper letter|a4] [--notes none|brief|full] [--prices " \
	  "FILE] [--set field=value]... [--units us|si] [--width N]",                              \
	  "Write the sheets for a permit: verdict, plans, details, calculation, materials.")       \
	C(field,                                                                                   \
	  OPTION_BIT(SET) | OPTION_BIT(UNITS) | OPTION_BIT(WIDTH) | OPTION_BIT(PAPER) |            \
	          OPTION_BIT(OUTPUT),                                                              \
	  "JOB.xml -o FILE.pdf|FILE.html [--paper letter|a4] [--set field=value]... [--units "     \
	  "us|si] [--width N]",                                                                    \
	  "Write one page to take up the ladder: tape, hole, screw, flashing, photographs.")       \
	C(materials,                                                                               \
	  OPTION_BIT(SET) | OPTION_BIT(UNITS) | OPTION_BIT(WIDTH) | OPTION_BIT(PRICES) |           \
	          OPTION_BIT(OUTPUT),                                                              \
	  "JOB.xml [--prices FILE] [--set field=value]... [--units us|si] [--width N] [-o FILE]",  \
	  "List what has to be bought for the layout found, with your own prices if given.")       \
	C(help, OPTION_BIT(WIDTH), "[COMMAND]", "List the commands, or say how one is used.")

struct command {
	const char *name;
	unsigned options;
	const char *operands, *summary;
	/* Adds problems or writes its output; main turns problems into a message and an exit
	   status. */
	enum exit_status (*run)(const struct command *c, const struct options *o,
	                        struct problem_list *problems);
};

extern const struct command command_table[];
extern const size_t command_count;
/* NULL if there is none of this name. */
const struct command *command_find(const char *name);

#define C(name, mask, operands, summary)                                                           \
	enum exit_status command_##name(const struct command *c, const struct options *o,          \
	                                struct problem_list *problems);
COMMANDS(C)
#undef C

/* Adds a problem of the command line and returns EXIT_INPUT. */
enum exit_status command_misused(const struct command *c, struct problem_list *problems,
                                 const char *given, const char *accepted);
/* Adds "memory ran out" and returns EXIT_MACHINE. */
enum exit_status command_no_memory(struct problem_list *problems);

/* Writes a finished document to where the options say, and destroys it: EXIT_HOLDS, or a problem
   and EXIT_MACHINE. NULL is a document for which there was no memory. */
enum exit_status command_write_text(struct document *d, const struct options *o,
                                    struct problem_list *problems);
/* The same for a writer of JSON, which returns 0 when all went well. */
typedef int json_writer(FILE *f, const void *what);
enum exit_status command_write_json(json_writer *write, const void *what, const struct options *o,
                                    struct problem_list *problems);

#endif
