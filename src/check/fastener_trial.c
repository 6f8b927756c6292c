/* SPDX-License-Identifier: MIT */
/* Asks the check's own fastener functions about one size: a job that has nothing but a rafter, a
   foot and its fasteners, and one load case. */
#include "check/fastener_trial.h"

#include <math.h>
#include <string.h>

#include "check/fastener.h"

/* The least E of NDS Supplement Tables 4A and 4B, psi: stiffness of the rafter in the group factor
   where nobody says more; the softer rafter shares worse (safe side). */
#define LEAST_E 600e3

void fastener_trial_begin(const struct fastener_question *q, struct check_workspace *w)
{
	struct job *job = &w->job;

	memset(w, 0, sizeof *w);
	job->framing.kind = q->kind == FASTENER_SHEET_SCREW ? FRAMING_STEEL : FRAMING_RAFTER;
	job->framing.breadth = q->breadth;
	job->framing.depth = q->depth;
	job->framing.wet = q->wet ? ANSWER_YES : ANSWER_NO;
	job->framing.incised = ANSWER_NO;
	job->framing.temperature = q->temperature;
	job->mount.seat = SEAT_OVER_LAYERS;
	job->mount.height = q->height;
	job->mount.plate_thickness = q->plate;
	job->mount.lever_arm = q->arm;
	job->fastener.kind = q->kind;
	job->fastener.count = q->count;
	job->fastener.spacing = q->spacing;
	job->fastener.end_distance = q->end_distance;
	job->fastener.drilling_tolerance = q->tolerance;
	job->fastener.steel_thickness = q->steel_thickness;
	job->fastener.steel_strength = q->steel_strength;
	job->site.method = q->lrfd ? METHOD_LRFD : METHOD_ASD;
}

/* Any grade of a species bears the same across the grain; its stiffness is taken from the least. */
static void lumber(const struct fastener_question *q, struct context *c)
{
	c->G = q->G;
	c->lumber_known = true;
	if (q->species == NULL || !lumber_piece_find(q->species, "No.3", q->breadth, q->depth, &c->lumber))
		c->lumber = (struct lumber_piece){.G = q->G};
	c->lumber.E = LEAST_E * N_PER_LBF / (M_PER_IN * M_PER_IN);
}

static void context_of(const struct fastener_question *q, struct check_workspace *w,
		       struct context *c)
{
	memset(c, 0, CONTEXT_CLEARED);
	c->job = &w->job;
	c->r = &w->result;
	c->lrfd = q->lrfd;
	c->foot_height = q->height;
	c->layers_given = true;
	c->layers = q->layers;
	c->layers_gap = q->gap;
	lumber(q, c);
}

static void size_of(const struct fastener_question *q, struct job_fastener *f, double D, double L)
{
	f->diameter = D;
	f->length = q->kind == FASTENER_LAG_SCREW || q->kind == FASTENER_WOOD_SCREW ? L
										       : (double)NAN;
	f->thread_length = q->kind == FASTENER_HANGER_BOLT ? L : (double)NAN;
	f->washer_diameter = q->kind == FASTENER_THROUGH_BOLT ? L : (double)NAN;
}

static const struct remark *said(const struct result *r, enum remark_id id)
{
	for (int i = 0; i < r->remarks; i++)
		if (r->remark[i].id == id)
			return &r->remark[i];
	return NULL;
}

static const enum check_id pulls[] = {CHECK_WITHDRAWAL, CHECK_TENSION, CHECK_PULL, CHECK_BREAK,
				      CHECK_WASHER};
static const enum check_id sides[] = {CHECK_LATERAL, CHECK_SIDE};
#define COUNT(a) (int)(sizeof(a) / sizeof *(a))

static double least(const struct check_value check[CHECK_COUNT], const enum check_id *id, int n,
		    double *demand)
{
	double capacity = HUGE_VAL;

	for (int i = 0; i < n; i++)
		if (check[id[i]].rated && check[id[i]].capacity < capacity) {
			capacity = check[id[i]].capacity;
			*demand = check[id[i]].demand;
		}
	return capacity;
}

static void fill(struct fastener_row *r, const struct check_value check[CHECK_COUNT])
{
	r->Wp = least(check, pulls, COUNT(pulls), &r->pull);
	r->Z = least(check, sides, COUNT(sides), &r->side);
	r->ratio = 0;
	for (int i = 0; i < (int)CHECK_COUNT; i++)
		if (check[i].rated && !(check[i].ratio <= r->ratio)) {
			r->ratio = check[i].ratio;
			r->governs = (enum check_id)i;
		}
}

struct fastener_row fastener_trial(const struct fastener_question *q, struct check_workspace *w,
				   double D, double L)
{
	const struct force f = {.combination = "the load given", .CD = q->lrfd ? q->lambda : q->CD};
	struct fastener_row r = {.D = D,
				 .L = L,
				 .state = FASTENER_STATE_UNRATED,
				 .p_t = (double)NAN,
				 .ratio = (double)NAN};
	struct check_value check[CHECK_COUNT] = {{0}};
	struct context c;

	w->result.remarks = 0;
	w->result.fastener = (struct fastener_result){0};
	size_of(q, &w->job.fastener, D, L);
	context_of(q, w, &c);
	fastener_prepare(&c);
	r.lead_low = w->result.fastener.lead_hole_low;
	r.lead_high = w->result.fastener.lead_hole_high;
	r.through = c.screw.through;
	if (c.screw.p_t > 0)
		r.p_t = c.screw.p_t;
	const struct remark *unrated = said(&w->result, REMARK_FASTENER_UNRATED);

	if (said(&w->result, REMARK_PENETRATION) || said(&w->result, REMARK_PENETRATION_SCREW)) {
		r.state = FASTENER_STATE_SHORT;
		return r;
	}
	r.why = unrated ? unrated->text[0] : NULL;
	if (!fastener_check(&c, NULL, &f, q->uplift, q->slope, check))
		return r;
	fill(&r, check);
	r.state = said(&w->result, REMARK_EDGE) ? FASTENER_STATE_NO_ROOM
		  : r.ratio <= 1                ? FASTENER_STATE_HOLDS
						: FASTENER_STATE_OVERLOADED;
	return r;
}
