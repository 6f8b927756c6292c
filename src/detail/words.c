/* SPDX-License-Identifier: MIT */
/* What the key says of each part, and the note below it. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "detail/scene.h"

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

static bool is_sheet(const struct scene_layer *l)
{
	return isfinite(l->up) && isfinite(l->side) && !scene_is(l, "foot") &&
	       !scene_is(l, "hook") && !scene_is(l, "block");
}

static void sheet_words(const struct scene *s, const struct scene_layer *l, char *text)
{
	if (fabs(l->down - l->up) < 1e-9 && fabs(l->up - l->side) < 1e-9) {
		append_size(s, text, l->up, " to every side");
		return;
	}
	if (!scene_is(l, "felt-strip"))
		append_size(s, text, l->down, " down");
	append_size(s, text, l->up, " up");
	append_size(s, text, l->side, " to each side");
}

void scene_layer_words(const struct scene *s, const struct scene_layer *l, char *text)
{
	char D[48], len[48];

	text[0] = '\0';
	append(text, "", l->label, "");
	if (scene_is(l, "screw") || scene_is(l, "bolt")) {
		append(text, ", ", size_words(s, D, sizeof D, l->diameter), " by ");
		append(text, "", size_words(s, len, sizeof len, l->length), "");
	} else if (scene_is(l, "rafter") || scene_is(l, "purlin"))
		append_size(s, text, l->thickness, " deep");
	else if (scene_is(l, "felt-strip") && isfinite(l->length))
		append_size(s, text, l->length, " wide");
	else if (is_sheet(l))
		sheet_words(s, l, text);
	else if (l->exposure > 0) {
		append_size(s, text, l->length, " long");
		append_size(s, text, l->exposure, " showing");
	} else if (isfinite(l->diameter)) {
		append_size(s, text, l->diameter, " across");
		if (!scene_is(l, "pipe") && !scene_is(l, "pipe-insulation"))
			append_size(s, text, l->height, " high");
	} else if (scene_is(l, "batten") || scene_is(l, "spaced-board")) {
		append_size(s, text, l->breadth, " wide");
		append_size(s, text, l->spacing, " apart");
	} else if (scene_is(l, "seam") || scene_is(l, "rib")) {
		append_size(s, text, l->height, " high");
		append_size(s, text, l->spacing, " apart");
	} else if (isfinite(l->height))
		append_size(s, text, l->height, " high");
	else
		append_size(s, text, l->thickness, " thick");
	if (l->of_job)
		append(text, "", " (this job)", "");
}

void scene_note(const struct scene *s, char *text)
{
	char pitch[32];

	pitch_print(pitch, sizeof pitch, s->theta);
	text[0] = '\0';
	if (s->plan)
		append(text, "", "Up the slope is up. Dashed: covered.", "");
	else if (s->along)
		append(text, "", "Cut along the course.", "");
	else
		append(text, s->theta_of_job ? "This roof's slope, " : "Drawn at a slope of ",
		       pitch, ". Up the slope is to the right.");
	append(text, " Sheets are drawn thicker than they are.",
	       s->theta_of_job ? " Sizes not marked `this job` are usual ones: measure."
			       : " Sizes are usual ones: measure on the roof.",
	       "");
}
