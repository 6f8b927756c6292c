/* SPDX-License-Identifier: MIT */
/* Geometry of flashings, one step per formula.

   Nearly all of it is plane geometry and needs no authority. Three are rules: the ice barrier (IRC
   R905.1.2), the cricket (IRC R903.2.2, whose table R1003.20 the formula reproduces), and the
   longer reach on low slopes, which is our own: lead slate practice lengthens the head lap so that
   about 75 mm (3 in) of rise stays between the edge and the water.

   Taken for granted: straight courses, equal pitches at valleys and hips, square corners. */
#include "roof/flashing.h"

#include <assert.h>
#include <math.h>

#define GEOMETRY "geometry"
#define TINY 1e-9 /* relative: what unit conversion may add to a whole number of courses */

/* One step reads best as one table. */
/* clang-format off */
#define THETA { "theta", UNIT_DEG, "pitch angle of the roof plane" }
#define LENGTH_OF_PIECE { "L", UNIT_IN, "length of a piece of covering" }
#define EXPOSURE { "E", UNIT_IN, "exposure along the slope" }
#define HEADLAP { "h", UNIT_IN, "headlap" }
#define GAPPED_PIPE { "D", UNIT_IN, "outside diameter" }, { "c", UNIT_IN, "clear gap all round, level" }

/* Defines one step whose formula is also its code. A, B ... are the inputs in order. */
#define A in[0]
#define B in[1]
#define C in[2]
#define D in[3]
#define STEP_OF(id, name_, symbol_, unit_, title_, text, conf, source, note_, expression, ...)     \
	static double id##_value(const double *in)                                                 \
	{                                                                                          \
		return (expression);                                                               \
	}                                                                                          \
	const struct step step_##id = { .name = name_, .symbol = symbol_, .unit = unit_,           \
		                        .title = title_, .formula = text, .clause = { source },    \
		                        .confidence = conf, .note = note_, .in = { __VA_ARGS__ },  \
		                        .value = id##_value };
#define GEOMETRY_STEP(id, name, symbol, unit, title, text, expression, ...) \
	STEP_OF(id, name, symbol, unit, title, text, DERIVED, GEOMETRY, NULL, expression, __VA_ARGS__)

static double ceil_count(double x)
{
	return ceil(x - TINY * fabs(x));
}

static double floor_count(double x)
{
	return floor(x + TINY * fmax(1.0, fabs(x)));
}

/* Of an angle in degrees. */
static double sine(double theta)
{
	return sin(theta * RAD_PER_DEG);
}

static double cosine(double theta)
{
	return cos(theta * RAD_PER_DEG);
}

static double tangent(double theta)
{
	return tan(theta * RAD_PER_DEG);
}

static double slope_factor_of(double theta)
{
	return hypot(1.0, tangent(theta));
}

static double hip_factor_of(double theta)
{
	return sqrt(2.0 + tangent(theta) * tangent(theta));
}

/* ---- slopes, hips, valleys ---- */

GEOMETRY_STEP(slope_factor, "slope-factor", "s", UNIT_NONE, "rafter length per level run",
              "sqrt(1 + tan(theta)^2)", slope_factor_of(A), THETA)
GEOMETRY_STEP(hip_factor, "hip-factor", "h", UNIT_NONE, "hip or valley length per common run",
              "sqrt(2 + tan(theta)^2)", hip_factor_of(A), THETA)
GEOMETRY_STEP(valley_angle, "valley-angle", "beta", UNIT_DEG,
              "angle between valley and eave, in the roof plane", "atan(s)",
              atan(slope_factor_of(A)) / RAD_PER_DEG, THETA)
GEOMETRY_STEP(valley_distance, "valley-distance", "d", UNIT_IN,
              "square distance to a valley from a point on a course", "dx s / h",
              A * slope_factor_of(B) / hip_factor_of(B),
              { "dx", UNIT_IN, "distance to the valley along the course" }, THETA)
GEOMETRY_STEP(valley_level, "valley-level", "dx", UNIT_IN,
              "distance along a course that keeps a square distance to a valley", "d h / s",
              A * hip_factor_of(B) / slope_factor_of(B),
              { "d", UNIT_IN, "square distance to keep" }, THETA)

/* ---- pipes ---- */

GEOMETRY_STEP(pipe_across, "pipe-across", "w", UNIT_IN, "width of the hole for a plumb pipe",
              "D + 2 c", A + 2.0 * B, GAPPED_PIPE)
GEOMETRY_STEP(pipe_ellipse, "pipe-ellipse", "l", UNIT_IN,
              "length up the slope of the hole for a plumb pipe", "(D + 2 c) / cos(theta)",
              (A + 2.0 * B) / cosine(C), GAPPED_PIPE, THETA)
GEOMETRY_STEP(deck_slot, "deck-slot", "l_deck", UNIT_IN,
              "slot sawn square through the deck for a plumb pipe",
              "(D + 2 c) / cos(theta) + t tan(theta)", (A + 2.0 * B) / cosine(C) + D * tangent(C),
              GAPPED_PIPE, THETA, { "t", UNIT_IN, "thickness of the deck" })
GEOMETRY_STEP(level_pipe_ellipse, "level-pipe-ellipse", "l", UNIT_IN,
              "length up the slope of the hole for a level pipe", "D / sin(theta)", A / sine(B),
              { "D", UNIT_IN, "outside diameter" }, THETA)
GEOMETRY_STEP(sleeve_difference, "sleeve-difference", "delta", UNIT_IN,
              "how much longer a plumb sleeve is on its low side", "D tan(theta)", A * tangent(B),
              { "D", UNIT_IN, "outside diameter" }, THETA)

/* ---- courses ---- */

GEOMETRY_STEP(headlap, "headlap", "h", UNIT_IN, "part of a piece under two courses above it",
              "L - 2 E", A - 2.0 * B, LENGTH_OF_PIECE, EXPOSURE)
GEOMETRY_STEP(exposure_double_lap, "exposure-double-lap", "E", UNIT_IN,
              "exposure of slate, plain tile, double-lap sheets", "(L - h) / 2", (A - B) / 2.0,
              LENGTH_OF_PIECE, HEADLAP)
GEOMETRY_STEP(exposure_single_lap, "exposure-single-lap", "Emax", UNIT_IN,
              "largest exposure of single-lap tile", "L - h", A - B, LENGTH_OF_PIECE, HEADLAP)
GEOMETRY_STEP(pieces_per_square, "pieces-per-square", "n", UNIT_NONE,
              "pieces that cover 100 square feet", "14400 / (W E)", 14400.0 / (A * B),
              { "W", UNIT_IN, "width of a piece" }, EXPOSURE)
GEOMETRY_STEP(tile_courses, "tile-courses", "n", UNIT_NONE, "courses of single-lap tile",
              "ceil((S' - h) / (L - h))", ceil_count((A - C) / (B - C)),
              { "S'", UNIT_IN, "length to cover, eave overhang added, ridge gap taken off" },
              LENGTH_OF_PIECE, HEADLAP)
GEOMETRY_STEP(tile_exposure, "tile-exposure", "E", UNIT_IN, "evened exposure of single-lap tile",
              "(S' - L) / (n - 1)", (A - B) / (C - 1.0),
              { "S'", UNIT_IN, "length to cover, eave overhang added, ridge gap taken off" },
              LENGTH_OF_PIECE, { "n", UNIT_NONE, "courses" })
GEOMETRY_STEP(tile_headlap, "tile-headlap", "h", UNIT_IN, "headlap of single-lap tile as laid",
              "L - E", A - B, LENGTH_OF_PIECE, EXPOSURE)
GEOMETRY_STEP(course_count, "course-count", "n", UNIT_NONE, "courses on a slope",
              "ceil(S / E)", ceil_count(A / B), { "S", UNIT_IN, "slope length" }, EXPOSURE)
GEOMETRY_STEP(course_exposure, "course-exposure", "E", UNIT_IN, "evened exposure", "S / n",
              A / B, { "S", UNIT_IN, "slope length" }, { "n", UNIT_NONE, "courses" })
STEP_OF(course_number, "course-number", "k", UNIT_NONE, "course that holds a point",
        "floor(y / E) + 1", DERIVED, GEOMETRY,
        "a point on a butt line belongs to the course above it", floor_count(A / B) + 1.0,
        { "y", UNIT_IN, "from the first butt line up the slope" }, EXPOSURE)
GEOMETRY_STEP(course_above_butt, "course-above-butt", "y_k", UNIT_IN,
              "from the butt of its course up to the point", "y - (k - 1) E",
              fmax(0.0, A - (C - 1.0) * B), { "y", UNIT_IN, "from the first butt line up the slope" },
              EXPOSURE, { "k", UNIT_NONE, "course" })
GEOMETRY_STEP(course_below_butt, "course-below-butt", "g", UNIT_IN,
              "from the point up to the next butt", "k E - y", C * B - A,
              { "y", UNIT_IN, "from the first butt line up the slope" }, EXPOSURE,
              { "k", UNIT_NONE, "course" })

/* Sum of t(x) = butt - (butt - tip) x / L over x = first E, (first + 1) E ... while x < L. */
static double taper_sum(double butt, double tip, double L, double E, int first)
{
	double sum = 0.0;
	int i;

	if (!(E > 0.0 && L / E < 1000.0))
		return (double)NAN;
	for (i = first; i * E < L * (1.0 - TINY); i++)
		sum += butt - (butt - tip) * i * E / L;
	return sum;
}

#define TAPER                                                                                      \
	{ "tb", UNIT_IN, "thickness at the butt" }, { "tt", UNIT_IN, "thickness at the tip" },     \
		LENGTH_OF_PIECE, EXPOSURE

GEOMETRY_STEP(built_up_high, "built-up-high", "t", UNIT_IN,
              "tapered pieces over the deck, at a butt", "sum of t(i E) for i = 0, 1 ... while i E < L",
              taper_sum(A, B, C, D, 0), TAPER)
GEOMETRY_STEP(built_up_low, "built-up-low", "t", UNIT_IN,
              "tapered pieces over the deck, just below a butt",
              "sum of t(i E) for i = 1, 2 ... while i E < L", taper_sum(A, B, C, D, 1), TAPER)

/* ---- the plate ---- */

GEOMETRY_STEP(plate_reach, "plate-reach", "r", UNIT_IN,
              "from the covering butt up to the plate's upper edge", "L - E", A - B,
              LENGTH_OF_PIECE, EXPOSURE)
STEP_OF(plate_reach_low_slope, "plate-reach-low-slope", "r3", UNIT_IN,
        "reach that leaves 3 in of rise", "3 / sin(theta)", OUR_RULE,
        "our rule below 8:12, from the laps of lead slates",
        "asked below 8:12, where it is longer than L - E", 3.0 / sine(A), THETA)
STEP_OF(plate_length, "plate-length", "l", UNIT_IN, "least length of a plate", "a + g + r",
        OUR_RULE, "our rule: the plate does what the piece it replaces did", NULL, A + B + C,
        { "a", UNIT_IN, "from the hole down to the lower edge, at least 4" },
        { "g", UNIT_IN, "from the hole up to the covering butt, at least 1" },
        { "r", UNIT_IN, "reach" })
GEOMETRY_STEP(courses_to_open, "courses-to-open", "n", UNIT_NONE,
              "courses to loosen above the covering butt", "ceil(r / E)", ceil_count(A / B),
              { "r", UNIT_IN, "reach" }, EXPOSURE)

/* ---- ice barrier, cricket ---- */

STEP_OF(ice_barrier, "ice-barrier", "l", UNIT_IN, "length of the ice barrier up the slope",
        "max((o + w + 24) s, m)", CONFIRMED, "IRC R905.1.2",
        "m = 36 at 8:12 and steeper in the 2015 to 2021 editions, else 0; the wall line is taken at the inner face",
        fmax((A + B + 24.0) * slope_factor_of(C), D), { "o", UNIT_IN, "eave overhang, level" },
        { "w", UNIT_IN, "thickness of the wall" }, THETA,
        { "m", UNIT_IN, "least length of the edition, or 0" })
GEOMETRY_STEP(ice_barrier_rolls, "ice-barrier-rolls", "n", UNIT_NONE, "courses of 36 in roll",
              "ceil(l / 36)", ceil_count(A / 36.0), { "l", UNIT_IN, "length up the slope" })
STEP_OF(cricket_height, "cricket-height", "H", UNIT_IN, "height of a cricket", "(W / 2) tan(theta)",
        DERIVED, "IRC R903.2.2; geometry, same as Table R1003.20",
        "needed above anything wider than 30 in", A / 2.0 * tangent(B),
        { "W", UNIT_IN, "width across the slope" }, THETA)
GEOMETRY_STEP(cricket_ridge, "cricket-ridge", "l", UNIT_IN,
              "from the curb up the main slope to the end of a cricket's ridge", "(W / 2) s",
              A / 2.0 * slope_factor_of(B), { "W", UNIT_IN, "width across the slope" }, THETA)
GEOMETRY_STEP(cricket_valley, "cricket-valley", "l_v", UNIT_IN, "valley of a cricket",
              "sqrt((W / 2)^2 + (s W / 2)^2)", hypot(A / 2.0, slope_factor_of(B) * A / 2.0),
              { "W", UNIT_IN, "width across the slope" }, THETA)

/* ---- pipes: insulation and growth ---- */

STEP_OF(insulation_resistance, "insulation-resistance", "R", UNIT_NONE,
        "thermal resistance of pipe insulation, h ft2 F/Btu", "r2 ln(r2 / r1) / k", FROM_MEMORY,
        "cylinder formula; k = 0.28 Btu in/(h ft2 F), elastomeric foam",
        "the formula is plain, the conductivity is from memory",
        (A / 2.0 + B) * log((A / 2.0 + B) / (A / 2.0)) / 0.28,
        { "D", UNIT_IN, "outside diameter of the pipe" },
        { "t", UNIT_IN, "wall of the insulation" })
STEP_OF(pipe_growth, "pipe-growth", "dl", UNIT_IN, "growth of a copper pipe", "9.4e-6 l dT",
        CONFIRMED, "copper tube handbook: 0.0000094 per degree F", NULL, 9.4e-6 * A * B,
        { "l", UNIT_IN, "length" }, { "dT", UNIT_NONE, "rise of temperature, F" })

/* clang-format on */

/* ---- one foot ---- */

bool flashing_cricket_needed(double width)
{
	return !at_most(width, CRICKET_WIDTH);
}

static void place_in_course(struct trace *trace, const struct flashing_given *in, double up,
			    struct flashing_foot *out)
{
	double k;

	if (!(up >= 0.0 && in->E > 0.0 && up / in->E < 100000.0))
		return;
	k = STEP(trace, step_course_number, up, in->E);
	out->course = (int)k;
	out->above_butt = STEP(trace, step_course_above_butt, up, in->E, k);
	out->butt_up = STEP(trace, step_course_below_butt, up, in->E, k);
	out->move = !at_least(out->butt_up, PLATE_BUTT_LEAST);
}

struct flashing_foot flashing_foot(struct trace *trace, const struct flashing_given *in)
{
	const double y0 = isnan(in->first_butt) ? 0.0 : in->first_butt;
	const double eight = atan(LOW_SLOPE_RISE / 12.0);
	struct flashing_foot out = {.headlap = (double)NAN,
				    .butt_up = (double)NAN,
				    .above_butt = (double)NAN,
				    .reach = (double)NAN,
				    .low_slope_reach = (double)NAN,
				    .plate_length = (double)NAN,
				    .plate_down = fmax(in->down, PLATE_DOWN_LEAST),
				    .plate_up = (double)NAN};
	double g;

	assert(isnan(in->theta) || (in->theta >= 0.0 && in->theta < 1.5707));
	place_in_course(trace, in, in->y - y0, &out);
	if (!(in->E > 0.0 && in->L > in->E))
		return out;
	out.headlap = STEP(trace, step_headlap, in->L, in->E);
	/* one layer only, such as tile: the plate's rule is not for it */
	if (!at_least(in->L, 2.0 * in->E))
		return out;
	out.reach = STEP(trace, step_plate_reach, in->L, in->E);
	if (in->theta > 0.0 && !at_least(in->theta, eight)) {
		out.low_slope_reach = STEP(trace, step_plate_reach_low_slope, in->theta);
		out.reach = fmax(out.reach, out.low_slope_reach);
	}
	/* A foot too near the butt is to be moved down until the least distance is there. */
	g = isnan(out.butt_up) ? PLATE_BUTT_LEAST : fmax(out.butt_up, PLATE_BUTT_LEAST);
	/* Butts counted from an assumed line: the hole may stand just above its own butt. */
	if (isnan(in->first_butt) && out.course > 0)
		g = fmax(g, in->E);
	out.plate_length = STEP(trace, step_plate_length, out.plate_down, g, out.reach);
	out.plate_up = out.plate_length - out.plate_down;
	out.open = (int)STEP(trace, step_courses_to_open, out.reach, in->E);
	return out;
}
