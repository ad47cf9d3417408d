#!/usr/bin/python3
"""Measures every .svg below a folder in rendered pixels, against the size that its .dxf twin has by ezdxf.

    /usr/bin/python3 test/outside/check_svg_scale.py FOLDER [rsvg|chromium ...]

What is measured: the SVG is rendered on a transparent page, by rsvg-convert at a known resolution and by headless Chromium at a
known device scale. ImageMagick takes the box round all pixels that are inked by at least 40 % (a line 0.25 mm wide covers about
a pixel or more at every scale used here, so a line split by two pixels still counts). Labels are inside what they label, so the box
is that of the drawn strokes.
What is expected: the box round all shapes but text of the .dxf of the same name, by ezdxf (an independent reader of an independently
written file), half a line wider on all sides, set 5 mm in from the page's edges.
A file passes in a renderer where all four edges of the box lie within 1 pixel of where they should, and the page has the right size.
Prints a line a file, then "N passed, N failed". Exit code 1 where one failed, none was found, or a renderer named is missing.
"""

import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

import ezdxf
from ezdxf import bbox

MARGIN = 5.0
LINE = 0.25
INK = "40%"
CSS_PIXELS_PER_MM = 96 / 25.4
# The longest side of a picture, pixels: boards would not fit a renderer's memory at the resolution that suits a part.
LARGEST = 9000
# Highest magnification of a CSS pixel: 12 pixels a mm, so that 1 pixel is 0.08 mm.
SHARPEST = 12 / CSS_PIXELS_PER_MM
TOLERANCE = 1.0
# Seconds a renderer may take before it is taken for hung.
PATIENCE = 120


def run(*command):
    done = subprocess.run([str(word) for word in command], capture_output=True, text=True, timeout=PATIENCE)
    if done.returncode != 0:
        raise ValueError(f"{command[0]}: {done.stderr.strip()[:300]}")
    return done.stdout


def render_rsvg(svg, png, scale, _width, _height):
    dots = 96 * scale
    # At this resolution a CSS pixel is `scale` dots, so that mm come out at their size; no size is given in pixels.
    run("rsvg-convert", "-d", dots, "-p", dots, "-o", png, svg)


def render_chromium(svg, png, scale, width, height):
    with tempfile.TemporaryDirectory() as profile:
        run(
            "chromium", "--headless", "--no-sandbox", "--disable-gpu", "--hide-scrollbars", "--no-first-run", f"--user-data-dir={profile}",
            "--default-background-color=00000000", f"--force-device-scale-factor={scale}",
            # A little more window than page, so that a drawing that runs over its page is seen.
            f"--window-size={int(width * CSS_PIXELS_PER_MM) + 20},{max(400, int(height * CSS_PIXELS_PER_MM) + 20)}", f"--screenshot={png}", svg.resolve().as_uri(),
        )


RENDERERS = {"rsvg": ("rsvg-convert", render_rsvg), "chromium": ("chromium", render_chromium)}


def ink_box(png):
    """Left, top, right and bottom edge of what is inked, pixels."""
    text = run("convert", png, "-alpha", "extract", "-threshold", INK, "-trim", "-format", "%w %h %X %Y", "info:")
    width, height, left, top = (int(number) for number in text.replace("+", " ").split())
    return left, top, left + width, top + height


def dxf_size(path):
    """Width and height of all shapes but text, mm."""
    shapes = [entity for entity in ezdxf.readfile(path).modelspace() if entity.dxftype() != "TEXT"]
    # Arcs are cut into chords that stray from them by 0.001 mm at most.
    size = bbox.extents(shapes, flatten=0.001).size
    return size.x, size.y


def measure(svg, renderer, folder):
    """What is wrong with a file in a renderer, and how far off its worst edge lies, pixels and mm."""
    width, height = dxf_size(svg.with_suffix(".dxf"))
    page = width + 2 * MARGIN, height + 2 * MARGIN
    scale = min(SHARPEST, LARGEST / (max(page) * CSS_PIXELS_PER_MM))
    pixels_per_mm = scale * CSS_PIXELS_PER_MM
    png = folder / "page.png"
    RENDERERS[renderer][1](svg, png, scale, *page)
    inset = MARGIN - LINE / 2
    expected = [mm * pixels_per_mm for mm in (inset, inset, page[0] - inset, page[1] - inset)]
    found = ink_box(png)
    off = max(abs(a - b) for a, b in zip(expected, found))
    fault = None if off <= TOLERANCE else f"edges at {found}, expected {[round(edge, 2) for edge in expected]}"
    if renderer == "rsvg":
        size = [int(number) for number in run("identify", "-format", "%w %h", png).split()]
        if any(abs(a - mm * pixels_per_mm) > TOLERANCE for a, mm in zip(size, page)):
            fault = f"page is {size} pixels, expected {[round(mm * pixels_per_mm, 2) for mm in page]}"
    return fault, off, off / pixels_per_mm


def main(arguments):
    if not arguments or any(name not in RENDERERS for name in arguments[1:]):
        print(__doc__)
        return 1
    root, renderers = Path(arguments[0]), arguments[1:] or list(RENDERERS)
    missing = [tool for tool in ["convert", "identify", *(RENDERERS[name][0] for name in renderers)] if not shutil.which(tool)]
    if missing:
        print(f"FAIL not installed: {', '.join(missing)}\n0 passed, 1 failed")
        return 1
    passed = failed = 0
    for svg in sorted(root.rglob("*.svg")):
        for renderer in renderers:
            with tempfile.TemporaryDirectory() as folder:
                try:
                    fault, off, off_mm = measure(svg, renderer, Path(folder))
                    text = fault or f"worst edge off by {off:.2f} pixels, {off_mm:.3f} mm"
                except (ezdxf.DXFError, OSError, ValueError, subprocess.TimeoutExpired) as problem:
                    fault = text = f"cannot be measured: {problem}"
            passed, failed = passed + (not fault), failed + bool(fault)
            print(f"{'FAIL' if fault else 'ok  '} {renderer} {svg.relative_to(root)}: {text}", flush=True)
    if passed + failed == 0:
        print(f"FAIL no .svg file below {root}")
        failed = 1
    print(f"SVG at scale: {passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
