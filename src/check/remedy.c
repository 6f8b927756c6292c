/* SPDX-License-Identifier: MIT */
/* What would make it hold. Every remedy is proved by a run of the whole check on the changed job. */
#include "check/remedy.h"

#include "check/pass.h"

#include <math.h>

#define LONGEST_SCREW (8 * M_PER_IN)

/* Each changes the job and returns false where it has nothing to change; *value is what the remark shows first. */
static bool closer(struct job *job, double *value)
{
	if (!isfinite(job->mount.spacing))
		return false;
	*value = job->mount.spacing;
	job->mount.spacing = NAN;
	return true;
}

static bool longer(struct job *job, double *value)
{
	if (job->fastener.kind != FASTENER_LAG_SCREW && job->fastener.kind != FASTENER_WOOD_SCREW)
		return false; /* the values of others are tested, or have nothing to do with the length */
	job->fastener.length += M_PER_IN;
	job->fastener.thread_length = NAN;
	*value = job->fastener.length;
	return at_most(job->fastener.length, LONGEST_SCREW);
}

static bool much_longer(struct job *job, double *value)
{
	job->fastener.length += M_PER_IN;
	return longer(job, value);
}

static bool longest(struct job *job, double *value)
{
	job->fastener.length += M_PER_IN;
	return much_longer(job, value);
}

static bool is_length(bool (*apply)(struct job *, double *))
{
	return apply == longer || apply == much_longer || apply == longest;
}

/* Two screws along the rafter at the spacing that needs no reduction, 4 D (NDS Table 12.5.1B), and for
   screws under 1/4 in no lead holes either, 10 D (Table C12.1.5.7). */
static bool two_screws(struct job *job, double *value)
{
	if (job->fastener.count > 1 || job->fastener.kind == FASTENER_SEAM_CLAMP ||
	    job->fastener.kind == FASTENER_DECK_MOUNT)
		return false;
	job->fastener.count = 2;
	job->fastener.spacing =
		(at_least(job->fastener.diameter, 0.25 * M_PER_IN) ? 4 : 10) * job->fastener.diameter;
	*value = job->fastener.spacing;
	return true;
}

static bool rigid_seat(struct job *job, double *value)
{
	*value = 0;
	if (job->mount.seat == SEAT_ON_WOOD || job->mount.seat == SEAT_RIGID_POST)
		return false;
	job->mount.seat = SEAT_RIGID_POST;
	return true;
}

static bool stagger(struct job *job, double *value)
{
	*value = 0;
	if (job->mount.stagger == ANSWER_YES)
		return false;
	job->mount.stagger = ANSWER_YES;
	return true;
}

static bool double_rafter(struct job *job, double *value)
{
	*value = 0;
	job->framing.breadth *= 2;
	return true;
}

static bool brace(struct job *job, double *value)
{
	const double length = job->framing.span / cos(job->roof.pitch);

	*value = length / 3;
	if (job->roof.ceiling != CEILING_NONE ||
	    (isfinite(job->framing.brace_spacing) && job->framing.brace_spacing <= *value))
		return false;
	job->framing.brace_spacing = *value;
	return true;
}

/* A support half way. */
static bool support(struct job *job, double *value)
{
	if (job->framing.inner_support > 0)
		return false;
	job->framing.span /= 2;
	*value = job->framing.span;
	return *value >= 4 * M_PER_FT;
}

static bool fewer(struct job *job, double *value)
{
	if (job->collector.columns < 2)
		return false;
	*value = --job->collector.columns;
	return true;
}

/* Feet where no rafter is. */
static bool blocks(struct job *job, double *value)
{
	*value = 0;
	if (job->mount.between == BETWEEN_BLOCKING || job->framing.kind != FRAMING_RAFTER || job->fastener.count != 1 ||
	    (job->fastener.kind != FASTENER_LAG_SCREW && job->fastener.kind != FASTENER_WOOD_SCREW))
		return false;
	job->mount.between = BETWEEN_BLOCKING;
	return true;
}

static const struct change {
	bool (*apply)(struct job *, double *);
	enum remark_id remark;
} changes[] = {
	{ closer, REMARK_REMEDY_SPACING },      { longer, REMARK_REMEDY_LONGER },
	{ much_longer, REMARK_REMEDY_LONGER },  { rigid_seat, REMARK_REMEDY_SEAT },
	{ longest, REMARK_REMEDY_LONGER },
	{ two_screws, REMARK_REMEDY_TWO },      { stagger, REMARK_REMEDY_STAGGER },
	{ brace, REMARK_REMEDY_BRACE },         { double_rafter, REMARK_REMEDY_RAFTER },
	{ support, REMARK_REMEDY_SPAN },        { fewer, REMARK_REMEDY_FEWER },
	{ blocks, REMARK_REMEDY_BLOCKING },
};
#define CHANGES (sizeof changes / sizeof *changes)

/* Widest bay of the trial's layout, for the spacing remedy. */
static double widest(const struct result *r)
{
	const struct pass *p = &r->pass[r->judged];
	double most = 0;

	for (int i = 0; i < p->lines; i++)
		most = fmax(most, p->line[i].longest_span);
	return most;
}

static void say(const struct job *job, struct result *r, const struct change *x, double value, const struct result *trial)
{
	const double ratio = trial->pass[trial->judged].ratio;
	const double shown[3] = { value, ratio,
		                  x->remark == REMARK_REMEDY_FEWER ? job->collector.columns
		                                                   : job->fastener.diameter };
	const char *const none[3] = { 0 };

	remark_add(r, x->remark, shown, none);
}

/* What is wrong with a place or an entry, and not with anything's strength: it says itself what is to be done. */
static bool stands_apart(enum remark_id id)
{
	return id == REMARK_VALLEY || id == REMARK_JOINT_ASTRAY;
}

/* True if nothing fails that more strength could mend; reasons for an engineer that stood before do not count against a
   remedy. */
static bool cured(const struct result *trial)
{
	if (trial->passes == 0 || !trial->pass[trial->judged].holds)
		return false;
	for (int i = 0; i < trial->remarks; i++)
		if (remark_kind(trial->remark[i].id) == REMARK_FAILS && !stands_apart(trial->remark[i].id))
			return false;
	return true;
}

static void say_apart(struct result *r)
{
	bool valley = false, joint = false;

	for (int i = 0; i < r->remarks; i++) {
		valley = valley || r->remark[i].id == REMARK_VALLEY;
		joint = joint || r->remark[i].id == REMARK_JOINT_ASTRAY;
	}
	if (valley || joint)
		REMARK_T(r, REMEDY_BESIDES, (0),
		         valley && joint ? "valley and of the rail's joint" : valley ? "valley" : "rail's joint");
}

/* A spacing of whole bays that holds when it is asked for by itself: the remark names it, so it is what is proved. */
static bool spacing_holds(struct check_workspace *w, double *value)
{
	const double bay = mean_bay(&w->result);

	for (double s = widest(&w->result); bay > 0 && s > 0; s -= bay) {
		w->job.mount.spacing = s;
		check_run_quick(&w->job, &w->result);
		*value = s;
		if (cured(&w->result))
			return true;
	}
	return false;
}

static bool try_one(const struct job *job, struct result *r, struct check_workspace *w, size_t i)
{
	double value;

	w->job = *job;
	if (!changes[i].apply(&w->job, &value))
		return false;
	check_run_quick(&w->job, &w->result);
	if (!cured(&w->result) || (changes[i].apply == closer && !spacing_holds(w, &value)))
		return false;
	say(job, r, &changes[i], value, &w->result);
	return true;
}

static bool try_two(const struct job *job, struct result *r, struct check_workspace *w, size_t i, size_t j)
{
	double first, second;

	w->job = *job;
	if (!changes[i].apply(&w->job, &first) || !changes[j].apply(&w->job, &second))
		return false;
	check_run_quick(&w->job, &w->result);
	if (!cured(&w->result) || (changes[i].apply == closer && !spacing_holds(w, &first)))
		return false;
	REMARK(r, REMEDY_BOTH, 0);
	say(job, r, &changes[i], first, &w->result);
	say(job, r, &changes[j], second, &w->result);
	return true;
}

void remedies_find(const struct job *job, struct result *r, struct check_workspace *w)
{
	bool found = false;
	bool failing = r->passes > 0 && !r->pass[r->judged].holds;

	for (int i = 0; i < r->remarks; i++)
		failing = failing || (remark_kind(r->remark[i].id) == REMARK_FAILS && !stands_apart(r->remark[i].id));
	if (!failing)
		return;
	say_apart(r);
	for (size_t i = 0; i < CHANGES; i++)
		if (changes[i].apply != longest || !found) /* only where less does not do */
			found = try_one(job, r, w, i) || found;
	for (size_t i = 0; i < CHANGES && !found; i++)
		for (size_t j = i + 1; j < CHANGES && !found; j++)
			/* blocks stand for themselves: many kinds are tried already */
			found = changes[j].apply != blocks &&
				!(is_length(changes[i].apply) && is_length(changes[j].apply)) &&
				try_two(job, r, w, i, j);
	if (!found)
		REMARK(r, REMEDY_NONE, 0);
}
