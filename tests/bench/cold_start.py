#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Time from start to end of a whole process: `rafterproof check` on a job, xmllint validating the same file against the
job schema, and a C program that does nothing. Runs are taken in turns; the median counts.

cold_start.py PROGRAM EMPTY SCHEMA JOB [ROUNDS]"""
import statistics
import subprocess
import sys
import time


def seconds(command):
    start = time.perf_counter()
    status = subprocess.run(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=False).returncode
    spent = time.perf_counter() - start
    if status > 2:
        sys.exit(f"{command}: exit status {status}")
    return spent


def main():
    program, empty, schema, job = sys.argv[1:5]
    rounds = int(sys.argv[5]) if len(sys.argv) > 5 else 50
    commands = {
        "rafterproof check": [program, "check", job, "--notes", "none"],
        "xmllint --relaxng": ["xmllint", "--noout", "--relaxng", schema, job],
        "empty program": [empty],
    }
    times = {name: [] for name in commands}
    for _ in range(rounds):
        for name, command in commands.items():
            times[name].append(seconds(command))
    median = {name: statistics.median(spent) for name, spent in times.items()}
    for name, value in median.items():
        print(f"{name:20} {value * 1e3:7.2f} ms (median of {rounds})")
    print(f"check/xmllint {median['rafterproof check'] / median['xmllint --relaxng']:.2f}, "
          f"check/empty {median['rafterproof check'] / median['empty program']:.2f}")


main()
