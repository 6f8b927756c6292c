/* SPDX-License-Identifier: MIT */
/* What a check finds. Plain data in SI, filled by check_run (check.h), read by every report. */
#ifndef RP_RESULT_H
#define RP_RESULT_H

#include <stdbool.h>

#include "check/course_place.h"
#include "check/remark.h"
#include "check/shown_beam.h"
#include "job/job.h"
#include "load/asce7_snow.h"
#include "roof/zone.h"
#include "step/step.h"

enum verdict { HOLDS, DOES_NOT_HOLD, NEEDS_ENGINEER };

/* The chain from the sun to the wall; the weakest link is named. */
enum link { LINK_COLLECTOR, LINK_RAIL, LINK_FOOT, LINK_FASTENER, LINK_RAFTER, LINK_COUNT };

/* id, link, words, unit of demand and capacity */
#define CHECKS(C)                                                                         \
	C(COLLECTOR_UPLIFT, COLLECTOR, "uplift pressure on the collector", PSF)           \
	C(COLLECTOR_DOWN, COLLECTOR, "down pressure on the collector", PSF)               \
	C(RAIL_MOMENT, RAIL, "bending of the rail", LB_IN_M)                              \
	C(RAIL_DEFLECTION, RAIL, "deflection of the rail", IN)                            \
	C(RAIL_CANTILEVER, RAIL, "cantilever of the rail", IN)                            \
	C(FOOT_UPLIFT, FOOT, "uplift on the foot", LB)                                    \
	C(FOOT_DOWN, FOOT, "down force on the foot", LB)                                  \
	C(FOOT_SLOPE, FOOT, "down-slope force on the foot", LB)                           \
	C(WITHDRAWAL, FASTENER, "withdrawal of the lag screw", LB)                        \
	C(LATERAL, FASTENER, "side load on the lag screw", LB)                            \
	C(COMBINED, FASTENER, "withdrawal and side load together on the lag screw", LB)   \
	C(TENSION, FASTENER, "tension in the lag screw itself", LB)                       \
	C(RAFTER_BENDING, RAFTER, "bending of the rafter, load down", PSI)                \
	C(RAFTER_UPLIFT, RAFTER, "bending of the rafter, net uplift", PSI)                \
	C(RAFTER_SHEAR, RAFTER, "shear of the rafter", PSI)                               \
	C(RAFTER_DEFLECTION, RAFTER, "deflection of the rafter", IN)                      \
	C(RAFTER_BEARING, RAFTER, "bearing of the rafter on its support", PSI)            \
	C(RAIL_BOTH_WAYS, RAIL, "bending of the rail both ways together", NONE)           \
	C(RAIL_SPLICE, RAIL, "bending of a joint in the rail", LB_IN_M)                   \
	C(FRAMING_UPLIFT, FOOT, "uplift on the framing under a foot", LB)                 \
	C(FRAMING_DOWN, FOOT, "down force on the framing under a foot", LB)               \
	C(PULL, FASTENER, "pull on the fastener", LB)                                     \
	C(SIDE, FASTENER, "side load on the fastener", LB)                                \
	C(PULL_SIDE, FASTENER, "pull and side load on the fastener along their resultant", LB) \
	C(TOGETHER, FASTENER, "pull and side load on the fastener, shares added", NONE)   \
	C(BREAK, FASTENER, "tension in the fastener itself", LB)                          \
	C(WASHER, FASTENER, "bearing of the washer under the rafter", LB)                 \
	C(SEAM, FASTENER, "pull on the seam under a clamp", LB)                           \
	C(CLIP, FASTENER, "pull on the panel's clip under a clamp", LB)                   \
	C(CLIP_SCREW, FASTENER, "pull on the screws of the panel's clip", LB)             \
	C(BLOCK_BENDING, FOOT, "bending of the block both ways together", NONE)           \
	C(BLOCK_SHEAR, FOOT, "shear and twist of the block, shares added", NONE)          \
	C(BLOCK_NAILS, FOOT, "side load on a nail in the block's end", LB)                \
	C(BLOCK_HANGER, FOOT, "hanger at the block's end, shares added", NONE)           \
	C(RAFTER_PARTIAL, RAFTER, "bending of the rafter, partial snow", PSI)             \
	C(RAFTER_TAIL, RAFTER, "bending of the rafter's tail over the wall", PSI)         \
	C(RAFTER_TAIL_BOW, RAFTER, "deflection of the rafter's tail at its end", IN)

enum check_id {
#define C(id, link, words, unit) CHECK_##id,
	CHECKS(C)
#undef C
	CHECK_COUNT
};
enum link check_link(enum check_id id);
/* True where a tested allowable is held against the combinations of ASD whatever the job's method. */
bool check_is_tested(enum check_id id, enum fastener_kind kind);
const char *check_words(enum check_id id);
enum unit check_unit(enum check_id id);
const char *link_words(enum link link);

/* One demand held against one capacity. rated is false where a fact is missing: then nothing else counts. */
struct check_value {
	bool rated;
	double demand, capacity, ratio; /* SI; ratio = demand / capacity */
	const char *combination;        /* "0.6D + 0.6W" */
	double CD;                      /* load duration factor (LRFD: time effect factor) that belongs to it; 1
	                                   where none */
};

/* Force on one attachment in one combination: normal to the roof (up is positive in `uplift`, down in `down`) and
   down the slope, acting together. */
struct force {
	double normal, slope;    /* N */
	const char *combination;
	double CD;
};

#define ATTACHMENT_MAX 256
#define LINE_MAX 128 /* direct feet: two lines per collector, COLLECTOR_MAX collectors */
#define REMARK_MAX 96
#define TRACE_MAX 160

/* A place for a foot: on rafter `frame` (an index into result.frame_x; -1: none known), or between it and the next. */
struct stand {
	int frame;
	double right; /* part of its force that the next rafter takes; 0 on a rafter */
};

struct rectangle {
	double x0, y0, x1, y1; /* on the roof plane, m: x along the eave from the left rake edge, y up the slope from the eave edge */
};

struct attachment {
	int number;              /* from 1: lowest line first, left to right */
	int line;                /* rail line, from 0, lowest first */
	int rafter;              /* its place: index into result.rafter_x and place */
	double x, y;             /* m on the plane */
	struct rectangle tributary;
	double tributary_width;  /* along the eave, m */
	double tributary_depth;  /* up the slope, m */
	double reaction_width;   /* continuous-beam reaction per unit line load, m */
	double snow_width;       /* the same under the worst pattern of full and half snow; 0: not a rail */
	double lift_width;       /* the least reaction under any pattern of full and half snow; below 0 the rail levers the foot up */
	double worker_down, worker_up; /* most of one worker's weight on the rail that comes onto the foot; that pulls on it */
	double area;             /* effective wind area = tributary area, m2 */
	enum zone zone;          /* worst touched */
	bool exposed;            /* gammaE = 1.5 for uplift */
	double GCp_up, GCp_down;
	enum confidence confidence;
	double p_up, p_down;     /* strength-level wind pressure, Pa, both positive; on a rack, the legs' pull and push */
	double p_shear;          /* wind along the roof on this foot, Pa of its area; 0 on flush arrays */
	double tip;              /* share of its down-slope weight that presses this foot (minus: lifts it) through the rack */
	struct force uplift, down, slope; /* the governing ones for uplift, down force and down-slope force */
	struct course_place course;
	struct check_value check[CHECK_COUNT]; /* only those of foot and fastener are filled */
	double ratio;            /* worst of them */
	enum check_id governs;
};

struct rail_line {
	int line;
	double y;                /* m up the slope */
	double x0, x1;           /* ends of the rail */
	int first, count;        /* its attachments */
	double longest_span, longest_cantilever, cantilever_limit;
	struct check_value check[CHECK_COUNT];
	double ratio;
	enum check_id governs;
};

struct rafter_result {
	int rafter;              /* index into result.frame_x */
	int feet;                /* attachments that hand it a part of their force */
	struct check_value before[CHECK_COUNT], after[CHECK_COUNT];
	double ratio_before, ratio_after;
	enum check_id governs;   /* of after */
	double moment_before, moment_after; /* largest under D + S or D + Lr, N m, for the 5 % rule */
	double rise_total;       /* (after - before) / before of the design moment */
	double rise_dead;        /* of dead load alone */
	int pattern;             /* of partial snow in CHECK_RAFTER_PARTIAL, for span_pattern_text; -1: none */
	int spans;               /* of the rafter as one beam, tails among them; 0: rated as single spans */
	bool tail;               /* the array loads its tail */
	bool triggered;          /* one of them is more than 5 % (IEBC 503.3, either reading) */
};

/* What ends the spacing of a zone. */
enum spacing_end { SPACING_BY_CHECK, SPACING_BY_MAKER, SPACING_BY_ARRAY, SPACING_END_COUNT };

/* Largest spacing along the eave at which screws, foot and rail hold in a zone, by whole rafter bays. */
struct zone_spacing {
	bool present;            /* the array touches this zone */
	double p_up, p_down;     /* at that spacing, strength level, Pa */
	double GCp_up, GCp_down;
	enum confidence confidence;
	const char *figure;
	double area;             /* at that spacing, m2 */
	double spacing;          /* m; 0: not even every rafter holds */
	double exact;            /* without regard to where rafters are, m */
	enum spacing_end end;    /* a check, the maker's limit, or the array is no wider */
	enum check_id governs;   /* the check nearest to its limit */
};

enum trace_section { SECTION_WIND, SECTION_SNOW, SECTION_DEAD, SECTION_ATTACHMENT, SECTION_FASTENER, SECTION_RAIL, SECTION_RAFTER, SECTION_COUNT };
const char *section_words(enum trace_section s);

/* The whole chain under one set of wind coefficients. */
struct pass {
	const char *name;        /* "remembered curve", "safe side", "as entered", "confirmed" */
	bool complete;           /* every line has the two feet it needs */
	bool holds;
	double ratio;            /* worst of all links */
	enum check_id governs;
	int attachments;
	struct attachment attachment[ATTACHMENT_MAX];
	int lines;
	struct rail_line line[LINE_MAX];
	int rafters;
	struct rafter_result rafter[RAFTER_MAX]; /* those with feet */
	struct check_value collector[CHECK_COUNT];
	double link_ratio[LINK_COUNT]; /* NAN: not rated */
	int link_at[LINK_COUNT];       /* attachment number, line number (from 1) or rafter number (from 1); 0 none */
	enum check_id link_governs[LINK_COUNT];
	struct zone_spacing zone[ZONE_COUNT];
	int governing_attachment; /* index of the worst attachment */
	int governing_rafter;     /* index into rafter[] */
	int governing_line;
};

/* What loads the collectors: 29.4.4; 29.4.3; 29.4.1 as a bound. */
enum wind_rule { WIND_FLUSH, WIND_TILTED, WIND_STRUCTURE };

struct wind_result {
	enum wind_rule rule;
	double tilt;             /* of the collectors against the roof, rad */
	double h1;               /* top of the low edge above the roof, m */
	unsigned tilted_failed;  /* bit set of failed conditions of 29.4.3 */
	double gammap, gammac, Lb; /* 29.4.3 */
	double Fh, Fv, GCr_h, GCr_v; /* 29.4.1, on one collector, N */
	double Kz, Kd, Ke, Kzt, qh, a;
	double h2, Lp;           /* top of the array above the roof, chord, m */
	unsigned flush_failed;   /* bit set of failed conditions of 29.4.4 */
	bool gammaa_allowed;
};

#define SNOW_CASE_MAX SNOW_LOAD_MAX

struct snow_result {
	double Ce, Ct, Is, pf, pm;
	double Cs_before, Cs_roof, Cs_array; /* bare roof without the array, with it, collectors */
	int cases;
	struct snow_load_case snow[SNOW_CASE_MAX]; /* balanced first; loads in Pa on plan */
};

struct dead_result {
	double array_dry, array_filled; /* Pa of collector area, hardware included */
	double collector_dry, collector_filled; /* N each */
};

struct quake_result {
	bool known;
	double SDS;                  /* g */
	double horizontal, vertical; /* parts of the array's filled weight, before load factors */
};

struct fastener_result {
	double t_up;             /* everything between the head and the rafter face, m */
	double p_tot, p, p_t, l_m; /* NDS lengths, m */
	double gap;              /* of the yield equations, m */
	double W, Z;             /* reference withdrawal N/m, lateral N */
	double lead_hole_low, lead_hole_high; /* m; NAN none listed */
	double edge_room;        /* allowed miss from the centre, m */
	const char *mode;        /* governing yield mode */
};

struct lumber_result {
	const char *species, *grade; /* as used */
	double G, Fb, Fv, E, Emin;   /* reference, Pa */
	double CF, Cr;
};

/* The blocks between rafters, one kind for all feet that stand on one. */
struct block_result {
	int kind;                    /* from 1, index into the list of sizes; 0: none is set */
	int feet, first;             /* that stand on one, and the first of them */
	const char *size;            /* nominal, as listed: "4x6" */
	bool flat;                   /* wide side up */
	double wide, high;           /* along the rafter, square to the roof, m */
	double clear;                /* of the widest bay that has one, m */
	double p_t;                  /* thread of the screw in it, m */
	const char *species, *grade; /* as used */
	bool hanger;                 /* its ends stand in the hangers that the job gives, else on nails: */
	int rows, columns;
	double row_pitch, column_pitch, nail_D, nail_L; /* m */
};

/* The rule because of which fewer feet cannot stand at all. */
enum search_bar { BAR_NONE, BAR_SPACING, BAR_CANTILEVER, BAR_JOINTS, BAR_ASIDE, BAR_TOGETHER, BAR_PLACES };

/* What the search for the fewest feet proved. */
struct search_result {
	bool ran, found;
	int wanted;              /* feet that the job asks for; 0: the fewest */
	int feet;                /* of the layout shown */
	int bound;               /* no layout with fewer holds */
	int most;                /* places for feet, all lines together; only where the wanted number cannot be */
	bool settled;            /* bound is feet, or none holds at all: every possibility was looked at or ruled out */
	bool best;               /* nor is there one with as many feet and a lower worst ratio */
	bool fewer;              /* the best with one foot less, or two where one less is no number, is known: */
	int fewer_feet;
	bool fewer_settled;      /* and is the best of them */
	double fewer_ratio;
	double fewer_bound;      /* none with as many feet has a lower one; not above fewer_ratio */
	enum check_id fewer_governs;
	enum search_bar bar;     /* where no number of feet, or none below `feet`, can stand whatever it carries */
};

struct result {
	enum verdict verdict;
	struct search_result search;
	int remarks, remarks_dropped;
	struct remark remark[REMARK_MAX];
	double plane_length, plane_slope; /* of the roof plane along the eave and up the slope, m */
	struct polygon outline; /* the plane: a rectangle; on a hip roof a trapezoid or triangle; n is 0 where it is not known */
	int shapes;
	struct zone_shape shape[ZONE_SHAPE_MAX];
	int array_shapes;                  /* zones of the chart for tilted collectors; 0: those of the roof count */
	struct zone_shape array_shape[ZONE_SHAPE_MAX];
	int rafters;                       /* places where a foot may stand: the rafters; the seams under clamps; with blocks
	                                      the middles of the bays too */
	double rafter_x[RAFTER_MAX];
	struct stand place[RAFTER_MAX];    /* which rafters carry a foot there */
	bool blocks;                       /* a place between two rafters is a block's */
	bool on_deck;                      /* places are steps of a tape along the deck, whatever rafters lie below */
	int frames;                        /* the rafters themselves, 0: not given */
	double frame_x[RAFTER_MAX];
	int collectors;
	struct rectangle collector[COLLECTOR_MAX];
	struct rectangle array;
	double array_to_eave, array_to_ridge, array_to_left, array_to_right; /* clear, m on the plane */
	struct wind_result wind;
	struct snow_result snow;
	struct dead_result dead;
	struct quake_result quake;
	struct fastener_result fastener;
	struct lumber_result lumber;
	struct block_result block;
	double Lr;               /* roof live load, Pa on plan */
	int passes;              /* 1, or 2 where coefficients are not confirmed */
	struct pass pass[2];     /* 0: remembered, confirmed or entered; 1: safe side */
	int judged;              /* which pass the printed tables show: the one that decides */
	struct shown_beam rafter_beam, rail_beam; /* the governing ones of the judged pass, in the case that governs */
	struct step_record record[SECTION_COUNT][TRACE_MAX];
	struct trace trace[SECTION_COUNT]; /* of the judged pass; attachment and rafter are the governing ones */
};

/* place.c. Number by which people know a place (index into result.place), from 1: of its rafter, of the rafter left of its block,
   of its seam. */
int place_number(const struct result *r, int place);
bool place_on_block(const struct result *r, int place);

#endif
