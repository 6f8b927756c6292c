/* SPDX-License-Identifier: MIT */
/* Where each attachment goes (for the tape), what it carries (for the reviewer), one of them in
   detail, and the largest spacing in each zone. */
#include <math.h>

#include "report/check_part.h"

#define COLUMNS(c) ((int)(sizeof(c) / sizeof *(c)))

static void add_places(const struct part *p)
{
	const bool seams = p->job->fastener.kind == FASTENER_SEAM_CLAMP;
	const bool deck = p->job->fastener.kind == FASTENER_DECK_MOUNT;
	const struct column columns[] = {
		{ "no.", ALIGN_RIGHT, true, false },
		{ seams ? "seam" : deck ? "place" : "rafter", ALIGN_RIGHT, false, false },
		{ "along eave", ALIGN_RIGHT, false, false },
		{ "up slope", ALIGN_RIGHT, false, false },
		{ "zone", ALIGN_LEFT, false, false },
		{ "line", ALIGN_RIGHT, false, false },
		{ "from the one before", ALIGN_RIGHT, false, false },
	};

	document_table(p->d, columns, COLUMNS(columns));
	for (int i = 0; i < p->pass->attachments; i++) {
		const struct attachment *a = &p->pass->attachment[i];
		const struct attachment *before = i > 0 ? a - 1 : NULL;

		document_row(p->d);
		document_cell(p->d, "%d", a->number);
		document_cell(p->d, "%s", place_name(p->d, p->r, a->rafter));
		document_cell(p->d, "%s", show_tape(&p->f, a->x));
		document_cell(p->d, "%s", show_tape(&p->f, a->y));
		document_cell(p->d, "%s", zone_text(a->zone));
		document_cell(p->d, "%d", a->line + 1);
		document_cell(p->d, "%s",
		              before && before->line == a->line ? show_tape(&p->f, a->x - before->x)
		                                                : "-");
	}
}

static const char *titled(const struct part *p, const char *words, enum unit us)
{
	return document_text(p->d, "%s %s", words, unit_text(shown_unit(&p->f, us)));
}

static void add_forces(const struct part *p)
{
	const struct column columns[] = {
		{ "no.", ALIGN_RIGHT, true, false },
		{ "zone", ALIGN_LEFT, false, false },
		{ "edge", ALIGN_LEFT, false, false },
		{ titled(p, "area", UNIT_FT2), ALIGN_RIGHT, false, false },
		{ titled(p, "wind up", UNIT_PSF), ALIGN_RIGHT, false, false },
		{ titled(p, "uplift", UNIT_LB), ALIGN_RIGHT, false, false },
		{ titled(p, "down", UNIT_LB), ALIGN_RIGHT, false, false },
		{ titled(p, "slope", UNIT_LB), ALIGN_RIGHT, false, false },
		{ "ratio", ALIGN_RIGHT, false, false },
		{ "governs", ALIGN_LEFT, false, false },
	};

	document_table(p->d, columns, COLUMNS(columns));
	for (int i = 0; i < p->pass->attachments; i++) {
		const struct attachment *a = &p->pass->attachment[i];

		document_row(p->d);
		document_cell(p->d, "%d", a->number);
		document_cell(p->d, "%s", zone_text(a->zone));
		document_cell(p->d, "%s", a->exposed ? "yes" : "no");
		document_cell(p->d, "%s", show_number(&p->f, a->area, UNIT_FT2, SHOW_NEAREST));
		document_cell(p->d, "%s", show_number(&p->f, a->p_up, UNIT_PSF, SHOW_UP));
		document_cell(p->d, "%s", show_number(&p->f, a->uplift.normal, UNIT_LB, SHOW_UP));
		document_cell(p->d, "%s", show_number(&p->f, a->down.normal, UNIT_LB, SHOW_UP));
		document_cell(p->d, "%s", show_number(&p->f, a->slope.slope, UNIT_LB, SHOW_UP));
		const bool rated = any_rated(a->check);

		document_cell(p->d, "%s", rated ? show_ratio(&p->f, a->ratio) : "-");
		document_cell(p->d, "%s", rated ? check_short(a->governs) : "not checked");
	}
}

static void add_force(const struct part *p, const char *name, const struct force *force,
                      double value)
{
	document_pair(p->d, name, "", "%s (%s)", show_rounded(&p->f, value, UNIT_LB, SHOW_UP),
	              force->combination ? force->combination : "no combination");
}

/* Tested values meet the combinations of ASD in a job by LRFD too: their factor is CD there. */
static bool as_asd(const struct part *p, enum check_id id)
{
	return p->job->site.method == METHOD_LRFD && check_is_tested(id, p->job->fastener.kind);
}

static void add_checks(const struct part *p, const struct check_value *check)
{
	const struct column columns[] = {
		{ "check", ALIGN_LEFT, true, true },        { "demand", ALIGN_RIGHT, false, false },
		{ "capacity", ALIGN_RIGHT, false, false },  { "ratio", ALIGN_RIGHT, false, false },
		{ "combination", ALIGN_LEFT, false, true }, { part_duration(p), ALIGN_RIGHT, false, false },
	};

	document_table(p->d, columns, COLUMNS(columns));
	for (int i = 0; i < CHECK_COUNT; i++) {
		const enum check_id id = (enum check_id)i;

		if (!check[i].rated)
			continue;
		document_row(p->d);
		document_cell(p->d, "%s", check_words(id));
		document_cell(p->d, "%s", show_demand(&p->f, id, check[i].demand));
		document_cell(p->d, "%s", show_capacity(&p->f, id, check[i].capacity));
		document_cell(p->d, "%s", show_ratio(&p->f, check[i].ratio));
		document_cell(p->d, "%s", check[i].combination ? check[i].combination : "-");
		document_cell(p->d, "%s%s", as_asd(p, id) ? "CD " : "", show_factor(&p->f, check[i].CD, 2));
	}
}

/* How the hole lies in the covering. */
static void add_course(const struct part *p, const struct course_place *c)
{
	if (c->course > 0)
		document_pair(p->d, "in the courses", "", "course %d, %s above its own butt, %s below the next: %s",
		              c->course, show_tape(&p->f, c->above), show_tape(&p->f, c->below),
		              landing_words(c->landing));
	if (!isnan(c->to_seam))
		document_pair(p->d, "from the nearest seam", "", "%s: %s", show_tape(&p->f, c->to_seam),
		              landing_words(c->landing));
	if (!isnan(c->to_joint))
		document_pair(p->d, "from the nearest joint", "", "%s to its %s: %s", show_tape(&p->f, fabs(c->to_joint)),
		              c->to_joint < 0 ? "left" : "right", landing_words(c->landing));
	if (!isnan(c->plate_down) && !isnan(c->plate_up))
		document_pair(p->d, "least plate, from the hole", "", "%s down, %s up, %s to each side",
		              show_least(&p->f, c->plate_down), show_least(&p->f, c->plate_up),
		              isnan(c->plate_side) ? "-" : show_least(&p->f, c->plate_side));
}

static void add_detail(const struct part *p, const struct attachment *a)
{
	document_add(p->d, BLOCK_HEADING, 2, "Attachment %d in detail", a->number);
	document_pairs(p->d);
	document_pair(p->d, "place", "", "%s %s, %s along the eave, %s up the slope, zone %s",
	              p->job->fastener.kind == FASTENER_SEAM_CLAMP    ? "seam"
	              : p->job->fastener.kind == FASTENER_DECK_MOUNT  ? "place"
	              : place_on_block(p->r, a->rafter) ? "block between rafters"
	                                                : "rafter",
	              place_name(p->d, p->r, a->rafter), show_tape(&p->f, a->x), show_tape(&p->f, a->y),
	              zone_text(a->zone));
	document_pair(p->d, "carries", "", "%s along the eave by %s up the slope = %s",
	              show_tape(&p->f, a->tributary_width), show_tape(&p->f, a->tributary_depth),
	              show(&p->f, a->area, UNIT_FT2));
	document_pair(p->d, "reaction width", "", "%s (as support of a continuous rail)",
	              show_tape(&p->f, a->reaction_width));
	document_pair(p->d, "wind coefficients GCp", "", "%s up, %s down (%s)",
	              show_factor(&p->f, a->GCp_up, 3), show_factor(&p->f, a->GCp_down, 3),
	              confidence_text(a->confidence));
	document_pair(p->d, "wind pressure, strength level", "", "%s up, %s down%s",
	              show_rounded(&p->f, a->p_up, UNIT_PSF, SHOW_UP),
	              show_rounded(&p->f, a->p_down, UNIT_PSF, SHOW_UP),
	              a->exposed ? "; at an exposed edge of the array" : "");
	add_course(p, &a->course);
	add_force(p, "uplift", &a->uplift, a->uplift.normal);
	add_force(p, "down", &a->down, a->down.normal);
	add_force(p, "down the slope", &a->slope, a->slope.slope);
	if (any_rated(a->check))
		add_checks(p, a->check);
	else
		document_add(p->d, BLOCK_PARAGRAPH, 0,
		             "Nothing that this foot could be held against is known: neither foot nor fastener "
		             "is checked.");
}

void part_attachments(const struct part *p)
{
	if (p->pass->attachments == 0)
		return;
	document_add(p->d, BLOCK_HEADING, 1, "Where the attachments go");
	document_add(p->d, BLOCK_PARAGRAPH, 0,
	             "Along the eave: tape from %s; left and right as seen by "
	             "somebody who stands below this "
	             "eave and looks up at the roof. Up the slope: tape from the eave edge. %s",
	             left_end(p->job),
	             p->job->fastener.kind == FASTENER_SEAM_CLAMP
	                     ? "Seams are counted from the left."
	             : p->job->fastener.kind == FASTENER_DECK_MOUNT
	                     ? "Places on the deck are counted from the collectors' left edge."
	                     : "Rafters are counted from the left. Find the middle of each rafter "
	                       "before drilling.");
	add_places(p);
	document_add(p->d, BLOCK_HEADING, 1, "What each attachment carries");
	document_add(p->d, BLOCK_PARAGRAPH, 0,
	             "%s forces of one foot: uplift and down at a right angle to the "
	             "roof, slope along it. "
	             "Wind is the strength-level pressure; edge: at an exposed edge of the array.",
	             p->job->site.method == METHOD_LRFD ? "Factored (LRFD)" : "Allowable-stress");
	add_forces(p);
	if (p->attachment >= 0)
		add_detail(p, &p->pass->attachment[p->attachment]);
}

/* Whole bays of evenly spaced places; "-" where each rafter was measured. */
static const char *bays_text(const struct part *p, double spacing)
{
	const struct result *r = p->r;
	const bool seams = p->job->fastener.kind == FASTENER_SEAM_CLAMP;
	const bool even = r->on_deck || seams || p->job->framing.measured == 0;
	const double bay = r->rafters > 1 ? r->rafter_x[1] - r->rafter_x[0] : 0.0;

	if (!even || !(bay > 0.0))
		return "-";
	return document_text(p->d, "%ld", lround(spacing / bay));
}

static const char *spacing_end_text(const struct zone_spacing *z)
{
	switch (z->end) {
	case SPACING_BY_MAKER:
		return "maker's limit";
	case SPACING_BY_ARRAY:
		return "width of the array";
	case SPACING_BY_CHECK:
	case SPACING_END_COUNT:
		break;
	}
	return check_short(z->governs);
}

static void add_spacing_row(const struct part *p, enum zone zone, const struct zone_spacing *z)
{
	document_row(p->d);
	document_cell(p->d, "%s", zone_text(zone));
	document_cell(p->d, "%s", z->spacing > 0.0 ? show_tape(&p->f, z->spacing) : "none");
	document_cell(p->d, "%s", z->spacing > 0.0 ? bays_text(p, z->spacing) : "0");
	document_cell(p->d, "%s", show_tape(&p->f, z->exact));
	document_cell(p->d, "%s", show_number(&p->f, z->p_up, UNIT_PSF, SHOW_UP));
	document_cell(p->d, "%s", show_number(&p->f, z->p_down, UNIT_PSF, SHOW_UP));
	document_cell(p->d, "%s", show_factor(&p->f, z->GCp_up, 2));
	document_cell(p->d, "%s", show_factor(&p->f, z->GCp_down, 2));
	document_cell(p->d, "%s", show_number(&p->f, z->area, UNIT_FT2, SHOW_NEAREST));
	document_cell(p->d, "%s", z->exact > 0.0 ? spacing_end_text(z) : "-");
}

/* Where the coefficients come from, zone by zone. */
static void add_figures(const struct part *p, const struct pass *pass)
{
	const char *list = "";

	for (int i = 0; i < ZONE_COUNT; i++) {
		const struct zone_spacing *z = &pass->zone[i];

		if (z->present)
			list = document_text(p->d, "%s%szone %s, %s (%s)", list, *list ? "; " : "",
			                     zone_text((enum zone)i),
			                     z->figure ? z->figure : "no figure",
			                     confidence_text(z->confidence));
	}
	document_add(p->d, BLOCK_PARAGRAPH, 0, "GCp from: %s.", list);
}

static void add_spacing(const struct part *p, const struct pass *pass)
{
	const struct column columns[] = {
		{ "zone", ALIGN_LEFT, true, false },
		{ "largest spacing", ALIGN_RIGHT, false, false },
		{ "bays", ALIGN_RIGHT, false, false },
		{ "exact", ALIGN_RIGHT, false, false },
		{ titled(p, "wind up", UNIT_PSF), ALIGN_RIGHT, false, false },
		{ titled(p, "wind down", UNIT_PSF), ALIGN_RIGHT, false, false },
		{ "GCp up", ALIGN_RIGHT, false, false },
		{ "GCp down", ALIGN_RIGHT, false, false },
		{ titled(p, "area", UNIT_FT2), ALIGN_RIGHT, false, false },
		{ "governs", ALIGN_LEFT, false, true },
	};

	document_table(p->d, columns, COLUMNS(columns));
	for (int i = 0; i < ZONE_COUNT; i++)
		if (pass->zone[i].present)
			add_spacing_row(p, (enum zone)i, &pass->zone[i]);
	add_figures(p, pass);
}

static bool any_zone(const struct pass *pass)
{
	for (int i = 0; i < ZONE_COUNT; i++)
		if (pass->zone[i].present)
			return true;
	return false;
}

void part_spacing(const struct part *p)
{
	if (!any_zone(p->pass))
		return;
	document_add(p->d, BLOCK_HEADING, 1, "Largest spacing along the eave");
	for (int i = 0; i < p->r->passes; i++) {
		if (p->r->passes > 1)
			document_add(p->d, BLOCK_PARAGRAPH, 0,
			             "With the wind coefficients of the %s:", p->r->pass[i].name);
		add_spacing(p, &p->r->pass[i]);
	}
	document_add(p->d, BLOCK_PARAGRAPH, 0,
	             "This is what screws, foot and rail allow on every line where the feet are evenly "
	             "spaced; the rafters below them may ask for closer feet. In the layout each foot, "
	             "rail and rafter is rated as it stands, so that a line that carries less may have "
	             "its feet farther apart. "
	             "The largest spacing is a whole number of bays of %s; `none`: not even a "
	             "foot on each of them holds. "
	             "Exact leaves them out of account. Wind and area are those of the "
	             "largest spacing.",
	             p->r->on_deck                                  ? "the places on the deck"
	             : p->job->fastener.kind == FASTENER_SEAM_CLAMP ? "the seams"
	             : p->r->blocks ? "the places, rafters and the middles between them"
	                            : "the rafters");
}
