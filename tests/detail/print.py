#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""The field sheet of a covering is one page of paper: the longest ones are printed on Letter and on A4 by a browser and
their pages counted. Needs chromium and pdfinfo.

usage: print.py RAFTERPROOF SOURCE_ROOT"""
import os
import re
import shutil
import subprocess
import sys
import tempfile

LONGEST = 3  # as bytes of the sheet in SI units, which are the longer words


def sheet(program, root, key, units):
    done = subprocess.run([program, "guide", key, "--format", "html", "--sheet", "--units", units], capture_output=True,
                          text=True, env=dict(os.environ, RAFTERPROOF_DATA=root))
    if done.returncode != 0:
        sys.exit(f"guide {key} --sheet: exit {done.returncode}: {done.stderr}")
    return done.stdout


def pages(browser, directory, html, paper):
    source, target = os.path.join(directory, "sheet.html"), os.path.join(directory, "sheet.pdf")
    with open(source, "w", encoding="utf-8") as file:
        file.write(html.replace("</head>", f"<style>@page{{size:{paper}}}</style></head>"))
    subprocess.run([browser, "--headless", "--no-sandbox", "--disable-gpu", f"--user-data-dir={directory}/profile",
                    f"--print-to-pdf={target}", source], capture_output=True, timeout=200, check=True)
    told = subprocess.run(["pdfinfo", target], capture_output=True, text=True, check=True).stdout
    size = re.search(r"Page size:\s+(\d+)", told).group(1)
    if size not in ("612", "594", "595"):
        sys.exit(f"the paper came out {size} pt wide")
    return int(re.search(r"Pages:\s+(\d+)", told).group(1))


def main():
    program, root = sys.argv[1:]
    browser = shutil.which("chromium")
    details = os.path.join(root, "details")
    keys = [name[:-4] for name in sorted(os.listdir(details))
            if name.endswith(".xml") and "<covering " in open(os.path.join(details, name), encoding="utf-8").read()]
    sheets = sorted(((sheet(program, root, key, "si"), key) for key in keys), key=lambda s: -len(s[0]))
    bad = []
    with tempfile.TemporaryDirectory() as directory:
        for html, key in sheets[:LONGEST]:
            for paper in ("letter", "A4"):
                n = pages(browser, directory, html, paper)
                if n != 1:
                    bad.append(f"{key} on {paper}: {n} pages")
    if bad:
        sys.exit("\n".join(bad))
    print(f"{LONGEST} of {len(keys)} sheets printed, one page each")


main()
