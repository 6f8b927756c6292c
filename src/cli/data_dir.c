/* SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include "cli/data_dir.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#ifndef RP_DATA_DIR
#define RP_DATA_DIR "/usr/local/share/rafterproof"
#endif

#define LEVELS_UP 5

static bool join(char *buf, size_t size, const char *dir)
{
	const int n = snprintf(buf, size, "%s/details", dir);

	return n > 0 && (size_t)n < size;
}

/* A library, not any directory of that name. */
static bool holds_library(const char *details)
{
	char schema[4096 + 16];
	struct stat st;
	const int n = snprintf(schema, sizeof schema, "%s/covering.rng", details);

	return n > 0 && (size_t)n < sizeof schema && stat(schema, &st) == 0 && S_ISREG(st.st_mode);
}

static bool above_program(char *buf, size_t size)
{
	char path[4096];
	const ssize_t n = readlink("/proc/self/exe", path, sizeof path - 1);

	if (n <= 0)
		return false;
	path[n] = '\0';
	for (int i = 0; i < LEVELS_UP; i++) {
		char *slash = strrchr(path, '/');

		if (!slash)
			return false;
		*slash = '\0';
		if (join(buf, size, path) && holds_library(buf))
			return true;
	}
	return false;
}

bool data_dir_details(char *buf, size_t size)
{
	const char *set = getenv("RAFTERPROOF_DATA");

	if (set && *set)
		return join(buf, size, set);
	if (join(buf, size, RP_DATA_DIR) && holds_library(buf))
		return true;
	if (above_program(buf, size))
		return true;
	return join(buf, size, RP_DATA_DIR);
}
