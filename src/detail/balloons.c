/* SPDX-License-Identifier: MIT */
/* Numbers on both sides of the picture, each with a line to its part. */
#include <math.h>
#include <stdio.h>

#include "detail/scene.h"
#include "drawing/dimension.h"

struct balloon {
	struct point at; /* on paper */
	int number;
};

/* On which side of the way from a to b p lies. */
static bool left_of(struct point a, struct point b, struct point p)
{
	return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) > 0;
}

static bool cross(struct point a, struct point b, struct point c, struct point d)
{
	return left_of(a, b, c) != left_of(a, b, d) && left_of(c, d, a) != left_of(c, d, b);
}

/* Numbers change places until no two lines cross: each change makes the lines shorter in sum. */
static void untangle(struct balloon *b, int n, double x, const double *place)
{
	bool changed = true;

	for (int round = 0; changed && round < 100; round++) {
		changed = false;
		for (int i = 0; i < n; i++)
			for (int k = i + 1; k < n; k++) {
				const struct point p = {x, place[i]}, q = {x, place[k]};
				const struct balloon t = b[i];

				if (!cross(p, b[i].at, q, b[k].at))
					continue;
				b[i] = b[k];
				b[k] = t;
				changed = true;
			}
	}
}

static void put_column(struct scene *s, struct balloon *b, int n, double x, double low, double high)
{
	double place[DETAIL_LAYERS];

	for (int i = 1; i < n; i++)
		for (int k = i; k > 0 && b[k].at.y < b[k - 1].at.y; k--) {
			const struct balloon t = b[k];

			b[k] = b[k - 1];
			b[k - 1] = t;
		}
	for (int i = 0; i < n; i++)
		place[i] = fmin(fmax(b[i].at.y, low + i * 2.3 * SCENE_BALLOON),
				high - (n - 1 - i) * 2.3 * SCENE_BALLOON);
	dimension_spread(place, n, 2.3 * SCENE_BALLOON);
	untangle(b, n, x, place);
	for (int i = 0; i < n; i++) {
		const struct point c = {x, place[i]};
		const struct lettering_spec spec = {DETAIL_TEXT,   true, ANCHOR_CENTRE,
						    ANCHOR_MIDDLE, 0,    false};
		char text[16];

		drawing_line_as(s->d, LAYER_THIN, 0.18 * MM, DASH_SOLID, c, b[i].at);
		drawing_mark(s->d, LAYER_THIN, FILL_BLACK, b[i].at, 0.6 * MM);
		drawing_mark(s->d, LAYER_THIN, FILL_WHITE, c, SCENE_BALLOON);
		snprintf(text, sizeof text, "%d", b[i].number);
		drawing_text(s->d, LAYER_TEXT, c, spec, text);
	}
}

int scene_balloon_rows(const struct scene *s)
{
	int shown = 0;

	for (int i = 0; i < s->layers; i++)
		shown += s->layer[i].shown;
	return shown > 8 ? (shown + 1) / 2 : 4;
}

void scene_balloons(struct scene *s, struct box picture)
{
	struct balloon left[DETAIL_LAYERS], right[DETAIL_LAYERS];
	const int room = (int)((picture.y1 - picture.y0) / (2.3 * SCENE_BALLOON));
	int l = 0, r = 0, number = 0;

	for (int i = 0; i < s->layers; i++) {
		struct balloon b;

		if (!s->layer[i].shown)
			continue;
		b.at = drawing_on_paper(s->d, s->layer[i].at);
		b.number = ++number;
		if ((b.at.x < (picture.x0 + picture.x1) / 2 && l < room) || r >= room)
			left[l++] = b;
		else
			right[r++] = b;
	}
	drawing_view(s->d, VIEW_PAPER);
	put_column(s, left, l, SCENE_MARGIN + SCENE_BALLOON + 0.5 * MM, picture.y0 + SCENE_BALLOON,
		   picture.y1 - SCENE_BALLOON);
	put_column(s, right, r, DETAIL_WIDTH - SCENE_MARGIN - SCENE_BALLOON - 0.5 * MM,
		   picture.y0 + SCENE_BALLOON, picture.y1 - SCENE_BALLOON);
}
