"""Sections: the stool, apron and jamb cut through upright, and a leg cut through level."""

from __future__ import annotations

from collections.abc import Callable

from longpoint.geometry.opening import Built
from longpoint.geometry.parts import Part, PartKind
from longpoint.lengths import Real
from longpoint.sheets.drawing.canvas import SMALL_SIZE, Canvas
from longpoint.sheets.drawing.dimension import Dimension, dimension
from longpoint.sheets.drawing.elevation import elevation
from longpoint.sheets.drawing.hatch import hatch
from longpoint.sheets.drawing.number import number_beside, number_upon
from longpoint.sheets.drawing.shapes import Point
from longpoint.sheets.drawing.style import Styling
from longpoint.sheets.wording import Wording

ACROSS, DOWN, MOST_SCALE = 210.0, 200.0, 40.0
ABOVE, BELOW = 2.5, 0.75
"""Inches of casing shown over the stool, and of wall under the apron."""

At = Callable[[float, float], Point]
DOWNWARD, UPWARD, RIGHTWARD = (0.0, 1.0), (0.0, -1.0), (1.0, 0.0)


def section(built: Built, wording: Wording, styling: Styling = Styling.THEMED) -> str:
    """The section that says most about an opening: through its stool, or through a leg where it has none.

    An opening without either has only its elevation.
    """
    kinds = {part.kind for part in built.parts}
    if PartKind.STOOL in kinds:
        return stool_section(built, wording, styling)
    if PartKind.CASING_LEG in kinds:
        return leg_section(built, wording, styling)
    return elevation(built, wording, styling)


def stool_section(built: Built, wording: Wording, styling: Styling = Styling.THEMED) -> str:
    """Cut upright through stool, apron and wall at the centre line; the sash lies to the left.

    Args:
        built: an opening with a stool.
        wording: how lengths are written.
        styling: where the look comes from.
    """
    opening = built.opening
    stool = opening.trim.stool
    left, right = opening.readings.left_depth, opening.readings.right_depth
    assert stool is not None
    assert left is not None
    assert right is not None
    depth = max(left, right)
    number, part = _numbered(built, PartKind.STOOL)
    apron = next((p for p in built.parts if p.kind is PartKind.APRON), None)
    under = float(apron.width) if apron else 2.0
    clear, back = float(stool.sash_clearance), float(depth)
    edge = clear + float(part.width)
    thick = float(stool.thickness)
    scale = min(ACROSS / edge, DOWN / (ABOVE + thick + under + BELOW), MOST_SCALE)
    canvas = Canvas()

    def at(x: float, y: float) -> Point:
        return x * scale, -y * scale

    foot = -thick - under - BELOW
    canvas.outline((at(0, ABOVE), at(back, ABOVE), at(back, 0), at(0, 0)), "jamb")
    if opening.trim.casing is not None:
        face = back + float(opening.trim.casing.thickness)
        canvas.outline((at(back, ABOVE), at(face, ABOVE), at(face, 0), at(back, 0)), "jamb")
    canvas.line(at(0, ABOVE), at(0, foot), "heavy")
    hatch(canvas, *at(0, -thick), *at(back, foot), step=7)
    canvas.line(at(back, -thick), at(back, foot), "edge")
    _cut(canvas, at(clear, 0), at(edge, -thick))
    if apron is not None:
        _cut(canvas, at(back, -thick), at(back + float(apron.thickness), -thick - under), rising=False)
    for spot, word in (((back / 2, ABOVE - 0.5), "jamb"), ((back / 2, foot - 0.35), "wall")):
        canvas.text(word, at(*spot), size=SMALL_SIZE)
    canvas.text("sash", (-18.0, at(0, ABOVE - 0.5)[1]), size=SMALL_SIZE)
    for what in _stool_dimensions(wording, at, part, apron, (clear, back, edge, thick, under), depth):
        dimension(canvas, what)
    _ring(canvas, number, at(clear, 0), at(edge, -thick), UPWARD)
    if apron is not None:
        _ring(
            canvas,
            built.parts.index(apron) + 1,
            at(back, -thick),
            at(back + float(apron.thickness), -thick - under),
            RIGHTWARD,
        )
    return canvas.svg(
        f"Section of {opening.mark} through stool, apron and jamb",
        f"To scale, the sash to the left. Stool ripped to {wording.figure(part.width)} from a jamb depth of "
        f"{wording.figure(depth)}, {wording.figure(stool.nosing)} past the apron's face.",
        styling,
    )


def _stool_dimensions(
    wording: Wording,
    at: At,
    part: Part,
    apron: Part | None,
    spots: tuple[float, float, float, float, float],
    depth: Real,
) -> list[Dimension]:
    clear, back, edge, thick, under = spots
    foot = at(0, -thick - under - BELOW)[1]
    top = at(0, ABOVE)[1]

    def across(
        x1: float, x2: float, value: Real, height: float, away: Point, tier: int, base: float
    ) -> Dimension:
        start, end = (at(x1, 0)[0], height), (at(x2, 0)[0], height)
        feet = (at(x1, base), at(x2, base))
        return Dimension(start, end, away, wording.figure(value), tier, feet)

    found = [across(0, back, depth, top, UPWARD, 0, ABOVE)]
    face = back + float(apron.thickness) if apron else back
    found.append(across(face, edge, edge - face, foot, DOWNWARD, 0, -thick))
    if apron is not None:
        found.append(across(back, face, apron.thickness, foot, DOWNWARD, 0, -thick - under))
    if clear:
        found.append(across(0, clear, clear, foot, DOWNWARD, 1, -thick))
    found.append(across(clear, edge, part.width, foot, DOWNWARD, 2, -thick))
    x = at(edge, 0)[0]
    feet = (at(edge, 0), at(edge, -thick))
    found.append(
        Dimension((x, at(0, 0)[1]), (x, at(0, -thick)[1]), RIGHTWARD, wording.figure(part.thickness), 0, feet)
    )
    if apron is not None:
        feet = (at(face, -thick), at(face, -thick - under))
        found.append(
            Dimension(
                (x, at(0, -thick)[1]),
                (x, at(0, -thick - under)[1]),
                RIGHTWARD,
                wording.figure(apron.width),
                0,
                feet,
            )
        )
    return found


def leg_section(built: Built, wording: Wording, styling: Styling = Styling.THEMED) -> str:
    """Cut level through the right leg, seen from above: the opening to the left, the room below."""
    opening = built.opening
    reveal = opening.trim.reveal if opening.reveals.right is None else opening.reveals.right
    jamb = float(opening.readings.jamb_thickness)
    number, part = _numbered(built, PartKind.CASING_LEG, "right")
    gap, wide, thick = float(reveal), float(part.width), float(part.thickness)
    deep = 2.5
    reach = max(gap + wide, jamb) + 1.25
    scale = min(ACROSS / reach, MOST_SCALE)
    canvas = Canvas()

    def at(x: float, y: float) -> Point:
        return x * scale, -y * scale

    hatch(canvas, *at(jamb, deep), *at(reach, 0), step=7)
    canvas.line(at(jamb, 0), at(reach, 0), "edge")
    _cut(canvas, at(0, deep), at(jamb, 0), rising=False)
    _cut(canvas, at(gap, 0), at(gap + wide, -thick))
    canvas.text("jamb", (-22.0, at(0, deep / 2)[1]), size=SMALL_SIZE)
    canvas.text("wall", (at(reach, 0)[0] + 22, at(0, deep / 2)[1]), size=SMALL_SIZE)
    low = at(0, -thick)[1]
    x = at(gap + wide, 0)[0]
    for what in (
        Dimension((at(gap, 0)[0], low), (x, low), DOWNWARD, wording.figure(part.width), 0),
        Dimension(
            (0.0, low), (at(gap, 0)[0], low), DOWNWARD, wording.figure(reveal), 1, (at(0, 0), at(gap, -thick))
        ),
        Dimension(
            (0.0, at(0, deep)[1]), at(jamb, deep), UPWARD, wording.figure(opening.readings.jamb_thickness)
        ),
        Dimension((x, 0.0), (x, low), RIGHTWARD, wording.figure(part.thickness)),
    ):
        dimension(canvas, what)
    _ring(canvas, number, at(gap, 0), at(gap + wide, -thick), DOWNWARD)
    return canvas.svg(
        f"Section of {opening.mark} through the right leg",
        f"To scale, seen from above, the room below. Casing {wording.figure(part.width)} by "
        f"{wording.figure(part.thickness)}, {wording.figure(reveal)} of the jamb left showing.",
        styling,
    )


def _numbered(built: Built, kind: PartKind, side: str = "") -> tuple[int, Part]:
    """The first part of a kind, on a side where one is named, with its number."""
    matches = [(n, p) for n, p in enumerate(built.parts, 1) if p.kind is kind]
    return next((pair for pair in matches if pair[1].side == side), matches[0])


def _cut(canvas: Canvas, corner: Point, opposite: Point, *, rising: bool = True) -> None:
    """A piece the section cuts through."""
    (left, top), (right, bottom) = corner, opposite
    canvas.outline(((left, top), (right, top), (right, bottom), (left, bottom)), "cut")
    hatch(canvas, left, top, right, bottom, step=4, rising=rising)


def _ring(canvas: Canvas, number: int, corner: Point, opposite: Point, away: Point) -> None:
    (left, top), (right, bottom) = corner, opposite
    centre = (left + right) / 2, (top + bottom) / 2
    if number_upon(canvas, number, centre, min(right - left, bottom - top)):
        return
    if away[0]:
        number_beside(canvas, number, [(((right, top), (right, bottom)), away, ((left - right) / 2, 0.0))])
    else:
        edge = top if away[1] < 0 else bottom
        inside = (bottom - top) / 2 * (1 if away[1] < 0 else -1)
        number_beside(canvas, number, [(((left, edge), (right, edge)), away, (0.0, inside))])
