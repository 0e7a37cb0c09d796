"""Pieces put on the wall meet: joints close, reveals are even, lengths are the pieces' own."""

import math
from itertools import pairwise

import pytest
from shapely.geometry import Polygon

from longpoint.geometry import Built, PieceKind
from longpoint.sheets.place import placed_pieces
from sheets.openings import EVERY
from sheets.styles import STYLED

ALL = EVERY | STYLED

CASING = (PieceKind.SIDE_CASING, PieceKind.HEAD_CASING, PieceKind.BOTTOM_CASING)


@pytest.mark.parametrize("built", ALL.values(), ids=ALL)
def test_every_piece_is_placed(built: Built) -> None:
    assert [one.number for one in placed_pieces(built)] == list(range(1, len(built.pieces) + 1))


@pytest.mark.parametrize("built", ALL.values(), ids=ALL)
def test_no_piece_lies_on_another_or_on_the_opening(built: Built) -> None:
    # A stop and a mull's casing lie within the opening as it was measured.
    within = (PieceKind.DOOR_STOP, PieceKind.MULL_CASING)
    band = built.opening.trim.back_band
    in_view = [one for one in placed_pieces(built) if one.hidden is None and one.piece.kind not in within]
    shapes = [(one.piece.title, Polygon(one.outline)) for one in in_view]
    shapes.append(("opening", Polygon([(float(x), float(y)) for x, y in built.frame.vertices])))
    for index, (name, shape) in enumerate(shapes):
        for other_name, other in shapes[index + 1 :]:
            # Legs on plinth blocks or a clearance stand inside the opening's own height, never its width.
            lap = float(band.lap * 60) if band and "band" in other_name else 1e-6
            assert shape.intersection(other).area < lap, f"{name} on {other_name}"


@pytest.mark.parametrize("built", ALL.values(), ids=ALL)
def test_casing_closes_round_the_opening(built: Built) -> None:
    casing = [Polygon(one.outline) for one in placed_pieces(built) if one.piece.kind in CASING]
    for one, other in pairwise(casing):
        # A butted head stands on its fillet.
        assert one.distance(other) < (0.376 if built.opening.trim.fillet else 1e-6)


@pytest.mark.parametrize("built", ALL.values(), ids=ALL)
def test_edges_are_as_long_as_the_pieces_say(built: Built) -> None:
    for one in placed_pieces(built):
        if one.piece.kind in CASING:
            assert one.inner is not None
            assert one.outer is not None
            assert math.dist(*one.inner) == pytest.approx(float(one.piece.short_point))
            assert math.dist(*one.outer) == pytest.approx(float(one.piece.long_point))
