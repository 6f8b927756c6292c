/* SPDX-License-Identifier: MIT */
/* One job: everything the program is told about a house, its roof and what will stand on it. Plain data in SI (m, N, Pa,
   rad); the field table (field.h) says how each member is written in a job file and measured on site. A member whose
   field is optional and absent holds NAN (quantities), 0 (counts) or the enum's own UNKNOWN/NONE; ask `job_given`. */
#ifndef RP_JOB_H
#define RP_JOB_H

#include <stdbool.h>

#include "job/field.h"
#include "quantity/quantity.h"
#include "step/step.h"

enum yes_no { ANSWER_UNKNOWN, ANSWER_NO, ANSWER_YES };

enum design_method { METHOD_ASD, METHOD_LRFD };
enum risk_category { RISK_I, RISK_II, RISK_III, RISK_IV };
enum exposure { EXPOSURE_B, EXPOSURE_C, EXPOSURE_D };
enum topography { TOPOGRAPHY_UNSURE, TOPOGRAPHY_NONE, TOPOGRAPHY_DESCRIBED }; /* described: Kzt is given */
enum snow_level { SNOW_SERVICE, SNOW_STRENGTH };
enum snow_exposure { SNOW_FULLY_EXPOSED, SNOW_PARTIALLY_EXPOSED, SNOW_SHELTERED };
enum thermal { THERMAL_HEATED, THERMAL_COLD_VENTILATED, THERMAL_UNHEATED, THERMAL_FREEZER, THERMAL_GREENHOUSE };

struct job_site {
	enum edition code;
	enum design_method method;
	enum risk_category risk_category;
	double wind_speed;       /* V, basic, strength level, m/s */
	enum exposure exposure;
	enum topography topography;
	double Kzt;              /* 1 unless described */
	double elevation;        /* above sea level, m; NAN: Ke = 1 */
	double ground_snow;      /* pg, Pa */
	enum snow_level ground_snow_level;
	double roof_snow_minimum; /* the authority's own floor for roof snow, Pa on plan; NAN: none */
	enum snow_exposure snow_exposure;
	enum thermal thermal;
	double roof_R;           /* thermal resistance, h ft2 F/Btu (US number); NAN unknown */
};

enum roof_form { FORM_FLAT, FORM_GABLE, FORM_HIP, FORM_MONOSLOPE, FORM_OTHER };
enum enclosure { ENCLOSED, PARTIALLY_ENCLOSED, OPEN_BUILDING };

struct job_building {
	enum roof_form form;
	double length;       /* plan, parallel to the ridge, wall to wall, m */
	double width;        /* plan, across the ridge, wall to wall, m */
	double mean_roof_height; /* h, m */
	double eave_overhang;    /* horizontal, m */
	double rake_overhang;    /* horizontal, m */
	double parapet;      /* height above the roof, m */
	enum enclosure enclosure;
	enum yes_no sliding_room; /* room below the eave for all the snow to slide to, nothing in its way */
};

enum deck_kind { DECK_UNKNOWN, DECK_PLYWOOD, DECK_OSB, DECK_BOARDS, DECK_SPACED_BOARDS, DECK_OTHER };
enum ceiling { CEILING_NONE, CEILING_FLEXIBLE, CEILING_PLASTER };
enum condition { CONDITION_UNSEEN, CONDITION_SOUND, CONDITION_DAMAGED };

#define COVERING_KEY_MAX 48
#define TEXT_MAX 160

struct job_roof {
	double pitch;            /* theta, rad */
	char covering[COVERING_KEY_MAX]; /* key of the covering library: asphalt-laminated */
	double course_exposure;  /* E, m along the slope; NAN for coverings without courses */
	double piece_length;     /* L of shingle, shake, slate, tile, m; NAN unknown */
	double first_butt;       /* from the eave edge up the slope to the first butt line above it, m; NAN: 0 */
	double seam_spacing;     /* of a standing seam or rib roof, m; NAN */
	int layers;              /* of covering; 0 unknown */
	double built_up;         /* covering and underlayment from deck to the underside of the foot, measured, m; NAN */
	enum deck_kind deck;
	double deck_thickness;   /* m; NAN unknown */
	double dead_load;        /* roof build-up, Pa of slope */
	enum ceiling ceiling;    /* fixed to the rafters' underside */
	enum condition condition; /* rot, splits, sag, earlier cuts */
	double woven_valley;     /* level distance along the eave from the array to the nearest valley, m; NAN: no valley near */
	enum yes_no ice_barrier; /* local table asks for one */
	double wall_thickness;   /* for the ice barrier, m; NAN */
};

enum framing_kind { FRAMING_UNKNOWN, FRAMING_RAFTER, FRAMING_TRUSS, FRAMING_I_JOIST, FRAMING_PANEL, FRAMING_STEEL };
enum ridge_kind { RIDGE_UNKNOWN, RIDGE_BOARD, RIDGE_BEAM, RIDGE_WALL };

#define RAFTER_MAX 128

struct job_framing {
	enum framing_kind kind;
	double breadth, depth;   /* b, d as measured or dressed, m */
	char size[16];           /* as written: 2x6 */
	char species[48];        /* species group of NDS, or "unknown" */
	char grade[32];          /* No.2, or "unknown" */
	double spacing;          /* centre to centre, m */
	double first;            /* first centre line from the left rake edge, m */
	double span;             /* horizontal, between supports, m */
	enum ridge_kind ridge;
	enum yes_no ties;        /* ceiling joists or rafter ties in the lower third */
	enum yes_no wet;         /* moisture above 19 % in service */
	enum yes_no incised;     /* incised for treatment */
	int measured;            /* number of measured centre lines; 0: use first and spacing */
	double at[RAFTER_MAX];   /* measured centre lines from the left rake edge, rising, m */
};

/* Collectors of one job: columns times rows. */
#define COLLECTOR_MAX 64

enum collector_kind { COLLECTOR_FLAT_PLATE, COLLECTOR_EVACUATED_TUBE, COLLECTOR_PV };
enum orientation { PORTRAIT, LANDSCAPE }; /* portrait: long side up the slope */
enum collector_fluid { FLUID_NONE, FLUID_WATER, FLUID_GLYCOL };

struct job_collector {
	enum collector_kind kind;
	double length, width, depth; /* long side, short side, box depth, m */
	double dry_weight;       /* one collector, N */
	double filled_weight;    /* N; NAN: dry weight plus fluid_volume of fluid */
	double fluid_volume;     /* one collector, m3; NAN */
	enum collector_fluid fluid;
	enum orientation orientation;
	int columns, rows;       /* along the eave, up the slope */
	double column_gap, row_gap; /* clear, m */
	double left, lower;      /* lower left corner from the left rake edge and the eave edge (on the slope), m */
	double clearance;        /* from the roof surface to the underside, m */
	double tilt;             /* against the roof plane, rad; 0 is flush */
	double rated_uplift, rated_down; /* maker's rated pressures, Pa, allowable; NAN unknown */
	double hardware_weight;  /* rails and feet, Pa of collector area; NAN: default of the field table */
};

enum support_kind { SUPPORT_RAILS, SUPPORT_DIRECT_FEET };

struct job_rail {
	enum support_kind kind;
	double lower_inset, upper_inset; /* from the collector's lower and upper edge to the rail lines, m */
	double section_modulus;  /* S, m3; NAN unknown: the rail is not rated */
	double inertia;          /* I, m4; NAN */
	char alloy[24];          /* aluminium alloy and temper, or empty */
	double allowable_moment; /* maker's tested or calculated, N m; NAN */
	double max_cantilever;   /* m; NAN: a third of the span (common practice) */
	double deflection_limit; /* span / this; NAN: not limited */
};

/* What lies between the foot's base plate and the rafter.
   on wood: nothing, the plate bears on the rafter or on a block fixed to it; on deck: the covering is cut out and the plate
   bears on the deck; over layers: deck and covering both lie between; rigid post: a post or block fills the space and is
   itself fixed to the rafter. Deck and layers count as a gap in the yield equations; a rigid post does not. */
enum seat { SEAT_UNKNOWN, SEAT_ON_WOOD, SEAT_ON_DECK, SEAT_OVER_LAYERS, SEAT_RIGID_POST };

struct job_mount {
	enum seat seat;
	double height;           /* from the base plate to the line of the rail, m */
	double plate_thickness;  /* t of the steel plate the screw passes, m */
	double lever_arm;        /* from the screw to the compressed edge of the base, up or down the slope, m; NAN */
	double spacing;          /* wanted, along the eave, m; NAN: the largest that holds */
	double max_spacing;      /* maker's limit, m; NAN */
	enum yes_no stagger;     /* upper line of feet one rafter aside of the lower */
	double allowable_uplift, allowable_down, allowable_slope; /* tested allowables of the foot, N; NAN: foot not rated */
	char report[TEXT_MAX];   /* test report the allowables come from */
};

enum fastener_kind { FASTENER_LAG_SCREW };

struct job_fastener {
	enum fastener_kind kind;
	double diameter;         /* nominal D, m */
	double length;           /* L under the head, m */
	double thread_length;    /* T by the maker; NAN: Appendix L minimum */
	int count;               /* screws per foot */
	double spacing;          /* between them along the grain, m; NAN if one */
	double drilling_tolerance; /* how far a hole may miss the rafter's centre, m */
	double end_distance;     /* from the nearest screw to the end of the rafter, m; NAN: ample */
};

#define PIPE_MAX 8
struct job_pipe {
	double diameter;         /* outside, bare, m */
	double insulated_diameter; /* over the insulation, m; NAN bare */
	int count;
	double temperature;      /* hottest at the roof, K; NAN unknown */
	double at, up;           /* where it goes through, from the left rake edge and up the slope, m; NAN open */
};

/* A coefficient that the user read from the book: replaces both the remembered curve and the safe side. */
#define COEFFICIENT_MAX 24
struct job_coefficient {
	char zone[8];            /* 1, 1', 2, 2e, 2n, 2r, 3, 3e, 3r; or `down` for the positive value */
	double GCp;              /* signed */
	double area;             /* effective wind area it was read at, m2; used for this area and larger */
	char source[TEXT_MAX];   /* edition, figure, page */
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
	int pipes;
	struct job_pipe pipe[PIPE_MAX];
	int coefficients;
	struct job_coefficient coefficient[COEFFICIENT_MAX];
	unsigned char origin[FIELD_COUNT]; /* enum field_origin of each field of the single elements */
};

/* True if the field was given in the file or by an override. */
bool job_given(const struct job *job, enum field_id id);

#endif
