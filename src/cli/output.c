/* SPDX-License-Identifier: MIT */
#define _XOPEN_SOURCE 700 /* realpath */
#include "cli/output.h"

#include <errno.h>
#include <fcntl.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

bool output_begin(struct output *o, struct problem_list *problems)
{
	*o = (struct output){ .f = NULL };
	o->f = open_memstream(&o->bytes, &o->size);
	if (!o->f)
		problem_add(problems, PROBLEM_NO_MEMORY, "rafterproof", 0, NULL, NULL, NULL);
	return o->f;
}

/* 0, or the errno of what went wrong. */
static int write_all(int fd, const char *bytes, size_t size)
{
	while (size > 0) {
		const ssize_t n = write(fd, bytes, size);

		if (n < 0 && errno != EINTR)
			return errno;
		if (n > 0) {
			bytes += n;
			size -= (size_t)n;
		}
	}
	return 0;
}

static int write_and_close(int fd, const struct output *o, bool sync)
{
	int why = write_all(fd, o->bytes, o->size);

	if (why == 0 && sync && fsync(fd) != 0)
		why = errno;
	if (close(fd) != 0 && why == 0)
		why = errno;
	return why;
}

static int write_direct(const struct output *o, const char *path)
{
	const int fd = open(path, O_WRONLY | O_NOCTTY);

	return fd < 0 ? errno : write_and_close(fd, o, false);
}

/* Rights of the file that is replaced, else those a new file would get. */
static mode_t rights(const struct stat *old)
{
	if (old)
		return old->st_mode & 0777;
	const mode_t mask = umask(0);

	umask(mask);
	return 0666 & ~mask;
}

static int write_beside(const struct output *o, const char *target, mode_t mode)
{
	char beside[OUTPUT_PATH_MAX + 8];
	const size_t n = strlen(target);

	if (n >= OUTPUT_PATH_MAX)
		return ENAMETOOLONG;
	memcpy(beside, target, n);
	memcpy(beside + n, ".XXXXXX", 8);
	const int fd = mkstemp(beside);

	if (fd < 0)
		return errno;
	int why = fchmod(fd, mode) != 0 ? errno : 0;
	const int written = write_and_close(fd, o, true);

	if (why == 0)
		why = written;
	if (why == 0 && rename(beside, target) != 0)
		why = errno;
	if (why != 0)
		unlink(beside);
	return why;
}

static int write_file(const struct output *o, const char *path)
{
	struct stat old;

	if (stat(path, &old) != 0)
		return write_beside(o, path, rights(NULL));
	if (S_ISDIR(old.st_mode))
		return EISDIR;
	if (!S_ISREG(old.st_mode))
		return write_direct(o, path);
	/* Behind symbolic links, which stay. */
	char *target = realpath(path, NULL);
	const int why = target ? write_beside(o, target, rights(&old)) : errno;

	free(target);
	return why;
}

bool output_end(struct output *o, const char *path, bool keep, struct problem_list *problems)
{
	const bool whole = fclose(o->f) == 0;
	int why = 0;

	if (!whole)
		problem_add(problems, PROBLEM_NO_MEMORY, "rafterproof", 0, NULL, NULL, NULL);
	else if (keep)
		why = path ? write_file(o, path) : write_all(STDOUT_FILENO, o->bytes, o->size);
	free(o->bytes);
	if (why != 0 && why != EPIPE)
		problem_add(problems, PROBLEM_CANNOT_WRITE, path ? path : "standard output", 0,
		            NULL, NULL, strerror(why));
	return whole && why == 0;
}
