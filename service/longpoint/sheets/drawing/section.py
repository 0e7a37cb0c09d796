"""The section that says most about an opening, to scale: its stool or its leg, and its head where that is dressed."""

from __future__ import annotations

from longpoint.geometry.opening import Built
from longpoint.geometry.piece_names import PieceKind
from longpoint.sheets.drawing.canvas import Canvas
from longpoint.sheets.drawing.cuts import Detail, draw_detail
from longpoint.sheets.drawing.elevation import elevation
from longpoint.sheets.drawing.legend import list_pieces
from longpoint.sheets.drawing.section_head import head_detail
from longpoint.sheets.drawing.section_leg import leg_detail
from longpoint.sheets.drawing.section_stool import stool_detail
from longpoint.sheets.drawing.style import Styling
from longpoint.sheets.wording import Wording

ACROSS, DOWN, MOST_SCALE = 210.0, 200.0, 40.0
DOWN_OF_TWO = 300.0
APART = 30.0
"""Drawing units between the head and what lies under it."""


def section(built: Built, wording: Wording, styling: Styling = Styling.THEMED, *, legend: bool = True) -> str:
    """The section as SVG text: upright through stool, apron and jamb, or level through a leg where there is no stool.

    A head with a fillet, a cap, a band or an extension is cut through above it, to the same scale. An opening with
    neither stool nor legs has only its elevation.

    Args:
        built: the opening.
        wording: how lengths are written.
        styling: where the look comes from.
        legend: whether the pieces cut through are listed under it.
    """
    details = _details(built, wording)
    if not details:
        return elevation(built, wording, styling, legend=legend)
    across = max(detail.across for detail in details)
    down = sum(detail.above + detail.below for detail in details)
    scale = min(ACROSS / across, (DOWN if len(details) == 1 else DOWN_OF_TWO) / down, MOST_SCALE)
    canvas = Canvas()
    drop = 0.0
    for detail in details:
        if detail is not details[0]:
            drop = canvas.bounds[3] + APART + detail.above * scale
        draw_detail(canvas, detail, scale, drop)
    if legend:
        cuts = {one.number: one.piece for detail in details for one in detail.cuts}
        list_pieces(canvas, sorted(cuts.items()), wording)
    names = " and ".join(detail.name for detail in details)
    described = " ".join(detail.described for detail in details)
    return canvas.svg(f"Section of {built.opening.mark} through {names}", f"To scale. {described}", styling)


def _details(built: Built, wording: Wording) -> list[Detail]:
    kinds = {piece.kind for piece in built.pieces}
    if PieceKind.STOOL in kinds:
        foot = stool_detail(built, wording)
    elif PieceKind.SIDE_CASING in kinds:
        foot = leg_detail(built, wording)
    else:
        return []
    head = head_detail(built, wording)
    return [foot] if head is None else [head, foot]
