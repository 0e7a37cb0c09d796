"""Random rows of openings over one long stool, as requests of `/v1/cut-list`."""

from fractions import Fraction
from typing import Any

from hypothesis import strategies as st

from dryfit.openings import Draw, casings, mixed, reveals, roundings, small


@st.composite
def rows(draw: Draw) -> dict[str, Any]:
    """Two to five windows over one stool: level or under raked heads, of one depth or of many, trimmed alike or not."""
    count = draw(st.integers(2, 5))
    trim: dict[str, Any] = {
        "casing": draw(casings),
        "reveal": draw(reveals),
        "stool": {
            "thickness": "3/4 in",
            "horn": draw(small(2)),
            "nosing": draw(small(2)),
            "sash_clearance": draw(small(Fraction(1, 8))),
            "scribe": draw(st.sampled_from(("0 in", "1/8 in"))),
            "ends": draw(st.sampled_from(("square", "eased", "mitered_return"))),
        },
    }
    if draw(st.booleans()):
        ends = draw(st.sampled_from(("mitered_return", "square", "angled")))
        trim["apron"] = {"width": "2 1/2 in", "thickness": "5/8 in", "ends": ends}
    alike = draw(st.booleans())
    openings = [draw(_window(number, alike)) for number in range(count)]
    group: dict[str, Any] = {
        "mark": "all",
        "openings": [one["mark"] for one in openings],
        "gaps": [f"{mixed(Fraction(draw(st.integers(6 * 32, 40 * 32)), 32))} in" for _ in range(count - 1)],
    }
    if draw(st.integers(0, 4)):
        group["stock_length"] = f"{draw(st.integers(8, 16))} ft"
    if draw(st.booleans()):
        group["solid"] = [f"{16 * number} in" for number in range(1, 30)]
    request = {"openings": openings, "trim_specs": {"house": trim}, "groups": [group]}
    return request | {"rounding": draw(roundings)}


@st.composite
def _window(draw: Draw, number: int, alike: bool) -> dict[str, Any]:
    readings: dict[str, Any] = {
        "jamb_width": f"{mixed(Fraction(draw(st.integers(20 * 16, 60 * 16)), 16))} in"
    }
    own: dict[str, Any] = {}
    if alike:
        return {
            "mark": f"W{number}",
            "trim": "house",
            "readings": readings | {"jamb_height": "48 in", "jamb_depth": "3 1/8 in"},
        }
    left, right = draw(st.integers(40, 60)), draw(st.integers(40, 60))
    deep, deeper = draw(st.integers(80, 120)), draw(st.integers(80, 120))
    readings |= {"left_jamb_height": f"{left} in", "right_jamb_height": f"{right} in"}
    readings |= {
        "left_depth": f"{mixed(Fraction(deep, 32))} in",
        "right_depth": f"{mixed(Fraction(deeper, 32))} in",
    }
    for name, each in (("reveals", reveals), ("horns", small(3))):
        own[name] = draw(st.fixed_dictionaries({}, optional=dict.fromkeys(("left", "right"), each)))
    widths = st.integers(4, 8).map(lambda eighths: f"{mixed(Fraction(eighths, 8))} in")
    own["widths"] = draw(st.fixed_dictionaries({}, optional=dict.fromkeys(("left", "right"), widths)))
    return {"mark": f"W{number}", "trim": "house", "readings": readings, **own}
