"""Pieces that others partly hide lie where they are built: on the jamb, under the casing, behind the end they close."""

import math

import pytest
from shapely.geometry import Polygon
from shapely.ops import unary_union

from longpoint.geometry import Built, PartKind
from longpoint.sheets.place import Placed, placed_parts
from longpoint.sheets.place_behind import RETURNS
from sheets.styles import STYLED

EXTENDED = [STYLED[name] for name in ("extended", "box and band", "boxed frame")]
CASING = (PartKind.CASING_LEG, PartKind.CASING_HEAD, PartKind.CASING_SILL)
DOORS = [STYLED[name] for name in ("hung left", "hung right")]


def shapes(built: Built, *kinds: PartKind) -> list[tuple[Placed, Polygon]]:
    return [(one, Polygon(one.outline)) for one in placed_parts(built) if one.part.kind in kinds]


def opening(built: Built) -> Polygon:
    return Polygon([(float(x), float(y)) for x, y in built.frame.vertices])


@pytest.mark.parametrize("built", STYLED.values(), ids=STYLED)
def test_a_return_lies_behind_the_end_it_closes(built: Built) -> None:
    for one, shape in shapes(built, *RETURNS):
        body = unary_union([found for _, found in shapes(built, RETURNS[one.part.kind])])
        assert body.buffer(1e-9).contains(shape), one.part.title
        left, _, right, _ = body.bounds
        ends = shape.bounds[0] - left if one.part.side == "left" else right - shape.bounds[2]
        assert ends == pytest.approx(0), one.part.title
        assert shape.bounds[2] - shape.bounds[0] == pytest.approx(float(one.part.overall)), (
            "as deep as it is long"
        )


@pytest.mark.parametrize("built", EXTENDED, ids=lambda built: built.opening.mark)
def test_extension_boards_are_a_box_round_the_opening_that_the_casing_covers_to_its_reveal(
    built: Built,
) -> None:
    boards = shapes(built, PartKind.JAMB_EXTENSION)
    extension = built.opening.trim.extension
    assert extension is not None
    assert len(boards) == sum(part.kind is PartKind.JAMB_EXTENSION for part in built.parts) >= 3
    frame = opening(built)
    for one, board in boards:
        assert board.intersection(frame).area < 1e-9
        assert board.distance(frame) == pytest.approx(float(extension.reveal))
        assert math.dist(*one.inner) == pytest.approx(float(one.part.short_point)), one.part.title
        assert math.dist(*one.outer) == pytest.approx(float(one.part.long_point)), one.part.title
        # What shows of its edge is the trim's own reveal.
        casing = unary_union([found for _, found in shapes(built, *CASING)])
        seen = board.difference(casing).area / float(one.part.long_point)
        assert seen == pytest.approx(float(built.opening.trim.reveal), rel=0.05), one.part.title
    for index, (one, board) in enumerate(boards):
        for other, another in boards[index + 1 :]:
            assert board.intersection(another).area < 1e-9, f"{one.part.title} on {other.part.title}"
    assert unary_union([board for _, board in boards]).geom_type == "Polygon", "its boards touch"


@pytest.mark.parametrize("built", DOORS, ids=lambda built: built.opening.mark)
def test_a_doors_jamb_stands_round_its_opening_and_its_stops_within(built: Built) -> None:
    frame = opening(built)
    legs = shapes(built, PartKind.JAMB_LEG)
    assert len(legs) == 2
    for one, leg in (*legs, *shapes(built, PartKind.HEAD_JAMB)):
        assert leg.intersection(frame).area < 1e-9, one.part.title
        assert leg.distance(frame) < 1e-9, one.part.title
        assert max(math.dist(*one.inner), math.dist(*one.outer)) == pytest.approx(float(one.part.overall))
    stops = shapes(built, PartKind.DOOR_STOP)
    assert len(stops) == 3
    for one, stop in stops:
        assert frame.buffer(1e-9).contains(stop), one.part.title
    assert sum(stop.area for _, stop in stops) == pytest.approx(unary_union([stop for _, stop in stops]).area)
    assert unary_union([stop for _, stop in stops]).geom_type == "Polygon", "they meet at the head"


@pytest.mark.parametrize("built", DOORS, ids=lambda built: built.opening.mark)
def test_the_hinged_leg_stands_where_the_door_hangs_with_its_hinges_marked(built: Built) -> None:
    hung = built.opening.readings.door.hinge_side  # type: ignore[union-attr]
    (leg,) = [one for one, _ in shapes(built, PartKind.JAMB_LEG) if one.part.side == "hinge"]
    assert (leg.inner[0][0] > 1) is (hung == "right")
    heights = sorted(mark[0][1] for mark in leg.marks)
    assert heights == sorted(float(mark.at) for mark in leg.part.marks)


def test_a_levelling_strip_is_deep_where_the_sill_lies_low() -> None:
    built = STYLED["sloping sill"]
    ((one, shape),) = shapes(built, PartKind.LEVELLING_STRIP)
    stool = next(part for part in built.parts if part.kind is PartKind.STOOL)
    assert shape.bounds[3] == pytest.approx(-float(stool.thickness))
    assert shape.area == pytest.approx(float(one.part.overall * one.part.width) / 2)
    assert shape.centroid.x < float(one.part.overall) / 2
