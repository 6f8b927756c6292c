#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""The governing rafter and rail of a check, recomputed from what the report prints by another method.

beams.py PROGRAM EXAMPLES

The program uses the three-moment equation. Here: displacement method, beam elements with two deflections and two
rotations, whose end forces under a uniform load are w L/2 and w L^2/12 (structural analysis, any textbook), full matrix,
Gauss elimination with pivots. Compared: reactions, moments at supports and forces, the largest moments and the shear; then
the governing check itself: M of the printed fb = M / S, or the rail's moment, must be a moment of this beam."""
import json
import os
import subprocess
import sys

US = {"ft": 0.3048, "in": 0.0254, "lb": 0.45359237 * 9.80665, "m": 1.0, "mm": 1e-3, "N": 1.0, "kN": 1e3, "N m": 1.0, "kN m": 1e3,
      "N/m": 1.0, "kN/m": 1e3}
US["lb ft"] = US["lb"] * US["ft"]
US["lb in"] = US["lb"] * US["in"]
US["lb/ft"] = US["lb"] / US["ft"]
TOUCH = 1e-7

SNOWY = ["site.ground-snow=40 psf", "rail.section-modulus=0.35 in3", "rail.inertia=0.3 in4", "rail.alloy=6005A-T61",
         "rail.deflection-limit=120"]
LOW = ["building.form=monoslope", "building.width=20 ft", "building.eave-overhang=2 ft", "collector.lower=0 ft",
       "framing.inner-support=9 ft", "framing.continuous=yes", "site.ground-snow=45 psf", "earthquake.SDS=1.5"]
# Changes that bring other loads, other checks and other beams to the fore.
CHANGES = [[], SNOWY, SNOWY + ["earthquake.SDS=3"], SNOWY + ["rail.deflection-limit=1000"],
           SNOWY + ["rail.weak-section-modulus=0.05 in3"], SNOWY + ["live.worker=yes", "rail.section-modulus=0.1 in3"],
           ["framing.inner-support=8 ft", "framing.continuous=yes"], LOW, LOW + ["framing.size=2x10"],
           LOW + ["roof.pitch=1:12", "site.method=lrfd"], ["framing.size=2x12", "roof.ceiling=plaster"],
           ["building.eave-overhang=2 ft", "collector.lower=1 ft"], ["job.units=si"]]

CHANGED = ("first-shingle.xml", "quake-lrfd.xml", "ridge-metal-si.xml", "snow-shake.xml")


def si(quantity):
    return quantity["value"] * US[quantity["unit"]]


def gauss(K, f):
    n = len(f)
    for p in range(n):
        best = max(range(p, n), key=lambda i: abs(K[i][p]))
        K[p], K[best], f[p], f[best] = K[best], K[p], f[best], f[p]
        for i in range(p + 1, n):
            q = K[i][p] / K[p][p]
            if q:
                for j in range(p, n):
                    K[i][j] -= q * K[p][j]
                f[i] -= q * f[p]
    x = [0.0] * n
    for i in reversed(range(n)):
        x[i] = (f[i] - sum(K[i][j] * x[j] for j in range(i + 1, n))) / K[i][i]
    return x


class Beam:
    """Nodes at the ends, supports, forces, ends of loads and `also`."""

    def __init__(self, b, also=()):
        self.loads = [(si(w["x0"]), si(w["x1"]), si(w["w"])) for w in b["loads"]]
        points = [(si(p["x"]), si(p["P"])) for p in b["forces"]]
        supports = [si(s["x"]) for s in b["supports"]]
        raw = sorted([si(b["start"]), si(b["end"]), *also, *supports, *(p[0] for p in points), *(w[0] for w in self.loads),
                      *(w[1] for w in self.loads)])
        self.x = [x for i, x in enumerate(raw) if i == 0 or x - raw[i - 1] > TOUCH]
        n = len(self.x)
        K = [[0.0] * (2 * n) for _ in range(2 * n)]
        f = [0.0] * (2 * n)
        for e in range(n - 1):
            k = self.stiffness(e)
            F = self.fixed(e)
            for i in range(4):
                f[2 * e + i] += F[i]
                for j in range(4):
                    K[2 * e + i][2 * e + j] += k[i][j]
        for x, P in points:
            f[2 * self.node(x)] += P
        free = [[*row] for row in K]
        load = [*f]
        held = [2 * self.node(x) for x in supports]
        for d in held:
            K[d] = [1.0 if j == d else 0.0 for j in range(2 * n)]
            f[d] = 0.0
        self.u = gauss(K, f)
        self.reaction = [load[d] - sum(free[d][j] * self.u[j] for j in range(2 * n)) for d in held]

    def node(self, x):
        return min(range(len(self.x)), key=lambda i: abs(self.x[i] - x))

    def load_on(self, e):
        middle = (self.x[e] + self.x[e + 1]) / 2
        return sum(w for x0, x1, w in self.loads if x0 < middle < x1)

    def stiffness(self, e):
        L = self.x[e + 1] - self.x[e]
        return [[12 / L**3, 6 / L**2, -12 / L**3, 6 / L**2], [6 / L**2, 4 / L, -6 / L**2, 2 / L],
                [-12 / L**3, -6 / L**2, 12 / L**3, -6 / L**2], [6 / L**2, 2 / L, -6 / L**2, 4 / L]]

    def fixed(self, e):
        L, w = self.x[e + 1] - self.x[e], self.load_on(e)
        return [w * L / 2, w * L * L / 12, w * L / 2, -w * L * L / 12]

    def ends(self, e):
        """Shear (up on the left part) and sagging moment at the left end of an element."""
        k, F, u = self.stiffness(e), self.fixed(e), self.u[2 * e:2 * e + 4]
        force = [sum(k[i][j] * u[j] for j in range(4)) - F[i] for i in range(4)]
        return -force[0], force[1]

    def moment(self, x):
        e = max(min(self.node(x), len(self.x) - 2), 0)
        if x < self.x[e] - TOUCH:
            e -= 1
        V, M = self.ends(e)
        s = x - self.x[e]
        return M + V * s - self.load_on(e) * s * s / 2

    def peaks(self):
        """Largest sagging and hogging moment and largest shear in magnitude."""
        moments, shears = [0.0], [0.0]
        for e in range(len(self.x) - 1):
            V, M = self.ends(e)
            L, w = self.x[e + 1] - self.x[e], self.load_on(e)
            places = [0.0, L] + ([V / w] if w and 0 < V / w < L else [])
            moments += [M + V * s - w * s * s / 2 for s in places]
            shears += [V, V - w * L]
        return max(moments), min(moments), max(abs(v) for v in shears)


def far(got, want, scale):
    return abs(got - want) > 1e-7 * max(abs(scale), 1e-3)


def beam_faults(b):
    beam = Beam(b)
    sag, hog, shear = beam.peaks()
    scale = max(sag, -hog)
    total = max(sum(abs(r) for r in beam.reaction), 1.0)
    for s, r in zip(b["supports"], beam.reaction):
        if far(si(s["reaction"]), r, total):
            yield f"reaction {si(s['reaction'])}, by displacements {r}"
    for at in b["supports"] + b["forces"]:
        if far(si(at["moment"]), beam.moment(si(at["x"])), scale):
            yield f"moment {si(at['moment'])} at {at['x']}, by displacements {beam.moment(si(at['x']))}"
    for name, want in (("sagging", sag), ("hogging", hog)):
        if far(si(b[name]["value"]), want, scale):
            yield f"{name} {si(b[name]['value'])}, by displacements {want}"
    if far(abs(si(b["shear"]["value"])), shear, total):
        yield f"shear {b['shear']}, by displacements {shear}"
    if "deflection" in b:
        at = si(b["deflection"]["x"])
        fine = Beam(b, [at])
        want = fine.u[2 * fine.node(at)] / b["EI_N_m2"]
        if far(si(b["deflection"]["value"]), want, want):
            yield f"deflection {b['deflection']}, by displacements {want}"


def moments_of(b):
    beam = Beam(b)
    sag, hog, _ = beam.peaks()
    found = [sag, hog] + [beam.moment(si(at["x"])) for at in b["supports"] + b["forces"]]
    return found + ([si(b["inner_moment"])] if b["inner_moment"] else [])


def governing(document, b):
    """The governing check of the thing that the beam is."""
    judged = document["passes"][document["judged"]]
    thing = next(t for t in judged[b["is"] + "s" if b["is"] == "rafter" else "lines"]
                 if t["line" if b["is"] == "rail" else "rafter"] == b["number"])
    checks = thing["after"] if b["is"] == "rafter" else thing["checks"]
    return next(c for c in checks if c["check"] == thing["governs"])


def check_faults(document, b, seen):
    check = governing(document, b)
    seen.add(check["check"])
    if check["combination"] not in (b["combination"], "geometry"):
        yield f"combination {check['combination']}, the beam has {b['combination']}"
    if check["check"] in ("rafter-bending", "rafter-uplift", "rafter-partial", "rafter-tail"):
        stress = [s for c in document["calculation"] if c["section"] == "Rafter" for s in c["steps"]
                  if s["name"] == "bending-stress"]
        psi = check["demand"]["value"] * (1 if check["demand"]["unit"] == "psi" else 145.0377377)
        M = [s["inputs"][0]["value"] * US["lb in"] for s in stress if abs(s["value"] - psi) < 1e-6 * psi]
        if not any(abs(abs(found) - abs(m)) < 1e-6 * abs(m) for m in M for found in moments_of(b)):
            yield f"{check['check']}: M {M} is no moment of the beam: {moments_of(b)}"
    if check["check"] == "rail-moment":
        M = si(check["demand"])
        if abs(max(abs(m) for m in moments_of(b)) - M) > 1e-6 * M:
            yield f"rail moment {M}, of the beam {moments_of(b)}"
    if check["check"].endswith(("deflection", "bow")):
        if abs(abs(si(b["deflection"]["value"])) - si(check["demand"])) > 1e-6 * si(check["demand"]):
            yield f"deflection {check['demand']}, of the beam {b['deflection']}"


def line_load_faults(document, b):
    """The line load that the calculation derives from wind, snow and weight is one that the rafter's beam carries."""
    told = [si(s) for section in document["calculation"] for s in section["steps"] if s["name"] == "rafter-line-load"]
    loads = [si(load["w"]) for load in b["loads"]]
    if b["is"] == "rafter" and told and min(abs(told[0] - w) for w in loads) > 1e-6 * abs(told[0]):
        yield f"line load {told[0]} in the calculation, {loads} on the beam"


def main():
    program, folder = os.path.abspath(sys.argv[1]), sys.argv[2]
    faults, beams, seen = [], 0, set()
    for name in sorted(n for n in os.listdir(folder) if n.endswith(".xml")):
        for change in CHANGES if name in CHANGED else CHANGES[:1]:
            words = [w for c in change for w in ("--set", c)]
            done = subprocess.run([program, "check", os.path.join(folder, name), *words, "--format", "json"],
                                  capture_output=True, text=True, check=False, env={**os.environ, "LC_ALL": "C"})
            if done.returncode > 2:
                continue  # the change does not go with this job
            document = json.loads(done.stdout)
            for b in document["beams"]:
                beams += 1
                for fault in [*beam_faults(b), *check_faults(document, b, seen), *line_load_faults(document, b)]:
                    faults.append(f"{name} {change} {b['is']} {b['number']}: {fault}")
    print(f"{beams} beams; governing checks: {', '.join(sorted(seen))}")
    print("\n".join(faults))
    sys.exit(1 if faults or beams < 50 or len(seen) < 8 else 0)


main()
