# SPDX-License-Identifier: MIT
"""What a test of sheets finds wrong: collected, told all at once at its end."""
import sys

faults = []


def expect(ok, what):
    if not ok:
        faults.append(what)


def finish():
    for fault in faults[:60]:
        print(fault)
    if faults:
        sys.exit(f"{len(faults)} faults")
