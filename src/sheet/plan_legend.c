/* SPDX-License-Identifier: MIT */
/* The column beside a plan: what its lines mean, the zones with the spacing allowed in them, scale
 * and north. */
#include <math.h>

#include "report/caution.h"
#include "roof/zone.h"
#include "sheet/plan.h"
#include "sheet/rail_pieces.h"

#define SAMPLE (9 * MM) /* width of a line sample */
#define LINE (3.6 * MM)

struct legend {
	const struct plan *p;
	double x, y, width; /* of the next line: left end, middle */
};

static struct lettering_spec plain(const struct plan *p, bool bold)
{
	return (struct lettering_spec){p->size, bold, ANCHOR_LEFT, ANCHOR_MIDDLE, 0, false};
}

static void words(const struct legend *c, const char *text)
{
	drawing_text(c->p->d, LAYER_TEXT, (struct point){c->x + SAMPLE + 2 * MM, c->y},
		     plain(c->p, false), text);
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
	c->y -= LINE;
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
		drawing_hatch(c->p->d, LAYER_HATCH, at, 4, angle[i], 2.4 * MM);
	drawing_shape(c->p->d, layer, -1, FILL_NONE, at, 4);
	words(c, text);
	c->y -= LINE;
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
	c->y -= LINE;
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
		line_row(c, LAYER_RAFTER, sheet_text(s, "two across: block %s (%d)", s->r->block.size,
						     s->r->block.feet));
	box_row(c, LAYER_COLLECTOR, NULL, 0, sheet_text(s, "collector (%d)", s->r->collectors));
	if (s->r->passes > 0 && job->rail.kind == SUPPORT_RAILS)
		line_row(c, LAYER_RAIL, joined(s) ? "rail; two strokes across it: joint" : "rail");
	if (s->r->passes > 0)
		dot_row(c, LAYER_TEXT, FILL_BLACK, PLAN_DOT,
			sheet_text(s, "attachment (%d)", s->pass->attachments));
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
			c->y -= LINE;
		}
}

/* Four steps of a round length, black and white. */
static void scale_bar(struct legend *c)
{
	static const double us[] = {0.5, 1, 2, 4, 5, 10, 20}, si[] = {0.1, 0.2, 0.5, 1, 2, 5, 10};
	const struct plan *p = c->p;
	const bool metric = p->s->f.units == SYSTEM_SI;
	const double unit = metric ? 1 : M_PER_FT, room = c->width - 26 * MM;
	const struct lettering_spec spec = {p->size, false, ANCHOR_CENTRE, ANCHOR_TOP, 0, false};
	double step = (metric ? si : us)[0];
	char buf[32];

	for (int i = 0; i < 7; i++)
		if ((metric ? si : us)[i] * unit * 4 * p->view.scale <= room)
			step = (metric ? si : us)[i];
	const double wide = step * unit * p->view.scale, h = 0.8 * MM;

	for (int i = 0; i <= 4; i++) {
		const double x = c->x + 2 * MM + i * wide;

		if (i < 4)
			drawing_rectangle(p->d, LAYER_TEXT, i % 2 ? FILL_WHITE : FILL_BLACK, x,
					  c->y - h, x + wide, c->y + h);
		if (i % 2 == 0)
			drawing_text(p->d, LAYER_TEXT, (struct point){x, c->y - 2 * MM}, spec,
				     sheet_text(p->s, "%s%s",
						number_print(buf, sizeof buf, i * step,
							     step * 2 < 1 ? 1 : 0),
						i == 4 ? (metric ? " m" : " ft") : ""));
	}
	c->y -= 2.2 * LINE;
}

/* Up on the drawing is up the slope, against the way the plane faces: north is turned from it by
   half a turn more than the plane's own bearing, anticlockwise. */
static void north(struct legend *c)
{
	const double turn = c->p->s->job->building.facing - 180 * RAD_PER_DEG, length = 5 * MM;
	const struct point u = {-sin(turn), cos(turn)};
	const struct point at = {c->x + c->width - 9 * MM, c->y};
	const struct point tip = {at.x + length * u.x, at.y + length * u.y},
			   tail = {at.x - length * u.x, at.y - length * u.y};
	const struct point head[] = {
		tip,
		{tip.x - 3 * MM * u.x - 1.1 * MM * u.y, tip.y - 3 * MM * u.y + 1.1 * MM * u.x},
		{tip.x - 3 * MM * u.x + 1.1 * MM * u.y, tip.y - 3 * MM * u.y - 1.1 * MM * u.x}};
	const struct lettering_spec spec = {c->p->size,    true, ANCHOR_CENTRE,
					    ANCHOR_MIDDLE, 0,    false};

	drawing_line_as(c->p->d, LAYER_TEXT, 0.35 * MM, DASH_SOLID, tail, tip);
	drawing_shape(c->p->d, LAYER_TEXT, 0, FILL_BLACK, head, 3);
	drawing_text(c->p->d, LAYER_TEXT,
		     (struct point){tip.x + 2 * MM * u.x, tip.y + 2 * MM * u.y}, spec, "N");
}

double plan_scale_and_north(const struct plan *p, struct point upper_left, double width)
{
	struct legend c = {p, upper_left.x, upper_left.y, width};

	scale_bar(&c);
	if (!isnan(p->s->job->building.facing))
		north(&(struct legend){p, c.x, c.y + 2.2 * LINE, width});
	return c.y;
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
	c->y -= 1.2 * LINE;
	c->y = plan_scale_and_north(p, (struct point){c->x, c->y}, c->width);
	c->y = sheet_paragraph(p->s, p->d, (struct point){c->x, c->y + 1 * MM}, c->width - 2 * MM,
			       p->size,
			       sheet_text(p->s, "%s. Job %s: %s", sheet_verdict(p->s),
					  p->s->fingerprint, p->s->job->title));
	c->y = sheet_paragraph(p->s, p->d, (struct point){c->x, c->y}, c->width - 2 * MM,
			       0.8 * p->size, caution_result) -
	       0.4 * LINE;
}

double plan_legend_height(const struct plan *p)
{
	bool seen[ZONE_COUNT] = {false};
	int zones = 0;

	for (int i = 0; i < p->s->r->shapes; i++) {
		zones += !seen[p->s->r->shape[i].zone];
		seen[p->s->r->shape[i].zone] = true;
	}
	return (fmax(12, zones + 2) + 0.5) * LINE;
}

void plan_legend(const struct plan *p, struct point upper_left)
{
	const struct point top = {upper_left.x, upper_left.y - 2 * MM};
	struct legend c = {p, top.x, top.y, PLAN_LEGEND_WIDTH};
	const struct view open = drawing_view_open(p->d);

	drawing_view(p->d, VIEW_PAPER);
	head(&c);
	if (p->below)
		c = (struct legend){p, top.x + 1.2 * PLAN_LEGEND_WIDTH, top.y + 0.4 * LINE,
				    PLAN_LEGEND_WIDTH};
	symbols(&c);
	if (p->below)
		c = (struct legend){p, top.x + 2.4 * PLAN_LEGEND_WIDTH, top.y + 0.4 * LINE,
				    PLAN_LEGEND_WIDTH};
	zones(&c);
	drawing_view(p->d, open);
}
