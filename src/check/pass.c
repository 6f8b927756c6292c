/* SPDX-License-Identifier: MIT */
/* One pass: attachments with their reactions and forces, rails, rafters, collectors, and the worst of each link. */
#include "check/pass.h"

#include <math.h>
#include <stddef.h>
#include <string.h>

#include "check/attachment.h"
#include "check/layout_rule.h"
#include "check/rafter_check.h"
#include "check/rail.h"
#include "check/levered.h"
#include "check/rail_pattern.h"

static void place(const struct context *c, const struct layout *layout, int line, struct pass *pass)
{
	const struct line *l = &c->line[line];
	const int n = layout->count[line];
	const int *at = layout->rafter[line];

	for (int i = 0; i < n && pass->attachments < ATTACHMENT_MAX; i++) {
		const double x = c->r->rafter_x[at[i]];
		const double left = i > 0 ? (c->r->rafter_x[at[i - 1]] + x) / 2 : l->x0;
		const double right = i + 1 < n ? (x + c->r->rafter_x[at[i + 1]]) / 2 : l->x1;
		struct attachment *a = &pass->attachment[pass->attachments++];

		memset(a, 0, sizeof *a);
		a->number = pass->attachments;
		a->line = line;
		a->rafter = at[i];
		a->x = x;
		a->y = l->y;
		a->tributary = (struct rectangle){ left, l->y_low, right, l->y_high };
		a->tributary_width = right - left;
		a->tributary_depth = l->y_high - l->y_low;
		a->area = a->tributary_width * a->tributary_depth;
		a->reaction_width = a->tributary_width;
	}
}

static void run_line(struct context *c, const struct layout *layout, int line, struct pass *pass)
{
	struct rail_line *rail = &pass->line[pass->lines++];
	const int first = pass->attachments;

	memset(rail, 0, sizeof *rail);
	place(c, layout, line, pass);
	rail->line = line;
	rail->y = c->line[line].y;
	rail->x0 = c->line[line].x0;
	rail->x1 = c->line[line].x1;
	rail->cantilever_limit = layout->cantilever[line];
	rail->first = first;
	rail->count = pass->attachments - first;
	if (rail->count < 2 || !rail_reactions(&c->line[line], &pass->attachment[first], rail->count)) {
		REMARK(c->r, NO_RAFTER, rail->count);
		pass->complete = false;
		return;
	}
	rail_snow_widths(c, &c->line[line], &pass->attachment[first], rail->count);
	levered_prepare(c, &c->line[line], &pass->attachment[first], rail->count);
	for (int i = first; i < pass->attachments; i++)
		attachment_run(c, &pass->attachment[i]);
	rail_run(c, &c->line[line], &pass->attachment[first], rail->count, rail, NULL);
}

/* A pressure that the maker rates, against the ASD combinations. The effective wind area is one
   collector's. */
static void run_collectors(struct context *c, struct pass *pass)
{
	const struct job_collector *k = &c->job->collector;
	double normal, slope;

	memset(pass->collector, 0, sizeof pass->collector);
	for (int i = 0; i < c->r->collectors && (isfinite(k->rated_uplift) || isfinite(k->rated_down)); i++) {
		const struct rectangle *part = &c->r->collector[i];
		const struct array_pressure p = array_pressure_at(c, part, k->length * k->width,
		                                                  array_exposed(c, part, NULL), NULL);

		for (int j = 0; j < c->asds; j++) {
			const struct load_combination *x = &c->asd[j];

			if (array_load_up(c, x, p.up, 1, NULL, &normal, &slope))
				check_keep(pass->collector, CHECK_COLLECTOR_UPLIFT, normal, k->rated_uplift, x->text);
			for (int s = 0; s < c->snow.cases; s++)
				if (array_load_down(c, x, p.down, array_snow(c, s, part->y1), 1, NULL, &normal, &slope))
					check_keep(pass->collector, CHECK_COLLECTOR_DOWN, normal, k->rated_down,
					           x->text);
		}
	}
}

double pass_collector_ratio(struct context *c, struct pass *pass)
{
	double ratio = 0;

	run_collectors(c, pass);
	for (int i = 0; i < (int)CHECK_COUNT; i++)
		if (pass->collector[i].rated)
			ratio = fmax(ratio, pass->collector[i].ratio);
	return ratio;
}

static void link_take(struct pass *pass, const struct check_value check[CHECK_COUNT], int at)
{
	for (int i = 0; i < (int)CHECK_COUNT; i++) {
		const enum link l = check_link((enum check_id)i);

		if (!check[i].rated || (isfinite(pass->link_ratio[l]) && check[i].ratio <= pass->link_ratio[l]))
			continue;
		pass->link_ratio[l] = check[i].ratio;
		pass->link_at[l] = at;
		pass->link_governs[l] = (enum check_id)i;
	}
}

static void links(struct context *c, struct pass *pass)
{
	for (int l = 0; l < (int)LINK_COUNT; l++) {
		pass->link_ratio[l] = NAN;
		pass->link_at[l] = 0;
	}
	link_take(pass, pass->collector, 0);
	for (int i = 0; i < pass->attachments; i++)
		link_take(pass, pass->attachment[i].check, pass->attachment[i].number);
	for (int i = 0; i < pass->lines; i++)
		link_take(pass, pass->line[i].check, i + 1);
	for (int i = 0; i < pass->rafters; i++)
		link_take(pass, pass->rafter[i].after, pass->rafter[i].rafter + 1);
	if (!c->fastener_rated)
		pass->link_ratio[LINK_FASTENER] = NAN;
	pass->ratio = 0;
	for (int l = 0; l < (int)LINK_COUNT; l++)
		if (pass->link_ratio[l] > pass->ratio) { /* false for NAN */
			pass->ratio = pass->link_ratio[l];
			pass->governs = pass->link_governs[l];
		}
}

static void governing(struct pass *pass)
{
	pass->governing_attachment = pass->governing_rafter = pass->governing_line = 0;
	for (int i = 1; i < pass->attachments; i++)
		if (pass->attachment[i].ratio > pass->attachment[pass->governing_attachment].ratio)
			pass->governing_attachment = i;
	for (int i = 1; i < pass->rafters; i++)
		if (pass->rafter[i].ratio_after > pass->rafter[pass->governing_rafter].ratio_after)
			pass->governing_rafter = i;
	for (int i = 1; i < pass->lines; i++)
		if (pass->line[i].ratio > pass->line[pass->governing_line].ratio)
			pass->governing_line = i;
}

void pass_run(struct context *c, const struct layout *layout, struct pass *pass)
{
	pass->attachments = pass->lines = pass->rafters = 0;
	pass->complete = true;
	c->curve_matters = c->coefficient_missing = false;
	for (int i = 0; i < c->lines; i++)
		run_line(c, layout, i, pass);
	rafter_run(c, pass);
	run_collectors(c, pass);
	links(c, pass);
	governing(pass);
	pass->holds = pass->complete && !c->coefficient_missing && pass->ratio <= 1 && !layout_breaks_rule(c, layout);
}

/* Of the arrays only what is counted: there is room for far more. */
#define COPY_PART(first, next) \
	memcpy((char *)to + offsetof(struct pass, first), (const char *)from + offsetof(struct pass, first), \
	       offsetof(struct pass, next) - offsetof(struct pass, first))
void pass_copy(struct pass *to, const struct pass *from)
{
	COPY_PART(name, attachment);
	memcpy(to->attachment, from->attachment, (size_t)from->attachments * sizeof *from->attachment);
	COPY_PART(lines, line);
	memcpy(to->line, from->line, (size_t)from->lines * sizeof *from->line);
	COPY_PART(rafters, rafter);
	memcpy(to->rafter, from->rafter, (size_t)from->rafters * sizeof *from->rafter);
	memcpy(to->collector, from->collector, sizeof *from - offsetof(struct pass, collector));
}

void pass_explain(struct context *c, const struct pass *pass)
{
	struct result *r = c->r;

	if (!pass->complete)
		return;
	attachment_explain(c, &pass->attachment[pass->governing_attachment], &r->trace[SECTION_ATTACHMENT],
	                   &r->trace[SECTION_FASTENER]);
	struct rail_line rail = pass->line[pass->governing_line];

	rail_run(c, &c->line[rail.line], &pass->attachment[rail.first], rail.count, &rail, &r->trace[SECTION_RAIL]);
	if (pass->rafters > 0)
		rafter_explain(c, pass, &pass->rafter[pass->governing_rafter], &r->trace[SECTION_RAFTER]);
}
