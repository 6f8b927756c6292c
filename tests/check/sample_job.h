/* SPDX-License-Identifier: MIT */
/* A job for tests: two flat-plate collectors on laminated shingles, sawn rafters, no snow. Values in SI by exact units. */
#ifndef RP_TESTS_SAMPLE_JOB_H
#define RP_TESTS_SAMPLE_JOB_H

#include "job/job.h"

#define IN(x) ((x) * M_PER_IN)
#define FT(x) ((x) * M_PER_FT)
#define LB(x) ((x) * N_PER_LBF)
#define PSF(x) ((x) * N_PER_LBF / (M_PER_FT * M_PER_FT))
#define MPH(x) ((x) * M_PER_MI / 3600)

struct job sample_job(void);

#endif
