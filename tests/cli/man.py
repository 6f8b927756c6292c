#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""The manual page: clean by mandoc, and it names every command, option, exit status and field.

man.py PROGRAM PAGE MANDOC"""
import json
import os
import subprocess
import sys


def output(*command):
    return subprocess.run(command, capture_output=True, text=True, check=False)


def main():
    program, page, mandoc = os.path.abspath(sys.argv[1]), sys.argv[2], sys.argv[3]
    lint = output(mandoc, "-T", "lint", "-W", "style", page)
    # Whether another page is installed is no fault of this one.
    faults = [line for line in (lint.stdout + lint.stderr).splitlines() if "outdated mandoc.db" not in line]
    text = output(mandoc, "-T", "ascii", "-O", "width=200", page).stdout
    while "\b" in text:
        i = text.index("\b")
        text = text[:i - 1] + text[i + 1:]
    words = " ".join(text.split())
    commands = json.loads(output(program, "help", "--format", "json").stdout)["commands"]
    fields = json.loads(output(program, "fields", "--format", "json").stdout)["fields"]
    wanted = [command["name"] for command in commands]
    for command in commands:
        wanted += [word.strip("[]") for word in (command["operands"] or "").split() if word.startswith(("[-", "-"))]
    wanted += ["--format", "--version", "RAFTERPROOF_DATA", "NO_COLOR", "EXIT STATUS"]
    wanted += [field["field"].split(".")[1] for field in fields]
    faults += [f"does not name {word}" for word in wanted if word not in words]
    if len(commands) < 6 or len(fields) < 90:
        faults.append("too few commands or fields to be all of them")
    print("\n".join(faults))
    sys.exit(1 if faults else 0)


main()
