#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Distances of drawings other than the plans, from the SVG alone, against what the job says.

drawn.py PROGRAM EXAMPLES"""
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
IN, FT = 0.0254, 0.3048


def near(got, want, slack, what):
    expect(abs(got - want) <= slack, f"{what}: drawn {got:.4f}, want {want:.4f}")


class Drawing:
    """Paths per layer in metres of the world, y up; every text."""

    def __init__(self, program, job, view, *settings):
        words = [word for setting in settings for word in ("--set", setting)]
        with tempfile.TemporaryDirectory() as folder:
            out = pathlib.Path(folder) / "x.svg"
            done = subprocess.run([program, "draw", job, "--view", view, "-o", out, "--format", "json", *words],
                                  stdout=subprocess.PIPE, stderr=subprocess.PIPE, check=False)
            if done.returncode > 2:
                sys.exit(f"{view} of {job}: {done.stderr.decode()}")
            self.scale = json.loads(done.stdout)["sheets"][0]["scale"]
            root = tree.parse(out).getroot()
        self.paths, texts = {}, []
        for group in root.iter(SVG + "g"):
            for path in group.findall(SVG + "path"):
                numbers = [float(n) for n in re.findall(r"-?\d+\.\d+", path.get("d"))]
                points = [(x * self.scale / 1000, -y * self.scale / 1000) for x, y in zip(numbers[::2], numbers[1::2])]
                self.paths.setdefault(group.get("class"), []).append((points, path.get("fill")))
            texts += ["".join(text.itertext()) for text in group.findall(SVG + "text")]
        self.text = " ".join(texts)

    def of(self, layer, corners):
        return [points for points, _ in self.paths.get(layer, []) if len(points) == corners]


def side(a, b):
    return math.dist(a, b)


def off(a, b, p):
    """How far p lies from the line through a and b."""
    return abs((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / side(a, b)


def rack(program, examples):
    """flat-tilted: 42 in up the slope, tilted by 10 degrees on a roof of 1/4 in 12, its low edge 12 in above it."""
    d = Drawing(program, examples / "flat-tilted.xml", "rack", "collector.rows=2", "collector.row-gap=30 in")
    roof = math.atan(0.25 / 12)
    first, second = sorted(d.of("COLLECTOR", 4))[:2]
    slack = 2e-6 * d.scale
    near(side(first[0], first[1]), 42 * IN, slack, "rack: collector from edge to edge")
    near(side(first[1], first[2]), 1.5 * IN, slack, "rack: depth of the collector")
    near(math.atan2(first[1][1] - first[0][1], first[1][0] - first[0][0]), math.radians(10) + roof, 1e-3, "rack: tilt")
    # the clear gap is counted along the roof between the rows' shadows: 42 in cos 10 + 30 in
    near(side(first[0], second[0]), (42 * math.cos(math.radians(10)) + 30) * IN, slack, "rack: row to row")
    # the covering is the only black strip as long as the roof that is drawn
    strips = [points for points, fill in d.paths["MATERIAL"] if fill == "#000" and len(points) == 4 and
              side(points[0], points[1]) > 1]
    expect(len(strips) == 1, f"rack: {len(strips)} coverings")
    for row in (first, second):
        near(off(strips[0][2], strips[0][3], row[0]), 12 * IN, slack, "rack: low edge above the roof")
    for words in ("F1", "R3", "front feet lift: at most", "rear feet press on the roof", "takes the rack as braced"):
        expect(words in d.text, f"rack: no `{words}`")


def paths_to_keep_clear(program, examples):
    """hip-shingle: 36 in square to each hip and 18 in below the ridge, and nothing of it beyond the plane's edge."""
    d = Drawing(program, examples / "hip-shingle.xml", "plan", "building.access-path=36 in", "building.access-side=both",
                "building.ridge-clear=18 in")
    edges = [p for p in d.of("RIDGE", 2) if side(*p) > 2]  # not the sample in the legend
    expect(len(edges) == 3, f"hip: {len(edges)} ridges and hips")
    borders = [points for points, fill in d.paths["KEEP-CLEAR"] if len(points) == 2]
    slack = 3e-6 * d.scale
    for a, b in edges:
        wide = 18 * IN if abs(a[1] - b[1]) < 1e-3 else 36 * IN
        beside = [p for p in borders if abs(off(a, b, p[0]) - wide) < slack and abs(off(a, b, p[1]) - wide) < slack and
                  side(*p) > 2]
        expect(beside, f"hip: no line {wide:.3f} m from an edge of {side(a, b):.2f} m")
    low = min(point[1] for edge in d.of("ROOF-EDGE", 2) for point in edge)
    expect(min(p[1] for path in borders for p in path) > low - slack, "hip: hatched below the eave")
    expect("keep clear" in d.text and "ridge and hips" in d.text, "hip: no words")
    refused = subprocess.run([program, "check", examples / "hip-shingle.xml", "--set", "building.access-path=36 in", "--set",
                              "collector.left=10 ft 8 in"], stderr=subprocess.PIPE, stdout=subprocess.DEVNULL, check=False)
    expect(refused.returncode == 3 and b"access-path" in refused.stderr, "hip: an array on the path is let through")


def house(program, examples):
    """first-shingle: 40 ft by 28 ft, eaves and rakes as the job has them; a line 20 ft below, one 8 ft at the left."""
    d = Drawing(program, examples / "first-shingle.xml", "site", "building.line-below=20 ft", "building.line-left=8 ft",
                "site.address=Upper Lane 4")
    walls = [p for p in d.of("MATERIAL", 2)]
    slack = 2e-6 * d.scale
    lengths = sorted(side(*p) for p in walls)
    expect(len(walls) == 4, f"house: {len(walls)} walls")
    near(lengths[0], 28 * FT, slack, "house: depth")
    near(lengths[-1], 40 * FT, slack, "house: length")
    left, below = min(p[0] for w in walls for p in w), min(p[1] for w in walls for p in w)
    lines = d.of("FRAME", 2)
    expect(len(lines) == 2, f"house: {len(lines)} property lines")
    level = [p for p in lines if abs(p[0][1] - p[1][1]) < 1e-6]
    plumb = [p for p in lines if abs(p[0][0] - p[1][0]) < 1e-6]
    near(below - level[0][0][1], 20 * FT, slack, "house: line below")
    near(left - plumb[0][0][0], 8 * FT, slack, "house: line at the left")
    expect("Upper Lane 4" in d.text and "no survey was made" in d.text, "house: no words")
    bare = Drawing(program, examples / "first-shingle.xml", "site")
    expect(not bare.of("FRAME", 2) and "tells no property lines" in bare.text and "no north" in bare.text,
           "house: something that the job does not tell")


def fasteners(program, examples):
    """first-shingle with other fasteners: what is drawn is what the job names, and reaches where it says."""
    job = examples / "first-shingle.xml"
    depth = 5.5 * IN

    def rafter(d):
        areas = [p for p, fill in d.paths["MATERIAL"] if fill == "#ededed" and len(p) == 4]
        return max(areas, key=lambda p: side(p[0], p[1]))

    def beyond(d, points):
        """Farthest below the rafter's lower face, between its ends; not the little triangle of the pitch."""
        a, b = rafter(d)[:2]
        across = ((b[0] - a[0]) / side(a, b), (b[1] - a[1]) / side(a, b))
        below = [off(a, b, p) for p in points if across[0] * (p[1] - a[1]) < across[1] * (p[0] - a[0]) and
                 0.05 < across[0] * (p[0] - a[0]) + across[1] * (p[1] - a[1]) < side(a, b)]
        return max(below, default=0)

    every = lambda d: [p for path, _ in d.paths["MATERIAL"] for p in path]
    lag = Drawing(program, job, "attachment")
    near(side(rafter(lag)[1], rafter(lag)[2]), depth, 2e-6 * lag.scale, "attachment: depth of the rafter")
    expect(beyond(lag, every(lag)) < 1e-3 and "lag screw" in lag.text, "lag screw: something below the rafter")
    bolt = Drawing(program, job, "attachment", "fastener.kind=through-bolt", "fastener.washer-diameter=1.5 in",
                   "fastener.length=9 in")
    # under the head: 1/4 in of plate, 15/32 in of deck or what the check takes, the rafter; 9 in less that stand out
    expect(1.5 * IN < beyond(bolt, every(bolt)) < 9 * IN - depth, "bolt: its end is not where 9 in reach")
    expect("washer 1-1/2 in and nut below the rafter" in bolt.text and "lead hole" not in bolt.text, "bolt: words")
    short = Drawing(program, job, "attachment", "fastener.kind=through-bolt", "fastener.washer-diameter=1.5 in",
                    "fastener.length=6 in")
    expect("TOO SHORT" in short.text and "TOO SHORT" not in bolt.text, "bolt: 6 in do not reach through")
    hanger = Drawing(program, job, "attachment", "fastener.kind=hanger-bolt", "fastener.length=8 in",
                     "fastener.thread-length=3 in")
    expect("between two nuts with washers" in hanger.text and "base plate" not in hanger.text, "hanger bolt: words")
    expect(beyond(hanger, every(hanger)) < 1e-3, "hanger bolt: something below the rafter")
    clamp = Drawing(program, examples / "seam-clamps.xml", "attachment")
    expect("clamp on the seam: no hole" in clamp.text and "lag screw" not in clamp.text, "clamp: words")


def pipes(program, examples):
    """first-shingle has two kinds of pipes: each has a sheet, with its own size; a third alike has none."""
    job = examples / "first-shingle.xml"
    first, second = Drawing(program, job, "pipe"), Drawing(program, job, "pipe-2")
    expect("pipe 7/8 in outside" in first.text and "2 alike" in first.text, "pipe P1: words")
    expect("pipe 1/4 in outside" in second.text and "insulation" not in second.text, "pipe P2: words")
    with tempfile.TemporaryDirectory() as folder:
        out = pathlib.Path(folder) / "x.html"
        told = json.loads(subprocess.run([program, "sheets", job, "-o", out, "--format", "json"], stdout=subprocess.PIPE,
                                         check=False).stdout)
    names = [sheet["name"] for sheet in told["sheets"] if sheet["name"].startswith("Pipe")]
    expect(names == ["Pipe through the roof: P1", "Pipe through the roof: P2"], f"pipes: sheets {names}")


def with_more(job, more, folder):
    """The same job with more elements at its end."""
    text = job.read_text().replace("</job>", more + "</job>")
    changed = pathlib.Path(folder) / job.name
    changed.write_text(text)
    return changed


def flashing_from_above(program, examples):
    """One picture for the feet and one for each kind of pipe, three on a sheet; no picture of another kind of foot."""
    job = examples / "first-shingle.xml"
    d = Drawing(program, job, "flashing")
    for words in ("Feet", "Pipe P1", "Pipe P2", "pipe, 7/8 in across", "pipe, 1/4 in across"):
        expect(words in d.text, f"flashing: no `{words}`")
    expect(d.text.count("insulation, in its jacket") == 1, "flashing: a bare pipe has insulation")
    with tempfile.TemporaryDirectory() as folder:
        many = with_more(job, '<pipe diameter="1 in" count="1"/><pipe diameter="1/4 in" count="1"/>'
                         '<pipe diameter="2 in" count="1"/>', folder)
        first, second = Drawing(program, many, "flashing"), Drawing(program, many, "flashing-2")
        expect("Pipe P2, P4" in first.text and "Pipe P5" not in first.text, "flashing: first of two sheets")
        expect("Pipe P3" in second.text and "Pipe P5" in second.text and "Feet" not in second.text, "flashing: second sheet")
    posts = Drawing(program, examples / "ridge-metal-si.xml", "flashing")
    expect("hold feet by clamps on its seams" in posts.text and "seen from above" in posts.text and
           "Clamps on the seams" not in posts.text, "flashing: clamps for a foot that goes through")
    clamps = Drawing(program, examples / "seam-clamps.xml", "flashing")
    expect("Clamps on the seams" in clamps.text, "flashing: no clamps where there are clamps")


def obstacle_on_a_hip(program, examples):
    """Of what straddles a hip the plan shows the part on this plane: right of x = y cos(5:12), 45 degrees on the level."""
    with tempfile.TemporaryDirectory() as folder:
        job = with_more(examples / "hip-shingle.xml", '<obstacle x="3 ft" y="1 ft" width="40 in" height="60 in" '
                        'clearance="6 in"/>', folder)
        d = Drawing(program, job, "plan")
    left = min(p[0] for edge in d.of("ROOF-EDGE", 2) for p in edge if side(*edge) > 2)
    low = min(p[1] for edge in d.of("ROOF-EDGE", 2) for p in edge if side(*edge) > 2)
    # not the sample in the legend, which lies below the eave
    points = [(x - left, y - low) for path, _ in d.paths["OBSTACLE"] for x, y in path if y > low]
    lean = 12 / math.hypot(5, 12)
    expect(points and all(x > y * lean - 0.01 for x, y in points), "hip: an obstacle hangs in the air")
    near(min(y for _, y in points), 0.5 * FT, 0.01, "hip: clearance below the obstacle")
    near(max(x for x, _ in points), 3 * FT + 46 * IN, 0.01, "hip: clearance at its right")


def steel(program, examples):
    """A screw in steel goes into a steel member, and nothing is called a rafter."""
    d = Drawing(program, examples / "ridge-metal-si.xml", "attachment", "roof.covering=metal-exposed-fastener",
                "framing.kind=steel", "fastener.kind=sheet-screw", "fastener.steel-thickness=1.9 mm", "mount.seat=on-deck",
                "fastener.diameter=6.3 mm", "fastener.length=38 mm", "fastener.count=4", "fastener.spacing=25 mm")
    expect("steel joist" in d.text and "up the slope, as on the plan" in d.text and "1.9 mm" in d.text and "rafter" not in d.text, "steel: words")
    flanges = [p for p, fill in d.paths["MATERIAL"] if fill == "#000" and len(p) == 4 and
               abs(side(p[1], p[2]) - 0.0019) < 3e-6 * d.scale and side(p[0], p[1]) > 0.2]
    expect(len(flanges) == 2, f"steel: {len(flanges)} flanges of 1.9 mm")


def main():
    program, examples = sys.argv[1], pathlib.Path(sys.argv[2])
    for part in (rack, paths_to_keep_clear, house, fasteners, pipes, flashing_from_above, obstacle_on_a_hip, steel):
        part(program, examples)
    finish()


if __name__ == "__main__":
    main()
