/* SPDX-License-Identifier: MIT */
/* What the lines and marks of a plan mean, and the zones with the spacing allowed in them: each
 * with a sample, of what is drawn on this plan and of nothing else. */
#include "sheet/plan_legend.h"

#include <math.h>

#include "roof/zone.h"
#include "sheet/rail_pieces.h"

#define SAMPLE (9 * MM) /* width of a line sample */
#define SAMPLE_HATCH                                                                               \
	(1.2 * MM) /* closer than on the plan: enough lines to tell which way they lean */

struct lettering_spec legend_plain(const struct plan *p, bool bold)
{
	return (struct lettering_spec){p->size, bold, ANCHOR_LEFT, ANCHOR_MIDDLE, 0, false};
}

void legend_words(struct legend *c, double left, const char *text)
{
	const struct plan *p = c->p;
	const double top = c->y + LETTERING_CAPITAL * p->size / 2;
	const double low = sheet_paragraph(p->s, p->d, (struct point){c->x + left, top},
					   c->width - left, p->size, text);

	/* low is where the top of one more line would be */
	c->y = low + (1.35 - LETTERING_CAPITAL / 2) * p->size - LEGEND_LINE;
}

/* Beside a sample. */
static void words(struct legend *c, const char *text)
{
	legend_words(c, SAMPLE + 2 * MM, text);
}

static void heading(struct legend *c, const char *text)
{
	c->y -= 0.4 * LEGEND_LINE;
	drawing_text(c->p->d, LAYER_TEXT, (struct point){c->x, c->y}, legend_plain(c->p, true),
		     text);
	c->y -= LEGEND_LINE;
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

/* True if a part of the shape is on this drawing: a legend tells nothing else. */
static bool shown(const struct plan *p, const struct polygon *shape)
{
	return plan_in_window(p, shape).n > 2;
}

static bool obstacle_shown(const struct plan *p)
{
	for (int i = 0; i < p->s->job->obstacles; i++) {
		const struct job_obstacle *o = &p->s->job->obstacle[i];
		const struct polygon shape =
			polygon_rectangle(o->x, o->y, o->x + o->width, o->y + o->height);

		if (shown(p, &shape))
			return true;
	}
	return false;
}

/* Names of the pipes that are drawn; NULL if none is: a pipe may have no place yet. */
static const char *pipes_shown(const struct plan *p)
{
	const char *names = NULL;

	for (int i = 0; i < p->s->job->pipes; i++)
		if (plan_inside(p, (struct point){p->s->job->pipe[i].at, p->s->job->pipe[i].up}))
			names = sheet_text(p->s, "%s%sP%d", names ? names : "", names ? ", " : "",
					   i + 1);
	return names;
}

/* Feet on seams hang from rafters all the same, which a report counts too. */
static void rafters_below(struct legend *c)
{
	const struct sheet *s = c->p->s;
	const struct job_framing *f = &s->job->framing;

	if (!sheet_on_seams(s->job) || s->r->frames == 0)
		return;
	const char *unit = s->f.units == SYSTEM_SI ? " mm" : "";
	const char *spacing = f->measured > 0
				      ? ", each measured"
				      : sheet_text(s, " at %s%s", sheet_tape(s, f->spacing), unit);

	/* from where a sample would stand: there is none */
	legend_words(c, 0,
		     sheet_text(s, "Not drawn: %s%srafters below%s, the first at %s%s.", f->size,
				f->size[0] ? " " : "", spacing, sheet_tape(s, s->r->frame_x[0]),
				unit));
}

void legend_symbols(struct legend *c)
{
	const struct sheet *s = c->p->s;
	const struct job *job = s->job;

	heading(c, "Lines and marks");
	if (plan_edge_shown(c->p, LAYER_EDGE))
		line_row(c, LAYER_EDGE, "edge of the roof");
	if (plan_edge_shown(c->p, LAYER_RIDGE))
		line_row(c, LAYER_RIDGE,
			 job->building.form == FORM_HIP ? "ridge and hips" : "ridge");
	line_row(c, LAYER_RAFTER, rafter_text(c->p));
	rafters_below(c);
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
	if (obstacle_shown(c->p))
		box_row(c, LAYER_OBSTACLE, NULL, 0, "obstacle, crossed; no foot within its dashes");
	if (job->building.access_path > 0 || job->building.ridge_clear > 0)
		box_row(c, LAYER_CLEAR, (const double[]){22.5 * RAD_PER_DEG, 112.5 * RAD_PER_DEG},
			2, "to be kept clear");
	if (pipes_shown(c->p))
		dot_row(c, LAYER_TEXT, FILL_WHITE, 1.3 * MM,
			sheet_text(s, "%s: pipe through the roof", pipes_shown(c->p)));
}

/* The zones drawn are the bare roof's; tilted collectors have others of the same names. */
static bool tilted(const struct sheet *s)
{
	return s->r->wind.rule == WIND_TILTED;
}

static const char *spacing(const struct sheet *s, enum zone zone)
{
	const struct zone_spacing *z = &s->pass->zone[zone];

	if (!(z->spacing > 0))
		return "no spacing holds";
	return sheet_text(s, "at most %s%s", sheet_tape(s, z->spacing),
			  s->f.units == SYSTEM_SI ? " mm" : "");
}

static const char *zone_row(const struct sheet *s, enum zone zone)
{
	if (s->r->passes == 0 || !s->pass->zone[zone].present || tilted(s))
		return sheet_text(s, "zone %s", zone_text(zone));
	return sheet_text(s, "zone %s: %s", zone_text(zone), spacing(s, zone));
}

/* Feet whose part of the array lies in another zone too than they stand in. */
static int over_border(const struct plan *p)
{
	int n = 0;

	for (int i = 0; i < p->s->pass->attachments && p->s->r->passes > 0; i++) {
		const struct attachment *a = &p->s->pass->attachment[i];
		const struct point at = {a->x, a->y};

		n += plan_inside(p, at) && a->zone != plan_zone_at(p->s->r, at);
	}
	return tilted(p->s) ? 0 : n;
}

void legend_zones(struct legend *c)
{
	const struct sheet *s = c->p->s;
	bool seen[ZONE_COUNT] = {false};

	if (s->r->shapes == 0)
		return;
	heading(c, tilted(s) ? "Wind zones of the bare roof" : "Wind zones; feet if evenly spaced");
	for (int i = 0; i < s->r->shapes; i++)
		seen[s->r->shape[i].zone] |= shown(c->p, &s->r->shape[i].shape);
	for (int z = 0; z < (int)ZONE_COUNT; z++) {
		double angle[2];

		if (seen[z])
			box_row(c, LAYER_ZONE, angle, plan_zone_hatch((enum zone)z, angle),
				zone_row(s, (enum zone)z));
	}
	if (over_border(c->p) > 0)
		legend_words(c, 0,
			     sheet_text(s, "%d %s over a border: rated by the worse side",
					over_border(c->p),
					over_border(c->p) > 1 ? "feet reach" : "foot reaches"));
	for (int z = 0; z < (int)ZONE_COUNT && tilted(s) && s->r->passes > 0; z++)
		if (s->pass->zone[z].present)
			legend_words(c, 0,
				     sheet_text(s,
						"Tilted, in zone %s of Fig. 29.4-7: spacing of "
						"feet %s",
						zone_text((enum zone)z), spacing(s, (enum zone)z)));
}
