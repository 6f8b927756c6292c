/* SPDX-License-Identifier: MIT */
/* The covering library: how a mount foot and a pipe go through each roof covering without letting
   water in. It is a directory of XML files (details/, described in details/covering.rng); this room
   reads and checks it, fills in the sizes of a job, hands the text out block by block, hands out
   drawings layer by layer, and exports the whole library.

   A library is read once and not changed afterwards: any number of threads may read from one. */
#ifndef RP_GUIDE_H
#define RP_GUIDE_H

#include <stdbool.h>
#include <stddef.h>

#include "guide/sizes.h"
#include "problem/problem.h"
#include "quantity/quantity.h"

struct guide_library;

/* Bounds of what is read. The largest file of the library has about 50 kB. */
#define GUIDE_FILE_MAX (1024u * 1024u)
#define GUIDE_FILES_MAX 256
#define GUIDE_DEPTH_MAX 32 /* the schema is the deepest file, with 13 */

/* One file in memory. Names are small letters, digits and hyphens with .xml or .rng behind. */
struct guide_file {
	const char *name;
	const char *data;
	size_t size;
};

/* Reads every .xml file of a directory and the schema covering.rng in it. NULL if anything is
   wrong; then problems says what, with file and line (codes 1xx for reading, 4xx for the library
   itself). Files with a document type are refused, so there are no entities; nothing is fetched
   from anywhere. */
struct guide_library *guide_open(const char *dir, struct problem_list *problems);
/* One page of the library that is shipped, with what pages share; without the schema, which takes libxml2 longer to compile than
   a whole check takes: the tests hold the shipped files against it. What the files say to each other is still checked. */
struct guide_library *guide_open_page(const char *dir, const char *key, struct problem_list *problems);
/* The same as guide_open from memory. The bytes are copied. */
struct guide_library *guide_open_memory(const struct guide_file *file, size_t files,
					struct problem_list *problems);
void guide_close(struct guide_library *lib);

enum guide_use {
	GUIDE_USE_YES,         /* a crew can do it with these notes */
	GUIDE_USE_WITH_ROOFER, /* a roofer of that trade does or leads the work on the covering */
	GUIDE_USE_REFUSED      /* stop: the page says why and what to do instead */
};

enum guide_slippery { GUIDE_SLIPPERY_UNNAMED, GUIDE_SLIPPERY_NO, GUIDE_SLIPPERY_YES };

/* One page, in the order of the keys. Strings belong to the library. */
struct guide_page {
	const char *key;  /* asphalt-laminated */
	const char *name; /* laminated asphalt shingle */
	enum guide_use use;
	enum guide_slippery slippery; /* for the snow load; unnamed counts as no */
};

size_t guide_page_count(const struct guide_library *lib);
struct guide_page guide_page_at(const struct guide_library *lib, size_t index);
/* False if there is no such page. page may be NULL. */
bool guide_page_find(const struct guide_library *lib, const char *key, struct guide_page *page);

/* Smallest and largest number of a covering's limits, SI (`weight` in Pa, lengths in m, slopes in
   rad, `life` in years); false if the covering does not give it. Names as in the schema:
   slope-least, exposure, weight ... */
bool guide_quantity(const struct guide_library *lib, const char *key, const char *name, double *low,
		    double *high);

/* Largest of the least sizes that the flashing pieces of a section ("foot" or "pipe") ask for on
   one edge (down, up, side, width ... as in the schema) at this pitch, m; an unknown pitch (NAN)
   counts every row. False if no piece says so. What the job works out for itself (up, length) is
   there for the usual pieces of covering only; down and side hold for all. */
bool guide_extent(const struct guide_library *lib, const char *key, const char *section,
		  const char *edge, double pitch, double *least);

enum guide_status {
	GUIDE_CONFIRMED,
	GUIDE_SECOND_HAND,
	GUIDE_FROM_MEMORY,
	GUIDE_COMMON_PRACTICE,
	GUIDE_DERIVED,
	GUIDE_OUR_RULE,
	GUIDE_STATUS_COUNT,
	GUIDE_NO_STATUS = GUIDE_STATUS_COUNT /* headings claim nothing */
};
/* "common practice"; "" for GUIDE_NO_STATUS. */
const char *guide_status_text(enum guide_status status);

/* What was read. Strings belong to the library. */
struct guide_source {
	const char *id, *title, *seen;
};
size_t guide_source_count(const struct guide_library *lib);
struct guide_source guide_source_at(const struct guide_library *lib, size_t index);

enum guide_kind {
	GUIDE_TITLE,   /* name of the covering */
	GUIDE_HEADING, /* level 1 a section of the page, 2 a shared part in it, 3 a piece of
			  flashing */
	GUIDE_PARAGRAPH,
	GUIDE_STEP, /* number counts from 1 through the whole list of steps */
	GUIDE_BULLET,
	GUIDE_CAUTION
};

/* One block of text. All strings are valid only while the sink runs; none is NULL. */
struct guide_block {
	enum guide_kind kind;
	int level;  /* of a heading */
	int number; /* of a step */
	enum guide_status status;
	const char *section; /* element of the page: "foot", "stop" ... ; "" before the first */
	const char *label;   /* "Sound", "Never", "Choice 1"; "" for none */
	const char *text;    /* UTF-8, one line, sizes filled in */
	const char *source;  /* titles and clause of what was read; "" for none */
	const char *of;      /* of a step: "pipe", "any", or "" for the feet that the page draws */
};

struct guide_sink {
	void (*block)(void *context, const struct guide_block *block);
	void *context;
};

enum guide_depth {
	GUIDE_FULL, /* shared parts printed where they belong */
	GUIDE_BRIEF /* shared parts only named, but for the opening caution, what stops the work,
		       falls and cautions */
};

/* What the job has where a drawing of a foot shows a usual screw or bolt. */
enum guide_fastener {
	GUIDE_FASTENER_USUAL, /* as the library draws it */
	GUIDE_FASTENER_LAG_SCREW,
	GUIDE_FASTENER_SCREW,
	GUIDE_FASTENER_BOLT,        /* through the rafter, washer and nut below */
	GUIDE_FASTENER_HANGER_BOLT, /* wood thread below, nuts above */
	GUIDE_FASTENER_CLAMP,       /* on seams: nothing goes through */
	GUIDE_FASTENER_DECK         /* screws into the deck alone */
};

struct guide_request {
	const char *key;
	const struct guide_sizes *sizes; /* of the job; NULL: nothing is known */
	enum unit_system units;
	enum guide_depth depth;
	enum guide_fastener fastener;
	bool base_below; /* of the foot: on wood or deck, the flashing goes over it */
	bool on_rafters; /* feet stand on rafters, not on blocks that the notes draw between two */
	bool resized;    /* a sheet shows the picture in a size of its own: its bar alone is the scale */
};

/* Walks one page from top to bottom. False if the library has no such page; then
 * PROBLEM_UNKNOWN_COVERING is added. */
bool guide_notes(const struct guide_library *lib, const struct guide_request *request,
		 const struct guide_sink *sink, struct problem_list *problems);

/* The key to an unknown roof, if the library has one. Strings are valid only while the sink runs. */
struct guide_question {
	int number; /* from 1, in the order of the key */
	const char *id, *text;
	enum guide_status status;
};

struct guide_answer {
	const char *text;
	enum guide_status status;
	int next;              /* number of the question that follows; 0: it leads to coverings */
	const char *coverings; /* their keys with blanks between; "" for none */
};

struct guide_key_sink {
	void (*question)(void *context, const struct guide_question *question);
	void (*answer)(void *context, const struct guide_answer *answer);
	void *context;
};

/* Hands out each question and then its answers. False if the library has no key. */
bool guide_key(const struct guide_library *lib, enum unit_system units, const struct guide_key_sink *sink);

/* The first thing that a page says of itself under look, butts, thickness, lines, sound, weight or age; false, and "", if
   nothing. Longer texts are refused, so size should be GUIDE_CLAIM_MAX. */
#define GUIDE_CLAIM_MAX 4096
bool guide_recognise(const struct guide_library *lib, const char *covering, const char *element, enum unit_system units,
		     char *buf, size_t size);

#define GUIDE_LAYER_SIZES 12

/* One layer of a drawing, from the inside outwards; see `drawing` in the schema for the frame of
 * reference. */
struct guide_layer {
	const char *kind, *label; /* valid while the sink runs */
	bool woven, plumb, turned;
	enum guide_status status;
	int sizes;
	struct {
		const char *name; /* down, up, side, thickness ... */
		double value;     /* SI */
		bool of_job;      /* true if the job's own size took the place of the usual one */
	} size[GUIDE_LAYER_SIZES];
};

struct guide_layer_sink {
	void (*title)(void *context, const char *title);
	void (*layer)(void *context, const struct guide_layer *layer);
	void *context;
};

/* of: "foot", "pipe" or "wall"; view: "section" or "plan". Labels come with their sizes filled in;
   least sizes of the job are rounded up as guide_notes prints them. False if the page has no such
   drawing. */
bool guide_drawing(const struct guide_library *lib, const struct guide_request *request,
		   const char *of, const char *view, const struct guide_layer_sink *sink);

/* Whether the section of that drawing is cut along the course instead of up the slope. False if there is none. */
bool guide_drawing_along(const struct guide_library *lib, const char *key, const char *of, bool *along);

/* Writes the library (every file, the schema, and index.xml, which lists them) into outdir, which
   is made if missing; with compress also NAME.gz beside each. Same library, same bytes. All files
   are written beside their places first and renamed when all are whole; if anything fails nothing
   of this export stays, as far as the file system obeys. */
bool guide_export(const struct guide_library *lib, const char *outdir, bool compress,
		  struct problem_list *problems);

#endif
