/* SPDX-License-Identifier: MIT */
/* The column beside a plan: what its lines mean, the zones with the spacing allowed in them, scale
 * and north. */
#include <math.h>

#include "report/caution.h"
#include "roof/zone.h"
#include "sheet/plan.h"
#include "sheet/rail_pieces.h"

#define SAMPLE (9 * MM) /* width of a line sample */
#define LINE (3.8 * MM)
#define SAMPLE_HATCH                                                                               \
	(1.2 * MM) /* closer than on the plan: enough lines to tell which way they lean */

struct legend {
	const struct plan *p;
	double x, y, width; /* of the next line: left end, middle */
};

static struct lettering_spec plain(const struct plan *p, bool bold)
{
	return (struct lettering_spec){p->size, bold, ANCHOR_LEFT, ANCHOR_MIDDLE, 0, false};
}

/* Beside a sample, in as many lines as it takes; then on to the next row. */
static void words(struct legend *c, const char *text)
{
	const struct plan *p = c->p;
	const double left = SAMPLE + 2 * MM, top = c->y + LETTERING_CAPITAL * p->size / 2;
	const double low = sheet_paragraph(p->s, p->d, (struct point){c->x + left, top},
					   c->width - left, p->size, text);

	/* low is where the top of one more line would be */
	c->y = low + (1.35 - LETTERING_CAPITAL / 2) * p->size - LINE;
}

static void heading(struct legend *c, const char *text)
{
	c->y -= 0.4 * LINE;
	drawing_text(c->p->d, LAYER_TEXT, (struct point){c->x, c->y}, plain(c->p, true), text);
	c->y -= LINE;
}

static void line_row(struct legend *c, enum drawing_layer layer, const char *text)
{
	drawing_line(c->p->d, layer, (struct point){c->x, c->y},
		     (struct point){c->x + SAMPLE, c->y});
	words(c, text);
}

static void box_row(struct legend *c, enum drawing_layer layer, const double *angle, int n,
		    const char *text)
{
	const double h = 1.3 * MM;
	const struct point at[] = {{c->x, c->y - h},
				   {c->x + SAMPLE, c->y - h},
				   {c->x + SAMPLE, c->y + h},
				   {c->x, c->y + h}};

	for (int i = 0; i < n; i++)
		drawing_hatch(c->p->d, LAYER_HATCH, at, 4, angle[i], SAMPLE_HATCH);
	drawing_shape(c->p->d, layer, -1, FILL_NONE, at, 4);
	words(c, text);
}

static void dot_row(struct legend *c, enum drawing_layer layer, enum fill fill, double radius,
		    const char *text)
{
	const struct point at = {c->x + SAMPLE / 2, c->y};

	drawing_mark(c->p->d, layer, fill, at, radius);
	if (fill == FILL_WHITE) {
		drawing_line(c->p->d, layer, (struct point){at.x - radius, at.y},
			     (struct point){at.x + radius, at.y});
		drawing_line(c->p->d, layer, (struct point){at.x, at.y - radius},
			     (struct point){at.x, at.y + radius});
	}
	words(c, text);
}

static const char *rafter_text(const struct plan *p)
{
	const struct job_framing *f = &p->s->job->framing;
	const char *size = f->size[0] ? f->size : "rafters";

	if (sheet_on_seams(p->s->job))
		return sheet_text(p->s, "seams at %s%s",
				  sheet_tape(p->s, p->s->job->roof.seam_spacing),
				  p->s->f.units == SYSTEM_SI ? " mm" : "");
	if (f->measured > 0)
		return sheet_text(p->s, "%s, each measured", size);
	return sheet_text(p->s, "%s at %s%s", size, sheet_tape(p->s, f->spacing),
			  p->s->f.units == SYSTEM_SI ? " mm" : "");
}

static bool joined(const struct sheet *s)
{
	double at[SPLICE_MAX];

	for (int i = 0; i < s->pass->lines; i++)
		if (rail_pieces_joints(s, i, at) > 0)
			return true;
	return false;
}

static void symbols(struct legend *c)
{
	const struct sheet *s = c->p->s;
	const struct job *job = s->job;

	heading(c, "Lines and marks");
	line_row(c, LAYER_EDGE, "edge of the roof");
	if (job->building.form == FORM_GABLE || job->building.form == FORM_HIP)
		line_row(c, LAYER_RIDGE,
			 job->building.form == FORM_HIP ? "ridge and hips" : "ridge");
	line_row(c, LAYER_RAFTER, rafter_text(c->p));
	if (s->r->block.feet > 0)
		line_row(c, LAYER_RAFTER,
			 sheet_text(s, "two across: block %s (%d)", s->r->block.size,
				    s->r->block.feet));
	box_row(c, LAYER_COLLECTOR, NULL, 0, sheet_text(s, "collector (%d)", s->r->collectors));
	if (s->r->passes > 0 && job->rail.kind == SUPPORT_RAILS)
		line_row(c, LAYER_RAIL, joined(s) ? "rail; two strokes across it: joint" : "rail");
	if (s->r->passes > 0)
		dot_row(c, LAYER_TEXT, FILL_BLACK, plan_dot(c->p),
			sheet_text(s,
				   s->pass->attachments > 1 ? "attachment (%d), 1 at lower left"
							    : "attachment (%d)",
				   s->pass->attachments));
	if (job->obstacles > 0)
		box_row(c, LAYER_OBSTACLE, NULL, 0, "obstacle, crossed; no foot within its dashes");
	if (job->building.access_path > 0 || job->building.ridge_clear > 0)
		box_row(c, LAYER_CLEAR, (const double[]){22.5 * RAD_PER_DEG, 112.5 * RAD_PER_DEG},
			2, "to be kept clear");
	for (int i = 0; i < job->pipes; i++)
		if (!isnan(job->pipe[i].at) && !isnan(job->pipe[i].up)) {
			dot_row(c, LAYER_TEXT, FILL_WHITE, 1.3 * MM,
				"P1, P2 ... pipe through the roof");
			return;
		}
}

/* The zones drawn are the bare roof's; tilted collectors have others of the same names. */
static bool tilted(const struct sheet *s)
{
	return s->r->wind.rule == WIND_TILTED;
}

static const char *zone_row(const struct sheet *s, enum zone zone, bool drawn)
{
	const struct zone_spacing *z = &s->pass->zone[zone];

	if (s->r->passes == 0 || !z->present || (drawn && tilted(s)))
		return sheet_text(s, "zone %s", zone_text(zone));
	if (!(z->spacing > 0))
		return sheet_text(s, "zone %s: no spacing holds", zone_text(zone));
	return sheet_text(s, "zone %s: at most %s%s", zone_text(zone), sheet_tape(s, z->spacing),
			  s->f.units == SYSTEM_SI ? " mm" : "");
}

static void zones(struct legend *c)
{
	const struct sheet *s = c->p->s;
	bool seen[ZONE_COUNT] = {false};

	if (s->r->shapes == 0)
		return;
	heading(c, tilted(s) ? "Wind zones of the bare roof" : "Wind zones, spacing of feet");
	for (int i = 0; i < s->r->shapes; i++)
		seen[s->r->shape[i].zone] = true;
	for (int z = 0; z < (int)ZONE_COUNT; z++) {
		double angle[2];

		if (seen[z])
			box_row(c, LAYER_ZONE, angle, plan_zone_hatch((enum zone)z, angle),
				zone_row(s, (enum zone)z, true));
	}
	for (int z = 0; z < (int)ZONE_COUNT && tilted(s) && s->r->passes > 0; z++)
		if (s->pass->zone[z].present) {
			words(c, sheet_text(s, "tilted, Fig. 29.4-7: %s",
					    zone_row(s, (enum zone)z, false)));
		}
}

static void head(struct legend *c)
{
	const struct plan *p = c->p;

	drawing_text(p->d, LAYER_TEXT, (struct point){c->x, c->y},
		     (struct lettering_spec){3.2 * MM, true, ANCHOR_LEFT, ANCHOR_MIDDLE, 0, false},
		     drawing_title(p->d));
	c->y -= 1.3 * LINE;
	drawing_text(p->d, LAYER_TEXT, (struct point){c->x, c->y}, plain(p, false),
		     sheet_text(p->s, "Scale %s", p->scale.text));
	c->y -= LINE;
	drawing_text(p->d, LAYER_TEXT, (struct point){c->x, c->y}, plain(p, false),
		     sheet_text(p->s, "Pitch %s, falling down the sheet", plan_pitch(p->s)));
	c->y -= 1.2 * LINE;
	c->y = plan_scale_and_north(p, (struct point){c->x, c->y}, c->width);
}

static void about(struct legend *c)
{
	const struct plan *p = c->p;
	const double width = c->width - 2 * MM;

	c->y = sheet_paragraph(p->s, p->d, (struct point){c->x, c->y + 1 * MM}, width, p->size,
			       sheet_text(p->s, "%s. Job %s: %s", sheet_verdict(p->s),
					  p->s->fingerprint, p->s->job->title));
	c->y = sheet_paragraph(p->s, p->d, (struct point){c->x, c->y}, width, plan_size(p, 0.8),
			       caution_result) -
	       0.4 * LINE;
}

/* Parts below each other. */
static double column(const struct plan *p, struct point at, double width,
		     void (*const *part)(struct legend *c), int n)
{
	const struct view open = drawing_view_open(p->d);
	struct legend c = {p, at.x, at.y - LINE / 2, width};

	drawing_view(p->d, VIEW_PAPER);
	for (int i = 0; i < n; i++)
		part[i](&c);
	drawing_view(p->d, open);
	return c.y + LINE / 2;
}

double plan_legend_above(const struct plan *p, struct point upper_left, double width)
{
	return column(p, upper_left, width, (void (*const[])(struct legend *)){head}, 1);
}

static void gap(struct legend *c)
{
	c->y -= LINE;
}

double plan_legend_below(const struct plan *p, struct point upper_left, double width)
{
	return column(p, upper_left, width,
		      (void (*const[])(struct legend *)){symbols, zones, gap, about}, 4);
}

#define PARTS 4

/* Parts of a strip stand beside each other; where four have no room the first two share a column.
 */
double plan_legend(const struct plan *p, struct point upper_left, double width)
{
	typedef void part_fn(struct legend * c);
	static part_fn *const part[PARTS] = {head, about, symbols, zones};
	const int columns = !p->below ? 1 : width >= PARTS * PLAN_LEGEND_WIDTH ? PARTS : PARTS - 1;
	const struct view open = drawing_view_open(p->d);
	struct legend c = {0};
	double low = upper_left.y;

	drawing_view(p->d, VIEW_PAPER);
	for (int i = 0, last = -1; i < PARTS; i++) {
		const int column = columns == PARTS ? i : columns == 1 ? 0 : i < 2 ? 0 : i - 1;

		if (column != last)
			c = (struct legend){p, upper_left.x + column * width / columns,
					    upper_left.y - 2 * MM + (i > 1 ? 0.4 * LINE : 0),
					    width / columns - (columns > 1 ? 3 * MM : 0)};
		last = column;
		part[i](&c);
		low = fmin(low, c.y + LINE / 2);
	}
	drawing_view(p->d, open);
	return low;
}

double plan_legend_height(const struct plan *p, double width)
{
	struct plan trial = *p;

	trial.below = true;
	trial.d = drawing_create(p->s->lettering, width, 1, NULL);
	if (!trial.d)
		return 0;
	const double height = 1 - plan_legend(&trial, (struct point){0, 1}, width);

	drawing_destroy(trial.d);
	return height;
}
