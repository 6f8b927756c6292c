#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""The calculation core is pure: what its libraries ask of the system is arithmetic, memory and strings, and they hold
no datum that can be written. So nothing is allocated, read or printed, and any number of threads may run it.

pure.py NM LIBRARY..."""
import subprocess
import sys

ARITHMETIC = set("""acos asin atan atan2 cbrt ceil copysign cos exp fabs floor fmax fmin fmod hypot ldexp log log10 pow
remainder round sin sincos sqrt tan trunc""".split())
MEMORY = set("memcpy memmove memset memcmp strlen strcmp strncmp strchr strrchr strstr strspn strcspn strcpy".split())
# Numbers as text, in a locale's own way or not: only where src/quantity sees to it that it does not matter.
NUMBERS = set("strtod snprintf".split())
# Whole numbers look alike everywhere.
WHOLE = {"strtol"}
# What the core asks of the job's room: plain questions about a job, in files that hold no reader.
JOB = ("job_given", "job_collector_tilt", "job_plane_", "field_table")
COMPILER = ("__assert_fail", "_GLOBAL_OFFSET_TABLE_", "__stack_chk_fail", "__asan", "__ubsan", "__sanitizer", "__gcov",
            "__llvm", "__start_", "__stop_", "__isoc")
WRITABLE = (".data", ".bss", "*COM*", ".tdata", ".tbss")


def symbols(nm, library):
    """Name, class and section of each symbol."""
    text = subprocess.run([nm, "-f", "sysv", library], capture_output=True, text=True, check=True).stdout
    for line in text.splitlines():
        field = [part.strip() for part in line.split("|")]
        if len(field) == 7 and field[0] != "Name":
            yield field[0], field[2], field[6]


def main():
    nm, libraries = sys.argv[1], sys.argv[2:]
    table = {library: list(symbols(nm, library)) for library in libraries}
    own = {name for rows in table.values() for name, kind, _ in rows if kind not in ("U", "w")}
    faults, seen = [], set()
    sanitized = any(name.startswith("__asan") for rows in table.values() for name, _, _ in rows)
    for library, rows in table.items():
        room = library.rsplit("/", 1)[-1]
        for name, kind, section in rows:
            if kind == "U" and name not in own and not name.startswith(COMPILER):
                seen.add(name)
                if name in ARITHMETIC | MEMORY | WHOLE or name.startswith(JOB) or (name in NUMBERS and room == "libquantity.a"):
                    continue
                faults.append(f"{room} asks the system for {name}")
            # constants that hold addresses stand in .data.rel.ro; the sanitizer keeps its own notes in .data
            if section.startswith(WRITABLE) and not section.startswith(".data.rel.ro") and not sanitized:
                faults.append(f"{room} can write {name} in {section}")
    if not {"cos", "memcpy"} <= seen:
        faults.append("not even arithmetic is asked for: nothing was read")
    print("\n".join(sorted(set(faults))))
    sys.exit(1 if faults else 0)


main()
