/* SPDX-License-Identifier: MIT */
/* The loads in short: wind, snow, roof live load, dead load; the roof plane and where the array
   lies on it. */

#include "load/asce7_solar.h"
#include "report/check_part.h"
#include "report/field_value.h"

static void add_wind(const struct part *p)
{
	const struct wind_result *w = &p->r->wind;
	const struct job_site *site = &p->job->site;

	document_add(p->d, BLOCK_HEADING, 2, "Wind");
	document_pairs(p->d);
	document_pair(p->d, "basic wind speed V", "", "%s, exposure %s, risk category %s",
	              show(&p->f, site->wind_speed, UNIT_MPH),
	              field_word(p->job, FIELD_SITE_EXPOSURE),
	              field_word(p->job, FIELD_SITE_RISK_CATEGORY));
	document_pair(p->d, "factors", "", "Kz %s, Kzt %s, Kd %s, Ke %s",
	              show_factor(&p->f, w->Kz, 3), show_factor(&p->f, w->Kzt, 2),
	              show_factor(&p->f, w->Kd, 2), show_factor(&p->f, w->Ke, 3));
	document_pair(p->d, "velocity pressure qh", "", "%s", show(&p->f, w->qh, UNIT_PSF));
	document_pair(p->d, "width of edge zones a", "", "%s, on plan", show_tape(&p->f, w->a));
	document_pair(p->d, "top of array above roof h2", "", "%s", show_tape(&p->f, w->h2));
	document_pair(p->d, "chord of a collector Lp", "", "%s", show_tape(&p->f, w->Lp));
	if (w->rule != WIND_FLUSH) {
		part_rack(p);
		return;
	}
	document_pair(
		p->d, "reduction for flush arrays", "", "%s",
		w->gammaa_allowed
			? "used: every condition of the clause is met"
			: "not used (gammaa = 1, the full roof coefficient counts), because:");
	for (int i = 0; i < FLUSH_CONDITION_COUNT; i++)
		if (!w->gammaa_allowed && w->flush_failed & FLUSH_BIT(i))
			document_add(p->d, BLOCK_BULLET, 0, "%s [%s]",
			             flush_condition_text((enum flush_condition)i),
			             flush_condition_clause((enum flush_condition)i));
}

/* "+ 12.0 psf over 8 ft", on top of both loads. */
static const char *surcharge(const struct part *p, const struct snow_load_case *c)
{
	if (c->beside > 0.0)
		return document_text(p->d, "+ %s beside the array, falling over %s",
		                     show_rounded(&p->f, c->beside, UNIT_PSF, SHOW_UP),
		                     show_tape(&p->f, c->beside_length));
	if (c->strip > 0.0)
		return document_text(p->d, "+ %s at the foot of each row, %s wide",
		                     show_rounded(&p->f, c->strip, UNIT_PSF, SHOW_UP),
		                     show_tape(&p->f, c->strip_width));
	if (!(c->surcharge > 0.0))
		return "-";
	return document_text(p->d, "+ %s from the ridge, over %s",
	                     show_rounded(&p->f, c->surcharge, UNIT_PSF, SHOW_UP),
	                     show_tape(&p->f, c->surcharge_length));
}

static void add_snow_cases(const struct part *p)
{
	const struct snow_result *s = &p->r->snow;
	const char *unit = unit_text(shown_unit(&p->f, UNIT_PSF));
	const struct column columns[] = {
		{ "case", ALIGN_LEFT, true, true },
		{ document_text(p->d, "bare roof %s", unit), ALIGN_RIGHT, false, false },
		{ document_text(p->d, "collectors %s", unit), ALIGN_RIGHT, false, false },
		{ "on a part of the roof", ALIGN_LEFT, false, true },
		{ "clause", ALIGN_LEFT, false, true },
	};

	if (s->cases == 0)
		return;
	document_table(p->d, columns, (int)(sizeof columns / sizeof *columns));
	for (int i = 0; i < s->cases; i++) {
		const struct snow_load_case *c = &s->snow[i];

		document_row(p->d);
		document_cell(p->d, "%s", c->name);
		document_cell(p->d, "%s", show_number(&p->f, c->roof, UNIT_PSF, SHOW_UP));
		document_cell(p->d, "%s", show_number(&p->f, c->array, UNIT_PSF, SHOW_UP));
		document_cell(p->d, "%s", surcharge(p, c));
		document_cell(p->d, "%s", c->clause ? c->clause : "");
	}
}

static void add_snow(const struct part *p)
{
	const struct snow_result *s = &p->r->snow;

	document_add(p->d, BLOCK_HEADING, 2, "Snow and roof live load, on plan");
	document_pairs(p->d);
	document_pair(p->d, "ground snow pg", "", "%s (%s level)",
	              show(&p->f, p->job->site.ground_snow, UNIT_PSF),
	              field_word(p->job, FIELD_SITE_GROUND_SNOW_LEVEL));
	if (s->cases > 0) {
		document_pair(p->d, "factors", "",
		              "Ce %s, Ct %s, Is %s; slope factor Cs %s roof before, %s roof after, "
		              "%s collectors",
		              show_factor(&p->f, s->Ce, 2), show_factor(&p->f, s->Ct, 2),
		              show_factor(&p->f, s->Is, 2), show_factor(&p->f, s->Cs_before, 2),
		              show_factor(&p->f, s->Cs_roof, 2),
		              show_factor(&p->f, s->Cs_array, 2));
		document_pair(p->d, "flat roof snow pf", "", "%s",
		              show_rounded(&p->f, s->pf, UNIT_PSF, SHOW_UP));
	}
	document_pair(p->d, "roof live load Lr", "", "%s", show(&p->f, p->r->Lr, UNIT_PSF));
	add_snow_cases(p);
}

static void add_dead(const struct part *p)
{
	const struct dead_result *dead = &p->r->dead;

	document_add(p->d, BLOCK_HEADING, 2, "Dead load");
	document_pairs(p->d);
	document_pair(p->d, "array, dry (for uplift)", "",
	              "%s of collector area, hardware included; one collector %s",
	              show(&p->f, dead->array_dry, UNIT_PSF),
	              show_weight(&p->f, dead->collector_dry));
	document_pair(p->d, "array, filled (for load down)", "",
	              "%s of collector area; one collector %s",
	              show(&p->f, dead->array_filled, UNIT_PSF),
	              show_weight(&p->f, dead->collector_filled));
	document_pair(p->d, "roof build-up", "", "%s of slope",
	              show(&p->f, p->job->roof.dead_load, UNIT_PSF));
}

static void add_quake(const struct part *p)
{
	const struct quake_result *q = &p->r->quake;

	if (!q->known)
		return;
	document_add(p->d, BLOCK_HEADING, 2, "Earthquake");
	document_pairs(p->d);
	document_pair(p->d, "SDS", "", "%s", show_factor(&p->f, q->SDS, 3));
	document_pair(p->d, "on the array", "",
	              "%s of its filled weight sideways, in either direction on plan, and %s up or down, "
	              "before load factors",
	              show_factor(&p->f, q->horizontal, 3), show_factor(&p->f, q->vertical, 3));
}

const char *part_top_edge(const struct job *job)
{
	const enum roof_form form = job->building.form;

	return form == FORM_FLAT || form == FORM_MONOSLOPE ? "upper edge" : "ridge";
}

static void add_plane(const struct part *p)
{
	const struct result *r = p->r;

	document_pairs(p->d);
	document_pair(p->d, "roof plane", "", "%s along the eave, %s up the slope, pitch %s",
	              show_tape(&p->f, r->plane_length), show_tape(&p->f, r->plane_slope),
	              show_pitch(&p->f, p->job->roof.pitch));
	document_pair(p->d, "collectors", "", "%d: %s to %s along the eave, %s to %s up the slope",
	              r->collectors, show_tape(&p->f, r->array.x0), show_tape(&p->f, r->array.x1),
	              show_tape(&p->f, r->array.y0), show_tape(&p->f, r->array.y1));
	document_pair(p->d, "clear of the array", "", "eave %s, %s %s, left %s %s, right %s",
	              show_tape(&p->f, r->array_to_eave), part_top_edge(p->job),
	              show_tape(&p->f, r->array_to_ridge),
	              p->job->building.form == FORM_HIP ? "end of the eave" : "rake",
	              show_tape(&p->f, r->array_to_left), show_tape(&p->f, r->array_to_right));
}

void part_loads(const struct part *p)
{
	document_add(p->d, BLOCK_HEADING, 1, "Roof and loads");
	if (p->r->collectors > 0)
		add_plane(p);
	add_wind(p);
	add_snow(p);
	add_dead(p);
	add_quake(p);
}
