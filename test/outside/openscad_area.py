#!/usr/bin/python3
"""Has OpenSCAD take in the outline of every part drawn as lines and arcs, extrude it, and compares its area with plan.json.

    /usr/bin/python3 test/outside/openscad_area.py FOLDER …

OpenSCAD reads LINE, ARC and CIRCLE by layer and joins ends that meet; it says of what it cannot read "Unsupported DXF Entity". A
file passes when it says nothing of the kind, and the 1 mm thick solid it exports has the volume that the plan's numbers give, to
two parts in 100 000 (it makes an arc of chords), the beam's half outside a laser's edge taken off by OpenSCAD's own offset.
Parts the plan gives no size of (fit tests, blocks) must come out with some volume, and so must every other drawing's outline.
Prints a line for each file that fails and a count for each folder, then "N passed, N failed".
"""

import re
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

sys.dont_write_bytecode = True
from planned_parts import PlannedParts

FACETS = 720


def volume(stl):
    """Signed volume of an ASCII STL: a sixth of the triple products about its first corner."""
    numbers = [tuple(map(float, line.split()[1:])) for line in stl.splitlines() if line.strip().startswith("vertex")]
    if not numbers:
        return 0.0
    ox, oy, oz = numbers[0]
    moved = [(x - ox, y - oy, z - oz) for x, y, z in numbers]
    return sum(
        (a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0])) / 6
        for a, b, c in zip(moved[::3], moved[1::3], moved[2::3]))


def extrude(path, inward, scratch):
    source, target = scratch / f"{abs(hash(str(path)))}.scad", scratch / f"{abs(hash(str(path)))}.stl"
    # OpenSCAD takes every number for mm: the file says in group 70 of $INSUNITS what they are.
    size = {4: 1, 1: 25.4}[int(re.search(rb"\$INSUNITS\r\n70\r\n(\d+)", path.read_bytes())[1])]
    drawing = f'scale([{size}, {size}, 1]) import("{path.resolve()}", layer="outline");'
    shape = f"offset(delta=-{inward!r}) {drawing}" if inward else drawing
    source.write_text(f"$fn={FACETS}; linear_extrude(height=1) {shape}\n")
    done = subprocess.run(["openscad", "-o", str(target), str(source)], capture_output=True, text=True, timeout=120)
    said = [line for line in done.stderr.splitlines() if re.search(r"WARNING|ERROR|Unsupported|Current top level object is empty", line) and "in layer 'label'" not in line]
    return (volume(target.read_text()) if target.exists() else 0.0), said


def faults_of(path, plan, scratch):
    is_part = path.parent.name == "parts"
    found, said = extrude(path, plan.moved if is_part else 0, scratch)
    yield from sorted(set(said))[:3]
    expected = plan.expected(path.stem) if is_part else None
    if expected:
        area = expected[0]
        if abs(found - area) > 2e-5 * area + 0.05:
            yield f"area {found:.3f} mm2, planned {area:.3f}"
    elif not found > 1:
        yield f"area {found:.3f} mm2"


def main(folders):
    passed = failed = 0
    with tempfile.TemporaryDirectory() as scratch, ThreadPoolExecutor(2) as pool:
        for root in map(Path, folders):
            for plan_path in sorted(root.rglob("plan.json")):
                plan, paths = PlannedParts(plan_path.parent), sorted(plan_path.parent.rglob("*.dxf"))
                judged = pool.map(lambda path: list(faults_of(path, plan, Path(scratch))), paths)
                count = 0
                for path, faults in zip(paths, judged):
                    count += not faults
                    failed += bool(faults)
                    if faults:
                        print(f"FAIL {path.relative_to(root)}{''.join(f'{chr(10)}       {fault}' for fault in faults)}")
                passed += count
                print(f"{count} outlines extruded as planned: {plan_path.parent.relative_to(root)}")
    if passed + failed == 0:
        failed = 1
        print("FAIL no plan.json in the folders")
    print(f"OpenSCAD: {passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
