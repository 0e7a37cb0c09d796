"""Random openings, as requests of `/v1/opening` that a carpenter could send."""

import cmath
import math
from fractions import Fraction
from typing import Any

from hypothesis import assume
from hypothesis import strategies as st

from dryfit.tape import inches

Draw = st.DrawFn


@st.composite
def lengths(draw: Draw, least: int, most: int) -> str:
    """A length between two numbers of inches, written in one of the ways people write it."""
    way = draw(st.sampled_from(("fraction", "decimal", "mm", "half mm", "cm", "feet")))
    if way == "mm":
        return f"{draw(st.integers(math.ceil(least * 25.4), int(most * 25.4)))} mm"
    if way == "half mm":
        return f"{draw(st.integers(math.ceil(least * 50.8), int(most * 50.8))) / 2} mm"
    if way == "cm":
        return f"{draw(st.integers(math.ceil(least * 25.4), int(most * 25.4))) / 10}cm"
    if way == "decimal":
        return f"{draw(st.integers(least * 1000, most * 1000)) / 1000:.3f}in"
    size = Fraction(draw(st.integers(least * 32, most * 32)), 32)
    if way == "feet" and size >= 12:
        feet, rest = divmod(size, 12)
        return f"{feet}' {mixed(rest)}\""
    return f"{mixed(size)} in"


def mixed(size: Fraction) -> str:
    whole, rest = divmod(size, 1)
    if not rest:
        return str(whole)
    return f"{whole} {rest}" if whole else str(rest)


def small(most: Fraction | int) -> st.SearchStrategy[str]:
    """A reveal, a horn, a clearance: from zero up."""
    sixty_fourths = st.integers(0, int(most * 64)).map(lambda n: f"{mixed(Fraction(n, 64))} in")
    return sixty_fourths | st.integers(0, int(most * 25)).map(lambda n: f"{n} mm")


reveals = small(Fraction(5, 8))
roundings = st.fixed_dictionaries(
    {
        "to": st.sampled_from(("1/8 in", "1/16 in", "1/32 in", "1/64 in", "1 mm", "0.5 mm")),
        "mode": st.sampled_from(("nearest", "up", "down")),
    }
)
casings = st.fixed_dictionaries({"width": lengths(1, 6), "thickness": lengths(1, 2)})


@st.composite
def trims(draw: Draw, foot: str, *, may_butt: bool) -> dict[str, Any]:
    """Trim for what an opening stands on."""
    trim: dict[str, Any] = {"casing": draw(casings), "reveal": draw(reveals)}
    if draw(st.booleans()):
        trim["head_casing"] = draw(casings)
    if may_butt and foot != "casing" and draw(st.booleans()):
        trim |= {"head_style": "butted", "overhang": draw(small(2))}
    if foot == "stool":
        trim["stool"] = {
            "thickness": "3/4 in",
            "horn": draw(small(2)),
            "nosing": draw(small(2)),
            "sash_clearance": draw(small(Fraction(1, 8))),
            "scribe": draw(st.sampled_from(("0 in", "0 in", "1/8 in", "3 mm"))),
            "ends": draw(st.sampled_from(("square", "eased", "mitered_return"))),
        }
        if draw(st.booleans()):
            ends = draw(st.sampled_from(("mitered_return", "square", "angled")))
            angle = draw(st.sampled_from((15, 7.5, 45, 30)))
            size = {"width": "2 1/2 in", "thickness": draw(lengths(1, 2))}
            trim["apron"] = {**size, "ends": ends, "end_angle": angle}
    if foot == "floor":
        trim["floor_clearance"] = draw(small(1))
    if foot == "plinth":
        height = draw(lengths(4, 9))
        trim["plinth"] = {"width": "4 in", "height": height, "thickness": "1 in"}
    return trim


@st.composite
def decided(draw: Draw, foot: str, out_of_level: bool) -> dict[str, Any]:
    """What was decided for an opening alone: ripped widths, its own horns, no apron, a strip under its stool."""
    widths = dict.fromkeys(("left", "right", "head", *(("sill",) if foot == "casing" else ())), lengths(1, 4))
    more: dict[str, Any] = {}
    if draw(st.booleans()):
        more["widths"] = draw(st.fixed_dictionaries({}, optional=widths))
    if foot != "stool":
        return more
    if draw(st.booleans()):
        more.setdefault("widths", {})["apron"] = draw(lengths(1, 2))
    more["horns"] = draw(st.fixed_dictionaries({}, optional=dict.fromkeys(("left", "right"), small(3))))
    more["without_apron"] = draw(st.integers(0, 9)) == 0
    if out_of_level:
        more["sill_answer"] = draw(st.sampled_from(("shim", "tapered_shim")))
    return more


@st.composite
def levels(draw: Draw, readings: dict[str, Any]) -> dict[str, str]:
    """What a level shows of the floor or the sill jamb: often just what makes the head level."""
    more = Fraction(0)
    if "left_jamb_height" in readings:
        more = inches(readings["left_jamb_height"]) - inches(readings["right_jamb_height"])
    if abs(more) > 2 or draw(st.booleans()):
        more = Fraction(draw(st.integers(-24, 24)), 32)
    return {"low": "left" if more > 0 else "right", "by": f"{mixed(abs(more))} in"}


@st.composite
def openings(
    draw: Draw, readings: st.SearchStrategy[dict[str, Any]], feet: tuple[str, ...]
) -> dict[str, Any]:
    """A whole request around an outline."""
    foot = draw(st.sampled_from(feet))
    outline = draw(readings)
    four = len(outline.get("sides", "four")) == 4 and "rise" not in outline
    if foot == "stool":
        depth, more = draw(st.integers(2 * 32, 6 * 32)), draw(st.integers(-8, 8))
        if not more:
            outline = outline | {"jamb_depth": f"{mixed(Fraction(depth, 32))} in"}
        else:
            left, right = (f"{mixed(Fraction(each, 32))} in" for each in (depth, depth + more))
            outline = outline | {"left_depth": left, "right_depth": right}
        horns = draw(st.sets(st.sampled_from(("left_horn_depth", "right_horn_depth"))))
        for name in horns:
            outline = outline | {name: f"{mixed(Fraction(depth + draw(st.integers(-8, 8)), 32))} in"}
        if draw(st.booleans()):
            by = f"{mixed(Fraction(draw(st.integers(1, 24)), 32))} in"
            outline = outline | {"sill": {"low": draw(st.sampled_from(("left", "right"))), "by": by}}
    elif "jamb_width" in outline and not {"rise", "head_width"} & outline.keys() and draw(st.booleans()):
        outline = outline | {"sill": draw(levels(outline))}
    sides = ("left", "right", "head", *(("sill",) if foot == "casing" else ()))
    own = draw(st.fixed_dictionaries({}, optional=dict.fromkeys(sides, reveals)))
    trim = draw(trims(foot, may_butt=four))
    if {"left_horn_depth", "right_horn_depth"} & outline.keys():
        # A return lies square against the wall, so where that is out of plane a horn's end is not returned.
        trim["stool"]["ends"] = "square"
    return {
        "mark": "A1",
        "bottom": foot,
        "readings": outline,
        "trim": trim,
        "reveals": own,
        **_no_wider(draw(decided(foot, "sill" in outline)), trim),
        "square_gap": draw(st.sampled_from(("1/64 in", "0 in", "1/8 in"))),
        "rounding": draw(roundings),
    }


def _no_wider(more: dict[str, Any], trim: dict[str, Any]) -> dict[str, Any]:
    """What was decided, without rips that its stock is too narrow for."""
    stock = {"head": trim.get("head_casing"), "apron": trim.get("apron"), "sill": trim.get("bottom_casing")}
    kept = {
        side: width
        for side, width in more.get("widths", {}).items()
        if inches(width) <= inches((stock.get(side) or trim["casing"])["width"])
    }
    return more | ({"widths": kept} if "widths" in more else {})


@st.composite
def plumb_sided(draw: Draw) -> dict[str, Any]:
    """A width and one height, or two: about alike or far apart."""
    width = draw(lengths(16, 96))
    height = draw(st.integers(24 * 16, 96 * 16))
    if draw(st.booleans()):
        return {"jamb_width": width, "jamb_height": draw(lengths(16, 96))}
    apart = draw(st.sampled_from((1, 1, 2, 5, 40, 200)))
    left, right = draw(st.permutations((height, height - apart)))
    return {
        "jamb_width": width,
        "left_jamb_height": f"{mixed(Fraction(left, 16))} in",
        "right_jamb_height": f"{mixed(Fraction(right, 16))} in",
    }


@st.composite
def triangles(draw: Draw) -> dict[str, Any]:
    """Three sides and no angle; none of the corners too sharp to case."""
    sides = [draw(st.integers(20 * 16, 90 * 16)) for _ in range(3)]
    assume(all(16 < angle < 150 for angle in _triangle_angles(sides)))
    return {"sides": [f"{mixed(Fraction(side, 16))} in" for side in sides]}


def _triangle_angles(sides: list[int]) -> list[float]:
    angles = []
    for far, one, other in ((0, 1, 2), (1, 2, 0), (2, 0, 1)):
        cosine = (sides[one] ** 2 + sides[other] ** 2 - sides[far] ** 2) / (2 * sides[one] * sides[other])
        angles.append(math.degrees(math.acos(cosine)) if -1 < cosine < 1 else 0.0)
    return angles


@st.composite
def polygons(draw: Draw, base_least: int = 25, base_most: int = 155) -> dict[str, Any]:
    """Any convex outline of 4 to 9 sides: a polygon around a circle, squashed, read to a thousandth.

    Args:
        base_least, base_most: between which the two corners at the base lie, degrees.
    """
    weights = draw(st.lists(st.integers(2, 6), min_size=4, max_size=9))
    turns = [2 * math.pi * weight / sum(weights) for weight in weights]
    radius = draw(st.integers(20, 45))
    squash = draw(st.sampled_from((1.0, 0.8, 0.6, 1.3)))
    sides = [
        radius * (math.tan(before / 2) + math.tan(after / 2))
        for before, after in zip([turns[-1], *turns[:-1]], turns, strict=True)
    ]
    assume(max(turns) < math.radians(150))
    heading, vectors = 0.0, []
    for side, turn in zip(sides, turns, strict=True):
        vectors.append(complex(side * math.cos(heading), squash * side * math.sin(heading)))
        heading += turn
    angles = [
        180 - math.degrees(math.atan2((after / before).imag, (after / before).real))
        for before, after in zip(vectors, [*vectors[1:], vectors[0]], strict=True)
    ]
    assume(all(18 < angle < 162 for angle in angles))
    assume(base_least <= angles[0] <= base_most and base_least <= angles[-1] <= base_most)
    assume(all(6 < abs(vector) < 400 for vector in vectors))
    return {
        "sides": [f"{abs(vector):.3f} in" for vector in vectors],
        "angles": [round(angle, 3) for angle in angles],
    }


regular = st.builds(
    lambda sides, length: {"sides": [length] * sides, "angles": [180 - 360 / sides] * sides},
    st.integers(3, 12),
    lengths(8, 40),
)


@st.composite
def quadrilaterals(draw: Draw) -> dict[str, Any]:
    """Four sides read to 1/16, a little or well out of square, and one reading that holds the shape."""
    width, height = draw(st.integers(20, 60)), draw(st.integers(30, 80))
    off = st.integers(*draw(st.sampled_from(((-8, 8), (-64, 64)))))
    bottom_right, top_right, top_left = (
        complex(x + draw(off) / 64, y + draw(off) / 64) for x, y in ((width, 0), (width, height), (0, height))
    )

    def read(length: float) -> str:
        return f"{mixed(Fraction(round(length * 16), 16))} in"

    def corner(at: complex, before: complex, after: complex) -> float:
        return round(math.degrees(cmath.phase((before - at) / (after - at))), 1)

    held = {
        "diagonal_from_bottom_left": read(abs(top_right)),
        "diagonal_from_bottom_right": read(abs(top_left - bottom_right)),
        "bottom_left_angle": corner(0j, top_left, bottom_right),
        "bottom_right_angle": corner(bottom_right, 0j, top_right),
        "top_right_angle": corner(top_right, bottom_right, top_left),
        "top_left_angle": corner(top_left, top_right, 0j),
    }
    holds = draw(st.sampled_from(sorted(held)))
    return {
        "jamb_width": read(abs(bottom_right)),
        "head_width": read(abs(top_left - top_right)),
        "left_jamb_height": read(abs(top_left)),
        "right_jamb_height": read(abs(top_right - bottom_right)),
        holds: held[holds],
    }


@st.composite
def arches(draw: Draw) -> dict[str, Any]:
    """A curved head on legs or on the base, up to a half round, in a number of pieces or to a departure."""
    half = draw(st.integers(10, 30))
    rise = draw(st.sampled_from((half, 2 * half // 3, half // 2)))
    readings: dict[str, Any] = {"jamb_width": f"{2 * half} in", "rise": f"{rise} in"}
    if draw(st.booleans()):
        readings["jamb_height"] = draw(lengths(20, 60))
    how = st.integers(3, 9).map(lambda n: {"head_pieces": n}) | st.sampled_from(("1/4 in", "1 in")).map(
        lambda most: {"departure": most}
    )
    return readings | draw(how)


RAKED: dict[str, Any] = {
    "sides": ["40 in", "30 in", "50 in", "60 in"],
    "angles": [90, 90 + math.degrees(math.atan2(3, 4)), 90 - math.degrees(math.atan2(3, 4)), 90],
}
"""A raked head: two plumb sides and a head that climbs 3 in 4."""

FEET = ("stool", "casing", "floor", "plinth")
standing = openings(plumb_sided(), FEET)
skewed = openings(quadrilaterals(), FEET)
framed = openings(triangles() | polygons() | regular | arches(), ("casing",))
# Legs that lean no more than this from plumb still stand on something.
STEEP: dict[str, Any] = {"sides": ["30 in", "50 in", "48 in"]}
leaning = openings(
    polygons(base_least=65, base_most=115) | st.just(RAKED) | st.just(STEEP), ("stool", "floor", "plinth")
)
curved = openings(arches().filter(lambda readings: "jamb_height" in readings), ("stool", "floor"))
