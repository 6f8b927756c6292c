/* SPDX-License-Identifier: MIT */
#include "sheet/flashing_plan.h"

#include <math.h>

#include "detail/detail.h"
#include "report/caution.h"
#include "report/flashing_sizes.h"

#define MARGIN (3 * MM)
#define HEAD (17 * MM)
#define FOOT (9 * MM)
#define TEXT (2.2 * MM)

static bool known(const struct sheet *s, const char *of)
{
	return s->library && detail_known(s->library, s->job->roof.covering, of, "plan");
}

static bool wanted(const struct sheet *s, const char *of)
{
	return known(s, of) && (of[0] != 'p' || s->job->pipes > 0);
}

bool flashing_plan_exists(const struct sheet *s)
{
	return wanted(s, "foot") || wanted(s, "pipe");
}

/* One picture in its share of the sheet; made smaller where it is too high. */
static void put(const struct sheet *s, struct drawing *d, const char *of, double x, double wide)
{
	const struct guide_sizes sizes = flashing_sizes(s->job, s->r);
	const struct guide_request request = {.key = s->job->roof.covering,
					      .sizes = &sizes,
					      .units = s->f.units,
					      .depth = GUIDE_BRIEF,
					      .fastener = flashing_fastener(s->job)};
	struct drawing *picture = detail_draw(s->lettering, s->library, &request, of, "plan");

	if (!picture)
		return;
	const double room = drawing_height(d) - HEAD - FOOT;
	const double k =
		fmin(1, fmin(room / drawing_height(picture), wide / drawing_width(picture)));

	drawing_add(d, picture,
		    (struct view){{x + (wide - k * drawing_width(picture)) / 2,
				   drawing_height(d) - HEAD - k * drawing_height(picture)},
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

struct drawing *flashing_plan_draw(const struct sheet *s, double width, double height)
{
	struct drawing *d = drawing_create(s->lettering, width, height, NULL);
	const bool foot = wanted(s, "foot"), pipe = wanted(s, "pipe");
	const double share = foot && pipe ? width / 2 : width;

	if (!d)
		return NULL;
	drawing_set_title(d, "Flashing from above",
			  sheet_text(s, "%s. %s", s->job->title, sheet_verdict(s)));
	head(s, d);
	if (foot)
		put(s, d, "foot", 0, share);
	if (pipe)
		put(s, d, "pipe", foot ? share : 0, share);
	return d;
}
