/* SPDX-License-Identifier: MIT */
/* The sheets that are words: job and verdict, calculation, what it rests on, inspection, cautions.
 */
#include <math.h>

#include "report/caution.h"
#include "report/check_part.h"
#include "report/field_value.h"
#include "sheet/sheets.h"

static struct part part_of(const struct sheet *s, struct document *d)
{
	return (struct part){.d = d,
			     .f = {.document = d, .units = s->f.units, .code = s->job->site.code},
			     .job = s->job,
			     .r = s->r,
			     .pass = s->pass,
			     .attachment = s->r->passes > 0 && s->pass->governing_attachment <
								       s->pass->attachments
						   ? s->pass->governing_attachment
						   : -1};
}

static void fact(const struct part *p, const char *name, enum field_id id)
{
	const struct field *field = &field_table[id];

	if (field_present(p->job, field, 0))
		document_pair(p->d, name, "", "%s%s", field_text(&p->f, p->job, field, 0),
			      p->job->origin[id] == ORIGIN_ASSUMED ? " (assumed: verify)" : "");
}

static const char *code_name(enum edition e)
{
	switch (e) {
	case ASCE7_10:
		return "ASCE/SEI 7-10";
	case ASCE7_16:
		return "ASCE/SEI 7-16";
	case ASCE7_22:
		return "ASCE/SEI 7-22";
	case EDITION_ANY:
	case EDITION_COUNT:
		break;
	}
	return "not known";
}

static void code_basis(const struct part *p)
{
	document_add(p->d, BLOCK_HEADING, 1, "Code basis and place");
	document_pairs(p->d);
	document_pair(p->d, "loads", "", "%s, %s", code_name(p->job->site.code),
		      p->job->site.method == METHOD_LRFD ? "load and resistance factor design"
							 : "allowable stress design");
	document_pair(p->d, "wood", "", "National Design Specification for Wood Construction (NDS), %s edition",
		      field_text(&p->f, p->job, &field_table[FIELD_SITE_NDS], 0));
	fact(p, "risk category", FIELD_SITE_RISK_CATEGORY);
	fact(p, "basic wind speed V", FIELD_SITE_WIND_SPEED);
	fact(p, "wind exposure", FIELD_SITE_EXPOSURE);
	fact(p, "topography", FIELD_SITE_TOPOGRAPHY);
	fact(p, "elevation", FIELD_SITE_ELEVATION);
	fact(p, "ground snow load pg", FIELD_SITE_GROUND_SNOW);
	fact(p, "its level", FIELD_SITE_GROUND_SNOW_LEVEL);
	document_pair(p->d, "velocity pressure qh", "", "%s", show(&p->f, p->r->wind.qh, UNIT_PSF));
}

static void house(const struct part *p)
{
	const struct job *job = p->job;

	document_add(p->d, BLOCK_HEADING, 1, "House, roof and framing");
	document_pairs(p->d);
	fact(p, "roof form", FIELD_BUILDING_FORM);
	document_pair(p->d, "plan", "", "%s along the %s by %s across it, wall to wall",
		      show_tape(&p->f, job->building.length), part_top_edge(job),
		      show_tape(&p->f, job->building.width));
	fact(p, "mean roof height h", FIELD_BUILDING_MEAN_ROOF_HEIGHT);
	if (job->building.parapet > 0)
		fact(p, "parapet", FIELD_BUILDING_PARAPET);
	document_pair(p->d, "pitch", "", "%s", show_pitch(&p->f, job->roof.pitch));
	fact(p, "covering", FIELD_ROOF_COVERING);
	fact(p, "layers", FIELD_ROOF_LAYERS);
	fact(p, "roof dead load", FIELD_ROOF_DEAD_LOAD);
	fact(p, "framing", FIELD_FRAMING_KIND);
	document_pair(p->d, "section", "", "%s by %s", show_tape(&p->f, job->framing.breadth),
		      show_tape(&p->f, job->framing.depth));
	fact(p, "species", FIELD_FRAMING_SPECIES);
	fact(p, "grade", FIELD_FRAMING_GRADE);
	fact(p, "spacing", FIELD_FRAMING_SPACING);
	fact(p, "span, level", FIELD_FRAMING_SPAN);
}

static void array(const struct part *p)
{
	const struct result *r = p->r;
	const double area = (r->array.x1 - r->array.x0) * (r->array.y1 - r->array.y0);
	const double plane = r->plane_length * r->plane_slope;
	const bool hip = p->job->building.form == FORM_HIP;

	document_add(p->d, BLOCK_HEADING, 1, "Collectors and how they are held");
	document_pairs(p->d);
	document_pair(p->d, "collectors", "", "%d, in %d column%s and %d row%s", r->collectors,
		      p->job->collector.columns, p->job->collector.columns == 1 ? "" : "s",
		      p->job->collector.rows, p->job->collector.rows == 1 ? "" : "s");
	document_pair(p->d, "each", "", "%s by %s by %s, %s dry, %s filled",
		      show_tape(&p->f, p->job->collector.length),
		      show_tape(&p->f, p->job->collector.width),
		      show_tape(&p->f, p->job->collector.depth),
		      show_weight(&p->f, r->dead.collector_dry),
		      show_weight(&p->f, r->dead.collector_filled));
	document_pair(p->d, "with rails and feet", "", "%s dry, %s filled, of collector area",
		      show(&p->f, r->dead.array_dry, UNIT_PSF),
		      show(&p->f, r->dead.array_filled, UNIT_PSF));
	document_pair(p->d, "array", "", "%s by %s, %s",
		      show_tape(&p->f, r->array.x1 - r->array.x0),
		      show_tape(&p->f, r->array.y1 - r->array.y0), show(&p->f, area, UNIT_FT2));
	if (p->job->collector.tilt > 0)
		fact(p, "tilt against the roof", FIELD_COLLECTOR_TILT);
	if (plane > 0 && !hip)
		document_pair(p->d, "share of this roof plane", "", "%s",
			      show_factor(&p->f, area / plane, 2));
	document_pair(p->d, "clear", "", "%s to the eave, %s to the %s, %s to the left %s, %s to the right one",
		      show_tape(&p->f, r->array_to_eave), show_tape(&p->f, r->array_to_ridge),
		      part_top_edge(p->job),
		      show_tape(&p->f, r->array_to_left), hip ? "end of the eave" : "rake",
		      show_tape(&p->f, r->array_to_right));
	if (r->passes > 0)
		document_pair(p->d, "attachments", "", "%d on %d lines", p->pass->attachments,
			      p->pass->lines);
}

void words_cover(const struct sheet *s, struct document *d)
{
	const struct part p = part_of(s, d);

	part_verdict(&p);
	if (s->r->passes > 0)
		part_chain(&p);
	code_basis(&p);
	house(&p);
	array(&p);
}

void words_calculation(const struct sheet *s, struct document *d)
{
	const struct part p = part_of(s, d);

	document_add(d, BLOCK_PARAGRAPH, 0,
		     "Each line names formula, values, result and clause, so that it can be "
		     "recomputed by hand or by `rafterproof step`. Ratios and "
		     "demands are rounded up, capacities down.");
	part_loads(&p);
	if (s->r->passes > 0) {
		part_attachments(&p);
		part_spacing(&p);
		part_rafters(&p);
		part_rails(&p);
	}
	part_fastener(&p);
	part_steps(&p);
}

void words_basis(const struct sheet *s, struct document *d)
{
	const struct part p = part_of(s, d);

	document_add(d, BLOCK_HEADING, 1, "What this rests on");
	part_remarks(&p, REMARK_ASSUMED, "Assumptions, and how to verify them");
	part_remarks(&p, REMARK_NOTE, "Notes");
	part_remarks(&p, REMARK_UNCHECKED, "Not checked");
	if (s->r->remarks_dropped > 0)
		document_add(d, BLOCK_PARAGRAPH, 0,
			     "%d more remarks did not fit and are not shown.",
			     s->r->remarks_dropped);
	part_inputs(&p);
}

static void box(struct document *d, const char *text)
{
	document_add(d, BLOCK_BULLET, 1, "%s", text);
}

static void check_screws(const struct sheet *s, struct document *d)
{
	const struct job_fastener *k = &s->job->fastener;

	box(d, document_text(
		       d, "Screws: %d in each foot, %s by %s, at least %s of thread in the rafter%s.",
		       k->count, sheet_shank(s, k->diameter), sheet_size(s, k->length),
		       sheet_size(s, s->r->fastener.p_t), sheet_block_thread(s)));
	box(d, "From the attic: no screw beside its rafter or through its side, no split along the "
	       "grain, no light, no stain.");
	box(d, "Screws tight to the torque that the maker of the foot gives; none spun out, none "
	       "broken.");
}

static void check_blocks(const struct sheet *s, struct document *d)
{
	const struct block_result *b = &s->r->block;

	box(d, document_text(d, "Blocks: %d of %s %s, %s %s, tight between their rafters, upper faces flush, %s; none "
			     "split.",
			     b->feet, b->size, b->flat ? "flat" : "on edge", b->species, b->grade,
			     b->hanger ? "each end in its hanger"
				       : document_text(d, "%d common nails %s in each end", b->rows * b->columns,
						       sheet_block_nail(s))));
}

static void check_holds(const struct sheet *s, struct document *d)
{
	document_add(d, BLOCK_HEADING, 1, "The layout");
	if (s->r->passes > 0)
		box(d, document_text(d,
				     "%d attachments are there, on the %s and at the "
				     "distances of the plan; count them, those near the "
				     "edges above all.",
				     s->pass->attachments,
				     sheet_on_seams(s->job) ? "seams"
				     : s->r->on_deck        ? "deck"
							    : "rafters"));
	if (s->job->framing.kind == FRAMING_STEEL)
		box(d, "Steel is what the job says: thickness and spacing measured, not assumed; "
		       "none bent, cut or rusted.");
	else
		box(d, document_text(d,
			     "Rafters are what the plan says: %s by %s, spacing measured, not "
			     "assumed; none cut, notched, split or rotten.",
			     show_tape(&s->f, s->job->framing.breadth),
			     show_tape(&s->f, s->job->framing.depth)));
	if (sheet_tails(s))
		box(d, sheet_tails(s));
	if (s->r->block.feet > 0)
		check_blocks(s, d);
	if (sheet_has_screw(s->job))
		check_screws(s, d);
	else
		box(d, "Feet: of the kind and in the number that the test report and the maker ask "
		       "for, tight to "
		       "the maker's torque.");
	box(d, "No hole left open; those that missed are repaired and listed.");
}

void words_checklist(const struct sheet *s, struct document *d)
{
	document_add(d, BLOCK_PARAGRAPH, 0,
		     "To be ticked on the roof and in the attic, before the collectors hide the "
		     "feet. Take a photograph of each line.");
	document_add(d, BLOCK_HEADING, 1, "Papers");
	box(d, "These sheets are on site, carry the fingerprint of the job as built, and match the "
	       "house.");
	box(d,
	    "Instructions and listings of collector, foot, rail, clamp and flashing are on site.");
	check_holds(s, d);
	document_add(d, BLOCK_HEADING, 1, "Water");
	box(d, document_text(d, "Covering is %s, %s, sound.", s->job->roof.covering,
			     s->job->roof.layers > 1
				     ? document_text(d, "laid %d times over", s->job->roof.layers)
				     : "with no older one below it"));
	if (isnan(s->job->roof.course_exposure)) {
		box(d, "Each flashing is joined to the covering as the notes and the covering's maker "
		       "say; water from above has a free way past it; sealant is nowhere the only "
		       "barrier.");
		if (sheet_on_seams(s->job))
			box(d, "No foot makes a hole: the pans are whole, no seam dented or opened.");
	} else {
		box(d, "Each flashing lies under the course above and over the course below; sealant "
		       "is nowhere the only barrier.");
		box(d, "Joints of the covering stay clear of the plates' sides; loosened pieces are "
		       "fastened and bonded again.");
	}
	if (s->job->pipes > 0) {
		box(d, "Pipes: sleeve, boot for the temperature, rain cap, insulation whole and "
		       "covered from the sun; the sensor's cable flashed too.");
		box(d, "No bare copper on aluminum or zinc; no runoff from copper onto them.");
	}
	box(d, "Water test done from the lowest course upward, somebody in the attic; result "
	       "written down.");
	document_add(d, BLOCK_HEADING, 1, "Collectors");
	box(d, "Clamps of the kind and torque that the maker gives; none shared that the maker "
	       "does not allow; rail joints as the maker allows.");
	if (s->job->collector.tilt > 0)
		box(d, "Legs of each tilted row braced as the check takes them: a diagonal, or a frame "
		       "as stiff, in the plane of each front and rear leg.");
	box(d, "Paths and distances to the roof's edges are as drawn; vents, valves and chimneys "
	       "keep their clearances.");
	box(d, "Strengthening, if the engineer asked for any, is built as the engineer drew it.");
	document_add(d, BLOCK_HEADING, 1, "Afterwards");
	box(d, "Owner shown where the feet are, and told: look in the attic after the first storm, "
	       "check the clamps once a year, clear leaves.");
	document_pairs(d);
	document_pair(d, "inspected by", "", "________________________________");
	document_pair(d, "date", "", "________________");
}

void words_cautions(const struct sheet *s, struct document *d)
{
	(void)s;
	document_add(d, BLOCK_CAUTION, 0, "%s", caution_result);
	document_add(d, BLOCK_HEADING, 1, "On the roof");
	for (int i = 0; caution_roof_work[i]; i++)
		document_add(d, BLOCK_CAUTION, 0, "%s", caution_roof_work[i]);
	document_add(d, BLOCK_HEADING, 1, "With these sheets");
	document_add(d, BLOCK_CAUTION, 0,
		     "A print is good for the job whose fingerprint it carries, and for no other. "
		     "When a fact of the job changes, so does "
		     "the fingerprint: print again.");
	document_add(d, BLOCK_CAUTION, 0,
		     "Measure by the figures, never with a ruler on the paper: printers scale.");
	document_add(d, BLOCK_CAUTION, 0,
		     "Nobody has sealed these sheets. Where the authority asks for an engineer's "
		     "seal, the engineer decides what they "
		     "are worth.");
}
