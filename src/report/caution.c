/* SPDX-License-Identifier: MIT */
#include "report/caution.h"

#include <stddef.h>

const char caution_result[] =
	"This is a check, to be confirmed before anybody builds on it: the locally adopted code, "
        "the instructions "
	"of the makers of collector, mount and covering, and a licensed engineer come before it.";

const char *const caution_roof_work[] = {
	"Falls kill. No work on a roof without protection against falling that is set up for this "
	"roof, nor alone, "
	"nor on wet, icy or windy days.",
	"Look for power lines before a ladder, a rail or a collector is lifted.",
	"Deck, covering and framing may be rotten or too weak to walk on: look from below first.",
	"A collector in the sun is hot enough to burn and to scald: cover it until it is filled "
	"and running.",
	"Stop when the house differs from what is written above: run the check again with what was "
	"found.",
	NULL,
};
