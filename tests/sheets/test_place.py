"""Parts put on the wall meet: joints close, reveals are even, lengths are the parts' own."""

import math
from itertools import pairwise

import pytest
from shapely.geometry import Polygon

from longpoint.geometry import Built, PartKind
from longpoint.sheets.place import placed_parts
from sheets.openings import EVERY

CASING = (PartKind.CASING_LEG, PartKind.CASING_HEAD, PartKind.CASING_SILL)


@pytest.mark.parametrize("built", EVERY.values(), ids=EVERY)
def test_every_part_is_placed(built: Built) -> None:
    assert [one.number for one in placed_parts(built)] == list(range(1, len(built.parts) + 1))


@pytest.mark.parametrize("built", EVERY.values(), ids=EVERY)
def test_no_piece_lies_on_another_or_on_the_opening(built: Built) -> None:
    shapes = [(one.part.title, Polygon(one.outline)) for one in placed_parts(built) if len(one.outline) > 2]
    shapes.append(("opening", Polygon([(float(x), float(y)) for x, y in built.frame.vertices])))
    for index, (name, shape) in enumerate(shapes):
        for other_name, other in shapes[index + 1 :]:
            # Legs on plinth blocks or a clearance stand inside the opening's own height, never its width.
            assert shape.intersection(other).area < 1e-6, f"{name} on {other_name}"


@pytest.mark.parametrize("built", EVERY.values(), ids=EVERY)
def test_casing_closes_round_the_opening(built: Built) -> None:
    casing = [Polygon(one.outline) for one in placed_parts(built) if one.part.kind in CASING]
    for one, other in pairwise(casing):
        assert one.distance(other) < 1e-6


@pytest.mark.parametrize("built", EVERY.values(), ids=EVERY)
def test_edges_are_as_long_as_the_parts_say(built: Built) -> None:
    for one in placed_parts(built):
        if one.part.kind in CASING:
            assert one.inner is not None
            assert one.outer is not None
            assert math.dist(*one.inner) == pytest.approx(float(one.part.short_point))
            assert math.dist(*one.outer) == pytest.approx(float(one.part.long_point))
