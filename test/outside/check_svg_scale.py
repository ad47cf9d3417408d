#!/usr/bin/python3
"""Measures every .svg below a folder in rendered pixels, against the size that its .dxf twin has by ezdxf.

    /usr/bin/python3 test/outside/check_svg_scale.py FOLDER [rsvg|chromium ...]

What is measured: the SVG is rendered on a transparent page, by rsvg-convert at a known resolution and by headless Chromium at a
known device scale. test/outside/ink.mjs takes the box round all pixels that are inked by more than 40 % (a line 0.25 mm wide covers
about a pixel or more at every scale used here, so a line split by two pixels still counts). Labels are inside what they label, so the box
is that of the drawn strokes.
What is expected: the box round all shapes but text of the .dxf of the same name, by ezdxf (an independent reader of an independently
written file), half a line wider on all sides (less where only a slanting line's end reaches), set 5 mm in from the page's edges; and 4 mm below it the check bar, of 100 mm or, where
its words say so, of 4 in, its ends standing 1.5 mm out, 4 mm above the page's end.
A file passes in a renderer where all four edges of the box lie within 1 pixel of where they should, and the page has the right size.
Prints a line a file, then "N passed, N failed". Exit code 1 where one failed, none was found, or a renderer named is missing.
"""

import json
import shutil
import subprocess
import sys
from pathlib import Path

import ezdxf
from ezdxf import bbox

MARGIN = 5.0
LINE = 0.25
BAR_AT, BAR_ENDS, BAR_ROOM = 4.0, 1.5, 8.0
CSS_PIXELS_PER_MM = 96 / 25.4
# The longest side of a picture, pixels: boards would not fit a renderer's memory at the resolution that suits a part.
LARGEST = 9000
# Highest magnification of a CSS pixel: 12 pixels a mm, so that 1 pixel is 0.08 mm.
SHARPEST = 12 / CSS_PIXELS_PER_MM
TOLERANCE = 1.0
# A page comes out in whole pixels, rounded up, and its size is written to 0.00001 mm: 9000.0001 pixels are 9001.
PAGE_TOLERANCE = 1.01


RENDERERS = {"rsvg": "rsvg-convert", "chromium": "chromium"}


def drawn(path):
    """Box of all shapes but text, mm, and how far beyond each of its edges there is ink: half a line, less where only a slanting line's end reaches it."""
    shapes = [entity for entity in ezdxf.readfile(path).modelspace() if entity.dxftype() != "TEXT"]
    # Arcs are cut into chords that stray from them by 0.001 mm at most.
    boxes = [(bbox.extents([shape], flatten=0.001), *reach(shape)) for shape in shapes]
    low = [min(box.extmin[axis] for box, *_ in boxes) for axis in (0, 1)]
    high = [max(box.extmax[axis] for box, *_ in boxes) for axis in (0, 1)]
    before = [low[axis] - min(box.extmin[axis] - out[axis] for box, *out in boxes) for axis in (0, 1)]
    after = [max(box.extmax[axis] + out[axis] for box, *out in boxes) - high[axis] for axis in (0, 1)]
    return (high[0] - low[0], high[1] - low[1]), (before[0], after[1], after[0], before[1])


def reach(shape):
    """How far a shape's ink reaches beyond its own box, across and up: a line ends square to itself."""
    if shape.dxftype() != "LINE":
        return LINE / 2, LINE / 2
    along = (shape.dxf.end - shape.dxf.start).normalize()
    return LINE / 2 * abs(along.y), LINE / 2 * abs(along.x)


class Picture:
    """One file in one renderer: what is to be rendered, and where the edges of its ink should be, pixels."""

    def __init__(self, svg, renderer, size, beyond):
        self.svg, self.renderer = svg, renderer
        bar = 101.6 if ">4 in." in svg.read_text() else 100.0
        page = [side + 2 * MARGIN for side in size]
        self.page = [max(page[0], bar + 2 * MARGIN), page[1] + BAR_ROOM]
        self.scale = min(SHARPEST, LARGEST / (max(self.page) * CSS_PIXELS_PER_MM))
        self.pixels_per_mm = self.scale * CSS_PIXELS_PER_MM
        left, top, right, _ = (MARGIN - out for out in beyond)
        edges = (min(left, MARGIN - LINE / 2), top, max(page[0] - right, MARGIN + bar + LINE / 2), page[1] + BAR_AT + BAR_ENDS)
        self.expected = [mm * self.pixels_per_mm for mm in edges]

    def task(self):
        # A little more window than page, so that a drawing that runs over its page is seen.
        width, height = (int(side * CSS_PIXELS_PER_MM) for side in self.page)
        return {"svg": str(self.svg), "renderer": self.renderer, "scale": self.scale, "width": width + 20, "height": max(400, height + 20)}

    def judge(self, answer):
        """Whether what was measured is right, and the words for it."""
        if "problem" in answer:
            return False, f"cannot be measured: {answer['problem']}"
        if answer["box"] is None:
            return False, "nothing is drawn"
        if self.renderer == "rsvg" and any(abs(a - mm * self.pixels_per_mm) > PAGE_TOLERANCE for a, mm in zip(answer["size"], self.page)):
            return False, f"page is {answer['size']} pixels, expected {[round(mm * self.pixels_per_mm, 2) for mm in self.page]}"
        off = max(abs(a - b) for a, b in zip(self.expected, answer["box"]))
        if off > TOLERANCE:
            return False, f"edges at {answer['box']}, expected {[round(edge, 2) for edge in self.expected]}"
        return True, f"worst edge off by {off:.2f} pixels, {off / self.pixels_per_mm:.3f} mm"


def measure(pictures):
    """Whether each is right, and the words for it, in their order. A file that several jobs have, byte for byte, is rendered once at a scale."""
    keys = [(picture.svg.read_bytes(), picture.renderer, picture.scale) for picture in pictures]
    # Windows differ with the .dxf only, and a file's own size does not: the first one's will do.
    first = {}
    for key, picture in zip(keys, pictures):
        first.setdefault(key, picture)
    tasks = "".join(json.dumps(picture.task()) + "\n" for picture in first.values())
    done = subprocess.run(["node", Path(__file__).with_name("ink.mjs")], input=tasks, stdout=subprocess.PIPE, text=True)
    answers = {answer["task"]: answer for answer in map(json.loads, done.stdout.splitlines())}
    numbers = {key: number for number, key in enumerate(first)}
    return [picture.judge(answers.get(numbers[key], {"problem": "no answer"})) for key, picture in zip(keys, pictures)]


def main(arguments):
    if not arguments or any(name not in RENDERERS for name in arguments[1:]):
        print(__doc__)
        return 1
    root, renderers = Path(arguments[0]), arguments[1:] or list(RENDERERS)
    missing = [tool for tool in ["node", *(RENDERERS[name] for name in renderers)] if not shutil.which(tool)]
    if missing:
        print(f"FAIL not installed: {', '.join(missing)}\n0 passed, 1 failed")
        return 1
    pictures, failed = [], 0
    for svg in sorted(root.rglob("*.svg")):
        try:
            size, beyond = drawn(svg.with_suffix(".dxf"))
            pictures += [Picture(svg, renderer, size, beyond) for renderer in renderers]
        except (ezdxf.DXFError, OSError, ValueError) as problem:
            failed += 1
            print(f"FAIL {svg.relative_to(root)}: its .dxf cannot be measured: {problem}")
    passed = 0
    for picture, (right, words) in zip(pictures, measure(pictures)):
        passed, failed = passed + right, failed + (not right)
        print(f"{'ok  ' if right else 'FAIL'} {picture.renderer} {picture.svg.relative_to(root)}: {words}")
    if passed + failed == 0:
        print(f"FAIL no .svg file below {root}")
        failed = 1
    print(f"SVG at scale: {passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
