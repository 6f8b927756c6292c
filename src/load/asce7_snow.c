/* SPDX-License-Identifier: MIT */
/* Snow cases of a roof plane with collectors on it: ASCE/SEI 7-10, 7-16 and 7-22 7.3 to 7.6, 7.10.
   Formulas stand in snow_steps.c.

   The array. It stops the slide: a slippery roof becomes an obstructed one, so with the array
   standing the whole plane takes the `all other` slope curve (safe side: below the array the snow
   still slides). The collectors are cold below and often rimed together: they carry the larger of
   the roof's own snow and that of a roof with Ct of open air on the `all other` curve (safe side;
   the commentary would let the glass itself have the slippery curve). No heat sent to the
   collectors is a design reduction.

   Unbalanced snow takes pg, not pf, on roofs with simple rafters no longer than 20 ft on plan. */
#include "load/asce7_snow.h"

#include <math.h>

#include "load/bound.h"
#include "load/load_steps.h"
#include "table/lookup_limit.h"
#include "table/lookup_snow.h"

static const char *exposure_key(enum roof_exposure e)
{
	switch (e) {
	case ROOF_FULLY_EXPOSED:
		return "fully-exposed";
	case ROOF_PARTIALLY_EXPOSED:
		return "partially-exposed";
	case ROOF_SHELTERED:
		return "sheltered";
	}
	return "";
}

static const char *thermal_key(enum roof_thermal t)
{
	switch (t) {
	case ROOF_HEATED:
		return "heated";
	case ROOF_COLD_VENTILATED:
		return "cold-ventilated";
	case ROOF_UNHEATED:
		return "unheated";
	case ROOF_FREEZER:
		return "freezer";
	case ROOF_GREENHOUSE:
		return "greenhouse";
	}
	return "";
}

static const char *risk_key(int category)
{
	static const char *const key[] = {"", "I", "II", "III", "IV"};

	return category >= 1 && category <= 4 ? key[category] : "";
}

/* The less sure of two: what rests on memory first, then one source, then a bound. */
static enum confidence less_sure(enum confidence a, enum confidence b)
{
	static const enum confidence order[] = {FROM_MEMORY, ONE_SOURCE, COMMON_PRACTICE, OUR_RULE,
						SAFE_SIDE};

	for (size_t i = 0; i < sizeof order / sizeof order[0]; i++)
		if (a == order[i] || b == order[i])
			return order[i];
	return a;
}

/* Rows of the tables that one roof needs. */
struct snow_rows {
	const struct snow_exposure_row *Ce;
	const struct snow_thermal_row *Ct, *open_air;
	const struct snow_risk_row *risk;
	const struct snow_slope_row *slippery, *other, *array;
};

static double thermal_factor(const struct snow_roof *roof, const struct snow_rows *rows)
{
	return roof->Ct > 0 ? roof->Ct : rows->Ct->Ct;
}

static bool find_rows(struct snow_rows *rows, enum edition edition, const struct snow_roof *roof)
{
	const char terrain[2] = {roof->terrain, '\0'};
	const struct snow_exposure_row *partial =
		snow_exposure_row(edition, terrain, "partially-exposed");

	rows->Ce = snow_exposure_row(edition, terrain, exposure_key(roof->exposure));
	rows->Ct = snow_thermal_row(edition, thermal_key(roof->thermal));
	rows->open_air = snow_thermal_row(edition, "unheated");
	rows->risk = snow_risk_row(edition, risk_key(roof->risk_category));
	if (rows->Ce == NULL || rows->Ct == NULL || rows->open_air == NULL || rows->risk == NULL)
		return false;
	/* Commentary C7.8 of 7-10 (from memory): rows of collectors take the wind off the roof. */
	if (roof->several_rows && partial != NULL && partial->Ce > rows->Ce->Ce)
		rows->Ce = partial;
	rows->slippery = snow_slope_row(edition, thermal_factor(roof, rows), true);
	rows->other = snow_slope_row(edition, thermal_factor(roof, rows), false);
	rows->array = snow_slope_row(edition, rows->open_air->Ct, false);
	return rows->slippery != NULL && rows->other != NULL && rows->array != NULL;
}

/* The slippery curve of a warm roof asks for insulation; whether it is ventilated is not known
   here, so the R of an unventilated roof is asked for. */
static bool slides(const struct snow_roof *roof, const struct snow_slope_row *slippery)
{
	return roof->slippery && roof->sliding_room &&
	       (isnan(slippery->R_unventilated) || roof->R >= slippery->R_unventilated);
}

static double slope_factor(const struct snow_slope_row *row, double theta, struct trace *trace)
{
	return STEP(trace, step_snow_slope_factor, theta, row->flat_until_deg * RAD_PER_DEG,
		    row->zero_at_deg * RAD_PER_DEG);
}

static double flat_roof(enum edition edition, double Ce, double Ct, double Is, double pg,
			struct trace *trace)
{
	if (edition == ASCE7_22)
		return STEP(trace, step_snow_flat_roof_7_22, Ce, Ct, pg);
	return STEP(trace, step_snow_flat_roof, Ce, Ct, Is, pg);
}

double asce7_drift_height(enum edition edition, double pg, double lu, double Is, double W2,
			  struct trace *trace)
{
	if (edition == ASCE7_22) {
		/* 0.65 is the largest W2 of the maps: the safe side where it is not given. */
		return STEP(trace, step_snow_drift_height_7_22, pg, lu, isnan(W2) ? 0.65 : W2,
			    STEP(trace, step_snow_density, pg));
	}
	if (edition == ASCE7_10)
		return STEP(trace, step_snow_drift_height_7_10, lu, pg);
	return STEP(trace, step_snow_drift_height, Is, lu, pg);
}

static void add(struct snow_loads *s, struct snow_load_case c)
{
	s->snow[s->cases++] = c;
}

/* Rain on the balanced snow of nearly flat roofs where little snow falls. */
static void add_rain(struct snow_loads *s, enum edition edition, const struct snow_roof *roof,
		     const struct snow_risk_row *risk, struct trace *trace)
{
	const double rain =
		edition == ASCE7_22
			? STEP(trace, step_snow_rain_7_22, roof->pg,
			       unit_to_si(risk->pm_max_psf, UNIT_PSF), roof->theta, roof->W)
			: STEP(trace, step_snow_rain, roof->pg, roof->theta, roof->W);

	if (rain > 0.0)
		add(s, (struct snow_load_case){.name = "balanced, rain on snow",
					       .roof = s->snow[0].roof + rain,
					       .array = s->snow[0].array + rain,
					       .clause = step_clause(&step_snow_rain, edition)});
}

/* 1/2:12 to 7:12. The clause prints 2.38 and 30.2 degrees beside them: the wider of the two is
   taken at each end. */
static bool unbalanced_slope(double theta)
{
	return at_least(theta, limit_of(LIMIT_UNBALANCED_SLOPE_LEAST)) &&
	       at_most(theta, limit_slope(LIMIT_UNBALANCED_RISE_MOST));
}

static void add_unbalanced(struct snow_loads *s, enum edition edition, const struct snow_roof *roof,
			   struct trace *trace)
{
	const char *clause = step_clause(&step_snow_leeward, edition);
	struct snow_load_case leeward = {.name = "unbalanced, leeward", .clause = clause};
	struct snow_load_case windward = {.name = "unbalanced, windward", .clause = clause};

	if (!roof->unbalanced || !unbalanced_slope(roof->theta))
		return;
	if (roof->simple_rafters && at_most(roof->W, limit_of(LIMIT_UNBALANCED_SIMPLE_W))) {
		leeward.roof = leeward.array = STEP(trace, step_snow_leeward, s->Is, roof->pg);
		s->leeward_before = leeward.roof;
	} else {
		s->hd = asce7_drift_height(edition, roof->pg, roof->W, s->Is, roof->W2, trace);
		leeward.roof = s->snow[0].roof;
		leeward.array = s->snow[0].array;
		leeward.surcharge =
			STEP(trace, step_snow_leeward_surcharge, s->hd, s->gamma, roof->theta);
		leeward.surcharge_length =
			STEP(trace, step_snow_leeward_length, s->hd, roof->theta);
		windward.roof = STEP(trace, step_snow_windward, leeward.roof);
		windward.array = STEP(trace, step_snow_windward, leeward.array);
		s->leeward_before = s->ps_before + leeward.surcharge;
	}
	add(s, leeward);
	add(s, windward);
}

static void add_minimum(struct snow_loads *s, enum edition edition, const struct snow_roof *roof,
			const struct snow_risk_row *risk, struct trace *trace)
{
	/* Below 15 degrees; at 15 no longer. */
	if (!roof->low_slope_form || at_least(roof->theta, limit_of(LIMIT_LOW_SLOPE_SNOW)))
		return;
	s->pm = edition == ASCE7_22 ? STEP(trace, step_snow_minimum_7_22, roof->pg,
					   unit_to_si(risk->pm_max_psf, UNIT_PSF))
				    : STEP(trace, step_snow_minimum, s->Is, roof->pg);
	add(s, (struct snow_load_case){.name = "minimum",
				       .roof = s->pm,
				       .array = s->pm,
				       .clause = step_clause(&step_snow_minimum, edition)});
}

/* Factors and the balanced case. */
static void add_balanced(struct snow_loads *s, enum edition edition, const struct snow_roof *roof,
			 const struct snow_rows *rows, struct trace *trace)
{
	const bool slid = slides(roof, rows->slippery);
	double pf_array, ps, ps_array;

	s->Ce = rows->Ce->Ce;
	s->Ct = thermal_factor(roof, rows);
	s->Is = isnan(rows->risk->Is) ? 1.0 : rows->risk->Is;
	s->gamma = STEP(trace, step_snow_density, roof->pg);
	s->pf = flat_roof(edition, s->Ce, s->Ct, s->Is, roof->pg, trace);
	s->Cs_roof = slope_factor(rows->other, roof->theta, trace);
	ps = STEP(trace, step_snow_sloped_roof, s->Cs_roof, s->pf);
	s->Cs_before = slid ? slope_factor(rows->slippery, roof->theta, trace) : s->Cs_roof;
	s->ps_before = slid ? STEP(trace, step_snow_sloped_roof, s->Cs_before, s->pf) : ps;
	s->obstructed = slid && s->Cs_before < s->Cs_roof;
	pf_array = flat_roof(edition, s->Ce, rows->open_air->Ct, s->Is, roof->pg, trace);
	s->Cs_array = slope_factor(rows->array, roof->theta, trace);
	ps_array = STEP(trace, step_snow_sloped_roof, s->Cs_array, pf_array);
	add(s, (struct snow_load_case){.name = "balanced",
				       .roof = ps,
				       .array = larger(ps, ps_array),
				       .clause = step_clause(&step_snow_sloped_roof, edition)});
	s->confidence = less_sure(less_sure(rows->Ce->status, rows->Ct->status),
				  less_sure(rows->other->status, rows->risk->status));
}

struct snow_loads asce7_snow_loads(enum edition edition, const struct snow_roof *roof,
				   struct trace *trace)
{
	const enum ground_snow level =
		edition == ASCE7_22 ? GROUND_SNOW_STRENGTH : GROUND_SNOW_SERVICE;
	struct snow_loads s = {.status = SNOW_OK};
	struct snow_rows rows;

	if (roof->level != level) {
		s.status = SNOW_WRONG_LEVEL;
		return s;
	}
	if (!find_rows(&rows, edition, roof)) {
		s.status = SNOW_NO_ROW;
		return s;
	}
	add_balanced(&s, edition, roof, &rows, trace);
	if (roof->pg > 0) { /* without snow nothing drifts: hd of Eq. 7.6-1 does not vanish with pg */
		add_rain(&s, edition, roof, rows.risk, trace);
		add_unbalanced(&s, edition, roof, trace);
		add_minimum(&s, edition, roof, rows.risk, trace);
	}
	if (!isnan(roof->floor))
		add(&s, (struct snow_load_case){.name = "the authority's minimum",
						.roof = roof->floor,
						.array = roof->floor,
						.clause = "local law"});
	return s;
}
