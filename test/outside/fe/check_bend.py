#!/usr/bin/env python3
"""Bends the sheet of a job round its form by finite elements (CalculiX) and compares what comes out with the plan.

    python3 test/outside/fe/check_bend.py [JOB…]        (default: every job beside this file)

The form's radius and the angle of the leg at the hands at which to let go are taken from the plan, as the maker takes them; the metal's
curve from the row of the table. The finished radius and the angle between the legs are then measured on the released strip. What the strip
cannot show is left out of the angle asked for: its held leg is clamped at the tangent line, so the held leg's tail is missing; a yoke is
taken as stiff, so what the yoke's own opening adds is missing. Needs ccx (Debian: calculix-ccx) and a built dist/. Ends with "N passed, N failed".
"""

import json
import math
import os
import re
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import numpy as np

sys.dont_write_bytecode = True
sys.path.insert(0, str(Path(__file__).parent))
from strip import PATCH, Strip, deck, stations

ROOT = Path(__file__).resolve().parents[3]
ANGLE_WITHIN = 1.5  # degrees
RADIUS_WITHIN = 0.03
TRIES = 4
MOST_SECONDS = 300  # of one run; one that does not lose its way takes under a minute, on a busy machine two
MEAN_OF_SPAN = 2 / 3  # of the yoke's opening, as the plan takes it (pull.md: T_g + 2/3 T_d)


class Run:
    """What a run of ccx printed: displacements of the strip's middle, an array for each increment."""

    def __init__(self, folder: Path, line: list[int]):
        self.data = folder / "strip.dat"
        self.line = line

    def increments(self) -> list[tuple[float, np.ndarray]]:
        if not self.data.exists():
            return []
        blocks = re.split(r"displacements \(vx,vy,vz\) for set LINE and time\s+", self.data.read_text())[1:]
        found = []
        for block in blocks:
            time_text, *rows = block.strip().split("\n")
            moved = {int(c[0]): (float(c[1]), float(c[2])) for c in (row.split() for row in rows) if len(c) == 4}
            if all(n in moved for n in self.line):
                found.append((float(time_text), np.array([moved[n] for n in self.line])))
        return found


def solve(strip: Strip, metal: dict, steps, stop=None) -> list[tuple[float, np.ndarray]]:
    """Runs ccx; the increments' (time, displacements). With `stop`, ends it as soon as stop(displacements) is true. The very same deck takes
    ccx another way from run to run once places of the strip begin to touch and part by turns, and now and then to no end: it is begun again."""
    for left in reversed(range(TRIES)):
        try:
            return solve_once(strip, metal, steps, stop)
        except RuntimeError as error:
            if left == 0:
                raise
            print(f"  begun again: {error}".splitlines()[0], flush=True)


def solve_once(strip: Strip, metal: dict, steps, stop=None) -> list[tuple[float, np.ndarray]]:
    text, line = deck(strip, metal, steps)
    with tempfile.TemporaryDirectory(prefix="fe-") as name:
        folder = Path(name)
        keep = os.environ.get("FE_KEEP")
        if keep:
            folder = Path(keep)
            folder.mkdir(parents=True, exist_ok=True)
            (folder / "strip.dat").unlink(missing_ok=True)
        (folder / "strip.inp").write_text(text)
        with (folder / "log").open("w") as log:
            process = subprocess.Popen(["ccx", "strip"], cwd=folder, stdout=log, stderr=log, env={**os.environ, "OMP_NUM_THREADS": "1"})
        run = Run(folder, line)
        try:
            began = time.monotonic()
            while process.poll() is None:
                time.sleep(0.5)
                if time.monotonic() - began > MOST_SECONDS:
                    raise RuntimeError(f"ccx came to no end in {MOST_SECONDS} s")
                if stop is not None:
                    done = run.increments()
                    if done and stop(done[-1][1]):
                        return done
        finally:
            process.kill()
            process.wait()
        done = run.increments()
        if stop is not None or process.returncode != 0 or not done or done[-1][0] < len(steps) - 1e-6:
            raise RuntimeError("ccx came to no end: " + "".join((folder / "log").read_text().splitlines(True)[-8:]))
        return done


def leg_turn(strip: Strip, places: np.ndarray, moved: np.ndarray) -> float:
    """Angle of the leg to the held leg, radians: of a straight line through the places the hands push on; behind the nose of a yoke."""
    middle = strip.hands if strip.nose is None else strip.nose + 2 * PATCH
    at = np.abs(places - middle) <= PATCH
    x, y = (places + moved[:, 0])[at], moved[at, 1]
    return math.atan2(y[0] - y[-1], x[-1] - x[0])


def take_off(strip: Strip, places: np.ndarray, moved: np.ndarray) -> float:
    """How far round the disc the strip leaves it, radians: where it lies nearest after the bend's beginning, by a parabola through three
    places. Between the two it stands some hundredths of a mm off, bent a little more than the disc; past the second it leaves for good."""
    x, y = places + moved[:, 0], moved[:, 1] + strip.radius + strip.thickness / 2
    off, turn = np.hypot(x, y), np.arctan2(x, y)
    far = np.flatnonzero(turn > strip.wrap / 2)
    nearest = far[np.argmin(off[far])]
    a, b, _ = np.polyfit(turn[nearest - 1 : nearest + 2], off[nearest - 1 : nearest + 2], 2)
    return -b / (2 * a)


def radius_of(strip: Strip, places: np.ndarray, moved: np.ndarray, wrapped: float) -> float:
    """Inside radius of the middle half of the arc: a circle fitted by least squares to the strip's middle."""
    at = (places > wrapped * 0.25) & (places < wrapped * 0.75)
    x, y = (places + moved[:, 0])[at], moved[at, 1]
    (a, b, c), *_ = np.linalg.lstsq(np.column_stack([x, y, np.ones_like(x)]), x**2 + y**2, rcond=None)
    return math.sqrt(c + a**2 / 4 + b**2 / 4) - strip.thickness / 2


def planned(job: Path) -> dict:
    said = subprocess.run(["node", "dist/main.js", "plan", str(job), "--json"], cwd=ROOT, capture_output=True, text=True, check=True)
    return json.loads(said.stdout)


def metal_of(plan: dict) -> dict:
    rows = json.loads((ROOT / "shared/sheet-metals.json").read_text())["rows"]
    return next(row for row in rows if row["id"] == plan["sheet"]["material"])


def yoke_turns(plan: dict, metal: dict) -> float:
    """Turn of the sheet inside the yoke's opening while it is pulled, radians: what stays of it, and what a moment that falls evenly along
    the grip from parting force times grip to nothing takes back."""
    yoke = plan["pull"]["yoke"]
    stiffness = metal["modulus"] / (1 - metal["poisson"] ** 2) * plan["sheet"]["thickness"] ** 3 / 12
    return math.radians(yoke["stays"]) + yoke["part"] * yoke["grip"] ** 2 / 2 / stiffness


def bend(job: Path) -> tuple[list[str], int]:
    """Bends and releases one job's strip; what to say, and how many checks failed of the two."""
    plan, began = planned(job), time.monotonic()
    metal = metal_of(plan)
    pull, sheet, end = plan["pull"], plan["sheet"], "from"
    thickness, radius = sheet["thickness"], plan["bend"]["form"][end]
    wrapped = math.radians(pull["takeOff"][end]) * (radius + thickness / 2)
    yoke = pull["yoke"]
    nose = wrapped + yoke["gap"] if yoke else None
    strip = Strip(
        thickness=thickness,
        radius=radius,
        fine=nose if nose is not None else wrapped + 25,
        hands=wrapped + pull["lever"],
        nose=nose,
        wrap=math.radians(pull["takeOff"][end]),
    )
    places = np.array(stations(strip))
    let_go = math.radians(pull["legAngle"][end]) - (MEAN_OF_SPAN * yoke_turns(plan, metal) if yoke else 0)
    wanted = plan["bend"]["angle"] - plan["hold"]["tail"][end] - (MEAN_OF_SPAN * yoke["stays"] if yoke else 0)
    # Twice: first to find the pull at which the leg has turned so far, then to that pull and back to nothing.
    force = pull["handForce"] / plan["bend"]["length"]
    turn = lambda moved: leg_turn(strip, places, moved)
    steps = [(0.5 * force, 0.25), (1.5 * force, 0.02)]
    pulled = solve(strip, metal, steps, stop=lambda moved: turn(moved) >= let_go)
    turns = [turn(moved) for _, moved in pulled]
    forces = [0.5 * force * t if t <= 1 else (0.5 + (t - 1)) * force for t, _ in pulled]
    found = float(np.interp(let_go, turns[-2:], forces[-2:]))
    done = solve(strip, metal, [(0.5 * force, 0.25), (found, 0.04), (0.0, 0.5)])
    loaded = next(moved for t, moved in done if abs(t - 2) < 1e-6)
    released = done[-1][1]
    angle = math.degrees(turn(released))
    kept = radius_of(strip, places, released, wrapped)
    asked = plan["bend"]["finished"][end]
    fails = (abs(angle - wanted) > ANGLE_WITHIN) + (abs(kept / asked - 1) > RADIUS_WITHIN)
    return [
        f"{job.name}: {len(places) - 1} × 4 elements, {time.monotonic() - began:.0f} s",
        f"  let go at {math.degrees(turn(loaded)):.2f}° of the leg (gauge {math.degrees(let_go):.2f}°), "
        f"pull {found:.3f} N/mm (plan {force:.3f}), take-off {math.degrees(take_off(strip, places, loaded)):.1f}° (plan {pull['takeOff'][end]:.1f}°)",
        f"  angle {angle:.2f}° (plan {wanted:.2f}°), radius {kept:.2f} mm (plan {asked:.2f}, {100 * (kept / asked - 1):+.1f} %)",
    ], fails


def main() -> None:
    jobs = [Path(name).resolve() for name in sys.argv[1:]] or sorted(Path(__file__).parent.glob("*.yaml"))
    failed = 0
    for job in jobs:
        said, fails = bend(job)
        failed += fails
        print("\n".join(said), flush=True)
    print(f"{2 * len(jobs) - failed} passed, {failed} failed")
    sys.exit(1 if failed else 0)


if __name__ == "__main__":
    main()
