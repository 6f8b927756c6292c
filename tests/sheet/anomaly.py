#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""What goes wrong around a drawing or a set of sheets: a full disk, a place that cannot be written, a missing typeface, a
damaged library, wrong prices. Nothing half-written stays, the exit status tells which kind of fault it was.

anomaly.py PROGRAM JOB"""
import os
import pathlib
import subprocess
import sys
import tempfile

from told import expect, finish


def run(program, *words, env=None):
    done = subprocess.run([program, *map(str, words)], stdout=subprocess.PIPE, stderr=subprocess.PIPE, check=False,
                          env={**os.environ, **(env or {})})
    return done.returncode, done.stderr.decode("utf-8", "replace")


def refuses(program, status, word, *words, env=None):
    got, message = run(program, *words, env=env)
    expect(got == status, f"{words}: exit status {got}, want {status}: {message[:200]}")
    expect(word in message, f"{words}: no `{word}` in: {message[:300]}")


def main():
    program, job = sys.argv[1:3]
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        for end, command in (("pdf", "sheets"), ("html", "sheets"), ("pdf", "field"), ("svg", "draw"), ("dxf", "draw"), ("pdf", "draw")):
            full = folder / f"full.{end}"
            if not full.is_symlink():
                full.symlink_to("/dev/full")
            refuses(program, 4, "cannot be written", command, job, "-o", full)
            refuses(program, 4, "cannot be written", command, job, "-o", folder / "nowhere" / f"x.{end}")
            (folder / f"dir.{end}").mkdir(exist_ok=True)
            refuses(program, 4, "cannot be written", command, job, "-o", folder / f"dir.{end}")
            old = folder / f"old.{end}"
            old.write_text("as it was", encoding="ascii")
            refuses(program, 3, "roof.pitch", command, job, "-o", old, "--set", "roof.pitch=60:12")
            expect(old.read_text(encoding="ascii") == "as it was", f"{old}: touched by a run that failed")
        refuses(program, 3, ".svg, .dxf or .pdf", "draw", job, "-o", folder / "plan.png")
        refuses(program, 3, ".svg, .dxf or .pdf", "draw", job)
        refuses(program, 3, ".pdf or .html", "sheets", job, "-o", folder / "sheets.svg")
        refuses(program, 3, "plan, layout, site, rack, attachment, block, pipe, pipe-2 to pipe-8, flashing, flashing-2 or flashing-3", "draw", job, "-o", folder / "x.svg", "--view", "north")
        refuses(program, 3, "letter or a4", "sheets", job, "-o", folder / "x.pdf", "--paper", "a5")
        prices = folder / "prices.csv"
        prices.write_text("# prices\nscrew,1.20\nscrew,1.30\nglue,4\nfoot,-2\nrail,1e3\nfoot-flashing 12\n", encoding="ascii")
        got, message = run(program, "materials", job, "--prices", prices)
        expect(got == 3 and len(message.splitlines()) == 5, f"five wrong lines of prices: {got}, {message}")
        refuses(program, 3, "cannot be opened", "materials", job, "--prices", folder / "none.csv")
        refuses(program, 3, "is not a regular file", "materials", job, "--prices", folder)
        left = sorted(p.name for p in folder.iterdir() if "." in p.name and p.name.split(".")[-1] not in ("pdf", "html", "svg", "dxf", "csv"))
        expect(not left, f"left behind: {left}")
        # No typeface: the program says which, and writes nothing.
        (folder / "fonts.conf").write_text('<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig></fontconfig>',
                                           encoding="ascii")
        got, message = run(program, "draw", job, "-o", folder / "bare.svg", env={"FONTCONFIG_FILE": str(folder / "fonts.conf")})
        expect(got in (3, 4) and "DejaVu Sans" in message, f"without a typeface: {got}, {message[:300]}")
        expect(not (folder / "bare.svg").exists(), "without a typeface: a file was written")
        # Without the covering library the drawing says that it shows less; the check itself stands.
        got, message = run(program, "draw", job, "-o", folder / "less.svg", "--view", "attachment", env={"RAFTERPROOF_DATA": str(folder)})
        expect(got == 0 and "only what the job" in (folder / "less.svg").read_text(encoding="utf-8"), f"no library: {got}, {message[:300]}")
    finish()


if __name__ == "__main__":
    main()
