/* SPDX-License-Identifier: MIT */
/* Values as a report shows them: in the job's system of units, with a number of decimals that suits
   the unit. Every string lives in the document's store. A value that is not a number is shown as
   "not known". */
#ifndef RP_REPORT_FORMAT_H
#define RP_REPORT_FORMAT_H

#include "check/result.h"
#include "report/document.h"

#define NBSP "\xC2\xA0" /* keeps a number and its unit on one line */

struct format {
	struct document *document; /* whose store is used */
	enum unit_system units;
	enum edition code; /* of the loading standard that remarks name; EDITION_ANY: none in particular */
};

enum rounding { SHOW_NEAREST, SHOW_UP, SHOW_DOWN };

/* Decimals with which a report shows a value in this unit. */
int unit_decimals(enum unit u);
/* Unit in which a value given in `us` is shown. */
enum unit shown_unit(const struct format *f, enum unit us);
/* Decimals for the shown unit that keep what `decimals` of the unit `us` tell. */
int shown_decimals(const struct format *f, enum unit us, int decimals);

/* "17.4 psf" or "0.833 kPa": `us` is the unit in the US system; `show_number` leaves the unit away,
   for a column whose title names it. */
const char *show(const struct format *f, double si, enum unit us);
const char *show_rounded(const struct format *f, double si, enum unit us, enum rounding rounding);
const char *show_number(const struct format *f, double si, enum unit us, enum rounding rounding);
const char *show_decimals(const struct format *f, double si, enum unit us, int decimals);
/* A bare number with so many digits that count, zeros at the end left away; rounded to nearest. */
const char *show_significant(const struct format *f, double value, int digits);
/* A value in exactly this unit, with so many digits that count. */
const char *show_exact(const struct format *f, double si, enum unit u, int digits);

/* A tape reading to 1/8 in or 1 mm. */
const char *show_tape(const struct format *f, double si);
/* As the notes on coverings print them: a length that may be longer, never shorter; the size of a part. */
const char *show_least(const struct format *f, double si);
const char *show_part(const struct format *f, double si);
const char *show_pitch(const struct format *f, double theta);
/* A factor: two decimals. */
const char *show_factor(const struct format *f, double value, int decimals);
/* A ratio of demand to capacity: two decimals, never printed smaller than it is; "not checked" for
   no number. */
/* A weight as people lift it: lb, or kg in SI. */
const char *show_weight(const struct format *f, double si);
const char *show_ratio(const struct format *f, double ratio);

/* A remark as a sentence (remark_text.c). */
const char *remark_text(const struct format *f, const struct remark *m);
/* The remark at i with what later ones say of other zones or loads taken in (remark_fold.c); false if an earlier one has
   taken it in already. */
bool remark_fold(const struct format *f, const struct result *r, int i, struct remark *out);
/* True when every place of the template names a value and a unit this program knows. */
bool remark_template_valid(const char *template);

#endif
