/* SPDX-License-Identifier: MIT */
/* generate OUT.h OUT.c TABLE.xml ...: turns the published tables into C when the program is built.
   Every fault of every file is told before it gives up; on a fault nothing is written. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "table/table_emit.h"
#include "table/table_file.h"

#define FILE_MAX 64

typedef void emit_function(FILE *out, const struct table_file *table, size_t tables);

static bool write_file(const char *path, emit_function *emit, const struct table_file *table,
		       size_t tables)
{
	FILE *out = fopen(path, "w");
	bool good = out != NULL;

	if (good) {
		emit(out, table, tables);
		good = !ferror(out);
		good = fclose(out) == 0 && good;
	}
	if (!good)
		fprintf(stderr, "%s: cannot be written\n", path);
	return good;
}

static bool names_differ(const struct table_file *table, size_t tables)
{
	bool good = true;

	for (size_t i = 0; i < tables; i++)
		for (size_t k = 0; k < i; k++)
			if (strcmp(table[i].name, table[k].name) == 0) {
				fprintf(stderr, "%s: table %s stands in %s already\n",
					table[i].path, table[i].name, table[k].path);
				good = false;
			}
	return good;
}

int main(int argc, char **argv)
{
	static struct table_file table[FILE_MAX];
	size_t tables = 0;
	bool good = true;

	if (argc < 4 || argc > 3 + FILE_MAX) {
		fprintf(stderr, "usage: generate OUT.h OUT.c TABLE.xml ... (at most %d)\n",
			FILE_MAX);
		return EXIT_FAILURE;
	}
	for (int i = 3; i < argc; i++)
		good = table_file_read(argv[i], &table[tables++]) && good;
	good = good && names_differ(table, tables) &&
	       write_file(argv[1], table_emit_header, table, tables) &&
	       write_file(argv[2], table_emit_source, table, tables);
	for (size_t i = 0; i < tables; i++)
		table_file_free(&table[i]);
	return good ? EXIT_SUCCESS : EXIT_FAILURE;
}
