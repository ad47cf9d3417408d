"""A router's toolpath by FreeCAD's Path, and the 3-D files by its Mesh, each against plan.json. Run by FreeCAD's own interpreter:

    FOLDERS='FOLDER …' REPORT=FILE freecadcmd test/outside/freecad_work.py

For each job's folder:
  - solids/form holds as many STL files as there are boards, each one closed solid, `isSolid`, all together of the volume that
    plan.json's numbers give; solids/bend.stl is one solid of the volume of legs and bend (the chords of arcs leave out less than 1 in 5000);
  - for the first router's job, once: FreeCAD's 2-D area offset sets the bit outside every part's outline and inside its clamp holes;
    what a bit of that size leaves along that path, by the opposite offset, lies within 0.02 mm of what is drawn, all round, and
    measures what plan.json says within 0.02 mm.
Writes to REPORT a line for each check, then "N passed, N failed".
"""

import math
import os
import sys
from pathlib import Path as File

import FreeCAD
import Import
import Mesh
import Part
import Path

sys.dont_write_bytecode = True
sys.path.insert(0, str(File(__file__).parent))
from planned_parts import PlannedParts

LEFT = 0.02
CHORDS = 2e-4
FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Mod/Draft").SetBool("groupLayers", True)


def form_volume(plan):
    """Volume and number of the form's boards, from the plan's numbers; a tapered spine's grooves as trapeziums."""
    job, cut = plan.plan, plan.cut
    layers = cut["layers"] if plan.laser else {"spine": 1, "stations": 1, "backing": 1}
    round_area = lambda diameter: math.pi * diameter**2 / 4
    volume, count = 0, 0
    for kind, boards in (("spine", [job["spine"] | {"name": "spine"}]), ("stations", job["stations"]), ("backing", job["backings"])):
        for board in boards:
            for layer in range(layers[kind]):
                area, holes, _ = plan.expected(f"{board['name']}-{layer + 1}" if layers[kind] > 1 else board["name"])
                slots = [slot for stack in plan.stacks.values() for slot in stack["slots"] if not slot["open"]] if kind == "spine" else []
                area -= sum(round_area(diameter) for _, _, diameter in holes) + sum((slot["high"] - slot["low"]) * slot["width"] for slot in slots)
                volume += area * board["thickness"] / layers[kind]
                count += 1
    spine = job["spine"]
    half = lambda s: (spine["widthFrom"] + (spine["widthTo"] - spine["widthFrom"]) * s / spine["length"]) / 2
    for groove in cut.get("grooves", []):
        low, high = max(groove["low"], -spine["ears"]), min(groove["high"], spine["length"] + spine["ears"])
        screws = [hole for hole in spine["screwHoles"] if hole["holds"] == groove["holds"]]
        volume -= ((half(low) + half(high)) * (high - low) - sum(round_area(hole["diameter"]) for hole in screws)) * cut["grooveDepth"]
    return volume, count


def bend_volume(job):
    """The legs, and the shell between two parallel cones: its face at height h is wound about a radius R + h cos(beta)."""
    bend, blank, thick = job["bend"], job["blank"], job["sheet"]["thickness"]
    slant = math.cos(math.radians(bend["coneHalfAngle"]["finished"]))
    wrap = math.acos(1 - (1 - math.cos(math.radians(bend["angle"]))) / slant**2)
    held = -blank["outline"][0][1]
    (ax, ay), (bx, by) = blank["tangents"][1]
    # The free leg's edge, or the line it is trimmed to, runs along the free tangent line.
    edge = blank["trims"][0][0] if blank["trims"] else max(blank["outline"], key=lambda corner: abs((corner[0] - ax) * (by - ay) - (corner[1] - ay) * (bx - ax)) * (corner[1] > ay))
    free = abs((edge[0] - ax) * (by - ay) - (edge[1] - ay) * (bx - ax)) / math.dist((ax, ay), (bx, by))
    middle = (bend["finished"]["from"] + bend["finished"]["to"]) / 2 + thick * slant / 2
    return bend["length"] * thick * (held + free + wrap * middle)


def solid_checks(folder, plan):
    boards = [Mesh.Mesh(str(path)) for path in sorted((folder / "solids" / "form").glob("*.stl"))]
    volume, count = form_volume(plan)
    yield f"{len(boards)} boards, {count} planned", len(boards) == count
    yield "every board is a solid", all(board.isSolid() and not board.hasNonManifolds() and board.countComponents() == 1 for board in boards)
    found = sum(board.Volume for board in boards)
    yield f"form of {found:.0f} mm3, planned {volume:.0f}", abs(found / volume - 1) < CHORDS
    bend = Mesh.Mesh(str(folder / "solids" / "bend.stl"))
    yield "the finished bend is one solid", bend.isSolid() and not bend.hasNonManifolds() and bend.countComponents() == 1
    planned = bend_volume(plan.plan)
    yield f"bend of {bend.Volume:.1f} mm3, planned {planned:.1f}", abs(bend.Volume / planned - 1) < CHORDS


def wire_of(shapes, layer, index=0):
    return Part.Wire(Part.sortEdges(shapes[layer].Edges)[index])


def offset(wire, by):
    area = Path.Area()
    area.add(Part.Face(wire))
    area.setParams(Offset=by, Accuracy=0.001, Unit=1.0)
    return Part.Wire(Part.sortEdges(area.getShape().Edges)[0])


def apart(wire, other):
    return max(other.distToShape(Part.Vertex(point))[0] for point in wire.discretize(Distance=1.0))


def toolpath_checks(folder, plan):
    bit = plan.cut["bit"] / 2
    for path in sorted((folder / "parts").glob("*.dxf")):
        expected = plan.expected(path.stem)
        if not expected:
            continue
        document = FreeCAD.newDocument("part")
        Import.readDXF(str(path), document.Name)
        shapes = {thing.Label: thing.Shape.copy() for thing in document.Objects if hasattr(thing, "Shape")}
        FreeCAD.closeDocument(document.Name)
        outline = wire_of(shapes, "outline")
        left = offset(offset(outline, bit), -bit)
        stray = max(apart(left, outline), apart(outline, left))
        yield f"{path.stem}: the part left by the bit strays {stray:.4f} mm from its outline", stray <= LEFT
        # Its mean distance from the planned edge, by areas.
        off = abs(Part.Face(left).Area - expected[0]) / outline.Length
        yield f"{path.stem}: {off:.4f} mm off the plan in the mean", off <= LEFT
        clamps = [hole for hole in expected[1] if hole[2] > 2 * bit] if path.stem == "spine" else []
        drawn = [Part.Wire(edge) for edge in shapes["hole"].Edges if isinstance(edge.Curve, Part.Circle) and edge.Curve.Radius > bit] if clamps else []
        yield f"{path.stem}: {len(drawn)} holes wider than the bit, {len(clamps)} planned", len(drawn) == len(clamps)
        for wire in drawn:
            cut = offset(offset(wire, -bit), bit)
            box, circle = cut.BoundBox, wire.Edges[0].Curve
            planned = min(clamps, key=lambda hole: abs(hole[0] - circle.Center.x) + abs(hole[1] - circle.Center.y))
            wide = max(abs(box.XLength - planned[2]), abs(box.YLength - planned[2]))
            yield f"{path.stem}: a hole left {wide:.4f} mm off its diameter", wide <= LEFT


def main(folders, say):
    counts = {True: 0, False: 0}
    toolpath = True
    for root in folders:
        for plan_path in sorted(File(root).rglob("plan.json")):
            folder, plan = plan_path.parent, PlannedParts(plan_path.parent)
            checks = [solid_checks]
            if plan.cut["with"] == "router" and toolpath:
                checks, toolpath = [solid_checks, toolpath_checks], False
            for check in checks:
                try:
                    judged = list(check(folder, plan))
                except Exception as problem:  # FreeCAD's own errors share no base with Python's.
                    judged = [(f"{type(problem).__name__}: {problem}", False)]
                for words, good in judged:
                    counts[good] += 1
                    if not good or check is toolpath_checks:
                        say(f"{'ok  ' if good else 'FAIL'} {folder.relative_to(root)}: {words}")
    if sum(counts.values()) == 0:
        counts[False] = 1
        say("FAIL no plan.json in the folders")
    say(f"FreeCAD {'.'.join(FreeCAD.Version()[:2])}, toolpath and solids: {counts[True]} passed, {counts[False]} failed")


with open(os.environ["REPORT"], "w", encoding="utf-8") as report:
    main(os.environ.get("FOLDERS", "").split(), lambda line: report.write(f"{line}\n"))
# Its own winding up can crash long after all is said.
os._exit(0)
