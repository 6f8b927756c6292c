/* SPDX-License-Identifier: MIT */
/* The drawings of a set by their words, in the order in which they stand in it. */
#include <stdlib.h>
#include <string.h>

#include "report/flashing_sizes.h"
#include "sheet/flashing_plan.h"
#include "sheet/plan.h"
#include "sheet/section.h"
#include "sheet/sheets.h"
#include "sheet/site_plan.h"

typedef bool exists_fn(const struct sheet *s, int which);
typedef struct drawing *draw_fn(const struct sheet *s, int which, struct sheet_room room);

struct view_row {
	const char *word, *name;
	exists_fn *exists;
	draw_fn *draw;
};

static bool always(const struct sheet *s, int which)
{
	(void)s;
	(void)which;
	return true;
}

static bool has_layout(const struct sheet *s, int which)
{
	(void)which;
	return s->r->passes > 0 && s->pass->attachments > 0;
}

static bool has_pipe(const struct sheet *s, int which)
{
	return section_exists(s, SECTION_OF_PIPE, which);
}

static bool has_rack(const struct sheet *s, int which)
{
	return section_exists(s, SECTION_OF_RACK, which);
}

static bool has_block(const struct sheet *s, int which)
{
	return section_exists(s, SECTION_OF_BLOCK, which);
}

static bool has_above(const struct sheet *s, int which)
{
	return which < flashing_plan_pages(s);
}

static struct drawing *site(const struct sheet *s, int which, struct sheet_room room)
{
	(void)which;
	return site_plan_draw(s, room);
}

static struct drawing *plan(const struct sheet *s, int which, struct sheet_room room)
{
	(void)which;
	return plan_draw(s, PLAN_WHOLE, room, true);
}

static struct drawing *layout(const struct sheet *s, int which, struct sheet_room room)
{
	(void)which;
	return plan_draw(s, PLAN_ARRAY, room, true);
}

static struct drawing *rack(const struct sheet *s, int which, struct sheet_room room)
{
	return section_draw(s, SECTION_OF_RACK, which, room);
}

static struct drawing *attachment(const struct sheet *s, int which, struct sheet_room room)
{
	return section_draw(s, SECTION_OF_FOOT, which, room);
}

static struct drawing *block(const struct sheet *s, int which, struct sheet_room room)
{
	return section_draw(s, SECTION_OF_BLOCK, which, room);
}

static struct drawing *above(const struct sheet *s, int which, struct sheet_room room)
{
	return flashing_plan_draw(s, which, room);
}

static struct drawing *pipe_through(const struct sheet *s, int which, struct sheet_room room)
{
	return section_draw(s, SECTION_OF_PIPE, which, room);
}

enum view_id {
	VIEW_SITE,
	VIEW_PLAN,
	VIEW_LAYOUT,
	VIEW_RACK,
	VIEW_ATTACHMENT,
	VIEW_BLOCK,
	VIEW_PIPE,
	VIEW_FLASHING,
	VIEWS
};

static const struct view_row table[VIEWS] = {
	[VIEW_SITE] = {"site", "House and place", always, site},
	[VIEW_PLAN] = {"plan", "Roof plan", always, plan},
	[VIEW_LAYOUT] = {"layout", "Layout of the attachments", has_layout, layout},
	[VIEW_RACK] = {"rack", "Tilted row", has_rack, rack},
	[VIEW_ATTACHMENT] = {"attachment", "Attachment", always, attachment},
	[VIEW_BLOCK] = {"block", "Foot on a block", has_block, block},
	[VIEW_PIPE] = {"pipe", "Pipe through the roof", has_pipe, pipe_through},
	[VIEW_FLASHING] = {"flashing", "Flashing from above", has_above, above},
};

/* "pipe-3": the third; "pipe" alone is the first. "flashing-2": the second sheet of those. */
static const struct view_row *find(const char *word, int *which)
{
	*which = 0;
	for (int i = 0; i < VIEWS; i++) {
		const size_t n = strlen(table[i].word);

		if (strncmp(word, table[i].word, n) != 0)
			continue;
		if (!word[n])
			return &table[i];
		if ((i != VIEW_PIPE && i != VIEW_FLASHING) || word[n] != '-' || word[n + 1] < '1' ||
		    word[n + 1] >= '1' + PIPE_MAX || word[n + 2])
			continue;
		*which = word[n + 1] - '1';
		return &table[i];
	}
	return NULL;
}

bool sheet_view_known(const char *word)
{
	int which;

	return find(word, &which) != NULL;
}

bool sheet_view_exists(const struct sheet *s, const char *word)
{
	int which;
	const struct view_row *row = find(word, &which);

	/* the layout is drawn, without feet, where somebody asks for it by name */
	return row && (row == &table[VIEW_LAYOUT] || row->exists(s, which));
}

/* A sheet lies, unless a plan gets a larger scale on one that stands. */
static struct sheet_room room_of(const struct sheet *s, enum paper paper,
				 const struct view_row *row)
{
	const struct sheet_room lying = sheet_room_of(paper, true),
				standing = sheet_room_of(paper, false);
	const enum plan_part part = row == &table[VIEW_PLAN] ? PLAN_WHOLE : PLAN_ARRAY;

	if (lying.narrow || (row != &table[VIEW_PLAN] && row != &table[VIEW_LAYOUT]))
		return lying;
	return plan_ratio(s, part, standing.width, standing.height) <
			       plan_ratio(s, part, lying.width, lying.height)
		       ? standing
		       : lying;
}

static void add(struct sheet_set *set, const struct sheet *s, const struct sheet_request *request,
		const struct view_row *row, int which)
{
	const char *name = row->name;

	if (row == &table[VIEW_PIPE] && s->job->pipes > 1)
		name = sheet_text(s, "%s: P%d", row->name, which + 1);
	else if (which > 0)
		name = sheet_text(s, "%s, sheet %d", row->name, which + 1);
	set->page[set->n++] = (struct sheet_page){
		.name = name,
		.drawing = row->draw(s, which, room_of(s, request->paper, row)),
		.narrow = request->screen ? row->draw(s, which, SHEET_NARROW) : NULL};
}

void sheet_view_add(struct sheet_set *set, const struct sheet *s,
		    const struct sheet_request *request, const char *word)
{
	int which;
	const struct view_row *row = find(word, &which);

	if (row && sheet_view_exists(s, word))
		add(set, s, request, row, which);
}

void sheet_views_add(struct sheet_set *set, const struct sheet *s,
		     const struct sheet_request *request)
{
	for (int v = 0; v < VIEWS; v++) {
		const int n = v == VIEW_PIPE       ? s->job->pipes
			      : v == VIEW_FLASHING ? flashing_plan_pages(s)
						   : 1;

		for (int i = 0; i < n; i++)
			if (table[v].exists(s, i) &&
			    (v != VIEW_PIPE || !flashing_pipe_repeats(s->job, i)))
				add(set, s, request, &table[v], i);
	}
}
