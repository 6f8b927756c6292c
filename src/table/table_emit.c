/* SPDX-License-Identifier: MIT */
/* The C text of the tables. Numbers keep the unit that the table prints; a fraction is written as
   its value in 17 digits. */
#include "table/table_emit.h"

#include <ctype.h>
#include <string.h>

static const char made_by[] =
	"/* SPDX-License-Identifier: MIT */\n"
	"/* Made by src/table/generate.c from the files in tables/. Change those, not this. */\n";

/* Runs of white space become one blank; everything that C or a trigraph could take amiss is
   escaped. */
static void emit_string(FILE *out, const char *text)
{
	bool blank = false, begun = false;

	if (text == NULL) {
		fputs("NULL", out);
		return;
	}
	fputc('"', out);
	for (const unsigned char *p = (const unsigned char *)text; *p != '\0'; p++) {
		if (isspace(*p)) {
			blank = begun;
			continue;
		}
		if (blank)
			fputc(' ', out);
		blank = false;
		begun = true;
		if (*p == '"' || *p == '\\' || *p == '?')
			fprintf(out, "\\%c", *p);
		else if (*p < 0x20 || *p > 0x7e)
			fprintf(out, "\\%03o", *p);
		else
			fputc(*p, out);
	}
	fputc('"', out);
}

/* Upper case, hyphens as underscores: safe-side gives SAFE_SIDE. */
static void emit_upper(FILE *out, const char *word)
{
	for (; *word != '\0'; word++)
		fputc(*word == '-' ? '_' : toupper((unsigned char)*word), out);
}

static void emit_choice(FILE *out, const struct table_file *table, const struct table_column *c,
			const char *word)
{
	emit_upper(out, table->identifier);
	fputc('_', out);
	emit_upper(out, c->name);
	fputc('_', out);
	emit_upper(out, word);
}

static void emit_enum(FILE *out, const struct table_file *table, const struct table_column *c)
{
	fprintf(out, "enum %s_%s {\n", table->identifier, c->name);
	for (size_t i = 0; i < c->choices; i++) {
		fputc('\t', out);
		emit_choice(out, table, c, c->choice[i]);
		fputs(",\n", out);
	}
	fputc('\t', out);
	emit_choice(out, table, c, "count");
	fputs("\n};\n", out);
}

static void emit_member(FILE *out, const struct table_file *table, const struct table_column *c)
{
	switch (c->type) {
	case COLUMN_NUMBER:
	case COLUMN_FRACTION:
		fprintf(out, "\tdouble %s;", c->member);
		break;
	case COLUMN_INTEGER:
		/* An absent integer could not be told from a number, so it is a double too. */
		fprintf(out, "\t%s %s;", c->optional ? "double" : "int", c->member);
		break;
	case COLUMN_TEXT:
	case COLUMN_KEY:
		fprintf(out, "\tconst char *%s;", c->member);
		break;
	case COLUMN_EDITION:
		fprintf(out, "\tenum edition %s;", c->member);
		break;
	case COLUMN_CHOICE:
		fprintf(out, "\tenum %s_%s %s;", table->identifier, c->name, c->member);
		break;
	case COLUMN_TYPE_COUNT:
		break;
	}
	fprintf(out, " /* %s%s%s%s */\n", c->meaning, *c->unit == '\0' ? "" : ", ", c->unit,
		c->optional ? "; may be absent" : "");
}

static void emit_structure(FILE *out, const struct table_file *table)
{
	fprintf(out, "\n/* %s. %s, %s. */\n", table->title, table->standard, table->clause);
	for (size_t i = 0; i < table->columns; i++)
		if (table->column[i].type == COLUMN_CHOICE)
			emit_enum(out, table, &table->column[i]);
	fprintf(out, "struct %s_row {\n", table->identifier);
	for (size_t i = 0; i < table->columns; i++)
		emit_member(out, table, &table->column[i]);
	fputs("\tenum confidence status;\n\tconst char *source, *note;\n};\n", out);
	fputs("enum { TABLE_", out);
	emit_upper(out, table->identifier);
	fprintf(out, "_COUNT = %zu };\nextern const struct %s_row table_%s[TABLE_", table->rows,
		table->identifier, table->identifier);
	emit_upper(out, table->identifier);
	fputs("_COUNT];\n", out);
}

static bool doubted(const struct table_row *r)
{
	return strcmp(r->status, "CONFIRMED") != 0 && strcmp(r->status, "DERIVED") != 0;
}

static size_t doubts_of(const struct table_file *table, size_t tables)
{
	size_t n = 0;

	for (size_t i = 0; i < tables; i++)
		for (size_t k = 0; k < table[i].rows; k++)
			n += doubted(&table[i].row[k]);
	return n;
}

void table_emit_header(FILE *out, const struct table_file *table, size_t tables)
{
	fputs(made_by, out);
	fputs("#ifndef RP_TABLE_TABLES_H\n#define RP_TABLE_TABLES_H\n\n"
	      "#include <stddef.h>\n\n#include \"step/step.h\"\n",
	      out);
	for (size_t i = 0; i < tables; i++)
		emit_structure(out, &table[i]);
	fprintf(out,
		"\n/* What a table says of itself. `status` counts its rows by confidence. */\n"
		"struct table_info {\n"
		"\tconst char *name, *title, *standard, *clause, *source;\n"
		"\tsize_t rows;\n"
		"\tsize_t status[CONFIDENCE_COUNT];\n"
		"};\n"
		"enum { TABLE_COUNT = %zu };\n"
		"extern const struct table_info table_info[TABLE_COUNT];\n",
		tables);
	fprintf(out,
		"\n/* A row that is not confirmed: its columns in words. */\n"
		"struct table_doubt {\n"
		"\tconst char *table, *row;\n"
		"\tenum confidence status;\n"
		"\tconst char *source, *note;\n"
		"};\n"
		"enum { TABLE_DOUBT_COUNT = %zu };\n"
		"extern const struct table_doubt table_doubt[TABLE_DOUBT_COUNT];\n\n#endif\n",
		doubts_of(table, tables));
}

static void emit_value(FILE *out, const struct table_file *table, const struct table_column *c,
		       const struct table_row *r, size_t i)
{
	const char *text = r->value[i];

	switch (c->type) {
	case COLUMN_NUMBER:
		/* As printed, so that the array can be read against the page; a bare integer needs
		   its point. */
		if (text == NULL)
			fputs("NAN", out);
		else
			fprintf(out, "%s%s", text, strchr(text, '.') == NULL ? ".0" : "");
		break;
	case COLUMN_FRACTION:
		if (text == NULL)
			fputs("NAN", out);
		else
			fprintf(out, "%#.17g", r->number[i]);
		break;
	case COLUMN_INTEGER:
		fputs(text == NULL ? "NAN" : text, out);
		break;
	case COLUMN_TEXT:
	case COLUMN_KEY:
		emit_string(out, text);
		break;
	case COLUMN_EDITION:
		fputs(table_edition_name(text), out);
		break;
	case COLUMN_CHOICE:
		emit_choice(out, table, c, text);
		break;
	case COLUMN_TYPE_COUNT:
		break;
	}
}

static void emit_row(FILE *out, const struct table_file *table, const struct table_row *r)
{
	fputs("\t{ ", out);
	for (size_t i = 0; i < table->columns; i++) {
		fprintf(out, ".%s = ", table->column[i].member);
		emit_value(out, table, &table->column[i], r, i);
		fputs(", ", out);
	}
	fprintf(out, ".status = %s, .source = ", r->status);
	emit_string(out, r->source == NULL ? table->source : r->source);
	fputs(", .note = ", out);
	emit_string(out, r->note);
	fputs(" },\n", out);
}

static void emit_array(FILE *out, const struct table_file *table)
{
	fprintf(out, "\nconst struct %s_row table_%s[TABLE_", table->identifier, table->identifier);
	emit_upper(out, table->identifier);
	fputs("_COUNT] = {\n", out);
	for (size_t i = 0; i < table->rows; i++)
		emit_row(out, table, &table->row[i]);
	fputs("};\n", out);
}

static void emit_info(FILE *out, const struct table_file *table)
{
	const char *seen = NULL;

	fputs("\t{ ", out);
	emit_string(out, table->name);
	fputs(", ", out);
	emit_string(out, table->title);
	fputs(", ", out);
	emit_string(out, table->standard);
	fputs(", ", out);
	emit_string(out, table->clause);
	fputs(", ", out);
	emit_string(out, table->source);
	fprintf(out, ", %zu, { ", table->rows);
	for (size_t i = 0; i < table->rows; i++) {
		size_t earlier = 0, count = 0;

		seen = table->row[i].status;
		for (size_t k = 0; k < i; k++)
			earlier += strcmp(table->row[k].status, seen) == 0;
		if (earlier > 0)
			continue;
		for (size_t k = i; k < table->rows; k++)
			count += strcmp(table->row[k].status, seen) == 0;
		fprintf(out, "[%s] = %zu, ", seen, count);
	}
	fputs("} },\n", out);
}

/* "edition 7-16, zone 2, GCp -1.8": every column that the row fills, joined into one literal. */
static void emit_doubt(FILE *out, const struct table_file *table, const struct table_row *r)
{
	const char *separator = "";

	fputs("\t{ ", out);
	emit_string(out, table->name);
	fputs(", ", out);
	for (size_t i = 0; i < table->columns; i++) {
		if (r->value[i] == NULL)
			continue;
		fprintf(out, "\"%s%s \" ", separator, table->column[i].name);
		emit_string(out, r->value[i]);
		separator = ", ";
		if (*table->column[i].unit != '\0')
			fprintf(out, " \" %s\"", table->column[i].unit);
		fputc(' ', out);
	}
	fprintf(out, ", %s, ", r->status);
	emit_string(out, r->source == NULL ? table->source : r->source);
	fputs(", ", out);
	emit_string(out, r->note);
	fputs(" },\n", out);
}

static void emit_doubts(FILE *out, const struct table_file *table, size_t tables)
{
	fputs("\nconst struct table_doubt table_doubt[TABLE_DOUBT_COUNT] = {\n", out);
	for (size_t i = 0; i < tables; i++)
		for (size_t k = 0; k < table[i].rows; k++)
			if (doubted(&table[i].row[k]))
				emit_doubt(out, &table[i], &table[i].row[k]);
	fputs("};\n", out);
}

void table_emit_source(FILE *out, const struct table_file *table, size_t tables)
{
	fputs(made_by, out);
	fputs("#include \"table/tables.h\"\n\n#include <math.h>\n", out);
	for (size_t i = 0; i < tables; i++)
		emit_array(out, &table[i]);
	fputs("\nconst struct table_info table_info[TABLE_COUNT] = {\n", out);
	for (size_t i = 0; i < tables; i++)
		emit_info(out, &table[i]);
	fputs("};\n", out);
	emit_doubts(out, table, tables);
}
