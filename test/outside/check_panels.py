#!/usr/bin/python3
"""Reads every panel's drawings back by ezdxf and compares them with the panel's plan.json.

    /usr/bin/python3 test/outside/check_panels.py FOLDER

A panel passes when
  - there is a drawing of the blank for each hand and each face that is marked, and no other; all have the plan's outline (what is cut before
    the bends), its holes and, where they are drilled now, its seams' holes, and nothing else is cut; the net outline comes out where it is trimmed;
  - each bend's two lines stand where the plan has them, the held one moved by as far as the bend starts early, from the outline's edge or a
    neighbour's line to the other, with a square mark in their middle; on the other face ticks at both ends; no line lacks and none is mirrored;
  - take-off and yoke's nose lie where the form's radii and the wrap put them (rays from the apex of the form's own cone, developed);
  - each bend's gauges have its radii inside and outside, its angle finished and pulled, and its marking strip the fan and the allowance between its lines;
  - each form's plan says what the panel's plan says of it; its pieces are as check_against_plan.py wants them; its stations touch the form's cone, every
    run is as long as its bend and lies on radii smaller than it comes out with;
  - the panel's boards hold the pieces of all forms and corners, and no others; a corner's block has the plan's layers.
Prints a line a panel, then "N passed, N failed". Exit code 1 where one failed or none was found.
"""

import json
import math
import sys
from pathlib import Path

import ezdxf

from check_against_plan import TOLERANCE, Drawing, Job, away, box_of, corner_faults, same, straight

# Arcs stand in the plan as chords that stray so far, mm.
CHORD = 0.01
# A line ends this near the outline's edge or another line, mm.
ON_EDGE = 0.02
# A bend on another's form, within 0.1 mm of its own: what its gauges and take-off may differ by from the radii asked for, mm.
GUEST = 0.25


def moved(point, by, direction):
    return point[0] + by * direction[0], point[1] + by * direction[1]


def less(a, b):
    return a[0] - b[0], a[1] - b[1]


def dot(a, b):
    return a[0] * b[0] + a[1] * b[1]


def unit(a):
    size = math.hypot(*a)
    return a[0] / size, a[1] / size


def off_line(point, line):
    """From a point to the line through two places, mm."""
    (x, y), (dx, dy) = less(point, line[0]), unit(less(line[1], line[0]))
    return abs(x * dy - y * dx)


def apart(line, other):
    """How far a drawn line strays from the line through two places."""
    return max(off_line(end, other) for end in line)


def middle(line):
    return (line[0][0] + line[1][0]) / 2, (line[0][1] + line[1][1]) / 2


def corners_of(loop):
    return [side.start for side in loop]


def strays(loop, points):
    """How a drawn loop's sides run beside a loop of the plan's points: a fault, or None. The corners are the plan's, arcs lie within its chords' stray."""
    sides = straight([tuple(point) for point in points])
    for corner in corners_of(loop):
        off = min(math.dist(corner, point) for point in points)
        if off > TOLERANCE:
            return f"a corner at {corner[0]:.4f}, {corner[1]:.4f} stands {off:.4f} mm from any of the plan's"
    for side in loop:
        off = max(away(side.at(share), sides) for share in (0.25, 0.5, 0.75))
        if off > (CHORD if side.centre else 0) + TOLERANCE:
            return f"strays {off:.4f} mm between {side.start} and {side.end}"
    for point in points:
        off = away(point, loop)
        if off > TOLERANCE:
            return f"passes {point} by {off:.4f} mm"
    return None


class Blank:
    """A drawing of a blank, moved and mirrored back to the panel's own flat."""

    def __init__(self, path, outline, is_mirrored):
        drawing = Drawing(path)
        self.beginning = list(corner_faults(drawing))
        if len(drawing.loops["outline"]) != 1:
            raise ValueError(f"{len(drawing.loops['outline'])} outlines")
        drawn = corners_of(drawing.loops["outline"][0])
        turned = lambda point: (-point[0], point[1]) if is_mirrored else point
        x, y = self.shift(outline, [turned(point) for point in drawn])
        place = lambda point: (turned(point)[0] + x, turned(point)[1] + y)
        self.loops = {layer: [self.loop(loop, place, is_mirrored) for loop in loops] for layer, loops in drawing.loops.items()}
        self.marks = [tuple(place(end) for end in line) for line in drawing.lines["mark"]]
        self.circles = [(*place((a, b)), diameter) for a, b, diameter in drawing.circles["hole"]]
        self.cut = {layer for layer in drawing.counts if layer not in ("mark", "label")}

    @staticmethod
    def shift(outline, drawn):
        """What carries the drawn corners to the plan's: of all that carry the first to one of them the one that suits most corners."""
        first = drawn[0]
        suits = lambda x, y: sum(min(math.dist((a + x, b + y), point) for point in outline) for a, b in drawn)
        return min(((point[0] - first[0], point[1] - first[1]) for point in outline), key=lambda by: suits(*by))

    @staticmethod
    def loop(loop, place, is_mirrored):
        made = []
        for side in loop:
            ends = [place(side.start), place(side.end)]
            made.append(type(side)(*(ends[::-1] if is_mirrored and side.centre else ends), side.centre and place(side.centre)))
        return made


class PanelFolder:
    def __init__(self, folder):
        self.folder = folder
        self.plan = json.loads((folder / "plan.json").read_text())
        self.panel = self.plan["panel"]
        self.forms = {form["name"]: form for form in self.plan["forms"]}
        self.sheet = self.plan["forms"][0]["plan"]["sheet"]

    def faults(self):
        yield from self.blank_faults()
        for bend in self.panel["bends"]:
            yield from (f"bend {bend['name']}: {fault}" for fault in self.gauge_faults(bend))
        for folder in self.form_folders():
            yield from (f"{folder.name}: {fault}" for fault in self.form_faults(folder))
        yield from self.corner_block_faults()
        yield from self.board_faults()

    # --- the blank

    def blank_faults(self):
        faces = ["", "-other-face"] if any(bend["turn"] == "down" for bend in self.panel["bends"]) else [""]
        hands = ["-left", "-right"] if self.panel["pair"] else [""]
        expected = {f"blank{hand}{face}": (hand == "-right") != bool(face) for hand in hands for face in faces}
        found = {path.stem for path in (self.folder / "blank").glob("blank*.dxf")}
        if found != set(expected):
            yield f"blanks drawn: {sorted(found)}, expected {sorted(expected)}"
        outline = (self.panel["trim"] or {"cut": self.panel["outline"]})["cut"]
        for name in sorted(found & set(expected)):
            face = "other" if name.endswith("-other-face") else "marked"
            blank = Blank(self.folder / "blank" / f"{name}.dxf", outline, expected[name])
            yield from (f"{name}: {fault}" for fault in (*blank.beginning, *self.cut_faults(blank, outline), *self.mark_faults(blank, face)))

    def cut_faults(self, blank, outline):
        fault = strays(blank.loops["outline"][0], outline)
        if fault:
            yield f"outline: {fault}"
        holes = blank.loops.get("hole", [])
        if len(holes) != len(self.panel["holes"]):
            yield f"{len(holes)} holes in the outline, {len(self.panel['holes'])} planned"
        for points in self.panel["holes"]:
            if all(strays(hole, points) for hole in holes):
                yield f"no hole round {points[0]}"
        drilled = [(*hole, seam["hole"]) for seam in self.panel["seams"] if seam["drill"] == "now" for hole in seam["holes"]]
        yield from same("seam's hole", drilled, blank.circles)
        if blank.cut - {"outline", "hole"}:
            yield f"cut by other operations: {sorted(blank.cut)}"
        for line in (self.panel["trim"] or {"lines": []})["lines"]:
            for a, b in zip(line, line[1:]):
                if not any(apart((a, b), mark) <= CHORD + TOLERANCE and self.covers(mark, a, b) for mark in blank.marks):
                    yield f"no trim line from {a} to {b}"
        for seam in self.panel["seams"]:
            for hole in seam["holes"]:
                if sum(math.dist(middle(mark), hole) <= TOLERANCE for mark in blank.marks) < 2:
                    yield f"no cross for {seam['on']}'s hole at {hole}"

    @staticmethod
    def covers(mark, a, b):
        """Both places lie along a mark; the plan's chords and the drawing's may be cut apart elsewhere."""
        along, size = unit(less(mark[1], mark[0])), math.dist(*mark)
        return any(-CHORD <= dot(less(point, mark[0]), along) <= size + CHORD for point in (a, b, middle((a, b))))

    def mark_faults(self, blank, face):
        for bend in self.panel["bends"]:
            held, free = self.stand(bend), [tuple(end) for end in bend["freeLine"]]
            here = (bend["turn"] == "up") == (face == "marked")
            lines = [("held", held), ("free", free)]
            for which, line in lines:
                yield from (f"{bend['name']}: {fault}" for fault in (self.line_faults if here else self.tick_faults)(blank, which, line))
            if here:
                yield from (f"{bend['name']}: {fault}" for fault in self.pull_faults(blank, bend))

    def stand(self, bend):
        """The held line, moved away from the pulled side by as far as the bend starts early."""
        out = self.pulled_way(bend)
        return [moved(end, -bend["pull"]["early"], out) for end in bend["heldLine"]]

    @staticmethod
    def pulled_way(bend):
        """Square to the held line, toward the pulled side."""
        (a, b), free = bend["heldLine"], bend["freeLine"]
        dx, dy = unit(less(b, a))
        return (-dy, dx) if dot(less(middle(free), a), (-dy, dx)) > 0 else (dy, -dx)

    def line_faults(self, blank, which, line):
        on = [mark for mark in blank.marks if apart(mark, line) <= TOLERANCE and math.dist(*mark) > 0.5 * math.dist(*line)]
        if len(on) != 1:
            yield f"{len(on)} drawn {which} lines"
            return
        bounds = straight([tuple(point) for point in self.panel["outline"]])
        for end in on[0]:
            if away(end, bounds) > ON_EDGE + abs(self.early_of(line)) and all(off_line(end, other) > ON_EDGE for other in self.other_lines(line)):
                yield f"the {which} line ends at {end}, {away(end, bounds):.4f} mm from the outline"
        middles = [mark for mark in blank.marks if math.dist(middle(mark), middle(on[0])) <= TOLERANCE and mark is not on[0]]
        if not any(abs(dot(unit(less(*mark)), unit(less(*line)))) <= TOLERANCE for mark in middles):
            yield f"the {which} line has no mark across its middle"

    def early_of(self, line):
        """How far a line was moved for an early start; 0 for one that was not."""
        return max((bend["pull"]["early"] for bend in self.panel["bends"] if self.stand(bend) == line), key=abs, default=0)

    def other_lines(self, line):
        for bend in self.panel["bends"]:
            for own in (self.stand(bend), [tuple(end) for end in bend["freeLine"]], bend["heldLine"]):
                if apart(own, line) > 1:
                    yield own

    def tick_faults(self, blank, which, line):
        ticks = [mark for mark in blank.marks if apart(mark, line) <= TOLERANCE and math.dist(*mark) <= 0.5 * math.dist(*line)]
        if len(ticks) != 2:
            yield f"{len(ticks)} ticks for the {which} line on the other face"

    def pull_faults(self, blank, bend):
        """Take-off and nose: rays from the apex of the form's developed cone, moved with the form."""
        ray = self.take_off(bend)
        room = self.room(bend, 2 * CHORD)
        if sum(apart(mark, ray) <= room for mark in blank.marks) < 2:
            yield "no take-off marks where the form's radii and the wrap put them"
        if bend["pull"]["with"] == "yoke":
            across = self.beyond(ray, bend["pull"]["yoke"]["gap"], self.pulled_way(bend))
            if not any(apart(mark, across) <= room for mark in blank.marks):
                yield "no line for the yoke's nose a gap beyond the take-off"

    @staticmethod
    def beyond(line, by, way):
        dx, dy = unit(less(line[1], line[0]))
        out = (-dy, dx) if dot((-dy, dx), way) > 0 else (dy, -dx)
        return [moved(end, by, out) for end in line]

    def form_radii(self, bend):
        """The form's radii where the bend's ends A and B stand on it."""
        form = self.forms[bend["form"]]
        run = next(one for one in form["runs"] if one["bend"] == bend["name"])
        radii, length = form["plan"]["bend"]["form"], form["plan"]["bend"]["length"]
        ends = [radii["from"] + (radii["to"] - radii["from"]) * x / length for x in (run["from"], run["to"])]
        # A guest may stand on it the other way round.
        turned = (ends[1] - ends[0]) * (bend["finished"]["to"] - bend["finished"]["from"]) < 0
        return ends[::-1] if turned else ends

    def room(self, bend, own):
        """How near the form's own bend comes, and a guest."""
        return own if bend["form"] == bend["name"] else GUEST

    def take_off(self, bend):
        first, last = self.form_radii(bend)
        a, b = bend["heldLine"]
        length, out, along = math.dist(a, b), self.pulled_way(bend), unit(less(b, a))
        sine = (last - first) / length
        neutral = first + self.forms[bend["form"]]["plan"]["bend"]["neutral"] * self.sheet["thickness"] * math.sqrt(1 - sine**2)
        wrap = math.radians(bend["wrap"])
        flat = []
        for x in (0, length):
            # From the apex, at x = -neutral/sine, turned by the wrap's share; without a taper straight out.
            turn, reach = wrap * sine, (neutral + sine * x)
            place = (x, wrap * neutral) if abs(sine) < 1e-9 else (reach * math.cos(turn) / sine - neutral / sine, reach * math.sin(turn) / sine)
            flat.append(moved(moved(a, place[0], along), place[1] - bend["pull"]["early"], out))
        return flat

    # --- gauges

    def gauge_folder(self, bend):
        own = bend["form"] == bend["name"]
        return self.folder / "forms" / bend["name"] / "aids" if own else self.folder / "bends" / bend["name"]

    def gauge_faults(self, bend):
        folder, thick = self.gauge_folder(bend), self.sheet["thickness"]
        (a, b), finished = bend["baseLine"], bend["finished"]
        sine = (finished["to"] - finished["from"]) / math.dist(a, b)
        cosine = math.sqrt(1 - sine**2)
        for end, radius in (("a", finished["from"]), ("b", finished["to"])):
            for side, wanted in (("inside", radius), ("outside", radius + thick * cosine)):
                rounds = [one.radius for one in Drawing(folder / f"radius-{side}-{end}.dxf").loops["outline"][0] if one.centre]
                if len(rounds) != 1 or abs(rounds[0] - wanted) > self.room(bend, TOLERANCE):
                    yield f"gauge {side} at {end.upper()} has {rounds}, not {wanted:.4f}"
        for name, angles in (("finished", [bend["angle"]]), ("on-form", bend["pull"]["legAngle"].values())):
            sides = [side for side in Drawing(folder / f"angle-{name}.dxf").loops["outline"][0] if side.length() >= 60]
            turns = [math.degrees(math.atan2(*less(side.start, side.end)[::-1])) % 180 for side in sides]
            low, high = min(angles), max(angles)
            room = 1e-3 if name == "finished" else 0.01
            if not any(low % 180 - room <= turn <= high % 180 + room for turn in turns):
                yield f"angle-{name} has edges at {[round(turn, 3) for turn in turns]}°, none at {low:.3f} to {high:.3f}"
        yield from self.strip_faults(bend, Drawing(folder / "marking-strip.dxf").lines["mark"])

    def strip_faults(self, bend, marks):
        """The strip's two long lines: the fan between them, and at either end the width of the zone, as on the blank."""
        size = math.dist(*bend["heldLine"])
        drawn = sorted((mark for mark in marks if math.dist(*mark) > 0.9 * size), key=lambda mark: middle(mark)[1])
        if len(drawn) != 2:
            yield f"{len(drawn)} lines on the marking strip"
            return
        held, free = self.stand(bend), bend["freeLine"]
        for a, b in ((0, 0), (1, 1), (0, 1), (1, 0)):
            wide, wanted = math.dist(drawn[0][a], drawn[1][b]), math.dist(held[a], free[b])
            if abs(wide - wanted) > self.room(bend, 10 * TOLERANCE):
                yield f"the marking strip's lines lie {wide:.4f} mm apart from end to end, on the blank {wanted:.4f}"

    # --- forms, corners, boards

    def form_folders(self):
        return sorted(path.parent for path in (self.folder / "forms").glob("*/plan.json"))

    def form_faults(self, folder):
        said = json.loads((folder / "plan.json").read_text())
        form = next((form for form in self.plan["forms"] if form["plan"]["title"] == said["title"]), None)
        if form is None:
            yield "a form that the panel's plan does not know"
            return
        if {key: said[key] for key in said if key != "findings"} != {key: form["plan"][key] for key in said if key != "findings"}:
            yield f"its plan differs from the panel's in {[key for key in said if said[key] != form['plan'].get(key)]}"
        job = Job(folder)
        if set(job.parts) != set(job.expected):
            yield f"parts drawn and not planned, or planned and not drawn: {sorted(set(job.parts) ^ set(job.expected))}"
        for name in sorted(set(job.parts) & set(job.expected)):
            yield from (f"{name}: {fault}" for fault in (*corner_faults(job.parts[name]), *job.expected[name][1](job.parts[name])))
        yield from self.cone_faults(form["plan"])
        yield from self.run_faults(form)

    @staticmethod
    def cone_faults(plan):
        """Contact faces touch the form's cone; places along the spine are those along the centre line."""
        radii, length = plan["bend"]["form"], plan["bend"]["length"]
        sine = (radii["to"] - radii["from"]) / length
        for station in plan["stations"]:
            face = station["at"] + station["thickness"] / 2 * (-1 if station["contact"] == "from" else 1)
            wanted = radii["from"] + face / math.sqrt(1 - sine**2) * sine
            if abs(station["radius"] - wanted) > TOLERANCE:
                yield f"{station['name']} has a radius of {station['radius']:.4f}, the cone there {wanted:.4f}"

    def run_faults(self, form):
        for run in form["runs"]:
            bend = next(one for one in self.panel["bends"] if one["name"] == run["bend"])
            first, last = self.form_radii(bend)
            if abs(abs(run["to"] - run["from"]) - math.dist(*bend["baseLine"])) > 1e-3:
                yield f"the run of {run['bend']} is {abs(run['to'] - run['from']):.3f} mm long, the bend {math.dist(*bend['baseLine']):.3f}"
            if not (0 < first < bend["finished"]["from"] and 0 < last < bend["finished"]["to"]):
                yield f"the run of {run['bend']} lies on radii {first:.2f} to {last:.2f}, to come out at {bend['finished']}"

    def corner_block_faults(self):
        blocks = [corner["block"] for corner in self.panel["corners"] if corner["block"]]
        wanted = sorted(round(sum(side.length() for side in straight([tuple(point) for point in layer["outline"]])), 2) for block in blocks for layer in block["layers"])
        drawn = sorted(round(sum(side.length() for side in Drawing(path).loops["outline"][0]), 2) for path in (self.folder / "corners").glob("*.dxf"))
        if len(wanted) != len(drawn) or any(abs(a - b) > 0.5 for a, b in zip(wanted, drawn)):
            yield f"corner blocks' layers go {drawn} mm round, planned {wanted}"

    def board_faults(self):
        drawings = lambda pattern: [Drawing(path) for path in sorted(self.folder.glob(pattern))]
        parts, boards = drawings("forms/*/parts/*.dxf") + drawings("corners/*.dxf"), drawings("boards/*.dxf")
        for layer in ("outline", "hole", "countersink", "groove"):
            sizes = lambda drawn: sorted([diameter for one in drawn for _, _, diameter in one.circles[layer]] + [sum(side.length() for side in loop) for one in drawn for loop in one.loops[layer]])
            ours, theirs = sizes(parts), sizes(boards)
            if len(ours) != len(theirs) or any(abs(a - b) > 10 * TOLERANCE for a, b in zip(ours, theirs)):
                yield f"boards hold other shapes on {layer} than the forms and corners"


def is_panel(path):
    return path.parent.parent.name != "forms" and json.loads(path.read_text()).get("panel") is not None


def main(arguments):
    if len(arguments) != 1:
        print(__doc__)
        return 1
    root = Path(arguments[0])
    paths = [path for path in sorted(root.rglob("plan.json")) if is_panel(path)]
    failed = 0
    for path in paths:
        try:
            folder = PanelFolder(path.parent)
            faults, said = list(folder.faults()), f"{len(folder.panel['bends'])} bends, {len(folder.forms)} forms"
        except (ezdxf.DXFError, OSError, KeyError, IndexError, ValueError, StopIteration) as problem:
            faults, said = [f"cannot be compared: {type(problem).__name__} {problem}"], ""
        failed += bool(faults)
        print(f"{'FAIL' if faults else 'ok  '} {path.parent.relative_to(root)}: {said}{''.join(f'{chr(10)}       {fault}' for fault in faults)}")
    if not paths:
        print(f"FAIL no panel's plan.json below {root}")
        failed = 1
    print(f"panels' drawings against their plans: {max(0, len(paths) - failed)} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
