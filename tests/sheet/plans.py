#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Roof plan and layout of each example as a crew and a reviewer read them, from the SVG alone: every number at its own
foot and clear of all else, letters large enough, samples of the legend like the plan, distances where they belong, the
arrow on the roof, the scale as large as the sheet lets it be.

plans.py PROGRAM EXAMPLES"""
import itertools
import json
import math
import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as tree

from told import expect, finish

SVG = "{http://www.w3.org/2000/svg}"
CAPITAL = 1493 / 2048  # of the typeface's em
LEAST = 1.8            # mm: ISO 3098's smallest nominal height of letters (from memory)
US = [12, 16, 24, 32, 48, 64, 96, 128, 192, 384]
SI = [10, 20, 25, 50, 75, 100, 125, 150, 200, 250, 500]


class Text:
    def __init__(self, element, layer, order):
        self.words, self.layer, self.order = "".join(element.itertext()), layer, order
        x, y, self.size, length = (float(element.get(k)) for k in ("x", "y", "font-size", "textLength"))
        turn = re.match(r"rotate\((-?[\d.]+)", element.get("transform", ""))
        self.turn = float(turn.group(1)) if turn else 0.0
        c, s = math.cos(math.radians(self.turn)), math.sin(math.radians(self.turn))
        corners = [(x + u * c - v * s, y + u * s + v * c) for u in (0, length) for v in (0, -CAPITAL * self.size)]
        self.box = (min(p[0] for p in corners), min(p[1] for p in corners),
                    max(p[0] for p in corners), max(p[1] for p in corners))
        self.middle = ((self.box[0] + self.box[2]) / 2, (self.box[1] + self.box[3]) / 2)


class Plan:
    """Lines, texts and dots in mm on paper, y down, in the order in which they are drawn."""

    def __init__(self, program, job, view, *words):
        with tempfile.TemporaryDirectory() as folder:
            out = pathlib.Path(folder) / "x.svg"
            done = subprocess.run([program, "draw", job, "--view", view, "-o", out, "--format", "json", *words],
                                  stdout=subprocess.PIPE, stderr=subprocess.PIPE, check=False)
            if done.returncode > 2:
                sys.exit(f"{view} of {job}: {done.stderr.decode()}")
            self.scale = json.loads(done.stdout)["sheets"][0]["scale"]
            root = tree.parse(out).getroot()
        self.width, self.height = map(float, root.get("viewBox").split()[2:])
        self.texts, self.paths, self.dots, order = [], [], [], 0
        for group in root.iter(SVG + "g"):
            layer = group.get("class")
            for e in group if layer else []:
                order += 1
                if e.tag == SVG + "text":
                    self.texts.append(Text(e, layer, order))
                elif e.tag == SVG + "path":
                    numbers = [float(n) for n in re.findall(r"-?\d+\.\d+", e.get("d"))]
                    width = 0.0 if e.get("stroke") == "none" else float(e.get("stroke-width"))
                    self.paths.append((layer, list(zip(numbers[::2], numbers[1::2])), width, e.get("fill"), order))
                elif e.tag == SVG + "circle" and layer == "ATTACHMENT" and e.get("fill") == "#000":
                    self.dots.append((float(e.get("cx")), float(e.get("cy")), float(e.get("r")), order))

    def of(self, layer, corners):
        return [points for name, points, _, _, _ in self.paths if name == layer and len(points) == corners]


def feet_of(program, job, plan):
    """Number of each dot: the check's own numbers, by place."""
    told = json.loads(subprocess.run([program, "check", job, "--format", "json"], stdout=subprocess.PIPE, check=False).stdout)
    if not told["passes"]:
        return {}
    unit = {"in": 0.0254, "mm": 0.001, "ft": 0.3048, "m": 1.0}
    metres = lambda q: q["value"] * unit[q["unit"]]
    feet = [(metres(a["x"]), metres(a["y"]), a["attachment"], a["line"]) for a in
            told["passes"][told["judged"]]["attachments"]]
    dots = [d[:2] for d in plan.dots]
    expect(len(feet) == len(dots), f"{job.name}: {len(dots)} dots for {len(feet)} feet")
    if not feet or len(feet) != len(dots):
        return {}
    left, low = min(d[0] for d in dots), max(d[1] for d in dots)
    x0, y0 = min(f[0] for f in feet), min(f[1] for f in feet)
    on_paper = lambda f: (left + (f[0] - x0) * 1000 / plan.scale, low - (f[1] - y0) * 1000 / plan.scale)
    return {f[2]: (min(dots, key=lambda d: math.dist(d, on_paper(f))), f[3]) for f in feet}


def gap(a, b):
    """Between two upright boxes; below 0 they overlap."""
    dx, dy = max(a[0], b[0]) - min(a[2], b[2]), max(a[1], b[1]) - min(a[3], b[3])
    return math.hypot(max(dx, 0), max(dy, 0)) if dx > 0 or dy > 0 else max(dx, dy)


def meets(box, a, b):
    """True if the segment has a part in the box."""
    t0, t1 = 0.0, 1.0
    for p, q, low, high in ((a[0], b[0], box[0], box[2]), (a[1], b[1], box[1], box[3])):
        if abs(q - p) < 1e-9:
            if not low < p < high:
                return False
            continue
        u, v = sorted(((low - p) / (q - p), (high - p) / (q - p)))
        t0, t1 = max(t0, u), min(t1, v)
    return t0 < t1


def numbers(program, job, plan, where):
    feet = feet_of(program, job, plan)
    told = {int(t.words): t for t in plan.texts if t.layer == "ATTACHMENT"}
    expect(set(told) <= set(feet), f"{where}: numbers of no foot: {set(told) - set(feet)}")
    for line in {row for _, row in feet.values()}:
        row = sorted(n for n in feet if feet[n][1] == line)
        expect({row[0], row[-1]} <= set(told), f"{where}: an end of the row {row[0]} to {row[-1]} has no number")
        xs = sorted(feet[n][0][0] for n in row)
        # a bold digit is 0.696 em wide; twice that for each leaves room to go round what passes by
        if len(xs) > 1 and min(b - a for a, b in zip(xs, xs[1:])) > 2 * 2.5 * 0.696 * len(str(row[-1])):
            expect(set(row) <= set(told), f"{where}: room for each, but no number at {sorted(set(row) - set(told))}")
    for number, text in told.items():
        own = feet[number][0] if number in feet else (0, 0)
        nearest = min(plan.dots, key=lambda d: gap(text.box, (d[0] - d[2], d[1] - d[2], d[0] + d[2], d[1] + d[2])))
        led = any(name == "THIN" and len(p) == 2 and min(math.dist(q, own) for q in p) < 0.01 for name, p, _, _, _ in plan.paths)
        expect(led or math.dist(nearest[:2], own) < 0.01, f"{where}: {number} stands at another foot")
        for x, y, r, _ in plan.dots:
            clear = gap(text.box, (x, y, x, y)) - r
            expect(clear > 0.2, f"{where}: {number} is {clear:.2f} mm from a dot")
    for a, b in itertools.combinations(plan.texts, 2):
        if "ATTACHMENT" in (a.layer, b.layer):
            expect(gap(a.box, b.box) > 0.5, f"{where}: `{a.words}` and `{b.words}` are {gap(a.box, b.box):.2f} mm apart")


HEAVY = ("ROOF-EDGE", "RIDGE", "RAIL", "COLLECTOR", "PIPE")


def halos(plan, where):
    """The white behind a text, or in its frame, hides no dot, no joint and no heavy line that was drawn before it."""
    for layer, points, width, fill, order in plan.paths:
        if not (layer == "TEXT" and fill == "#fff" and len(points) == 4):
            continue
        xs, ys = [p[0] for p in points], [p[1] for p in points]
        if len({round(x, 2) for x in xs}) > 2:
            continue  # at a slant
        box = (min(xs), min(ys), max(xs), max(ys))
        for x, y, r, then in plan.dots:
            expect(then > order or gap(box, (x, y, x, y)) > r - 0.01, f"{where}: white at {box} bites into a dot")
        for name, line, thick, _, then in plan.paths:
            if name in HEAVY and thick > 0.3 and then < order:
                for a, b in zip(line, line[1:]):
                    expect(not meets(box, a, b), f"{where}: white at {box} hides a line of {name}")


def letters(plan, where):
    small = [t for t in plan.texts if CAPITAL * t.size < LEAST - 0.01]
    # the caution that stands on each sheet a second time may be smaller
    expect(all(t.layer == "TEXT" and len(t.words) > 10 or t.words == "before it." for t in small),
           f"{where}: small letters: {[t.words for t in small][:5]}")
    expect(all(CAPITAL * t.size > 1.4 for t in plan.texts), f"{where}: letters below 1.4 mm")


def angle(a, b):
    return round(math.degrees(math.atan2(a[1] - b[1], b[0] - a[0])) % 180) % 180


def legend(plan, where):
    """The sample of each zone leans as the hatch round the zone's name on the plan; no two zones look alike."""
    lines = plan.of("ZONE-HATCH", 2)
    boxes = [p for p in plan.of("ZONE", 4)]
    look = {}
    for text in plan.texts:
        zone = re.match(r"zone (\S+?)(:|$)", text.words)
        if not zone:
            continue
        # its box, at the left, level with it
        level = [b for b in boxes if min(p[1] for p in b) < text.middle[1] < max(p[1] for p in b) and
                 0 < text.box[0] - max(p[0] for p in b) < 5]
        expect(len(level) == 1, f"{where}: {len(level)} samples for {text.words}")
        xs, ys = [p[0] for p in level[0]], [p[1] for p in level[0]]
        within = [l for l in lines if all(min(xs) - 0.01 < p[0] < max(xs) + 0.01 and
                                          min(ys) - 0.01 < p[1] < max(ys) + 0.01 for p in l) and math.dist(*l) > 0.4]
        look[zone.group(1)] = {angle(*l) for l in within}
    # on the roof, not in the legend's words: framed, for a bare figure is a foot
    named = [t for t in plan.texts if t.layer == "TEXT" and t.words in look and t.turn == 0 and CAPITAL * t.size > 2]
    frames = [p for name, p, width, fill, _ in plan.paths if name == "TEXT" and fill == "#fff" and width > 0 and len(p) == 4]
    expect({t.words for t in named} == set(look), f"{where}: zones {set(look)} in the legend, {[t.words for t in named]} drawn")
    for t in named:
        expect(any(min(q[0] for q in p) < t.box[0] and max(q[0] for q in p) > t.box[2] and min(q[1] for q in p) < t.box[1] and
                   max(q[1] for q in p) > t.box[3] for p in frames), f"{where}: zone {t.words} has no frame")
    hatched = [frozenset(v) for v in look.values() if v]
    expect(len(hatched) == len(set(hatched)), f"{where}: two zones look alike: {look}")
    for text in plan.texts:
        if text.layer == "TEXT" and text.words in look and text.turn == 0 and CAPITAL * text.size > 2:
            x0, y0, x1, y1 = text.box
            near = {angle(*l) for l in lines if meets((x0 - 1.9, y0 - 1.9, x1 + 1.9, y1 + 1.9), *l)}
            # beside a border the next zone's lines come near too: its own must all be there
            expect(look[text.words] <= near, f"{where}: zone {text.words} leans {near}, its sample {look[text.words]}")
            expect(look[text.words] or not near or len(near) <= 2, f"{where}: zone {text.words} is hatched, its sample not")


def roof_polygon(plan):
    """Corners of the plane, from its edges; nothing where some are beyond the window."""
    edges = [tuple(p) for name in ("ROOF-EDGE", "RIDGE") for p in plan.of(name, 2) if math.dist(*p) > 15]
    if len(edges) < 3:
        return []
    corners, left = list(edges.pop(0)), edges
    while left:
        nxt = [e for e in left if min(math.dist(corners[-1], q) for q in e) < 0.05]
        if not nxt:
            return []
        left.remove(nxt[0])
        corners.append(max(nxt[0], key=lambda q: math.dist(corners[-1], q)))
    return corners[:-1] if math.dist(corners[0], corners[-1]) < 0.05 else []


def inside(corners, p):
    turns = [(b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]) for a, b in zip(corners, corners[1:] + corners[:1])]
    return all(t > 0 for t in turns) or all(t < 0 for t in turns)


def arrow(plan, where):
    heads = [p for name, p, width, fill, _ in plan.paths if name == "TEXT" and fill == "#000" and len(p) == 3 and width == 0]
    corners = roof_polygon(plan)
    expect(corners, f"{where}: the plane's edges do not close")
    for head in heads:
        if head[0][1] > max(q[1] for q in corners):
            continue  # north, in the legend
        expect(all(inside(corners, p) for p in head), f"{where}: the arrow is not on the roof")
        x, top = head[0][0], head[0][1] - 13
        for rafter in plan.of("RAFTER", 2):
            if abs(rafter[0][0] - rafter[1][0]) < 0.01 and math.dist(*rafter) > 12:
                expect(abs(rafter[0][0] - x) > 0.9 or rafter[0][1] < top, f"{where}: the arrow lies on a rafter")


def pitch(plan, where):
    """The pitch beside the arrow: no rafter goes through it where a bay has room for it."""
    ends = sorted({round(p[0][0], 2) for p in plan.of("RAFTER", 2) if abs(p[0][0] - p[1][0]) < 0.01 and math.dist(*p) > 12})
    bay = min((b - a for a, b in zip(ends, ends[1:])), default=0)
    for text in plan.texts:
        if text.layer == "TEXT" and re.fullmatch(r"[\d.]+(:12| deg)", text.words) and text.box[2] - text.box[0] + 1.2 < bay:
            expect(not any(text.box[0] < x < text.box[2] for x in ends), f"{where}: a rafter goes through `{text.words}`")


def clear_distances(plan, where):
    """At the right of the roof: what is clear below, at and above the array, each text level with its own distance; and
    beyond them the whole length, but where it would cost scale."""
    corners = roof_polygon(plan)
    ys = [q[1] for p in plan.of("COLLECTOR", 4) for q in p if q[0] < max(c[0] for c in corners) and
          q[1] < max(c[1] for c in corners)]
    right, low, high = max(c[0] for c in corners), max(c[1] for c in corners), min(c[1] for c in corners)
    marks = [low, max(ys), min(ys)] + ([high] if len({round(c[0], 1) for c in corners}) == 2 else [])
    texts = sorted((t for t in plan.texts if t.layer == "DIMENSION" and t.box[0] > right and high - 3 < t.middle[1] < low + 3),
                   key=lambda t: -t.middle[1])
    want = [(a, b) for a, b in zip(marks, marks[1:]) if a - b > 0.05]
    if len(texts) == len(want) + 1:
        whole = max(texts, key=lambda t: t.box[0])
        texts.remove(whole)
        expect(abs(whole.middle[1] - (low + high) / 2) < 2, f"{where}: `{whole.words}` is not level with the whole length")
        far = max(p[0][0] for p in plan.of("DIMENSION", 2) if abs(p[0][0] - p[1][0]) < 0.01 and
                  abs(abs(p[0][1] - p[1][1]) - (low - high)) < 0.1)
        expect(far > max(t.box[2] for t in texts), f"{where}: the line of the whole length goes through the texts before it")
        if whole.words.isdigit():
            expect(abs(int(whole.words) - (low - high) * plan.scale) < 0.02 * plan.scale,
                   f"{where}: `{whole.words}` for {(low - high) * plan.scale:.0f} mm")
    expect(len(texts) == len(want), f"{where}: {len(texts)} distances at the right, want {len(want)}")
    for t, (below, above) in zip(texts, want):
        expect(above - 2 < t.middle[1] < below + 2, f"{where}: `{t.words}` is not level with its distance")
        if below - above < t.box[3] - t.box[1]:
            expect(t.turn == 0, f"{where}: `{t.words}` is longer than its distance")


def extent(plan, layers):
    """Width and height of what is drawn on these layers, full size; not of the legend's samples, 9 mm long."""
    points = [q for name in layers for p in plan.of(name, 2) + plan.of(name, 4) if math.dist(*p[:2]) > 9.5 for q in p]
    return [(max(q[i] for q in points) - min(q[i] for q in points)) * plan.scale for i in (0, 1)]


def scale(plan, where, steps, full):
    """At the next larger usual scale what is drawn, full size in mm, and its dimensions have no room on this sheet. 37 mm
    beside it and 68 below and above are the least that dimensions, legend as a strip and margins take."""
    w, h = (size / plan.scale for size in full)
    expect(plan.scale in steps, f"{where}: 1:{plan.scale} is no usual scale")
    if plan.scale not in steps[1:]:
        return
    more = plan.scale / steps[steps.index(plan.scale) - 1]
    # the same paper turned: 17 mm of head and 20 of foot stay above and below, 12 at either side
    lying, standing = sorted([(plan.width, plan.height), (plan.height + 13, plan.width - 13)], reverse=True)
    # a strip has three columns on a sheet that stands, and is higher
    for (width, height), low in ((lying, 68), (standing, 85)):
        expect(w * more > width - 37 or h * more > height - low,
               f"{where}: 1:{plan.scale / more:g} fits: {w * more:.0f} x {h * more:.0f} on {width:.0f} x {height:.0f}")


def standing_sheet(program, examples):
    """A roof deeper than wide stands on its sheet, at a larger scale than on one that lies: 44 ft by 48 ft at 1/8 in to
    the foot are 140 by 152 mm, and letter lying has 179 mm for them, 36 mm of dimensions and 6 of margins."""
    plan = Plan(program, examples / "low-slope-tubes.xml", "plan", "--set", "building.width=48 ft")
    expect(plan.height > plan.width and plan.scale == 96, f"standing: {plan.width} x {plan.height}, 1:{plan.scale:g}")
    letters(plan, "standing")
    halos(plan, "standing")


def short_lot(program, examples):
    """A lot whose lines lie near the house on a small scale: no dimension is written across the line of another."""
    lines = [word for side, far in (("below", 3), ("behind", 6), ("left", 4), ("right", 200))
             for word in ("--set", f"building.line-{side}={far} ft")]
    for job in ("hip-shingle.xml", "first-shingle.xml"):
        plan = Plan(program, examples / job, "site", *lines)
        told = [t for t in plan.texts if t.layer == "DIMENSION"]
        expect(len(told) == 6, f"{job} site: {len(told)} dimensions of six")
        for text, path in itertools.product(told, plan.of("DIMENSION", 2)):
            expect(not meets(text.box, *path), f"{job} site: a line goes through `{text.words}`")


def not_drawn(program, examples):
    """What a plan cannot show it says: a valley whose line the job does not tell, rafters below seams that carry the feet."""
    for view in ("plan", "layout"):
        for job, words in (("ranch-unknown.xml", "a valley 3'-0\" along the eave"), ("seam-clamps.xml", "2x12 rafters below at 16\"")):
            told = " ".join(t.words for t in Plan(program, examples / job, view).texts)
            expect(words in told, f"{job} {view}: `{words}` is not told")
        told = " ".join(t.words for t in Plan(program, examples / "hip-shingle.xml", view).texts)
        expect("Not drawn" not in told, f"hip-shingle.xml {view}: told without need")


def main():
    program, examples = sys.argv[1], pathlib.Path(sys.argv[2])
    for job in sorted(examples.glob("*.xml")):
        for words, steps in (((), None), (("--paper", "a4", "--units", "si"), SI)):
            for view in ("plan", "layout"):
                plan, where = Plan(program, job, view, *words), f"{job.name} {view} {' '.join(words)}"
                numbers(program, job, plan, where)
                halos(plan, where)
                letters(plan, where)
                legend(plan, where)
                metric = steps or (SI if "-si" in job.name else US)
                if view == "plan":
                    full = roof = extent(plan, ("ROOF-EDGE", "RIDGE"))
                else:  # the array and 0.45 m round it, as far as there is roof
                    full = [min(a + 900, b) for a, b in zip(extent(plan, ("COLLECTOR",)), roof)]
                scale(plan, where, metric, full)
                pitch(plan, where)
                if view == "plan":
                    arrow(plan, where)
                    clear_distances(plan, where)
            letters(Plan(program, job, "site", *words), f"{job.name} site")
    not_drawn(program, examples)
    short_lot(program, examples)
    standing_sheet(program, examples)
    finish()


if __name__ == "__main__":
    main()
