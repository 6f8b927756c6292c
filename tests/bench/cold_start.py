#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Time from start to end of a whole process: `rafterproof check` on a job, with the notes of its covering (the library is
found by RAFTERPROOF_DATA or above the program) and without; xmllint validating the same file against the job schema; a C
program that does nothing. Runs are taken in turns; the medians count: by the clock on the wall, and of processor time,
which what else the machine does hardly moves.

cold_start.py PROGRAM EMPTY SCHEMA JOB [ROUNDS]"""
import resource
import statistics
import subprocess
import sys
import time


def spent_by_children():
    usage = resource.getrusage(resource.RUSAGE_CHILDREN)
    return usage.ru_utime + usage.ru_stime


def seconds(command):
    start, before = time.perf_counter(), spent_by_children()
    status = subprocess.run(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=False).returncode
    wall, cpu = time.perf_counter() - start, spent_by_children() - before
    if status > 2:
        sys.exit(f"{command}: exit status {status}")
    return wall, cpu


def main():
    program, empty, schema, job = sys.argv[1:5]
    rounds = int(sys.argv[5]) if len(sys.argv) > 5 else 50
    commands = {
        "check": [program, "check", job],
        "check, no notes": [program, "check", job, "--notes", "none"],
        "xmllint": ["xmllint", "--noout", "--relaxng", schema, job],
        "empty": [empty],
    }
    runs = {name: [] for name in commands}
    for _ in range(rounds):
        for name, command in commands.items():
            runs[name].append(seconds(command))
    median = {name: [statistics.median(column) for column in zip(*spent)] for name, spent in runs.items()}
    for name, (wall, cpu) in median.items():
        print(f"{name:16} {wall * 1e3:7.2f} ms, {cpu * 1e3:7.2f} ms of processor (medians of {rounds})")
    for name, other in ("check", "xmllint"), ("check, no notes", "xmllint"), ("check", "empty"):
        wall, cpu = (a / b for a, b in zip(median[name], median[other]))
        print(f"{name} / {other}: {wall:.2f}, {cpu:.2f} of processor")


main()
