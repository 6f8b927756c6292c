/* SPDX-License-Identifier: MIT */
/* Opens a job file safely, reads it whole, and takes it through the XML, the overrides, the
   defaults and the checks. */
#define _POSIX_C_SOURCE 200809L

#include "job/job_read.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "job/draft.h"
#include "job/validate.h"

static void tell(struct problem_list *problems, enum problem_code code, const char *path,
		 const char *given, const char *accepted)
{
	problem_add(problems, code, path, 0, NULL, given, accepted);
}

static const char *file_kind(mode_t mode)
{
	if (S_ISDIR(mode))
		return "a directory";
	if (S_ISFIFO(mode))
		return "a pipe";
	if (S_ISCHR(mode) || S_ISBLK(mode))
		return "a device";
	return "a socket or link";
}

/* Opens path if it is a regular file of an allowed size. -1, told, if not. A pipe must not hold
   us up, a terminal not become ours: hence the flags. */
static int open_regular(const char *path, struct problem_list *problems)
{
	const int fd = open(path, O_RDONLY | O_NONBLOCK | O_NOCTTY | O_CLOEXEC);
	struct stat about;

	if (fd < 0) {
		tell(problems, PROBLEM_CANNOT_OPEN, path, strerror(errno),
		     "a job file that can be read");
		return -1;
	}
	if (fstat(fd, &about) != 0)
		tell(problems, PROBLEM_CANNOT_READ, path, strerror(errno), NULL);
	else if (!S_ISREG(about.st_mode))
		tell(problems, PROBLEM_NOT_A_FILE, path, file_kind(about.st_mode), "a job file");
	else if (about.st_size > (off_t)JOB_FILE_MAX)
		tell(problems, PROBLEM_TOO_LARGE, path, NULL, "at most 1 MiB");
	else
		return fd;
	close(fd);
	return -1;
}

/* Reads to the end of the file; a file that has grown beyond max since it was looked at is too
   large after all. */
static bool read_all(int fd, const char *path, char *buf, size_t max, size_t *n,
		     struct problem_list *problems)
{
	*n = 0;
	for (;;) {
		const ssize_t got = read(fd, buf + *n, max + 1 - *n);

		if (got < 0 && errno == EINTR)
			continue;
		if (got < 0) {
			tell(problems, PROBLEM_CANNOT_READ, path, strerror(errno), NULL);
			return false;
		}
		if (got == 0)
			return true;
		*n += (size_t)got;
		if (*n > max) {
			tell(problems, PROBLEM_TOO_LARGE, path, NULL, "at most 1 MiB");
			return false;
		}
	}
}

bool job_read_memory(const char *name, const char *bytes, size_t size, const char *const *overrides,
		     size_t n, struct job *job, struct problem_list *problems)
{
	const size_t before = problems->count + problems->dropped;
	struct draft *d;

	if (size > JOB_FILE_MAX) {
		tell(problems, PROBLEM_TOO_LARGE, name, NULL, "at most 1 MiB");
		return false;
	}
	d = malloc(sizeof *d);
	if (!d) {
		tell(problems, PROBLEM_NO_MEMORY, name, NULL, NULL);
		return false;
	}
	draft_start(d, name, job, problems);
	draft_read_xml(d, bytes, size);
	/* what a document that breaks off does not say is not missing, and its rows cannot be
	   counted */
	if (!d->stopped) {
		for (size_t i = 0; i < n; i++)
			draft_override(d, overrides[i]);
		draft_fill(d);
		job_validate(job, &d->source, problems);
	}
	free(d);
	return problems->count + problems->dropped == before;
}

bool job_read_file(const char *path, const char *const *overrides, size_t n, struct job *job,
		   struct problem_list *problems)
{
	const int fd = open_regular(path, problems);
	char *buf;
	size_t size;
	bool good;

	if (fd < 0)
		return false;
	buf = malloc(JOB_FILE_MAX + 1);
	if (!buf)
		tell(problems, PROBLEM_NO_MEMORY, path, NULL, NULL);
	good = buf && read_all(fd, path, buf, JOB_FILE_MAX, &size, problems);
	close(fd);
	good = good && job_read_memory(path, buf, size, overrides, n, job, problems);
	free(buf);
	return good;
}
