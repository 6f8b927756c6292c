/* SPDX-License-Identifier: MIT */
#include "check/margin_move.h"

#include <math.h>
#include <string.h>

enum field_id margin_field(enum margin_id id)
{
	static const enum field_id field[] = {
#define M(id, field, worse, better) FIELD_##field,
		MARGINS(M)
#undef M
	};

	return field[id];
}

/* The same steps, rounded, where the job is in SI; those without a size read the same. */
static const char *const in_si[MARGIN_COUNT][2] = {
	[MARGIN_SPAN] = {"152 mm less", "152 mm more"},
	[MARGIN_THREAD] = {"6 mm more", "6 mm less"},
	[MARGIN_LAYERS] = {"6 mm less between foot and rafter", "6 mm more between foot and rafter"},
	[MARGIN_DRILLING] = {"6 mm nearer to the centre", "6 mm farther off the centre"},
	[MARGIN_WIND] = {"2.2 m/s less", "2.2 m/s more"},
	[MARGIN_SNOW] = {"0.24 kPa less", "0.24 kPa more"},
	[MARGIN_HEIGHT] = {"0.9 m less", "0.9 m more"},
	[MARGIN_PITCH] = {"1 in 24 flatter", "1 in 24 steeper"},
	[MARGIN_DEAD] = {"0.1 kPa less", "0.1 kPa more"},
};

const char *margin_words(const struct margin_row *row, bool worse, enum unit_system units)
{
	static const char *const words[][2] = {
#define M(id, field, worse, better) {better, worse},
		MARGINS(M)
#undef M
	};
	const bool side = worse != row->turned;

	if (units == SYSTEM_SI && in_si[row->id][side])
		return in_si[row->id][side];
	return words[row->id][side];
}

static bool species(struct job *job, int sign)
{
	const char *other = sign > 0 ? "Spruce-Pine-Fir (South)" : "Douglas Fir-Larch";

	if (strcmp(job->framing.species, other) == 0)
		return false;
	strcpy(job->framing.species, other);
	return true;
}

static bool grade(struct job *job, int sign)
{
	static const char *const grades[] = {"Select Structural", "No.1", "No.2", "No.3"};
	const int n = sizeof grades / sizeof *grades;

	for (int i = 0; i < n; i++)
		if (strcmp(job->framing.grade, grades[i]) == 0 && i + sign >= 0 && i + sign < n) {
			strcpy(job->framing.grade, grades[i + sign]);
			return true;
		}
	return false;
}

static bool span(struct job *job, int sign)
{
	job->framing.span += sign * 6 * M_PER_IN;
	return job->framing.span > 0;
}

/* NDS-2018 Appendix L, Table L2: the least thread is half the length and half an inch, or 6 in. */
static bool thread(struct job *job, int sign)
{
	double *T = &job->fastener.thread_length;

	if (isnan(*T))
		*T = fmin(job->fastener.length / 2 + 0.5 * M_PER_IN,
			  fmin(6 * M_PER_IN, job->fastener.length));
	*T -= sign * 0.25 * M_PER_IN;
	return *T > 0 && at_most(*T, job->fastener.length);
}

static bool layers(struct job *job, int sign)
{
	job->roof.deck_thickness += sign * 0.25 * M_PER_IN;
	return job->roof.deck_thickness > 0 && job->mount.seat != SEAT_ON_WOOD;
}

static bool drilling(struct job *job, int sign)
{
	job->fastener.drilling_tolerance += sign * 0.25 * M_PER_IN;
	return job->fastener.drilling_tolerance >= 0;
}

static bool exposure(struct job *job, int sign)
{
	const int e = (int)job->site.exposure + sign;

	if (e < (int)EXPOSURE_B || e > (int)EXPOSURE_D)
		return false;
	job->site.exposure = (enum exposure)e;
	return true;
}

static bool wind(struct job *job, int sign)
{
	job->site.wind_speed += sign * 5 * MPH;
	return job->site.wind_speed > 0;
}

static bool snow(struct job *job, int sign)
{
	const double before = job->site.ground_snow;

	job->site.ground_snow = fmax(0, before + sign * 5 * PSF);
	return sign > 0 || before > 0;
}

static bool height(struct job *job, int sign)
{
	job->building.mean_roof_height += sign * 3 * M_PER_FT;
	return job->building.mean_roof_height > 0;
}

static bool pitch(struct job *job, int sign)
{
	job->roof.pitch = atan(tan(job->roof.pitch) + sign * 0.5 / 12);
	return job->roof.pitch >= 0;
}

static bool dead(struct job *job, int sign)
{
	job->roof.dead_load += sign * 2 * PSF;
	return job->roof.dead_load > 0;
}

margin_move *const margin_moves[MARGIN_COUNT] = {
	[MARGIN_SPECIES] = species,   [MARGIN_GRADE] = grade,   [MARGIN_SPAN] = span,
	[MARGIN_THREAD] = thread,     [MARGIN_LAYERS] = layers, [MARGIN_DRILLING] = drilling,
	[MARGIN_EXPOSURE] = exposure, [MARGIN_WIND] = wind,     [MARGIN_SNOW] = snow,
	[MARGIN_HEIGHT] = height,     [MARGIN_PITCH] = pitch,   [MARGIN_DEAD] = dead,
	[MARGIN_COEFFICIENTS] = NULL,
};
