"""Random openings in the trade's other styles, and in the states real ones are in."""

from fractions import Fraction
from typing import Any

from hypothesis import assume
from hypothesis import strategies as st

from dryfit.openings import (
    Draw,
    casings,
    lengths,
    mixed,
    plumb_sided,
    polygons,
    quadrilaterals,
    regular,
    roundings,
    small,
    triangles,
    trims,
)


@st.composite
def dressed(draw: Draw) -> dict[str, Any]:
    """A level opening in one of the trade's other styles: blocks, a fillet and cap, a back band, returned horns."""
    style = draw(st.sampled_from(("corner_blocks", "butted", "banded")))
    foot = draw(st.sampled_from(("stool", "floor") if style == "butted" else ("stool", "floor", "casing")))
    width = Fraction(draw(st.integers(8, 24)), 4)
    casing = {"width": f"{mixed(width)} in", "thickness": "3/4 in"}
    trim: dict[str, Any] = {"casing": casing, "reveal": draw(small(Fraction(1, 2)))}
    if style == "corner_blocks":
        # No narrower than the casing, and not over the opening.
        more, reveal = draw(st.integers(0, 16)), draw(st.integers(8, 16))
        wide = f"{mixed(width + Fraction(more, 16))} in"
        trim |= {"head_style": style, "corner_block": {"width": wide, "thickness": "1 in"}}
        trim["reveal"] = f"{mixed(Fraction(reveal, 16))} in" if reveal < 12 else "11/16 in"
    if style == "butted":
        trim |= {"head_style": style, "overhang": draw(small(1)), "head_casing": draw(casings)}
        for kind in draw(st.sets(st.sampled_from(("fillet", "cap")))):
            ends = draw(st.sampled_from(("square", "mitered_return")))
            size = {"height": "1/2 in", "depth": draw(lengths(1, 3)), "overhang": draw(small(2))}
            trim[kind] = {"profile": kind, "ends": ends, **size}
    if style == "banded":
        trim["back_band"] = {"width": "1 1/8 in", "thickness": "1 in", "lap": draw(small(Fraction(3, 4)))}
    if foot == "casing":
        trim["bottom_casing"] = casing | ({} if style == "corner_blocks" else {"width": draw(lengths(1, 5))})
    if foot == "stool":
        ends = draw(st.sampled_from(("square", "mitered_return")))
        trim["stool"] = {
            "thickness": "1 in",
            "horn": draw(lengths(2, 4)),
            "nosing": draw(small(1)),
            "ends": ends,
        }
    size = draw(plumb_sided() | quadrilaterals()) | {"jamb_depth": draw(lengths(2, 6))}
    request = {"mark": "A1", "bottom": foot, "readings": size, "trim": trim, "rounding": draw(roundings)}
    return request | {"square_gap": draw(st.sampled_from(("1/64 in", "0 in")))}


@st.composite
def joined(draw: Draw) -> dict[str, Any]:
    """Units joined by mulls, level or under a raked head, mitered or butted."""
    count = draw(st.integers(2, 5))
    foot = draw(st.sampled_from(("stool", "floor", "casing")))
    mulls = [f"{mixed(Fraction(draw(st.integers(24, 64)), 8))} in" for _ in range(count - 1)]
    readings: dict[str, Any] = {
        "joined_widths": [draw(lengths(12, 40)) for _ in range(count)],
        "mull_widths": mulls,
        "jamb_depth": draw(lengths(2, 6)),
    }
    if draw(st.booleans()):
        readings["jamb_height"] = draw(lengths(40, 80))
    else:
        readings |= {
            "left_jamb_height": f"{draw(st.integers(40, 59))} in",
            "right_jamb_height": f"{draw(st.integers(61, 80))} in",
        }
    trim = draw(trims(foot, may_butt=foot != "casing"))
    trim["mull_casing"] = {
        "width": f"{mixed(Fraction(draw(st.integers(8, 24)), 8))} in",
        "thickness": "5/8 in",
    }
    request = {"mark": "A1", "bottom": foot, "readings": readings, "trim": trim, "square_gap": "0 in"}
    return request | {"rounding": draw(roundings)}


@st.composite
def extended(draw: Draw) -> dict[str, Any]:
    """A jamb extended to a wall that stands proud of it, more at one corner than at another."""
    foot = draw(st.sampled_from(("stool", "floor", "casing")))
    corners = "mitered" if foot == "casing" else draw(st.sampled_from(("mitered", "butted")))
    trim = draw(trims(foot, may_butt=True)) | {"reveal": draw(small(Fraction(3, 8)))}
    trim["extension"] = {"thickness": "3/4 in", "reveal": draw(small(Fraction(1, 2))), "corners": corners}
    outlines = plumb_sided() | quadrilaterals()
    readings = draw(outlines | polygons() if foot == "casing" else outlines)
    if "sides" in readings:
        trim.pop("head_style", None)
    proud = [draw(st.integers(0, 64)) for _ in readings.get("sides", range(4))]
    # A side without a board has none to meet: every side has one, tapering to nothing where the wall is flush.
    proud = [each or int(not proud[at - 1]) for at, each in enumerate(proud)]
    assume(all(one or other for one, other in zip(proud, [proud[-1], *proud], strict=False)))
    return {
        "mark": "A1",
        "bottom": foot,
        "readings": readings
        | {"wall": [{"proud": f"{mixed(Fraction(each, 32))} in"} for each in proud]}
        | ({"jamb_depth": draw(lengths(2, 6))} if foot == "stool" else {}),
        "trim": trim,
        "square_gap": "0 in",
        "wall_answer": "extend",
        "rounding": draw(roundings),
    }


@st.composite
def leant(draw: Draw) -> dict[str, Any]:
    """Casing that leans on a wall standing proud, more at one corner than at another, round any outline."""
    foot = draw(st.sampled_from(("floor", "stool", "casing", "casing")))
    outlines = plumb_sided() | quadrilaterals()
    if foot == "casing":
        outlines = outlines | triangles() | polygons() | regular
    outline = draw(outlines)
    corners = len(outline.get("sides", "four"))
    alike = draw(st.booleans())
    proud = (
        [draw(st.integers(0, 16))] * corners if alike else [draw(st.integers(-4, 16)) for _ in range(corners)]
    )
    wall = [{"shy" if each < 0 else "proud": f"{mixed(Fraction(abs(each), 32))} in"} for each in proud]
    casing = {"width": f"{mixed(Fraction(draw(st.integers(8, 24)), 4))} in", "thickness": draw(lengths(1, 2))}
    trim: dict[str, Any] = {"casing": casing, "reveal": draw(small(Fraction(1, 2)))}
    if draw(st.booleans()):
        trim["head_casing"] = {
            "width": f"{mixed(Fraction(draw(st.integers(8, 24)), 4))} in",
            "thickness": casing["thickness"],
        }
    if foot == "stool":
        trim["stool"] = {"thickness": "3/4 in", "horn": draw(small(2)), "nosing": draw(small(2))}
    return {
        "mark": "A1",
        "bottom": foot,
        "readings": outline | {"wall": wall} | ({"jamb_depth": "3 in"} if foot == "stool" else {}),
        "trim": trim,
        "wall_answer": "lean",
        "square_gap": "0 in",
        "rounding": {"to": "1/64 in"},
    }


@st.composite
def hung(draw: Draw) -> dict[str, Any]:
    """A door in a jamb made for it."""
    door = {
        "width": draw(lengths(18, 48)),
        "height": draw(lengths(70, 100)),
        "hinge_side": draw(st.sampled_from(("left", "right"))),
        "hinge_gap": draw(small(Fraction(1, 4))),
        "floor_gap": draw(small(1)),
        "housing": draw(small(Fraction(1, 2))),
        "hinges": draw(st.integers(2, 4)),
        "top_hinge": draw(lengths(5, 9)),
        "bottom_hinge": draw(lengths(8, 12)),
        "strike_height": draw(lengths(30, 40)),
        "jamb_depth": draw(lengths(4, 8)),
    }
    trim = draw(trims("floor", may_butt=True))
    trim["stop"] = {
        "width": "1 1/4 in",
        "thickness": "3/8 in",
        "corners": draw(st.sampled_from(("butted", "mitered"))),
    }
    readings = {"door": door}
    return {
        "mark": "A1",
        "bottom": "floor",
        "readings": readings,
        "trim": trim,
        "rounding": draw(roundings),
    }
