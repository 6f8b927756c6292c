#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Sections of foot, pipe and block: what touches what, names that can be followed, words that are true of the job.

sections.py PROGRAM EXAMPLES"""
import math
import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as tree

sys.dont_write_bytecode = True  # nothing is left beside the sources
from drawn import IN, SVG, Drawing, near, off, side
from measure import svg_texts
from told import expect, finish

SLOPED = ("asphalt-laminated asphalt-strip clay-barrel clay-flat-interlocking clay-s concrete-tile fibre-cement "
          "fibre-cement-asbestos metal-exposed-fastener metal-shingle metal-standing-seam-mechanical "
          "metal-standing-seam-snap metal-standing-seam-structural roll-roofing slate synthetic-slate-shake thatch "
          "wood-shake wood-shingle").split()
FLAT = "bur-gravel bur-smooth-cap epdm green-roof modified-bitumen spray-foam tpo-pvc unknown".split()


def drawn(program, job, view, *settings):
    """Root of the drawing's SVG."""
    words = [word for setting in settings for word in ("--set", setting)]
    with tempfile.TemporaryDirectory() as folder:
        out = pathlib.Path(folder) / "x.svg"
        subprocess.run([program, "draw", job, "--view", view, "-o", out, *words], check=False, stdout=subprocess.DEVNULL)
        return tree.parse(out).getroot()


def leaders(root):
    """(what is named, elbow) of each name, mm."""
    for group in root.iter(SVG + "g"):
        for path in group.findall(SVG + "path") if group.get("class") == "THIN" else ():
            numbers = [float(n) for n in re.findall(r"-?\d+\.\d+", path.get("d"))]
            points = list(zip(numbers[::2], numbers[1::2]))
            if len(points) == 3 and abs(points[1][1] - points[2][1]) < 1e-6 and points[2][0] - points[1][0] > 3.9:
                yield points[0], points[1]


def left_of(a, b, p):
    return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])


def cross(a, b, c, d):
    return left_of(a, b, c) * left_of(a, b, d) < -1e-6 and left_of(c, d, a) * left_of(c, d, b) < -1e-6


def names_can_be_followed(root, where):
    """Lines to the names do not cross, names do not lie on each other, nothing is nowhere."""
    lines = list(leaders(root))
    expect(len(lines) > 1, f"{where}: {len(lines)} names")
    for i, (a, b) in enumerate(lines):
        for c, d in lines[i + 1:]:
            expect(not cross(a, b, c, d), f"{where}: the lines to two names cross at about {b[0]:.0f}, {b[1]:.0f} mm")
    level = [t for t in svg_texts(root) if abs(t[5]) < 1e-6]
    for i, a in enumerate(level):
        for b in level[i + 1:]:
            over = min(a[2], b[2]) - max(a[0], b[0]) > 0.05 and min(a[3], b[3]) - max(a[1], b[1]) > 0.05
            expect(not over, f"{where}: `{a[4]}` and `{b[4]}` overlap")
    _, _, width, height = map(float, root.get("viewBox").split())
    for (x, y), _ in lines:
        expect(1 < x < width - 1 and 1 < y < height - 1, f"{where}: something named lies at {x:.1f}, {y:.1f} mm")


def every_covering(program, examples):
    for keys, name in ((SLOPED, "first-shingle"), (FLAT, "flat-tilted")):
        for key in keys:
            for view in ("attachment", "pipe"):
                root = drawn(program, examples / f"{name}.xml", view, f"roof.covering={key}")
                names_can_be_followed(root, f"{key} {view}")


def grey(d, narrowest):
    return [p for p, fill in d.paths["MATERIAL"] if fill == "#bdbdbd" and len(p) == 4 and side(p[0], p[1]) > narrowest]


def where_the_foot_stands(program, examples):
    """first-shingle, deck of 15/32 in, plate of 1/4 in: its base lies on the rafter, or on the deck; A is the way from there."""
    job = examples / "first-shingle.xml"
    for seat, above, words in (("on-wood", 0, "1/4 in head"), ("on-deck", 15 / 32 * IN, "23/32 in head")):
        d = Drawing(program, job, "attachment", f"mount.seat={seat}")
        rafter = max((p for p, fill in d.paths["MATERIAL"] if fill == "#ededed" and len(p) == 4), key=lambda p: side(p[0], p[1]))
        base = [p for p in grey(d, 0.05) if abs(side(p[1], p[2]) - 0.25 * IN) < 3e-6 * d.scale]
        expect(len(base) == 1, f"{seat}: {len(base)} base plates")
        if base:
            near(off(rafter[2], rafter[3], base[0][0]), above, 3e-6 * d.scale, f"{seat}: base above the rafter's upper face")
        expect(words in d.text.replace("  ", " "), f"{seat}: no `{words}`")
        expect(("deck cut out" in d.text) == (seat == "on-wood"), f"{seat}: words on the deck")


def letters_beside_the_roof(program, examples):
    """A and L begin at the head, above wood: they stand left of everything that is hatched."""
    root = drawn(program, examples / "first-shingle.xml", "attachment")
    hatch = [float(n) for g in root.iter(SVG + "g") if g.get("class") == "ZONE-HATCH" for p in g.findall(SVG + "path")
             for n in re.findall(r"-?\d+\.\d+", p.get("d"))[::2]]
    for x0, _, x1, _, text, angle in svg_texts(root):
        if text in ("A", "L") and abs(math.sin(angle)) > 0.1:
            expect(x1 < min(hatch), f"letter {text} at {x0:.1f} mm, hatched from {min(hatch):.1f} mm")


def one_hole(program, examples):
    """The hole of a sleeve is as long in the section as the flashing seen from above says."""
    for name in ("first-shingle", "blocks", "coast-tile", "seam-clamps"):
        section = Drawing(program, examples / f"{name}.xml", "pipe").text
        above = Drawing(program, examples / f"{name}.xml", "flashing").text
        told = re.search(r"hole ([0-9/ -]+ in)", section)
        expect(told and f"{told.group(1)} up" in above.replace("\n", " "), f"{name}: hole {told and told.group(1)} in the section alone")


def sheet_of_paper(program, examples):
    """The largest usual scale: what the paper holds at 1:8 is not drawn at 1:12, a pipe in shingles not at 1:8."""
    for name, view, most in (("blocks", "block", 8), ("blocks", "pipe", 4), ("first-shingle", "pipe", 4), ("coast-tile", "pipe", 4),
                             ("first-shingle", "attachment", 4)):
        d = Drawing(program, examples / f"{name}.xml", view)
        expect(d.scale <= most, f"{name} {view}: 1:{d.scale:g}")


def nails_as_they_are(program, examples):
    """16d common nails: 0.162 in by 3-1/2 in (ASTM F1667)."""
    d = Drawing(program, examples / "blocks.xml", "block")
    expect("16d (0.162 in x 3-1/2 in)" in d.text.replace("\u00a0", " ") and "3/16" not in d.text, "block: its nails")
    told = subprocess.run([program, "materials", examples / "blocks.xml"], stdout=subprocess.PIPE, check=False).stdout.decode()
    expect("16d (0.162 in" in re.sub(r"\s+", " ", told), "materials: its nails")


def printed(program, command, job, *settings):
    words = [word for setting in settings for word in ("--set", setting)]
    with tempfile.TemporaryDirectory() as folder:
        out = pathlib.Path(folder) / "x.html"
        subprocess.run([program, command, job, "-o", out, *words], check=False, stdout=subprocess.DEVNULL)
        return re.sub(r"\s+", " ", re.sub(r"<[^>]*>", " ", out.read_text(encoding="utf-8")))


def steps_that_are_theirs(program, examples):
    """Feet that the notes do not draw get no steps, the pipes theirs; where the base lies under the plate it is said."""
    other = printed(program, "field", examples / "ridge-metal-si.xml")
    expect("Give each pipe its place" in other and "neither picture nor steps" in other, "other foot: steps of the pipes")
    expect("Torque every set screw" not in other, "other foot: steps of clamps")
    clamps = printed(program, "field", examples / "seam-clamps.xml", "roof.covering=metal-exposed-fastener")
    expect("Boot or over-flashing" in clamps and "Butyl below the bracket" not in clamps and
           "no steps: the clamp's maker says how" in clamps, "clamps where the notes have none")
    below, above = (printed(program, "field", examples / "first-shingle.xml", f"mount.seat={seat}") for seat in ("on-deck", "over-layers"))
    expect("set foot and screws first" in below and "set foot and screws first" not in above, "base below its plate")
    dry = printed(program, "field", examples / "ranch-unknown.xml")
    expect("Set pipe sleeves" not in dry, "steps of pipes where there are none")


def words_of_this_roof(program, examples):
    flat = printed(program, "sheets", examples / "flat-tilted.xml")
    expect("in 1 layer" not in flat and "under the course above" not in flat, "inspection: courses of a membrane")
    shake = Drawing(program, examples / "snow-shake.xml", "flashing")
    expect("Hot pipe" not in shake.text and "Pipe through wood shakes" in shake.text, "snow-shake: title of its pipes")
    for key in ("thatch", "fibre-cement-asbestos"):
        d = Drawing(program, examples / "first-shingle.xml", "attachment", f"roof.covering={key}")
        expect("say not to open it" in d.text, f"{key}: drawn as if one might open it")


def crosses_text(a, b, box):
    """The line from a to b meets the box."""
    for k in range(201):
        x, y = a[0] + (b[0] - a[0]) * k / 200, a[1] + (b[1] - a[1]) * k / 200
        if box[0] < x < box[2] and box[1] < y < box[3]:
            return True
    return False


def tilted_rows(program, examples):
    """From its side: no line to a name runs through a dimension or a letter of a force. At its feet the collector slopes and
    stands higher than the clearance: it is not drawn flat over them."""
    for name in ("low-slope-tubes", "flat-tilted"):
        root = drawn(program, examples / f"{name}.xml", "rack")
        texts = [b for b in svg_texts(root) if re.fullmatch(r"""[FR][123]|[0-9' /"-]+""", b[4].replace("\u00a0", " "))]
        expect(len(texts) > 6, f"{name}: {len(texts)} dimensions and letters")
        for a, b in leaders(root):
            for box in texts:
                expect(not crosses_text(a, b, box), f"{name} rack: a line to a name runs through `{box[4]}`")
        foot = Drawing(program, examples / f"{name}.xml", "attachment").text
        expect("underside" not in foot and "sheet Tilted row" in foot.replace("\n", " "), f"{name}: collector over the foot")


def dots_apart(program, examples):
    """No line to a name ends on the line to another."""
    lines = list(leaders(drawn(program, examples / "coast-tile.xml", "attachment")))
    for i, (a, _) in enumerate(lines):
        for k, (c, d) in enumerate(lines):
            if i != k:
                expect(not crosses_text(c, d, (a[0] - 0.6, a[1] - 0.6, a[0] + 0.6, a[1] + 0.6)),
                       f"coast-tile: the dot at {a[0]:.1f}, {a[1]:.1f} mm lies on the line to another name")


def feet_as_they_stand(program, examples):
    """A foot on a rafter is not drawn on a block; a screw longer than what it stands in, a post over its heads are told.
    coast-tile: 5 in less 1/4 in of plate and 5/8 in of deck in a chord of 3-1/2 in leaves 5/8 in."""
    for name in ("low-slope-tubes", "flat-tilted", "snow-shake"):
        above = Drawing(program, examples / f"{name}.xml", "flashing").text
        expect("block" not in above.replace("blocks", ""), f"{name}: feet on rafters drawn on a block")
    coast = Drawing(program, examples / "coast-tile.xml", "attachment").text.replace("\n", " ")
    expect("come 5/8 in out of the" in coast and "top chord of the truss 2x4" in coast, "coast-tile: tips, chord")
    expect("covers the heads" not in coast, "coast-tile: heads beside the post")
    for spacing, told in (("2 in", True), ("4-1/2 in", False)):
        words = Drawing(program, examples / "low-slope-tubes.xml", "attachment", f"fastener.spacing={spacing}").text
        expect(("covers the heads" in words) == told, f"low-slope-tubes: heads {spacing} apart")


def one_size(program, examples):
    """hip-shingle: plate and hole have one size in the section, from above and in the lists, in both units; no inches in SI."""
    job = examples / "hip-shingle.xml"
    for units in ("us", "si"):
        with tempfile.TemporaryDirectory() as folder:
            text = {}
            for view in ("attachment", "pipe", "flashing"):
                out = pathlib.Path(folder) / f"{view}.svg"
                subprocess.run([program, "draw", job, "--view", view, "--units", units, "-o", out], check=False,
                               stdout=subprocess.DEVNULL)
                words = " ".join(t[4] for t in svg_texts(tree.parse(out).getroot())).replace("\u00a0", " ")
                text[view] = re.sub(r"\s+", " ", words)
        told = subprocess.run([program, "check", job, "--units", units], stdout=subprocess.PIPE, check=False).stdout.decode()
        least = re.search(r"least plate, from the hole +(.*?) down, (.*?) up", told)
        expect(least and f"{least.group(1)} below, {least.group(2)} above" in text["attachment"], f"hip-shingle {units}: plate in section")
        expect(least and f"{least.group(1)} down, {least.group(2)} up" in text["flashing"], f"hip-shingle {units}: plate from above")
        hole = re.search(r"hole ([0-9/-]+ (?:in|mm))(?! a)", text["pipe"])
        expect(hole and f"{hole.group(1)} up" in text["flashing"], f"hip-shingle {units}: hole {hole and hole.group(1)}")
        if units == "si":
            for view, words in text.items():
                inches = re.search(r"[0-9] in\b", words)
                expect(not inches, f"hip-shingle {units} {view}: `{inches and words[inches.start() - 20:inches.end() + 5]}`")


def main():
    program, examples = sys.argv[1], pathlib.Path(sys.argv[2])
    for part in (every_covering, where_the_foot_stands, letters_beside_the_roof, one_hole, sheet_of_paper, nails_as_they_are,
                 steps_that_are_theirs, words_of_this_roof, tilted_rows, dots_apart, feet_as_they_stand, one_size):
        part(program, examples)
    finish()


if __name__ == "__main__":
    main()
