/* SPDX-License-Identifier: MIT */
/* Where the covering library is found. */
#ifndef RP_CLI_DATA_DIR_H
#define RP_CLI_DATA_DIR_H

#include <stdbool.h>
#include <stddef.h>

/* The directory `details` in the first of: $RAFTERPROOF_DATA; the directory that was set when the
   program was built (PREFIX/share/rafterproof); any of the five directories above the program's own
   file (a build inside the source tree). When none exists the first one is given, so that a message
   can name it. False when the name does not fit. */
bool data_dir_details(char *buf, size_t size);

#endif
