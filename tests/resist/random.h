/* SPDX-License-Identifier: MIT */
/* Numbers that look random and are the same in every run. xorshift64*: Marsaglia, "Xorshift RNGs",
   2003; Vigna, 2016. */
#ifndef RP_TESTS_RESIST_RANDOM_H
#define RP_TESTS_RESIST_RANDOM_H

#include <stdint.h>

static inline double random_between(uint64_t *state, double low, double high)
{
	uint64_t x = *state;

	x ^= x >> 12;
	x ^= x << 25;
	x ^= x >> 27;
	*state = x;
	x *= UINT64_C(0x2545F4914F6CDD1D);
	return low + (high - low) * ((double)(x >> 11) / 9007199254740992.0);
}

#endif
