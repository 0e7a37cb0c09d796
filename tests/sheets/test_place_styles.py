"""Pieces of further styles on the wall: they touch what they join, and lie on nothing."""

from __future__ import annotations

from itertools import combinations
from typing import Any

import pytest
from msgspec.structs import replace
from shapely.geometry import Polygon

from longpoint.geometry import (
    Apron,
    BackBand,
    Bottom,
    Built,
    Casing,
    CornerBlock,
    Group,
    HeadStrip,
    HeadStyle,
    Opening,
    Readings,
    Stool,
    StoolEnds,
    Trim,
    build_group,
    build_opening,
)
from longpoint.lengths import Fraction
from longpoint.sheets.drawing.elevation import elevation
from longpoint.sheets.lying import lying
from longpoint.sheets.place import placed_pieces
from longpoint.sheets.wording import Wording

F = Fraction
PLAIN = Trim(
    Casing(F(3), F(3, 4)),
    F(1, 4),
    stool=Stool(F(1), F(1), F(1)),
    apron=Apron(F(3), F(3, 4)),
)
STRIP = HeadStrip("strip", height=F(1), depth=F(2), overhang=F(1))


WHOLE = Readings(jamb_width=F(40), jamb_height=F(50), jamb_depth=F(3))
JOINED_WIDTHS = Readings(
    joined_widths=(F(18), F(18)), mull_widths=(F(4),), jamb_height=F(50), jamb_depth=F(3)
)


def window(foot: Bottom = Bottom.STOOL, read: Readings = WHOLE, **trim: Any) -> Opening:
    return Opening(mark="S1", readings=read, trim=replace(PLAIN, **trim), bottom=foot)


STYLES = {
    "band": window(back_band=BackBand(F(1), F(1), profile="band")),
    "blocks": window(
        Bottom.CASING,
        head_style=HeadStyle.CORNER_BLOCKS,
        corner_block=CornerBlock(F("3.25"), F(1), profile="block"),
    ),
    "dressed": window(head_style=HeadStyle.BUTTED, overhang=F(1, 2), fillet=STRIP, cap=STRIP),
    "mulls": window(read=JOINED_WIDTHS, mull_casing=Casing(F(3), F(1), "mull")),
}


def shared() -> Built:
    pair = (window(), window())
    found = build_group(pair, Group(mark="pair", gaps=(F(12),), stock_length=F(72))).shared
    assert found is not None
    return found


BUILT = {name: build_opening(opening) for name, opening in STYLES.items()} | {"shared": shared()}


@pytest.mark.parametrize("name", BUILT)
def test_no_piece_lies_on_another(name: str) -> None:
    shapes = [(p.piece.title, Polygon(p.outline)) for p in placed_pieces(BUILT[name]) if p.hidden is None]
    for (one, shape), (other, another) in combinations(shapes, 2):
        laps = 3.0 if name == "shared" else 1e-6  # a scarf is drawn as both of its halves
        assert shape.intersection(another).area < laps, f"{one} on {other}"


@pytest.mark.parametrize(
    ("name", "one", "other"),
    [
        ("band", "back_band/left", "side_casing/left"),
        ("band", "back_band/head", "head_casing"),
        ("blocks", "corner_block/left", "side_casing/left"),
        ("blocks", "corner_block/right", "head_casing"),
        ("blocks", "corner_block/sill left", "bottom_casing"),
        ("blocks", "corner_block/sill right", "side_casing/right"),
        ("dressed", "fillet", "side_casing/left"),
        ("dressed", "fillet", "head_casing"),
        ("dressed", "cap", "head_casing"),
        ("mulls", "mull_casing/1", "head_casing"),
        ("mulls", "mull_casing/1", "stool"),
        ("shared", "stool/1 of 2", "stool/2 of 2"),
        ("shared", "stool/1 of 2", "apron/1 of 2"),
    ],
)
def test_pieces_that_join_touch(name: str, one: str, other: str) -> None:
    outlines = {str(each.piece.key): Polygon(each.outline) for each in placed_pieces(BUILT[name])}
    assert outlines[one].distance(outlines[other]) < 1e-9


@pytest.mark.parametrize("name", BUILT)
def test_every_style_can_be_drawn(name: str) -> None:
    drawing = elevation(BUILT[name], Wording())
    assert all(piece.title in drawing for piece in BUILT[name].pieces)


def test_a_returned_horn_is_mitered_down_to_its_notch() -> None:
    stool = build_opening(window(stool=replace(PLAIN.stool, ends=StoolEnds.MITERED_RETURN))).pieces[0]
    outline = Polygon(lying(stool))
    # Ripped 4 3/4, notched 3: what stands off the wall, 1 3/4, is mitered away at each end.
    whole = float(stool.overall) * 4.75 - 2 * 4.25 * 3 - 1.75**2
    assert outline.is_valid
    assert outline.area == pytest.approx(whole)
