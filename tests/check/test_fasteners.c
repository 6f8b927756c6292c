/* SPDX-License-Identifier: MIT */
/* Every way of holding on, through the whole check, and the table of the command `fastener`. */
#include <math.h>
#include <string.h>

#include "check/fastener_table.h"
#include "sample_run.h"

static struct check_workspace workspace;

/* Feet on every other rafter, so that the layout does not change with the fastener. */
static struct job spaced(void)
{
	struct job job = sample_job();

	job.mount.spacing = IN(32);
	return job;
}

static bool lag_checks(const struct result *r)
{
	return worst(r, CHECK_WITHDRAWAL) > 0 || worst(r, CHECK_LATERAL) > 0;
}

static void test_wood_screw(void **state)
{
	(void)state;
	struct job job = spaced();

	job.fastener.kind = FASTENER_WOOD_SCREW;
	job.fastener.diameter = IN(0.242);
	const struct result *r = run(&job);
	const double alone = worst(r, CHECK_PULL);

	assert_true(alone > 0 && worst(r, CHECK_SIDE) > 0 &&
		    worst(r, CHECK_PULL_SIDE) >= alone * 0.99);
	assert_false(lag_checks(r));
	/* W = 2850 0.42^2 0.242 = 121.7 lb/in */
	assert_within(r->fastener.W, 2850 * 0.42 * 0.42 * 0.242 * N_PER_LBF / M_PER_IN, 1e-9);
	job.fastener.length = IN(2); /* 2 - 0.25 - 0.469 = 1.28 in, under 6 D = 1.452 in */
	r = run(&job);
	assert_int_equal(count(r, REMARK_PENETRATION_SCREW), 1);
	assert_int_equal(r->verdict, DOES_NOT_HOLD);
}

static void test_structural_screw(void **state)
{
	(void)state;
	struct job job = spaced();

	job.fastener.kind = FASTENER_STRUCTURAL_SCREW;
	job.fastener.diameter = IN(0.25);
	job.fastener.allowable_uplift = LB(500);
	job.fastener.allowable_side = LB(300);
	strcpy(job.fastener.report, "Report 1");
	job.fastener.safety_factor = 5;
	const struct result *r = run(&job);
	const double pull = worst(r, CHECK_PULL), side = worst(r, CHECK_SIDE);

	assert_true(pull > 0 && side > 0 && worst(r, CHECK_TOGETHER) >= pull);
	assert_int_equal(count(r, REMARK_TESTED), 1);
	job.fastener.allowable_uplift = LB(1000);
	assert_near(worst(run(&job), CHECK_PULL), pull / 2, 1e-12);
	job.fastener.allowable_uplift = LB(500);
	job.fastener.duration = DURATION_TEN_YEARS; /* wind: 1.6 */
	assert_near(worst(run(&job), CHECK_PULL), pull / 1.6, 1e-12);
	job.fastener.duration = DURATION_INCLUDED;
	job.fastener.allowable_side = 0; /* a value that is not there carries nothing */
	assert_int_equal(run(&job)->verdict, DOES_NOT_HOLD);
}

static void test_through_bolt(void **state)
{
	(void)state;
	struct job job = spaced();

	job.fastener.kind = FASTENER_THROUGH_BOLT;
	job.fastener.diameter = IN(0.25);
	job.fastener.washer_diameter = IN(1.25);
	const struct result *r = run(&job);
	const double wide = worst(r, CHECK_WASHER);

	assert_true(wide > 0 && worst(r, CHECK_BREAK) > 0 && worst(r, CHECK_SIDE) > 0);
	job.fastener.washer_diameter = IN(1);
	/* areas less the 5/16 in hole: 1.46484 to 0.90234 */
	assert_near(worst(run(&job), CHECK_WASHER), wide * (1.5625 - 0.09765625) / (1 - 0.09765625),
		    1e-12);
	job.fastener.washer_diameter = IN(2); /* wider than the rafter */
	r = run(&job);
	assert_int_equal(count(r, REMARK_FASTENER_UNRATED), 1);
	assert_int_equal(r->verdict, DOES_NOT_HOLD);
}

/* The height bends the bolt; no lever arm is asked for. */
static void test_hanger_bolt(void **state)
{
	(void)state;
	struct job job = spaced();

	job.fastener.kind = FASTENER_HANGER_BOLT;
	job.fastener.thread_length = IN(3);
	job.mount.lever_arm = (double)NAN;
	const struct result *r = run(&job);
	const double low = worst(r, CHECK_SIDE);

	assert_int_equal(count(r, REMARK_LEVER_ARM), 0);
	assert_int_equal(count(r, REMARK_HANGER_FREE), 1);
	job.mount.height = IN(6);
	assert_true(worst(run(&job), CHECK_SIDE) > 1.5 * low);
	assert_near(worst(run(&job), CHECK_PULL), worst(r, CHECK_PULL), 1e-12);
}

/* Two bolts share the force, less what a row loses (NDS-2018 11.3.6) and no less than half. */
static void test_two_bolts(void **state)
{
	(void)state;
	struct job job = spaced();

	job.fastener.kind = FASTENER_THROUGH_BOLT;
	job.fastener.diameter = IN(0.375);
	job.fastener.drilling_tolerance = IN(0.125);
	job.fastener.washer_diameter = IN(1.375);
	const double one = worst(run(&job), CHECK_SIDE);

	job.fastener.count = 2;
	job.fastener.spacing = IN(1.5);
	const double two = worst(run(&job), CHECK_SIDE);

	assert_true(two > one / 2 && two < 0.6 * one);
	job.fastener.spacing = IN(1.1); /* under 3 D */
	assert_int_equal(count(run(&job), REMARK_FASTENER_UNRATED), 1);
}

static struct job clamps(void)
{
	struct job job = sample_job();

	strcpy(job.roof.covering, "metal-standing-seam-snap");
	job.fastener.kind = FASTENER_SEAM_CLAMP;
	job.fastener.diameter = job.fastener.length = (double)NAN;
	job.roof.seam_spacing = IN(16);
	job.roof.first_seam = IN(5);
	job.mount.allowable_uplift = LB(600);
	job.mount.allowable_down = LB(900);
	job.mount.allowable_slope = LB(400);
	job.fastener.safety_factor = 3;
	strcpy(job.fastener.report, "Report 2");
	job.fastener.clip_allowable = LB(700);
	job.fastener.clip_screw_allowable = LB(650);
	return job;
}

/* Feet go to seams: 5 in, 21 in, 37 in ...; the rafters beside them carry what they bring. */
static void test_seam_clamp(void **state)
{
	(void)state;
	struct job job = clamps();
	const struct result *r = run(&job);
	const struct pass *p = judged(r);

	assert_true(p->complete && p->attachments > 0);
	assert_near(r->rafter_x[1], IN(21), 1e-12);
	for (int i = 0; i < p->attachments; i++)
		assert_near(fmod(p->attachment[i].x - IN(5) + IN(1), IN(16)), IN(1), 1e-9);
	assert_true(p->rafters > 0 && p->link_ratio[LINK_RAFTER] > 0);
	assert_int_equal(count(r, REMARK_SEAM_SPREAD), 1);
	assert_int_equal(count(r, REMARK_SEAM_FRAMING), 0);
	assert_int_equal(count(r, REMARK_SEAM_LINES), 1);
	assert_int_equal(count(r, REMARK_CLIPS_UNKNOWN), 0);
	assert_true(worst(r, CHECK_CLIP) > 0 && worst(r, CHECK_CLIP_SCREW) > 0);
}

/* The weakest of clamp, seam, clip and clip screws decides; each has its own demand. */
static void test_clips(void **state)
{
	(void)state;
	struct job job = clamps();

	job.mount.spacing = IN(48);
	const double clip = worst(run(&job), CHECK_CLIP),
		     foot = worst(run(&job), CHECK_FOOT_UPLIFT);

	assert_near(clip * 700, foot * 600, 1e-12); /* one clip carries the whole clamp */
	job.fastener.clips = 2;
	assert_near(worst(run(&job), CHECK_CLIP), clip / 2, 1e-12);
	job.fastener.seam_allowable = LB(10);
	const struct result *r = run(&job);

	assert_int_equal(judged(r)->link_governs[LINK_FASTENER], CHECK_SEAM);
	assert_false(judged(r)->holds);
	job.fastener.seam_allowable = (double)NAN;
	job.fastener.clip_allowable = (double)NAN;
	r = run(&job);
	assert_int_equal(count(r, REMARK_CLIPS_UNKNOWN), 1);
	assert_int_equal(r->verdict, NEEDS_ENGINEER);
}

static void test_deck_mount(void **state)
{
	(void)state;
	struct job job = sample_job();

	job.fastener.kind = FASTENER_DECK_MOUNT;
	job.mount.allowable_slope = LB(400);
	job.fastener.safety_factor = 5;
	strcpy(job.fastener.report, "Report 3");
	job.fastener.deck = DECK_PLYWOOD;
	job.fastener.deck_thickness = job.roof.deck_thickness;
	const struct result *r = run(&job);

	assert_int_equal(count(r, REMARK_DECK_UNLIKE), 0);
	assert_int_equal(count(r, REMARK_UNCHECKED_DECK_NAILS), 1);
	assert_true(judged(r)->rafters > 0 && worst(r, CHECK_TOGETHER) > 0);
	/* a thicker deck is no worse, a thinner one, another kind or one that nobody measured is
	 * another deck */
	job.roof.deck_thickness *= 1.2;
	assert_int_equal(count(run(&job), REMARK_DECK_UNLIKE), 0);
	job.fastener.deck_thickness = job.roof.deck_thickness * 1.01;
	assert_int_equal(run(&job)->verdict, NEEDS_ENGINEER);
	job.fastener.deck_thickness = job.roof.deck_thickness;
	job.fastener.deck = DECK_OSB;
	assert_int_equal(count(run(&job), REMARK_DECK_UNLIKE), 1);
	job.fastener.deck = DECK_PLYWOOD;
	job.origin[FIELD_ROOF_DECK_THICKNESS] = ORIGIN_ASSUMED;
	assert_int_equal(count(run(&job), REMARK_DECK_UNLIKE), 1);
}

static void test_sheet_screw(void **state)
{
	(void)state;
	struct job job = spaced();

	job.framing.kind = FRAMING_STEEL;
	job.fastener.kind = FASTENER_SHEET_SCREW;
	job.fastener.diameter = IN(0.25);
	job.fastener.steel_thickness = IN(0.0566);
	const struct result *r = run(&job);
	const double pull = worst(r, CHECK_PULL);

	assert_true(pull > 0 && worst(r, CHECK_SIDE) > 0);
	assert_int_equal(count(r, REMARK_NOT_RAFTER),
			 1); /* purlins: the engineer's value is missing */
	job.fastener.steel_strength = 65e3 * N_PER_LBF / (M_PER_IN * M_PER_IN);
	assert_near(worst(run(&job), CHECK_PULL), pull * 45 / 65, 1e-12);
	job.framing.allowable_uplift = LB(900);
	job.framing.allowable_down = LB(900);
	strcpy(job.framing.report, "Letter");
	r = run(&job);
	assert_int_equal(count(r, REMARK_NOT_RAFTER), 0);
	assert_int_equal(count(r, REMARK_FRAMING_ENTERED), 1);
	assert_true(worst(r, CHECK_FRAMING_UPLIFT) > 0);
	job.fastener.diameter = IN(0.3);
	assert_int_equal(count(run(&job), REMARK_FASTENER_UNRATED), 1);
}

/* The table's row of the job's own screw tells the job's own ratio. */
static void test_table_is_the_check(void **state)
{
	(void)state;
	struct job job = spaced();
	const struct result *r = run(&job);
	const struct attachment *a = &judged(r)->attachment[0];
	struct fastener_table t;
	struct fastener_question q = {.uplift = a->uplift.normal,
				      .slope = a->uplift.slope,
				      .CD = 1.6,
				      .G = r->lumber.G,
				      .breadth = IN(1.5),
				      .depth = IN(5.5),
				      .plate = IN(0.25),
				      .layers = r->fastener.gap,
				      .gap = r->fastener.gap,
				      .height = IN(3),
				      .arm = IN(2),
				      .temperature = (double)NAN, .spacing = (double)NAN, .end_distance = (double)NAN,
				      .tolerance = IN(0.25),
				      .count = 1};
	int found = 0;

	fastener_table_fill(&q, &workspace, &t);
	for (int i = 0; i < t.rows; i++)
		if (fabs(t.row[i].D - IN(5.0 / 16)) < 1e-9 && fabs(t.row[i].L - IN(4)) < 1e-9) {
			found++;
			assert_near(t.row[i].Wp, a->check[CHECK_WITHDRAWAL].capacity, 1e-12);
			/* the side load governs under another load duration */
			assert_near(t.row[i].Z,
				    a->check[CHECK_LATERAL].capacity / a->check[CHECK_LATERAL].CD *
					    1.6,
				    1e-12);
			assert_near(t.row[i].pull / t.row[i].Wp, a->check[CHECK_WITHDRAWAL].ratio,
				    1e-12);
		}
	assert_int_equal(found, 1);
	q.slope = 1;
	q.arm = (double)NAN;
	fastener_table_fill(&q, &workspace, &t);
	assert_int_equal(t.least, -1); /* a couple without an arm proves nothing */
	for (int i = 0; i < t.rows; i++)
		assert_true(t.row[i].state != FASTENER_STATE_HOLDS &&
			    t.row[i].state != FASTENER_STATE_OVERLOADED);
}

/* Allowed misses in a 1-1/2 in edge: 1/4 in lag 0.375 in, 5/16 0.281, 3/8 0.188, 1/2 none. Off by
 * 1/4, 1/2, 3/4 in. */
static void test_misses(void **state)
{
	static const struct {
		double room;
		enum miss_state state[MISS_MAX];
	} want[] = {{0.375, {MISS_KEEPS, MISS_KEEPS, MISS_EDGE, MISS_BREAKS}},
		    {0.28125, {MISS_KEEPS, MISS_KEEPS, MISS_EDGE, MISS_BREAKS}},
		    {0.1875, {MISS_KEEPS, MISS_EDGE, MISS_EDGE, MISS_BREAKS}},
		    {0, {MISS_KEEPS, MISS_EDGE, MISS_EDGE, MISS_BREAKS}}};
	const struct fastener_question q = {.G = 0.42,
					    .CD = 1.6,
					    .breadth = IN(1.5),
					    .depth = IN(5.5),
					    .plate = IN(0.25),
					    .arm = (double)NAN,
					    .temperature = (double)NAN, .spacing = (double)NAN, .end_distance = (double)NAN,
					    .count = 1};
	struct fastener_table t;

	(void)state;
	fastener_table_fill(&q, &workspace, &t);
	assert_int_equal(t.misses, 4);
	for (int i = 0; i < t.misses; i++) {
		assert_within(t.miss[i].room, IN(want[i].room), 1e-9);
		for (int k = 0; k < MISS_MAX; k++)
			assert_int_equal(t.miss[i].state[k], want[i].state[k]);
	}
}

/* NDS-2018 Eq. 12.2-3 and Tables 2.3.2, 11.3.3, N1, N2: a 16d common nail, 0.162 by 3-1/2 in, through
   1/4 in of plate and 1/2 in of layers: W = 1380 0.42^2.5 0.162 = 25.56 lb/in, 2.75 in of it; wet
   0.25. It is never among the rows. */
static void test_nail_beside(void **state)
{
	struct fastener_question q = {.G = 0.42, .CD = 1.6, .lambda = 1, .uplift = LB(100), .breadth = IN(1.5),
				      .depth = IN(5.5), .plate = IN(0.25), .layers = IN(0.5), .gap = IN(0.5),
				      .arm = (double)NAN, .temperature = (double)NAN, .spacing = (double)NAN,
				      .end_distance = (double)NAN, .count = 1};
	const double W = 1380 * pow(0.42, 2.5) * 0.162 * 2.75;
	struct fastener_table t;

	(void)state;
	fastener_table_fill(&q, &workspace, &t);
	assert_near(t.nail.D, IN(0.162), 1e-12);
	assert_near(t.nail.p, IN(2.75), 1e-12);
	assert_near(t.nail.pull, LB(W * 1.6), 1e-9);
	q.wet = true;
	fastener_table_fill(&q, &workspace, &t);
	assert_near(t.nail.pull, LB(W * 1.6 * 0.25), 1e-9);
	q.wet = false;
	q.lrfd = true;
	fastener_table_fill(&q, &workspace, &t);
	assert_near(t.nail.pull, LB(W * 3.32 * 0.65), 1e-9);
	q.kind = FASTENER_THROUGH_BOLT;
	fastener_table_fill(&q, &workspace, &t);
	assert_true(t.nail.D <= 0);
}

/* A longer screw of one diameter never carries less, nor a thicker one of one length. */
static void test_table_order(void **state)
{
	struct fastener_question q = {.uplift = LB(500),
				      .slope = LB(60),
				      .CD = 1.15,
				      .G = 0.36,
				      .breadth = IN(3),
				      .depth = IN(7.25),
				      .plate = IN(0.25),
				      .arm = (double)NAN,
				      .temperature = (double)NAN, .spacing = (double)NAN, .end_distance = (double)NAN,
				      .count = 1};
	struct fastener_table t;

	(void)state;
	fastener_table_fill(&q, &workspace, &t);
	assert_true(t.least >= 0);
	for (int i = 1; i < t.rows; i++)
		if (t.row[i].L > t.row[i - 1].L && t.row[i - 1].ratio > 0)
			assert_true(t.row[i].ratio <= t.row[i - 1].ratio);
	q.uplift = LB(100000);
	fastener_table_fill(&q, &workspace, &t);
	assert_int_equal(t.least, -1);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_wood_screw),   cmocka_unit_test(test_structural_screw),
		cmocka_unit_test(test_through_bolt), cmocka_unit_test(test_hanger_bolt),
		cmocka_unit_test(test_two_bolts),    cmocka_unit_test(test_seam_clamp),
		cmocka_unit_test(test_clips),        cmocka_unit_test(test_deck_mount),
		cmocka_unit_test(test_sheet_screw),  cmocka_unit_test(test_table_is_the_check),
		cmocka_unit_test(test_misses),       cmocka_unit_test(test_table_order), cmocka_unit_test(test_nail_beside),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
