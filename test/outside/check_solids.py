#!/usr/bin/python3
"""The 3-D files by admesh, by OpenSCAD and by the 3MF specification's own rules, each job's against its plan.json.

    /usr/bin/python3 test/outside/check_solids.py FOLDER

A job passes when
  - admesh finds nothing to mend in any STL: no open edge, no facet turned, removed or added, one part, a positive volume;
  - each 3MF is a zip with the three parts it must have, in mm; every object's every edge is run along once each way, its triangles
    name corners that are there, and its volume is admesh's for the STL of its name, to a millionth;
  - the objects are the plan's boards, of three colours, or the bend.
OpenSCAD reads every bend.3mf, and exports a solid of the same volume.
Prints a line a job, then "N passed, N failed". Exit code 1 where one failed or none was found.
"""

import json
import re
import subprocess
import sys
import tempfile
import zipfile
from collections import Counter
from pathlib import Path
from xml.etree import ElementTree

sys.dont_write_bytecode = True
from openscad_area import volume

CORE = "{http://schemas.microsoft.com/3dmanufacturing/core/2015/02}"
WRONG = ("Total disconnected facets", "Degenerate facets", "Edges fixed", "Facets removed", "Facets added", "Facets reversed", "Backwards edges", "Normals fixed")


def admesh(path):
    """Volume of an STL that has nothing wrong with it, and what is wrong with it."""
    said = subprocess.run(["admesh", str(path)], capture_output=True, text=True, timeout=60).stdout
    number = lambda words: float(re.search(rf"{re.escape(words)} *: *(-?[\d.]+)", said)[1])
    faults = [f"{path.stem}: {words} {number(words):.0f}" for words in WRONG if number(words) != 0]
    if number("Number of parts") != 1:
        faults.append(f"{path.stem}: {number('Number of parts'):.0f} parts")
    return number("Volume"), faults


def objects_of(path):
    """(name, colour, volume, faults) of each object of a 3MF."""
    with zipfile.ZipFile(path) as package:
        if package.testzip() or not {"[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model"} <= set(package.namelist()):
            raise ValueError("not a whole package")
        model = ElementTree.fromstring(package.read("3D/3dmodel.model"))
    if model.get("unit") != "millimeter":
        raise ValueError(f"unit {model.get('unit')}")
    colours = [base.get("displaycolor") for base in model.iter(f"{CORE}base")]
    built = {item.get("objectid") for item in model.iter(f"{CORE}item")}
    for thing in model.iter(f"{CORE}object"):
        corners = [tuple(float(vertex.get(axis)) for axis in "xyz") for vertex in thing.iter(f"{CORE}vertex")]
        faces = [tuple(int(face.get(corner)) for corner in ("v1", "v2", "v3")) for face in thing.iter(f"{CORE}triangle")]
        sides = Counter((face[turn], face[(turn + 1) % 3]) for face in faces for turn in range(3))
        faults = [] if all(count == 1 and sides[side[::-1]] == 1 for side, count in sides.items()) else ["not closed"]
        if thing.get("id") not in built:
            faults.append("not built")
        ox, oy, oz = corners[0]
        size = 0
        for face in faces:
            (ax, ay, az), (bx, by, bz), (cx, cy, cz) = [(x - ox, y - oy, z - oz) for x, y, z in (corners[index] for index in face)]
            size += (ax * (by * cz - bz * cy) - ay * (bx * cz - bz * cx) + az * (bx * cy - by * cx)) / 6
        yield thing.get("name"), colours[int(thing.get("pindex"))], size, faults


def boards_of(plan):
    cut = plan["cut"]
    layers = cut["layers"] if cut["with"] == "laser" else {"spine": 1, "stations": 1, "backing": 1}
    for kind, names in (("spine", ["spine"]), ("stations", [one["name"] for one in plan["stations"]]), ("backing", [one["name"] for one in plan["backings"]])):
        for name in names:
            yield from [name] if layers[kind] == 1 else [f"{name}-{layer + 1}" for layer in range(layers[kind])]


def by_openscad(path):
    with tempfile.TemporaryDirectory() as scratch:
        source, target = Path(scratch) / "bend.scad", Path(scratch) / "bend.stl"
        source.write_text(f'import("{path.resolve()}");\n')
        subprocess.run(["openscad", "-o", str(target), str(source)], capture_output=True, timeout=120)
        return volume(target.read_text()) if target.exists() else 0


def faults_of(folder):
    solids = folder / "solids"
    plan = json.loads((folder / "plan.json").read_text())
    wanted = set(boards_of(plan))
    if {path.stem for path in (solids / "form").glob("*.stl")} != wanted:
        yield "solids/form holds other boards than the plan"
    for package, names, colours, place in (("form.3mf", wanted, 3, solids / "form"), ("bend.3mf", {"bend"}, 1, solids)):
        objects = list(objects_of(solids / package))
        if {name for name, *_ in objects} != names or len(objects) != len(names):
            yield f"{package} holds {sorted(name for name, *_ in objects)}"
        if len({colour for _, colour, *_ in objects}) != min(colours, len(names)):
            yield f"{package} has colours {({colour for _, colour, *_ in objects})}"
        for name, _, size, faults in objects:
            yield from (f"{package}, {name}: {fault}" for fault in faults)
            found, wrong = admesh(place / f"{name}.stl")
            yield from wrong
            if not found > 0 or abs(size / found - 1) > 1e-5:
                yield f"{name}: {size:.3f} mm3 in the 3MF, {found:.3f} by admesh"
            if name == "bend" and abs(by_openscad(solids / package) / size - 1) > 1e-4:
                yield "OpenSCAD finds another volume in bend.3mf"


def main(arguments):
    if len(arguments) != 1:
        print(__doc__)
        return 1
    root, failed = Path(arguments[0]), 0
    paths = sorted(root.rglob("plan.json"))
    for path in paths:
        try:
            faults = list(faults_of(path.parent))
        except (OSError, KeyError, ValueError, TypeError, zipfile.BadZipFile, ElementTree.ParseError) as problem:
            faults = [f"cannot be read: {type(problem).__name__} {problem}"]
        failed += bool(faults)
        print(f"{'FAIL' if faults else 'ok  '} {path.parent.relative_to(root)}{''.join(f'{chr(10)}       {fault}' for fault in faults)}")
    if not paths:
        failed = 1
        print(f"FAIL no plan.json below {root}")
    print(f"solids by admesh, OpenSCAD and the 3MF rules: {max(0, len(paths) - failed)} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
