/* SPDX-License-Identifier: MIT */
#include "sheet/sheet.h"

#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

#include "report/check_part.h"
#include "report/utf8.h"

bool sheet_open(struct sheet *s, const struct job *job, const struct result *r,
		const struct lettering *lettering, const struct guide_library *library)
{
	*s = (struct sheet){.job = job,
			    .r = r,
			    .pass = &r->pass[r->judged],
			    .lettering = lettering,
			    .library = library,
			    .f = {document_create(NULL), job->units}};
	fingerprint_print(s->fingerprint, job_fingerprint(job));
	return s->f.document != NULL;
}

bool sheet_on_seams(const struct job *job)
{
	return job->fastener.kind == FASTENER_SEAM_CLAMP;
}

bool sheet_has_screw(const struct job *job)
{
	return !sheet_on_seams(job) && job->fastener.diameter > 0 && job->fastener.length > 0;
}

void sheet_close(struct sheet *s)
{
	document_destroy(s->f.document);
}

const char *sheet_text(const struct sheet *s, const char *format, ...)
{
	char text[1024];
	va_list args;

	va_start(args, format);
	vsnprintf(text, sizeof text, format, args);
	va_end(args);
	return document_text(s->f.document, "%s", text);
}

/* "13 ft 6-1/2 in" as 13'-6 1/2", "18 in" as 18", "3/4 in" as 3/4". */
static const char *short_tape(const struct sheet *s, const char *tape)
{
	char out[64];
	size_t n = 0;
	const char *p = tape;

	if (*p == '-') {
		out[n++] = '-';
		p++;
	}
	while (*p && n < sizeof out - 4) {
		if (strncmp(p, " ft ", 4) == 0) {
			out[n++] = '\'';
			out[n++] = '-';
			p += 4;
		} else if (strncmp(p, " in", 3) == 0) {
			out[n++] = '"';
			p += 3;
		} else {
			out[n++] = *p == '-' ? ' ' : *p;
			p++;
		}
	}
	out[n] = '\0';
	return sheet_text(s, "%s", out);
}

const char *sheet_tape(const struct sheet *s, double m)
{
	char buf[64];

	if (s->f.units == SYSTEM_SI)
		return sheet_text(s, "%s", number_print(buf, sizeof buf, m / 0.001, 0));
	return short_tape(s, tape_print(buf, sizeof buf, m, SYSTEM_US, 8));
}

const char *sheet_size(const struct sheet *s, double m)
{
	const double parts = m / M_PER_IN * 64;
	char buf[64];

	if (isnan(m))
		return "not known";
	if (s->f.units == SYSTEM_SI)
		return sheet_text(
			s, "%s",
			quantity_print(
				buf, sizeof buf, m, UNIT_MM,
				fabs(m) < 0.02 && fabs(m * 1000 - round(m * 1000)) > 0.05 ? 1 : 0));
	return sheet_text(s, "%s",
			  tape_print(buf, sizeof buf, m, SYSTEM_US,
				     fabs(parts - round(parts)) < 1e-6 ? 64 : 16));
}

const char *sheet_shank(const struct sheet *s, double D)
{
	const double parts = D / M_PER_IN * 64;

	if (isnan(D) || s->f.units == SYSTEM_SI || fabs(parts - round(parts)) < 1e-6)
		return sheet_size(s, D);
	return show_decimals(&s->f, D, UNIT_IN, 3);
}

const char *sheet_tails(const struct sheet *s)
{
	const double left = s->job->framing.tail_depth;
	bool any = false;

	for (int i = 0; s->pass && i < s->pass->rafters; i++)
		any = any || s->pass->rafter[i].tail;
	if (!any)
		return NULL;
	return sheet_text(s,
			  "The array loads the rafters' tails outside the wall: %s left of the rafter "
			  "above the notch at the wall, each tail one piece with its rafter.",
			  isfinite(left) ? sheet_text(s, "at least %s", sheet_size(s, left))
					 : "measure what is");
}

const char *sheet_block_thread(const struct sheet *s)
{
	if (s->r->block.feet == 0)
		return "";
	const char *rafter = sheet_size(s, s->r->fastener.p_t);
	const char *block = sheet_size(s, s->r->block.p_t);

	return strcmp(rafter, block) == 0 ? " or block" : sheet_text(s, ", %s in a block", block);
}

const char *sheet_block_nail(const struct sheet *s)
{
	const struct block_result *b = &s->r->block;

	/* the one nail that the check takes for them */
	return sheet_text(s, "16d (%s x %s)", sheet_shank(s, b->nail_D), sheet_size(s, b->nail_L));
}

const char *sheet_drill(const struct sheet *s, double low, double high)
{
	const double step = s->f.units == SYSTEM_SI ? 0.0001 : M_PER_IN / 64;
	/* 1e-6 of a step: 7/32 in must not become 13/64 by its last bits */
	const double up = ceil(low / step - 1e-6) * step, down = floor(high / step + 1e-6) * step;

	/* A range narrower than a step has no drill in it but the nearest. */
	if (up > down)
		return sheet_size(s, round((low + high) / 2 / step) * step);
	return sheet_text(s, "%s to %s", sheet_size(s, up), sheet_size(s, down));
}

const char *sheet_unit_note(const struct sheet *s)
{
	return s->f.units == SYSTEM_SI ? "Dimensions in mm." : "";
}

/* Something of the chain was not checked; the first sheet tells what. */
static bool has_gaps(const struct sheet *s)
{
	const struct part p = {.d = s->f.document, .f = s->f, .job = s->job, .r = s->r, .pass = s->pass};

	return s->r->passes > 0 && *part_not_checked(&p);
}

const char *sheet_verdict(const struct sheet *s)
{
	switch (s->r->verdict) {
	case HOLDS:
		return has_gaps(s) ? "HOLDS as far as checked" : "HOLDS";
	case DOES_NOT_HOLD:
		return "DOES NOT HOLD - not to be built";
	case NEEDS_ENGINEER:
		return "NEEDS AN ENGINEER - not to be built from";
	}
	return "";
}

static const struct scale plan_us[] = {
	{12, "1 in = 1 ft (1:12)"},      {16, "3/4 in = 1 ft (1:16)"},
	{24, "1/2 in = 1 ft (1:24)"},    {32, "3/8 in = 1 ft (1:32)"},
	{48, "1/4 in = 1 ft (1:48)"},    {64, "3/16 in = 1 ft (1:64)"},
	{96, "1/8 in = 1 ft (1:96)"},    {128, "3/32 in = 1 ft (1:128)"},
	{192, "1/16 in = 1 ft (1:192)"}, {384, "1/32 in = 1 ft (1:384)"},
};
static const struct scale plan_si[] = {
	{10, "1:10"},   {20, "1:20"},   {25, "1:25"},   {50, "1:50"},
	{75, "1:75"},   {100, "1:100"}, {125, "1:125"}, {150, "1:150"},
	{200, "1:200"}, {250, "1:250"}, {500, "1:500"},
};
static const struct scale detail_us[] = {
	{1, "full size (1:1)"},       {2, "6 in = 1 ft (1:2)"},   {4, "3 in = 1 ft (1:4)"},
	{8, "1-1/2 in = 1 ft (1:8)"}, {12, "1 in = 1 ft (1:12)"}, {16, "3/4 in = 1 ft (1:16)"},
	{24, "1/2 in = 1 ft (1:24)"}, {32, "3/8 in = 1 ft (1:32)"}, {48, "1/4 in = 1 ft (1:48)"},
	{96, "1/8 in = 1 ft (1:96)"},
};
static const struct scale detail_si[] = {
	{1, "1:1"}, {2, "1:2"}, {5, "1:5"}, {10, "1:10"}, {20, "1:20"}, {25, "1:25"}, {50, "1:50"},
};

static struct scale choose(const struct sheet *s, const struct scale *list, size_t n, double need)
{
	for (size_t i = 0; i < n; i++)
		if (list[i].ratio >= need)
			return list[i];
	const double ratio = ceil(need / 100) * 100;

	return (struct scale){ratio, sheet_text(s, "1:%ld", lround(ratio))};
}

#define LENGTH(a) (sizeof(a) / sizeof *(a))

struct scale scale_for_plan(const struct sheet *s, double width, double height, double room_x,
			    double room_y)
{
	const double need = fmax(width / room_x, height / room_y);

	if (s->f.units == SYSTEM_SI)
		return choose(s, plan_si, LENGTH(plan_si), need);
	return choose(s, plan_us, LENGTH(plan_us), need);
}

struct scale scale_for_detail(const struct sheet *s, double width, double height, double room_x,
			      double room_y)
{
	const double need = fmax(width / room_x, height / room_y);

	if (s->f.units == SYSTEM_SI)
		return choose(s, detail_si, LENGTH(detail_si), need);
	return choose(s, detail_us, LENGTH(detail_us), need);
}

struct scale scale_for_screen(const struct sheet *s, double width, double height, double room_x,
			      double room_y)
{
	const double need = fmax(1, fmax(width / room_x, height / room_y)),
		     step = fmax(1, pow(10, floor(log10(need)) - 1)),
		     ratio = ceil(need / step - 1e-9) * step;

	return (struct scale){ratio, sheet_text(s, "1:%ld on a screen %.0f mm wide", lround(ratio),
						SHEET_NARROW.width / MM)};
}

double sheet_width(const struct sheet *s, const char *text, double size)
{
	return lettering_width(s->lettering, text, (struct lettering_style){size, false, false});
}

/* Bytes of the longest start of text that fits, broken at a blank where there is one. */
static size_t fitting(const struct sheet *s, const char *text, double width,
		      struct lettering_style style)
{
	size_t best = 0, end = 0;
	char line[512];

	while (text[end] && end < sizeof line - 1) {
		do
			end++;
		while (text[end] && text[end] != ' ' && end < sizeof line - 1);
		memcpy(line, text, end);
		line[end] = '\0';
		if (lettering_width(s->lettering, line, style) > width && best > 0)
			break;
		best = end;
	}
	return best;
}

static double paragraph(const struct sheet *s, struct drawing *d, struct point at, double width,
			struct lettering_style style, const char *text)
{
	const struct lettering_spec spec = {style.size, style.bold, ANCHOR_LEFT,
					    ANCHOR_TOP, 0,          false};

	while (*text) {
		const size_t n = fitting(s, text, width, style);
		char line[512];

		memcpy(line, text, n);
		line[n] = '\0';
		drawing_text(d, LAYER_TEXT, at, spec, line);
		at.y -= 1.35 * style.size;
		text += n;
		while (*text == ' ')
			text++;
	}
	return at.y;
}

double sheet_paragraph(const struct sheet *s, struct drawing *d, struct point at, double width,
		       double size, const char *text)
{
	return paragraph(s, d, at, width, (struct lettering_style){size, false, false}, text);
}

double sheet_heading(const struct sheet *s, struct drawing *d, struct point at, double width,
		     double size, const char *text)
{
	return paragraph(s, d, at, width, (struct lettering_style){size, true, false}, text);
}
