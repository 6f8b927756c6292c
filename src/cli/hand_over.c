/* SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include "cli/hand_over.h"

#include <errno.h>
#include <stdio.h>
#include <string.h>
#include <unistd.h>

#define DRAWER "rafterproof-draw"

/* As configured: where private programs go, and the way there from where programs go. */
#ifndef RP_LIBEXEC_DIR
#define RP_LIBEXEC_DIR "/usr/local/libexec"
#endif
#ifndef RP_LIBEXEC_FROM_BIN
#define RP_LIBEXEC_FROM_BIN "../libexec"
#endif

#define PATH_SIZE 4096

/* Directory of this program; false where the system does not tell. */
static bool own_directory(char *buf, size_t size)
{
	const ssize_t n = readlink("/proc/self/exe", buf, size - 1);

	if (n <= 0)
		return false;
	buf[n] = '\0';
	char *const slash = strrchr(buf, '/');

	if (slash)
		*slash = '\0';
	return slash;
}

/* Returns only if there is no such program to start. */
static void become(const char *dir, const char *way, const struct options *o, int *why)
{
	char path[PATH_SIZE + 256];
	const int n = snprintf(path, sizeof path, "%s%s/" DRAWER, dir, way);

	if (n <= 0 || (size_t)n >= sizeof path)
		return;
	execv(path, o->argv);
	if (errno != ENOENT && errno != ENOTDIR)
		*why = errno;
}

enum exit_status hand_over(const struct options *o, struct problem_list *problems)
{
	char dir[PATH_SIZE];
	int why = 0;

	/* where it was built, where it was moved to as a whole, where it was to be installed */
	if (own_directory(dir, sizeof dir)) {
		become(dir, "", o, &why);
		become(dir, "/" RP_LIBEXEC_FROM_BIN, o, &why);
	}
	become(RP_LIBEXEC_DIR, "", o, &why);
	problem_add(problems, why == ENOMEM ? PROBLEM_NO_MEMORY : PROBLEM_CANNOT_READ, DRAWER, 0, NULL,
	            why ? strerror(why) : NULL, "the program that draws, installed with this one");
	return EXIT_MACHINE;
}
