/* SPDX-License-Identifier: MIT */
/* The paper: title, picture with numbers on both sides, key in words, what the picture is not. */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "detail/scene.h"

#define COLUMN (10 * MM)          /* of numbers, on each side of the picture */
#define PICTURE_HEIGHT (120 * MM) /* at most */
#define LINE (1.32 * DETAIL_TEXT)
#define TITLE (1.15 * DETAIL_TEXT)
#define BAR_ROOM (9 * MM)

static const double scales[] = {2,  2.5, 3,  4,  5,  6,  7,  8,  9,  10,
				11, 12,  14, 16, 18, 20, 25, 30, 40, 50};

static double choose_scale(const struct scene *s)
{
	const double need =
		fmax((s->bound.x1 - s->bound.x0) / (DETAIL_WIDTH - 2 * SCENE_MARGIN - 2 * COLUMN),
		     (s->bound.y1 - s->bound.y0) / PICTURE_HEIGHT);

	for (size_t i = 0; i < sizeof scales / sizeof *scales; i++)
		if (scales[i] >= need)
			return scales[i];
	return ceil(need / 10) * 10;
}

/* ---- text in lines ---- */

static size_t fitting(const struct scene *s, const char *text, double width,
		      struct lettering_style style)
{
	size_t best = 0, end = 0;
	char line[SCENE_TEXT];

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

/* Sets text downward from `at`, or only counts its lines when nothing is drawn yet. */
static int set_text(const struct scene *s, struct point at, double width, double size, bool bold,
		    const char *text)
{
	const struct lettering_style style = {size, bold, false};
	const struct lettering_spec spec = {size, bold, ANCHOR_LEFT, ANCHOR_TOP, 0, false};
	int lines = 0;

	while (*text) {
		const size_t n = fitting(s, text, width, style);
		char line[SCENE_TEXT];

		memcpy(line, text, n);
		line[n] = '\0';
		if (s->d)
			drawing_text(s->d, LAYER_TEXT, at, spec, line);
		at.y -= 1.32 * size;
		lines++;
		text += n;
		while (*text == ' ')
			text++;
	}
	return lines;
}

#define KEY_INDENT (2 * SCENE_BALLOON + 2 * MM)

/* Key and note below y; returns the y below them. */
static double set_key(const struct scene *s, double y)
{
	const double width = DETAIL_WIDTH - 2 * SCENE_MARGIN;
	char text[SCENE_TEXT];
	int number = 0;

	for (int i = 0; i < s->layers; i++) {
		if (!s->layer[i].shown)
			continue;
		scene_layer_words(s, &s->layer[i], text);
		if (s->d) {
			char n[16];
			const struct lettering_spec spec = {DETAIL_TEXT, true, ANCHOR_RIGHT,
							    ANCHOR_TOP,  0,    false};

			snprintf(n, sizeof n, "%d", number + 1);
			drawing_text(s->d, LAYER_TEXT,
				     (struct point){SCENE_MARGIN + 2 * SCENE_BALLOON, y}, spec, n);
		}
		number++;
		y -= LINE * set_text(s, (struct point){SCENE_MARGIN + KEY_INDENT, y},
				     width - KEY_INDENT, DETAIL_TEXT, false, text);
	}
	y -= 1.5 * MM;
	scene_note(s, text);
	return y -
	       LINE *
		       set_text(s, (struct point){SCENE_MARGIN, y}, width, DETAIL_TEXT,
				false, text) -
	       1 * MM;
}

/* ---- scale ---- */

static void put_bar(const struct scene *s, double y)
{
	const double world = s->units == SYSTEM_SI ? 0.1 : 6 * M_PER_IN, length = world / s->scale;
	const struct lettering_spec spec = {DETAIL_TEXT, false, ANCHOR_LEFT,
					    ANCHOR_MIDDLE,      0,     false};
	const char *bar = s->units == SYSTEM_SI ? "100 mm" : "6 in";
	char text[64];

	/* a page may show the drawing smaller: the bar shrinks with it */
	if (s->resized)
		snprintf(text, sizeof text, "%s", bar);
	else
		snprintf(text, sizeof text, "%s; scale 1:%g when 110 mm wide", bar, s->scale);
	drawing_shape(s->d, LAYER_DIM, 0.2 * MM, FILL_BLACK,
		      (const struct point[]){{SCENE_MARGIN, y},
					     {SCENE_MARGIN + length / 2, y},
					     {SCENE_MARGIN + length / 2, y + 1.2 * MM},
					     {SCENE_MARGIN, y + 1.2 * MM}},
		      4);
	drawing_shape(s->d, LAYER_DIM, 0.2 * MM, FILL_WHITE,
		      (const struct point[]){{SCENE_MARGIN + length / 2, y},
					     {SCENE_MARGIN + length, y},
					     {SCENE_MARGIN + length, y + 1.2 * MM},
					     {SCENE_MARGIN + length / 2, y + 1.2 * MM}},
		      4);
	drawing_text(s->d, LAYER_TEXT, (struct point){SCENE_MARGIN + length + 2 * MM, y + 0.6 * MM},
		     spec, text);
}

/* What the picture shows, for those who cannot see it: the key in one sentence. */
static void describe(const struct scene *s)
{
	char text[4096], one[SCENE_TEXT];
	size_t n = 0;
	int number = 0;

	text[0] = '\0';
	for (int i = 0; i < s->layers && n < sizeof text - SCENE_TEXT; i++) {
		if (!s->layer[i].shown)
			continue;
		scene_layer_words(s, &s->layer[i], one);
		n += (size_t)snprintf(text + n, sizeof text - n, "%s%d: %s",
				      n         ? "; "
				      : s->plan ? "Parts. "
						: "Parts, from the inside outwards. ",
				      ++number, one);
	}
	snprintf(text + n, sizeof text - n, ".");
	drawing_set_title(s->d, s->title, text);
}

/* Painting decides which layers show and so how long the key is: painted once on a sheet that is
 * thrown away. */
static bool paint(struct scene *s, double height, double top)
{
	const double width = DETAIL_WIDTH - 2 * SCENE_MARGIN - 2 * COLUMN;
	const double w = (s->bound.x1 - s->bound.x0) / s->scale,
		     h = (s->bound.y1 - s->bound.y0) / s->scale;
	const struct point corner = {SCENE_MARGIN + COLUMN + (width - w) / 2, top - h};

	s->d = drawing_create(s->lettering, DETAIL_WIDTH, height, NULL);
	if (!s->d)
		return false;
	for (int i = 0; i < s->layers; i++)
		s->layer[i].shown = false;
	drawing_view(s->d, (struct view){{corner.x - s->bound.x0 / s->scale,
					  corner.y - s->bound.y0 / s->scale},
					 1 / s->scale,
					 s->plan ? 0 : s->theta});
	if (s->plan)
		plan_paint(s);
	else
		section_paint(s);
	return true;
}

/* The laps below the scale, and what they are; returns the y below them. */
static double set_laps(const struct scene *s, double y)
{
	const double width = DETAIL_WIDTH - 2 * SCENE_MARGIN, size = DETAIL_TEXT,
		     height = scene_laps_height(s, width);
	char text[SCENE_TEXT];

	if (!(height > 0))
		return y;
	if (s->d)
		scene_laps(s, SCENE_MARGIN, y - height, width);
	snprintf(text, sizeof text,
		 "The same laps laid flat, about %.0f times as thick. Thin line: the way of the "
		 "water.",
		 scene_laps_ratio(s));
	y -= height + 1.5 * MM;
	return y -
	       1.32 * size *
		       set_text(s, (struct point){SCENE_MARGIN, y}, width, size, false, text) -
	       2 * MM;
}

struct drawing *scene_sheet(struct scene *s)
{
	const double width = DETAIL_WIDTH - 2 * SCENE_MARGIN;
	double picture, head, height, top;

	s->scale = choose_scale(s);
	s->paper = s->scale * MM;
	picture = (s->bound.y1 - s->bound.y0) / s->scale;
	if (!paint(s, 1, 1))
		return NULL;
	drawing_destroy(s->d);
	s->d = NULL;
	/* room for the numbers of both sides even beside a low picture */
	picture = fmax(picture, scene_balloon_rows(s) * 2.3 * SCENE_BALLOON + SCENE_BALLOON);
	head = 1.32 * TITLE * set_text(s, (struct point){0, 0}, width, TITLE, true, s->title) +
	       2 * MM;
	height = SCENE_MARGIN + head + picture + BAR_ROOM - set_key(s, set_laps(s, 0)) +
		 SCENE_MARGIN;
	top = height - SCENE_MARGIN - head;
	if (!paint(s, height, top))
		return NULL;
	scene_balloons(s, (struct box){SCENE_MARGIN + COLUMN, top - picture,
				       DETAIL_WIDTH - SCENE_MARGIN - COLUMN, top});
	drawing_view(s->d, VIEW_PAPER);
	set_text(s, (struct point){SCENE_MARGIN, height - SCENE_MARGIN}, width, TITLE, true,
		 s->title);
	put_bar(s, top - picture - 5 * MM);
	set_key(s, set_laps(s, top - picture - BAR_ROOM));
	describe(s);
	if (drawing_failed(s->d)) {
		drawing_destroy(s->d);
		return NULL;
	}
	return s->d;
}
