/* SPDX-License-Identifier: MIT */
#include "sheet/flashing_plan.h"

#include <math.h>

#include "detail/detail.h"
#include "detail/layers.h"
#include "report/caution.h"
#include "report/flashing_sizes.h"
#include "sheet/section.h"

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
			"picture of those and no steps: the clamp's maker says how. Nothing goes through.";
}

static bool base_is_below(const struct job *job)
{
	return job->mount.seat == SEAT_ON_WOOD || job->mount.seat == SEAT_ON_DECK ||
	       job->mount.seat == SEAT_RIGID_POST;
}

const char *flashing_over_base(const struct sheet *s)
{
	const struct guide_request request = {
		.key = s->job->roof.covering, .units = s->f.units, .depth = GUIDE_BRIEF};
	struct detail_layers drawn;

	if (!base_is_below(s->job) || sheet_on_seams(s->job) || !s->library ||
	    !detail_layers_read(&drawn, s->library, &request, "foot", "section") ||
	    !layer_find(drawn.layer, drawn.layers, "boss") ||
	    !layer_find(drawn.layer, drawn.layers, "foot"))
		return NULL;
	const char *const first = s->job->mount.seat == SEAT_ON_WOOD
					  ? "on the wood: cut covering and deck out for the base, "
					    "set foot and screws"
					  : "on wood or deck: set foot and screws";
	const char *const blocks =
		s->r->block.feet > 0
			? " A foot on a block stands in the middle of the block, where the notes "
			  "say rafter; the block is in before the hole is drilled."
			: "";

	return sheet_text(s,
			  "The notes set the foot on top of its plate. Feet of this job stand below "
			  "it, %s first, then bring the plate over the post, its raised collar closed "
			  "round the post, its upper part under the freed courses.%s",
			  first, blocks);
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

/* One picture from `at` down, or where the notes have none what is said of it; made smaller where it
   is higher than `room`. The y below it. */
static double put(const struct sheet *s, struct drawing *d, int which, struct point at, double wide,
		  double room)
{
	const struct lettering_spec bold = {1.2 * TEXT, true, ANCHOR_LEFT, ANCHOR_TOP, 0, false};
	const struct guide_sizes sizes = which == OF_FOOT
						 ? flashing_sizes(s->job, s->r)
						 : flashing_sizes_of_pipe(s->job, s->r, which);
	const struct guide_request request = {.key = s->job->roof.covering,
					      .sizes = &sizes,
					      .units = s->f.units,
					      .depth = GUIDE_BRIEF,
					      .fastener = flashing_fastener(s->job),
					      .base_below = base_is_below(s->job),
					      .on_rafters = !section_has_block(s),
					      .resized = true};
	const char *other = which == OF_FOOT ? flashing_of_other_foot(s) : NULL;

	drawing_text(d, LAYER_TEXT, (struct point){at.x + MARGIN, at.y}, bold, name_of(s, which));
	at.y -= NAME;
	if (other)
		return sheet_paragraph(s, d, (struct point){at.x + MARGIN, at.y}, wide - 2 * MARGIN,
				       1.2 * TEXT, other);
	struct drawing *picture =
		detail_draw(s->lettering, s->library, &request, word_of(which), "plan");

	if (!picture)
		return at.y;
	const double k = fmin(
		1, fmin((room - NAME) / drawing_height(picture), wide / drawing_width(picture)));

	at.y -= k * drawing_height(picture);
	drawing_add(
		d, picture,
		(struct view){{at.x + (wide - k * drawing_width(picture)) / 2, at.y}, k, 0});
	drawing_destroy(picture);
	return at.y;
}

static const char source_words[] =
	"From the notes on this covering, with the sizes of this job where it has them; up the "
	"slope is up. Each picture has a scale of its own: the bar below it.";

static double verdict(const struct sheet *s, struct drawing *d, struct point at, double wide,
		      double least)
{
	at.y = sheet_paragraph(s, d, at, wide, TEXT,
			       sheet_text(s, "%s. Job %s.", sheet_verdict(s), s->fingerprint));
	return sheet_paragraph(s, d, at, wide, fmax(0.8 * TEXT, least), caution_result);
}

static void head(const struct sheet *s, struct drawing *d)
{
	const struct lettering_spec big = {3.2 * MM, true, ANCHOR_LEFT, ANCHOR_TOP, 0, false};
	const double top = drawing_height(d) - MARGIN, wide = drawing_width(d) - 2 * MARGIN;

	drawing_text(d, LAYER_TEXT, (struct point){MARGIN, top}, big, drawing_title(d));
	sheet_paragraph(s, d, (struct point){MARGIN, top - 5 * MM}, wide, TEXT,
			source_words);
	verdict(s, d, (struct point){MARGIN, FOOT - 1 * MM}, wide, 0);
}

/* The pictures below each other, each as wide as the room. */
static struct drawing *below_each_other(const struct sheet *s, struct drawing *d,
					const struct pictures *all, int first, int n,
					struct sheet_room room)
{
	const double wide = room.width - 2 * NARROW_MARGIN;
	struct point at = {NARROW_MARGIN, room.height - NARROW_MARGIN};

	at.y = sheet_heading(s, d, at, wide, 1.3 * TEXT, drawing_title(d));
	at.y = sheet_paragraph(s, d, at, wide, TEXT, source_words) - TEXT;
	for (int i = 0; i < n; i++)
		at.y = put(s, d, all->of[first + i], (struct point){0, at.y}, room.width,
			   room.height) -
		       TEXT;
	at.y = verdict(s, d, at, wide, room.least);
	return drawing_cut(d, at.y - NARROW_MARGIN, NULL);
}

struct drawing *flashing_plan_draw(const struct sheet *s, int page, struct sheet_room room)
{
	struct drawing *d = drawing_create(s->lettering, room.width, room.height, NULL);
	const struct pictures all = pictures_of(s);
	const int first = page * PICTURES, n = all.n - first < PICTURES ? all.n - first : PICTURES;

	if (!d)
		return NULL;
	drawing_set_title(d, "Flashing from above",
			  sheet_text(s, "%s. %s", s->job->title, sheet_verdict(s)));
	if (room.narrow)
		return below_each_other(s, d, &all, first, n, room);
	head(s, d);
	for (int i = 0; i < n; i++)
		put(s, d, all.of[first + i], (struct point){i * room.width / n, room.height - HEAD},
		    room.width / n, room.height - HEAD - FOOT);
	return d;
}
