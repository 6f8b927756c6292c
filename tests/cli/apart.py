#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""The program that draws stands apart: rafterproof starts without its libraries, finds it beside itself, where both
were moved together, and says so when it is missing.

apart.py PROGRAM DRAWER JOB BIN_TO_LIBEXEC"""
import os
import pathlib
import shutil
import subprocess
import sys
import tempfile

program, drawer, job, way = sys.argv[1:5]
faults = []


def check(holds, what):
    if not holds:
        faults.append(what)


def draw(executable, output):
    return subprocess.run([executable, "draw", job, "-o", output], capture_output=True, text=True, check=False)


def libraries(executable):
    env = dict(os.environ, LD_TRACE_LOADED_OBJECTS="1")
    return subprocess.run([executable], env=env, capture_output=True, text=True, check=False).stdout


check("libcairo" not in libraries(program) and "libpango" not in libraries(program), "check loads what only drawing needs")
check("libcairo" in libraries(drawer), "the program that draws does not show its libraries: the line above proves nothing")
with tempfile.TemporaryDirectory() as name:
    room = pathlib.Path(name)
    here = draw(program, room / "here.svg")
    check(here.returncode <= 2 and (room / "here.svg").exists(), f"beside itself: {here.returncode} {here.stderr}")

    moved = room / "moved" / "bin" / "rafterproof"
    moved.parent.mkdir(parents=True)
    shutil.copy(program, moved)
    # where it was configured to be installed, another one may stand
    alone = draw(moved, room / "alone.svg")
    if alone.returncode > 2:
        check(alone.returncode == 4, f"without the other: exit status {alone.returncode}")
        check("rafterproof-draw" in alone.stderr, f"without the other: {alone.stderr!r}")
        check(not (room / "alone.svg").exists(), "without the other: something was written")

    libexec = moved.parent / way
    libexec.mkdir(parents=True)
    shutil.copy(drawer, libexec / "rafterproof-draw")
    both = draw(moved, room / "both.svg")
    check(both.returncode == here.returncode, f"moved: {both.returncode} {both.stderr}")
    check(both.stdout.replace("both", "here") == here.stdout, "moved: another report")
    check((room / "both.svg").read_bytes() == (room / "here.svg").read_bytes(), "moved: another drawing")

for fault in faults:
    print(fault)
sys.exit(1 if faults else 0)
