#!/usr/bin/python3
"""Measures every templates.pdf below a folder in rendered pixels, as a maker would with a ruler, against its job's DXF files.

    /usr/bin/python3 test/outside/check_pdf.py FOLDER

Each PDF is rendered by pdftoppm (poppler) at 300 dots per inch, its texts are found by pdftotext, and the drawings it should show are
read from the DXF files beside it by ezdxf: an independent reader of an independently written file. A PDF passes when
  - qpdf --check has nothing to say, and the viewer is asked not to scale;
  - on every page the check bars, level and upright, are 100 mm long, or 4 in in a job in inches, within 0.2 mm;
  - the pages of every drawing that is spread over several, joined by the register marks found in their pixels, have no mark further
    than 0.2 mm from its twin, and show the DXF's outline within 0.3 mm all the way round;
  - the print of each board is one page, with the same bars and its DXF's outlines within 0.3 mm;
  - at least three lengths, on different pages where the drawings fill as many, are those of the DXF within 0.2 mm.
Of a job for a router or a laser, whose parts are not for paper, the first two are asked.
Among all the PDFs at least one drawing must cross four pages, two by two.
Prints a line a file, then "N passed, N failed". Exit code 1 where one failed or none was found.
"""

import json
import math
import re
import subprocess
import sys
import tempfile
from pathlib import Path

import ezdxf
import numpy

DPI = 300
PIXEL = 25.4 / DPI  # mm
POINT = 25.4 / 72  # mm
DARK = bytes(1 if level < 128 else 0 for level in range(256))
BARS = {"mm": 100.0, "in": 101.6}
# From a board print's left edge to the board, mm.
BOARD_LEFT = 24.0
BAR_TOLERANCE = LENGTH_TOLERANCE = MARK_TOLERANCE = 0.2
OUTLINE_TOLERANCE = 0.3
# Height of a word's box over that of its capitals in DejaVu Sans: (ascent + descent)/capital = (1901 + 483)/1493 in its tables.
LINE_HEIGHT = 2384 / 1493
# A cut line is up to 0.35 mm wide; a tick standing on it makes it look wider for a moment.
WIDEST_LINE = 0.6


class Page:
    """One rendered page: dark or not, in mm from its lower left corner, and its words with their boxes."""

    def __init__(self, picture, words):
        header = re.match(rb"P5\s+(\d+)\s+(\d+)\s+255\s", picture)
        self.width, self.height = int(header[1]), int(header[2])
        self.dark = picture[header.end():].translate(DARK)
        self.pixels = numpy.frombuffer(self.dark, numpy.uint8)
        self.words = words

    def is_dark(self, x, y):
        column, row = int(x / PIXEL), self.height - 1 - int(y / PIXEL)
        return 0 <= column < self.width and 0 <= row < self.height and self.dark[row * self.width + column] == 1

    def level_runs(self, shortest):
        for row in range(self.height):
            for run in re.finditer(rb"\x01{%d,}" % int(shortest / PIXEL), self.dark[row * self.width:(row + 1) * self.width]):
                yield row, (run.end() - run.start()) * PIXEL

    def upright_runs(self, shortest):
        for column in range(int(40 / PIXEL)):
            for run in re.finditer(rb"\x01{%d,}" % int(shortest / PIXEL), self.dark[column::self.width]):
                yield column, (run.end() - run.start()) * PIXEL

    def line_near(self, x, y, nx, ny, reach):
        """Middle and width of the dark line nearest a point along a direction, mm from the point; None where there is none."""
        step = PIXEL / 4
        count = int(reach / step)
        shades = [self.is_dark(x + index * step * nx, y + index * step * ny) for index in range(-count, count + 1)]
        runs, start = [], None
        for index, dark in enumerate([*shades, False]):
            if dark and start is None:
                start = index
            elif not dark and start is not None:
                runs.append((start - count, index - 1 - count))
                start = None
        if not runs:
            return None
        first, last = min(runs, key=lambda run: max(run[0], -run[1], 0))
        return (first + last) / 2 * step, (last - first + 1) * step


def read_pages(path, scratch):
    subprocess.run(["pdftoppm", "-r", str(DPI), "-gray", str(path), str(scratch / "page")], check=True)
    text = subprocess.run(["pdftotext", "-bbox", str(path), "-"], check=True, capture_output=True, text=True).stdout
    pictures = sorted(scratch.glob("page*.pgm"))
    pages = []
    for picture, part in zip(pictures, text.split("<page ")[1:]):
        height = float(re.search(r'height="([\d.]+)"', part)[1])
        words = [
            (word, float(x1) * POINT, (height - float(y2)) * POINT, float(x2) * POINT, (height - float(y1)) * POINT)
            for x1, y1, x2, y2, word in re.findall(r'<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)</word>', part)
        ]
        pages.append(Page(picture.read_bytes(), words))
        picture.unlink()
    return pages


def bar_faults(number, page):
    # Which bar it is stands beside it: THIS BAR IS 4 in LONG.
    said = [word for (before, *_), (word, *_) in zip(page.words, page.words[1:]) if before in ("100", "4") and word in BARS]
    want = BARS[said[0]] if said else math.nan
    for name, runs in (("level", page.level_runs(95)), ("upright", page.upright_runs(95))):
        # A bar is over a mm thick: the same length on more than ten lines of pixels running.
        lengths = {}
        for _, length in runs:
            if length < 110:
                lengths[round(length, 3)] = lengths.get(round(length, 3), 0) + 1
        found = sorted(length for length, lines in lengths.items() if lines > 10)
        near = lambda have, want: abs(have - want) <= BAR_TOLERANCE
        if not found or not all(near(have, want) for have in found):
            yield f"page {number}: {name} check bar measures {found} mm, not {want}"


def find_mark(page, x, y):
    """Middle of the register mark (a cross in a ring) nearest to where its name says it is."""
    arms = [(step * 0.25, 0.0) for step in range(-15, 16)] + [(0.0, step * 0.25) for step in range(-15, 16)]
    ring = [(1.5 * math.cos(turn * math.pi / 18), 1.5 * math.sin(turn * math.pi / 18)) for turn in range(36)]
    best, places = -1, []
    for right in range(-30, 31):
        for up in range(-30, 31):
            px, py = x + right * PIXEL, y + up * PIXEL
            score = sum(page.is_dark(px + dx, py + dy) for dx, dy in arms[::3])
            if score < 12:
                continue
            score = sum(page.is_dark(px + dx, py + dy) for dx, dy in arms) + sum(page.is_dark(px + dx, py + dy) for dx, dy in ring)
            if score > best:
                best, places = score, []
            if score == best:
                places.append((px, py))
    if not places:
        return None
    return sum(px for px, _ in places) / len(places), sum(py for _, py in places) / len(places)


def side_by_side(pair):
    """Whether two pages, as in A1-A2, are of one row."""
    first, second = (re.sub(r"\d", "", name) for name in pair.split("-"))
    return first == second


def marks_of(page, tile):
    """Register marks by the pair of pages they join: {"A1-A2": [(x, y), …]}, in order along the seam."""
    found = {}
    for word, x1, y1, x2, y2 in page.words:
        pair = re.fullmatch(r"([A-Z]+\d+)-([A-Z]+\d+)", word)
        if not pair or tile not in pair.groups():
            continue
        # The name stands beside its mark, on the side that is still seen when the pages are joined.
        upper_left = tile == pair[1]
        baseline = y1 + (y2 - y1) * 0.2
        if side_by_side(word):
            guess = (x2 + 2.2 if upper_left else x1 - 2.2, baseline - 0.7)
        else:
            guess = (x1 - 2.0, baseline - 0.7 if upper_left else baseline + 2.6)
        mark = find_mark(page, *guess)
        if mark is None:
            raise ValueError(f"{tile}: no register mark at the name {word}")
        found.setdefault(word, []).append(mark)
    return {pair: sorted(marks, key=lambda mark: mark[1 if side_by_side(pair) else 0]) for pair, marks in found.items()}


def join(tiles):
    """Where each page lies on the first one, by the marks both show: {tile: (dx, dy)}, and the furthest a mark is from its twin."""
    marks = {tile: marks_of(page, tile) for tile, page in tiles.items()}
    shifts = {}
    for pair in {pair for own in marks.values() for pair in own}:
        here, there = pair.split("-")
        own, other = marks[here][pair], marks[there][pair]
        if len(own) != len(other) or len(own) < 2:
            raise ValueError(f"{pair}: {len(own)} marks on {here}, {len(other)} on {there}")
        shifts[here, there] = [(a[0] - b[0], a[1] - b[1]) for a, b in zip(own, other)]
    placed = {next(iter(tiles)): (0.0, 0.0)}
    for _ in tiles:
        for (here, there), shift in sorted(shifts.items()):
            dx, dy = (sum(axis) / len(shift) for axis in zip(*shift))
            if here in placed and there not in placed:
                placed[there] = (placed[here][0] + dx, placed[here][1] + dy)
            elif there in placed and here not in placed:
                placed[here] = (placed[there][0] - dx, placed[there][1] - dy)
    if set(placed) != set(tiles):
        raise ValueError(f"pages {sorted(set(tiles) - set(placed))} are joined to nothing")
    apart = [math.dist(one, (placed[there][0] - placed[here][0], placed[there][1] - placed[here][1])) for (here, there), shift in shifts.items() for one in shift]
    return placed, max(apart, default=0.0)


class Joined:
    """Several pages as one picture, in the first one's coordinates."""

    def __init__(self, tiles, placed):
        self.parts = [(page, placed[tile]) for tile, page in tiles.items()]
        # What of a page is drawing: not its blank edge, the bars on the left or the names below.
        self.edge = (19.0, 35.0, 8.0)  # left, bottom, right and top, mm

    def part_at(self, x, y):
        """The page that shows a point furthest from the edges of its drawing, and the point on it."""
        left, bottom, rest = self.edge
        best, room = None, 0.5
        for page, (dx, dy) in self.parts:
            px, py = x - dx, y - dy
            clear = min(px - left, py - bottom, page.width * PIXEL - rest - px, page.height * PIXEL - rest - py)
            if clear > room:
                best, room = (page, px, py), clear
        return best

    def share_dark(self, xs, ys):
        """How many of some points are dark, each looked at on the page that shows it furthest from the edges of its drawing."""
        left, bottom, rest = self.edge
        best, dark = numpy.full(len(xs), 0.5), numpy.zeros(len(xs), bool)
        for page, (dx, dy) in self.parts:
            px, py = xs - dx, ys - dy
            clear = numpy.minimum.reduce([px - left, py - bottom, page.width * PIXEL - rest - px, page.height * PIXEL - rest - py])
            mine = clear > best
            columns, rows = (px[mine] / PIXEL).astype(int), page.height - 1 - (py[mine] / PIXEL).astype(int)
            dark[mine] = page.pixels[rows * page.width + columns] == 1
            best[mine] = clear[mine]
        return dark.mean()

    def line_near(self, x, y, nx, ny, reach):
        part = self.part_at(x, y)
        return part and part[0].line_near(part[1], part[2], nx, ny, reach)


def outline_points(dxf, spacing):
    """Points every so often along the outline, with the direction across it."""
    points = []
    for entity in dxf.modelspace().query("POLYLINE"):
        if entity.dxf.layer != "outline":
            continue
        for part in entity.virtual_entities():
            if part.dxftype() == "LINE":
                start, end = part.dxf.start, part.dxf.end
                length = start.distance(end)
                nx, ny = -(end.y - start.y) / length, (end.x - start.x) / length
                for index in range(int(length / spacing)):
                    share = (index + 0.5) * spacing / length
                    points.append((start.x + share * (end.x - start.x), start.y + share * (end.y - start.y), nx, ny))
            else:
                turn = (part.dxf.end_angle - part.dxf.start_angle) % 360 or 360
                for index in range(int(math.radians(turn) * part.dxf.radius / spacing)):
                    angle = math.radians(part.dxf.start_angle) + (index + 0.5) * spacing / part.dxf.radius
                    nx, ny = math.cos(angle), math.sin(angle)
                    points.append((part.dxf.center.x + part.dxf.radius * nx, part.dxf.center.y + part.dxf.radius * ny, nx, ny))
    return points


def spots_of(label, words):
    """Where a label stands whole among a page's words, which run in the order they are read."""
    wanted = label.split()
    for index in range(len(words) - len(wanted) + 1):
        found = words[index:index + len(wanted)]
        if [word for word, *_ in found] == wanted:
            boxes = [box for _, *box in found]
            yield label, min(box[0] for box in boxes), min(box[1] for box in boxes), max(box[2] for box in boxes), max(box[3] for box in boxes)


def label_spots(dxf, words):
    """Middles of labels that drawing and page both have once, in either."""
    labels = [(text.dxf.text, text) for text in dxf.modelspace().query("TEXT")]
    for label, text in labels:
        # The same word may stand in a caption: the label is the one of the right height, lying or upright.
        tall = LINE_HEIGHT * text.dxf.height
        spots = [spot for spot in spots_of(label, words) if min(abs(spot[4] - spot[2] - tall), abs(spot[3] - spot[1] - tall)) < 0.2]
        if len(spots) != 1 or sum(name == label for name, _ in labels) != 1:
            continue
        _, x1, y1, x2, y2 = spots[0]
        anchor = text.dxf.align_point if text.dxf.hasattr("align_point") else text.dxf.insert
        lean = math.radians(text.dxf.rotation)
        middle = (anchor.x - text.dxf.height / 2 * math.sin(lean), anchor.y + text.dxf.height / 2 * math.cos(lean))
        yield middle, ((x1 + x2) / 2, (y1 + y2) / 2)


def slide(picture, lie, sx, sy):
    """The shift near a first guess under which most of some points are dark, and their share."""
    for reach, step, thinned in ((3.0, 0.25, 5), (0.3, 0.05, 1)):
        count = round(reach / step)
        xs, ys = (numpy.array(axis) for axis in zip(*lie[::thinned]))
        scored = [
            (picture.share_dark(xs + sx + a * step, ys + sy + b * step), -abs(a) - abs(b), a, b)
            for a in range(-count, count + 1)
            for b in range(-count, count + 1)
        ]
        # The middle of all the shifts that do as well: the line is wider than a step.
        top = max(score for score, *_ in scored)
        good = [(a, b) for score, _, a, b in scored if score >= top - 1e-9]
        sx += sum(a for a, _ in good) / len(good) * step
        sy += sum(b for _, b in good) / len(good) * step
    return top, sx, sy


def align(picture, dxf, words, start_spots=()):
    """The quarter turn and shift that lay the DXF's outline on the picture: by a label both have, or by a place of the drawing that is looked for
    at some places of the page; then by the ink under the outline."""
    points = outline_points(dxf, 4.0)
    best = (-1.0, None)
    for middle, spot in [*label_spots(dxf, words), *start_spots]:
        for turned in (False, True):
            turn = (lambda x, y: (-y, x)) if turned else (lambda x, y: (x, y))
            lie = [turn(x, y) for x, y, _, _ in points]
            mx, my = turn(*middle)
            top, sx, sy = slide(picture, lie, spot[0] - mx, spot[1] - my)
            if top > best[0]:
                best = (top, (turn, sx, sy))
        if best[0] > 0.9:
            break
    if best[0] < 0.5:
        raise ValueError(f"its outline is not to be found on the page (best {best[0]:.2f})")
    return best[1]


def outline_error(picture, dxf, lay):
    """Furthest the printed outline strays from the DXF's, mm, and the share of it that was seen clear of ticks."""
    turn, sx, sy = lay
    points = outline_points(dxf, 1.0)
    errors = []
    for x, y, nx, ny in points:
        px, py = turn(x, y)
        line = picture.line_near(px + sx, py + sy, *turn(nx, ny), 1.5)
        if line is None:
            raise ValueError(f"no line where the outline runs through ({x:.1f}, {y:.1f})")
        if line[1] <= WIDEST_LINE:
            errors.append(abs(line[0]))
    return max(errors, default=math.inf), len(errors) / len(points)


def lengths_of(dxf):
    """Known lengths, each between two points of lines: across holes, clear of their crosses, and across the outline, clear of corners."""
    for circle in dxf.modelspace().query("CIRCLE"):
        if circle.dxf.layer == "hole" and circle.dxf.radius > 5:
            for angle in (20, 70, 110, 160):
                dx, dy = math.cos(math.radians(angle)) * circle.dxf.radius, math.sin(math.radians(angle)) * circle.dxf.radius
                yield (circle.dxf.center.x - dx, circle.dxf.center.y - dy), (circle.dxf.center.x + dx, circle.dxf.center.y + dy)
    for entity in dxf.modelspace().query("POLYLINE"):
        if entity.dxf.layer != "outline":
            continue
        corners = [vertex.dxf.location for vertex in entity.vertices]
        if len(corners) == 2:
            # A half disc: chords square to its straight edge, and along it.
            left, right = sorted(corners, key=lambda corner: corner.x)
            radius, cx, cy = (right.x - left.x) / 2, (left.x + right.x) / 2, left.y
            for share in (-0.83, -0.17, 0.17, 0.83):
                yield (cx + share * radius, cy), (cx + share * radius, cy + radius * math.sqrt(1 - share**2))
            for share in (0.07, 0.93):
                half = radius * math.sqrt(1 - share**2)
                yield (cx - half, cy + share * radius), (cx + half, cy + share * radius)
        elif len(corners) == 4 and not any(vertex.dxf.bulge for vertex in entity.vertices):
            for a, b, c, d in ((corners[i - 4], corners[i - 3], corners[i - 2], corners[i - 1]) for i in (0, 1)):
                for share in (0.07, 0.17, 0.83, 0.93):
                    yield (a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)), (d.x + share * (c.x - d.x), d.y + share * (c.y - d.y))


def measure_lengths(picture, dxf, lay):
    """(page, expected, measured) of each known length that one page shows whole, both its lines clear of ticks."""
    turn, sx, sy = lay
    for start, end in lengths_of(dxf):
        (x1, y1), (x2, y2) = turn(*start), turn(*end)
        ends = [picture.part_at(x + sx, y + sy) for x, y in ((x1, y1), (x2, y2))]
        if None in ends or ends[0][0] is not ends[1][0]:
            continue
        length = math.dist(start, end)
        nx, ny = (x2 - x1) / length, (y2 - y1) / length
        first, last = (page.line_near(x, y, nx, ny, 1.5) for page, x, y in ends)
        if first and last and max(first[1], last[1]) <= WIDEST_LINE:
            yield ends[0][0], length, length + last[0] - first[0]


def check(path, scratch):
    """What is wrong with a PDF, and what was measured on it."""
    quiet = subprocess.run(["qpdf", "--check", str(path)], capture_output=True, text=True)
    if quiet.returncode != 0:
        yield f"qpdf: {quiet.stdout}{quiet.stderr}", ""
    if b"/PrintScaling /None" not in subprocess.run(["qpdf", "--qdf", "--object-streams=disable", str(path), "-"], capture_output=True).stdout:
        yield "viewers may scale it", ""
    pages = read_pages(path, scratch)
    for number, page in enumerate(pages, 1):
        yield from ((fault, "") for fault in bar_faults(number, page))
    yield "", f"{len(pages)} pages, bars right"

    yield from check_boards(path.parent / "boards", scratch)
    titles = titles_of(json.loads((path.parent / "plan.json").read_text()))
    if not titles:
        return
    drawn = {part.stem: ezdxf.readfile(part) for part in sorted((path.parent / "parts").glob("*.dxf"))}
    if set(titles) != set(drawn):
        yield f"parts drawn and not planned, or planned and not drawn: {sorted(set(titles) ^ set(drawn))}", ""
    lengths, across = [], 0
    for name, dxf in drawn.items():
        try:
            tiles = pages_showing(pages, titles.get(name, name))
            placed, worst = join(tiles)
            picture = Joined(tiles, placed)
            if worst > MARK_TOLERANCE:
                yield f"{name}: register marks up to {worst:.2f} mm apart", ""
            words = [(word, x1 + dx, y1 + dy, x2 + dx, y2 + dy) for tile, page in tiles.items() for dx, dy in [placed[tile]] for word, x1, y1, x2, y2 in page.words if y1 > 35]
            lay = align(picture, dxf, words)
            error, seen = outline_error(picture, dxf, lay)
            if error > OUTLINE_TOLERANCE or seen < 0.6:
                yield f"{name}: outline strays {error:.2f} mm, {seen:.0%} of it seen", ""
            lengths += measure_lengths(picture, dxf, lay)
            rows = {re.sub(r"\d", "", tile) for tile in tiles}
            across = max(across, len(tiles) if len(rows) > 1 and len(tiles) > len(rows) else 0)
            yield "", f"{name} on {len(tiles)}: marks {worst:.3f}, outline {error:.3f} mm ({seen:.0%} seen)"
        except ValueError as problem:
            yield f"{name}: {problem}", ""
    wrong = [(want, have) for _, want, have in lengths if abs(have - want) > LENGTH_TOLERANCE]
    yield from ((f"{want:.2f} mm measures {have:.2f} mm", "") for want, have in wrong)
    if len(lengths) < 3:
        yield f"only {len(lengths)} lengths could be measured", ""
    else:
        on = len({id(page) for page, *_ in lengths})
        yield "", f"{len(lengths)} lengths on {on} pages within {max(abs(have - want) for _, want, have in lengths):.3f} mm"
    yield "", f"across {across}"


def check_boards(folder, scratch):
    """Boards as a print shop gets them: one page each, bars right, every outline where the board's DXF has it."""
    for path in sorted(folder.glob("*.pdf")):
        pages = read_pages(path, scratch)
        if len(pages) != 1:
            yield f"{path.stem}: {len(pages)} pages", ""
            continue
        yield from ((f"{path.stem}: {fault}", "") for fault in bar_faults(1, pages[0]))
        dxf, picture = ezdxf.readfile(path.with_suffix(".dxf")), Joined({"A1": pages[0]}, {"A1": (0.0, 0.0)})
        # A machine's letters are strokes, no text: the drawing's corner is at the left, at some height.
        low = [((0.0, 0.0), (BOARD_LEFT, up)) for up in range(20, 140, 5)]
        error, seen = outline_error(picture, dxf, align(picture, dxf, pages[0].words, low))
        if error > OUTLINE_TOLERANCE or seen < 0.6:
            yield f"{path.stem}: outlines stray {error:.2f} mm, {seen:.0%} of them seen", ""
        yield "", f"{path.stem} whole: outlines {error:.3f} mm ({seen:.0%} seen)"


def titles_of(plan):
    """What the pages call each part, by its file's name. A router's and a laser's parts are not for paper: they have none."""
    if plan["cut"]["with"] != "jigsaw":
        return {}
    layers = (plan["block"] or {"layers": []})["layers"]
    return {
        "spine": "Spine",
        **{station["name"]: f"Station {station['name']}" for station in plan["stations"]},
        **{backing["name"]: f"Backing station {backing['name']}" for backing in plan["backings"]},
        **{layer["name"]: f"Finishing block, layer {number} of {len(layers)}" for number, layer in enumerate(layers, 1)},
    }


def pages_showing(pages, title):
    """The pages of a part, {place: page}, by their feet: `B2 of Station S1`, or its title among others where it is whole on one page."""
    tiles = {}
    for page in pages[1:]:
        # The line that begins highest of all below the drawing, at the page's margin.
        start = max((word for word in page.words if word[1] < 8 and word[2] < 34), key=lambda word: word[2])
        foot = " ".join(word for word, _, y1, _, _ in page.words if abs(y1 - start[2]) < 0.1)
        tile = re.fullmatch(rf"([A-Z]+\d+) of {re.escape(title)}", foot)
        # Where there is no room for all titles the last are cut off: then each drawing's caption tells.
        caption = foot.endswith("…") and f" {title} " in f" {' '.join(word for word, *_ in page.words)} "
        if tile or caption or title in foot.split(" · "):
            tiles[tile[1] if tile else "A1"] = page
    if not tiles:
        raise ValueError("no page names it")
    return tiles


def main(arguments):
    if len(arguments) != 1:
        print(__doc__)
        return 1
    folder = Path(arguments[0])
    paths = sorted(folder.rglob("templates.pdf"))
    failed, across = 0, 0
    for path in paths:
        with tempfile.TemporaryDirectory() as scratch:
            outcome = list(check(path, Path(scratch)))
        faults = [fault for fault, _ in outcome if fault]
        across = max([across, *(int(said.split()[1]) for _, said in outcome if said.startswith("across"))])
        failed += bool(faults)
        print(f"{'FAIL' if faults else 'ok  '} {path.relative_to(folder)}")
        for line in [*faults, *(said for _, said in outcome if said and not said.startswith("across"))]:
            print(f"       {line}")
    if not paths:
        print(f"FAIL no templates.pdf below {folder}")
    # One more check than there are files.
    print(f"{'ok  ' if across >= 4 else 'FAIL'} a drawing crosses four pages, two by two")
    failed += across < 4
    print(f"{len(paths) + 1 - failed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
