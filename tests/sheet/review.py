#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""A reviewer with the calculation sheet: takes every line of it and recomputes it alone.

review.py PROGRAM JOB...

Each line that the sheets of a job print is run through `rafterproof step` with the inputs of that line, and must give the
line's value; and each must stand on the printed sheet with its title and its result."""
import json
import os
import re
import subprocess
import sys
import tempfile

from told import faults, finish


def run(*words):
    return subprocess.run(words, capture_output=True, text=True, check=False)


def flat(text):
    return re.sub(r"\s+", "", text)


def recompute(program, step):
    values = [f"{one['symbol']}={one['value']!r}{' ' + one['unit'] if one['unit'] else ''}" for one in step["inputs"]]
    done = run(program, "step", step["name"], *values, "--format", "json")
    if done.returncode != 0:
        return None, f"{values}: {done.stderr.strip()}"
    return json.loads(done.stdout)["computed"], None


def review(program, job):
    done = run(program, "check", job, "--format", "json")
    lines = 0
    with tempfile.TemporaryDirectory() as folder:
        out = os.path.join(folder, "sheets.pdf")
        run(program, "sheets", job, "-o", out, "--notes", "none")
        printed = flat(run("pdftotext", "-layout", out, "-").stdout)
    for section in json.loads(done.stdout)["calculation"]:
        for step in section["steps"]:
            lines += 1
            where = f"{os.path.basename(job)}: {section['section']}: {step['name']}"
            again, why = recompute(program, step)
            if why:
                faults.append(f"{where}: cannot be recomputed: {why}")
                continue
            if again["unit"] != step["unit"] or abs(again["value"] - step["value"]) > 2e-9 * abs(step["value"]):
                faults.append(f"{where}: {step['value']} {step['unit']} on the sheet, {again['value']} {again['unit']} alone")
            title = step["title"][:1].upper() + step["title"][1:]
            if flat(title)[:24] not in printed:
                faults.append(f"{where}: `{title}` is not on the printed sheet")
    if lines < 20:
        faults.append(f"{job}: only {lines} lines")


def main():
    for job in sys.argv[2:]:
        review(sys.argv[1], job)
    finish()


if __name__ == "__main__":
    main()
