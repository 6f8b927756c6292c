/* SPDX-License-Identifier: MIT */
/* Every figure is a run of the whole check on a changed job. Inputs are moved one at a time on the
   layout that the job has as it stands: a new layout would hide what the input does. */
#include "check/margin.h"

#include <math.h>
#include <string.h>

#include "check/pass.h"

#define PSF (N_PER_LBF / (M_PER_FT * M_PER_FT))
#define MPH (M_PER_MI / 3600)
#define WIND_MOST (250 * MPH)
#define SNOW_MOST (300 * PSF)
#define HALVINGS 30

enum field_id margin_field(enum margin_id id)
{
	static const enum field_id field[] = {
#define M(id, field, worse, better) FIELD_##field,
		MARGINS(M)
#undef M
	};

	return field[id];
}

/* The same steps, rounded, where the job is in SI; those without a size read the same. */
static const char *const in_si[MARGIN_COUNT][2] = {
	[MARGIN_SPAN] = {"152 mm less", "152 mm more"},
	[MARGIN_THREAD] = {"6 mm more", "6 mm less"},
	[MARGIN_LAYERS] = {"6 mm less between foot and rafter", "6 mm more between foot and rafter"},
	[MARGIN_DRILLING] = {"6 mm nearer to the centre", "6 mm farther off the centre"},
	[MARGIN_WIND] = {"2.2 m/s less", "2.2 m/s more"},
	[MARGIN_SNOW] = {"0.24 kPa less", "0.24 kPa more"},
	[MARGIN_HEIGHT] = {"0.9 m less", "0.9 m more"},
	[MARGIN_PITCH] = {"1 in 24 flatter", "1 in 24 steeper"},
	[MARGIN_DEAD] = {"0.1 kPa less", "0.1 kPa more"},
};

const char *margin_words(const struct margin_row *row, bool worse, enum unit_system units)
{
	static const char *const words[][2] = {
#define M(id, field, worse, better) {better, worse},
		MARGINS(M)
#undef M
	};
	const bool side = worse != row->turned;

	if (units == SYSTEM_SI && in_si[row->id][side])
		return in_si[row->id][side];
	return words[row->id][side];
}

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

static bool species(struct job *job, int sign)
{
	const char *other = sign > 0 ? "Spruce-Pine-Fir (South)" : "Douglas Fir-Larch";

	if (strcmp(job->framing.species, other) == 0)
		return false;
	strcpy(job->framing.species, other);
	return true;
}

static bool grade(struct job *job, int sign)
{
	static const char *const grades[] = {"Select Structural", "No.1", "No.2", "No.3"};
	const int n = sizeof grades / sizeof *grades;

	for (int i = 0; i < n; i++)
		if (strcmp(job->framing.grade, grades[i]) == 0 && i + sign >= 0 && i + sign < n) {
			strcpy(job->framing.grade, grades[i + sign]);
			return true;
		}
	return false;
}

static bool span(struct job *job, int sign)
{
	job->framing.span += sign * 6 * M_PER_IN;
	return job->framing.span > 0;
}

/* NDS-2018 Appendix L, Table L2: the least thread is half the length and half an inch, or 6 in. */
static bool thread(struct job *job, int sign)
{
	double *T = &job->fastener.thread_length;

	if (isnan(*T))
		*T = fmin(job->fastener.length / 2 + 0.5 * M_PER_IN,
			  fmin(6 * M_PER_IN, job->fastener.length));
	*T -= sign * 0.25 * M_PER_IN;
	return *T > 0 && at_most(*T, job->fastener.length);
}

static bool layers(struct job *job, int sign)
{
	job->roof.deck_thickness += sign * 0.25 * M_PER_IN;
	return job->roof.deck_thickness > 0 && job->mount.seat != SEAT_ON_WOOD;
}

static bool drilling(struct job *job, int sign)
{
	job->fastener.drilling_tolerance += sign * 0.25 * M_PER_IN;
	return job->fastener.drilling_tolerance >= 0;
}

static bool exposure(struct job *job, int sign)
{
	const int e = (int)job->site.exposure + sign;

	if (e < (int)EXPOSURE_B || e > (int)EXPOSURE_D)
		return false;
	job->site.exposure = (enum exposure)e;
	return true;
}

static bool wind(struct job *job, int sign)
{
	job->site.wind_speed += sign * 5 * MPH;
	return job->site.wind_speed > 0;
}

static bool snow(struct job *job, int sign)
{
	const double before = job->site.ground_snow;

	job->site.ground_snow = fmax(0, before + sign * 5 * PSF);
	return sign > 0 || before > 0;
}

static bool height(struct job *job, int sign)
{
	job->building.mean_roof_height += sign * 3 * M_PER_FT;
	return job->building.mean_roof_height > 0;
}

static bool pitch(struct job *job, int sign)
{
	job->roof.pitch = atan(tan(job->roof.pitch) + sign * 0.5 / 12);
	return job->roof.pitch >= 0;
}

static bool dead(struct job *job, int sign)
{
	job->roof.dead_load += sign * 2 * PSF;
	return job->roof.dead_load > 0;
}

typedef bool move(struct job *job, int sign);

/* sign 1 is most often the worse way; the sides are sorted afterwards. */
static move *const moves[] = {
	[MARGIN_SPECIES] = species,   [MARGIN_GRADE] = grade,   [MARGIN_SPAN] = span,
	[MARGIN_THREAD] = thread,     [MARGIN_LAYERS] = layers, [MARGIN_DRILLING] = drilling,
	[MARGIN_EXPOSURE] = exposure, [MARGIN_WIND] = wind,     [MARGIN_SNOW] = snow,
	[MARGIN_HEIGHT] = height,     [MARGIN_PITCH] = pitch,   [MARGIN_DEAD] = dead,
	[MARGIN_COEFFICIENTS] = NULL,
};

static struct margin_side side(struct trial *t, enum margin_id id, int sign)
{
	t->w->job = *t->job;
	return moves[id](&t->w->job, sign) ? rate(t) : (struct margin_side){.known = false};
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
	if (!moves[id]) {
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
	if (r->passes == 0 || !r->pass[r->judged].complete)
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
