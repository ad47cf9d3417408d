#!/usr/bin/python3
"""Opens every .dxf below a folder with ezdxf, as a stranger's program would, and reports what it finds wrong.

Run with the distribution's own Python, which is where Debian's python3-ezdxf is installed:

    /usr/bin/python3 test/outside/audit_dxf.py FOLDER

A file passes when
  - ezdxf reads it strictly, and its audit has 0 errors and 0 fixes;
  - ezdxf's recover mode reads it too, with 0 errors and 0 fixes, and finds the same entities;
  - it says millimetres, and every entity lies on a layer that the file declares;
  - there are only closed polylines, circles, lines on the layer mark, and text, and at least one closed polyline;
  - or, where it is a part or board for a router or a laser, by the plan.json beside it: closed polylines and circles, letters as single
    strokes (open polylines on the layer label), and no text; lines on the layer mark for a laser only;
  - no two cut lines are drawn twice.
Prints a line a file, then "N passed, N failed". Exit code 1 where a file failed or none was found.
"""

import json
import sys
from collections import Counter
from pathlib import Path

import ezdxf
from ezdxf import recover

MILLIMETRES = 4
KINDS = {"POLYLINE", "CIRCLE", "LINE", "TEXT"}


def shape_key(entity):
    """Tells whether two shapes would be cut along the same line."""
    kind = entity.dxftype()
    if kind == "CIRCLE":
        return kind, round(entity.dxf.center.x, 5), round(entity.dxf.center.y, 5), round(entity.dxf.radius, 5)
    if kind == "LINE":
        ends = [(round(p.x, 5), round(p.y, 5)) for p in (entity.dxf.start, entity.dxf.end)]
        return kind, *sorted(ends)
    corners = sorted((round(v.dxf.location.x, 5), round(v.dxf.location.y, 5)) for v in entity.vertices)
    return kind, *corners, *sorted(round(abs(v.dxf.bulge), 5) for v in entity.vertices)


def tool_for(path):
    """What cuts by this drawing: a router or a laser where it is a part or board of such a job, else a hand tool."""
    if path.parent.name not in ("parts", "boards"):
        return "hand"
    # A panel's boards hold the pieces of all its forms, which one tool cuts.
    folder = path.parent.parent
    plans = [folder / "plan.json"] if not (folder / "forms").is_dir() else sorted(folder.glob("forms/*/plan.json"))
    (tool,) = {json.loads(plan.read_text())["cut"]["with"] for plan in plans}
    return tool


def kind_faults(entities, tool):
    """Which kinds of shapes are on a layer where they do not belong."""
    strokes = tool in ("router", "laser")
    for entity in entities:
        kind, layer = entity.dxftype(), entity.dxf.layer
        if kind not in KINDS or (kind == "TEXT" and strokes):
            yield f"unexpected {kind} on {layer}"
        if kind == "POLYLINE" and not entity.is_closed and not (strokes and layer == "label"):
            yield f"an open polyline on {layer}"
        if kind == "LINE" and (layer != "mark" or tool == "router"):
            yield f"a loose line on {layer}"


def faults_of(path):
    drawing = ezdxf.readfile(path)
    audit = drawing.audit()
    recovered, recovery = recover.readfile(path)
    for name, auditor in (("audit", audit), ("recover", recovery)):
        yield from (f"{name} error: {problem.message}" for problem in auditor.errors)
        yield from (f"{name} fix: {problem.message}" for problem in auditor.fixes)

    entities = list(drawing.modelspace())
    kinds = Counter(entity.dxftype() for entity in entities)
    if kinds != Counter(entity.dxftype() for entity in recovered.modelspace()):
        yield "recover mode finds other entities"
    if drawing.header.get("$INSUNITS") != MILLIMETRES or drawing.header.get("$MEASUREMENT") != 1:
        yield "does not say millimetres"
    yield from (f"undeclared layer {name}" for name in sorted({e.dxf.layer for e in entities} - {layer.dxf.name for layer in drawing.layers}))
    yield from sorted(set(kind_faults(entities, tool_for(path))))

    if not any(entity.dxftype() == "POLYLINE" and entity.is_closed for entity in entities):
        yield "nothing to cut"
    # Letters may go over a stroke again.
    twice = Counter(shape_key(entity) for entity in entities if entity.dxftype() != "TEXT" and entity.dxf.layer != "label")
    yield from (f"drawn {count} times: {key}" for key, count in twice.items() if count > 1)


def main(arguments):
    if len(arguments) != 1:
        print(__doc__)
        return 1
    folder = Path(arguments[0])
    failed = 0
    paths = sorted(folder.rglob("*.dxf"))
    for path in paths:
        try:
            faults = list(faults_of(path))
        except (ezdxf.DXFError, OSError, KeyError, ValueError) as problem:
            faults = [f"cannot be read: {problem}"]
        failed += bool(faults)
        print(f"{'FAIL' if faults else 'ok  '} {path.relative_to(folder)}{''.join(f'{chr(10)}       {fault}' for fault in faults)}")
    if not paths:
        print(f"FAIL no .dxf file below {folder}")
        failed = 1
    print(f"ezdxf {ezdxf.__version__}: {max(0, len(paths) - failed)} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
