"""Pieces that others partly hide lie where they are built: on the jamb, under the casing, behind the end they close."""

import math

import pytest
from shapely.geometry import Polygon
from shapely.ops import unary_union

from longpoint.geometry import Built, PieceKind
from longpoint.sheets.place import PlacedOutline, placed_pieces
from longpoint.sheets.place_behind import RETURNS
from sheets.styles import STYLED

EXTENDED = [STYLED[name] for name in ("extended", "box and band", "boxed frame")]
CASING = (PieceKind.SIDE_CASING, PieceKind.HEAD_CASING, PieceKind.BOTTOM_CASING)
DOORS = [STYLED[name] for name in ("hung left", "hung right")]


def shapes(built: Built, *kinds: PieceKind) -> list[tuple[PlacedOutline, Polygon]]:
    return [(one, Polygon(one.outline)) for one in placed_pieces(built) if one.piece.kind in kinds]


def opening(built: Built) -> Polygon:
    return Polygon([(float(x), float(y)) for x, y in built.frame.vertices])


@pytest.mark.parametrize("built", STYLED.values(), ids=STYLED)
def test_a_return_lies_behind_the_end_it_closes(built: Built) -> None:
    for one, shape in shapes(built, *RETURNS):
        body = unary_union([found for _, found in shapes(built, RETURNS[one.piece.kind])])
        assert body.buffer(1e-9).contains(shape), one.piece.title
        left, _, right, _ = body.bounds
        ends = shape.bounds[0] - left if one.piece.side == "left" else right - shape.bounds[2]
        assert ends == pytest.approx(0), one.piece.title
        assert shape.bounds[2] - shape.bounds[0] == pytest.approx(float(one.piece.overall)), (
            "as deep as it is long"
        )


@pytest.mark.parametrize("built", EXTENDED, ids=lambda built: built.opening.mark)
def test_extension_boards_are_a_box_round_the_opening_that_the_casing_covers_to_its_reveal(
    built: Built,
) -> None:
    boards = shapes(built, PieceKind.JAMB_EXTENSION)
    extension = built.opening.trim.extension
    assert extension is not None
    assert len(boards) == sum(piece.kind is PieceKind.JAMB_EXTENSION for piece in built.pieces) >= 3
    frame = opening(built)
    for one, board in boards:
        assert board.intersection(frame).area < 1e-9
        assert board.distance(frame) == pytest.approx(float(extension.reveal))
        assert math.dist(*one.inner) == pytest.approx(float(one.piece.short_point)), one.piece.title
        assert math.dist(*one.outer) == pytest.approx(float(one.piece.long_point)), one.piece.title
        # What shows of its edge is the trim's own reveal.
        casing = unary_union([found for _, found in shapes(built, *CASING)])
        seen = board.difference(casing).area / float(one.piece.long_point)
        assert seen == pytest.approx(float(built.opening.trim.reveal), rel=0.05), one.piece.title
    for index, (one, board) in enumerate(boards):
        for other, another in boards[index + 1 :]:
            assert board.intersection(another).area < 1e-9, f"{one.piece.title} on {other.piece.title}"
    assert unary_union([board for _, board in boards]).geom_type == "Polygon", "its boards touch"


@pytest.mark.parametrize("built", DOORS, ids=lambda built: built.opening.mark)
def test_a_doors_jamb_stands_round_its_opening_and_its_stops_within(built: Built) -> None:
    frame = opening(built)
    legs = shapes(built, PieceKind.JAMB_LEG)
    assert len(legs) == 2
    for one, leg in (*legs, *shapes(built, PieceKind.HEAD_JAMB)):
        assert leg.intersection(frame).area < 1e-9, one.piece.title
        assert leg.distance(frame) < 1e-9, one.piece.title
        assert max(math.dist(*one.inner), math.dist(*one.outer)) == pytest.approx(float(one.piece.overall))
    stops = shapes(built, PieceKind.DOOR_STOP)
    assert len(stops) == 3
    for one, stop in stops:
        assert frame.buffer(1e-9).contains(stop), one.piece.title
    assert sum(stop.area for _, stop in stops) == pytest.approx(unary_union([stop for _, stop in stops]).area)
    assert unary_union([stop for _, stop in stops]).geom_type == "Polygon", "they meet at the head"


@pytest.mark.parametrize("built", DOORS, ids=lambda built: built.opening.mark)
def test_the_hinged_leg_stands_where_the_door_hangs_with_its_hinges_marked(built: Built) -> None:
    hung = built.opening.readings.door.hinge_side  # type: ignore[union-attr]
    (leg,) = [one for one, _ in shapes(built, PieceKind.JAMB_LEG) if one.piece.side == "hinge"]
    assert (leg.inner[0][0] > 1) is (hung == "right")
    heights = sorted(mark[0][1] for mark in leg.marks)
    assert heights == sorted(float(mark.at) for mark in leg.piece.marks)


def test_a_leveling_strip_is_deep_where_the_sill_lies_low() -> None:
    built = STYLED["sloping sill"]
    ((one, shape),) = shapes(built, PieceKind.TAPERED_SHIM)
    stool = next(piece for piece in built.pieces if piece.kind is PieceKind.STOOL)
    assert shape.bounds[3] == pytest.approx(-float(stool.thickness))
    assert shape.area == pytest.approx(float(one.piece.overall * one.piece.width) / 2)
    assert shape.centroid.x < float(one.piece.overall) / 2
