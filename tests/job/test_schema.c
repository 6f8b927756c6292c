/* SPDX-License-Identifier: MIT */
/* The schema made from the field table against the reader: both take each field's own example,
   fallback and words; both refuse wrong units and words; two validators (libxml2's and jing)
   agree. */
#define _POSIX_C_SOURCE 200809L

#include <libxml/parser.h>
#include <libxml/relaxng.h>
#include <libxml/tree.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "example.h"
#include "job/element.h"
#include "job/job.h"
#include "job/value.h"
#include "near.h"

static xmlRelaxNGPtr schema;
static char dir[] = "/tmp/schema-test-XXXXXX";
static int good_files, bad_files;

/* The example, with what it has none of: measured rafters and a coefficient. */
static xmlDocPtr template_document(void)
{
	char text[EXAMPLE_MAX];
	xmlDocPtr document;

	example_read(text);
	example_change(text, "ties=\"yes\"/>",
		       "ties=\"yes\"><rafter at=\"8 in\"/><rafter at=\"2 ft 0 in\"/></framing>");
	example_change(text, "</job>",
		       "<coefficient zone=\"1\" GCp=\"-2\" area=\"9 ft2\" source=\"page 1\"/>"
		       "<snow/><live/><earthquake/><existing/></job>");
	document = xmlReadMemory(text, (int)strlen(text), "template.xml", NULL, XML_PARSE_NONET);
	assert_non_null(document);
	return document;
}

static xmlNodePtr find_element(xmlNodePtr from, const char *name)
{
	for (xmlNodePtr n = from; n; n = n->next) {
		xmlNodePtr inside;

		if (n->type != XML_ELEMENT_NODE)
			continue;
		if (strcmp((const char *)n->name, name) == 0)
			return n;
		inside = find_element(n->children, name);
		if (inside)
			return inside;
	}
	return NULL;
}

static void say_nothing(void *context, const char *message, ...)
{
	(void)context;
	(void)message;
}

static bool valid(xmlDocPtr document)
{
	xmlRelaxNGValidCtxtPtr context = xmlRelaxNGNewValidCtxt(schema);
	int result;

	assert_non_null(context);
	xmlRelaxNGSetValidErrors(context, say_nothing, say_nothing, NULL);
	result = xmlRelaxNGValidateDoc(context, document);
	xmlRelaxNGFreeValidCtxt(context);
	return result == 0;
}

/* Sets one attribute of the template, asks the first validator, and keeps the document for the
   second. */
static void check(const struct field *f, const char *value, bool want)
{
	xmlDocPtr document = template_document();
	xmlNodePtr node = find_element(document->children, f->element);
	char path[100];

	/* an element that the example leaves out is put in with what it cannot do without */
	if (!node) {
		const enum element parent = element_table[element_of(f->id)].parent;

		node = xmlNewChild(find_element(document->children, element_table[parent].name), NULL,
				   (const xmlChar *)f->element, NULL);
		for (size_t i = 0; i < FIELD_COUNT; i++)
			if (field_table[i].need == NEED_REQUIRED &&
			    strcmp(field_table[i].element, f->element) == 0)
				xmlSetProp(node, (const xmlChar *)field_table[i].attribute,
					   (const xmlChar *)field_table[i].example);
	}
	assert_non_null(node);
	xmlSetProp(node, (const xmlChar *)f->attribute, (const xmlChar *)value);
	if (valid(document) != want)
		fail_msg("%s.%s=`%s` is %s by the schema", f->element, f->attribute, value,
			 want ? "refused" : "accepted");
	snprintf(path, sizeof path, "%s/%s-%d.xml", dir, want ? "good" : "bad",
		 want ? good_files++ : bad_files++);
	assert_true(xmlSaveFile(path, document) > 0);
	xmlFreeDoc(document);
}

/* The reader's verdict on the same value. */
static bool reader_takes(const struct field *f, const char *value)
{
	static struct job job;
	char row[sizeof(struct job_coefficient) + sizeof(struct job_pipe)];

	if (value_may_be_unknown(f) && strcmp(value, "unknown") == 0)
		return true;
	return value_store(f, field_repeats(f) ? (void *)row : (void *)&job, value) == PROBLEM_NONE;
}

static void check_both(const struct field *f, const char *value, bool want)
{
	check(f, value, want);
	if (reader_takes(f, value) != want)
		fail_msg("%s.%s=`%s` is %s by the reader", f->element, f->attribute, value,
			 want ? "refused" : "accepted");
}

static void test_every_field(void **state)
{
	(void)state;
	for (size_t i = 0; i < FIELD_COUNT; i++) {
		const struct field *f = &field_table[i];

		check_both(f, f->example, true);
		if (f->fallback)
			check_both(f, f->fallback, true);
		for (const struct field_choice *c = f->choice; c && c->word; c++)
			check_both(f, c->word, true);
		if (value_may_be_unknown(f))
			check_both(f, "unknown", true);
		else if (f->type == FIELD_QUANTITY || f->type == FIELD_NUMBER ||
			 f->type == FIELD_INTEGER)
			check_both(f, "unknown", false);
		if (f->type == FIELD_QUANTITY) {
			check_both(f, "5", false);
			check_both(f, "5 smoots", false);
			check_both(f, f->dimension == DIM_LENGTH ? "5 lb" : "5 ft", false);
			check_both(f, "", false);
		}
		if (f->type == FIELD_INTEGER) {
			check_both(f, "1.5", false);
			check_both(f, "0", false);
			check_both(f, "2 in", false);
		}
		if (f->type == FIELD_NUMBER)
			check_both(f, "5 in", false);
		if (f->choice)
			check_both(f, "no-such-word", false);
		if (f->type == FIELD_SIZE)
			check_both(f, "six by two", false);
	}
}

static const struct {
	enum field_id id;
	const char *value;
	bool good;
} spelling[] = {
	{FIELD_COLLECTOR_LEFT, "12 ft", true},
	{FIELD_COLLECTOR_LEFT, "12ft", true},
	{FIELD_COLLECTOR_LEFT, " 12  ft ", true},
	{FIELD_COLLECTOR_LEFT, "12 ft 6 in", true},
	{FIELD_COLLECTOR_LEFT, "12 ft 6-1/2 in", true},
	{FIELD_COLLECTOR_LEFT, "12 ft 6 1/2 in", true},
	{FIELD_COLLECTOR_LEFT, "12 ft 1/2 in", true},
	{FIELD_COLLECTOR_LEFT, "12' 6\"", true},
	{FIELD_COLLECTOR_LEFT, "12'-6\"", true},
	{FIELD_COLLECTOR_LEFT, "12'6-1/2\"", true},
	{FIELD_COLLECTOR_LEFT, "12\xE2\x80\xB2 6\xE2\x80\xB3", true},
	{FIELD_COLLECTOR_LEFT, "12\xE2\x80\x99 6\xE2\x80\x9D", true},
	{FIELD_COLLECTOR_LEFT, "3.66 m", true},
	{FIELD_COLLECTOR_LEFT, "3.66e0 m", true},
	{FIELD_COLLECTOR_LEFT, "366.E-2 m", true},
	{FIELD_COLLECTOR_LEFT, ".5 m", true},
	{FIELD_COLLECTOR_LEFT, "144-3/8 in", true},
	{FIELD_COLLECTOR_LEFT, "+12 ft", true},
	{FIELD_COLLECTOR_LEFT, "12,5 ft", false},
	{FIELD_COLLECTOR_LEFT, "12.5 ft 6 in", false},
	{FIELD_COLLECTOR_LEFT, "12 ft 6", false},
	{FIELD_COLLECTOR_LEFT, "6 in 12 ft", false},
	{FIELD_COLLECTOR_LEFT, "12 ft2", false},
	{FIELD_COLLECTOR_LEFT, "12 feet", false},
	{FIELD_COLLECTOR_LEFT, "12 FT", false},
	{FIELD_COLLECTOR_LEFT, "5/0 ft", false},
	{FIELD_COLLECTOR_LEFT, "1/ ft", false},
	{FIELD_COLLECTOR_LEFT, ". ft", false},
	{FIELD_COLLECTOR_LEFT, "12 ft ft", false},
	{FIELD_ROOF_PITCH, "6:12", true},
	{FIELD_ROOF_PITCH, "6 : 12", true},
	{FIELD_ROOF_PITCH, "5-1/2:12", true},
	{FIELD_ROOF_PITCH, "26.6 deg", true},
	{FIELD_ROOF_PITCH, "26.6\xC2\xB0", true},
	{FIELD_ROOF_PITCH, "50 %", true},
	{FIELD_ROOF_PITCH, "50%", true},
	{FIELD_ROOF_PITCH, "0.4 rad", true},
	{FIELD_ROOF_PITCH, "6/12", false},
	{FIELD_ROOF_PITCH, "6:", false},
	{FIELD_ROOF_PITCH, "6:12:1", false},
	{FIELD_ROOF_PITCH, "6 in 12", false},
	{FIELD_SITE_WIND_SPEED, "51.4 m/s", true},
	{FIELD_SITE_WIND_SPEED, "185 km/h", true},
	{FIELD_SITE_WIND_SPEED, "115 MPH", false},
	{FIELD_SITE_GROUND_SNOW, "1.44 kPa", true},
	{FIELD_SITE_GROUND_SNOW, "1.44 kN/m2", true},
	{FIELD_SITE_GROUND_SNOW, "146 kg/m2", true},
	{FIELD_SITE_GROUND_SNOW, "30 psi net", false},
	{FIELD_COLLECTOR_DRY_WEIGHT, "105 lbs", true},
	{FIELD_COLLECTOR_DRY_WEIGHT, "48 kg", true},
	{FIELD_COLLECTOR_FLUID_VOLUME, "3 L", true},
	{FIELD_COLLECTOR_FLUID_VOLUME, "3 litres", false},
	{FIELD_RAIL_ALLOWABLE_MOMENT, "500 ft lb", true},
	{FIELD_RAIL_ALLOWABLE_MOMENT, "0.7 kN m", true},
	{FIELD_RAIL_ALLOWABLE_MOMENT, "500 lb", false},
	{FIELD_PIPE_TEMPERATURE, "-10 degC", true},
	{FIELD_PIPE_TEMPERATURE,
	 "180 \xC2\xB0"
	 "C",
	 true},
	{FIELD_PIPE_TEMPERATURE, "180 deg", false},
	{FIELD_COEFFICIENT_GCP, "-2.25", true},
	{FIELD_COEFFICIENT_GCP, "-20", false},
	{FIELD_COLLECTOR_COLUMNS, "65", false},
	{FIELD_FRAMING_SIZE, "2 x 6", true},
	{FIELD_FRAMING_SIZE, "2x6-full-sawn", true},
	{FIELD_JOB_TITLE, "", true},
	{FIELD_COEFFICIENT_SOURCE, "p", true},
};

static void test_spellings(void **state)
{
	(void)state;
	for (size_t i = 0; i < sizeof spelling / sizeof spelling[0]; i++)
		check_both(&field_table[spelling[i].id], spelling[i].value, spelling[i].good);
}

/* Documents that are wrong as a whole. */
static void test_structure(void **state)
{
	static const struct {
		const char *from, *to;
	} wrong[] = {
		{"wind-speed=\"115 mph\"", ""},
		{"wind-speed=", "wind_speed="},
		{"<pipe diameter=\"1/4 in\"/>", "<pip diameter=\"1/4 in\"/>"},
		{"<pipe diameter=\"1/4 in\"/>", "<rafter at=\"3 in\"/>"},
		{"<pipe diameter=\"1/4 in\"/>", "a note"},
		{"<pipe diameter=\"1/4 in\"/>",
		 "<rail kind=\"rails\" lower-inset=\"1 in\" upper-inset=\"1 in\"/>"},
		{"<rail kind=\"rails\" lower-inset=\"16 in\" upper-inset=\"16 in\"/>", ""},
	};
	char text[EXAMPLE_MAX], path[100];

	(void)state;
	for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++) {
		xmlDocPtr document;

		example_read(text);
		example_change(text, wrong[i].from, wrong[i].to);
		document =
			xmlReadMemory(text, (int)strlen(text), "wrong.xml", NULL, XML_PARSE_NONET);
		assert_non_null(document);
		if (valid(document))
			fail_msg("`%s` is accepted", wrong[i].to);
		snprintf(path, sizeof path, "%s/bad-%d.xml", dir, bad_files++);
		assert_true(xmlSaveFile(path, document) > 0);
		xmlFreeDoc(document);
	}
}

/* jing on everything that the tests before have kept: every good file passes, every bad one is
   named. */
static void test_second_validator(void **state)
{
	static bool named[2000];
	char command[300], line[2000];
	FILE *out;
	int count = 0;

	(void)state;
	assert_true(good_files > 300 && bad_files > 100 && bad_files < 2000);
	snprintf(command, sizeof command, "'%s' '%s' %s/good-*.xml 2>&1 | grep -v '^\\[warning\\]'",
		 JING, SCHEMA_FILE, dir);
	out = popen(command, "r");
	assert_non_null(out);
	while (fgets(line, sizeof line, out))
		fail_msg("%s", line);
	pclose(out);
	snprintf(command, sizeof command, "'%s' '%s' %s/bad-*.xml 2>/dev/null", JING, SCHEMA_FILE,
		 dir);
	out = popen(command, "r");
	assert_non_null(out);
	while (fgets(line, sizeof line, out)) {
		const char *const at = strstr(line, "/bad-");
		const int n = at ? atoi(at + 5) : -1;

		if (n >= 0 && n < bad_files && !named[n]) {
			named[n] = true;
			count++;
		}
	}
	pclose(out);
	for (int i = 0; i < bad_files; i++)
		if (!named[i])
			print_error("bad-%d.xml is accepted\n", i);
	assert_int_equal(count, bad_files);
	print_message("%d good and %d bad documents\n", good_files, bad_files);
}

static int open_schema(void **state)
{
	xmlRelaxNGParserCtxtPtr context = xmlRelaxNGNewParserCtxt(SCHEMA_FILE);

	(void)state;
	if (!context || !mkdtemp(dir))
		return -1;
	schema = xmlRelaxNGParse(context);
	xmlRelaxNGFreeParserCtxt(context);
	return schema ? 0 : -1;
}

static int close_schema(void **state)
{
	char command[100];

	(void)state;
	xmlRelaxNGFree(schema);
	xmlRelaxNGCleanupTypes();
	xmlCleanupParser();
	snprintf(command, sizeof command, "rm -r %s", dir);
	return system(command);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_every_field),
		cmocka_unit_test(test_spellings),
		cmocka_unit_test(test_structure),
		cmocka_unit_test(test_second_validator),
	};

	return cmocka_run_group_tests(tests, open_schema, close_schema);
}
