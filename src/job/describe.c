/* SPDX-License-Identifier: MIT */
/* Build-time program: `describe rng` and `describe mdoc` write to standard output. */
#include "job/describe.h"

#include <string.h>

#include "job/value.h"

const char *describe_domain(char *buf, size_t size, const struct field *f)
{
	char us[100], si[100];

	buf[0] = '\0';
	switch (f->type) {
	case FIELD_QUANTITY:
		value_range(us, sizeof us, f, SYSTEM_US);
		value_range(si, sizeof si, f, SYSTEM_SI);
		if (strcmp(us, si) == 0)
			snprintf(buf, size, "%s", us);
		else
			snprintf(buf, size, "%s (%s)", us, si);
		break;
	case FIELD_NUMBER:
		snprintf(buf, size, "a number, %s", value_range(us, sizeof us, f, SYSTEM_US));
		break;
	case FIELD_INTEGER:
		snprintf(buf, size, "a whole number, %s", value_range(us, sizeof us, f, SYSTEM_US));
		break;
	case FIELD_CHOICE:
		snprintf(buf, size, "one of the words below");
		break;
	case FIELD_KEY:
		snprintf(buf, size, "%s", f->choice ? "one of the words below" : "a key");
		break;
	case FIELD_SIZE:
		snprintf(buf, size, "a lumber size");
		break;
	case FIELD_TEXT:
		snprintf(buf, size, "a text of at most %zu letters", f->size - 1);
		break;
	}
	return buf;
}

const char *describe_need(char *buf, size_t size, const struct field *f)
{
	switch (f->need) {
	case NEED_REQUIRED:
		snprintf(buf, size, "Required.");
		break;
	case NEED_DEFAULT:
		snprintf(buf, size, "When left out: %s.", f->fallback);
		break;
	case NEED_ASSUMED:
		snprintf(buf, size,
			 "When left out or unknown: %s is assumed, and named in the report.",
			 f->fallback);
		break;
	case NEED_OPTIONAL:
		snprintf(buf, size, "May be left out.");
		break;
	}
	return buf;
}

int main(int argc, char **argv)
{
	if (argc == 2 && strcmp(argv[1], "rng") == 0)
		describe_rng(stdout);
	else if (argc == 2 && strcmp(argv[1], "mdoc") == 0)
		describe_mdoc(stdout);
	else {
		fprintf(stderr, "usage: describe rng | mdoc\n");
		return 2;
	}
	/* a schema that was cut short must not be installed */
	if (fflush(stdout) != 0 || ferror(stdout) || fclose(stdout) != 0) {
		perror("describe");
		return 1;
	}
	return 0;
}
