/* SPDX-License-Identifier: MIT */
/* Feet between rafters: when they are set there, what the block, its ends and the screw in it are
   held against, and that both rafters get their parts. Forces are read from the result; all else is
   worked out here by hand from NDS-2018 values. */
#include <math.h>
#include <string.h>

#include "check/check.h"
#include "resist/nail.h"
#include "sample_run.h"

#define PSI (N_PER_LBF / (M_PER_IN * M_PER_IN))

/* Rafters 48 in apart, strong and short, so that nothing but the maker's 32 in between feet asks
   for blocks: 46-1/2 in between faces. */
static struct job wide(void)
{
	struct job job = sample_job();

	strcpy(job.framing.size, "2x12");
	strcpy(job.framing.species, "Douglas Fir-Larch");
	strcpy(job.framing.grade, "Select Structural");
	job.framing.depth = IN(11.25);
	job.framing.spacing = IN(48);
	job.framing.brace_spacing = FT(2);
	job.mount.max_spacing = IN(32);
	job.mount.allowable_slope = LB(400);
	job.rail.allowable_moment = 1000;
	return job;
}

static const struct attachment *on_block(const struct result *r)
{
	const struct pass *p = judged(r);

	for (int i = 0; i < p->attachments; i++)
		if (place_on_block(r, p->attachment[i].rafter))
			return &p->attachment[i];
	fail_msg("no foot stands on a block");
	return NULL;
}

static void test_when(void **state)
{
	(void)state;
	struct job job = wide();

	assert_false(judged(run(&job))->holds);
	assert_false(has(run(&job), REMARK_BLOCKS));
	job.mount.between = BETWEEN_BLOCKING;
	const struct result *r = run(&job);

	assert_int_equal(r->verdict, HOLDS);
	const struct attachment *a = on_block(r);
	const int left = place_number(r, a->rafter) - 1;

	assert_near(a->x, (r->frame_x[left] + r->frame_x[left + 1]) / 2, 1e-12);
	assert_true(r->block.feet > 0 && r->block.feet < judged(r)->attachments);
	assert_near(r->block.clear, IN(46.5), 1e-9);
	/* not needed: none is set */
	job.mount.max_spacing = IN(48);
	r = run(&job);
	assert_int_equal(r->verdict, HOLDS);
	assert_int_equal(r->block.kind, 0);
	assert_true(has(r, REMARK_BLOCKS_SPARED));
}

/* 4x4 on edge of Spruce-Pine-Fir (South) No.3: Fb 450, CF 1.5 (NDS Supplement Table 4A), no
   buckling (d = b); S = 3.5^3/6; the 5/16 in hole leaves a part of it for bending across the roof.
 */
static void test_bending(void **state)
{
	(void)state;
	struct job job = wide();

	job.mount.between = BETWEEN_BLOCKING;
	strcpy(job.mount.block_size, "4x4");
	const struct result *r = run(&job);
	const struct attachment *a = on_block(r);
	const struct check_value *v = &a->check[CHECK_BLOCK_BENDING];
	const double S = pow(IN(3.5), 3) / 6, Fb = 450 * 1.5 * v->CD * PSI;

	assert_string_equal(r->block.size, "4x4");
	assert_true(!r->block.flat && v->rated &&
		    strcmp(v->combination, a->uplift.combination) == 0);
	const double across = a->uplift.normal * IN(46.5) / 4 / S / Fb,
		     along = fabs(a->uplift.slope) * IN(46.5) / 4 / S / Fb;

	/* the hole, at most 3.5 in deep and 5/16 wide of 3.5 in, leaves 85 to 100 % of S */
	assert_true(v->demand >= across + along && v->demand <= across / 0.85 + along);
}

/* Nine 16d nails an inch apart (3-1/2 less 2 x 3/4 in): J 12 in2, corners sqrt(2) in out. Each end
   has half of everything; the force along the rafters acts 3 in of foot and 15/32 in of deck above
   the block, whose middle is 1-3/4 in lower. Z of the nail is tested against NDS Table 12N; Ceg
   0.67. */
static void test_nails(void **state)
{
	(void)state;
	struct job job = wide();

	job.mount.between = BETWEEN_BLOCKING;
	strcpy(job.mount.block_size, "4x4");
	const struct result *r = run(&job);
	const struct attachment *a = on_block(r);
	const struct check_value *v = &a->check[CHECK_BLOCK_NAILS];
	struct dowel_yield y;

	assert_int_equal(r->block.rows * r->block.columns, 9);
	assert_true(nail_lateral_find(NULL, 0.36, IN(0.162), IN(3.5), IN(1.5), &y));
	assert_near(v->capacity, y.value * 0.67 * v->CD, 1e-12);
	double worst = 0;
	const struct force *f[] = {&a->uplift, &a->down, &a->slope};

	for (int i = 0; i < 3; i++) {
		const double F = fabs(f[i]->slope),
			     T = F * (job.mount.height + job.roof.deck_thickness + IN(1.75));
		const double one = hypot(f[i]->normal / 2, F / 2) / 9 +
				   T / 2 * IN(sqrt(2)) / (12 * IN(1) * IN(1));

		worst = fmax(worst, one / f[i]->CD);
	}
	/* a combination between those three may ask for a little more */
	assert_true(v->demand / v->CD >= worst * (1 - 1e-9) && v->demand / v->CD <= 1.1 * worst);
}

static void test_hanger(void **state)
{
	(void)state;
	struct job job = wide();

	job.mount.between = BETWEEN_BLOCKING;
	strcpy(job.mount.block_size, "4x4");
	job.mount.block_end_uplift = LB(300);
	job.mount.block_end_down = LB(500);
	job.mount.block_end_slope = LB(250);
	strcpy(job.mount.block_report, "Report 9");
	const struct result *r = run(&job);
	const struct attachment *a = on_block(r);
	const struct check_value *v = &a->check[CHECK_BLOCK_HANGER];

	assert_true(r->block.hanger && !a->check[CHECK_BLOCK_NAILS].rated);
	assert_true(has(r, REMARK_BLOCK_HANGERS));
	double worst = 0;
	const struct force *f[] = {&a->uplift, &a->down, &a->slope};

	for (int i = 0; i < 3; i++) {
		const double F = fabs(f[i]->slope),
			     T = F * (job.mount.height + job.roof.deck_thickness + IN(1.75));

		worst = fmax(worst, f[i]->normal / 2 / LB(i == 0 ? 300 : 500) +
					    (F / 2 + T / 2 / IN(3.5)) / LB(250));
	}
	assert_true(v->demand >= worst * (1 - 1e-9) && v->demand <= 1.1 * worst);
}

/* The least of the yield modes told one after the other from *i on; *i is then behind them. */
static double least_mode(const struct trace *t, size_t *i)
{
	double least = HUGE_VAL;

	for (; *i < t->count && strncmp(t->record[*i].step->symbol, "Z_", 2) == 0; ++*i)
		least = fmin(least, t->record[*i].result);
	return least;
}

/* Whoever recomputes the lines of a foot on a block finds in them where the values of its screw and
   nails come from: the thread is that in the block, and what is adjusted is the least of modes told
   for block or nail, the second and third of the three connections. */
static void test_lines(void **state)
{
	(void)state;
	struct job job = wide();

	job.mount.between = BETWEEN_BLOCKING;
	strcpy(job.mount.block_size, "4x4");
	job.mount.seat = SEAT_ON_WOOD;
	job.fastener.length = IN(4);
	/* so that a screw or a block governs */
	job.mount.allowable_uplift = job.mount.allowable_down = job.mount.allowable_slope = LB(9000);
	const struct result *r = run(&job);
	const struct pass *p = judged(r);
	const struct trace *t = &r->trace[SECTION_FASTENER];
	double thread = 0, least[3] = {0, 0, 0};
	int told = 0, withdrawn = 0, adjusted = 0;

	assert_int_equal(t->dropped, 0);
	assert_true(place_on_block(r, p->attachment[p->governing_attachment].rafter));
	for (size_t i = 0; i < t->count; i++) {
		if (strncmp(t->record[i].step->symbol, "Z_", 2) == 0 && told < 3)
			least[told++] = least_mode(t, &i);
		if (i == t->count)
			break;
		const struct step_record *s = &t->record[i];

		if (strcmp(s->step->name, "lag-thread-in-wood") == 0)
			thread = s->result;
		if (strcmp(s->step->name, "lag-withdrawal-capacity") == 0) {
			assert_near(s->in[1], thread, 1e-12);
			withdrawn++;
		}
		if (strcmp(s->step->name, "lateral-adjusted") == 0) {
			assert_true(fabs(s->in[0] - least[1]) < 1e-9 * least[1] ||
				    fabs(s->in[0] - least[2]) < 1e-9 * least[2]);
			adjusted++;
		}
	}
	/* 1/4 in of plate; the thread begins 1-1/4 in below the face of a block 3-1/2 in high */
	assert_near(thread, IN(2.25), 1e-9);
	assert_int_equal(told, 3);
	assert_true(withdrawn > 0 && adjusted > 1);
}

/* NDS Table 12.5.1C: across the grain 4 D from the loaded edge. 3/8 in wants 1-1/2 in and 1/4 in of
   tolerance, which is just what half a 4x has; 7/16 in has to go into a flat one. 1/2 in in a 2x6
   laid flat would have the edge but not the 2 in of penetration. */
static void test_edges(void **state)
{
	(void)state;
	struct job job = wide();

	job.mount.between = BETWEEN_BLOCKING;
	strcpy(job.mount.block_size, "4x6");
	job.fastener.diameter = IN(0.375);
	assert_false(run(&job)->block.flat);
	assert_true(run(&job)->block.kind > 0);
	job.fastener.diameter = IN(0.4375);
	assert_true(run(&job)->block.kind > 0 && run(&job)->block.flat);
	strcpy(job.mount.block_size, "4x4");
	assert_int_equal(run(&job)->block.kind, 0);
	assert_true(has(run(&job), REMARK_BLOCKS_REFUSED));
	strcpy(job.mount.block_size, "2x6");
	job.fastener.diameter = IN(0.5);
	job.fastener.length = IN(5);
	assert_int_equal(run(&job)->block.kind, 0);
	job.mount.block_size[0] = '\0';
	job.fastener.kind = FASTENER_THROUGH_BOLT;
	job.fastener.washer_diameter = IN(1.375);
	assert_int_equal(run(&job)->block.kind, 0);
}

/* In LRFD the same block is rated by its factors, or nothing is said to hold. */
static void test_lrfd(void **state)
{
	(void)state;
	struct job job = wide();

	job.mount.between = BETWEEN_BLOCKING;
	job.site.method = METHOD_LRFD;
	const struct result *r = run(&job);

	assert_int_equal(r->verdict, HOLDS);
	assert_true(on_block(r)->check[CHECK_BLOCK_BENDING].rated &&
		    on_block(r)->check[CHECK_BLOCK_NAILS].rated);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_when),  cmocka_unit_test(test_bending),
		cmocka_unit_test(test_nails), cmocka_unit_test(test_hanger),
		cmocka_unit_test(test_edges), cmocka_unit_test(test_lrfd),
		cmocka_unit_test(test_lines),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
