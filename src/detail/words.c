/* SPDX-License-Identifier: MIT */
/* What the key says of each part, and the note below it. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "detail/scene.h"

/* The long axis of an oval hole is told to the nearest of these. */
#define OVAL_STEP (M_PER_IN / 16)

/* 4-1/2 in, 0.019 in, 38 mm, 1.8 mm. */
static const char *size_words(const struct scene *s, char *buf, size_t size, double m)
{
	const double parts = m / M_PER_IN * 32;

	if (s->units == SYSTEM_SI)
		return quantity_print(buf, size, m, UNIT_MM, m < 0.00495 ? 1 : 0);
	if (m < M_PER_IN / 33 || (m < M_PER_IN / 4 && fabs(parts - round(parts)) > 0.01))
		return quantity_print(buf, size, m, UNIT_IN, 3);
	if (m < 2 * M_PER_FT - 1e-9)
		return tape_print(buf, size, m, SYSTEM_US, 32);
	/* a detail is read in inches alone */
	const double whole = floor(round(parts) / 32), rest = m - whole * M_PER_IN;
	char fraction[32];

	if (rest < M_PER_IN / 64)
		return quantity_print(buf, size, whole * M_PER_IN, UNIT_IN, 0);
	snprintf(buf, size, "%.0f-%s", whole,
		 tape_print(fraction, sizeof fraction, rest, SYSTEM_US, 32));
	return buf;
}

static void append(char *text, const char *before, const char *words, const char *after)
{
	const size_t n = strlen(text);

	snprintf(text + n, SCENE_TEXT - n, "%s%s%s", before, words, after);
}

static void append_size(const struct scene *s, char *text, double m, const char *after)
{
	char buf[48];

	if (isfinite(m) && m > 0)
		append(text, ", ", size_words(s, buf, sizeof buf, m), after);
}

static bool is_sheet(const struct detail_layer *l)
{
	return isfinite(l->up) && isfinite(l->side) && !layer_is(l, "foot") &&
	       !layer_is(l, "hook") && !layer_is(l, "block");
}

static void sheet_words(const struct scene *s, const struct detail_layer *l, char *text)
{
	if (fabs(l->down - l->up) < 1e-9 && fabs(l->up - l->side) < 1e-9) {
		append_size(s, text, l->up, " to every side");
		return;
	}
	if (!layer_is(l, "felt-strip"))
		append_size(s, text, l->down, " down");
	append_size(s, text, l->up, " up");
	append_size(s, text, l->side, " to each side");
}

/* The hole that a sleeve goes through: an oval where the sleeve is plumb. */
static void hole_words(const struct scene *s, const struct detail_layer *l, char *text)
{
	const double across = l->diameter + 2 * l->gap,
		     axis = across / (l->plumb ? cos(s->theta) : 1);
	char buf[48];

	if (l->gap > 0) {
		append(text, ", hole ", size_words(s, buf, sizeof buf, across), " across");
		append_size(s, text, round(axis / OVAL_STEP) * OVAL_STEP, " up the slope");
	}
	append(text, l->of_job ? " (this job)" : "", "", "");
}

/* A size that was not told yet. */
static void append_untold(const struct scene *s, char *text, double m, const char *after)
{
	char one[SCENE_TEXT] = "";

	append_size(s, one, m, after);
	if (*one && !strstr(text, one))
		append(text, "", one, "");
}

/* What the drawing cannot show to scale, or shows of one piece only. */
static void rest_words(const struct scene *s, const struct detail_layer *l, char *text)
{
	if (l->thickness < M_PER_IN / 10)
		append_untold(s, text, l->thickness, " thick");
	append_untold(s, text, l->breadth, " wide");
	append_untold(s, text, l->spacing, " apart");
	if (layer_is(l, "panel"))
		append_untold(s, text, l->gap, " of room round the hole");
}

/* Which of the sizes told of a layer are the job's. */
struct told {
	bool usual;            /* some are not */
	char list[SCENE_TEXT]; /* those that are */
};

static void look_at(const struct scene *s, const char *text, double m, double usual, struct told *k)
{
	char words[48], told[50];

	if (!(isfinite(m) && m > 0))
		return;
	snprintf(told, sizeof told, " %s", size_words(s, words, sizeof words, m));
	if (!strstr(text, told))
		return;
	if (fabs(m - usual) < 1e-9)
		k->usual = true;
	else if (!strstr(k->list, told))
		append(k->list, *k->list ? "," : "", told, "");
}

static void append_mark(const struct scene *s, const struct detail_layer *l, char *text)
{
	struct told k = {false, ""};

#define S(member, name) look_at(s, text, l->member, l->usual.member, &k);
	LAYER_SIZES(S)
#undef S
	if (k.usual && *k.list)
		append(text, " (this job:", k.list, ")");
	else
		append(text, " (this job)", "", "");
}

void scene_layer_words(const struct scene *s, const struct detail_layer *l, char *text)
{
	char D[48], len[48];

	text[0] = '\0';
	append(text, "", l->label, "");
	if (layer_is(l, "screw") || layer_is(l, "bolt")) {
		append(text, ", ", size_words(s, D, sizeof D, l->diameter), " by ");
		append(text, "", size_words(s, len, sizeof len, l->length), "");
	} else if (layer_is(l, "rafter") || layer_is(l, "purlin"))
		append_size(s, text, l->thickness, " deep");
	else if (layer_is(l, "felt-strip") && isfinite(l->length)) {
		append_size(s, text, l->length, " wide");
		append_size(s, text, l->exposure, " apart");
	} else if (is_sheet(l))
		sheet_words(s, l, text);
	else if (l->exposure > 0) {
		append_size(s, text, l->length, " long");
		append_size(s, text, l->exposure, " showing");
	} else if (isfinite(l->diameter)) {
		append_size(s, text, l->diameter, " across");
		if (layer_is(l, "sleeve") && s->plan) {
			hole_words(s, l, text);
			return;
		}
		if (layer_is(l, "sleeve") || layer_is(l, "boot") || layer_is(l, "patch") ||
		    layer_is(l, "post"))
			append_size(s, text, l->height,
				    s->wall ? " out from the sheathing" : " up from the deck");
		else if (!layer_is(l, "pipe") && !layer_is(l, "pipe-insulation"))
			append_size(s, text, l->height, " high");
	} else if (layer_is(l, "batten") || layer_is(l, "spaced-board")) {
		append_size(s, text, l->breadth, " wide");
		append_size(s, text, l->spacing, " apart");
	} else if (layer_is(l, "seam") || layer_is(l, "rib")) {
		append_size(s, text, l->height, " high");
		append_size(s, text, l->spacing, " apart");
	} else if (isfinite(l->height))
		append_size(s, text, l->height, " high");
	else
		append_size(s, text, l->thickness, " thick");
	rest_words(s, l, text);
	if (l->of_job)
		append_mark(s, l, text);
}

static void seam_note(const struct scene *s, char *text)
{
	char least[48];

	if (s->boot_too_wide)
		append(text, " This pan is too narrow for this boot, which leaves less than ",
		       size_words(s, least, sizeof least, SEAM_CLEAR),
		       " to the seams: take a curb as wide as the pan.");
}

void scene_note(const struct scene *s, char *text)
{
	char pitch[32];

	pitch_print(pitch, sizeof pitch, s->theta);
	text[0] = '\0';
	if (s->plan)
		append(text, "", "Up the slope is up. Dashed: covered.", "");
	else if (s->wall)
		append(text, "", "Cut through the wall. Outside is to the left.", "");
	else if (s->along)
		append(text, "", "Cut along the course.", "");
	else
		append(text, s->theta_of_job ? "This roof's slope, " : "Drawn at a slope of ",
		       pitch, ". Up the slope is to the right.");
	if (s->post_least > 0) {
		char least[48];

		append(text, " The post of this job is too short for this flashing: it needs ",
		       size_words(s, least, sizeof least,
				  ceil(s->post_least / M_PER_IN * 2 - 1e-6) / 2 * M_PER_IN),
		       " or more.");
	}
	seam_note(s, text);
	append(text, " Sheets are drawn thicker than they are.",
	       s->theta_of_job ? " Sizes not marked `this job` are usual ones: measure."
	       : s->wall       ? " Sizes are usual ones: measure on the wall."
			       : " Sizes are usual ones: measure on the roof.",
	       "");
}
