/* SPDX-License-Identifier: MIT */
/* The words key=value of the command `fastener`. */
#ifndef RP_CLI_FASTENER_KEY_H
#define RP_CLI_FASTENER_KEY_H

#include "check/fastener_table.h"
#include "cli/command.h"

/* What is asked where nothing is said; NAN where something must be. */
struct fastener_question fastener_question_default(void);
/* Reads all words; every mistake goes to problems, those of keys that do not go together too. */
void fastener_read(const struct command *c, const struct options *o, struct fastener_question *q,
		   struct problem_list *problems);

#endif
