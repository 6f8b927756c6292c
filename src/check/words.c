/* SPDX-License-Identifier: MIT */
/* The words of checks, links, sections and remarks, expanded from the lists in result.h and remark.h. */
#include "check/result.h"

static const struct {
	enum link link;
	const char *words;
	enum unit unit;
} checks[CHECK_COUNT] = {
#define C(id, link, words, unit) { LINK_##link, words, UNIT_##unit },
	CHECKS(C)
#undef C
};

static const struct {
	enum remark_kind kind;
	const char *text;
} remarks[REMARK_COUNT] = {
#define R(id, kind, text) { REMARK_##kind, text },
	REMARKS(R)
#undef R
};

enum link check_link(enum check_id id)
{
	return checks[id].link;
}

const char *check_words(enum check_id id)
{
	return checks[id].words;
}

enum unit check_unit(enum check_id id)
{
	return checks[id].unit;
}

enum remark_kind remark_kind(enum remark_id id)
{
	return remarks[id].kind;
}

const char *remark_template(enum remark_id id)
{
	return remarks[id].text;
}

const char *link_words(enum link link)
{
	static const char *const words[LINK_COUNT] = { "collector", "rail", "foot", "fastener", "rafter" };

	return words[link];
}

const char *section_words(enum trace_section s)
{
	static const char *const words[SECTION_COUNT] = {
		"Wind: velocity pressure and zones", "Snow and roof live load", "Dead load",
		"Wind on the governing attachment",  "Fastener",                "Rail",
		"Rafter",
	};

	return words[s];
}
