#!/usr/bin/python3
"""LibreCAD prints one DXF and Inkscape's importer takes it in, once as polylines and once as lines and arcs.

    /usr/bin/python3 test/outside/check_drafting.py FOLDER-POLYLINES FOLDER-LINES

The drawings are of the first job below each folder.
  - LibreCAD: `dxf2pdf` of the first station at 1:1 gives a PDF of one page; drawn in pixels by pdftoppm, what is on it is as wide as
    plan.json has the station, within half a mm (a pixel and the printed line).
  - Inkscape's DXF importer (run by itself: the program wants a screen) takes in the spine: every layer with shapes is a layer, every text arrives, and
    the path of the outline is as long as the spine at 96 dots an inch, within 0.01 mm.
A program that is not there is SKIPPED. Ends with "N passed, N failed".
"""

import json
import os
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path
from xml.etree import ElementTree

IMPORTER = Path("/usr/share/inkscape/extensions/dxf_input.py")
DOTS = 100
SVG, INKSCAPE = "{http://www.w3.org/2000/svg}", "{http://www.inkscape.org/namespaces/inkscape}"


def librecad(drawing, length):
    with tempfile.TemporaryDirectory() as scratch:
        copy = Path(scratch) / "drawing.dxf"
        shutil.copy(drawing, copy)
        screen = os.environ | {"QT_QPA_PLATFORM": "offscreen", "HOME": scratch, "XDG_RUNTIME_DIR": scratch}
        subprocess.run(["librecad", "dxf2pdf", "-c", "-s", "1", copy.name], cwd=scratch, env=screen, capture_output=True, timeout=120)
        printed = Path(scratch) / "drawing.pdf"
        if not printed.exists():
            return ["no PDF"]
        subprocess.run(["pdftoppm", "-r", str(DOTS), "-gray", str(printed), str(Path(scratch) / "page")], check=True, timeout=120)
        pages = sorted(Path(scratch).glob("page*.pgm"))
        if len(pages) != 1:
            return [f"{len(pages)} pages"]
        head, pixels = re.match(rb"P5\s+(\d+)\s+(\d+)\s+255\s", pages[0].read_bytes()), pages[0].read_bytes()
        wide, high, body = int(head[1]), int(head[2]), pixels[head.end():]
        columns = [x for x in range(wide) if any(body[x + wide * y] < 200 for y in range(high))]
        found = (columns[-1] - columns[0] + 1) / DOTS * 25.4 if columns else 0
        return [] if abs(found - length) < 0.5 else [f"{found:.2f} mm long on paper, planned {length:.2f}"]


def inkscape(drawing, length):
    done = subprocess.run(["/usr/bin/python3", str(IMPORTER), str(drawing)], capture_output=True, timeout=120)
    if done.returncode:
        return [done.stderr.decode().splitlines()[-1]]
    picture = ElementTree.fromstring(done.stdout)
    layers = {group.get(f"{INKSCAPE}label"): group for group in picture.iter(f"{SVG}g") if group.get(f"{INKSCAPE}groupmode") == "layer"}
    text = drawing.read_bytes().decode("ascii")
    told = {layer for kind, layer in re.findall(r"\r\n0\r\n(POLYLINE|LINE|ARC|CIRCLE|TEXT)\r\n8\r\n(\w+)\r\n", text)}
    faults = [f"no layer {name}" for name in sorted(told) if name not in layers or len(layers[name]) == 0]
    texts = len(re.findall(r"\r\n0\r\nTEXT\r\n", text))
    found = len(list(picture.iter(f"{SVG}text")))
    if found != texts:
        faults.append(f"{found} texts, told {texts}")
    xs = [float(x) for path in layers["outline"].iter(f"{SVG}path") for x, _ in re.findall(r"(-?[\d.]+)[, ](-?[\d.]+)", path.get("d"))]
    long = (max(xs) - min(xs)) / 96 * 25.4 if xs else 0
    if abs(long - length) > 0.01:
        faults.append(f"outline {long:.3f} mm long, planned {length:.3f}")
    return faults


def main(folders):
    counts = {True: 0, False: 0}
    for folder in folders:
        plan_path = sorted(Path(folder).rglob("plan.json"))[0]
        plan, parts = json.loads(plan_path.read_text()), plan_path.parent / "parts"
        spine, station = plan["spine"], plan["stations"][0]
        tries = (
            ("LibreCAD", shutil.which("librecad") and shutil.which("pdftoppm"), librecad, parts / f"{station['name']}.dxf", 2 * station["radius"]),
            ("Inkscape", IMPORTER.exists(), inkscape, parts / "spine.dxf", spine["length"] + 2 * spine["ears"]),
        )
        for name, there, read, drawing, length in tries:
            if not there:
                print(f"SKIPPED: {name} is not there")
                continue
            faults = read(drawing, length)
            counts[not faults] += 1
            print(f"{'FAIL' if faults else 'ok  '} {name}: {Path(folder).name}{''.join(f'{chr(10)}       {fault}' for fault in faults)}")
    print(f"LibreCAD and Inkscape: {counts[True]} passed, {counts[False]} failed")
    return 1 if counts[False] else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
