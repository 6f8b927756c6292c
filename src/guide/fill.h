/* SPDX-License-Identifier: MIT */
/* Puts sizes into a text: `{plate-length}` from the job, `{4 in}` in the reader's own units.
 * Private to the guide. */
#ifndef RP_GUIDE_FILL_H
#define RP_GUIDE_FILL_H

#include <stdbool.h>
#include <stddef.h>

#include "guide/sizes.h"
#include "quantity/quantity.h"

/* No text of the schema has more than 900 characters of up to 4 bytes, and a size in braces never
   prints three times as long as it is written. */
#define GUIDE_TEXT_MAX 4096
/* what one pair of braces can become, NUL included */
#define GUIDE_FILLED_MAX 80

enum guide_fill {
	GUIDE_FILLED,
	GUIDE_SIZE_UNKNOWN, /* a placeholder that the job does not know: print the else text */
	GUIDE_BAD_NAME,     /* no such placeholder */
	GUIDE_BAD_QUANTITY, /* braces around something that is no quantity */
	GUIDE_BAD_BRACES,   /* a brace without its partner */
	GUIDE_TOO_LONG
};

/* Fills text into buf, blanks and line ends run together to one blank, none at the ends. On
 *anything but GUIDE_FILLED at, if not NULL, is where in text it happened and buf is of no use. */
enum guide_fill guide_fill(char *buf, size_t size, const char *text,
			   const struct guide_sizes *sizes, enum unit_system units,
			   const char **at);

/* What must be at least so much, as the guide prints it: up to what a tape shows. */
double guide_least(double value, enum unit_system units);
/* A size of the job as the guide prints it. */
const char *guide_size_print(char *buf, size_t size, const struct guide_size_row *row, double value,
			     enum unit_system units);
/* A quantity as written in the library, in the reader's units: as it stands where it belongs to
   them, else converted. False if it is no quantity. */
bool guide_literal_print(char *buf, size_t size, const char *text, size_t length,
			 enum unit_system units);
/* Reads a quantity of any dimension that the library uses. */
bool guide_literal_parse(const char *text, size_t length, enum dimension *dimension,
			 enum unit *unit, double *si);

#endif
