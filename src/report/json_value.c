/* SPDX-License-Identifier: MIT */
#include "report/json_value.h"

#include <ctype.h>
#include <math.h>
#include <string.h>

/* 12 digits: the last bits of a conversion do not show, and no load is known half as well. */
#define FLAGS (JSON_INDENT(2) | JSON_REAL_PRECISION(12))

#ifndef RP_VERSION
#define RP_VERSION "unknown"
#endif

void put(struct json *j, json_t *object, const char *key, json_t *value)
{
	/* Releases the value by itself when it fails. */
	if (!value || json_object_set_new(object, key, value) != 0)
		j->failed = true;
}

json_t *put_object(struct json *j, json_t *parent, const char *key)
{
	json_t *object = json_object();

	put(j, parent, key, object);
	return j->failed ? NULL : object;
}

json_t *put_array(struct json *j, json_t *parent, const char *key)
{
	json_t *array = json_array();

	put(j, parent, key, array);
	return j->failed ? NULL : array;
}

json_t *append_object(struct json *j, json_t *array)
{
	json_t *object = json_object();

	if (!object || json_array_append_new(array, object) != 0)
		j->failed = true;
	return j->failed ? NULL : object;
}

void put_text(struct json *j, json_t *object, const char *key, const char *text)
{
	put(j, object, key,
	    text && *text ? json_string(document_text(j->f.document, "%s", text)) : json_null());
}

void put_bool(struct json *j, json_t *object, const char *key, bool value)
{
	put(j, object, key, json_boolean(value));
}

void put_int(struct json *j, json_t *object, const char *key, long long value)
{
	put(j, object, key, json_integer(value));
}

void put_number(struct json *j, json_t *object, const char *key, double value)
{
	put(j, object, key, isfinite(value) ? json_real(value) : json_null());
}

void put_exact(struct json *j, json_t *object, const char *key, double si, enum unit u)
{
	if (!isfinite(si)) {
		put(j, object, key, json_null());
		return;
	}
	json_t *quantity = put_object(j, object, key);

	put_number(j, quantity, "value", unit_from_si(si, u));
	put(j, quantity, "unit", json_string(unit_text(u)));
}

void put_quantity(struct json *j, json_t *object, const char *key, double si, enum unit us)
{
	put_exact(j, object, key, si, shown_unit(&j->f, us));
}

void put_id(struct json *j, json_t *object, const char *key, const char *name)
{
	char id[64];
	size_t n = 0;

	for (; name[n] && n + 1 < sizeof id; n++)
		id[n] = name[n] == '_' ? '-' : (char)tolower((unsigned char)name[n]);
	id[n] = '\0';
	put(j, object, key, json_string(id));
}

json_t *json_begin(struct json *j, const char *command, enum unit_system units)
{
	struct document *store = document_create(NULL);
	json_t *root = store ? json_object() : NULL;

	*j = (struct json){ .f = { .document = store, .units = units }, .failed = !root };
	if (!root)
		return NULL;
	put_int(j, root, "schema_version", JSON_SCHEMA_VERSION);
	json_t *program = put_object(j, root, "program");

	put_text(j, program, "name", "rafterproof");
	put_text(j, program, "version", RP_VERSION);
	put_text(j, root, "command", command);
	return root;
}

int json_end(struct json *j, json_t *root, FILE *f)
{
	int status = -1;

	if (!j->failed && !document_failed(j->f.document))
		status = json_dumpf(root, f, FLAGS) == 0 && fputc('\n', f) != EOF ? 0 : -1;
	json_decref(root);
	document_destroy(j->f.document);
	return status;
}
