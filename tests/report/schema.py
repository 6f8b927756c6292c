#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Runs a command and holds what it prints against a JSON Schema (draft 2020-12).

schema.py SCHEMA [--status N] [--refuse] -- COMMAND...

The schema itself is checked first. With --refuse the output is damaged in several ways, and the schema must refuse each:
a schema that accepts everything proves nothing."""
import json
import subprocess
import sys

import jsonschema


def damaged(good):
    """Copies of a valid object, each with one fault."""
    for key in good:
        without = dict(good)
        del without[key]
        yield f"without {key}", without
    yield "with a member more", {**good, "unheard-of": 1}
    for key in good:
        yield f"with a wrong {key}", {**good, key: {"value": "x"}}


def main():
    split = sys.argv.index("--")
    options, command = sys.argv[1:split], sys.argv[split + 1:]
    status = int(options[options.index("--status") + 1]) if "--status" in options else 0
    with open(options[0], encoding="utf-8") as file:
        schema = json.load(file)
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    run = subprocess.run(command, stdout=subprocess.PIPE, check=False)
    if run.returncode != status:
        sys.exit(f"exit status {run.returncode}, want {status}")
    document = json.loads(run.stdout.decode("utf-8"))
    faults = [f"{list(e.absolute_path)}: {e.message[:200]}" for e in validator.iter_errors(document)]
    if faults:
        sys.exit("\n".join(faults[:20]))
    if "--refuse" in options:
        for what, document in damaged(document):
            if validator.is_valid(document):
                sys.exit(f"the schema accepts a document {what}")


main()
