/* SPDX-License-Identifier: MIT */
/* Snow on a roof plane and on the collectors upon it: ASCE/SEI 7-10, 7-16 and 7-22 chapter 7. Loads
   are per plan area. Not here: drift at steps and projections (only its height hd), sliding onto
   lower roofs, ice dams, partial loading. */
#ifndef RP_LOAD_ASCE7_SNOW_H
#define RP_LOAD_ASCE7_SNOW_H

#include <stdbool.h>

#include "step/step.h"

enum roof_exposure { ROOF_FULLY_EXPOSED, ROOF_PARTIALLY_EXPOSED, ROOF_SHELTERED };
enum roof_thermal {
	ROOF_HEATED,
	ROOF_COLD_VENTILATED,
	ROOF_UNHEATED,
	ROOF_FREEZER,
	ROOF_GREENHOUSE
};
enum ground_snow { GROUND_SNOW_SERVICE, GROUND_SNOW_STRENGTH };

struct snow_roof {
	double pg; /* ground snow, Pa */
	enum ground_snow
		level;     /* what pg is: 7-10 and 7-16 want service level, 7-22 strength level */
	double Ct;         /* as read from the book; 0: from the table of the edition */
	int risk_category; /* 1 to 4 */
	char terrain;      /* 'B', 'C' or 'D' */
	enum roof_exposure exposure;
	enum roof_thermal thermal;
	double R;            /* h ft2 F/Btu; NAN unknown: a warm roof is then not called slippery */
	double theta;        /* rad */
	double W;            /* eave to ridge on plan, m */
	bool unbalanced;     /* gable or hip, so that wind can move snow over the ridge */
	bool low_slope_form; /* flat, monoslope, hip or gable: the minimum pm applies below 15
				degrees */
	bool simple_rafters; /* rafters span from eave to ridge on simple supports (7.6.1) */
	bool slippery;       /* the covering is, by 7.4 */
	bool sliding_room;   /* nothing on the bare roof holds the snow and all of it has room below
				the eave */
	bool several_rows; /* rows of collectors shelter the roof: taken as no better than partially
			      exposed (C7.8) */
	double floor;      /* the authority's least roof snow, Pa; NAN none */
	double W2;         /* winter wind parameter of 7-22; NAN: 0.65, the largest */
};

#define SNOW_LOAD_MAX 8 /* six at once; drift and slide at the array are added by the check */

struct snow_load_case {
	const char *name;        /* "balanced", "unbalanced, leeward" ... */
	double roof, array;      /* Pa on plan: bare roof with the array standing, collectors */
	double surcharge;        /* Pa, on top of both, from the ridge down; 0 none */
	double surcharge_length; /* from the ridge, on plan, m */
	const char *clause;
	double beside;           /* Pa, drift on the roof next to the array, falling to 0; 0 none */
	double beside_length;    /* from its edge, on plan, m */
	double strip;            /* Pa, snow slid off onto the roof at the foot of each row; 0 none */
	double strip_width;      /* on plan, m */
};

enum snow_status {
	SNOW_OK,
	SNOW_WRONG_LEVEL, /* service and strength level would be mixed */
	SNOW_NO_ROW       /* a table of the edition has no row for this roof */
};

struct snow_loads {
	enum snow_status status;
	double Ce, Ct, Is; /* Is is 1 in 7-22: its maps are per risk category */
	double pf;         /* Pa */
	double pm;         /* Pa; 0 where it does not apply */
	double gamma, hd;  /* N/m3, m (of the unbalanced case) */
	double Cs_before;  /* bare roof without the array */
	double Cs_roof;    /* roof with the array, which holds the snow: the `all other` curve */
	double Cs_array;   /* of the collectors: cold, `all other` (safe side) */
	bool obstructed;   /* the array costs a slippery roof its lower curve */
	double ps_before;  /* Pa: balanced snow before the array */
	double leeward_before; /* Pa: leeward unbalanced snow before the array, surcharge included;
				  0 none */
	int cases;
	struct snow_load_case snow[SNOW_LOAD_MAX]; /* the first is always the balanced one */
	enum confidence confidence;                /* the least sure of the factors used */
};

/* Every load case of the plane, balanced first. Lr is never added to any of them. */
struct snow_loads asce7_snow_loads(enum edition edition, const struct snow_roof *roof,
				   struct trace *trace);

/* Drift height for a fetch lu: 7-10 and 7-16 no less than that of 20 ft (safe side). W2 only in
   7-22. Not taken: the relief of 7-16 for fetches below 20 ft, hd not above sqrt(Is pg lu/(4 gamma)), is
   only remembered, and would make drifts smaller. */
double asce7_drift_height(enum edition edition, double pg, double lu, double Is, double W2,
			  struct trace *trace);

#endif
