/* SPDX-License-Identifier: MIT */
/* Which edition of the wood standard the job is rated by, and what is known of the others: the
   formulas are those of NDS-2018, the table nds-difference says what changed. */
#include "check/nds.h"

#include <string.h>

#include "table/tables.h"

static void unread(struct context *c, const char *edition)
{
	for (size_t i = 0; i < TABLE_NDS_DIFFERENCE_COUNT; i++) {
		const struct nds_difference_row *r = &table_nds_difference[i];

		if (strcmp(r->edition, edition) == 0 && r->effect == NDS_DIFFERENCE_EFFECT_NOT_READ)
			REMARK_T(c->r, NDS_UNREAD, (0), edition, r->text);
	}
}

void nds_tell(struct context *c)
{
	switch (c->job->site.nds) {
	case NDS_2018:
		REMARK_T(c->r, NDS, (0), "2018", "");
		return;
	case NDS_2015:
		REMARK_T(c->r, NDS, (0), "2015",
			 " What is used here has the same clauses and numbers there as in NDS-2018, by which the lines are labelled.");
		return;
	case NDS_2024:
		REMARK_T(c->r, NDS, (0), "2024", " The lines are those of NDS-2018, by which they are labelled.");
		unread(c, "2024");
		return;
	}
}
