#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Pages of the covering library as HTML, its key, and libraries that somebody has extended.

pages.py PROGRAM DATA

Every page and every field sheet: one file that needs nothing else, in a language that is named, headings in order, every drawing
with a title and a description in words, links that lead somewhere, the same bytes twice. The key: every covering is reached and
it comes to an end. An extended library: the new page is there; each fault is told with file and line."""
import json
import os
import re
import shutil
import subprocess
import sys
import tempfile
from html.parser import HTMLParser

VOID = {"meta", "br", "hr", "img", "input", "link"}


def run(program, data, *words, status=0):
    env = {"PATH": os.environ["PATH"], "HOME": os.environ.get("HOME", "/"), "RAFTERPROOF_DATA": data, "LC_ALL": "C.UTF-8"}
    env.update({name: os.environ[name] for name in ("ASAN_OPTIONS", "UBSAN_OPTIONS") if name in os.environ})
    done = subprocess.run([program, *words], env=env, capture_output=True, timeout=60, check=False, stdin=subprocess.DEVNULL)
    if done.returncode != status:
        raise AssertionError(f"{words}: status {done.returncode}, not {status}: {done.stderr.decode()[:500]}")
    return done.stdout.decode("utf-8") + done.stderr.decode("utf-8")


class Page(HTMLParser):
    """Walks a page; faults are gathered."""

    def __init__(self, name):
        super().__init__(convert_charrefs=True)
        self.name, self.faults, self.open = name, [], []
        self.level, self.ones, self.ids, self.links = 0, 0, [], []
        self.svgs, self.in_svg = 0, None
        self.title = ""

    def fault(self, text):
        self.faults.append(f"{self.name}: {text}")

    def handle_starttag(self, tag, attrs):
        a = dict(attrs)
        if tag == "html" and a.get("lang") != "en":
            self.fault("no language")
        if tag in ("script", "link", "iframe", "object", "embed", "img", "use", "image", "foreignobject", "base"):
            self.fault(f"<{tag}>")
        for name, value in attrs:
            if name in ("src", "srcset", "data", "xlink:href") or name.startswith("on"):
                self.fault(f"attribute {name}")
            if name == "href" and not (value or "").startswith("#"):
                self.fault(f"leads outside: {value}")
            if value and name != "xmlns" and re.search(r"https?:|url\(", value):
                self.fault(f"address in {name}")
        if "id" in a:
            if a["id"] in self.ids:
                self.fault(f"id twice: {a['id']}")
            self.ids.append(a["id"])
        if tag == "a":
            self.links.append(a["href"][1:])
        if re.fullmatch("h[1-6]", tag):
            level = int(tag[1])
            self.ones += level == 1
            if level > self.level + 1:
                self.fault(f"<{tag}> after <h{self.level}>")
            self.level = level
        if tag == "svg":
            self.svgs += 1
            self.in_svg = []
            if a.get("role") != "img" or not a.get("aria-label"):
                self.fault("a drawing without a role or a name")
        if self.in_svg is not None:
            self.in_svg.append(tag)
        if tag not in VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag, attrs):
        self.handle_starttag(tag, attrs)
        if tag not in VOID:
            self.open.pop()

    def handle_endtag(self, tag):
        if not self.open or self.open.pop() != tag:
            self.fault(f"</{tag}> closes nothing")
        if tag == "svg":
            if self.in_svg[1:3] != ["title", "desc"]:
                self.fault("a drawing without title and description")
            self.in_svg = None

    def handle_data(self, data):
        if self.open and self.open[-1] in ("title", "desc") and self.in_svg is not None and not data.strip():
            self.fault("an empty title or description")
        if self.open == ["html", "head", "title"]:
            self.title += data

    def end(self, text):
        self.close()
        if self.open:
            self.fault(f"left open: {self.open}")
        if self.ones != 1:
            self.fault(f"{self.ones} first headings")
        for link in self.links:
            if link not in self.ids:
                self.fault(f"no place #{link}")
        style = re.search(r"<style>(.*?)</style>", text, re.S).group(1)
        if "url(" in style or "@import" in style or "@media print" not in style or "@page" not in style:
            self.fault("style that reaches outside, or none for print")
        # no colour says anything: black, white and greys only
        for colour in set(re.findall(r"#[0-9a-fA-F]{3,6}\b", style + "".join(re.findall(r"(?:fill|stroke)=\"(#\w+)\"", text)))):
            h = colour[1:] if len(colour) == 7 else "".join(c * 2 for c in colour[1:])
            if len({h[0:2], h[2:4], h[4:6]}) != 1:
                self.fault(f"colour {colour}")
        if not self.title.strip() or "width=device-width" not in text or "licensed engineer" not in text:
            self.fault("no title, no viewport or no caution")
        return self.faults


def check_page(name, text):
    page = Page(name)
    page.feed(text)
    return page.end(text), page


def check_pages(program, data, coverings):
    faults = []
    for c in coverings:
        key, refused = c["key"], c["use"] == "refused"
        text = run(program, data, "guide", key, "--format", "html")
        if text != run(program, data, "guide", key, "--format=html"):
            faults.append(f"{key}: not the same bytes twice")
        found, page = check_page(key, text)
        faults += found
        # a refusal may show what is done instead, and nothing else
        if page.svgs > 1 if refused else page.svgs != 4:
            faults.append(f"{key}: {page.svgs} drawings")
        notes = json.loads(run(program, data, "guide", key, "--format", "json"))
        words = re.sub(r"\s+", " ", re.sub(r"<[^>]*>", " ", text))
        for block in notes["blocks"]:
            escaped = block["text"].replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace('"', "&quot;")
            if re.sub(r"\s+", " ", escaped) not in words:
                faults.append(f"{key}: lost: {block['text'][:60]}")
        sheet = run(program, data, "guide", key, "--format", "html", "--sheet")
        found, page = check_page(key + " sheet", sheet)
        faults += found
        if not refused and (page.svgs != 1 or "<ol>" not in sheet or 'id="stop"' not in sheet or 'id="tools"' not in sheet):
            faults.append(f"{key} sheet: no drawing, steps, tools or signs to stop")
        if refused and ('id="reasons"' not in sheet or 'id="steps"' in sheet):
            faults.append(f"{key} sheet: a refusal with steps, or without reasons")
    return faults


def check_job(program, data):
    faults = []
    job = os.path.join(data, "examples", "snow-shake.xml")
    for extra in ([], ["--sheet"]):
        text = run(program, data, "guide", "--job", job, "--format", "html", *extra)
        found, page = check_page("job", text)
        faults += found
        if "(this job)" not in text or "whole length of the plate up the slope" not in text:
            faults.append("job: its sizes are not there")
        if page.svgs == 0:
            faults.append("job: no drawing")
    si = run(program, data, "guide", "--job", job, "--units", "si", "--format", "html", "--sheet")
    # a roll of 36 in is called that everywhere
    if re.search(r"\d in\b", re.sub(r"<style>.*?</style>|36 in roll", "", si, flags=re.S)):
        faults.append("job: inches in a metric sheet")
    told = run(program, data, "guide", "slate", "--job", job, status=3)
    if "the covering of the job" not in told:
        faults.append("job: another covering is not refused")
    return faults


def check_key(listing):
    faults, reached = [], set()
    questions = {q["number"]: q for q in listing["key"]}
    asked, todo = set(), [1]
    while todo:
        number = todo.pop()
        if number in asked:
            continue
        asked.add(number)
        for answer in questions[number]["answers"]:
            reached |= set(answer["coverings"])
            if answer["next"] is not None:
                if answer["next"] <= number:
                    faults.append(f"key: question {number} leads back")
                todo.append(answer["next"])
            if (answer["next"] is None) == (not answer["coverings"]):
                faults.append(f"key: an answer of question {number} leads nowhere or to two places")
    if asked != set(questions):
        faults.append(f"key: never asked: {sorted(set(questions) - asked)}")
    missed = {c["key"] for c in listing["coverings"]} - reached
    if missed:
        faults.append(f"key: not reached: {sorted(missed)}")
    for c in listing["coverings"]:
        if not c["recognise"]["look"]:
            faults.append(f"{c['key']}: no look")
    return faults


def line_of(path, text):
    with open(path, encoding="utf-8") as file:
        for number, line in enumerate(file, 1):
            if text in line:
                return number
    raise AssertionError(f"{path}: no {text}")


def edit(path, old, new):
    with open(path, encoding="utf-8") as file:
        text = file.read()
    assert old in text, (path, old)
    with open(path, "w", encoding="utf-8") as file:
        file.write(text.replace(old, new, 1))


def check_extended(program, data):
    faults = []
    with tempfile.TemporaryDirectory() as top:
        library = os.path.join(top, "mine")
        shutil.copytree(os.path.join(data, "details"), library)
        page = os.path.join(library, "bamboo.xml")
        shutil.copy(os.path.join(library, "slate.xml"), page)
        edit(page, 'key="slate"', 'key="bamboo"')
        edit(page, "<plain>natural slate</plain>", "<plain>split bamboo</plain>")
        if "split bamboo" not in run(program, data, "guide", "--library", library):
            faults.append("library: the new page is not listed")
        if "Step by step" not in run(program, data, "guide", "bamboo", "--library", library):
            faults.append("library: the new page is not printed")
        found, _ = check_page("bamboo", run(program, data, "guide", "bamboo", "--library", library, "--format", "html"))
        faults += found
        wrong = [("bamboo.xml", 'status="common-practice"', 'status="sure"'),
                 ("bamboo.xml", '<use part="falls"/>', '<use part="flying"/>'),
                 ("bamboo.xml", 'value="1/4 in"', 'value="1/4 psf"'),
                 ("key.xml", 'covering="thatch"', 'covering="straw"'),
                 ("key.xml", 'to="wood"', 'to="kind"'),
                 ("key.xml", 'id="wood"', 'id="asphalt"')]
        for name, old, new in wrong:
            path = os.path.join(library, name)
            shutil.copy(path, path + ".kept")
            line = line_of(path, old)
            edit(path, old, new)
            told = run(program, data, "guide", "--library", library, status=3)
            if not re.search(rf"{name}:{line}\b|{name}, line {line}\b", told):
                faults.append(f"library: {new}: not told with {name}:{line}: {told[:200]}")
            os.replace(path + ".kept", path)
        two = {"bamboo.xml": ('<use part="falls"/>', '<use part="flying"/>'), "key.xml": ('covering="thatch"', 'covering="straw"')}
        for name, (old, new) in two.items():
            edit(os.path.join(library, name), old, new)
        told = run(program, data, "guide", "--library", library, status=3)
        if "flying" not in told or "straw" not in told:
            faults.append("library: only one of two faults is told")
        if "split" in run(program, data, "guide", "--library", os.path.join(top, "none"), status=3):
            faults.append("library: a directory that is not there")
    return faults


def main():
    program, data = sys.argv[1:3]
    listing = json.loads(run(program, data, "guide", "--format", "json"))
    faults = check_pages(program, data, listing["coverings"]) + check_job(program, data) + check_key(listing)
    faults += check_extended(program, data)
    told = run(program, data, "check", os.path.join(data, "examples", "first-shingle.xml"), "--format", "html", status=3)
    if "--format" not in told:
        faults.append("check --format html is taken")
    run(program, data, "guide", "slate", "--sheet", status=3)
    run(program, data, "guide", "--format", "html", status=3)
    for fault in faults:
        print(fault)
    print(f"{len(listing['coverings'])} pages, {len(faults)} faults")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
