/* SPDX-License-Identifier: MIT */
/* US units for tests of this room: values as the books print them, to SI and back. */
#ifndef RP_TESTS_RESIST_US_H
#define RP_TESTS_RESIST_US_H

#include "quantity/quantity.h"

#define IN(x) ((x) * M_PER_IN)
#define FT(x) ((x) * M_PER_FT)
#define LB(x) ((x) * N_PER_LBF)
#define PSI(x) ((x) * N_PER_LBF / (M_PER_IN * M_PER_IN))
#define PSF(x) ((x) * N_PER_LBF / (M_PER_FT * M_PER_FT))
#define PLF(x) ((x) * N_PER_LBF / M_PER_FT)
#define LB_IN(x) ((x) * N_PER_LBF / M_PER_IN)
#define DEG(x) ((x) * RAD_PER_DEG)
#define DEGF(x) (((x) + 459.67) * 5.0 / 9.0)

#define TO_IN(x) ((x) / M_PER_IN)
#define TO_LB(x) ((x) / N_PER_LBF)
#define TO_PSI(x) ((x) / PSI(1.0))
#define TO_LB_PER_IN(x) ((x) / LB_IN(1.0))
#define TO_INCH_POUND(x) ((x) / (N_PER_LBF * M_PER_IN))

#endif
