"""What FreeCAD makes of every DXF in the folders given, against each job's plan.json. Run by FreeCAD's own interpreter:

    FOLDERS='FOLDER …' REPORT=FILE freecadcmd test/outside/freecad_dxf.py

FreeCAD 0.20's DXF importer, headless, one process for all files, each layer as one compound. A file passes when
  - every layer the file declares shapes on (counted here from the file's own text) arrives, and as many texts as it holds;
  - the outlines, holes and grooves arrive as closed wires, of which faces can be made, as many as the file says;
  - a part's outline has the area, and the round edge the radius, that plan.json gives: a spine as a trapezium less its notches, a
    station as half a circle and what stands behind it, a backing station as a rectangle and its tabs; moved by half a laser's beam;
  - the spine's and the stations' round holes are where plan.json has them, measured from the outline, and as wide;
  - the overall dimension written on a part is its greatest extent.
Inches are told from $INSUNITS in the file: FreeCAD scales by it, so all is compared in mm.
Writes to REPORT, since FreeCAD prints its own progress, a line for each file that fails and a count for each folder, then
"N passed, N failed".
"""

import os
import re
import sys
from collections import Counter
from pathlib import Path

import FreeCAD
import Import
import Part

sys.dont_write_bytecode = True
sys.path.insert(0, str(Path(__file__).parent))
from planned_parts import PlannedParts

NEAR = 1e-3
preferences = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Mod/Draft")
preferences.SetBool("groupLayers", True)
preferences.SetBool("dxftext", True)


def pairs_of(path):
    lines = path.read_bytes().decode("ascii").split("\r\n")[:-1]
    return list(zip(map(int, lines[::2]), lines[1::2]))


class Told:
    """What the file's own text says, by the format's rule of pairs."""

    def __init__(self, path):
        self.kinds, self.layers, self.closed, self.texts = Counter(), set(), Counter(), []
        begun, kind, layer = False, None, None
        for code, value in pairs_of(path):
            begun = begun or (code == 2 and value == "ENTITIES")
            if not begun:
                continue
            if code == 0:
                kind = value
                self.kinds[kind] += 1
            elif code == 8 and kind not in ("VERTEX", "SEQEND"):
                layer = value
                if kind != "TEXT":
                    self.layers.add(layer)
                if kind == "CIRCLE":
                    self.closed[layer] += 1
            elif code == 70 and kind == "POLYLINE" and value == "1":
                self.closed[layer] += 1
            elif code == 1 and kind == "TEXT":
                self.texts.append(value)


class Drawn:
    """What FreeCAD holds after the import."""

    def __init__(self, path):
        document = FreeCAD.newDocument("drawing")
        try:
            Import.readDXF(str(path), document.Name)
            self.written = [line for thing in document.Objects if thing.TypeId == "App::Annotation" for line in thing.LabelText]
            self.layers = {thing.Label: thing.Shape.copy() for thing in document.Objects if hasattr(thing, "Shape")}
        finally:
            FreeCAD.closeDocument(document.Name)

    def wires(self, layer):
        edges = self.layers[layer].Edges if layer in self.layers else []
        return [Part.Wire(chain) for chain in Part.sortEdges(edges)]

    def circles(self, layer):
        found = [wire.Edges[0].Curve for wire in self.wires(layer) if len(wire.Edges) == 1]
        return [(one.Center.x, one.Center.y, 2 * one.Radius) for one in found if isinstance(one, Part.Circle)]


def same(what, wanted, found):
    left = list(found)
    for want in wanted:
        near = [have for have in left if all(abs(a - b) <= NEAR for a, b in zip(want, have))]
        if near:
            left.remove(near[0])
        else:
            yield f"no {what} at {[round(number, 3) for number in want]}"
    yield from (f"{what} at {[round(number, 3) for number in extra]}, not in the plan" for extra in left)


def faults_of(path, plan):
    told, drawn = Told(path), Drawn(path)
    if told.layers != set(drawn.layers):
        yield f"layers {sorted(drawn.layers)}, told {sorted(told.layers)}"
    # FreeCAD 0.20 does not decode \\U+XXXX: such a text is only counted.
    plain = lambda texts: sorted(text for text in texts if "+" not in text)
    if len(drawn.written) != len(told.texts) or plain(drawn.written) != plain(told.texts):
        yield f"{len(drawn.written)} texts, told {len(told.texts)}: {sorted(set(told.texts) ^ set(drawn.written))}"
    for layer in ("outline", "hole", "countersink", "pilot", "groove", "board"):
        wires = drawn.wires(layer)
        loose = [wire for wire in wires if not wire.isClosed()]
        if loose:
            yield f"{len(loose)} of {len(wires)} wires on {layer} are open"
        elif told.kinds["POLYLINE"] and len(wires) != told.closed[layer]:
            yield f"{len(wires)} closed wires on {layer}, told {told.closed[layer]}"
        if any(not wire.isClosed() or Part.Face(wire).Area <= 0 for wire in wires):
            yield f"no face of a wire on {layer}"
    if not drawn.wires("outline"):
        yield "no outline"
    elif path.parent.name == "parts":
        yield from part_faults(path.stem, drawn, plan)


def inward(face, by):
    """FreeCAD's offset of a face; at some corners one way of joining sides fails it and another does not."""
    for join in (2, 0, 1):
        try:
            return face.makeOffset2D(-by, join=join)
        except Exception as problem:
            last = problem
    raise last


def part_faults(name, drawn, plan):
    outlines = drawn.wires("outline")
    if len(outlines) != 1:
        yield f"{len(outlines)} outlines"
        return
    outline = outlines[0]
    box = outline.BoundBox
    for words in drawn.written:
        said = re.fullmatch(r"OVERALL ([\d.]+) (mm|in)", words)
        if said and abs(float(said[1]) * (25.4 if said[2] == "in" else 1) - max(box.XLength, box.YLength) + 2 * plan.moved) > (0.0127 if said[2] == "in" else 0.005) + NEAR:
            yield f"{words}, but {box.XLength:.3f} x {box.YLength:.3f} mm"
    expected = plan.expected(name)
    if not expected:
        return
    area, holes, radius = expected
    face = Part.Face(outline)
    # The beam's half outside the edge: the offset back is FreeCAD's own.
    if plan.moved:
        face = inward(face, plan.moved)
    # A bit's rounded-out corners are in the open at the ends of a station's edge and inside a backing station nowhere: areas are as planned.
    if abs(face.Area - area) > 1e-5 * area + 0.01:
        yield f"area {face.Area:.3f} mm2, planned {area:.3f}"
    if box.XMin < -NEAR or box.YMin < -NEAR:
        yield f"begins at {box.XMin:.4f}, {box.YMin:.4f}"
    across, up = plan.origin(name, (box.XMin, box.YMin, box.XMax, box.YMax))
    yield from same("hole", [(x + across, y + up, diameter - 2 * plan.moved) for x, y, diameter in holes], drawn.circles("hole"))
    if radius:
        rounds = [edge.Curve.Radius for edge in outline.Edges if isinstance(edge.Curve, Part.Circle) and edge.Curve.Radius > 5]
        if len(rounds) < 1 or any(abs(one - radius - plan.moved) > NEAR for one in rounds):
            yield f"round edges {rounds}, planned {radius + plan.moved:.4f}"


def main(folders, say):
    passed = failed = 0
    for root in folders:
        for plan_path in sorted(Path(root).rglob("plan.json")):
            plan, count = PlannedParts(plan_path.parent), 0
            for path in sorted(plan_path.parent.rglob("*.dxf")):
                try:
                    faults = list(faults_of(path, plan))
                except Exception as problem:  # FreeCAD's own errors share no base with Python's.
                    faults = [f"{type(problem).__name__}: {problem}"]
                count += not faults
                failed += bool(faults)
                if faults:
                    say(f"FAIL {path.relative_to(root)}{''.join(f'{chr(10)}       {fault}' for fault in faults)}")
            passed += count
            say(f"{count} files read as planned: {plan_path.parent.relative_to(root)}")
    if passed + failed == 0:
        failed = 1
        say("FAIL no plan.json in the folders")
    say(f"FreeCAD {'.'.join(FreeCAD.Version()[:2])}, DXF: {passed} passed, {failed} failed")


with open(os.environ["REPORT"], "w", encoding="utf-8") as report:
    main(os.environ.get("FOLDERS", "").split(), lambda line: report.write(f"{line}\n"))
# Its own winding up can crash long after all is said.
os._exit(0)
