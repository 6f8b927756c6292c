/* SPDX-License-Identifier: MIT */
/* Rafters and ceiling joists of the IRC span tables: half an inch shorter holds, half an inch
   longer does not. The tables are made with a simple span on the horizontal projection, all loads
   on the projection (ground snow as it stands), repetitive members, deflection under the transient
   load alone, cut at 26 ft. */
#include "irc_spans.h"

#include "near.h"
#include "resist/lumber.h"
#include "resist/member.h"
#include "resist/rafter.h"
#include "table/lookup_wood.h"
#include "us.h"

#define LONGEST_IN (26.0 * 12.0)

static bool holds(size_t cell, double span_in)
{
	const struct lumber_section_row *size = lumber_section_row(irc_span[cell].size);
	const double spacing = IN(irc_span[cell].spacing_in);
	const double transient = PSF(irc_table[irc_span[cell].table].transient_psf) * spacing;
	const double dead = PSF(irc_table[irc_span[cell].table].dead_psf) * spacing;
	const struct lumber_service service = { .repetitive = true, .temperature = NAN };
	struct rafter_uniform u = { 0.0, IN(span_in), dead + transient, 0.0 };
	const struct rafter r = {
		.span = IN(span_in), .theta = 0.0, .depth = 0.0, .uniforms = 1, .uniform = &u
	};
	struct lumber_piece piece;
	struct lumber_values v;
	struct section s;
	struct rafter_forces f;
	struct beam_peak bow;

	assert_non_null(size);
	assert_true(lumber_piece_find(irc_span[cell].species, irc_span[cell].grade, IN(size->b_in),
	                              IN(size->d_in), &piece));
	assert_true(lumber_adjust(NULL, &piece, irc_table[irc_span[cell].table].CD, &service, &v));
	s = section_rectangle(NULL, piece.b, piece.d);
	assert_true(rafter_solve(&r, &f));
	u.vertical = transient;
	assert_true(rafter_deflect(&r, v.E_prime * s.I, &bow));
	return member_bending_stress(NULL, f.moment.value, s.S) <= v.Fb_star &&
	       bow.value <= r.span / irc_table[irc_span[cell].table].limit;
}

static void spans(void **state)
{
	size_t cells = 0, cut = 0;

	(void)state;
	for (size_t i = 0; i < sizeof irc_span / sizeof irc_span[0]; i++, cells++) {
		const double span = 12.0 * irc_span[i].feet + irc_span[i].inches;
		const bool longest = span >= LONGEST_IN;

		cut += longest;
		if (!holds(i, longest ? span : span - 0.5) || (!longest && holds(i, span + 0.5)))
			fail_msg("%s: %s %s %s at %g in: %d-%d",
			         irc_table[irc_span[i].table].source, irc_span[i].species,
			         irc_span[i].grade, irc_span[i].size, irc_span[i].spacing_in,
			         irc_span[i].feet, irc_span[i].inches);
	}
	assert_int_equal(cells, 176);
	assert_int_equal(cut, 6); /* cells that stand at 26-0 */
}

int main(void)
{
	const struct CMUnitTest tests[] = { cmocka_unit_test(spans) };

	return cmocka_run_group_tests(tests, NULL, NULL);
}
