/* SPDX-License-Identifier: MIT */
/* What the margins say is proved by running the changed job by hand on the same layout. */
#include <math.h>
#include <string.h>

#include "check/margin.h"
#include "check/pass.h"
#include "near.h"
#include "sample_job.h"

static struct check_workspace w;
static struct margin m;
static struct result r;
static struct pass pass;

static struct layout layout_of(const struct job *job)
{
	struct layout layout;

	memset(&layout, 0, sizeof layout);
	check_run_plain(job, &r);
	for (int i = 0; i < r.pass[r.judged].attachments; i++) {
		const struct attachment *a = &r.pass[r.judged].attachment[i];

		layout.rafter[a->line][layout.count[a->line]++] = a->rafter;
	}
	return layout;
}

static struct job braced_job(void)
{
	struct job job = sample_job();

	job.framing.depth = IN(7.25);
	job.site.ground_snow = PSF(10);
	return job;
}

static const struct margin_row *row_of(enum margin_id id)
{
	for (int i = 0; i < m.rows; i++)
		if (m.row[i].id == id)
			return &m.row[i];
	return NULL;
}

static void test_steps(void **state)
{
	(void)state;
	struct job job = braced_job();
	struct layout layout = layout_of(&job);

	margin_find(&job, &w, &m);
	assert_true(m.rated && m.holds);
	assert_near(m.ratio, r.pass[r.judged].ratio, 1e-12);
	job.site.wind_speed += MPH(5);
	check_layout(&job, &r, CURVE_SAFE_SIDE, &layout, &pass);
	assert_near(row_of(MARGIN_WIND)->worse.ratio, pass.ratio, 1e-12);
	job = braced_job();
	strcpy(job.framing.grade, "No.1");
	check_layout(&job, &r, CURVE_SAFE_SIDE, &layout, &pass);
	assert_near(row_of(MARGIN_GRADE)->better.ratio, pass.ratio, 1e-12);
	/* exposure B is the most sheltered there is */
	assert_false(row_of(MARGIN_EXPOSURE)->better.known);
	assert_true(row_of(MARGIN_EXPOSURE)->worse.ratio > m.ratio);
}

static void test_order(void **state)
{
	(void)state;
	const struct job job = braced_job();
	double before = HUGE_VAL;

	margin_find(&job, &w, &m);
	assert_true(m.rows > 8);
	for (int i = 0; i < m.rows; i++) {
		const struct margin_side *s = &m.row[i].worse;

		if (!s->known)
			continue;
		/* those that make it fail come before those that do not */
		const double now = s->ratio + (s->holds ? 0 : 1e6);

		assert_true(now <= before);
		before = now;
	}
}

static void test_growth(void **state)
{
	(void)state;
	struct job job = braced_job();
	struct layout layout = layout_of(&job);

	margin_find(&job, &w, &m);
	assert_false(m.growth[GROWTH_WIND].no_end);
	job.site.wind_speed = m.growth[GROWTH_WIND].most * (1 - 1e-6);
	assert_true(check_layout(&job, &r, CURVE_SAFE_SIDE, &layout, &pass));
	job.site.wind_speed = m.growth[GROWTH_WIND].most * (1 + 1e-6);
	assert_false(check_layout(&job, &r, CURVE_SAFE_SIDE, &layout, &pass));
	job = braced_job();
	job.site.ground_snow = m.growth[GROWTH_SNOW].most * (1 + 1e-6);
	assert_false(check_layout(&job, &r, CURVE_SAFE_SIDE, &layout, &pass));
	job = braced_job();
	job.mount.spacing = m.growth[GROWTH_SPACING].most;
	check_run_plain(&job, &r);
	assert_true(r.pass[r.judged].holds);
	assert_true(m.growth[GROWTH_COLUMNS].most >= 2);
}

static void test_no_layout(void **state)
{
	(void)state;
	struct job job = sample_job();

	job.building.form = FORM_OTHER;
	margin_find(&job, &w, &m);
	assert_false(m.rated);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_steps),
		cmocka_unit_test(test_order),
		cmocka_unit_test(test_growth),
		cmocka_unit_test(test_no_layout),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
