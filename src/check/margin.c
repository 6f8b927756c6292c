/* SPDX-License-Identifier: MIT */
/* Every figure is a run of the whole check on a changed job. Inputs are moved one at a time on the
   layout that the job has as it stands: a new layout would hide what the input does. */
#include "check/margin.h"

#include <math.h>
#include <string.h>

#include "check/margin_move.h"
#include "check/pass.h"

#define WIND_MOST (250 * MPH)
#define SNOW_MOST (300 * PSF)
#define HALVINGS 30

/* A changed job on the layout of the job as it stands. */
struct trial {
	const struct job *job;
	struct check_workspace *w;
	struct layout layout;
	enum wind_curve curve;
};

static bool fails(const struct result *r)
{
	for (int i = 0; i < r->remarks; i++)
		if (remark_kind(r->remark[i].id) == REMARK_FAILS)
			return true;
	return false;
}

/* Rates w->job, which has been changed. */
static struct margin_side rate(struct trial *t)
{
	struct pass *pass = &t->w->result.pass[1];

	pass->ratio = HUGE_VAL;
	pass->complete = false;
	const bool holds = check_layout(&t->w->job, &t->w->result, t->curve, &t->layout, pass);

	return (struct margin_side){true, holds && !fails(&t->w->result),
				    pass->complete ? pass->ratio : HUGE_VAL};
}

static struct margin_side side(struct trial *t, enum margin_id id, int sign)
{
	t->w->job = *t->job;
	return margin_moves[id](&t->w->job, sign) ? rate(t) : (struct margin_side){.known = false};
}

/* Both curves on the same layout, where they differ. */
static void both_curves(struct trial *t, struct margin_row *row)
{
	t->w->job = *t->job;
	t->curve = CURVE_SAFE_SIDE;
	row->worse = rate(t);
	t->curve = CURVE_RECALLED;
	row->better = rate(t);
}

static void fill_row(struct trial *t, struct margin_row *row, enum margin_id id)
{
	const enum wind_curve curve = t->curve;

	*row = (struct margin_row){.id = id,
				   .origin = (enum field_origin)t->job->origin[margin_field(id)]};
	if (!margin_moves[id]) {
		both_curves(t, row);
		t->curve = curve;
		return;
	}
	row->worse = side(t, id, 1);
	row->better = side(t, id, -1);
	if (row->better.known && row->worse.known && row->better.ratio > row->worse.ratio) {
		const struct margin_side swap = row->worse;

		row->worse = row->better;
		row->better = swap;
		row->turned = true;
	}
}

/* By how much the worse step raises the ratio; what makes it fail outweighs any number. */
static double weight(const struct margin *m, const struct margin_row *row)
{
	if (!row->worse.known)
		return -1;
	return (row->worse.ratio - m->ratio) + (m->holds && !row->worse.holds ? 1e6 : 0);
}

static void rows(struct trial *t, bool curves, struct margin *m)
{
	for (int i = 0; i < (int)MARGIN_COUNT; i++) {
		struct margin_row row;

		if (i == MARGIN_COEFFICIENTS && !curves)
			continue;
		fill_row(t, &row, (enum margin_id)i);
		if (!row.worse.known && !row.better.known)
			continue;
		int at = m->rows++;

		for (; at > 0 && weight(m, &m->row[at - 1]) < weight(m, &row); at--)
			m->row[at] = m->row[at - 1];
		m->row[at] = row;
	}
}

/* Sets the quantity that grows. */
static void set_growth(struct job *job, enum growth_id id, double value)
{
	if (id == GROWTH_WIND)
		job->site.wind_speed = value;
	else
		job->site.ground_snow = value;
}

static bool holds_at(struct trial *t, enum growth_id id, double value)
{
	t->w->job = *t->job;
	set_growth(&t->w->job, id, value);
	return rate(t).holds;
}

/* More wind or snow never helps a fixed layout: bisection. */
static struct growth bisect(struct trial *t, enum growth_id id, double now, double low, double high)
{
	struct growth g = {.now = now, .most = NAN};

	if (!holds_at(t, id, low))
		return g;
	g.no_end = holds_at(t, id, high);
	g.most = high;
	if (g.no_end)
		return g;
	for (int i = 0; i < HALVINGS; i++) {
		const double middle = (low + high) / 2;

		if (holds_at(t, id, middle))
			low = middle;
		else
			high = middle;
	}
	g.most = low;
	return g;
}

static bool whole_holds(struct trial *t)
{
	check_run_quick(&t->w->job, &t->w->result);
	const struct result *r = &t->w->result;

	return r->passes > 0 && r->pass[r->judged].holds && !fails(r);
}

/* A wanted spacing in whole rafter spacings, from one upwards, as the user would set it. */
static struct growth spacing(struct trial *t, const struct result *r, double bay, double width)
{
	struct growth g = {.now = 0, .most = NAN};
	const struct pass *p = &r->pass[r->judged];

	for (int i = 0; i < p->lines; i++)
		g.now = fmax(g.now, p->line[i].longest_span);
	for (int n = 1; bay > 0; n++) {
		t->w->job = *t->job;
		t->w->job.mount.holes = 0;
		t->w->job.mount.spacing = n * bay;
		if (!whole_holds(t))
			return g;
		g.most = n * bay;
		if (n * bay >= width)
			break;
	}
	g.no_end = bay > 0;
	return g;
}

/* One column more at a time to the right, on a new layout each. */
static struct growth columns(struct trial *t, double plane_length)
{
	struct growth g = {.now = t->job->collector.columns, .most = NAN};

	for (int n = 1; n * t->job->collector.rows <= COLLECTOR_MAX; n++) {
		t->w->job = *t->job;
		t->w->job.mount.holes = 0;
		t->w->job.collector.columns = n;
		const bool holds = whole_holds(t);

		g.no_end = !at_most(t->w->result.array.x1, plane_length);
		if (g.no_end || (!holds && n >= t->job->collector.columns))
			return g;
		if (holds)
			g.most = n;
	}
	g.no_end = true;
	return g;
}

static void layout_of(const struct result *r, struct layout *layout)
{
	const struct pass *p = &r->pass[r->judged];

	memset(layout, 0, sizeof *layout);
	layout->block = r->block.kind;
	for (int i = 0; i < p->attachments; i++) {
		const struct attachment *a = &p->attachment[i];

		layout->rafter[a->line][layout->count[a->line]++] = a->rafter;
	}
}

void margin_find(const struct job *job, struct check_workspace *w, struct margin *out)
{
	struct trial t = {.job = job, .w = w};
	const struct result *r = &w->result;

	*out = (struct margin){.rated = false};
	w->job = *job;
	check_run_plain(&w->job, &w->result);
	/* a ratio of 0 is that of a layout with nothing to hold it against */
	if (r->passes == 0 || !r->pass[r->judged].complete || !(r->pass[r->judged].ratio > 0))
		return;
	const struct pass *p = &r->pass[r->judged];
	const bool curves = r->passes == 2;
	const double length = r->plane_length, width = r->array.x1 - r->array.x0, bay = mean_bay(r);

	out->rated = true;
	out->holds = p->holds && !fails(r);
	out->ratio = p->ratio;
	out->governs = p->governs;
	out->attachments = p->attachments;
	layout_of(r, &t.layout);
	t.curve = r->passes == 2 && r->judged == 0 ? CURVE_RECALLED : CURVE_SAFE_SIDE;
	out->growth[GROWTH_SPACING] = spacing(&t, r, bay, width);
	out->growth[GROWTH_COLUMNS] = columns(&t, length);
	rows(&t, curves, out);
	out->growth[GROWTH_WIND] = bisect(&t, GROWTH_WIND, job->site.wind_speed, MPH, WIND_MOST);
	out->growth[GROWTH_SNOW] = bisect(&t, GROWTH_SNOW, job->site.ground_snow, 0, SNOW_MOST);
}
