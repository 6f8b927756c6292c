/* SPDX-License-Identifier: MIT */
/* What all drawings and sheets of one job share: the job and its result, the typeface, a store for
   the texts that are put on them, and the fingerprint that ties a printed page to its job. */
#ifndef RP_SHEET_H
#define RP_SHEET_H

#include <stdint.h>

#include "check/result.h"
#include "guide/guide.h"
#include "job/job.h"
#include "drawing/drawing.h"
#include "report/format.h"

#define FINGERPRINT_TEXT 20

struct sheet {
	const struct job *job;
	const struct result *r;
	const struct pass *pass; /* the judged one */
	const struct lettering *lettering;
	const struct guide_library *library; /* NULL: details without the covering's own layers */
	struct format f;                     /* its document is the store of texts */
	char fingerprint[FINGERPRINT_TEXT];  /* "0123-4567-89ab-cdef" */
};

/* False when memory ran out. The job, result, lettering and library must live longer. */
bool sheet_open(struct sheet *s, const struct job *job, const struct result *r,
		const struct lettering *lettering, const struct guide_library *library);
void sheet_close(struct sheet *s);

/* FNV-1a, 64 bits, over every field of the job that has a value, in the order of the field table:
   path, row number, and the value in SI to 12 digits (or its text). The same facts written in other
   units or in another order give the same number; title, result and program do not enter, but units
   do not either. */
uint64_t job_fingerprint(const struct job *job);
/* Sixteen hexadecimal digits in groups of four. */
const char *fingerprint_print(char buf[FINGERPRINT_TEXT], uint64_t value);
/* FNV-1a itself; start is FNV_START or the value so far. */
#define FNV_START UINT64_C(0xcbf29ce484222325)
uint64_t fnv1a(uint64_t value, const void *bytes, size_t n);

/* True if a foot is held by screws or bolts of known size that go through the covering; clamps on
 * seams are not. */
bool sheet_has_screw(const struct job *job);
/* Feet stand on seams, whose lines take the place of rafters in the result. */
bool sheet_on_seams(const struct job *job);
/* A length as a drawing shows it: 13'-6 1/2", or whole millimetres without a unit. */
const char *sheet_tape(const struct sheet *s, double m);
/* A size of a part with its unit: 5/16 in as it is listed, anything else to 1/16 in; millimetres,
 * with a tenth below 20. */
const char *sheet_size(const struct sheet *s, double m);
/* Diameter of a nail or screw as it is listed: 5/16 in, 0.162 in, 4.1 mm; never a rounded one. */
const char *sheet_shank(const struct sheet *s, double D);
/* What to look at where the array loads rafter tails outside the wall; NULL where it does not. */
const char *sheet_tails(const struct sheet *s);
/* What goes on after the thread that must be in the rafter: ", 2-1/4 in in a block", " or block" where
   that is as much, nothing where no foot stands on one. */
const char *sheet_block_thread(const struct sheet *s);
/* The nails at a block's ends: "16d (0.162 in x 3-1/2 in)". */
const char *sheet_block_nail(const struct sheet *s);
/* Two widths of a drill, the smaller rounded up and the larger down, to 1/64 in or 0.1 mm: "11/64
 * in to 7/32 in". */
const char *sheet_drill(const struct sheet *s, double low, double high);
const char *sheet_text(const struct sheet *s, const char *format, ...) DOCUMENT_FORMAT(2, 3);
/* What dimensions without a unit are in; "" in the US system. */
const char *sheet_unit_note(const struct sheet *s);
/* "HOLDS" ... with the words that keep anybody from building on a job that does not. */
const char *sheet_verdict(const struct sheet *s);

/* What a drawing is composed for: a sheet of paper, or a telephone's screen, where everything stands
   below each other and the drawing ends where its words do. */
struct sheet_room {
	double width, height; /* m; of a narrow one the height is a bound */
	bool narrow;
	double least; /* of letters, m */
};
/* About as wide as such a screen: the lines and letters of a sheet keep their sizes. 2.2 mm on 70
   are 11 px on a screen of 360. */
#define SHEET_NARROW ((struct sheet_room){70 * MM, 2, true, 2.2 * MM})
#define NARROW_MARGIN (2 * MM)

/* A usual drawing scale. */
struct scale {
	double ratio;     /* world over paper: 48 */
	const char *text; /* "1/4 in = 1 ft (1:48)" */
};
/* The largest usual scale at which width x height of the world fits in the room on paper. */
struct scale scale_for_plan(const struct sheet *s, double width, double height, double room_x,
			    double room_y);
struct scale scale_for_detail(const struct sheet *s, double width, double height, double room_x,
			      double room_y);

/* On a telephone's screen the largest of two digits: nobody lays a rule on it. Its words say that it
 * is true only where the screen is as wide. */
struct scale scale_for_screen(const struct sheet *s, double width, double height, double room_x,
			      double room_y);

/* Width of a text of this size, m. */
double sheet_width(const struct sheet *s, const char *text, double size);
/* Sets text in lines of at most `width`, downward from `at` (upper left corner, on paper); returns
 * the y below it. */
double sheet_paragraph(const struct sheet *s, struct drawing *d, struct point at, double width,
		       double size, const char *text);
/* The same in bold letters. */
double sheet_heading(const struct sheet *s, struct drawing *d, struct point at, double width,
		     double size, const char *text);

#endif
