#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Drawings composed for a telephone's screen, from the files alone.

phone.py PROGRAM EXAMPLES

Each drawing of each example: text inside it, labels apart, no letters below 11 px on a screen 360 px wide, every foot once,
with its number and its place on the tape, at the computed distance. The HTML file: such a drawing beside each wide one, only
one of the two shown, the wide one printed."""
import json
import math
import pathlib
import re
import sys
import tempfile
import xml.etree.ElementTree as tree

from measure import SVG, VIEWS, apart, check_of, compare, places, run, svg_texts
from told import expect, finish

SCREEN, LEAST = 360, 11  # px: of a small telephone; of letters


def letters(root, width, where):
    sizes = [float(text.get("font-size")) for text in root.iter(SVG + "text")]
    expect(min(sizes) / width * SCREEN >= LEAST - 1e-9,
           f"{where}: letters of {min(sizes) / width * SCREEN:.1f} px on a screen of {SCREEN}")


def parts_of(root):
    """What is drawn of each part of a layout, in order: marks (mm), numbers, places on the tape along the eave."""
    parts = [([], [], [])]
    for group in root.iter(SVG + "g"):
        for item in group:
            text = "".join(item.itertext())
            if item.tag == SVG + "text" and re.fullmatch(r"Part \d of \d", text):
                parts.append(([], [], []))
            elif item.tag == SVG + "circle" and group.get("class") == "ATTACHMENT" and item.get("fill") == "#000":
                parts[-1][0].append((float(item.get("cx")), -float(item.get("cy"))))
            elif item.tag == SVG + "text" and group.get("class") == "ATTACHMENT":
                parts[-1][1].append(text)
            elif item.tag == SVG + "text" and group.get("class") == "DIMENSION" and "rotate(-90" in item.get("transform", ""):
                parts[-1][2].append(text)
    return [part for part in parts if part[0]]


def layout(report, root, scale, where):
    """A foot stands in one part, parts go from left to right, and within each the distances are the computed ones."""
    want = sorted(places(report))
    parts = parts_of(root)
    numbers = sorted(int(n) for _, told, _ in parts for n in told)
    expect(numbers == list(range(1, len(want) + 1)), f"{where}: numbers {numbers} for {len(want)} feet")
    for i, (marks, _, tape) in enumerate(parts, 1):
        here, want = want[:len(marks)], want[len(marks):]
        compare(here, [(x * scale / 1000, y * scale / 1000) for x, y in marks], f"{where} part {i}", 0.0022 * scale / 1000)
        stations = {round(x, 4) for x, _ in here}
        expect(len(tape) >= len(stations), f"{where} part {i}: {len(tape)} places on the tape for {len(stations)}")
    expect(not want, f"{where}: {len(want)} feet are not drawn")


def roof(root, boxes, width, where):
    """The plan takes the screen's width, and no zone's name lies across the roof's edge."""
    lines = [tuple(map(float, re.findall(r"-?[\d.]+", path.get("d")))) for group in root.iter(SVG + "g")
             if group.get("class") in ("ROOF-EDGE", "RIDGE") for path in group.findall(SVG + "path")]
    # the legend's samples start at the margin, where no roof does
    lines = [line for line in lines if line[0] > 2.001]
    left, right = min(line[i] for line in lines for i in (0, 2)), max(line[i] for line in lines for i in (0, 2))
    above, below = min(line[i] for line in lines for i in (1, 3)), max(line[i] for line in lines for i in (1, 3))
    names = [item for item in root.iter(SVG + "text") if item.get("font-weight") and re.fullmatch(r"[1-3][a-z']?", item.text)]
    expect(names, f"{where}: no zone has a name")
    for item in names:
        x, y, size, length = (float(item.get(k)) for k in ("x", "y", "font-size", "textLength"))
        expect(x > left and x + length < right and y - 0.73 * size > above and y < below,
               f"{where}: zone {item.text} across the roof's edge")
    start = min(box[0] for box in boxes if box[1] < below and box[3] > above)
    expect(right - start > 0.8 * width, f"{where}: {right - start:.0f} mm drawn on {width:.0f}")


def measure(program, job, view, folder, report):
    where, out = f"{job.name} {view}", folder / f"{view}.svg"
    done = run(program, "draw", job, "--view", view, "--paper", "phone", "-o", out, "--format", "json", want=(0, 1, 2, 3))
    if done.returncode == 3:
        expect(b"nothing to draw there" in done.stderr, f"{where}: {done.stderr.decode()}")
        return
    root = tree.parse(out).getroot()
    _, _, width, height = map(float, root.get("viewBox").split())
    expect(width < 75 and height < 1000, f"{where}: {width} x {height} mm is no telephone's")
    letters(root, width, where)
    boxes = list(svg_texts(root))
    for x0, y0, x1, y1, text, _ in boxes:
        expect(x0 >= 0 and y0 >= 0 and x1 <= width and y1 <= height, f"{where}: `{text}` leaves the screen")
    apart([b for b in boxes if abs(math.sin(2 * b[5])) < 1e-6], where, 0.05)
    words = " ".join(b[4] for b in boxes)
    expect("confirmed before anybody builds on" in words, f"{where}: no caution")
    # which is on one line, or the last word of a line and the first of the next
    expect(f"on a screen {width:.0f} mm wide" in words or view == "flashing", f"{where}: a scale without its width")
    scale = json.loads(done.stdout)["sheets"][0]["scale"]
    if view == "layout":
        layout(report, root, scale, where)
    if view == "plan":
        roof(root, boxes, width, where)
    if view in ("attachment", "pipe", "block", "rack"):
        numbered(boxes, where)


def numbered(boxes, where):
    """Each number at the picture is told below it, and none is told that is not there."""
    bold = [b[4] for b in boxes if re.fullmatch(r"\d+", b[4])]
    most = max(map(int, bold), default=0)
    expect(most > 1 and sorted(map(int, bold)) == sorted(2 * list(range(1, most + 1))), f"{where}: numbers {bold}")


def page(program, job, folder):
    """Of the two one is shown: the wide one on paper and on a desk."""
    for command, least in (("sheets", 4), ("field", 1)):
        where, out = f"{job.name} {command}.html", folder / "x.html"
        run(program, command, job, "-o", out)
        text = out.read_text(encoding="utf-8")
        kinds = re.findall(r'<div class="(drawing desk|phone|drawing)">\s*<svg[^>]*viewBox="0 0 ([\d.]+)', text)
        expect(len(kinds) >= 2 * least and [k for k, _ in kinds] == ["drawing desk", "phone"] * (len(kinds) // 2),
               f"{where}: drawings {kinds}")
        expect(all(float(w) < 75 if k == "phone" else float(w) > 150 for k, w in kinds), f"{where}: widths {kinds}")
        style = text[text.index("<style>"):text.index("</style>")]
        narrow = re.search(r"@media screen and \(max-width:62rem\)\{\.desk\{display:none\}\.phone\{display:block", style)
        expect(narrow and ".phone{display:none}" in style[:narrow.start()], f"{where}: which drawing shows")
        plain = re.sub(r"<(svg|style|title|table)\b.*?</\1>|<span class=\"n\">.*?</span>", "", text, flags=re.S)
        torn = re.findall(r"(?<=[ (>\xa0])\d+-\d+/\d+", re.sub(r"<[^>]*>", ">", plain))
        expect(not torn and ".n{white-space:nowrap}" in style, f"{where}: {torn[:3]} may break after the hyphen")
        # beside the text's 62rem a drawing takes what the screen has, and never more
        expect("(min-width:66rem){.desk{--wide:min(100vw - 3rem," in style, f"{where}: as narrow as the text")
        expect("sideways" not in style and not re.search(r"svg\{[^}]*min-width", style), f"{where}: drawings that slide")
        names = re.findall(r' id="([^"]*)"', text)
        expect(len(names) == len(set(names)), f"{where}: a name twice")


def refusals(program, job, folder):
    for words in (["draw", job, "-o", folder / "no.pdf"], ["draw", job, "-o", folder / "no.dxf"],
                  ["sheets", job, "-o", folder / "no.html"], ["field", job, "-o", folder / "no.pdf"]):
        run(program, *words, "--paper", "phone", want=(3,))
        expect(not words[-1].exists(), f"{words}: written")


def main():
    program, examples = sys.argv[1:3]
    jobs = sorted(pathlib.Path(examples).glob("*.xml"))
    expect(jobs, "no examples")
    for job in jobs:
        report = check_of(program, job)
        with tempfile.TemporaryDirectory() as name:
            folder = pathlib.Path(name)
            for view in VIEWS + ["block", "pipe-2"]:
                measure(program, job, view, folder, report)
            page(program, job, folder)
            if job == jobs[0]:
                refusals(program, job, folder)
    finish()


if __name__ == "__main__":
    main()
