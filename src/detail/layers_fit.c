/* SPDX-License-Identifier: MIT */
/* What follows for the layers of a drawing from the job: its pitch, courses, pipe, post, fastener.
 */
#include <math.h>
#include <stdio.h>

#include "detail/layers.h"

#define IN(x) ((x)*M_PER_IN)

static const struct detail_layer *find(const struct detail_layers *r, const char *kind)
{
	return layer_find(r->layer, r->layers, kind);
}

static struct detail_layer *find_lapped(struct detail_layers *r)
{
	for (int i = 0; i < r->layers; i++)
		if (r->layer[i].exposure > 0 && isfinite(r->layer[i].butt_up) &&
		    !layer_is(&r->layer[i], "felt-strip"))
			return &r->layer[i];
	return NULL;
}

/* Makes a size at least this; rounded up to a whole 1/4 in, as one measures on the roof. */
static void raise(struct detail_layer *l, double *size, double least)
{
	if (isnan(*size) || !(*size < least - 1e-9))
		return;
	*size = ceil(least / IN(0.25) - 1e-6) * IN(0.25);
	l->of_job = true;
}

/* Up from the covering butt, every woven plate reaches as far as a piece of that covering does,
   L - E; below 8:12 far enough for 3 in of rise (our rule, as in roof/flashing.h); in tile, which
   lies in one layer, 3 in beyond the headlap (common practice). Panels lock: there the plate is
   hooked in. */
static void fit_reach(struct detail_layers *r, const struct detail_layer *piece)
{
	const double s = sin(r->theta);
	double reach;

	if (!piece || layer_is(piece, "panel"))
		return;
	if (layer_is(piece, "tile"))
		reach = piece->length - piece->exposure + IN(3);
	else
		reach = fmax(piece->length - piece->exposure,
			     r->theta < atan2(8, 12) - 1e-9 && s > 0 ? IN(3) / s : 0);
	for (int i = 0; i < r->layers; i++)
		if (r->layer[i].woven && layer_is(&r->layer[i], "plate"))
			raise(&r->layer[i], &r->layer[i].up, piece->butt_up + reach);
}

/* Where the lines of feet differ, the plate is that of the worst line, and the butt is drawn as on
   it. Felts go with the pieces: interlaid ones with their lower edge twice the exposure above the
   butt (IRC R905.8.7), the one over the plate across its upper edge. */
static void fit_to_job(struct detail_layers *r, const struct guide_sizes *sizes)
{
	struct detail_layer *piece = find_lapped(r);
	const struct detail_layer *plate = find(r, "plate");

	if (piece && sizes && !r->pipe && isnan(sizes->hole_to_butt) &&
	    sizes->plate_up > sizes->reach)
		piece->butt_up = sizes->plate_up - sizes->reach;
	fit_reach(r, piece);
	for (int i = 0; i < r->layers; i++) {
		struct detail_layer *l = &r->layer[i];

		if (!layer_is(l, "felt-strip"))
			continue;
		if (piece && l->exposure > 0)
			l->butt_up = piece->butt_up + 2 * piece->exposure;
		else if (plate && plate->up + IN(2) > l->up) {
			l->up = plate->up + IN(5);
			l->down = -(plate->up - IN(4));
		}
	}
}

static bool is_flange(const struct detail_layer *l)
{
	return layer_is(l, "plate") || layer_is(l, "deck-flashing") ||
	       ((layer_is(l, "boot") || layer_is(l, "patch")) && isnan(l->diameter));
}

/* A pipe wider than usual gets a wider sleeve, with 1/4 in of room all round (common practice), and
   so does what sits on it. The flanges go out by as much from its edge as usual: up and down the
   slope that edge is an oval's, usual ones being made for 6:12. */
static void fit_sleeve(struct detail_layers *r)
{
	const struct detail_layer *inside = find(r, "pipe-insulation"), *sleeve = find(r, "sleeve");

	if (!inside || !sleeve)
		return;
	const double usual = sleeve->diameter, wide = fmax(usual, inside->diameter + IN(0.5));
	const double aside = (wide - usual) / 2;
	const double along =
		wide / 2 / (sleeve->plumb ? cos(r->theta) : 1) - usual / 2 / cos(atan2(6, 12));

	for (int i = 0; i < r->layers; i++) {
		struct detail_layer *l = &r->layer[i];

		if (is_flange(l)) {
			/* a square on its corner stays one */
			const double more = l->turned ? fmax(along, aside) : along;

			raise(l, &l->down, l->down + more);
			raise(l, &l->up, l->up + more);
			raise(l, &l->side, l->side + (l->turned ? more : aside));
		} else if (aside > 1e-9 &&
			   (layer_is(l, "sleeve") || layer_is(l, "cap") || layer_is(l, "boot") ||
			    (layer_is(l, "patch") && isfinite(l->diameter)))) {
			l->diameter += wide - usual;
			l->of_job = true;
		}
	}
}

/* What lies on the deck at the hole, about. */
static double built_up(const struct detail_layers *r)
{
	double top = 0;

	for (int i = 0; i < r->layers; i++) {
		const struct detail_layer *l = &r->layer[i];

		if (layer_is(l, "underlayment") || layer_is(l, "insulation-board") ||
		    layer_is(l, "membrane") || layer_is(l, "gravel") || layer_is(l, "foam") ||
		    layer_is(l, "batten") || layer_is(l, "panel"))
			top = known(l->base, top) + known(l->thickness, 0);
		else if (l->exposure > 0 && l->length > 0 && !layer_is(l, "felt-strip"))
			top = known(l->base, top) + l->thickness * l->length / l->exposure;
	}
	return top;
}

/* The sleeve ends 6 in above the covering on its high side, 8 in on a low slope (common practice;
   the guide's sleeve-ranking): up to its axis, half its width times the slope more. What comes out
   of it goes along. */
static void fit_height(struct detail_layers *r)
{
	const struct detail_layer *sleeve = find(r, "sleeve");
	double more;

	if (!sleeve || !sleeve->plumb)
		return;
	more = built_up(r) / cos(r->theta) + sleeve->diameter / 2 * tan(r->theta) +
	       (r->theta < atan2(1.9, 12) ? IN(8) : IN(6)) - sleeve->height;
	more = ceil(more / IN(0.5) - 1e-6) * IN(0.5);
	for (int i = 0; more > 1e-9 && i < r->layers; i++)
		if (layer_is(&r->layer[i], "sleeve") || layer_is(&r->layer[i], "pipe") ||
		    layer_is(&r->layer[i], "pipe-insulation"))
			r->layer[i].height += more;
}

/* What flashes a post and how far it goes up it; NULL for the rest. The cone's height counts from
   the covering. */
static double *flashed_to(struct detail_layer *l)
{
	const bool round = isfinite(l->diameter) != 0;

	return layer_is(l, "sleeve") || ((layer_is(l, "boot") || layer_is(l, "patch")) && round)
		       ? &l->height
		       : NULL;
}

/* On a low slope the flashing of a post goes up 8 in above the covering (National Roofing
   Contractors Association, second hand, as in the guide). A post of the job that is too short for
   its flashing is drawn as it is, the flashing cut to it, and said. */
static void fit_post(struct detail_layers *r)
{
	struct detail_layer *post = NULL;
	const struct detail_layer *cap = find(r, "cap");
	const double above = cap ? 0.4 * cap->height + IN(0.5) : IN(0.5);

	for (int i = 0; i < r->layers; i++)
		if (layer_is(&r->layer[i], "post"))
			post = &r->layer[i];
	if (!post)
		return;
	if (post->of_job)
		post->height += known(post->base, 0);
	for (int i = 0; i < r->layers; i++) {
		double *top = flashed_to(&r->layer[i]);
		const double whole = built_up(r);

		if (top && r->theta < atan2(1.9, 12) && *top < whole + IN(8))
			*top = ceil((whole + IN(8)) / IN(0.25) - 1e-6) * IN(0.25);
		if (top && *top + above > post->height) {
			r->post_least = fmax(r->post_least, *top + above - known(post->base, 0));
			*top = fmax(floor((post->height - above) / IN(0.25) + 1e-6) * IN(0.25),
				    fmin(*top, whole + IN(1)));
		} else if (layer_is(&r->layer[i], "boss") &&
			   whole + r->layer[i].height + above > post->height) {
			r->post_least = whole + r->layer[i].height + above;
			r->layer[i].height = fmax(post->height - above - whole, IN(0.5));
		}
	}
	/* nothing ends inside of what flashes it */
	for (int i = 0; i < r->layers; i++) {
		const double *top = flashed_to(&r->layer[i]);

		if (top)
			raise(post, &post->height, *top + above);
	}
}

/* The fastener of the job in place of the usual one. A mount on the deck alone has no rafter below
   it; a clamp makes no hole, so that a drawing without seams stays as it is. */
static void take_fastener(struct detail_layers *r, enum guide_fastener as)
{
	static const char *const name[] = {
		[GUIDE_FASTENER_LAG_SCREW] = "lag screw",
		[GUIDE_FASTENER_SCREW] = "screw",
		[GUIDE_FASTENER_BOLT] = "through-bolt, washer and nut below",
		[GUIDE_FASTENER_HANGER_BOLT] = "hanger bolt, the foot between two nuts",
		[GUIDE_FASTENER_DECK] = "screws into the deck alone, no rafter below"};

	if (r->pipe || find(r, "clamp") || as == GUIDE_FASTENER_USUAL || as == GUIDE_FASTENER_CLAMP)
		return;
	for (int i = 0; i < r->layers; i++) {
		struct detail_layer *l = &r->layer[i];

		if (!layer_is(l, "screw") && !layer_is(l, "bolt"))
			continue;
		l->as = as;
		/* the library's own words where it draws that kind anyway */
		if (as != (layer_is(l, "bolt") ? GUIDE_FASTENER_BOLT : GUIDE_FASTENER_LAG_SCREW))
			snprintf(l->label, sizeof l->label, "%s", name[as]);
		l->of_job = true;
	}
	if (as == GUIDE_FASTENER_DECK) {
		layers_take_out(r, "rafter");
		layers_take_out(r, "block");
		layers_take_out(r, "sealant"); /* of the one pilot hole */
	}
}

/* A block between the rafters lies against the deck, however thick that is; a filler is as thick as
   the boards. */
static void fit_blocks(struct detail_layers *r)
{
	const struct detail_layer *deck =
		find(r, "deck") ? find(r, "deck") : find(r, "spaced-board");

	for (int i = 0; deck && deck->of_job && i < r->layers; i++) {
		struct detail_layer *l = &r->layer[i];

		if (layer_carries(l)) {
			l->base = -deck->thickness - l->thickness;
		} else if (layer_is(l, "block") && l->base < 0) {
			l->thickness = deck->thickness;
			l->base = -deck->thickness;
		}
	}
}

/* A boot keeps 3 in off each seam of its pan (common practice, as in the guide): its corner reaches
   1.41 times half its side. */
static void look_at_seams(struct detail_layers *r)
{
	const struct detail_layer *seam = find(r, "seam"), *boot = find(r, "boot");

	r->boot_too_wide = seam && boot && boot->turned &&
			   seam->spacing / 2 - sqrt(2) * boot->side < SEAM_CLEAR - 1e-9;
}

/* The job tells the pipe and no insulation on it. */
static bool bare(const struct guide_sizes *s)
{
	return s && !isnan(s->pipe_diameter) && isnan(s->pipe_insulated);
}

void layers_fit(struct detail_layers *r, const struct guide_request *request)
{
	if (request->on_rafters && find(r, "rafter"))
		layers_take_out_carriers(r);
	fit_blocks(r);
	fit_to_job(r, request->sizes);
	if (r->pipe) {
		if (bare(request->sizes))
			layers_take_out(r, "pipe-insulation");
		fit_sleeve(r);
		fit_height(r);
		look_at_seams(r);
	} else {
		fit_post(r);
	}
	take_fastener(r, request->fastener);
}
