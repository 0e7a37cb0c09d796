"""The stool and the apron, seen from above: x along the wall, y into the wall, the wall's face at y = 0."""

import math
from typing import Any

from shapely import Polygon, box
from shapely.affinity import affine_transform, rotate, translate
from shapely.ops import unary_union

from dryfit.misfits import Misfits
from dryfit.piece import Measure
from dryfit.tape import unrounded


def fit_stool(
    part: dict[str, Any],
    measure: Measure,
    misfits: Misfits,
    *,
    jamb: float,
    depths: tuple[float, float],
    outsides: tuple[float, float],
    horn: float,
    clearance: float,
    front: float,
) -> None:
    """Lay the stool between the jambs with its back edge along the sash.

    Args:
        jamb: width between the jambs at the stool.
        depths: left and right, wall face to sash stop.
        outsides: where the casing's outside edges stand at the stool, x.
        horn: asked, past the casing.
        clearance: asked, to the sash.
        front: how far the nosing is to stand off the wall's face where the wall is deeper.
    """
    length, width = float(measure(part["overall"])), float(measure(part["rip_width"]))
    left, right = (
        (float(measure(end["notch"]["length"])), float(measure(end["notch"]["depth"])))
        for end in part["ends"]
    )
    for end, at in zip(part["ends"], ("left", "right"), strict=True):
        misfits.says(f"the stool's {at} end", (end["at"], end["on_saw"], end["cut"]), (at, at, "square"))
    # On the bench: left end at x = 0, back edge along y = 0, nosing towards the carpenter.
    stool = box(0, -width, length, 0) - unary_union(
        [box(0, -left[1], left[0], 0), box(length - right[0], -right[1], length, 0)]
    )
    lean = math.atan2(depths[1] - depths[0], jamb)
    stool = rotate(stool, lean, origin=(left[0], 0), use_radians=True)
    stool = translate(stool, -left[0], depths[0] - clearance / math.cos(lean))
    # Depths that differ lean the stool to follow the sash; its square notches then miss by the lean.
    more = abs(math.tan(lean)) * (width + max(left[0], right[0])) + jamb * (1 / math.cos(lean) - 1)
    wall = unary_union([box(-jamb, 0, 0, max(depths)), box(jamb, 0, 2 * jamb, max(depths))])
    overlap = stool.intersection(wall)
    if overlap.area > (misfits.slack + more) * (overlap.length + misfits.slack):
        misfits.found.append(f"the stool and the wall overlap by {overlap.area:.5f} sq in")
    # Halfway into the wall there is nothing of the horns.
    tongue = stool.intersection(box(-jamb, min(depths) / 2, 2 * jamb, max(depths) + width))
    x_least, _, x_most, y_most = tongue.bounds
    misfits.near("the stool's tongue at the left jamb", x_least, 0, more)
    misfits.near("the stool's tongue at the right jamb", x_most, jamb, more)
    misfits.near("the stool's back edge from the sash", max(depths) - y_most, clearance, more)
    x_least, _, x_most, _ = stool.bounds
    misfits.near("the left horn", outsides[0] - x_least, horn, more)
    misfits.near("the right horn", x_most - outsides[1], horn, more)
    nearest = -max(_front_at(stool, 0), _front_at(stool, jamb))
    misfits.near("the nosing off the wall at the deeper end", nearest, front, more)
    for mark, x in (
        ("left casing outside edge", outsides[0]),
        ("left jamb face", 0.0),
        ("centre line of opening", jamb / 2),
        ("right jamb face", jamb),
        ("right casing outside edge", outsides[1]),
    ):
        told = next(each["at"] for each in part["marks"] if each["name"] == mark)
        own = abs(float(measure(told)) - float(unrounded(told)))
        misfits.near(f"the stool's mark for the {mark}", float(measure(told)) - left[0], x, more + own)


def _front_at(stool: Polygon, x: float) -> float:
    return float(stool.intersection(box(x - 1e-6, -1e3, x + 1e-6, 1e3)).bounds[1])


def fit_apron(
    parts: list[dict[str, Any]],
    measure: Measure,
    misfits: Misfits,
    *,
    jamb: float,
    outsides: tuple[float, float],
    returned: bool,
) -> None:
    """Hold the apron's face length against the casing's outside edges and fold its returns back to the wall."""
    pieces = {part["key"]: part for part in parts if str(part["kind"]).startswith("apron")}
    wanted = {"apron", "apron_return/left", "apron_return/right"} if returned else {"apron"}
    misfits.says("the apron's pieces", set(pieces), wanted)
    if set(pieces) != wanted:
        return
    body = _from_above(pieces["apron"], measure)
    thick = float(unrounded(pieces["apron"]["thickness"]))
    length = body.bounds[2]
    misfits.near("the apron between the casing's outside edges", length, outsides[1] - outsides[0])
    mark = pieces["apron"]["marks"][0]["at"]
    own = abs(float(measure(mark)) - float(unrounded(mark)))
    misfits.near("the apron's centre line", float(measure(mark)) + outsides[0], jamb / 2, own)
    if not returned:
        misfits.near("the square apron's area from above", body.area, length * thick)
        return
    # A return's face is turned to the side: the left one a quarter turn, its wall end against the wall.
    left, right = (_from_above(pieces[f"apron_return/{side}"], measure) for side in ("left", "right"))
    left = affine_transform(left, [0, 1, -1, 0, 0, 0])
    left = translate(left, -left.bounds[0], -left.bounds[3])
    right = affine_transform(right, [0, -1, 1, 0, 0, 0])
    right = translate(right, length - right.bounds[2], -right.bounds[3])
    for name, one, other in (("left", left, body), ("right", right, body)):
        misfits.apart(f"the apron and its {name} return", one, other)
    together = unary_union([body, left, right])
    missing = box(0, -thick, length, 0).symmetric_difference(together)
    if missing.area > misfits.slack * (2 * length + 4 * thick):
        misfits.found.append(f"the apron and its returns leave {missing.area:.5f} sq in open or over")


def _from_above(part: dict[str, Any], measure: Measure) -> Polygon:
    """A piece upright on its edge, face towards the carpenter: face along y = -thickness, back along y = 0."""
    overall, thick = float(measure(part["overall"])), float(unrounded(part["thickness"]))
    at_left, at_right = part["ends"]
    left, right = _lean(at_left, thick), _lean(at_right, thick)
    # On the saw the face is up and the blade's top meets it: where the top leans left, the face is further left.
    face_left, face_right = max(0.0, -left), overall - max(0.0, right)
    return Polygon(
        [(face_left, -thick), (face_right, -thick), (face_right + right, 0), (face_left + left, 0)]
    ).buffer(0)


def _lean(end: dict[str, Any], thick: float) -> float:
    """How far right the cut runs from the face to the back."""
    run = thick * math.tan(math.radians(end["bevel_degrees"]))
    return run if end["tilt"] == "left" else -run
