#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Runs the command line on cases that are data, and holds what comes out against what is written down.

run.py PROGRAM --data DIR --cases DIR --examples DIR [--update]

A case is a text file, NAME.case:

    # what it shows
    command: check {examples}/first-shingle.xml --width 40
    status: 0
    stderr: a regular expression, one such line for each line that must come, in order
    stdout-has: words that must stand in the output (line breaks count as blanks)
    stdout-lacks: words that must not
    env: NAME=value
    stdout:
    everything below, to the end, is the whole output

{examples}, {cases} and {dir} (an empty directory of the case's own) are filled in. Without `stderr` nothing may be
written there. Each examples/NAME.xml is checked at 80 columns against examples/NAME.txt, and its exit status against
the first words of that text. --update rewrites every whole output that is written down; read the difference before
it is kept."""
import argparse
import os
import re
import subprocess
import sys
import tempfile

VERDICT = {"HOLDS": 0, "DOES NOT HOLD": 1, "NEEDS AN ENGINEER": 2}


def environment(data):
    keep = {name: os.environ[name] for name in ("PATH", "HOME", "ASAN_OPTIONS", "LSAN_OPTIONS", "UBSAN_OPTIONS") if name in os.environ}
    return {**keep, "RAFTERPROOF_DATA": data, "LC_ALL": "C.UTF-8"}


def run(command, env, cwd):
    done = subprocess.run(command, env=env, cwd=cwd, stdin=subprocess.DEVNULL, capture_output=True, timeout=60,
                          check=False)
    return done.returncode, done.stdout.decode("utf-8"), done.stderr.decode("utf-8")


def flat(text):
    return " ".join(text.replace("\u00a0", " ").split())


class Case:
    def __init__(self, path):
        self.path = path
        self.one = {}
        self.many = {"stderr": [], "stdout-has": [], "stdout-lacks": [], "env": []}
        self.stdout = None
        self.head = ""
        self.read()

    def read(self):
        with open(self.path, encoding="utf-8") as file:
            lines = file.read().split("\n")
        for number, line in enumerate(lines, 1):
            if line == "stdout:":
                self.stdout = "\n".join(lines[number:])
                return
            self.head += line + "\n"
            if not line or line.startswith("#"):
                continue
            key, colon, value = line.partition(": ")
            if key in self.many and colon:
                self.many[key].append(value)
            elif key in ("command", "status") and colon and key not in self.one:
                self.one[key] = value
            else:
                sys.exit(f"{self.path}:{number}: not understood: {line}")

    def faults(self, program, data, places, update):
        with tempfile.TemporaryDirectory() as scratch:
            fill = {**places, "dir": scratch}
            words = self.one["command"].format(**fill).split()
            env = environment(data)
            env.update(pair.split("=", 1) for pair in self.many["env"])
            status, out, err = run([program] + words, env, scratch)
        out = out.replace(scratch, "{dir}")
        yield from self.judge(status, out, err.splitlines())
        if self.stdout is not None and out != self.stdout:
            if update:
                with open(self.path, "w", encoding="utf-8") as file:
                    file.write(self.head + "stdout:\n" + out)
            else:
                yield from difference(self.stdout, out)

    def judge(self, status, out, err):
        if status != int(self.one["status"]):
            yield f"exit status {status}, want {self.one['status']}: {err}"
        for i, pattern in enumerate(self.many["stderr"]):
            if i >= len(err) or not re.search(pattern, err[i]):
                yield f"stderr line {i + 1} is {err[i:i + 1]}, want {pattern}"
        if len(err) > len(self.many["stderr"]):
            yield f"more on stderr: {err[len(self.many['stderr']):]}"
        for words in self.many["stdout-has"]:
            if words not in flat(out):
                yield f"output lacks: {words}"
        for words in self.many["stdout-lacks"]:
            if words in flat(out):
                yield f"output has: {words}"


def difference(want, got):
    a, b = want.split("\n"), got.split("\n")
    for i in range(max(len(a), len(b))):
        left, right = (a[i:i + 1] or ["(end)"])[0], (b[i:i + 1] or ["(end)"])[0]
        if left != right:
            yield f"output line {i + 1}\n  want {left}\n  got  {right}"
            return


def example_faults(program, data, path, update):
    text = path[:-4] + ".txt"
    folder, name = os.path.split(path)
    status, out, err = run([program, "check", name, "--width", "80"], environment(data), folder)
    if err:
        yield f"on stderr: {err}"
    words = out.split(":")[0].rstrip(".\n")
    if VERDICT.get(words) != status:
        yield f"exit status {status} beside `{words}`"
    if update:
        with open(text, "w", encoding="utf-8") as file:
            file.write(out)
    elif not os.path.exists(text):
        yield "there is no text to hold it against"
    else:
        with open(text, encoding="utf-8") as file:
            yield from difference(file.read(), out)


def files(folder, ending):
    return sorted(os.path.join(folder, name) for name in os.listdir(folder) if name.endswith(ending))


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("program")
    for name in ("data", "cases", "examples"):
        parser.add_argument("--" + name, required=name == "data")
    parser.add_argument("--update", action="store_true")
    options = parser.parse_args()
    program, failed, count = os.path.abspath(options.program), 0, 0
    places = {"examples": os.path.join(options.data, "examples"), "cases": options.cases or ""}
    work = [(path, Case(path).faults(program, options.data, places, options.update))
            for path in (files(options.cases, ".case") if options.cases else [])]
    work += [(path, example_faults(program, options.data, path, options.update))
             for path in (files(options.examples, ".xml") if options.examples else [])]
    for path, faults in work:
        count += 1
        found = list(faults)
        failed += bool(found)
        for fault in found:
            print(f"{os.path.basename(path)}: {fault}")
    print(f"{count - failed} of {count} as written")
    sys.exit(1 if failed or not count else 0)


main()
