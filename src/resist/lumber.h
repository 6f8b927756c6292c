/* SPDX-License-Identifier: MIT */
/* Design values of sawn lumber 2 to 4 in thick, edgewise, visually graded: reference values of NDS
   Supplement Tables 4A and 4B, adjusted by NDS-2018 Table 4.3.1. SI throughout. */
#ifndef RP_RESIST_LUMBER_H
#define RP_RESIST_LUMBER_H

#include <stdbool.h>

#include "step/step.h"

struct lumber_piece {
	const char *species, *grade; /* as the published table prints them */
	double b, d;                 /* breadth, depth, m */
	double G;                    /* assigned gravity for fastenings, NDS Table 12.3.3A */
	double Fb, Fv, Fc_perp, E, Emin; /* reference, Pa */
	double CF;                   /* size factor of Fb; 1 in Table 4B, which has it inside */
	enum confidence confidence;
	const char *source, *note;
};

/* False when species, grade or size is not tabulated ("unknown" never is): no guess is made here.
   Names as tabulated or as the yard says them ("SPF", "No.2"). */
bool lumber_piece_find(const char *species, const char *grade, double b, double d,
                       struct lumber_piece *out);

struct lumber_service {
	bool wet;           /* above 19 % moisture in service */
	bool incised;       /* for preservative treatment */
	bool repetitive;    /* three or more, at most 24 in apart, sheathed (NDS 4.3.9) */
	double temperature; /* sustained, of the wood, K; NAN: not above 100 F */
};

struct lumber_values {
	double CD, CF, Cr;
	double CM_b, CM_v, CM_cperp, CM_E; /* wet service */
	double Ct, Ct_E;                   /* temperature: strengths, stiffness */
	double Ci, Ci_E;                   /* incising */
	double Fb_star;                    /* F*b: all factors but CL (and Cfu), Pa */
	double Fv_prime, Fc_perp_prime, E_prime, Emin_prime; /* Pa; Fc_perp without CD and Cb */
};

/* False above 150 F, which NDS does not cover. */
bool lumber_adjust(struct trace *trace, const struct lumber_piece *piece, double CD,
                   const struct lumber_service *service, struct lumber_values *out);
/* F'b = F*b CL, Pa. */
double lumber_bending(struct trace *trace, double Fb_star, double CL);

#endif
