#!/usr/bin/python3
"""Reads every job's drawings back by ezdxf and compares them with its plan.json, to a ten-thousandth of a mm.

    /usr/bin/python3 test/outside/check_against_plan.py FOLDER

Expected shapes are put together here from the plan's numbers alone, and moved by half the beam where a laser cuts: outlines outward,
openings inward. A job passes when
  - there is a drawing for every board, or for every layer of it, and no other;
  - every part's drawing begins at its lower left corner: nothing of it below 0, something at 0. What follows is measured from the part's own
    origin (line A on the spine's centre line, the middle of a round edge, the middle of a backing station's edge), found by the outline's box;
  - every outline runs at that distance from the expected one all the way round: round edges by their radius, tabs, notches, and the
    wood that stands in a router's groove;
  - holes, countersinks of the drawn face, slots and dowel holes are where and as wide as they should be, and there are no others;
    a saw's spine has a dashed ring of marks where one is sunk from the back;
  - grooves have the planned sides, and run past the spine's edges by half the bit at least;
  - the fit test's middle opening has the job's own fit;
  - the boards hold exactly the parts' shapes;
  - operations.csv, by Python's csv module, and operations.json have a row for every layer with shapes, with their count, diameter and
    depth, and each bridge on its outline; a jigsaw's job has neither.
Prints a line a job, then "N passed, N failed". Exit code 1 where one failed or none was found.
"""

import copy
import csv
import json
import math
import sys
from collections import Counter, defaultdict
from pathlib import Path

import ezdxf

TOLERANCE = 1e-4
# The table of operations is written to a thousandth of a mm.
ROUNDED = 0.5e-3 + 1e-9


class Side:
    """A straight or round side of an outline, counter-clockwise or not."""

    def __init__(self, start, end, centre=None):
        self.start, self.end, self.centre = start, end, centre
        if centre:
            self.radius = math.dist(centre, start)
            self.first = math.atan2(start[1] - centre[1], start[0] - centre[0])
            last = math.atan2(end[1] - centre[1], end[0] - centre[0])
            self.turn = (last - self.first) % (2 * math.pi) or 2 * math.pi

    def at(self, share):
        if self.centre:
            angle = self.first + share * self.turn
            return self.centre[0] + self.radius * math.cos(angle), self.centre[1] + self.radius * math.sin(angle)
        return tuple(a + share * (b - a) for a, b in zip(self.start, self.end))

    def distance(self, point):
        if self.centre:
            angle = math.atan2(point[1] - self.centre[1], point[0] - self.centre[0])
            if (angle - self.first) % (2 * math.pi) <= self.turn:
                return abs(math.dist(point, self.centre) - self.radius)
            return min(math.dist(point, self.start), math.dist(point, self.end))
        along = [b - a for a, b in zip(self.start, self.end)]
        share = sum((p - a) * d for p, a, d in zip(point, self.start, along)) / sum(d * d for d in along)
        return math.dist(point, self.at(min(1, max(0, share))))

    def length(self):
        return self.radius * self.turn if self.centre else math.dist(self.start, self.end)


    def box(self):
        """Left, low, right, high; of a round side its own quarter points too."""
        ends = [self.start, self.end]
        if self.centre:
            x, y = self.centre
            ends += [point for turn in range(4) for point in [(x + self.radius * math.cos(turn * math.pi / 2), y + self.radius * math.sin(turn * math.pi / 2))]
                     if (turn * math.pi / 2 - self.first) % (2 * math.pi) <= self.turn]
        xs, ys = zip(*ends)
        return min(xs), min(ys), max(xs), max(ys)

    def from_place(self, x, y):
        """The same side, measured from a place."""
        moved = lambda point: point and (point[0] - x, point[1] - y)
        return Side(moved(self.start), moved(self.end), moved(self.centre))


def straight(corners):
    """Sides from corner to corner and back to the first."""
    return [Side(a, b) for a, b in zip(corners, corners[1:] + corners[:1]) if math.dist(a, b) > 1e-9]


def sides_of(polyline, unit):
    """As ezdxf takes a polyline apart, in mm; its arcs all run counter-clockwise."""
    parts = polyline.virtual_entities()
    flat = lambda point: (point.x * unit, point.y * unit)
    return [Side(flat(part.start_point), flat(part.end_point), flat(part.dxf.center)) if part.dxftype() == "ARC" else Side(flat(part.dxf.start), flat(part.dxf.end)) for part in parts]


def away(point, sides):
    return min(side.distance(point) for side in sides)


class Drawing:
    """What a file holds, layer by layer, in mm: $INSUNITS says what its numbers are."""

    def __init__(self, path):
        self.circles, self.loops, self.lines, self.counts = defaultdict(list), defaultdict(list), defaultdict(list), Counter()
        document = ezdxf.readfile(path)
        unit = {1: 25.4, 4: 1}[document.header["$INSUNITS"]]
        for entity in document.modelspace():
            layer, kind = entity.dxf.layer, entity.dxftype()
            self.counts[layer] += 1
            if kind == "CIRCLE":
                self.circles[layer].append((entity.dxf.center.x * unit, entity.dxf.center.y * unit, 2 * entity.dxf.radius * unit))
            elif kind == "LINE":
                self.lines[layer].append(tuple((end.x * unit, end.y * unit) for end in (entity.dxf.start, entity.dxf.end)))
            elif kind == "POLYLINE" and entity.is_closed:
                self.loops[layer].append(sides_of(entity, unit))


def seen_from(drawing, x, y):
    """The drawing measured from a place."""
    moved = copy.copy(drawing)
    moved.circles = defaultdict(list, {layer: [(a - x, b - y, d) for a, b, d in circles] for layer, circles in drawing.circles.items()})
    moved.loops = defaultdict(list, {layer: [[side.from_place(x, y) for side in loop] for loop in loops] for layer, loops in drawing.loops.items()})
    moved.lines = defaultdict(list, {layer: [tuple((a - x, b - y) for a, b in line) for line in lines] for layer, lines in drawing.lines.items()})
    return moved


def corner_faults(drawing):
    """All of it lies to the right of and above the origin, and reaches both axes."""
    boxes = [box_of(loop) for loops in drawing.loops.values() for loop in loops]
    boxes += [(x - d / 2, y - d / 2) for circles in drawing.circles.values() for x, y, d in circles]
    boxes += [(min(a[0], b[0]), min(a[1], b[1])) for lines in drawing.lines.values() for a, b in lines]
    for axis, low in (("x", min(box[0] for box in boxes)), ("y", min(box[1] for box in boxes))):
        if abs(low) > TOLERANCE:
            yield f"begins at {axis} = {low:.4f}"


def box_of(sides):
    """Left, low, right, high of a loop."""
    left, low, right, high = zip(*(side.box() for side in sides))
    return min(left), min(low), max(right), max(high)


def same(what, expected, found):
    """Every expected tuple of numbers is found, once, and nothing else."""
    left = list(found)
    for want in expected:
        near = [have for have in left if all(abs(a - b) <= TOLERANCE for a, b in zip(want, have))]
        if near:
            left.remove(near[0])
        else:
            yield f"no {what} at {[round(number, 4) for number in want]}"
    yield from (f"{what} at {[round(number, 4) for number in extra]}, not in the plan" for extra in left)


def outline_faults(drawing, expected, moved):
    """The one outline lies `moved` outside the expected sides, everywhere."""
    if len(drawing.loops["outline"]) != 1:
        yield f"{len(drawing.loops['outline'])} outlines"
        return
    drawn = drawing.loops["outline"][0]
    for side in drawn:
        off = max(abs(away(side.at(share), expected) - moved) for share in (0, 0.25, 0.5, 0.75))
        if off > TOLERANCE:
            yield f"outline strays {off:.4f} mm between {side.start} and {side.end}"
    for side in expected:
        off = abs(away(side.at(0.5), drawn) - moved)
        if off > TOLERANCE:
            yield f"the side from {side.start} to {side.end} is drawn {off:.4f} mm off"
    reach = lambda sides: max(side.at(share)[0] for side in sides for share in (0, 0.5))
    if reach(drawn) < reach(expected) + moved - TOLERANCE:
        yield "the outline is moved inward"


def tabbed(half, depth, tabs, relief):
    """Corners of a board's edge to the spine, from -half to half, as (along, behind): tabs reach behind, relieved beside their roots."""
    corners = [(-half, 0)]
    for tab in sorted(tabs, key=lambda one: one["offset"]):
        left, right = tab["offset"] - tab["width"] / 2, tab["offset"] + tab["width"] / 2
        corners += [(left - relief, 0), (left - relief, -relief), (left, -relief), (left, depth), (right, depth), (right, -relief), (right + relief, -relief), (right + relief, 0)]
    return [*corners, (half, 0)]


class Job:
    """A job's folder: its plan and what is to be drawn by it."""

    def __init__(self, folder):
        self.folder = folder
        self.plan = json.loads((folder / "plan.json").read_text())
        self.cut = self.plan["cut"]
        self.tool = self.cut["with"]
        self.moved = self.cut["kerf"] / 2 if self.tool == "laser" else 0
        self.layers = self.cut["layers"] if self.tool == "laser" else {"spine": 1, "stations": 1, "backing": 1}
        self.stacks = {stack["name"]: stack for stack in self.cut["boards"]} if self.tool == "laser" else {}
        self.parts = {path.stem: Drawing(path) for path in sorted((folder / "parts").glob("*.dxf"))}
        self.expected = self.expect()

    def expect(self):
        """For each part its thickness and the check of its drawing."""
        plan, expected = self.plan, {}
        for layer, name in self.copies("spine", "spine"):
            expected[name] = (plan["spine"]["thickness"] / self.layers["spine"], lambda drawing, layer=layer: self.spine_faults(drawing, layer))
        for kind, boards, check in (("stations", plan["stations"], self.station_faults), ("backing", plan["backings"], self.backing_faults)):
            for board in boards:
                for layer, name in self.copies(board["name"], kind):
                    expected[name] = (board["thickness"] / self.layers[kind], lambda drawing, board=board, layer=layer, check=check: check(drawing, board, layer))
        for layer in (plan["block"] or {"layers": []})["layers"]:
            expected[layer["name"]] = (layer["thickness"], lambda drawing, layer=layer: self.block_faults(drawing, layer))
        if self.tool != "jigsaw":
            expected["fit-test"] = (plan["spine"]["thickness"] / self.layers["spine"], self.fit_faults)
        if self.tool == "laser":
            thickness = plan["stations"][0]["thickness"] / self.layers["stations"]
            expected |= {f"fit-tongue-{number + 1}": (thickness, lambda drawing: ()) for number in range(self.layers["stations"])}
        return expected

    def copies(self, name, kind):
        count = self.layers[kind]
        return [(layer, f"{name}-{layer + 1}" if count > 1 else name) for layer in range(count)]

    def behind(self, half, name):
        """The straight edge of a board that stands on the spine."""
        if self.tool == "laser":
            return tabbed(half, self.cut["tabLength"], self.stacks[name]["tabs"], self.cut["relief"])
        return [(-half, 0), (half, 0)]

    def dowels(self, name):
        return [(dowel["offset"], dowel["depth"], dowel["diameter"] - 2 * self.moved) for dowel in self.stacks[name]["dowels"]] if self.tool == "laser" else []

    def station_faults(self, drawing, station, layer):
        radius = self.stacks[station["name"]]["layers"][layer]["radius"] if self.tool == "laser" else station["radius"]
        edge = [(along, -behind) for along, behind in self.behind(radius, station["name"])]
        if self.tool == "router":
            depth = self.cut["grooveDepth"]
            edge = [(-radius, 0), (-radius, -depth), (radius, -depth), (radius, 0)]
        straights = straight(edge)[:-1]
        left, _, _, high = box_of(drawing.loops["outline"][0])
        drawing = seen_from(drawing, left + radius + self.moved, high - radius - self.moved)
        yield from outline_faults(drawing, [*straights, Side((radius, 0), (-radius, 0), (0.0, 0.0))], self.moved)
        # The round edge once more, by its radius alone.
        rounds = [(*side.centre, side.radius) for side in drawing.loops["outline"][0] if side.centre and side.radius > max(self.moved, TOLERANCE) * 2]
        yield from same("round edge", [(0, 0, radius + self.moved)], rounds)
        yield from same("dowel hole", self.dowels(station["name"]), drawing.circles["hole"])

    def backing_faults(self, drawing, backing, layer):
        edge = [(-behind, along) for along, behind in self.behind(backing["width"] / 2, backing["name"])]
        half, depth = backing["width"] / 2, backing["depth"]
        _, low, right, _ = box_of(drawing.loops["outline"][0])
        drawing = seen_from(drawing, right - depth - self.moved, low + half + self.moved)
        yield from outline_faults(drawing, straight([*edge, (depth, half), (depth, -half)]), self.moved)
        yield from same("dowel hole", [(depth, offset, diameter) for offset, depth, diameter in self.dowels(backing["name"])], drawing.circles["hole"])

    def half(self, s):
        spine = self.plan["spine"]
        return (spine["widthFrom"] + (spine["widthTo"] - spine["widthFrom"]) * s / spine["length"]) / 2

    def spine_faults(self, drawing, layer):
        spine = self.plan["spine"]
        start, end = -spine["ears"], spine["length"] + spine["ears"]
        slots = [slot for stack in self.stacks.values() for slot in stack["slots"]]
        left, low, _, high = box_of(drawing.loops["outline"][0])
        drawing = seen_from(drawing, left + self.moved - start, (low + high) / 2)
        corners = [(start, -self.half(start)), (end, -self.half(end)), *self.notches(slots, "to"), (end, self.half(end)), (start, self.half(start)), *self.notches(slots, "from")[::-1]]
        yield from outline_faults(drawing, straight(corners), self.moved)

        holes = [(hole["at"], 0, hole["diameter"]) for hole in spine["clampHoles"]] + [(hole["at"], hole["offset"], hole["diameter"]) for hole in spine["screwHoles"]]
        yield from same("hole", [(x, y, diameter - 2 * self.moved) for x, y, diameter in holes], drawing.circles["hole"])
        # A drawing shows what is done from the drawn face; the last of several layers lies with it outward.
        last = self.layers["spine"] - 1
        faces = {"front": layer == 0, "back": last > 0 and layer == last}
        yield from same("countersink", [(hole["at"], hole["offset"], hole["countersink"]) for hole in spine["screwHoles"] if faces[hole["side"]]], drawing.circles["countersink"])
        if self.tool == "jigsaw":
            yield from self.hidden_faults(drawing)
        closed = [
            (slot["low"] + self.moved, slot["offset"] - slot["width"] / 2 + self.moved, slot["high"] - self.moved, slot["offset"] + slot["width"] / 2 - self.moved)
            for slot in slots if slot["open"] is None
        ]
        yield from same("slot", closed, [box_of(loop) for loop in drawing.loops["hole"]])
        if self.tool == "router":
            yield from self.groove_faults(drawing, start, end)

    def hidden_faults(self, drawing):
        """What is sunk from the back stands on the front as a dashed ring of marks, what is sunk from the front does not."""
        for hole in self.plan["spine"]["screwHoles"]:
            off = lambda end: abs(math.dist(end, (hole["at"], hole["offset"])) - hole["countersink"] / 2)
            dashes = sum(all(off(end) <= TOLERANCE for end in line) for line in drawing.lines["mark"])
            if (dashes >= 8) != (hole["side"] == "back"):
                yield f"{dashes} dashes round the hole for {hole['holds']}, sunk from the {hole['side']}"

    def notches(self, slots, end):
        """Corners of the slots that run out of an end, from the lowest up."""
        relief, corners = self.cut.get("relief", 0), []
        for slot in sorted((one for one in slots if one["open"] == end), key=lambda one: one["offset"]):
            outer, inner, deep = (slot["high"], slot["low"], slot["low"] - relief) if end == "to" else (slot["low"], slot["high"], slot["high"] + relief)
            low, high = slot["offset"] - slot["width"] / 2, slot["offset"] + slot["width"] / 2
            corners += [(outer, low), (deep, low), (deep, low + relief), (inner, low + relief), (inner, high - relief), (deep, high - relief), (deep, high), (outer, high)]
        return corners

    def groove_faults(self, drawing, start, end):
        past = self.cut["bit"] / 2 - TOLERANCE
        grooves, drawn = sorted(self.cut["grooves"], key=lambda one: one["low"]), sorted(drawing.loops["groove"], key=lambda loop: box_of(loop)[0])
        if [groove["holds"] for groove in grooves] != [station["name"] for station in sorted(self.plan["stations"], key=lambda one: one["at"])]:
            yield "not a groove for every station"
        if len(grooves) != len(drawn) or drawing.circles["groove"]:
            yield f"{len(drawn)} grooves drawn, {len(grooves)} planned"
        for groove, loop in zip(grooves, drawn):
            left, _, right, _ = box_of(loop)
            if (left > start - past) if groove["open"] == "from" else abs(left - groove["low"]) > TOLERANCE:
                yield f"groove of {groove['holds']} begins at {left:.4f}"
            if (right < end + past) if groove["open"] == "to" else abs(right - groove["high"]) > TOLERANCE:
                yield f"groove of {groove['holds']} ends at {right:.4f}"
            if len(loop) != 4 or any(abs(side.start[1]) < self.half(side.start[0]) + past for side in loop):
                yield f"groove of {groove['holds']} does not run past the edges"

    def block_faults(self, drawing, layer):
        block = self.plan["block"]
        outline = drawing.loops["outline"][0]
        rounds = [index for index, side in enumerate(outline) if side.centre and side.radius > max(self.moved, TOLERANCE) * 2]
        if rounds:
            drawing = seen_from(drawing, *outline[rounds[0]].centre)
            outline = drawing.loops["outline"][0]
        yield from same("round edge", [(0, 0, layer["radius"] + self.moved)], [(*outline[index].centre, outline[index].radius) for index in rounds])
        legs = [outline[index + step - len(outline)].length() for index in rounds for step in (1, -1)]
        yield from same("leg edge", [(block["legs"]["held"],), (block["legs"]["free"],)], [(leg,) for leg in legs])
        yield from same("dowel hole", [(hole["x"], hole["y"], hole["diameter"] - 2 * self.moved) for hole in block["holes"]], drawing.circles["hole"])

    def fit_faults(self, drawing):
        openings = sorted(box_of(loop) for loop in drawing.loops["groove" if self.tool == "router" else "hole"])
        widths = [(right - left,) for left, _, right, _ in openings]
        if len(openings) != 3 or not widths[0] <= widths[1] < widths[2]:
            yield f"fit test with openings {widths} mm wide"
            return
        yield from same("width of the fit test's middle opening", [(self.plan["stations"][0]["thickness"] + self.cut["fit"] - 2 * self.moved,)], widths[1:2])

    def faults(self):
        if set(self.parts) != set(self.expected):
            yield f"parts drawn and not planned, or planned and not drawn: {sorted(set(self.parts) ^ set(self.expected))}"
        for name in sorted(set(self.parts) & set(self.expected)):
            yield from (f"{name}: {fault}" for fault in (*corner_faults(self.parts[name]), *self.expected[name][1](self.parts[name])))
        yield from self.board_faults()
        yield from self.operation_faults()

    def board_faults(self):
        boards = [Drawing(path) for path in sorted((self.folder / "boards").glob("*.dxf"))]
        for layer in ("outline", "hole", "countersink", "groove", "label"):
            sizes = lambda drawings: sorted(diameter for drawing in drawings for _, _, diameter in drawing.circles[layer]) + sorted(
                sum(side.length() for side in loop) for drawing in drawings for loop in drawing.loops[layer])
            ours, theirs = sizes(self.parts.values()), sizes(boards)
            if len(ours) != len(theirs) or any(abs(a - b) > 10 * TOLERANCE for a, b in zip(ours, theirs)):
                yield f"boards hold other shapes on {layer} than the parts"
            if sum(part.counts[layer] for part in self.parts.values()) != sum(board.counts[layer] for board in boards):
                yield f"boards hold another number of shapes on {layer} than the parts"

    def operation_faults(self):
        table, data = self.folder / "operations.csv", self.folder / "operations.json"
        if self.tool == "jigsaw":
            if table.exists() or data.exists():
                yield "operations for a jigsaw"
            return
        with table.open(newline="", encoding="utf-8") as lines:
            rows = list(csv.DictReader(lines, strict=True))
        unit = "mm" if rows and "size mm" in rows[0] else "in"
        place_unit = "mm" if rows and "x mm" in rows[0] else "in"
        number = lambda text, unit=unit: None if text == "" else float(text) * (1 if unit == "mm" else 25.4)
        told = [{**{key: row[key] for key in ("part", "operation", "tool", "note")}, "count": int(row["count"]), "size": number(row[f"size {unit}"]), "depth": number(row[f"depth {unit}"]),
                 "at": None if row[f"x {place_unit}"] == "" else [number(row[f"{axis} {place_unit}"], place_unit) for axis in "xy"]} for row in rows]
        scaled = lambda value, unit: value if value is None or unit == "mm" else [one * 25.4 for one in value] if isinstance(value, list) else value * 25.4
        written = json.loads(data.read_text())
        same = [{**row, **{key: scaled(row[key], written["unit"]) for key in ("size", "depth")}, "at": scaled(row["at"], written["placeUnit"])} for row in written["operations"]]
        if same != told:
            yield "operations.json says something else than operations.csv"
        if {row["part"] for row in told} != set(self.parts):
            yield "operations.csv does not name every part, or names others"
        for name, drawing in self.parts.items():
            yield from (f"operations.csv, {name}: {fault}" for fault in self.rows_faults(drawing, self.expected[name][0], [row for row in told if row["part"] == name]))

    def rows_faults(self, drawing, thickness, rows):
        by = defaultdict(list)
        hidden = [row for row in rows if row["note"].startswith("from the back, not drawn")]
        behind = [hole for hole in self.plan["spine"]["screwHoles"] if hole["side"] == "back"] if rows and rows[0]["part"] == "spine" else []
        if [round(row["size"], 2) for row in sorted(hidden, key=lambda row: row["size"]) for _ in range(row["count"])] != sorted(round(hole["countersink"], 2) for hole in behind):
            yield f"{sum(row['count'] for row in hidden)} countersinks from the back, {len(behind)} planned"
        for row in rows:
            if row in hidden:
                continue
            by[row["operation"]].append(row)
        bridges = by.pop("bridge", [])
        counts = Counter({layer: count for layer, count in drawing.counts.items() if count})
        if self.tool == "router":
            # What a router's drawing marks are its bridges: a row each, at their places.
            if counts.pop("mark", 0) != len(bridges) or (self.cut["bridges"] and not bridges):
                yield f"{len(bridges)} bridges, not as many as drawn"
            outline = drawing.loops["outline"][0]
            for row in bridges:
                middles = [side.at(0.5) for box in drawing.loops["mark"] for side in box]
                if away(row["at"], outline) > 2 * ROUNDED or min(math.dist(row["at"], middle) for middle in middles) > 2 * ROUNDED:
                    yield f"no bridge at {row['at']}"
        elif bridges:
            yield "bridges for a laser"
        if set(by) != set(counts):
            yield f"rows for {sorted(by)}, shapes on {sorted(counts)}"
        for layer in set(by) & set(counts):
            # All of a part's letters are one step.
            if sum(row["count"] for row in by[layer]) != (1 if layer == "label" else counts[layer]):
                yield f"{[row['count'] for row in by[layer]]} on {layer}, {counts[layer]} drawn"
            sized = sorted(row["size"] for row in by[layer] for _ in range(row["count"]) if row["size"] is not None)
            drawn = sorted(diameter for _, _, diameter in drawing.circles[layer])
            if len(sized) != len(drawn) or any(abs(a - b) > ROUNDED for a, b in zip(sized, drawn)):
                yield f"diameters {sized} on {layer}, drawn {drawn}"
            deep = {"outline": thickness, "hole": thickness, "groove": self.cut.get("grooveDepth", math.nan)}.get(layer)
            if deep is not None and not all(abs(row["depth"] - deep) <= ROUNDED for row in by[layer]):
                yield f"depths {[row['depth'] for row in by[layer]]} on {layer}, should be {deep}"


def main(arguments):
    if len(arguments) != 1:
        print(__doc__)
        return 1
    root = Path(arguments[0])
    paths = sorted(root.rglob("plan.json"))
    failed = 0
    for path in paths:
        try:
            job = Job(path.parent)
            faults, said = list(job.faults()), f"{job.tool}, {len(job.parts)} parts"
        except (ezdxf.DXFError, OSError, KeyError, IndexError, ValueError) as problem:
            faults, said = [f"cannot be compared: {type(problem).__name__} {problem}"], ""
        failed += bool(faults)
        print(f"{'FAIL' if faults else 'ok  '} {path.parent.relative_to(root)}: {said}{''.join(f'{chr(10)}       {fault}' for fault in faults)}")
    if not paths:
        print(f"FAIL no plan.json below {root}")
        failed = 1
    print(f"drawings against their plans: {max(0, len(paths) - failed)} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
