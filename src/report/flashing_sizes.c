/* SPDX-License-Identifier: MIT */
#include "report/flashing_sizes.h"

#include <math.h>

#include "table/lookup_covering.h"

static const struct covering_plate_row *plate_row(const struct job *job)
{
	return covering_plate_row(job->roof.covering, 12.0 * tan(job->roof.pitch));
}

bool flashing_has_courses(const struct job *job)
{
	return job->roof.course_exposure > 0.0;
}

struct flashing_foot flashing_of_line(const struct job *job, const struct rail_line *line)
{
	const struct covering_plate_row *row = plate_row(job);
	const struct flashing_given given = {
		.theta = job->roof.pitch,
		.E = job->roof.course_exposure,
		.L = job->roof.piece_length,
		/* its default is no more than a guess */
		.first_butt = job_given(job, FIELD_ROOF_FIRST_BUTT) ? job->roof.first_butt : (double)NAN,
		.y = line->y,
		.down = row ? row->plate_down_in * M_PER_IN : (double)NAN,
	};

	return flashing_foot(NULL, &given);
}

/* The same value twice stays; two different ones are no value. NAN as the first means "none yet".
 */
static void agree(double *seen, double value, bool first)
{
	if (first)
		*seen = value;
	else if (!(fabs(*seen - value) <= 1e-9))
		*seen = NAN;
}

static double counted(int n)
{
	return n > 0 ? (double)n : (double)NAN;
}

/* Least widths of the plate on this covering. */
static void set_plate_width(struct guide_sizes *s, const struct job *job)
{
	const struct covering_plate_row *row = plate_row(job);

	if (!row)
		return;
	s->plate_width = fmax(row->plate_width_in, 2.0 * row->plate_side_in) * M_PER_IN;
	s->plate_side = s->plate_width / 2.0;
}

static void set_feet(struct guide_sizes *s, const struct job *job, const struct pass *pass)
{
	s->feet = counted(pass->attachments);
	for (int i = 0; i < pass->lines; i++) {
		const struct flashing_foot foot = flashing_of_line(job, &pass->line[i]);

		/* L - 2E is no headlap where the covering lies in one layer, such as tile */
		s->headlap = foot.headlap > 0.0 ? foot.headlap : (double)NAN;
		s->reach = foot.reach;
		s->low_slope_reach = foot.low_slope_reach;
		s->courses_to_open = counted(foot.open);
		agree(&s->hole_to_butt, foot.butt_up, i == 0);
		agree(&s->above_butt, foot.above_butt, i == 0);
		agree(&s->course, counted(foot.course), i == 0);
		if (!isnan(foot.plate_length) && !(s->plate_length >= foot.plate_length)) {
			s->plate_length = foot.plate_length;
			s->plate_down = foot.plate_down;
			s->plate_up = foot.plate_up;
		}
	}
}

static double larger(double a, double b)
{
	return isnan(a) || b > a ? b : a;
}

static void set_hole(struct guide_sizes *s, const struct job *job, double across)
{
	const double theta = job->roof.pitch, t = job->roof.deck_thickness;

	s->pipe_across = STEP(NULL, step_pipe_across, across, PIPE_GAP);
	s->pipe_ellipse = STEP(NULL, step_pipe_ellipse, across, PIPE_GAP, theta);
	s->sleeve_difference = STEP(NULL, step_sleeve_difference, across, theta);
	if (!isnan(t))
		s->deck_slot = STEP(NULL, step_deck_slot, across, PIPE_GAP, theta, t);
}

static void set_pipes(struct guide_sizes *s, const struct job *job, int first, int last)
{
	double across = NAN;
	int count = 0;

	for (int i = first; i <= last; i++) {
		const struct job_pipe *p = &job->pipe[i];

		count += p->count;
		s->pipe_diameter = larger(s->pipe_diameter, p->diameter);
		s->pipe_insulated = larger(s->pipe_insulated, p->insulated_diameter);
		s->pipe_temperature = larger(s->pipe_temperature, p->temperature);
		across = larger(across,
		                isnan(p->insulated_diameter) ? p->diameter : p->insulated_diameter);
	}
	s->pipes = counted(count);
	if (!isnan(across))
		set_hole(s, job, across);
}

/* IRC R905.1.2: from 8:12 on at least 36 in up the slope in the editions that say so; taken for all
   (safe side). */
static void set_ice_barrier(struct guide_sizes *s, const struct job *job)
{
	const double eight = atan(8.0 / 12.0);
	const double least = at_least(job->roof.pitch, eight) ? 36.0 * M_PER_IN : 0.0;

	if (job->roof.ice_barrier != ANSWER_YES || isnan(job->roof.wall_thickness))
		return;
	s->ice_barrier = STEP(NULL, step_ice_barrier, job->building.eave_overhang,
	                      job->roof.wall_thickness, job->roof.pitch, least);
	s->ice_rolls = STEP(NULL, step_ice_barrier_rolls, s->ice_barrier);
}

/* Feet on blocks and feet on rafters may get threads of two lengths: then no step can name one. */
static double one_thread(const struct result *r)
{
	const double rafter = r->fastener.p_t, block = r->block.feet > 0 ? r->block.p_t : rafter;

	return rafter > 0.0 && at_most(rafter, block) && at_least(rafter, block) ? rafter : (double)NAN;
}

static struct guide_sizes sizes_of(const struct job *job, const struct result *r, int first,
				   int last)
{
	struct guide_sizes s = guide_sizes_unknown();

	s.pitch = job->roof.pitch;
	s.exposure = job->roof.course_exposure;
	s.piece_length = job->roof.piece_length;
	s.built_up = job->roof.built_up;
	s.deck_thickness = job->roof.deck_thickness;
	s.seam_spacing = job->roof.seam_spacing;
	s.fastener_diameter = job->fastener.diameter;
	s.fastener_length = job->fastener.length;
	s.thread_in_wood = one_thread(r);
	s.rafter_breadth = job->framing.breadth;
	s.rafter_depth = job->framing.depth;
	s.rafter_spacing = job->framing.measured > 0 ? (double)NAN : job->framing.spacing;
	s.foot_height = job->mount.height;
	if (isfinite(job->roof.woven_valley))
		s.valley_level = STEP(NULL, step_valley_level, VALLEY_CLEAR, job->roof.pitch);
	set_feet(&s, job, &r->pass[r->judged]);
	set_plate_width(&s, job);
	set_pipes(&s, job, first, last);
	set_ice_barrier(&s, job);
	return s;
}

struct guide_sizes flashing_sizes(const struct job *job, const struct result *r)
{
	return sizes_of(job, r, 0, job->pipes - 1);
}

struct guide_sizes flashing_sizes_of_pipe(const struct job *job, const struct result *r, int which)
{
	return sizes_of(job, r, which, which);
}

static bool same(double a, double b)
{
	return (isnan(a) && isnan(b)) || fabs(a - b) < 1e-9;
}

bool flashing_pipe_repeats(const struct job *job, int which)
{
	const struct job_pipe *p = &job->pipe[which];

	for (int i = 0; i < which; i++)
		if (same(p->diameter, job->pipe[i].diameter) &&
		    same(p->insulated_diameter, job->pipe[i].insulated_diameter) &&
		    same(p->temperature, job->pipe[i].temperature))
			return true;
	return false;
}

enum guide_fastener flashing_fastener(const struct job *job)
{
	switch (job->fastener.kind) {
	case FASTENER_LAG_SCREW:
		return GUIDE_FASTENER_LAG_SCREW;
	case FASTENER_WOOD_SCREW:
	case FASTENER_STRUCTURAL_SCREW:
	case FASTENER_SHEET_SCREW:
		return GUIDE_FASTENER_SCREW;
	case FASTENER_THROUGH_BOLT:
		return GUIDE_FASTENER_BOLT;
	case FASTENER_HANGER_BOLT:
		return GUIDE_FASTENER_HANGER_BOLT;
	case FASTENER_SEAM_CLAMP:
		return GUIDE_FASTENER_CLAMP;
	case FASTENER_DECK_MOUNT:
		return GUIDE_FASTENER_DECK;
	}
	return GUIDE_FASTENER_USUAL;
}
