/* SPDX-License-Identifier: MIT */
#include "sample.h"

#include <math.h>
#include <string.h>

#include "load/asce7_solar.h"

#define LB N_PER_LBF
#define PSF (N_PER_LBF / (M_PER_FT * M_PER_FT))
#define PSI (144.0 * PSF)

static double pressure(const double *in)
{
	return 0.00256 * in[0] * in[1] * in[2] * in[3] * in[4] * in[4];
}

const struct step sample_step_pressure = {
	.name = "sample-pressure",
	.symbol = "qh",
	.unit = UNIT_PSF,
	.title = "Velocity pressure",
	.formula = "0.00256 Kz Kzt Kd Ke V^2",
	.clause = { [ASCE7_16] = "ASCE/SEI 7-16 Eq. 26.10-1" },
	.confidence = ONE_SOURCE,
	.note = "seen once",
	.in = { { "Kz", UNIT_NONE, "exposure coefficient" },
	        { "Kzt", UNIT_NONE, "topographic factor" },
	        { "Kd", UNIT_NONE, "directionality factor" },
	        { "Ke", UNIT_NONE, "ground elevation factor" },
	        { "V", UNIT_MPH, "basic wind speed" } },
	.value = pressure,
};

void sample_job(struct job *job, enum unit_system units)
{
	memset(job, 0, sizeof *job);
	strcpy(job->title, "Sample of a page");
	job->units = units;
	job->site = (struct job_site){ .code = ASCE7_16,
		                       .risk_category = RISK_II,
		                       .wind_speed = 115.0 * M_PER_MI / 3600.0,
		                       .exposure = EXPOSURE_C,
		                       .Kzt = 1.0,
		                       .elevation = NAN,
		                       .ground_snow = 25.0 * PSF,
		                       .roof_snow_minimum = NAN,
		                       .roof_R = NAN };
	job->building = (struct job_building){ .form = FORM_GABLE,
		                               .length = 40.0 * M_PER_FT,
		                               .width = 28.0 * M_PER_FT,
		                               .mean_roof_height = 18.0 * M_PER_FT,
		                               .eave_overhang = 16.0 * M_PER_IN,
		                               .rake_overhang = 12.0 * M_PER_IN };
	job->roof = (struct job_roof){ .pitch = atan(5.0 / 12.0),
		                       .course_exposure = 5.625 * M_PER_IN,
		                       .piece_length = NAN,
		                       .first_butt = NAN,
		                       .seam_spacing = NAN,
		                       .layers = 1,
		                       .built_up = NAN,
		                       .deck_thickness = NAN,
		                       .dead_load = 10.0 * PSF,
		                       .woven_valley = NAN, .wall = NAN,
		                       .wall_thickness = NAN };
	strcpy(job->roof.covering, "asphalt-laminated");
	job->framing = (struct job_framing){ .kind = FRAMING_RAFTER,
		                             .breadth = 1.5 * M_PER_IN,
		                             .depth = 5.5 * M_PER_IN,
		                             .spacing = 16.0 * M_PER_IN,
		                             .first = 8.0 * M_PER_IN,
		                             .span = 11.0 * M_PER_FT };
	strcpy(job->framing.size, "2x6");
	strcpy(job->framing.species, "Spruce-Pine-Fir");
	strcpy(job->framing.grade, "No.2");
	job->collector = (struct job_collector){ .length = 96.0 * M_PER_IN,
		                                 .width = 48.0 * M_PER_IN,
		                                 .depth = 3.5 * M_PER_IN,
		                                 .dry_weight = 105.0 * LB,
		                                 .filled_weight = 113.0 * LB,
		                                 .fluid_volume = NAN,
		                                 .columns = 2,
		                                 .rows = 1,
		                                 .rated_uplift = NAN,
		                                 .rated_down = NAN,
		                                 .hardware_weight = 0.5 * PSF };
	job->rail = (struct job_rail){ .section_modulus = NAN,
		                       .inertia = NAN,
		                       .allowable_moment = NAN,
		                       .max_cantilever = NAN,
		                       .deflection_limit = NAN };
	job->mount = (struct job_mount){ .lever_arm = NAN,
		                         .spacing = NAN,
		                         .max_spacing = NAN,
		                         .allowable_uplift = 800.0 * LB,
		                         .allowable_down = NAN,
		                         .allowable_slope = NAN };
	job->fastener = (struct job_fastener){ .diameter = 0.3125 * M_PER_IN,
		                               .length = 4.0 * M_PER_IN,
		                               .thread_length = NAN,
		                               .count = 1,
		                               .spacing = NAN,
		                               .drilling_tolerance = 0.25 * M_PER_IN,
		                               .end_distance = NAN };
	job->pipes = 1;
	job->pipe[0] = (struct job_pipe){ .diameter = 0.875 * M_PER_IN,
		                          .insulated_diameter = 2.375 * M_PER_IN,
		                          .count = 2,
		                          .temperature = NAN,
		                          .at = NAN,
		                          .up = NAN };
	memset(job->origin, ORIGIN_FILE, sizeof job->origin);
	job->origin[FIELD_SITE_EXPOSURE] = ORIGIN_ASSUMED;
	job->origin[FIELD_COLLECTOR_HARDWARE_WEIGHT] = ORIGIN_DEFAULT;
	job->origin[FIELD_SITE_WIND_SPEED] = ORIGIN_OVERRIDE;
	job->origin[FIELD_ROOF_PIECE_LENGTH] = ORIGIN_ABSENT;
}

static void set(struct check_value *c, double demand, double capacity, const char *combination,
                double CD)
{
	*c = (struct check_value){ .rated = true,
		                   .demand = demand,
		                   .capacity = capacity,
		                   .ratio = demand / capacity,
		                   .combination = combination,
		                   .CD = CD };
}

static void fill_attachment(struct attachment *a, int i, int per_line)
{
	const double width = 48.0 * M_PER_IN, depth = 4.0 * M_PER_FT;

	*a = (struct attachment){ .number = i + 1,
		                  .line = i / per_line,
		                  .rafter = 9 + 3 * (i % per_line),
		                  .x = 12.125 * M_PER_FT + width * (i % per_line),
		                  .y = (6.0 + 5.0 * (i / per_line)) * M_PER_FT,
		                  .tributary_width = width,
		                  .tributary_depth = depth,
		                  .reaction_width = 1.1 * width,
		                  .area = width * depth,
		                  .zone = i % 2 ? ZONE_2N : ZONE_1,
		                  .exposed = i % per_line == 0,
		                  .GCp_up = -2.12,
		                  .GCp_down = 0.42,
		                  .confidence = FROM_MEMORY,
		                  .p_up = 33.14 * PSF,
		                  .p_down = 16.0 * PSF };
	a->uplift = (struct force){ (231.0 + i) * LB, 8.0 * LB, "0.6D + 0.6W", 1.6 };
	a->down = (struct force){ 318.2 * LB, 61.0 * LB, "D + 0.75(0.6W) + 0.75S", 1.15 };
	a->slope = (struct force){ 318.2 * LB, 61.0 * LB, "D + S", 1.15 };
	set(&a->check[CHECK_FOOT_UPLIFT], a->uplift.normal, 800.0 * LB, "0.6D + 0.6W", 1.0);
	set(&a->check[CHECK_WITHDRAWAL], a->uplift.normal, 512.9 * LB, "0.6D + 0.6W", 1.6);
	set(&a->check[CHECK_COMBINED], a->uplift.normal, 500.2 * LB, "0.6D + 0.6W", 1.6);
	a->ratio = a->check[CHECK_COMBINED].ratio;
	a->governs = CHECK_COMBINED;
}

static void fill_zone(struct zone_spacing *z, enum confidence confidence, double spacing)
{
	*z = (struct zone_spacing){ .present = true,
		                    .p_up = 30.0 * PSF,
		                    .p_down = 16.0 * PSF,
		                    .GCp_up = -1.5,
		                    .GCp_down = 0.42,
		                    .confidence = confidence,
		                    .figure = "Fig.",
		                    .area = 1.9,
		                    .spacing = spacing,
		                    .exact = 58.2 * M_PER_IN,
		                    .governs = CHECK_COMBINED };
}

static void fill_pass(struct pass *p, const char *name, int attachments, double worst)
{
	const int per_line = attachments / 2;

	p->name = name;
	p->holds = worst <= 1.0;
	p->ratio = worst;
	p->governs = CHECK_RAFTER_BENDING;
	p->attachments = per_line * 2;
	for (int i = 0; i < p->attachments; i++)
		fill_attachment(&p->attachment[i], i, per_line);
	p->lines = 2;
	for (int i = 0; i < 2; i++)
		p->line[i] = (struct rail_line){ .line = i,
			                         .y = (6.0 + 5.0 * i) * M_PER_FT,
			                         .x0 = 12.0 * M_PER_FT,
			                         .x1 = 20.0 * M_PER_FT,
			                         .first = i * per_line,
			                         .count = per_line,
			                         .longest_span = 48.0 * M_PER_IN,
			                         .longest_cantilever = 10.5 * M_PER_IN,
			                         .ratio = NAN };
	p->rafters = 1;
	p->rafter[0] = (struct rafter_result){ .rafter = 9,
		                               .feet = 2,
		                               .ratio_before = 0.7,
		                               .ratio_after = worst,
		                               .governs = CHECK_RAFTER_BENDING,
		                               .rise_total = 0.0612,
		                               .rise_dead = 0.31 };
	set(&p->rafter[0].before[CHECK_RAFTER_BENDING], 0.7e7, 1.0e7, "D + S", 1.15);
	set(&p->rafter[0].after[CHECK_RAFTER_BENDING], worst * 1.0e7, 1.0e7, "D + S", 1.15);
	for (int i = 0; i < LINK_COUNT; i++)
		p->link_ratio[i] = NAN;
	p->link_ratio[LINK_FASTENER] = p->attachment[p->attachments - 1].ratio;
	p->link_at[LINK_FASTENER] = p->attachments;
	p->link_governs[LINK_FASTENER] = CHECK_COMBINED;
	p->link_ratio[LINK_RAFTER] = worst;
	p->link_at[LINK_RAFTER] = 10;
	p->link_governs[LINK_RAFTER] = CHECK_RAFTER_BENDING;
	fill_zone(&p->zone[ZONE_1], FROM_MEMORY, 48.0 * M_PER_IN);
	fill_zone(&p->zone[ZONE_2N], SAFE_SIDE, 0.0);
	p->governing_attachment = p->attachments - 1;
}

void sample_result(struct result *r, const struct job *job, enum verdict verdict, int attachments)
{
	const double in[] = { 0.605, 1.0, 0.85, 1.0, job->site.wind_speed };

	memset(r, 0, sizeof *r);
	r->verdict = verdict;
	r->remark[r->remarks++] = (struct remark){ .id = REMARK_UNCHECKED_RAIL };
	r->remark[r->remarks++] = (struct remark){ .id = REMARK_FIVE_PERCENT,
		                                   .value = { 0.0612 },
		                                   .text = { "bending moment" } };
	if (verdict == DOES_NOT_HOLD)
		r->remark[r->remarks++] =
			(struct remark){ .id = REMARK_RAFTER_RATIO,
			                 .value = { 10.0, 1.004 },
			                 .text = { "bending of the rafter, load down", "D + S" } };
	if (verdict == NEEDS_ENGINEER)
		r->remark[r->remarks++] =
			(struct remark){ .id = REMARK_HEIGHT, .value = { 62.0 * M_PER_FT } };
	r->plane_length = 42.0 * M_PER_FT;
	r->plane_slope = 16.6 * M_PER_FT;
	r->collectors = 2;
	r->array = (struct rectangle){ 12.0 * M_PER_FT, 5.0 * M_PER_FT, 20.1 * M_PER_FT,
		                       13.0 * M_PER_FT };
	r->array_to_eave = 5.0 * M_PER_FT;
	r->array_to_ridge = 3.6 * M_PER_FT;
	r->array_to_left = 12.0 * M_PER_FT;
	r->array_to_right = 21.9 * M_PER_FT;
	r->wind = (struct wind_result){ .Kz = 0.605,
		                        .Kd = 0.85,
		                        .Ke = 1.0,
		                        .Kzt = 1.0,
		                        .qh = 17.41 * PSF,
		                        .a = 3.0 * M_PER_FT,
		                        .h2 = 6.5 * M_PER_IN,
		                        .Lp = 8.0 * M_PER_FT,
		                        .flush_failed = FLUSH_BIT(FLUSH_GAP_SPACING) };
	r->snow = (struct snow_result){ .Ce = 1.0,
		                        .Ct = 1.1,
		                        .Is = 1.0,
		                        .pf = 19.25 * PSF,
		                        .Cs_before = 1.0,
		                        .Cs_roof = 1.0,
		                        .Cs_array = 0.9,
		                        .cases = 1 };
	r->snow.snow[0] = (struct snow_load_case){ .name = "balanced",
		                                   .roof = 19.25 * PSF,
		                                   .array = 17.3 * PSF,
		                                   .clause = "ASCE/SEI 7-16 7.4" };
	r->dead = (struct dead_result){ .array_dry = 3.8 * PSF,
		                        .array_filled = 4.0 * PSF,
		                        .collector_dry = 105.0 * LB,
		                        .collector_filled = 113.0 * LB };
	r->fastener = (struct fastener_result){ .t_up = 0.85 * M_PER_IN,
		                                .p_tot = 3.15 * M_PER_IN,
		                                .p = 2.9 * M_PER_IN,
		                                .p_t = 2.25 * M_PER_IN,
		                                .l_m = 3.0 * M_PER_IN,
		                                .gap = 0.6 * M_PER_IN,
		                                .W = 205.0 * LB / M_PER_IN,
		                                .Z = 150.0 * LB,
		                                .lead_hole_low = 0.125 * M_PER_IN,
		                                .lead_hole_high = 0.171875 * M_PER_IN,
		                                .edge_room = 0.28125 * M_PER_IN,
		                                .mode = "III_s" };
	r->lumber = (struct lumber_result){ .species = "Spruce-Pine-Fir",
		                            .grade = "No.2",
		                            .G = 0.42,
		                            .Fb = 875.0 * PSI,
		                            .Fv = 135.0 * PSI,
		                            .E = 1.4e6 * PSI,
		                            .Emin = 0.51e6 * PSI,
		                            .CF = 1.3,
		                            .Cr = 1.15 };
	r->Lr = 20.0 * PSF;
	r->passes = 2;
	r->judged = 1;
	fill_pass(&r->pass[0], "remembered curve", attachments, 0.71);
	fill_pass(&r->pass[1], "safe side", attachments, verdict == DOES_NOT_HOLD ? 1.004 : 0.86);
	r->trace[SECTION_WIND] = (struct trace){ r->record[SECTION_WIND], 0, TRACE_MAX, 0 };
	step_run(&r->trace[SECTION_WIND], &sample_step_pressure, in, 5);
}
