"""What every part of a form should measure, from its plan.json alone; for the readers beside this file."""

import json
import math


class PlannedParts:
    """Area and holes of every part, from the plan's numbers alone."""

    def __init__(self, folder):
        self.plan = json.loads((folder / "plan.json").read_text())
        self.cut = self.plan["cut"]
        self.laser = self.cut["with"] == "laser"
        self.moved = self.cut["kerf"] / 2 if self.laser else 0
        self.stacks = {stack["name"]: stack for stack in self.cut["boards"]} if self.laser else {}

    def origin(self, name, box):
        """Where a part's own origin lies in its drawing, from the (left, low, right, high) of its outline: holes are measured from it."""
        left, low, right, high = box
        board = name.partition("-")[0]
        _, _, radius = self.expected(name)
        if board == "spine":
            return left + self.moved + self.plan["spine"]["ears"], (low + high) / 2
        if radius:
            return left + radius + self.moved, high - radius - self.moved
        depth = next(one["depth"] for one in self.plan["backings"] if one["name"] == board)
        return right - self.moved - depth, (low + high) / 2

    def behind(self, name):
        """Area added behind the straight edge by tabs less the notches beside them."""
        tabs = self.stacks[name]["tabs"] if self.laser else []
        return sum(tab["width"] * self.cut["tabLength"] - 2 * self.cut["relief"] ** 2 for tab in tabs)

    def expected(self, name):
        """(area, round holes, radius of the round edge) of a part, as the plan has them; None where the plan does not say."""
        board, _, layer = name.partition("-")
        index = int(layer) - 1 if layer.isdigit() else 0
        spine = self.plan["spine"]
        if board == "spine":
            start, end = -spine["ears"], spine["length"] + spine["ears"]
            half = lambda s: (spine["widthFrom"] + (spine["widthTo"] - spine["widthFrom"]) * s / spine["length"]) / 2
            area = (half(start) + half(end)) * (end - start)
            notches = [slot for stack in self.stacks.values() for slot in stack["slots"] if slot["open"]]
            area -= sum(slot["width"] * abs((slot["high"] if slot["open"] == "from" else end) - (start if slot["open"] == "from" else slot["low"])) + 2 * self.cut["relief"] ** 2 for slot in notches)
            holes = [(hole["at"], 0, hole["diameter"]) for hole in spine["clampHoles"]] + [(hole["at"], hole["offset"], hole["diameter"]) for hole in spine["screwHoles"]]
            return area, holes, None
        station = next((one for one in self.plan["stations"] if one["name"] == board), None)
        dowels = self.stacks[board]["dowels"] if board in self.stacks else []
        if station:
            radius = self.stacks[board]["layers"][index]["radius"] if self.laser else station["radius"]
            area = math.pi * radius**2 / 2 + self.behind(board)
            if self.cut["with"] == "router":
                area += 2 * radius * self.cut["grooveDepth"]
            return area, [(hole["offset"], hole["depth"], hole["diameter"]) for hole in dowels], radius
        backing = next((one for one in self.plan["backings"] if one["name"] == board), None)
        if backing:
            return backing["width"] * backing["depth"] + self.behind(board), [(hole["depth"], hole["offset"], hole["diameter"]) for hole in dowels], None
        return None
