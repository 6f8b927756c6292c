/* SPDX-License-Identifier: MIT */
/* What draws needs libraries for type and canvas that take longer to load than a check takes to run. So the program
   is built twice: `rafterproof` without them, and `rafterproof-draw` with everything, which the first becomes when a
   command draws (hand_over.c beside cmd_apart.c). Nothing but the first ever starts the second. */
#ifndef RP_CLI_HAND_OVER_H
#define RP_CLI_HAND_OVER_H

#include "cli/command.h"

/* This process goes on as the program that draws, with the same words, streams and environment. Returns only if that
   cannot be started: a problem and EXIT_MACHINE. */
enum exit_status hand_over(const struct options *o, struct problem_list *problems);

#endif
