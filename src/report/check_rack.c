/* SPDX-License-Identifier: MIT */
/* What is told of tilted collectors: by which rule the wind was taken, and what its factors are. */
#include "load/asce7_tilted.h"
#include "report/check_part.h"

static void add_factors(const struct part *p, const struct wind_result *w)
{
	document_pair(p->d, "factors of tilted collectors", "", "gammap %s, gammac %s, Lb %s",
		      show_factor(&p->f, w->gammap, 2), show_factor(&p->f, w->gammac, 2),
		      show_tape(&p->f, w->Lb));
	document_pair(p->d, "zones of tilted collectors", "", "%s",
		      "strips 2 h wide along the roof edges (ASCE/SEI 7-16 Fig. 29.4-7)");
}

static void add_forces(const struct part *p, const struct wind_result *w)
{
	document_pair(p->d, "as a rooftop structure", "",
		      "%s level and %s upward on one collector, strength level (GCr %s and %s)",
		      show_rounded(&p->f, w->Fh, UNIT_LB, SHOW_UP),
		      show_rounded(&p->f, w->Fv, UNIT_LB, SHOW_UP), show_factor(&p->f, w->GCr_h, 2),
		      show_factor(&p->f, w->GCr_v, 2));
}

void part_rack(const struct part *p)
{
	const struct wind_result *w = &p->r->wind;

	document_pair(p->d, "tilt against the roof", "", "%s, top of its low edge %s above the roof",
		      show(&p->f, w->tilt, UNIT_DEG), show_tape(&p->f, w->h1));
	document_pair(p->d, "wind rule", "", "%s",
		      w->rule == WIND_TILTED
			      ? "tilted collectors on a low slope (ASCE/SEI 7-16 29.4.3), both ways"
			      : "none fits: the worse of rooftop structures (29.4.1) and the full "
				"roof coefficient");
	if (w->rule == WIND_TILTED)
		add_factors(p, w);
	else
		add_forces(p, w);
	if (w->rule == WIND_STRUCTURE)
		document_add(p->d, BLOCK_PARAGRAPH, 0,
			     "The rule for tilted collectors (ASCE/SEI 7-16 29.4.3) does not fit, because:");
	for (int i = 0; i < TILTED_CONDITION_COUNT; i++)
		if (w->rule == WIND_STRUCTURE && w->tilted_failed & TILTED_BIT(i))
			document_add(p->d, BLOCK_BULLET, 0, "%s [%s]",
				     tilted_condition_text((enum tilted_condition)i),
				     tilted_condition_clause((enum tilted_condition)i));
	document_add(
		p->d, BLOCK_PARAGRAPH, 0,
		"On a rack the wind of an attachment is the pull or push of its leg, spread over "
		"the strip of collector that its line carries; slope holds the wind along the "
		"roof too.");
}
