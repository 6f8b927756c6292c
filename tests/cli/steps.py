#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Every formula from the command line: described, computed with ordinary, zero and wild values, and never a crash.

steps.py PROGRAM

A formula may refuse values that it does not cover (status 3 with a message); it may not end by a signal or print a
number that is none. The same values in the other system of units must give the same result."""
import json
import os
import subprocess
import sys

# One unit of each dimension in both systems, and what the first is in the second (exact definitions).
OTHER = {"in": ("mm", 25.4), "ft": ("m", 0.3048), "in2": ("mm2", 645.16), "ft2": ("m2", 0.09290304),
         "psf": ("Pa", 0.45359237 * 9.80665 / 0.3048 ** 2), "psi": ("Pa", 0.45359237 * 9.80665 / 0.0254 ** 2),
         "lb": ("N", 0.45359237 * 9.80665), "mph": ("m/s", 0.44704)}
VALUES = ("1", "0.5", "2.5", "0", "-1", "30", "1e6")


def run(program, *words):
    return subprocess.run([program, "step", *words, "--format", "json"], capture_output=True, text=True, check=False,
                          env={**os.environ, "LC_ALL": "C"})


def number(document):
    return document["computed"]["value"]


def faults_of(program, step):
    units = [(i["symbol"], i["unit"]) for i in step["inputs"]]
    described = run(program, step["name"])
    if described.returncode != 0:
        yield "cannot be described"
    if not units:
        return
    accepted = 0
    for value in VALUES:
        # Not all the same, or every difference would be nothing.
        values = [float(value) * (1.0 + 0.07 * i) for i in range(len(units))]
        done = run(program, step["name"], *[f"{symbol}={values[i]!r}{' ' if unit else ''}{unit}"
                                            for i, (symbol, unit) in enumerate(units)])
        if done.returncode not in (0, 3) or "Traceback" in done.stderr:
            yield f"status {done.returncode} for {value}: {done.stderr[-200:]}"
        if done.returncode != 0:
            continue
        accepted += 1
        changed = [OTHER[unit] if unit in OTHER else (unit, 1.0) for _, unit in units]
        again = run(program, step["name"], *[f"{units[i][0]}={values[i] * factor!r}{' ' if unit else ''}{unit}"
                                             for i, (unit, factor) in enumerate(changed)])
        here, there = number(json.loads(done.stdout)), number(json.loads(again.stdout))
        if abs(here - there) > 1e-6 * max(abs(here), 1e-3):
            yield f"{value}: {here} and {there} in other units"
    if accepted == 0:
        yield "refuses every value"


def main():
    program = os.path.abspath(sys.argv[1])
    steps = json.loads(run(program).stdout)["steps"]
    faults = [f"{step['name']}: {fault}" for step in steps for fault in faults_of(program, step)]
    names = [step["name"] for step in steps]
    faults += [f"{name}: two steps of one name" for name in sorted(set(names)) if names.count(name) > 1]
    if len(steps) < 100:
        faults.append(f"only {len(steps)} steps")
    print("\n".join(faults))
    sys.exit(1 if faults else 0)


main()
