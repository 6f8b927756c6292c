/* SPDX-License-Identifier: MIT */
/* One job: everything the program is told about a house, its roof and what will stand on it.
   Plain data in SI (m, N, Pa, rad); the field table (field.h) says how each member is written in
   a job file and measured on site. A member whose field is optional and absent holds NAN
   (quantities), 0 (counts) or the enum's own UNKNOWN/NONE. The reader (job_read.h) fills members
   that have a default or a conservative assumption; `origin` says which, `job_given` what was
   written. */
#ifndef RP_JOB_H
#define RP_JOB_H

#include <stdbool.h>

#include "job/field.h"
#include "quantity/quantity.h"
#include "step/step.h"

#define TEXT_MAX 160

enum yes_no { ANSWER_UNKNOWN, ANSWER_NO, ANSWER_YES };

enum design_method { METHOD_ASD, METHOD_LRFD };
/* Editions of the National Design Specification for Wood Construction. NDS_2018 is the one that the
   formulas are written from. */
enum nds_edition { NDS_2018, NDS_2015, NDS_2024 };
enum risk_category { RISK_I, RISK_II, RISK_III, RISK_IV };
enum exposure { EXPOSURE_B, EXPOSURE_C, EXPOSURE_D };
enum topography {
	TOPOGRAPHY_UNSURE,
	TOPOGRAPHY_NONE,
	TOPOGRAPHY_DESCRIBED /* Kzt or a hill is given */
};
enum snow_level { SNOW_SERVICE, SNOW_STRENGTH };
enum snow_exposure { SNOW_FULLY_EXPOSED, SNOW_PARTIALLY_EXPOSED, SNOW_SHELTERED };
enum thermal {
	THERMAL_HEATED,
	THERMAL_COLD_VENTILATED,
	THERMAL_UNHEATED,
	THERMAL_FREEZER,
	THERMAL_GREENHOUSE
};

struct job_site {
	enum edition code;
	enum design_method method;
	enum risk_category risk_category;
	double wind_speed; /* V, basic, strength level, m/s */
	enum exposure exposure;
	enum topography topography;
	double Kzt;         /* 1 unless described */
	double elevation;   /* above sea level, m; default 0: Ke = 1; so is NAN */
	double ground_snow; /* pg, Pa */
	enum snow_level ground_snow_level;
	char snow_place[32]; /* of the table snow-ground-alaska; empty: none */
	bool snow_from_place; /* and it gave ground_snow */
	double roof_snow_minimum; /* the authority's own, Pa on plan; NAN: none */
	enum snow_exposure snow_exposure;
	enum thermal thermal;
	double roof_R; /* thermal resistance, h ft2 F/Btu (US number); NAN unknown */
	char address[TEXT_MAX], parcel[TEXT_MAX]; /* as the permit form has them, or empty */
	enum nds_edition nds;
};

enum roof_form {
	FORM_FLAT,
	FORM_GABLE,
	FORM_HIP,
	FORM_MONOSLOPE,
	FORM_OTHER,
	FORM_MULTISPAN,
	FORM_CURVED,
	FORM_STEPPED
};
/* Of a hip roof: the trapezoid below the ridge, or the triangle at an end. */
enum access_side { ACCESS_LEFT, ACCESS_RIGHT, ACCESS_BOTH };
enum roof_plane { PLANE_UNKNOWN, PLANE_SIDE, PLANE_END };
enum enclosure { ENCLOSED, PARTIALLY_ENCLOSED, OPEN_BUILDING };

struct job_building {
	enum roof_form form;
	double length;           /* plan, parallel to the ridge, wall to wall, m */
	double width;            /* plan, across the ridge, wall to wall, m */
	double mean_roof_height; /* h, m */
	double eave_overhang;    /* horizontal, m */
	double rake_overhang;    /* horizontal, m */
	double parapet;          /* height above the roof, m */
	enum enclosure enclosure;
	enum yes_no sliding_room; /* room below the eave for all the snow to slide to, nothing in
				     its way */
	enum roof_plane plane; /* that carries the array */
	double facing;         /* where somebody on this plane looks who faces down the slope, clockwise from north, rad;
				  NAN unknown */
	double access_path;    /* width of a path from eave to ridge to be kept clear, m; NAN: none asked for */
	enum access_side access_side;
	double ridge_clear;    /* strip below the ridge to be kept clear, m up the slope; NAN: none */
	/* level, from the wall below this eave, the far one, the left and the right one to the
	   property line, m; NAN: not given */
	double line_below, line_behind, line_left, line_right;
};

enum deck_kind {
	DECK_UNKNOWN,
	DECK_PLYWOOD,
	DECK_OSB,
	DECK_BOARDS,
	DECK_SPACED_BOARDS,
	DECK_OTHER
};
enum ceiling { CEILING_NONE, CEILING_FLEXIBLE, CEILING_PLASTER };
enum joint_kind { JOINTS_UNKNOWN, JOINTS_REGULAR, JOINTS_RANDOM, JOINTS_MEASURED };
enum condition { CONDITION_UNSEEN, CONDITION_SOUND, CONDITION_DAMAGED };

#define COVERING_KEY_MAX 48
#define JOINT_MAX 128 /* two beside each of sixty-four feet */

struct job_joint {
	int course; /* counted from the eave, 1 the course above first_butt */
	double at;  /* from the left rake edge, m */
};

struct job_roof {
	double pitch;                    /* theta, rad */
	char covering[COVERING_KEY_MAX]; /* key of the covering library: asphalt-laminated */
	double course_exposure; /* E, m along the slope; NAN for coverings without courses */
	double piece_length;    /* L of shingle, shake, slate, tile, m; NAN unknown */
	double first_butt;      /* eave edge to the first butt line up the slope, m; default 0 */
	double seam_spacing;    /* of a standing seam or rib roof, m; NAN */
	int layers;             /* of covering; 2 assumed */
	double built_up;        /* covering and underlayment from deck to the underside of the foot,
				   measured, m; NAN */
	enum deck_kind deck;
	double deck_thickness;    /* m; the thickest usual board assumed */
	double dead_load;         /* roof build-up, Pa of slope */
	enum ceiling ceiling;     /* fixed to the rafters' underside */
	enum condition condition; /* rot, splits, sag, earlier cuts */
	double woven_valley; /* level distance along the eave from the array to the nearest valley,
				m; NAN: no valley near */
	enum yes_no ice_barrier; /* local table asks for one */
	double wall_thickness;   /* for the ice barrier, m; NAN */
	double first_seam;       /* first seam line from the left rake edge, m; NAN */
	int piece_grade;         /* of wood shingles and shakes: 1 to 3; 0 unknown */
	enum joint_kind joints;  /* between the pieces of a course */
	double piece_width;      /* joint to joint along the eave, of measured joints the widest piece, m; NAN */
	double first_joint;      /* a joint of joint_course from the left rake edge, m; NAN */
	int joint_course;        /* counted from the eave, 1 the course above first_butt; default 1 */
	double joint_shift;      /* how much further from the left rake edge each course above, m; default 0 */
	double wall;             /* level distance along the eave from the array to the nearest wall beside it, m; NAN: none */
	int measured_joints;
	struct job_joint joint[JOINT_MAX];
};

enum framing_kind {
	FRAMING_UNKNOWN,
	FRAMING_RAFTER,
	FRAMING_TRUSS,
	FRAMING_I_JOIST,
	FRAMING_PANEL,
	FRAMING_STEEL
};
enum ridge_kind { RIDGE_UNKNOWN, RIDGE_BOARD, RIDGE_BEAM, RIDGE_WALL };

#define RAFTER_MAX 128
#define SUPPORT_MAX 6

struct job_framing {
	enum framing_kind kind;
	double breadth, depth; /* b, d as measured or dressed, m */
	char size[16];         /* as listed: 2x6; sets breadth and depth that are not given */
	char species[48];      /* species group of NDS */
	char grade[32];        /* No.2 */
	double spacing;        /* centre to centre, m; the widest gap if rafters are measured */
	double first;          /* first centre line from the left rake edge, m */
	double span;           /* horizontal, between supports, m */
	enum ridge_kind ridge;
	enum yes_no ties;      /* ceiling joists or rafter ties in the lower third */
	double brace_spacing;  /* between places where the bottom edge is held sideways, along the
				  slope, m; NAN: none */
	enum yes_no wet;       /* moisture above 19 % in service */
	enum yes_no incised;   /* incised for treatment */
	int measured;          /* number of measured centre lines; 0: use first and spacing */
	double at[RAFTER_MAX]; /* measured centre lines from the left rake edge, rising, m */
	double temperature;    /* sustained, of the wood, K; NAN: not above 100 F */
	double bearing_length; /* of the rafter on its supports, level, m; NAN: not checked */
	double tie_height;     /* of the ties above the plate, m; NAN: as `ties` says */
	double sharing;        /* part of a foot's force that the deck hands to the two neighbours;
				  NAN: none */
	char sharing_reason[TEXT_MAX];
	/* an engineer's values for one foot on framing that is not rated here, N; NAN */
	double allowable_uplift, allowable_down;
	char report[TEXT_MAX]; /* who gave them */
	double inner_support;  /* level, from the outer face of the wall to a support below the rafter, m;
				  NAN: as the span says */
	enum yes_no continuous; /* over that support in one piece */
	double tail_depth;      /* left of the rafter above the seat cut, square to the slope, m; NAN */
	int supports;           /* further ones above inner_support */
	double support[SUPPORT_MAX]; /* level, from the outer face of the wall, rising, m */
	enum yes_no ends_held;  /* at both ends against turning over: NDS 4.4.1.2 */
};

/* Collectors of one job: columns times rows. */
#define COLLECTOR_MAX 64

enum collector_kind { COLLECTOR_FLAT_PLATE, COLLECTOR_EVACUATED_TUBE, COLLECTOR_PV };
enum orientation { PORTRAIT, LANDSCAPE }; /* portrait: long side up the slope */
/* How a piece that reaches into several pressure zones is loaded. */
enum straddling { STRADDLING_WORST, STRADDLING_BY_AREA };
enum collector_fluid { FLUID_NONE, FLUID_WATER, FLUID_GLYCOL };

struct job_collector {
	enum collector_kind kind;
	double length, width, depth; /* long side, short side, box depth, m */
	double dry_weight;           /* one collector, N */
	double filled_weight;        /* N; NAN: dry weight plus fluid_volume of fluid */
	double fluid_volume;         /* one collector, m3; NAN */
	enum collector_fluid fluid;
	enum orientation orientation;
	int columns, rows;          /* along the eave, up the slope */
	double column_gap, row_gap; /* clear, m */
	double left,
		lower;    /* lower left corner, from left rake edge and eave edge up the slope, m */
	double clearance; /* from the roof surface to the underside, m */
	double tilt;      /* against the roof plane, rad; 0 is flush */
	double high_edge; /* roof surface to the underside of the upper edge of a tilted collector,
			     m; NAN: follows from the tilt */
	enum straddling straddling;
	double rated_uplift, rated_down; /* maker's rated pressures, Pa, allowable; NAN unknown */
	double hardware_weight;          /* rails and feet, Pa of collector area */
};

enum support_kind { SUPPORT_RAILS, SUPPORT_DIRECT_FEET };

struct job_rail {
	enum support_kind kind;
	double lower_inset, upper_inset; /* collector's edges to the rail lines, m */
	double lower_inset_max, upper_inset_max; /* farthest that its clamps allow, m; NAN: as given */
	double section_modulus;          /* S, m3; NAN unknown: the rail is not rated */
	double inertia;                  /* I, m4; NAN */
	char alloy[24];                  /* aluminium alloy and temper, or empty */
	double allowable_moment;         /* maker's tested or calculated, N m; NAN */
	double stock_length;             /* of the rail as it comes, m; NAN: splices are not looked at */
	double splice_reach;             /* of a joint from the nearest foot, share of the span; NAN:
					    anywhere in an inner span */
	double max_cantilever;           /* m; NAN: a third of the span (common practice) */
	double deflection_limit;         /* span / this; NAN: not limited */
	double weak_section_modulus;     /* Sy, about the axis that a force down the slope bends it
					    on, m3; NAN: that bending is not rated */
	double splice_moment;            /* tested allowable of a joint in the rail, N m; NAN */
};

/* What lies between the foot's base plate and the rafter. on wood: nothing, the plate bears on
   the rafter or on a block fixed to it; on deck: the covering is cut out and the plate bears on
   the deck; over layers: deck and covering both lie between; rigid post: a post or block fills
   the space and is itself fixed to the rafter. Deck and layers count as a gap in the yield
   equations; a rigid post does not. */
enum seat { SEAT_UNKNOWN, SEAT_ON_WOOD, SEAT_ON_DECK, SEAT_OVER_LAYERS, SEAT_RIGID_POST };

/* What carries a foot that lands between two rafters. */
enum between { BETWEEN_NOTHING, BETWEEN_BLOCKING };

struct job_mount {
	enum seat seat;
	double height;          /* from the base plate to the line of the rail, m */
	double plate_thickness; /* t of the steel plate the screw passes, m */
	double lever_arm;       /* from the screw to the compressed edge of the base, up or down the
				   slope, m; NAN */
	double spacing;         /* wanted, along the eave, m; NAN: the largest that holds */
	double max_spacing;     /* maker's limit, m; NAN */
	int holes;              /* feet in all that are wanted; 0: the fewest that hold */
	enum yes_no stagger;    /* upper line of feet one rafter aside of the lower */
	/* tested allowables of the foot, N; NAN: foot not rated */
	double allowable_uplift, allowable_down, allowable_slope;
	char report[TEXT_MAX]; /* test report the allowables come from */
	enum between between;
	double deck_pitch;      /* of the places where a mount on the deck alone may stand, m */
	/* of the block; empty: the first of a list that holds, of the weakest usual lumber */
	char block_size[16], block_species[48], block_grade[32];
	/* tested allowables of the hanger at one end, N; NAN: the ends are nailed */
	double block_end_uplift, block_end_down, block_end_slope;
	char block_report[TEXT_MAX];
};

enum fastener_kind {
	FASTENER_LAG_SCREW,
	FASTENER_WOOD_SCREW,
	FASTENER_STRUCTURAL_SCREW, /* a maker's own: tested allowables */
	FASTENER_THROUGH_BOLT,     /* down through the rafter, washer and nut below */
	FASTENER_HANGER_BOLT,
	FASTENER_SEAM_CLAMP,  /* on the seams of a metal roof, no hole */
	FASTENER_DECK_MOUNT,  /* foot screwed to the deck alone: tested allowables */
	FASTENER_SHEET_SCREW  /* self-drilling, into steel */
};

/* Whether a tested allowable already holds for the load duration of wind and snow, or is a value
   for ten years that NDS lets be multiplied by CD. */
enum test_duration { DURATION_INCLUDED, DURATION_TEN_YEARS };

struct job_fastener {
	enum fastener_kind kind;
	double diameter;           /* nominal D, m */
	double length;             /* L under the head, m */
	double thread_length;      /* T by the maker; NAN: Appendix L minimum */
	int count;                 /* screws per foot */
	double spacing;            /* between them along the grain, m; NAN if one */
	double drilling_tolerance; /* how far a hole may miss the rafter's centre, m */
	double end_distance; /* from the nearest screw to the end of the rafter, m; NAN: ample */
	double washer_diameter; /* under the rafter, of a through-bolt, m; NAN */
	/* tested allowables of one structural screw, N; NAN */
	double allowable_uplift, allowable_side;
	enum test_duration duration;
	double safety_factor;   /* of the test report; NAN */
	char report[TEXT_MAX];
	enum deck_kind deck;    /* that a deck mount was tested on */
	double deck_thickness;  /* m; NAN */
	/* what holds a seam clamp beside the clamp itself, N; NAN: not known */
	double seam_allowable, clip_allowable, clip_screw_allowable;
	int clips;              /* panel clips that share one clamp's lift */
	double steel_thickness, steel_strength; /* of the framing a sheet screw bites, m, Pa; NAN */
	int rows;           /* along the rafter, side by side; 0 and 1: one */
	double row_spacing; /* between them, across the rafter, m; NAN if one */
};

/* Local rules of snow, and what lies above and below the array. */
struct job_snow {
	double Ct;                 /* read from the book by the user; NAN: from the table of the edition */
	char Ct_source[TEXT_MAX];
	double local_factor;       /* roof snow at least this part of pg; NAN: no such rule */
	char local_rule[TEXT_MAX]; /* its name */
	double W2;                 /* winter wind parameter of 7-22; NAN: the largest */
	enum yes_no guards;        /* designed snow guards above the array on a slippery roof */
	enum yes_no lower_roof;    /* a lower roof below the eave */
	double lower_roof_width;   /* on plan, m; NAN */
	double upwind_length;      /* fetch of drifts at the array, m; NAN: longer side */
	double drift_load, drift_width; /* at the array, by the book: Pa on top of the balanced snow, m; NAN: computed */
	char drift_source[TEXT_MAX];
};

enum live_rule { LIVE_FORMULA, LIVE_IRC_TABLE };

struct job_live {
	enum live_rule rule;
	enum yes_no worker; /* hold rails and feet against 300 lb anywhere */
};

enum seismic_category {
	SEISMIC_UNKNOWN,
	SEISMIC_A,
	SEISMIC_B,
	SEISMIC_C,
	SEISMIC_D,
	SEISMIC_E,
	SEISMIC_F
};

struct job_earthquake {
	enum seismic_category category;
	double SDS;                 /* g; NAN: not given */
	double Ss, Fa;              /* give SDS in its place; NAN */
	double ap, Rp, Ip;          /* 7-10, 7-16 */
	double CAR, Rpo, Hf, Rmu;   /* 7-22; NAN: not given */
};

enum iebc { IEBC_2015, IEBC_2018, IEBC_2021, IEBC_2024 };

struct job_existing {
	double weight;         /* roof, ceiling, upper half of the walls, N; NAN */
	double added;          /* since construction, N */
	enum iebc code;
	enum yes_no irc_house; /* at most five units, built to the IRC */
};

/* What is made of what, for metals that touch or drip on each other. METAL_UNKNOWN: not given. */
enum metal {
	METAL_UNKNOWN,
	METAL_PLAIN_STEEL,
	METAL_GALVANIZED,
	METAL_ALUMINUM_ZINC,
	METAL_PAINTED_STEEL,
	METAL_STAINLESS,
	METAL_ALUMINUM,
	METAL_ZINC,
	METAL_COPPER,
	METAL_LEAD,
	METAL_COUNT
};

struct job_metals {
	enum metal flashing, foot, fastener;
	enum metal covering; /* of metal panels, gutters or valley linings below the array */
	enum metal pipe;     /* outdoors, jacket or bare */
	enum yes_no treated_wood; /* copper-treated blocks or deck below the feet */
};

#define PIPE_MAX 8
struct job_pipe {
	double diameter;           /* outside, bare, m */
	double insulated_diameter; /* over the insulation, m; NAN bare */
	int count;
	double temperature; /* hottest at the roof, K; NAN unknown */
	double at, up;      /* where it goes through, as collector.left and lower, m; NAN open */
	double run;         /* length of one such pipe, collector to store, m; NAN unknown */
	int storeys;               /* that it goes down through; 0: not given */
	double storey_height;      /* floor to floor, m */
	double offset;             /* its level ways together, m; NAN: none given */
};

/* A coefficient that the user read from the book: replaces both the remembered curve and the
   safe side. */
#define COEFFICIENT_MAX 24
struct job_coefficient {
	char zone[8]; /* 1, 1', 2, 2e, 2n, 2r, 3, 3e, 3r; or `down` for the positive value */
	double GCp;   /* signed */
	double area;  /* effective wind area it was read at, m2; used for this area and larger */
	char source[TEXT_MAX]; /* edition, figure, page */
};

/* Ground that speeds the wind up, as ASCE/SEI 7 26.8 describes it. */
enum terrain_shape { TERRAIN_UNKNOWN, TERRAIN_RIDGE, TERRAIN_ESCARPMENT, TERRAIN_HILL };
struct job_hill {
	enum terrain_shape shape; /* TERRAIN_UNKNOWN: no hill is described */
	double H, Lh;             /* height; from the crest to half of it, upwind, m */
	double x;                 /* from the crest, m; escarpment: minus on the slope */
	double z;                 /* above the ground at the house, m; NAN: mean roof height */
	enum yes_no isolated, prominent, upper_half; /* conditions of 26.8.1; unknown: met */
};

/* Something on the roof that no foot may stand on: a chimney, a vent, a skylight. */
#define OBSTACLE_MAX 16
struct job_obstacle {
	double x, y;          /* lower left corner, from left rake edge and eave edge up the slope, m */
	double width, height; /* along the eave and up the slope, m */
	double clearance;     /* that feet keep from it on all sides, m */
};

/* Where the user joins a rail. */
#define RAIL_JOINT_MAX 64
struct job_rail_joint {
	int line;  /* from 1, 0: all */
	double at; /* from the left end of the rail, m */
};

struct job {
	char title[TEXT_MAX];
	enum unit_system units;
	struct job_site site;
	struct job_building building;
	struct job_roof roof;
	struct job_framing framing;
	struct job_collector collector;
	struct job_rail rail;
	struct job_mount mount;
	struct job_fastener fastener;
	struct job_snow snow;
	struct job_live live;
	struct job_earthquake earthquake;
	struct job_existing existing;
	struct job_metals metals;
	struct job_hill hill;
	int pipes;
	struct job_pipe pipe[PIPE_MAX];
	int coefficients;
	struct job_coefficient coefficient[COEFFICIENT_MAX];
	int obstacles;
	struct job_obstacle obstacle[OBSTACLE_MAX];
	int rail_joints;
	struct job_rail_joint rail_joint[RAIL_JOINT_MAX];
	/* enum field_origin of each field; of a repeated element's field, the highest of its
	   rows */
	unsigned char origin[FIELD_COUNT];
};

/* True if the field was given in the file or by an override. */
bool job_given(const struct job *job, enum field_id id);

#endif
