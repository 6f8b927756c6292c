#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Every example as JSON, in both systems, against the schema; and the same answer in both.

examples_schema.py SCHEMA PROGRAM EXAMPLES"""
import json
import os
import subprocess
import sys

import jsonschema


def check(program, path, units):
    done = subprocess.run([program, "check", path, "--format", "json", "--units", units], stdout=subprocess.PIPE,
                          check=False)
    return done.returncode, json.loads(done.stdout)


def main():
    with open(sys.argv[1], encoding="utf-8") as file:
        validator = jsonschema.Draft202012Validator(json.load(file))
    program, folder = os.path.abspath(sys.argv[2]), sys.argv[3]
    faults = []
    names = sorted(name for name in os.listdir(folder) if name.endswith(".xml"))
    for name in names:
        answers = {}
        for units in ("us", "si"):
            status, result = check(program, os.path.join(folder, name), units)
            faults += [f"{name} {units}: {list(e.absolute_path)}: {e.message[:200]}"
                       for e in validator.iter_errors(result)]
            wanted = ["holds", "does-not-hold", "needs-an-engineer"].index(result["verdict"])
            if status != wanted or result["units"] != units:
                faults.append(f"{name} {units}: exit status {status} beside {result['verdict']}")
            answers[units] = (result["verdict"], [p["ratio"] for p in result["passes"]])
        if answers["us"] != answers["si"]:
            faults.append(f"{name}: {answers}")
    print("\n".join(faults[:40]))
    sys.exit(1 if faults or not names else 0)


main()
