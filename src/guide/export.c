/* SPDX-License-Identifier: MIT */
/* Writes the library out: every file as it was read, an index, and gzip copies on request. Two
   passes: all files are written whole beside their places, then renamed; so a full disk leaves
   nothing half-written behind. Nothing of the machine goes into a file: no date, no name, no host.
 */
#define _POSIX_C_SOURCE 200809L

#include "guide/guide.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include <zlib.h>

#include "guide/library.h"

#define NAME_ROOM 128
/* Stale parts of earlier runs are stepped over. */
#define PART_TRIES 100

struct export
{
	int dir;
	struct problem_list *problems;
	char(*part)[NAME_ROOM], (*name)[NAME_ROOM]; /* written beside, and their places */
	size_t files;
	bool compress;
};

static bool cannot(const struct export *x, enum problem_code code, const char *name,
		   const char *why)
{
	problem_add(x->problems, code, name, 0, NULL, why, NULL);
	return false;
}

/* ---- one file ---- */

static bool write_all(int fd, const unsigned char *data, size_t size)
{
	while (size > 0) {
		const ssize_t n = write(fd, data, size);

		if (n < 0 && errno == EINTR)
			continue;
		if (n <= 0)
			return false;
		data += n;
		size -= (size_t)n;
	}
	return true;
}

/* A pipe or a file system without fsync is no fault. */
static bool flushed(int fd)
{
	return fsync(fd) == 0 || errno == EINVAL || errno == ENOSYS || errno == EROFS;
}

static int open_part(const struct export *x, const char *name, char *part)
{
	int fd = -1;

	for (int i = 0; fd < 0 && i < PART_TRIES; i++) {
		snprintf(part, NAME_ROOM, ".%.80s.part%d", name, i);
		fd = openat(x->dir, part, O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC,
			    0666);
		if (fd < 0 && errno != EEXIST)
			break;
	}
	return fd;
}

static bool put(struct export *x, const char *name, const unsigned char *data, size_t size)
{
	char *part = x->part[x->files];
	const int fd = open_part(x, name, part);
	bool ok;

	if (fd < 0)
		return cannot(x, PROBLEM_CANNOT_WRITE, name, strerror(errno));
	snprintf(x->name[x->files++], NAME_ROOM, "%s", name);
	errno = 0;
	ok = write_all(fd, data, size) && flushed(fd);
	if (!ok)
		cannot(x, PROBLEM_CANNOT_WRITE, name, strerror(errno));
	if (close(fd) != 0 && ok)
		ok = cannot(x, PROBLEM_CANNOT_WRITE, name, strerror(errno));
	return ok;
}

/* ---- gzip ---- */

static bool deflate_to(z_stream *z, unsigned char *out, size_t room)
{
	/* fixed header: no time, no name, system "unknown", so that every machine writes the same
	 * bytes */
	gz_header header = {.os = 255};

	if (deflateSetHeader(z, &header) != Z_OK)
		return false;
	z->next_out = out;
	z->avail_out = (uInt)room;
	return deflate(z, Z_FINISH) == Z_STREAM_END;
}

/* data has at most GUIDE_FILE_MAX bytes, or is the index, so every size fits zlib's uInt. */
static bool put_gzip(struct export *x, const char *name, const unsigned char *data, size_t size)
{
	z_stream z = {.next_in = (Bytef *)(uintptr_t)data, .avail_in = (uInt)size};
	char gz[NAME_ROOM];
	unsigned char *out;
	size_t room;
	bool ok;

	snprintf(gz, sizeof gz, "%.80s.gz", name);
	if (deflateInit2(&z, 9, Z_DEFLATED, 15 + 16, 8, Z_DEFAULT_STRATEGY) != Z_OK)
		return cannot(x, PROBLEM_NO_MEMORY, gz, NULL);
	room = deflateBound(&z, (uLong)size);
	out = guide_take(room);
	ok = out && deflate_to(&z, out, room) && put(x, gz, out, room - z.avail_out);
	if (!out)
		cannot(x, PROBLEM_NO_MEMORY, gz, NULL);
	guide_give(out);
	deflateEnd(&z);
	return ok;
}

static bool put_both(struct export *x, const char *name, const char *data, size_t size)
{
	const unsigned char *bytes = (const unsigned char *)data;

	return put(x, name, bytes, size) && (!x->compress || put_gzip(x, name, bytes, size));
}

/* ---- index ---- */

/* Longest line: a name of 400 characters, every one escaped, and a key. */
#define INDEX_LINE_MAX 4096

static void escape(char *out, size_t size, const char *text)
{
	size_t n = 0;

	for (; *text != '\0' && n + 7 < size; text++) {
		const char *with = *text == '&'   ? "&amp;"
				   : *text == '<' ? "&lt;"
				   : *text == '"' ? "&quot;"
						  : NULL;

		if (with)
			n += (size_t)snprintf(out + n, size - n, "%s", with);
		else
			out[n++] = *text;
	}
	out[n] = '\0';
}

static size_t index_page(char *out, size_t size, struct guide_page page)
{
	static const char *const use[] = {[GUIDE_USE_YES] = "yes",
					  [GUIDE_USE_WITH_ROOFER] = "with-roofer",
					  [GUIDE_USE_REFUSED] = "no"};
	char name[INDEX_LINE_MAX - 256];

	escape(name, sizeof name, page.name);
	return (size_t)snprintf(out, size, "  <page key=\"%.60s\" name=\"%s\" guide=\"%s\"/>\n",
				page.key, name, use[page.use]);
}

static size_t index_file(char *out, size_t size, const struct guide_doc *doc)
{
	const unsigned long crc = crc32(0, (const Bytef *)doc->data, (uInt)doc->size);

	return (size_t)snprintf(out, size, "  <file name=\"%s\" bytes=\"%zu\" crc32=\"%08lx\"/>\n",
				doc->name, doc->size, crc);
}

static bool put_index(struct export *x, const struct guide_library *lib)
{
	const size_t room = (lib->page.count + lib->docs + 2) * INDEX_LINE_MAX;
	char *text = guide_take(room);
	size_t n;
	bool ok;

	if (!text)
		return cannot(x, PROBLEM_NO_MEMORY, GUIDE_INDEX, NULL);
	n = (size_t)snprintf(text, room,
			     "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
			     "<!-- SPDX-License-Identifier: MIT -->\n<index>\n"
			     "  <caution>Every page is to be confirmed before anybody opens a roof by it: the locally adopted "
			     "code, the instructions of the makers of covering and mount, and a licensed engineer come "
			     "before it.</caution>\n");
	for (size_t i = 0; i < lib->page.count; i++)
		n += index_page(text + n, room - n, guide_page_at(lib, i));
	for (size_t i = 0; i < lib->docs; i++)
		if (strcmp(lib->doc[i].name, GUIDE_INDEX) != 0)
			n += index_file(text + n, room - n, &lib->doc[i]);
	n += (size_t)snprintf(text + n, room - n, "</index>\n");
	ok = put_both(x, GUIDE_INDEX, text, n);
	guide_give(text);
	return ok;
}

/* ---- all of it ---- */

static bool put_library(struct export *x, const struct guide_library *lib)
{
	for (size_t i = 0; i < lib->docs; i++) {
		const struct guide_doc *doc = &lib->doc[i];

		if (strcmp(doc->name, GUIDE_INDEX) != 0 &&
		    !put_both(x, doc->name, doc->data, doc->size))
			return false;
	}
	return put_index(x, lib);
}

static bool settle(struct export *x, bool ok)
{
	size_t done = 0;

	while (ok && done < x->files) {
		ok = renameat(x->dir, x->part[done], x->dir, x->name[done]) == 0;
		if (ok)
			done++;
		else
			cannot(x, PROBLEM_CANNOT_WRITE, x->name[done], strerror(errno));
	}
	for (size_t i = done; i < x->files; i++)
		unlinkat(x->dir, x->part[i], 0);
	return ok;
}

static bool export_into(struct export *x, const struct guide_library *lib)
{
	/* plain and gzip of every file and of the index */
	const size_t room = (lib->docs + 1) * 2;
	bool ok;

	x->part = guide_take(room * sizeof x->part[0]);
	x->name = guide_take(room * sizeof x->name[0]);
	if (x->part && x->name)
		ok = settle(x, put_library(x, lib));
	else
		ok = cannot(x, PROBLEM_NO_MEMORY, NULL, NULL);
	guide_give(x->part);
	guide_give(x->name);
	return ok;
}

bool guide_export(const struct guide_library *lib, const char *outdir, bool compress,
		  struct problem_list *problems)
{
	struct export x = {.dir = -1, .problems = problems, .compress = compress};
	const bool made = mkdir(outdir, 0777) == 0;
	bool ok;

	x.dir = open(outdir, O_RDONLY | O_DIRECTORY | O_CLOEXEC);
	if (x.dir < 0) {
		cannot(&x, PROBLEM_CANNOT_WRITE, outdir, strerror(errno));
		return false;
	}
	ok = export_into(&x, lib);
	close(x.dir);
	if (!ok && made)
		rmdir(outdir);
	return ok;
}
