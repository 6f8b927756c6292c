#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""One job, one number: what several sheets say of the same thing must be the same.

agree.py PROGRAM EXAMPLES

Counts of feet, screws and pipes, size of the screw, its thread and lead hole, spacing of the feet, length of a plate and size
of a pipe's hole, as printed by cover, plan, drawings, flashing notes, materials, field sheet and inspection, and as the check
tells them in JSON. Needs poppler's pdftotext."""
import html
import json
import os
import pathlib
import re
import subprocess
import sys
import tempfile

faults = []


def run(*words):
    return subprocess.run([*map(str, words)], capture_output=True, text=True, check=False).stdout


def flat(text):
    return " ".join(text.replace("\u00a0", " ").split())


def drawn(program, job, view, folder):
    """The words of a drawing, each text on a line; '' where there is nothing to draw."""
    out = pathlib.Path(folder) / f"{view}.svg"
    run(program, "draw", job, "--view", view, "-o", out)
    if not out.exists():
        return ""
    texts = re.findall(r"<text[^>]*>(.*?)</text>", out.read_text(encoding="utf-8"), re.S)
    return "\n".join(flat(html.unescape(re.sub(r"<[^>]+>", "", t))) for t in texts)


def sheets(program, job, folder):
    """Text of each sheet by its name; more than one may share a page."""
    pdf = pathlib.Path(folder) / "sheets.pdf"
    told = json.loads(run(program, "sheets", job, "-o", pdf, "--format", "json"))
    whole = run("pdftotext", "-layout", pdf, "-")
    names = [s["name"] for s in told["sheets"]]
    # not the index on the cover, which tells the page beside the name
    starts = [re.search(rf"^\f?[ ]*{i}\s+{re.escape(name)}(?![^\n]*page \d)", whole, re.M) for i, name in enumerate(names, 1)]
    ends = [found.start() for found in starts[1:]] + [len(whole)]
    return {name: flat(whole[start.start():end]) for name, start, end in zip(names, starts, ends)}


def one(where, pattern, text):
    found = sorted(set(re.findall(pattern, text)))
    if len(found) != 1:
        faults.append(f"{where}: {len(found)} of `{pattern}`: {found[:4]}")
    return found[0] if len(found) == 1 else None


def same(where, values):
    """values: name of the place -> what it says; None where it has nothing to say."""
    told = {k: v for k, v in values.items() if v is not None}
    if len(set(told.values())) > 1:
        faults.append(f"{where}: {told}")


class Job:
    def __init__(self, program, path, folder):
        self.name = path.stem
        self.check = json.loads(run(program, "check", path, "--format", "json"))
        self.judged = self.check["passes"][self.check["judged"]]
        self.input = {i["field"]: i for i in self.check["inputs"]}
        self.bought = {m["item"]: m for m in json.loads(run(program, "materials", path, "--format", "json"))["materials"]}
        self.sheet = sheets(program, path, folder)
        self.plan = drawn(program, path, "plan", folder)
        self.foot = drawn(program, path, "attachment", folder)
        self.pipe = drawn(program, path, "pipe", folder)
        self.screws = "screw" in self.bought


def feet(job):
    places = re.search(r"Tape, in the order.*?(Hole and|Clamps)", job.sheet["Field sheet"]).group(0)
    places = re.sub(r"\(4/5\) is a block.*", "", places)
    same(f"{job.name}: feet", {
        "check": len(job.judged["attachments"]),
        "cover": int(one(job.name, r"attachments (\d+) on \d+ lines", job.sheet["Job, code basis and verdict"])),
        "plan": int(one(job.name, r"attachment \((\d+)\)", job.plan)),
        "field": len(re.findall(r"\(\d+(?:/\d+)?\)", places)),
        "inspection": int(one(job.name, r"(\d+) attachments are there", job.sheet["Inspection"])),
        "materials": job.bought["foot"]["amount"],
    })


def screws(job):
    if not job.screws:
        return
    count = int(one(job.name, r"screw (\d+) in each foot", job.sheet["Field sheet"]))
    number, size = one(job.name, r"Screws: (\d+) in each foot, (.*? by .*?), at least", job.sheet["Inspection"])
    same(f"{job.name}: screws", {"materials": job.bought["screw"]["amount"], "field": count * job.bought["foot"]["amount"],
                                 "inspection": int(number) * job.bought["foot"]["amount"],
                                 "drawing": int(one(job.name, r"(\d+) lag screws?", job.foot)) * job.bought["foot"]["amount"]})
    same(f"{job.name}: size of the screw", {
        "inspection": size,
        "field": one(job.name, r"in each foot(?:, [^:]*)?: (.*? by .*?);", job.sheet["Field sheet"]),
        "materials": one(job.name, r"screws, (.*? by .*?) under the head", job.bought["screw"]["note"]),
        "drawing": " by ".join(one(job.name, r"lag screws? (.*?) x (.*?),", job.foot)),
    })
    size = r"\d[\d/-]* (?:in|mm)"
    # feet on blocks have a length of their own
    two = re.findall(rf"({size}) in a block; less: stop", job.sheet["Field sheet"])
    same(f"{job.name}: thread", {
        "field": one(job.name, rf"thread in wood at least ({size})", job.sheet["Field sheet"]),
        "inspection": one(job.name, rf"at least ({size}) of thread", job.sheet["Inspection"]),
        "drawing": one(job.name, rf"({size}) of it thread", job.foot),
        "notes": one(job.name, rf"thread-in-wood ({size})", job.sheet["Flashing"]) if job.sheet["Flashing"] and not two else None,
    })
    bites = re.findall(rf"({size}) of thread must bite", job.sheet["Field sheet"])
    if two and (bites or "thread-in-wood" in job.sheet["Flashing"]):
        faults.append(f"{job.name}: one length of thread in the notes, {two} in a block on the field sheet")
    same(f"{job.name}: thread of the steps", {"steps": bites[0] if bites else None, "field": one(
        job.name, rf"thread in wood at least ({size})", job.sheet["Field sheet"])})
    hole = r"lead hole ([\d./-]+ (?:in|mm) to [\d./-]+ (?:in|mm))"
    same(f"{job.name}: lead hole", {"field": one(job.name, hole, job.sheet["Field sheet"]),
                                    "drawing": one(job.name, hole, job.foot.replace("\n", " "))})


def spacing(job):
    """The plan's legend may round to its own tape; it may not name another zone or another length."""
    for zone in job.judged["zones"]:
        drawn_here = re.findall(rf"zone {re.escape(zone['zone'])}: at most (.*)", job.plan)
        inches = zone["spacing"]["value"] / (25.4 if zone["spacing"]["unit"] == "mm" else 1)
        for text in drawn_here:
            feet_inches = re.match(r"(?:(\d+)')?-?(?:(\d+)(?: (\d+)/(\d+))?\")?$", text)
            mm = re.match(r"(\d+) mm$", text)
            told = int(mm.group(1)) / 25.4 if mm else (
                12 * int(feet_inches.group(1) or 0) + int(feet_inches.group(2) or 0)
                + (int(feet_inches.group(3)) / int(feet_inches.group(4)) if feet_inches.group(3) else 0))
            if abs(told - inches) > 1 / 16:
                faults.append(f"{job.name}: zone {zone['zone']}: {text} on the plan, {inches} in the check")


def pipes(job):
    counts = [i["value"] for i in job.check["inputs"] if i["field"] == "pipe.count"]
    if not counts:
        return
    note = job.bought["pipe-flashing"]["note"]
    same(f"{job.name}: pipes", {"inputs": sum(counts), "materials": job.bought["pipe-flashing"]["amount"],
                                "its words": sum(map(int, re.findall(r"[:,] (\d+) for ", note)))})


def plates(job):
    told = re.search(r"at least (.*?) long up the slope", flat(job.bought.get("foot-flashing", {"note": ""})["note"]))
    if told:
        same(f"{job.name}: plate", {"materials": told.group(1), "notes": one(
            job.name, r"plate-length (.*?): ", job.sheet["Flashing"])})


def main():
    program, folder = os.path.abspath(sys.argv[1]), pathlib.Path(sys.argv[2])
    jobs = sorted(folder.glob("*.xml"))
    for path in jobs:
        with tempfile.TemporaryDirectory() as scratch:
            job = Job(program, path, scratch)
        for compare in (feet, screws, spacing, pipes, plates):
            try:
                compare(job)
            except (AttributeError, TypeError) as missing:  # a number that is not where it is looked for
                faults.append(f"{job.name}: {compare.__name__}: {missing}")
    print("\n".join(faults[:60]))
    sys.exit(1 if faults or not jobs else 0)


main()
