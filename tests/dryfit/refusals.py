"""Whether what was refused could have been built: the casing's edges drawn from the readings as they were sent."""

from typing import Any

from dryfit.blocks import UNSEEN
from dryfit.fit import reveal_of
from dryfit.outline import Line, Outline, outline
from dryfit.tape import inches


def unfounded(request: dict[str, Any], codes: set[str]) -> list[str]:
    """Refusals of a request of `/v1/opening` that the drawing does not bear out.

    Args:
        request: as it was sent.
        codes: of the refusal's errors.
    """
    reasons = {"piece-vanishes": _vanishes, "block-too-narrow": _stands_past_its_block}
    return sorted(code for code in codes if code not in reasons or not reasons[code](request))


def _lines(request: dict[str, Any]) -> tuple[Outline, dict[str, tuple[Line, Line]]]:
    """The outline, and each side's inner and outer line."""
    unit = request.get("unit")
    shape = outline(request["readings"], unit, request.get("bottom", "stool") == "stool")
    found = {}
    for index, name in enumerate(shape.names):
        inner = shape.side(index).outside(reveal_of(request, name, unit))
        found[name] = inner, inner.outside(_width(request, name))
    if request.get("bottom") != "casing":
        base = float(inches(request["trim"].get("floor_clearance", "0 in"), unit))
        found["sill"] = (Line(complex(0, base), 1 + 0j),) * 2
    return shape, found


def _width(request: dict[str, Any], name: str) -> float:
    unit, trim, side = request.get("unit"), request["trim"], name.split()[0]
    stock = trim.get({"head": "head_casing", "sill": "bottom_casing"}.get(side, "")) or trim["casing"]
    return float(inches(request.get("widths", {}).get(side) or stock["width"], unit))


def _vanishes(request: dict[str, Any]) -> bool:
    """Whether a mitered piece has an edge of no length: its two miters cross before they reach it."""
    if request["trim"].get("head_style", "mitered") != "mitered":
        return False
    shape, lines = _lines(request)
    names = shape.names
    for index, name in enumerate(names):
        if name == "sill" and request.get("bottom") != "casing":
            continue
        before, after = lines[names[index - 1]], lines[names[(index + 1) % len(names)]]
        for mine, start, finish in zip(lines[name], before, after, strict=True):
            if mine.ahead(mine.crosses(finish)) <= mine.ahead(mine.crosses(start)):
                return True
    return False


def _stands_past_its_block(request: dict[str, Any]) -> bool:
    """Whether a leg is wider, along the edge of the block on it, than that block."""
    if request["trim"].get("head_style") != "corner_blocks":
        return False
    block = float(inches(request["trim"]["corner_block"]["width"], request.get("unit")))
    _, lines = _lines(request)
    levels = ("head", "sill") if request.get("bottom") == "casing" else ("head",)
    return any(
        abs(lines[side][1].crosses(lines[level][0]) - lines[side][0].crosses(lines[level][0]))
        > block + UNSEEN
        for side in ("left", "right")
        for level in levels
    )
