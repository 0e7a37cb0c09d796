"""A house's openings worked out together: how much of it there may be, and which faults are whose."""

import math

import pytest

from geometry.builders import read
from longpoint.geometry import Bottom, GeometryError, Opening, PlumbSides, Polygon
from longpoint.shop.build import build_openings, cuttings
from longpoint.shop.too_much import MOST_NAMING, MOST_PIECES
from shop.builders import FLAT, TRIM, Entry, F, house_of, stock, window


def framed(*marks: str, count: int = 500) -> tuple[Entry, ...]:
    """Picture frames of four pieces each."""
    readings = read(PlumbSides(F(30), F(40), F(40)))
    return tuple(
        Entry(Opening(mark, readings, trim=FLAT, bottom=Bottom.CASING), count=count) for mark in marks
    )


# 25 times 500 frames are 50,000 pieces; each names its mark of 76 bytes and its profile of 4.
FULL = tuple(f"{number:076}" for number in range(25))


def refused(*entries: Entry) -> list[tuple[tuple[str | int, ...], str]]:
    with pytest.raises(GeometryError) as told:
        build_openings(house_of(entries))
    return [(fault.path, fault.code) for fault in told.value.faults]


def test_as_many_pieces_and_as_long_names_as_may_be_are_worked_out() -> None:
    built = build_openings(house_of(framed(*FULL)))
    pieces = [piece for one in built for _ in range(one.count) for piece in one.built.pieces]
    assert len(pieces) == MOST_PIECES == 50_000
    naming = sum(
        len(one.built.opening.mark) + len(piece.profile)
        for one in built
        for _ in range(one.count)
        for piece in one.built.pieces
    )
    assert naming == MOST_NAMING


def test_one_opening_more_is_too_many_and_is_named() -> None:
    more = framed(*FULL), framed("one more", count=1)
    assert refused(*more[0], *more[1]) == [(("openings", 25, "count"), "too-many-pieces")]


def test_one_byte_more_of_names_is_too_many_and_its_opening_named() -> None:
    first, *rest = FULL
    # The longer mark is the first one's; the limit is passed at the last opening.
    assert refused(*framed(f"{first}+", *rest)) == [(("openings", 24, "mark"), "too-much-naming")]


def test_every_opening_that_cannot_be_built_is_told_at_its_own_place() -> None:
    good, *_ = framed("good")
    no_depth = Opening("bad", read(PlumbSides(F(30), F(40), F(40))), trim=TRIM)
    told = refused(Entry(no_depth), good, Entry(no_depth))
    assert {path[:2] for path, _ in told} == {("openings", 0), ("openings", 2)}


@pytest.mark.parametrize(
    ("shape", "miter"),
    [(PlumbSides(F(30), F(40), F(40)), 45), (Polygon((F(12),) * 8, (F(135),) * 8), 22.5)],
)
def test_a_miter_runs_along_the_stick_by_its_angle(shape: PlumbSides | Polygon, miter: float) -> None:
    frame = Opening("W", read(shape), trim=FLAT, bottom=Bottom.CASING)
    house = house_of([Entry(frame)], stock=(stock("flat"),))
    (cutting,) = cuttings(house, build_openings(house))
    # Casing of 3 1/2.
    run = 3.5 * math.tan(math.radians(miter))
    assert {
        abs(float(end) - run) < 1e-4 for piece in cutting.pieces for end in (piece.left, piece.right)
    } == {True}


def test_a_miter_runs_along_the_stick_at_its_own_end() -> None:
    house = house_of([Entry(window("W1", F(30), F(46)))], stock=(stock("casing"),))
    (cutting,) = cuttings(house, build_openings(house))
    runs = {str(one.key.piece): (one.left, one.right) for one in cutting.pieces}
    # As they lie on the saw: the right leg's head is to the left, the left leg's to the right.
    assert runs == {
        "side_casing/right": (F("2.5"), 0),
        "head_casing": (F("2.5"), F("2.5")),
        "side_casing/left": (0, F("2.5")),
    }
