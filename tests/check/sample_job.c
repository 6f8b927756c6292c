/* SPDX-License-Identifier: MIT */
#include "sample_job.h"

#include <math.h>
#include <string.h>

static void site(struct job *job)
{
	job->site = (struct job_site){ .code = ASCE7_16, .method = METHOD_ASD, .risk_category = RISK_II,
		                       .wind_speed = MPH(115), .exposure = EXPOSURE_B, .topography = TOPOGRAPHY_NONE,
		                       .Kzt = 1, .elevation = (double)NAN, .ground_snow = 0,
		                       .ground_snow_level = SNOW_SERVICE, .roof_snow_minimum = (double)NAN,
		                       .snow_exposure = SNOW_PARTIALLY_EXPOSED, .thermal = THERMAL_COLD_VENTILATED,
		                       .roof_R = (double)NAN };
	job->building = (struct job_building){ FORM_GABLE, FT(40), FT(28), FT(18), IN(16), IN(12), 0, ENCLOSED,
		                               ANSWER_NO, PLANE_UNKNOWN, (double)NAN, (double)NAN, ACCESS_LEFT, (double)NAN,
		                               (double)NAN, (double)NAN, (double)NAN, (double)NAN };
}

static void roof(struct job *job)
{
	job->roof = (struct job_roof){ .pitch = atan2(5, 12), .course_exposure = IN(5.625), .piece_length = IN(13.25),
		                       .first_butt = 0, .seam_spacing = (double)NAN, .layers = 1,
		                       .built_up = IN(0.375), .deck = DECK_PLYWOOD, .deck_thickness = IN(15.0 / 32),
		                       .dead_load = PSF(10), .ceiling = CEILING_NONE, .condition = CONDITION_SOUND,
		                       .woven_valley = (double)NAN, .wall = (double)NAN, .wall_thickness = (double)NAN,
		                       .first_seam = (double)NAN, .piece_width = (double)NAN,
		                       .first_joint = (double)NAN, .joint_course = 1 };
	strcpy(job->roof.covering, "asphalt-laminated");
	job->framing = (struct job_framing){ .kind = FRAMING_RAFTER, .breadth = IN(1.5), .depth = IN(5.5),
		                             .spacing = IN(16), .first = IN(8), .span = FT(11),
		                             .ridge = RIDGE_BOARD, .ties = ANSWER_YES, .wet = ANSWER_NO,
		                             .incised = ANSWER_NO };
	job->framing.brace_spacing = (double)NAN;
	job->framing.inner_support = job->framing.tail_depth = (double)NAN;
	job->framing.temperature = job->framing.bearing_length = job->framing.tie_height = (double)NAN;
	job->framing.sharing = job->framing.allowable_uplift = job->framing.allowable_down = (double)NAN;
	strcpy(job->framing.species, "Spruce-Pine-Fir");
	strcpy(job->framing.grade, "No.2");
}

static void array(struct job *job)
{
	const double none = (double)NAN;

	job->collector = (struct job_collector){ .kind = COLLECTOR_FLAT_PLATE, .length = FT(8), .width = FT(4),
		                                 .depth = IN(3.5), .dry_weight = LB(105), .filled_weight = LB(113),
		                                 .fluid_volume = none, .orientation = PORTRAIT, .columns = 2,
		                                 .rows = 1, .column_gap = IN(1), .left = FT(12), .lower = FT(5),
		                                 .clearance = IN(3), .rated_uplift = none, .rated_down = none,
		                                 .hardware_weight = PSF(0.5) };
	job->rail = (struct job_rail){ .kind = SUPPORT_RAILS, .lower_inset = IN(16), .upper_inset = IN(16),
		                       .lower_inset_max = none, .upper_inset_max = none,
		                       .section_modulus = none, .inertia = none, .allowable_moment = none,
		                       .max_cantilever = none, .stock_length = none, .deflection_limit = none };
	job->mount = (struct job_mount){ .seat = SEAT_ON_DECK, .height = IN(3), .plate_thickness = IN(0.25),
		                         .lever_arm = IN(2), .spacing = none, .max_spacing = IN(48),
		                         .stagger = ANSWER_NO, .allowable_uplift = LB(800), .allowable_down = none,
		                         .allowable_slope = none };
	job->fastener = (struct job_fastener){ FASTENER_LAG_SCREW, IN(5.0 / 16), IN(4), none, 1, none, IN(0.25), none,
		                               .washer_diameter = none, .allowable_uplift = none,
		                               .allowable_side = none, .safety_factor = none,
		                               .deck_thickness = none, .seam_allowable = none,
		                               .clip_allowable = none, .clip_screw_allowable = none, .clips = 1,
		                               .steel_thickness = none, .steel_strength = none };
	job->fastener.row_spacing = none;
	job->mount.deck_pitch = IN(6);
	job->rail.weak_section_modulus = job->rail.splice_moment = job->rail.splice_reach = none;
}

struct job sample_job(void)
{
	struct job job;

	memset(&job, 0, sizeof job);
	site(&job);
	job.snow = (struct job_snow){ .local_factor = (double)NAN, .W2 = (double)NAN, .guards = ANSWER_NO,
		                      .lower_roof_width = (double)NAN, .upwind_length = (double)NAN,
		                      .drift_load = (double)NAN, .drift_width = (double)NAN };
	job.earthquake = (struct job_earthquake){ .SDS = (double)NAN, .Ss = (double)NAN, .Fa = (double)NAN, .ap = 1,
		                                  .Rp = 1.5, .Ip = 1, .CAR = (double)NAN, .Rpo = (double)NAN,
		                                  .Hf = (double)NAN, .Rmu = (double)NAN };
	job.existing = (struct job_existing){ .weight = (double)NAN, .code = IEBC_2018 };
	roof(&job);
	array(&job);
	job.collector.high_edge = (double)NAN;
	job.hill.z = (double)NAN;
	return job;
}
