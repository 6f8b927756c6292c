/* SPDX-License-Identifier: MIT */
/* Dimensioned values: parse what a person writes on site, print what a person reads there. The
   program keeps every value in coherent SI (m, N, Pa, rad, s, K); a unit is only met here, at
   the edge of a step (src/step) and in reports. Pure: no locale, no I/O, no allocation. */
#ifndef RP_QUANTITY_H
#define RP_QUANTITY_H

#include <stdbool.h>
#include <stddef.h>

/* Exact definitions; everything else is derived from them by the compiler. */
#define M_PER_IN 0.0254
#define M_PER_FT 0.3048   /* international foot */
#define N_PER_KGF 9.80665 /* standard gravity */
#define N_PER_LBF (0.45359237 * N_PER_KGF)
#define M_PER_MI 1609.344
#define RAD_PER_DEG (3.14159265358979323846 / 180.0)

enum dimension {
	DIM_NONE,           /* a bare number or a factor */
	DIM_LENGTH,         /* m */
	DIM_AREA,           /* m2 */
	DIM_VOLUME,         /* m3; also a section modulus */
	DIM_INERTIA,        /* m4 */
	DIM_ANGLE,          /* rad; a pitch such as 6:12 is an angle */
	DIM_SPEED,          /* m/s */
	DIM_FORCE,          /* N; weights too: lb and kg are taken as weights at standard gravity */
	DIM_LINE_LOAD,      /* N/m */
	DIM_PRESSURE,       /* Pa; stresses too */
	DIM_MOMENT,         /* N m */
	DIM_WEIGHT_DENSITY, /* N/m3 */
	DIM_TEMPERATURE,    /* K */
	DIM_COUNT
};

/* id, text as printed, dimension, SI value of one unit, SI value at zero of the unit
   (temperatures) */
#define UNITS(U)                                                                                   \
	U(NONE, "", NONE, 1.0, 0.0)                                                                \
	U(PERCENT, "%", NONE, 0.01, 0.0)                                                           \
	U(IN, "in", LENGTH, M_PER_IN, 0.0)                                                         \
	U(FT, "ft", LENGTH, M_PER_FT, 0.0)                                                         \
	U(MM, "mm", LENGTH, 0.001, 0.0)                                                            \
	U(CM, "cm", LENGTH, 0.01, 0.0)                                                             \
	U(M, "m", LENGTH, 1.0, 0.0)                                                                \
	U(IN2, "in2", AREA, M_PER_IN *M_PER_IN, 0.0)                                               \
	U(FT2, "ft2", AREA, M_PER_FT *M_PER_FT, 0.0)                                               \
	U(MM2, "mm2", AREA, 1e-6, 0.0)                                                             \
	U(M2, "m2", AREA, 1.0, 0.0)                                                                \
	U(IN3, "in3", VOLUME, M_PER_IN *M_PER_IN *M_PER_IN, 0.0)                                   \
	U(CM3, "cm3", VOLUME, 1e-6, 0.0)                                                           \
	U(MM3, "mm3", VOLUME, 1e-9, 0.0)                                                           \
	U(LITRE, "l", VOLUME, 1e-3, 0.0)                                                           \
	U(GAL, "gal", VOLUME, 231.0 * M_PER_IN * M_PER_IN * M_PER_IN, 0.0)                         \
	U(IN4, "in4", INERTIA, M_PER_IN *M_PER_IN *M_PER_IN *M_PER_IN, 0.0)                        \
	U(CM4, "cm4", INERTIA, 1e-8, 0.0)                                                          \
	U(MM4, "mm4", INERTIA, 1e-12, 0.0)                                                         \
	U(DEG, "deg", ANGLE, RAD_PER_DEG, 0.0)                                                     \
	U(RAD, "rad", ANGLE, 1.0, 0.0)                                                             \
	U(MPH, "mph", SPEED, M_PER_MI / 3600.0, 0.0)                                               \
	U(M_S, "m/s", SPEED, 1.0, 0.0)                                                             \
	U(KM_H, "km/h", SPEED, 1.0 / 3.6, 0.0)                                                     \
	U(LB, "lb", FORCE, N_PER_LBF, 0.0)                                                         \
	U(KIP, "kip", FORCE, 1000.0 * N_PER_LBF, 0.0)                                              \
	U(N, "N", FORCE, 1.0, 0.0)                                                                 \
	U(KN, "kN", FORCE, 1000.0, 0.0)                                                            \
	U(KG, "kg", FORCE, N_PER_KGF, 0.0)                                                         \
	U(PLF, "lb/ft", LINE_LOAD, N_PER_LBF / M_PER_FT, 0.0)                                      \
	U(LB_IN, "lb/in", LINE_LOAD, N_PER_LBF / M_PER_IN, 0.0)                                    \
	U(N_M, "N/m", LINE_LOAD, 1.0, 0.0)                                                         \
	U(N_MM, "N/mm", LINE_LOAD, 1000.0, 0.0)                                                    \
	U(KN_M, "kN/m", LINE_LOAD, 1000.0, 0.0)                                                    \
	U(PSF, "psf", PRESSURE, N_PER_LBF / (M_PER_FT * M_PER_FT), 0.0)                            \
	U(PSI, "psi", PRESSURE, N_PER_LBF / (M_PER_IN * M_PER_IN), 0.0)                            \
	U(KSI, "ksi", PRESSURE, 1000.0 * N_PER_LBF / (M_PER_IN * M_PER_IN), 0.0)                   \
	U(PA, "Pa", PRESSURE, 1.0, 0.0)                                                            \
	U(KPA, "kPa", PRESSURE, 1000.0, 0.0)                                                       \
	U(KN_M2, "kN/m2", PRESSURE, 1000.0, 0.0)                                                   \
	U(MPA, "MPa", PRESSURE, 1e6, 0.0)                                                          \
	U(N_MM2, "N/mm2", PRESSURE, 1e6, 0.0)                                                      \
	U(KG_M2, "kg/m2", PRESSURE, N_PER_KGF, 0.0)                                                \
	U(LB_IN_M, "lb in", MOMENT, N_PER_LBF *M_PER_IN, 0.0)                                      \
	U(LB_FT, "lb ft", MOMENT, N_PER_LBF *M_PER_FT, 0.0)                                        \
	U(NM, "N m", MOMENT, 1.0, 0.0)                                                             \
	U(KNM, "kN m", MOMENT, 1000.0, 0.0)                                                        \
	U(PCF, "pcf", WEIGHT_DENSITY, N_PER_LBF / (M_PER_FT * M_PER_FT * M_PER_FT), 0.0)           \
	U(KN_M3, "kN/m3", WEIGHT_DENSITY, 1000.0, 0.0)                                             \
	U(KG_M3, "kg/m3", WEIGHT_DENSITY, N_PER_KGF, 0.0)                                          \
	U(DEG_F, "degF", TEMPERATURE, 5.0 / 9.0, 459.67 * 5.0 / 9.0)                               \
	U(DEG_C, "degC", TEMPERATURE, 1.0, 273.15)                                                 \
	U(KELVIN, "K", TEMPERATURE, 1.0, 0.0)

enum unit {
#define U(id, text, dim, factor, zero) UNIT_##id,
	UNITS(U)
#undef U
		UNIT_COUNT
};

enum unit_system { SYSTEM_US, SYSTEM_SI, SYSTEM_COUNT };

enum dimension unit_dimension(enum unit u);
const char *unit_text(enum unit u);
/* Everything that a parser takes for a unit, i from 0 until NULL: each unit's own text, then
   other spellings. */
const char *unit_spelling(size_t i, enum unit *u);
double unit_to_si(double value, enum unit u);
double unit_from_si(double si, enum unit u);

/* The same for a unit that is known to be one, without a call. */
struct unit_scale {
	double factor, zero;
};
extern const struct unit_scale unit_scale[UNIT_COUNT];

static inline double unit_scale_to_si(double value, enum unit u)
{
	return value * unit_scale[u].factor + unit_scale[u].zero;
}

static inline double unit_scale_from_si(double si, enum unit u)
{
	/* a bare number minus 0 over 1 is itself */
	return u == UNIT_NONE ? si : (si - unit_scale[u].zero) / unit_scale[u].factor;
}
/* The unit of the other system that a report would use: UNIT_PSF in SI gives UNIT_KPA, UNIT_MM
   in US gives UNIT_IN. A unit that already belongs to the system comes back unchanged. */
enum unit unit_in_system(enum unit u, enum unit_system system);
/* Units that a parser accepts for a dimension, comma separated, for messages: "in, ft, mm, cm,
   m". */
const char *dimension_units(enum dimension d);

enum quantity_error {
	QUANTITY_OK,
	QUANTITY_EMPTY,      /* nothing but blanks */
	QUANTITY_NOT_NUMBER, /* no number where one is needed, or not finite */
	QUANTITY_NO_UNIT,    /* a number without a unit for a dimension that needs one */
	QUANTITY_WRONG_UNIT, /* a unit of another dimension, or one that is not known */
	QUANTITY_TRAILING,   /* something left over after the value */
	QUANTITY_BAD_PITCH   /* rise:run with a run of zero, or both zero */
};

/* Parses text as a value of dimension d into *si. Accepts: `30 psf`, `1.44 kPa`, `2.44 m`,
   `5/16 in`, `5-5/8 in`, `5 5/8 in`, `13 ft 6 in`, `13' 6"`, `13'-6"`, `-3 in`, `1.5e3 Pa`,
   `50 %`, `105 lb`, `48 kg`; angles also `6:12`, `26.6 deg` and, as a slope, `50 %`; and the
   spellings of unit_spelling. Blanks around and between are free. Decimal point only, no
   thousands marks, no hex, no inf or nan. At most 64 characters. Every number is read to the
   nearest double, in every locale. On error *si is left alone. */
enum quantity_error quantity_parse(const char *text, enum dimension d, double *si);
const char *quantity_error_text(enum quantity_error e);

/* Prints si in unit u with `decimals` places and the unit's text into buf (NUL-terminated
   always); returns buf. -0 is printed as 0. */
const char *quantity_print(char *buf, size_t size, double si, enum unit u, int decimals);
/* The number alone, rounded half away from zero at the printed digit; _up and _down round the
   magnitude outward or inward, so that a printed ratio never looks better, a printed capacity
   never larger, than it is. A value that a unit conversion has moved by a part in 1e12 is printed
   as if it had not (800 lb kept in N is not 799), except at 1, the limit of every ratio: 1 and one
   bit is printed up to 1.01. At most 12 decimals; a double has no more than 15 digits to print. */
const char *number_print(char *buf, size_t size, double value, int decimals);
const char *number_print_up(char *buf, size_t size, double value, int decimals);
const char *number_print_down(char *buf, size_t size, double value, int decimals);
/* A length as a tape reads it: US `13 ft 6-1/2 in` to the nearest 1/denominator in (below 2 ft:
   `18-1/4 in`), SI `4128 mm`. */
const char *tape_print(char *buf, size_t size, double si, enum unit_system system, int denominator);
/* A roof pitch as the trade says it: `6:12 (26.6 deg)`. */
const char *pitch_print(char *buf, size_t size, double theta);

/* Geometry against a printed limit: true when x <= limit but for the last bits that a unit
   conversion may cost (1e-9 relative), so that 0.254 m and 10 in meet a limit of 10 in alike.
   Never used to compare demand with capacity. */
bool at_most(double x, double limit);
bool at_least(double x, double limit);

/* Equal to the last bit; NAN equals everything. */
static inline bool same_value(double a, double b)
{
	return !(a < b) && !(a > b);
}

#endif
