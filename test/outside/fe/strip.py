"""A strip of sheet bent round a disc, as a deck for CalculiX: plane strain, contact, large turns, plasticity.

One layer of C3D8I elements across, held from moving sideways, is plane strain. The strip lies flat along x, its middle on y = 0; the
disc's centre is below it. The held leg is clamped at x = 0, the tangent line; the free leg is pushed down by a pressure on its outer
face at the hands, which turns with the face: a pull square to the leg.
"""

import math
from dataclasses import dataclass

LAYERS = 4
"""Elements through the thickness: eight points a section."""
STIFF = 10
"""How many times stiffer than the sheet what lies flat in a yoke is; it bends a little, and not for good. More takes ccx many more rounds."""
PATCH = 4.0
"""Length of leg the hands push on, mm."""


@dataclass
class Strip:
    thickness: float
    radius: float
    """Of the disc."""
    fine: float
    """Length of strip from the tangent line with fine elements, which may touch the disc."""
    hands: float
    """From the tangent line to the hands."""
    nose: float | None
    """From the tangent line to where a yoke holds the sheet flat."""
    wrap: float
    """How far round the disc reaches at least, radians."""


def stations(strip: Strip) -> list[float]:
    """Places along the strip where elements end: fine in the bend, then coarser and coarser; one at the nose, both ends of the patch."""
    step = 0.8 * strip.thickness
    stops = [strip.fine, strip.hands - PATCH / 2, strip.hands + PATCH / 2]
    if strip.nose is not None:
        stops.append(strip.nose)
    places = [0.0]
    for stop in sorted(set(stops)):
        room = stop - places[-1]
        size = step if stop <= strip.fine else 3 * step
        count = max(1, math.ceil(room / size))
        start = places[-1]
        places += [start + room * part / count for part in range(1, count + 1)]
    return places


def metal_lines(metal: dict) -> list[str]:
    """True stress against true plastic strain in simple tension, as the row of the table gives it."""
    lines = ["*ELASTIC", f"{metal['modulus']},{metal['poisson']}", "*PLASTIC"]
    hardening = metal["hardening"]
    if hardening is None:
        return lines + [f"{metal['yield']},0.", f"{metal['yield']},1."]
    strains = [0.0] + [1e-5 * (0.5 / 1e-5) ** (part / 90) for part in range(91)]
    for strain in strains:
        stress = hardening["strength"] * (hardening["initialStrain"] + strain) ** hardening["exponent"]
        lines.append(f"{stress:.6f},{strain:.9f}")
    return lines


def deck(strip: Strip, metal: dict, steps: list[tuple[float, float]]) -> tuple[str, list[int]]:
    """The deck, and the nodes of the strip's middle in order. Steps are (pull in N per mm at their end, largest increment)."""
    places = stations(strip)
    rows = LAYERS + 1
    node = lambda along, up, across: 1 + (along * rows + up) * 2 + across
    lines = ["*NODE, NSET=NSHEET"]
    for along, x in enumerate(places):
        for up in range(rows):
            y = strip.thickness * (up / LAYERS - 0.5)
            for across in (0, 1):
                lines.append(f"{node(along, up, across)},{x:.9f},{y:.9f},{float(across)}")
    kinds: dict[str, list[str]] = {"ESHEET": [], "EYOKE": []}
    inner, patch = [], []
    number = 0
    for along in range(len(places) - 1):
        middle = (places[along] + places[along + 1]) / 2
        for up in range(LAYERS):
            number += 1
            face = [node(along, up, 0), node(along + 1, up, 0), node(along + 1, up + 1, 0), node(along, up + 1, 0)]
            line = ",".join(str(n) for n in [number, *face, *(n + 1 for n in face)])
            kinds["EYOKE" if strip.nose is not None and middle > strip.nose else "ESHEET"].append(line)
            # Faces of a brick by its nodes: S3 is 1-2-6-5, the side below; S5 is 3-4-8-7, the side above.
            if up == 0 and middle < strip.fine:
                inner.append(f"{number},S3")
            if up == LAYERS - 1 and abs(middle - strip.hands) < PATCH / 2:
                patch.append(f"{number},P5")
    for name, elements in kinds.items():
        if elements:
            lines += [f"*ELEMENT, TYPE=C3D8I, ELSET={name}", *elements]
    disc, faces = disc_lines(strip, node(len(places), 0, 0) + 100, number + 100)
    lines += disc
    lines += ["*SURFACE, NAME=INNER, TYPE=ELEMENT", *inner, "*SURFACE, NAME=ROUND, TYPE=ELEMENT", *faces]
    lines += ["*MATERIAL, NAME=SHEET", *metal_lines(metal)]
    lines += ["*MATERIAL, NAME=YOKE", "*ELASTIC", f"{metal['modulus'] * STIFF},{metal['poisson']}"]
    lines += ["*MATERIAL, NAME=DISC", "*ELASTIC", "2e8,0.3"]
    lines += ["*SOLID SECTION, ELSET=ESHEET, MATERIAL=SHEET", "*SOLID SECTION, ELSET=EDISC, MATERIAL=DISC"]
    if kinds["EYOKE"]:
        lines.append("*SOLID SECTION, ELSET=EYOKE, MATERIAL=YOKE")
    lines += ["*SURFACE INTERACTION, NAME=TOUCH", "*SURFACE BEHAVIOR, PRESSURE-OVERCLOSURE=LINEAR", "1e3"]
    lines += ["*CONTACT PAIR, INTERACTION=TOUCH, TYPE=SURFACE TO SURFACE", "INNER,ROUND"]
    lines += ["*BOUNDARY", "NSHEET,3,3", "NDISC,1,3"]
    lines += [f"{node(0, up, across)},1,2" for up in range(rows) for across in (0, 1)]
    line = [node(along, LAYERS // 2, 0) for along in range(len(places))]
    lines += ["*NSET, NSET=LINE", *(str(n) for n in line)]
    for pull, most in steps:
        lines += ["*STEP, NLGEOM, INC=2000", "*STATIC", f"{most / 4:.6f},1.,1e-7,{most:.6f}", "*DLOAD"]
        lines += [f"{element},{pull / PATCH:.9f}" for element in patch]
        lines += ["*NODE PRINT, NSET=LINE, FREQUENCY=1", "U", "*END STEP"]
    return "\n".join(lines) + "\n", line


def disc_lines(strip: Strip, first_node: int, first_element: int) -> tuple[list[str], list[str]]:
    """A ring of stiff elements with its outside on the disc, fixed; and their outer faces. Chords leave the arc by less than 1 µm."""
    start, end = -math.radians(3), strip.wrap + math.radians(25)
    count = math.ceil(strip.radius * (end - start) / 0.4)
    centre = -(strip.radius + strip.thickness / 2)
    lines = ["*NODE, NSET=NDISC"]
    for part in range(count + 1):
        turn = start + (end - start) * part / count
        for out in (0, 1):
            reach = strip.radius - 2 * (1 - out)
            for across in (0, 1):
                number = first_node + (part * 2 + out) * 2 + across
                # A little wider than the strip, so that the sheet's edges lie on it.
                z = -0.5 if across == 0 else 1.5
                lines.append(f"{number},{reach * math.sin(turn):.9f},{centre + reach * math.cos(turn):.9f},{z}")
    lines.append("*ELEMENT, TYPE=C3D8, ELSET=EDISC")
    faces = []
    for part in range(count):
        a = first_node + part * 4
        face = [a, a + 4, a + 6, a + 2]
        lines.append(",".join(str(n) for n in [first_element + part, *face, *(n + 1 for n in face)]))
        faces.append(f"{first_element + part},S5")
    return lines, faces
