"""Casing that leans on a wall standing proud: seen square on it is narrower, and its cuts are compound."""

import math
from typing import Any

from dryfit.misfits import Misfits
from dryfit.tape import inches, unrounded


def seen_square_on(request: dict[str, Any], answer: dict[str, Any], misfits: Misfits) -> dict[str, Any]:
    """The answer with every piece of casing as its back shows from the room, as if it lay flat.

    Each bevel is held against the identity of a compound cut between two pieces that lean alike: cos B cos M is the
    sine of half the corner.
    """
    unit = request.get("unit")
    (proud,) = {float(inches(corner["proud"], unit)) for corner in request["readings"]["wall"]}
    parts = [
        _flat(part, proud, misfits) if part["kind"].startswith("casing_") else part
        for part in answer["parts"]
    ]
    return answer | {"parts": parts}


def _flat(part: dict[str, Any], proud: float, misfits: Misfits) -> dict[str, Any]:
    width, thickness = float(unrounded(part["width"])), float(unrounded(part["thickness"]))
    flat = math.sqrt(width**2 - proud**2)
    ends, past = [], 0.0
    for end in part["ends"]:
        mitre, bevel = math.radians(end["mitre_degrees"]), math.radians(end["bevel_degrees"])
        if end["cut"] == "compound":
            misfits.near(
                f"{part['key']}, half a square corner's sine",
                math.cos(bevel) * math.cos(mitre),
                math.sqrt(0.5),
            )
            face_longer = end["tilt"] == end["on_saw"]
            past += thickness * math.tan(bevel) / math.cos(mitre) if face_longer else 0.0
        run = width * math.tan(mitre)
        ends.append(end | {"mitre_degrees": math.degrees(math.atan2(run, flat))})
    overall = part["overall"]
    back = {"exact": None, "real": float(unrounded(overall)) - past, "unit": "in", "residual": "0 in"}
    back["text"] = f"{back['real']:.9f} in"
    seen = {"exact": None, "real": flat, "unit": "in", "residual": "0 in", "text": f"{flat:.9f} in"}
    return part | {"width": seen, "overall": back, "ends": ends, "marks": []}
