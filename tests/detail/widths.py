#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Every page of the guide and its key as text: no line longer than asked for, in both unit systems, and no placeholder,
brace or `nan` left in it.

usage: widths.py RAFTERPROOF SOURCE_ROOT"""
import os
import re
import subprocess
import sys


def main():
    program, root = sys.argv[1:]
    details = os.path.join(root, "details")
    keys = [name[:-4] for name in sorted(os.listdir(details)) if name.endswith(".xml") and re.search(
        "<(covering|refusal) ", open(os.path.join(details, name), encoding="utf-8").read())]
    bad = []
    for key in [None] + keys:
        for width in (40, 60, 80, 120):
            for units in ("us", "si"):
                done = subprocess.run([program, "guide"] + ([key] if key else []) + ["--width", str(width), "--units", units],
                                      capture_output=True, text=True, env=dict(os.environ, RAFTERPROOF_DATA=root))
                where = f"{key or 'key'} at {width}, {units}"
                if done.returncode != 0:
                    bad.append(f"{where}: exit {done.returncode}: {done.stderr}")
                bad += [f"{where}: {len(line)} columns: {line}" for line in done.stdout.split("\n") if len(line) > width]
                bad += [f"{where}: {line}" for line in done.stdout.split("\n") if re.search(r"[{}]|\bnan\b", line)]
    if len(keys) != 27:
        bad.append(f"{len(keys)} pages")
    if bad:
        sys.exit("\n".join(bad[:40]))
    print(f"{len(keys)} pages")


main()
