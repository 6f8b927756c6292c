#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Measures what is drawn and printed for each example.

measure.py svg|dxf|pdf PROGRAM EXAMPLES

svg, dxf: distances between marks, from the file alone, against what the check computes; text inside the page; labels apart.
pdf: text inside the page, words apart, typefaces embedded, pages as told, bookmarks, title, language, room for a seal, the
same bytes twice, a date only where SOURCE_DATE_EPOCH gives one.  Needs poppler's pdffonts, pdfinfo, pdftohtml and
pdftotext."""
import html
import json
import math
import os
import pathlib
import re
import subprocess
import sys
import tempfile
import unicodedata
import xml.etree.ElementTree as tree

from told import expect, finish

SVG = "{http://www.w3.org/2000/svg}"
VIEWS = ["site", "plan", "layout", "rack", "attachment", "pipe", "flashing"]


def run(program, *words, env=None, want=(0, 1, 2)):
    done = subprocess.run([program, *map(str, words)], stdout=subprocess.PIPE, stderr=subprocess.PIPE, check=False,
                          env={**os.environ, **(env or {})})
    expect(done.returncode in want, f"{words}: exit status {done.returncode}, {done.stderr.decode()[:300]}")
    return done


def tool(*words):
    return subprocess.run(words, stdout=subprocess.PIPE, check=True).stdout.decode("utf-8")


def check_of(program, job):
    return json.loads(run(program, "check", job, "--format", "json").stdout)


def to_metres(quantity):
    return quantity["value"] * {"in": 0.0254, "mm": 0.001, "ft": 0.3048, "m": 1.0}[quantity["unit"]]


def places(report):
    """(x, y) of each attachment in metres, from the pass that the report prints; none where nothing was computed."""
    if not report["passes"]:
        return []
    return [(to_metres(a["x"]), to_metres(a["y"])) for a in report["passes"][report["judged"]]["attachments"]]


def overlap(a, b, slack):
    return min(a[2], b[2]) - max(a[0], b[0]) > slack and min(a[3], b[3]) - max(a[1], b[1]) > slack


def apart(boxes, where, slack):
    """boxes: (x0, y0, x1, y1, text, group); texts of one group belong together."""
    boxes = sorted(boxes)
    for i, a in enumerate(boxes):
        for b in boxes[i + 1:]:
            if b[0] >= a[2]:
                break
            expect(not overlap(a, b, slack), f"{where}: `{a[4]}` and `{b[4]}` overlap")


def svg_texts(root):
    for group in root.iter(SVG + "g"):
        for text in group.findall(SVG + "text"):
            x, y, size, length = (float(text.get(k)) for k in ("x", "y", "font-size", "textLength"))
            turn = re.match(r"rotate\((-?[\d.]+)", text.get("transform", ""))
            angle = math.radians(float(turn.group(1))) if turn else 0.0
            corners = [(0, 0.10 * size), (length, 0.10 * size), (length, -0.73 * size), (0, -0.73 * size)]
            px = [x + u * math.cos(angle) - v * math.sin(angle) for u, v in corners]
            py = [y + u * math.sin(angle) + v * math.cos(angle) for u, v in corners]
            yield min(px), min(py), max(px), max(py), "".join(text.itertext()), angle


def measure_svg(program, job, folder):
    report = check_of(program, job)
    for view in VIEWS:
        out = folder / f"{view}.svg"
        text = job.read_text(encoding="utf-8")
        if (view == "pipe" and "<pipe" not in text) or (view == "rack" and 'tilt="' not in text):
            refused = run(program, "draw", job, "--view", view, "-o", out, want=(3,))
            expect(b"nothing to draw there" in refused.stderr and not out.exists(), f"{job.name} {view}: drawn from nothing")
            continue
        done = run(program, "draw", job, "--view", view, "-o", out, "--format", "json")
        told = json.loads(done.stdout)["sheets"][0]
        root = tree.parse(out).getroot()
        _, _, width, height = map(float, root.get("viewBox").split())
        expect(abs(width - told["width"]["value"]) < 0.01, f"{out}: width {width}")
        boxes = list(svg_texts(root))
        expect(len(boxes) > 5, f"{job.name} {view}: hardly any text")
        for x0, y0, x1, y1, text, _ in boxes:
            expect(x0 >= 0 and y0 >= 0 and x1 <= width and y1 <= height, f"{job.name} {view}: `{text}` leaves the page")
        # Texts at a slant have boxes much larger than their letters: those are left to the eye.
        apart([b for b in boxes if abs(math.sin(2 * b[5])) < 1e-6], f"{job.name} {view}", 0.05)
        if view in ("plan", "layout"):
            distances_svg(report, root, told["scale"], f"{job.name} {view}")


def distances_svg(report, root, scale, where):
    """Every distance between two attachment marks, times the scale, is what the check says."""
    marks = []
    for group in root.iter(SVG + "g"):
        if group.get("class") == "ATTACHMENT":
            for mark in group.findall(SVG + "circle"):
                if mark.get("fill") == "#000":
                    marks.append((float(mark.get("cx")) * scale / 1000, -float(mark.get("cy")) * scale / 1000))
    compare(places(report), marks, where, 0.0011 * scale / 1000 * 2)


def compare(want, marks, where, slack):
    expect(len(want) == len(marks), f"{where}: {len(marks)} marks for {len(want)} attachments")
    if len(want) != len(marks) or len(want) < 2:
        return
    want.sort(key=lambda p: (round(p[1], 3), p[0]))
    marks.sort(key=lambda p: (round(p[1], 3), p[0]))
    for (wx, wy), (mx, my) in zip(want[1:], marks[1:]):
        expect(abs((wx - want[0][0]) - (mx - marks[0][0])) < slack and abs((wy - want[0][1]) - (my - marks[0][1])) < slack,
               f"{where}: a mark is {mx - marks[0][0]:.4f}, {my - marks[0][1]:.4f} from the first; "
               f"computed {wx - want[0][0]:.4f}, {wy - want[0][1]:.4f} m")


def dxf_pairs(path):
    lines = path.read_text(encoding="ascii").split("\n")
    return [(int(lines[i]), lines[i + 1]) for i in range(0, len(lines) - 1, 2)]


def dxf_entities(pairs):
    entity = None
    for code, value in pairs:
        if code == 0:
            if entity:
                yield entity
            entity = {"kind": value, "codes": []}
        elif entity:
            entity["codes"].append((code, value))
    if entity:
        yield entity


def measure_dxf(program, job, folder):
    report = check_of(program, job)
    out = folder / "plan.dxf"
    run(program, "draw", job, "-o", out)
    pairs = dxf_pairs(out)
    unit = 0.001 if pairs[0][1].endswith("mm") else 0.0254
    expect(pairs[-1] == (0, "EOF") or pairs[-2] == (0, "EOF"), f"{out}: does not end with EOF")
    entities = list(dxf_entities(pairs))
    layers = {dict(e["codes"])[2] for e in entities if e["kind"] == "LAYER"}
    used = {dict(e["codes"])[8] for e in entities if e["kind"] in ("LINE", "POLYLINE", "VERTEX", "CIRCLE", "TEXT", "SOLID")}
    expect(used <= layers, f"{out}: layers used but not declared: {used - layers}")
    marks, ends = [], []
    for e in entities:
        if e["kind"] == "VERTEX" and (8, "ATTACHMENT") in e["codes"]:
            codes = dict(e["codes"])
            ends.append((float(codes[10]) * unit, float(codes[20]) * unit))
    # A filled disc is a closed line of two vertices: its middle is the mark, at its own place on the roof.
    for a, b in zip(ends[::2], ends[1::2]):
        marks.append(((a[0] + b[0]) / 2, (a[1] + b[1]) / 2))
    want = sorted(places(report))
    expect(len(want) == len(marks), f"{out}: {len(marks)} marks for {len(want)} attachments")
    for (wx, wy), (mx, my) in zip(want, sorted(marks)):
        expect(math.hypot(wx - mx, wy - my) < 1e-4, f"{job.name}: mark at {mx:.5f}, {my:.5f}; computed {wx:.5f}, {wy:.5f} m")


def pdf_words(path):
    """Pages as (width, height, words)."""
    page, pages = None, []
    for line in tool("pdftotext", "-bbox", str(path), "-").splitlines():
        head = re.search(r'<page width="([\d.]+)" height="([\d.]+)"', line)
        word = re.search(r'<word xMin="(-?[\d.]+)" yMin="(-?[\d.]+)" xMax="(-?[\d.]+)" yMax="(-?[\d.]+)">(.*)</word>', line)
        if head:
            page = (float(head.group(1)), float(head.group(2)), [])
            pages.append(page)
        elif word:
            page[2].append((*map(float, word.groups()[:4]), word.group(5)))
    return pages


def shrunk(word):
    """Poppler's boxes reach from ascent to descent; letters take less."""
    x0, y0, x1, y1, text = word
    dx, dy = x1 - x0, y1 - y0
    # A box is that of the text's line: of one set upright the long side stands.
    if dy > 1.6 * dx and len(text) > 2:
        return x0 + 0.25 * dx, y0 + 0.02 * dy, x1 - 0.18 * dx, y1 - 0.02 * dy, text
    return x0 + 0.02 * dx, y0 + 0.22 * dy, x1 - 0.02 * dx, y1 - 0.2 * dy, text


def measure_bookmarks(path, names, where):
    """Each sheet told has a bookmark, numbered in order, to the page that bears its name; headings stand below."""
    root = tree.fromstring(tool("pdftohtml", "-xml", "-i", "-stdout", str(path)).encode("utf-8"))
    top = [item for item in root.find("outline") if item.tag == "item"]
    expect([item.text for item in top] == [f"{i}  {name}" for i, name in enumerate(names, 1)],
           f"{where}: bookmarks {[item.text for item in top]} for {names}")
    below = root.findall("outline/outline/item")
    expect(len(below) > 10, f"{where}: {len(below)} bookmarks for headings")
    # NFKC: a ligature counts as its letters
    pages = [unicodedata.normalize("NFKC", html.unescape(" ".join(w[4] for w in words))) for _, _, words in pdf_words(path)]
    for item in top + below:
        page = pages[int(item.get("page")) - 1]
        expect(unicodedata.normalize("NFKC", " ".join(item.text.split())) in page, f"{where}: `{item.text}` is not on its page")
    second = int(top[1].get("page")) - 1
    expect("Room for the seal" in pages[second - 1], f"{where}: no room for a seal at the end of the first sheet")
    expect("confirmed before anybody builds on it" in pages[0], f"{where}: text cannot be searched")


def measure_pdf(program, job, folder):
    for paper, size in (("letter", {612, 792}), ("a4", {595, 842})):
        out = folder / f"{paper}.pdf"
        told = json.loads(run(program, "sheets", job, "-o", out, "--paper", paper, "--format", "json").stdout)
        measure_file(out, told["pages"], told["fingerprint"], size, f"{job.name} {paper}")
        measure_bookmarks(out, [sheet["name"] for sheet in told["sheets"]], f"{job.name} {paper}")
        title = tree.parse(job).getroot().get("title")
        expect(f"Permit sheets: {title}" in " ".join(tool("pdfinfo", str(out)).split()), f"{job.name} {paper}: no title")
        first = out.read_bytes()
        run(program, "sheets", job, "-o", out, "--paper", paper)
        expect(out.read_bytes() == first, f"{job.name} {paper}: other bytes the second time")
        expect(b"/Lang (en-US)" in first and b"/DisplayDocTitle true" in first, f"{job.name} {paper}: no language")
        expect("CreationDate" not in tool("pdfinfo", str(out)), f"{job.name} {paper}: a date from nowhere")
    dated = folder / "dated.pdf"
    run(program, "field", job, "-o", dated, env={"SOURCE_DATE_EPOCH": "1700000000"})
    info = tool("env", "TZ=UTC", "pdfinfo", "-isodates", str(dated))
    expect("2023-11-14T22:13:20" in info, f"{job.name}: SOURCE_DATE_EPOCH is not the date: {info}")
    for paper, size in (("letter", {612, 792}), ("a4", {595, 842})):
        told = json.loads(run(program, "field", job, "-o", dated, "--paper", paper, "--format", "json").stdout)
        expect(told["pages"] == 1, f"{job.name}: the field sheet takes {told['pages']} pages of {paper}")
        measure_file(dated, 1, told["fingerprint"], size, f"{job.name} field {paper}")
    page = folder / "sheets.html"
    run(program, "sheets", job, "-o", page)
    text = page.read_text(encoding="utf-8")
    expect(text.startswith("<!DOCTYPE html>") and '<html lang="en">' in text, f"{job.name}: html head")
    # One file that needs no other: the only address is the name of the SVG namespace.
    addresses = set(re.findall(r"https?://[^\"' <]+", text)) - {"http://www.w3.org/2000/svg"}
    expect(not addresses and "src=" not in text and "<script" not in text, f"{job.name}: html asks for {addresses}")


def measure_file(path, pages, fingerprint, size, where):
    fonts = tool("pdffonts", str(path)).splitlines()[2:]
    expect(fonts, f"{where}: no typeface")
    for font in fonts:
        expect(re.search(r" yes yes yes +\d+ +\d+$", font), f"{where}: not embedded, subset and searchable: {font}")
    found = pdf_words(path)
    expect(len(found) == pages, f"{where}: {len(found)} pages, {pages} told")
    for number, (width, height, words) in enumerate(found, 1):
        here = f"{where} page {number}"
        text = " ".join(w[4] for w in words)
        expect({round(width), round(height)} == size, f"{here}: paper {width} x {height}")
        expect(f"page {number} of {pages}" in text, f"{here}: not numbered `page {number} of {pages}`")
        expect(fingerprint in text, f"{here}: no fingerprint")
        for x0, y0, x1, y1, word in words:
            expect(x0 > 8 and y0 > 8 and x1 < width - 8 and y1 < height - 8, f"{here}: `{word}` is cut off")
        apart([(*shrunk(w), None) for w in words], here, 0.3)


def main():
    kind, program, examples = sys.argv[1:4]
    measure = {"svg": measure_svg, "dxf": measure_dxf, "pdf": measure_pdf}[kind]
    jobs = sorted(pathlib.Path(examples).glob("*.xml"))
    expect(jobs, "no examples")
    for job in jobs:
        with tempfile.TemporaryDirectory() as folder:
            measure(program, job, pathlib.Path(folder))
    finish()


if __name__ == "__main__":
    main()
