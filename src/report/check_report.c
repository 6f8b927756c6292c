/* SPDX-License-Identifier: MIT */
#include "report/check_report.h"

#include "report/caution.h"
#include "report/check_part.h"

static int detailed(const struct pass *pass, int number)
{
	for (int i = 0; i < pass->attachments; i++)
		if (pass->attachment[i].number == number)
			return i;
	return pass->governing_attachment < pass->attachments ? pass->governing_attachment : -1;
}

/* What is computed only when a general check can say something about this roof. */
static void add_chain(const struct part *p)
{
	if (p->r->passes == 0) {
		document_add(p->d, BLOCK_HEADING, 1, "The chain, link by link");
		document_add(p->d, BLOCK_PARAGRAPH, 0,
		             "Not computed: for the reasons above no figure of this program would "
		             "answer for this roof.");
		return;
	}
	part_chain(p);
	part_attachments(p);
	part_spacing(p);
	part_rafters(p);
	part_rails(p);
}

static void add_cautions(struct document *d)
{
	document_add(d, BLOCK_HEADING, 1, "On the roof");
	for (int i = 0; caution_roof_work[i]; i++)
		document_add(d, BLOCK_CAUTION, 0, "%s", caution_roof_work[i]);
}

void check_report_build(struct document *d, const struct job *job, const struct result *r,
                        const struct check_options *options)
{
	const struct pass *pass = &r->pass[r->judged];
	const struct part p = {
		.d = d,
		.f = { .document = d, .units = job->units, .code = job->site.code },
		.job = job,
		.r = r,
		.pass = pass,
		.attachment = detailed(pass, options->attachment),
	};

	part_verdict(&p);
	add_chain(&p);
	part_loads(&p);
	part_fastener(&p);
	part_inputs(&p);
	document_add(d, BLOCK_HEADING, 1, "What this rests on");
	part_remarks(&p, REMARK_ASSUMED, "Assumptions, and how to verify them");
	part_remarks(&p, REMARK_NOTE, "Notes");
	part_remarks(&p, REMARK_UNCHECKED, "Not checked");
	if (r->remarks_dropped > 0)
		document_add(d, BLOCK_PARAGRAPH, 0,
		             "%d more remarks did not fit and are not shown.", r->remarks_dropped);
	part_steps(&p);
	if (options->notes)
		options->notes(options->ctx, d, job, r);
	add_cautions(d);
}
