/* SPDX-License-Identifier: MIT */
#include "sheet/flashing_plan.h"

#include <math.h>

#include "detail/detail.h"
#include "detail/layers.h"
#include "report/caution.h"
#include "report/flashing_sizes.h"

#define MARGIN (3 * MM)
#define HEAD (17 * MM)
#define NAME (6 * MM) /* above a picture */
#define FOOT (9 * MM)
#define TEXT (2.2 * MM)
/* On a sheet; at a third of a Letter sheet's width letters are still 2.5 mm high. */
#define PICTURES 3
#define OF_FOOT (-1)

/* What is drawn, in order: OF_FOOT, or a pipe from 0. */
struct pictures {
	int n;
	int of[PIPE_MAX + 1];
};

static const char *word_of(int which)
{
	return which == OF_FOOT ? "foot" : "pipe";
}

static bool known_of(const struct sheet *s, int which)
{
	return s->library &&
	       detail_known(s->library, s->job->roof.covering, word_of(which), "plan");
}

static struct pictures pictures_of(const struct sheet *s)
{
	struct pictures p = {0};

	if (known_of(s, OF_FOOT))
		p.of[p.n++] = OF_FOOT;
	for (int i = 0; i < s->job->pipes; i++)
		if (known_of(s, i) && !flashing_pipe_repeats(s->job, i))
			p.of[p.n++] = i;
	return p;
}

int flashing_plan_pages(const struct sheet *s)
{
	return (pictures_of(s).n + PICTURES - 1) / PICTURES;
}

const char *flashing_of_other_foot(const struct sheet *s)
{
	const struct guide_request request = {
		.key = s->job->roof.covering, .units = s->f.units, .depth = GUIDE_BRIEF};
	struct detail_layers drawn;

	if (!s->library || !detail_layers_read(&drawn, s->library, &request, "foot", "plan"))
		return NULL;
	const bool clamps = layer_find(drawn.layer, drawn.layers, "clamp") != NULL;

	if (clamps == sheet_on_seams(s->job))
		return NULL;
	return clamps ? "The notes on this covering hold feet by clamps on its seams. Feet of this "
			"job go through it, and for those the notes have neither picture nor "
			"steps: a "
			"roofer of that trade draws this flashing before a hole is made."
		      : "Feet of this job are clamps on seams. The notes on this covering have no "
			"picture of those; nothing goes through.";
}

static const char *name_of(const struct sheet *s, int which)
{
	const char *names = "Feet";

	if (which == OF_FOOT)
		return names;
	names = sheet_text(s, "Pipe P%d", which + 1);
	for (int i = which + 1; i < s->job->pipes; i++) {
		const struct job_pipe *a = &s->job->pipe[which], *b = &s->job->pipe[i];
		const struct job two = {.pipes = 2, .pipe = {*a, *b}};

		if (flashing_pipe_repeats(&two, 1))
			names = sheet_text(s, "%s, P%d", names, i + 1);
	}
	return names;
}

/* One picture in its share of the sheet; made smaller where it is too high. */
static void put(const struct sheet *s, struct drawing *d, int which, double x, double wide)
{
	const struct lettering_spec bold = {1.2 * TEXT, true, ANCHOR_LEFT, ANCHOR_TOP, 0, false};
	const struct guide_sizes sizes = which == OF_FOOT
						 ? flashing_sizes(s->job, s->r)
						 : flashing_sizes_of_pipe(s->job, s->r, which);
	const struct guide_request request = {.key = s->job->roof.covering,
					      .sizes = &sizes,
					      .units = s->f.units,
					      .depth = GUIDE_BRIEF,
					      .fastener = flashing_fastener(s->job)};
	const double top = drawing_height(d) - HEAD;
	const char *other = which == OF_FOOT ? flashing_of_other_foot(s) : NULL;

	drawing_text(d, LAYER_TEXT, (struct point){x + MARGIN, top}, bold, name_of(s, which));
	if (other) {
		sheet_paragraph(s, d, (struct point){x + MARGIN, top - NAME}, wide - 2 * MARGIN,
				1.2 * TEXT, other);
		return;
	}
	struct drawing *picture =
		detail_draw(s->lettering, s->library, &request, word_of(which), "plan");

	if (!picture)
		return;
	const double room = top - NAME - FOOT;
	const double k =
		fmin(1, fmin(room / drawing_height(picture), wide / drawing_width(picture)));

	drawing_add(d, picture,
		    (struct view){{x + (wide - k * drawing_width(picture)) / 2,
				   top - NAME - k * drawing_height(picture)},
				  k,
				  0});
	drawing_destroy(picture);
}

static void head(const struct sheet *s, struct drawing *d)
{
	const struct lettering_spec big = {3.2 * MM, true, ANCHOR_LEFT, ANCHOR_TOP, 0, false};
	const double top = drawing_height(d) - MARGIN, wide = drawing_width(d) - 2 * MARGIN;
	double y;

	drawing_text(d, LAYER_TEXT, (struct point){MARGIN, top}, big, drawing_title(d));
	sheet_paragraph(s, d, (struct point){MARGIN, top - 5 * MM}, wide, TEXT,
			"From the notes on this covering, with the sizes of this job where it has "
			"them; up the slope is up. Each picture has a scale of its own.");
	y = sheet_paragraph(s, d, (struct point){MARGIN, FOOT - 1 * MM}, wide, TEXT,
			    sheet_text(s, "%s. Job %s.", sheet_verdict(s), s->fingerprint));
	sheet_paragraph(s, d, (struct point){MARGIN, y}, wide, 0.8 * TEXT, caution_result);
}

struct drawing *flashing_plan_draw(const struct sheet *s, int page, double width, double height)
{
	struct drawing *d = drawing_create(s->lettering, width, height, NULL);
	const struct pictures all = pictures_of(s);
	const int first = page * PICTURES, n = all.n - first < PICTURES ? all.n - first : PICTURES;

	if (!d)
		return NULL;
	drawing_set_title(d, "Flashing from above",
			  sheet_text(s, "%s. %s", s->job->title, sheet_verdict(s)));
	head(s, d);
	for (int i = 0; i < n; i++)
		put(s, d, all.of[first + i], i * width / n, width / n);
	return d;
}
