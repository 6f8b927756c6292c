#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""The pages and tables of words as a reader finds them.

pages.py PROGRAM EXAMPLES

PDF, both papers: no page nearly empty, no heading or head of a table alone at the foot, what goes on overleaf has
its heading again, no head of a table in more than three lines, the list of sheets on the cover true, no
formula broken behind "=".  HTML: results keep their "=", a table too wide for a telephone carries its heads in its cells."""
import html.parser
import json
import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as tree

from told import expect, finish

LEAST_FULL = 0.40      # of any page
LEAST_FULL_WITHIN = 0.70  # of a page whose sheet goes on
HEAD_LINES = 3
PHONE = 38             # letters of 8.7 px beside each other on a screen of 360 px, less its margins


def run(*words):
    done = subprocess.run([*map(str, words)], stdout=subprocess.PIPE, check=False)
    expect(done.returncode in (0, 1, 2), f"{words}: exit status {done.returncode}")
    return done.stdout.decode("utf-8")


class Line:
    def __init__(self, element):
        self.top, self.left, self.width, self.height = (float(element.get(k)) for k in ("top", "left", "width", "height"))
        self.text = "".join(element.itertext()).strip()
        inner = element.find("b")
        self.bold = inner is not None and "".join(inner.itertext()).strip() == self.text


def body(page):
    """What stands between head and foot, from above; and how far down it reaches."""
    height = float(page.get("height"))
    unit = height / (11 if abs(height / float(page.get("width")) - 11 / 8.5) < 0.01 else 297 / 25.4)
    top, foot = 15 / 25.4 * unit, height - 18 / 25.4 * unit
    lines = [Line(e) for e in page.findall("text")]
    lines = sorted((l for l in lines if l.text and top < l.top and l.top + l.height < foot), key=lambda l: (l.top, l.left))
    full = (max(l.top + l.height for l in lines) - top) / (foot - top) if lines else 0
    return lines, full


def check_head_lines(lines, where):
    """Bold lines straight below each other: a head of a table in many lines."""
    for i, line in enumerate(lines):
        stack, below = 1, line
        for other in lines[i + 1:]:
            if other.bold and line.bold and not line.text.isdigit() and abs(other.height - line.height) < 1 and \
                    below.top < other.top < below.top + 1.5 * below.height and \
                    other.left < line.left + line.width and line.left < other.left + other.width:
                stack, below = stack + 1, other
        expect(stack <= HEAD_LINES, f"{where}: {stack} lines of a head: {line.text} ... {below.text}")


def check_pdf(program, job, folder, paper):
    out = folder / "sheets.pdf"
    told = json.loads(run(program, "sheets", job, "-o", out, "--paper", paper, "--format", "json"))
    root = tree.fromstring(run("pdftohtml", "-xml", "-i", "-stdout", out))
    pages = root.findall("page")
    starts = [int(i.get("page")) for i in root.find("outline") if i.tag == "item"]
    cover = starts[1] - 1
    for number, page in enumerate(pages, 1):
        where = f"{job.name} {paper} page {number}"
        if float(page.get("width")) > float(page.get("height")):
            continue
        lines, full = body(page)
        expect(full >= LEAST_FULL, f"{where}: only {full:.2f} of it is used")
        goes_on = number < len(pages) and number + 1 not in starts and number > cover
        expect(full >= LEAST_FULL_WITHIN or not goes_on, f"{where}: {full:.2f} of it is used, though its sheet goes on")
        if cover < number and number not in starts:
            # the heading of what goes on here
            expect(lines[0].bold, f"{where}: begins with `{lines[0].text}`, which no heading or head stands over")
        for line in lines:
            right = max((l for l in lines if abs(l.top - line.top) < 2), key=lambda l: l.left)
            expect(not right.text.endswith("="), f"{where}: a formula breaks behind its sign of equality: `{line.text}`")
        if number != cover:
            last = max(lines, key=lambda l: l.top + l.height)
            expect(not last.bold or last.text.isdigit(), f"{where}: `{last.text}` is alone at the foot")
        if number > 1:
            check_head_lines(lines, where)
    check_index(pages[cover - 1], [s["name"] for s in told["sheets"]], starts, f"{job.name} {paper}")


def check_index(page, names, starts, where):
    lines = body(page)[0]
    for i, (name, start) in enumerate(zip(names, starts), 1):
        entry = [l for l in lines if re.sub(r"\s+", " ", l.text) == f"{i} {name}"]
        beside = [l for l in lines if entry and abs(l.top - entry[0].top) < 2 and l.text.startswith("page ")]
        expect(beside and beside[0].text == f"page {start}",
               f"{where}: sheet {i} begins on page {start}, its list says {[l.text for l in beside]}")


class Tables(html.parser.HTMLParser):
    """Each table as (classes, heads, rows); a cell as (text, head that it carries, whether it may wrap)."""

    def __init__(self):
        super().__init__()
        self.tables, self.cell = [], None

    def handle_starttag(self, tag, attributes):
        told = dict(attributes)
        if tag == "table":
            self.tables.append(((told.get("class") or "").split(), [], []))
        elif tag == "tr" and self.tables:
            self.tables[-1][2].append([])
        elif tag in ("th", "td"):
            self.cell = ["", told.get("data-h"), "k" not in (told.get("class") or "").split()]
            (self.tables[-1][1] if tag == "th" else self.tables[-1][2][-1]).append(self.cell)

    def handle_endtag(self, tag):
        if tag in ("th", "td"):
            self.cell = None

    def handle_data(self, data):
        if self.cell:
            self.cell[0] += data


def longest(text, whole):
    return len(text) if whole else max((len(w) for w in text.split(" ")), default=0)


def check_html(program, job, folder):
    out = folder / "sheets.html"
    run(program, "sheets", job, "-o", out)
    text = out.read_text(encoding="utf-8")
    reader = Tables()
    reader.feed(text)
    expect(len(reader.tables) > 5, f"{job.name}: {len(reader.tables)} tables")
    expect("td::before{content:attr(data-h)" in text, f"{job.name}: heads of cells are not shown")
    steps, results = text.count('<div class="step">'), text.count('<span class="q">= <strong>')
    expect(steps == results > 20, f"{job.name}: {steps} formulas, {results} results that keep their sign of equality")
    for classes, heads, rows in reader.tables:
        names, rows = [h[0] for h in heads], [r for r in rows if r]
        blocks = "m" in classes or "l" in classes
        wide = sum(max([longest(n, False)] + [longest(r[c][0], not r[c][2]) for r in rows]) + 1 for c, n in enumerate(names))
        expect(blocks or wide <= PHONE, f"{job.name}: {names}: {wide} letters wide on a telephone")
        for row in rows if blocks else []:
            expect([c[1] for c in row] == names, f"{job.name}: {[c[1] for c in row]} stand before the cells of {names}")


def main():
    program, examples = sys.argv[1:3]
    jobs = sorted(pathlib.Path(examples).glob("*.xml"))
    expect(jobs, "no examples")
    for job in jobs:
        with tempfile.TemporaryDirectory() as folder:
            for paper in ("letter", "a4"):
                check_pdf(program, job, pathlib.Path(folder), paper)
            check_html(program, job, pathlib.Path(folder))
    finish()


if __name__ == "__main__":
    main()
