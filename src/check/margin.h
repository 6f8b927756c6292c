/* SPDX-License-Identifier: MIT */
/* Which input decides: the layout of a job is kept and one input after the other is moved by what a
   crew may be wrong by; and how far wind, snow, spacing and the number of collectors could grow
   before it fails. Pure, like the check. */
#ifndef RP_CHECK_MARGIN_H
#define RP_CHECK_MARGIN_H

#include "check/check.h"

/* id, field, the step in words: worse, better */
#define MARGINS(M)                                                                                 \
	M(SPECIES, FRAMING_SPECIES, "Spruce-Pine-Fir (South), the weakest of the usual groups",    \
	  "Douglas Fir-Larch")                                                                     \
	M(GRADE, FRAMING_GRADE, "one grade lower", "one grade higher")                             \
	M(SPAN, FRAMING_SPAN, "6 in more", "6 in less")                                            \
	M(THREAD, FASTENER_THREAD_LENGTH, "1/4 in less", "1/4 in more")                            \
	M(LAYERS, ROOF_DECK_THICKNESS, "1/4 in more between foot and rafter",                      \
	  "1/4 in less between foot and rafter")                                                   \
	M(DRILLING, FASTENER_DRILLING_TOLERANCE, "1/4 in farther off the centre",                  \
	  "1/4 in nearer to the centre")                                                           \
	M(EXPOSURE, SITE_EXPOSURE, "one category more open", "one category more sheltered")        \
	M(WIND, SITE_WIND_SPEED, "5 mph more", "5 mph less")                                       \
	M(SNOW, SITE_GROUND_SNOW, "5 psf more", "5 psf less")                                      \
	M(HEIGHT, BUILDING_MEAN_ROOF_HEIGHT, "3 ft more", "3 ft less")                             \
	M(PITCH, ROOF_PITCH, "half in 12 steeper", "half in 12 flatter")                           \
	M(DEAD, ROOF_DEAD_LOAD, "2 psf more", "2 psf less")                                        \
	M(COEFFICIENTS, COEFFICIENT_GCP, "the safe side of what rests on memory",                  \
	  "the remembered curve")

enum margin_id {
#define M(id, field, worse, better) MARGIN_##id,
	MARGINS(M)
#undef M
		MARGIN_COUNT
};

struct margin_side {
	bool known; /* false: the step leads nowhere (no lower grade, less than no snow) */
	bool holds;
	double ratio; /* worst; HUGE_VAL where it cannot be rated */
};

struct margin_row {
	enum margin_id id;
	enum field_origin origin;
	bool turned; /* what is most often better is worse here: the words of the sides change places */
	struct margin_side worse, better; /* the higher ratio is the worse, where both are known */
};

enum growth_id { GROWTH_WIND, GROWTH_SNOW, GROWTH_SPACING, GROWTH_COLUMNS, GROWTH_COUNT };

struct growth {
	double now, most; /* SI; NAN: does not hold at any value tried, or does not apply */
	bool no_end;      /* it still holds at the end of what was tried, or the roof ends first */
};

struct margin {
	bool rated; /* false: the check ends before any layout, or finds nothing to hold it against */
	bool holds;
	double ratio; /* of the layout as it stands */
	enum check_id governs;
	int attachments;
	int rows;
	struct margin_row row[MARGIN_COUNT]; /* what raises the ratio most comes first */
	struct growth growth[GROWTH_COUNT];
};

enum field_id margin_field(enum margin_id id);
/* The step of a side in words, in the units of the job. */
const char *margin_words(const struct margin_row *row, bool worse, enum unit_system units);

/* The job must have passed job_validate. */
void margin_find(const struct job *job, struct check_workspace *workspace, struct margin *out);

#endif
