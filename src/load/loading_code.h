/* SPDX-License-Identifier: MIT */
/* A loading code: the loads of one standard behind one set of functions. A job names its code;
   nothing else in the program asks which one it is. The functions take the code's edition first, so
   that editions which agree share them. */
#ifndef RP_LOAD_LOADING_CODE_H
#define RP_LOAD_LOADING_CODE_H

#include "load/asce7_combination.h"
#include "load/asce7_pressure.h"
#include "load/asce7_snow.h"
#include "load/asce7_solar.h"
#include "load/asce7_wind.h"

struct loading_code {
	enum edition edition;
	const char *key;              /* as a job names it: "asce7-16" */
	const char *name;             /* "ASCE/SEI 7-16" */
	enum ground_snow ground_snow; /* level of pg that its maps give and its factors expect */
	bool solar_provision;         /* has a rule for collectors parallel to the roof */
	struct wind_velocity (*wind_velocity)(enum edition, const struct wind_site *,
					      struct trace *);
	struct wind_coefficient (*wind_coefficient)(enum edition, const struct wind_place *,
						    enum wind_curve, struct trace *);
	double (*internal_coefficient)(enum edition, enum wind_enclosure);
	struct wind_pressure (*roof_pressure)(enum edition, const struct wind_velocity *,
					      double GCp, double GCpi, bool least, struct trace *);
	struct wind_pressure (*array_pressure)(enum edition, const struct wind_velocity *,
					       const struct array_wind *, struct trace *);
	struct snow_loads (*snow_loads)(enum edition, const struct snow_roof *, struct trace *);
	int (*combinations)(enum edition, enum combination_method, bool earthquake,
			    struct load_combination out[COMBINATION_MAX]);
};

/* NULL for an edition that is not a code (EDITION_ANY). */
const struct loading_code *loading_code_of(enum edition edition);
/* NULL for a key that is not known. */
const struct loading_code *loading_code_find(const char *key);

#endif
