/* SPDX-License-Identifier: MIT */
/* A target takes any bytes, hands them to one reader and must come back: no crash, no leak, no
   answer without its reason. Built in two ways: with run.c as a program that takes files, which is
   part of the tests; and by clang with the option `fuzz` as a libFuzzer program that makes up bytes
   of its own. */
#ifndef RP_TESTS_FUZZ_H
#define RP_TESTS_FUZZ_H

#include <stddef.h>
#include <stdint.h>

/* The name that libFuzzer calls. Always 0. */
int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

/* Ends the program with a word if what must hold does not. */
#define MUST(condition) must((condition), #condition)
void must(int holds, const char *what);

#endif
