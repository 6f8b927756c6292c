/* SPDX-License-Identifier: MIT */
#include "sheet/materials.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "report/flashing_sizes.h"
#include "sheet/material_note.h"
#include "sheet/rail_pieces.h"

/* Holes that a cartridge of about 10 fluid ounces fills and beds with room to spare (common
 * practice). */
#define HOLES_PER_CARTRIDGE 12

static const char *const key[MATERIAL_COUNT + 1] = {
#define M(id, key, name) key,
	MATERIALS(M)
#undef M
};
static const char *const name[] = {
#define M(id, key, name) name,
	MATERIALS(M)
#undef M
};

const char *material_key(enum material_id id)
{
	return key[id];
}

const char *material_name(enum material_id id)
{
	return name[id];
}

const char *const *material_keys(void)
{
	return key;
}

const char *money_print(char *buf, size_t size, int64_t value)
{
	const int64_t whole = value / PRICE_UNIT, part = value % PRICE_UNIT;

	if (part % 100 == 0)
		snprintf(buf, size, "%lld.%02d", (long long)whole, (int)(part / 100));
	else
		snprintf(buf, size, "%lld.%04d", (long long)whole, (int)part);
	return buf;
}

static void add(struct materials *m, enum material_id id, bool length, double amount,
		const char *note)
{
	if (amount > 0)
		m->row[m->n++] = (struct material){
			.id = id, .length = length, .amount = amount, .note = note};
}

static int pipe_holes(const struct job *job)
{
	int n = 0;

	for (int i = 0; i < job->pipes; i++)
		n += job->pipe[i].count;
	return n;
}

static void add_blocks(const struct sheet *s, struct materials *m)
{
	const struct block_result *b = &s->r->block;
	const int ends = 2 * b->feet;

	add(m, MATERIAL_BLOCK, false, b->feet,
	    sheet_text(s, "%s %s, %s %s, each cut to the room between its rafters, up to %s", b->size,
		       b->flat ? "flat" : "on edge", b->species, b->grade, show_tape(&s->f, b->clear)));
	add(m, MATERIAL_BLOCK_NAIL, false, b->hanger ? 0 : ends * b->rows * b->columns,
	    sheet_text(s, "common nails %s, through the rafters into the blocks' ends",
		       sheet_block_nail(s)));
	add(m, MATERIAL_BLOCK_HANGER, false, b->hanger ? ends : 0,
	    sheet_text(s, "%s", s->job->mount.block_report));
}

/* Cut from lengths where the job says how long they are. */
static void add_rails(const struct sheet *s, struct materials *m)
{
	const struct rail_pieces p = rail_pieces_of(s);
	const double stock = s->job->rail.stock_length;

	const struct rail_line *first = &s->pass->line[0];

	if (p.stocks > 0)
		add(m, MATERIAL_RAIL, true, p.stocks * stock,
		    sheet_text(s, "%d lengths of %s, cut to %s", p.stocks, show_tape(&s->f, stock), p.words));
	else if (p.joints > 0)
		add(m, MATERIAL_RAIL, true, p.length, sheet_text(s, "%s; without waste", p.words));
	else
		add(m, MATERIAL_RAIL, true, p.length,
		    sheet_text(s, "%d lengths of %s, joints where the maker allows them; without waste",
			       s->pass->lines, show_tape(&s->f, first->x1 - first->x0)));
	add(m, MATERIAL_RAIL_JOINT, false, p.joints,
	    "the rail maker's own, with their screws, where the plan shows them");
}

static void add_layout(const struct sheet *s, struct materials *m, const struct guide_sizes *sizes)
{
	const struct pass *pass = s->pass;
	const struct job *job = s->job;
	const int feet = s->r->passes > 0 ? pass->attachments : 0,
		  screws = sheet_has_screw(job) ? feet * job->fastener.count : 0;

	add(m, MATERIAL_FOOT, false, feet,
	    sheet_on_seams(job)    ? "clamps for this seam and gauge, with their test report"
	    : job->mount.report[0] ? sheet_text(s, "%s", job->mount.report)
				   : "tested: ask for the report");
	add(m, MATERIAL_SCREW, false, screws, material_screw(s));
	if (feet > 0 && s->r->block.feet > 0)
		add_blocks(s, m);
	add(m, MATERIAL_FOOT_FLASHING, false, sheet_on_seams(job) ? 0 : feet,
	    material_foot_flashing(s, sizes));
	add(m, MATERIAL_PIPE_FLASHING, false, pipe_holes(job), material_pipe_flashing(s));
	if (job->rail.kind == SUPPORT_RAILS && feet > 0) {
		add_rails(s, m);
		add(m, MATERIAL_END_CLAMP, false, 2 * pass->lines,
		    "one at each end of each rail line (common practice)");
		add(m, MATERIAL_MID_CLAMP, false, (job->collector.columns - 1) * pass->lines,
		    "one between neighbours on each rail line (common practice)");
	}
	const int holes = screws + pipe_holes(job);

	add(m, MATERIAL_SEALANT, false, ceil((double)holes / HOLES_PER_CARTRIDGE),
	    sheet_text(s,
		       "%d to fill, about %d holes to a cartridge of 10 fl oz (common practice); of a kind "
		       "the covering's maker allows",
		       holes, HOLES_PER_CARTRIDGE));
}

double pipe_run(const struct job_pipe *p)
{
	if (!isnan(p->run) || (p->storeys == 0 && isnan(p->offset)))
		return p->run;
	return p->storeys * p->storey_height + (isnan(p->offset) ? 0 : p->offset);
}

static void add_pipes(const struct sheet *s, struct materials *m)
{
	double pipe = 0, insulation = 0;

	for (int i = 0; i < s->job->pipes; i++) {
		const struct job_pipe *p = &s->job->pipe[i];

		const double run = pipe_run(p);

		if (isnan(run))
			continue;
		pipe += p->count * run;
		insulation += isnan(p->insulated_diameter) ? 0 : p->count * run;
	}
	add(m, MATERIAL_PIPE, true, pipe,
	    "of the pipes whose run, or storeys and offset, the job gives; fittings not counted");
	add(m, MATERIAL_INSULATION, true, insulation,
	    "for the pipe's temperature, covered from the sun outside");
}

static void add_prices(struct materials *m, const struct prices *prices, enum unit_system units)
{
	for (int i = 0; i < m->n; i++) {
		struct material *row = &m->row[i];

		if (!prices || !prices_find(prices, key[row->id], &row->each)) {
			m->unpriced++;
			continue;
		}
		const double count = !row->length         ? row->amount
				     : units == SYSTEM_SI ? row->amount
							  : row->amount / M_PER_FT;

		row->priced = true;
		/* to the hundredth, as it is printed: the rows add up to the sum */
		row->total = (llround((double)row->each * count) + 50) / 100 * 100;
		m->total += row->total;
	}
}

struct materials materials_of(const struct sheet *s, const struct prices *prices)
{
	const struct guide_sizes sizes = flashing_sizes(s->job, s->r);
	struct materials m = {0};

	add(&m, MATERIAL_COLLECTOR, false, s->r->collectors,
	    sheet_text(s, "%s by %s, %s dry", show_tape(&s->f, s->job->collector.length),
		       show_tape(&s->f, s->job->collector.width),
		       show_weight(&s->f, s->job->collector.dry_weight)));
	add_layout(s, &m, &sizes);
	add_pipes(s, &m);
	add_prices(&m, prices, s->f.units);
	return m;
}

static const char *amount_text(const struct sheet *s, const struct material *row)
{
	char buf[32];

	if (row->length)
		return show_rounded(&s->f, row->amount, UNIT_FT, SHOW_UP);
	return sheet_text(s, "%s", number_print(buf, sizeof buf, row->amount, 0));
}

void materials_report(const struct sheet *s, struct document *d, const struct materials *m,
		      const struct prices *prices)
{
	static const struct column plain[] = {
		{"item", ALIGN_LEFT, true, false},
		{"what", ALIGN_LEFT, false, true},
		{"amount", ALIGN_RIGHT, false, false},
		{"must be", ALIGN_LEFT, false, true},
	};
	static const struct column priced[] = {
		{"item", ALIGN_LEFT, true, false},       {"what", ALIGN_LEFT, false, true},
		{"amount", ALIGN_RIGHT, false, false},   {"each", ALIGN_RIGHT, false, false},
		{"together", ALIGN_RIGHT, false, false}, {"must be", ALIGN_LEFT, false, true},
	};
	char buf[48];

	document_add(d, BLOCK_PARAGRAPH, 0,
		     "Counted from the layout found, without spares or waste. What it must be "
		     "comes before what it costs.");
	document_table(d, prices ? priced : plain, prices ? 6 : 4);
	for (int i = 0; i < m->n; i++) {
		const struct material *row = &m->row[i];

		document_row(d);
		document_cell(d, "%s", material_key(row->id));
		document_cell(d, "%s", material_name(row->id));
		document_cell(d, "%s", amount_text(s, row));
		if (prices) {
			document_cell(d, "%s",
				      row->priced ? money_print(buf, sizeof buf, row->each) : "-");
			document_cell(d, "%s",
				      row->priced ? money_print(buf, sizeof buf, row->total) : "-");
		}
		document_cell(d, "%s", row->note);
	}
	material_left_out(s, d);
	if (!prices)
		return;
	document_add(d, BLOCK_PARAGRAPH, 0, "Together: %s%s%s by your own prices%s.",
		     money_print(buf, sizeof buf, m->total), *prices->currency ? " " : "",
		     prices->currency,
		     m->unpriced > 0
			     ? document_text(d, "; %d items have no price and are not in it",
					     m->unpriced)
			     : "");
	document_add(d, BLOCK_PARAGRAPH, 0, "Rail, pipe and insulation are priced by the %s.",
		     s->f.units == SYSTEM_SI ? "metre" : "foot");
}
