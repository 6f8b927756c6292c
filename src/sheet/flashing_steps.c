/* SPDX-License-Identifier: MIT */
/* Steps of the flashing for the field sheet, from the notes on the covering: of the feet, where they
   are of the kind that the notes draw, and of the pipes. */
#include <string.h>

#include "report/flashing_sizes.h"
#include "sheet/flashing_plan.h"
#include "sheet/sheets.h"

/* Which steps are wanted: of the feet as the notes draw them, of any foot, of the pipes. */
enum wanted { OF_FEET = 1, OF_ANY = 2, OF_PIPES = 4 };

struct walk {
	struct document *d;
	unsigned wanted;
	int steps;
	bool alone; /* the only step: it needs no number */
};

static enum wanted kind_of(const struct guide_block *b)
{
	return strcmp(b->of, "pipe") == 0 ? OF_PIPES : strcmp(b->of, "any") == 0 ? OF_ANY : OF_FEET;
}

static bool is_wanted(const struct walk *w, const struct guide_block *b)
{
	return b->kind == GUIDE_STEP && (w->wanted & kind_of(b));
}

static void count_step(void *context, const struct guide_block *b)
{
	struct walk *w = context;

	w->steps += is_wanted(w, b);
}

static void add_step(void *context, const struct guide_block *b)
{
	struct walk *w = context;

	if (!is_wanted(w, b))
		return;
	w->steps++;
	document_add(w->d, w->alone ? BLOCK_BULLET : BLOCK_NUMBERED, w->alone ? 0 : w->steps, "%s",
		     b->text);
}

/* Sleeve, boot, hole and sizes; what the notes only refer to stays with them. */
static void add_pipe_note(void *context, const struct guide_block *b)
{
	struct walk *w = context;

	if (strcmp(b->section, "pipe") == 0 && b->kind == GUIDE_BULLET && *b->label &&
	    strcmp(b->label, "See") != 0) {
		document_add(w->d, BLOCK_BULLET, 0, "%s: %s", b->label, b->text);
		w->steps++;
	}
}

static void walk_notes(const struct sheet *s, struct walk *w, enum guide_depth depth,
		       void (*block)(void *context, const struct guide_block *block))
{
	const struct guide_sizes sizes = flashing_sizes(s->job, s->r);
	const struct guide_request request = {.key = s->job->roof.covering,
					      .sizes = &sizes,
					      .units = s->f.units,
					      .depth = depth};
	const struct guide_sink sink = {block, w};
	struct problem_list problems = {0};

	if (s->library)
		guide_notes(s->library, &request, &sink, &problems);
}

/* Feet of another kind than the notes draw have no steps there; what holds for any foot still does.
 */
static void foot_steps(const struct sheet *s, struct document *d)
{
	const char *other = flashing_of_other_foot(s), *below = flashing_over_base(s);
	struct walk w = {d, other ? OF_ANY : OF_FEET | OF_ANY, 0, false};

	if (other || below)
		document_add(d, BLOCK_CAUTION, 0, "%s", other ? other : below);
	walk_notes(s, &w, GUIDE_BRIEF, add_step);
	/* where the steps are those of every roof of the kind, only the long notes have them */
	if (w.steps == 0 && !other)
		walk_notes(s, &w, GUIDE_FULL, add_step);
	if (w.steps == 0 && !other)
		document_add(d, BLOCK_PARAGRAPH, 0,
			     "No steps for this covering are at hand: ask a roofer of that trade.");
}

static void pipe_steps(const struct sheet *s, struct document *d)
{
	struct walk notes = {d, 0, 0, false}, count = {d, OF_PIPES, 0, false};

	if (s->job->pipes == 0)
		return;
	document_add(d, BLOCK_HEADING, 3, "Pipes");
	walk_notes(s, &notes, GUIDE_BRIEF, add_pipe_note);
	walk_notes(s, &count, GUIDE_FULL, count_step);
	struct walk steps = {d, OF_PIPES, 0, count.steps == 1};

	walk_notes(s, &steps, GUIDE_FULL, add_step);
	if (notes.steps + steps.steps == 0)
		document_add(d, BLOCK_PARAGRAPH, 0,
			     "No notes on pipes through this covering are at hand: ask a roofer of "
			     "that trade.");
}

void words_flashing(const struct sheet *s, struct document *d)
{
	document_add(d, BLOCK_HEADING, 2, "Flashing on %s", s->job->roof.covering);
	foot_steps(s, d);
	pipe_steps(s, d);
}
