/* SPDX-License-Identifier: MIT */
/* The parts of the report of a check, each in its own file. Internal to src/report and src/sheet. */
#ifndef RP_REPORT_CHECK_PART_H
#define RP_REPORT_CHECK_PART_H

#include "check/result.h"
#include "job/job.h"
#include "report/format.h"

struct part {
	struct document *d;
	struct format f;
	const struct job *job;
	const struct result *r;
	const struct pass *pass; /* the judged one */
	int attachment;          /* index of the attachment shown in detail; -1: there is none */
};

/* check_verdict.c: verdict, caution, reasons, remedies, what to look up. */
void part_verdict(const struct part *p);
/* " Not checked: collector. Checked in part: rail, foot." or "". */
const char *part_not_checked(const struct part *p);
/* Remarks of one kind as bullets under a heading; nothing when there are none. */
void part_rack(const struct part *p);
void part_remarks(const struct part *p, enum remark_kind kind, const char *heading);
/* check_chain.c: one line per link. */
void part_chain(const struct part *p);
/* "bending, joints": what of a rated link could not be checked; "" where all was. */
const char *link_gaps(const struct part *p, enum link link);
/* check_attachment.c: where each attachment goes, what it carries, one of them in detail; largest
   spacing per zone. */
void part_attachments(const struct part *p);
void part_spacing(const struct part *p);
/* check_member.c: rafters before and after, rails. */
void part_rafters(const struct part *p);
void part_rails(const struct part *p);
/* check_loads.c */
void part_loads(const struct part *p);
/* What the upper edge of the roof plane is called: of a flat roof or one plane alone no ridge. */
const char *part_top_edge(const struct job *job);
/* check_fastener.c */
void part_fastener(const struct part *p);
/* check_inputs.c: every input and where it came from. */
void part_inputs(const struct part *p);
/* check_beam.c: a beam with its loads, to be recomputed by any other program. */
void part_beam(const struct part *p, const struct shown_beam *b, bool rafter);
/* check_steps.c: the calculation. */
void part_steps(const struct part *p);

/* words.c: a few words for a table cell: "withdrawal", "bending, down". */
const char *check_short(enum check_id id);
/* False: the ratio beside these checks says nothing, for there is nothing to hold the thing against. */
bool any_rated(const struct check_value check[CHECK_COUNT]);
/* "7"; "7/8" for a block between two rafters. */
const char *place_name(struct document *d, const struct result *r, int place);
/* Where a tape along the eave begins: "the left rake edge"; on a hip, which has no rake, "its left end". */
const char *left_end(const struct job *job);
/* "attachment 7", "rail line 2", "rafter 9"; "" where a link has no place. */
const char *link_place(const struct format *f, enum link link, int at);
/* Head of the column with the load duration factor of ASD, or the time effect factor of LRFD. */
static inline const char *part_duration(const struct part *p)
{
	return p->job->site.method == METHOD_LRFD ? "lambda" : "CD";
}
/* The link of the largest ratio in a pass; LINK_COUNT when none is rated. */
enum link pass_weakest(const struct pass *pass);
const char *verdict_words(enum verdict v);
const char *verdict_key(enum verdict v);
/* Demand and capacity of a check in its unit, demand rounded up, capacity down. */
const char *show_demand(const struct format *f, enum check_id id, double demand);
const char *show_capacity(const struct format *f, enum check_id id, double capacity);

#endif
