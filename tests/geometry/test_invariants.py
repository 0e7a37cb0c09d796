"""What must hold of every opening: nothing is lost to floats on square corners, mirrors mirror, units do not matter."""

from __future__ import annotations

from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from geometry.builders import F, opening, read
from longpoint.geometry import (
    Apron,
    Bottom,
    Built,
    Casing,
    End,
    Hand,
    HeadStyle,
    Opening,
    Piece,
    PlumbSides,
    Polygon,
    Reveals,
    Stool,
    Trim,
    build_opening,
)
from longpoint.lengths import Fraction

sixteenths = st.integers(16 * 12, 16 * 90).map(lambda n: F(n, 16))
small = st.integers(0, 48).map(lambda n: F(n, 64))
widths = st.integers(16, 80).map(lambda n: F(n, 16))
feet = st.sampled_from((Bottom.STOOL, Bottom.CASING, Bottom.FLOOR))


@st.composite
def trims(draw: st.DrawFn, foot: Bottom) -> Trim:
    styles = (HeadStyle.MITERED, HeadStyle.BUTTED)[: 1 if foot is Bottom.CASING else 2]
    casing = Casing(width=draw(widths), thickness=F(5, 8), profile="casing")
    apron = Apron(width=F(5, 2), thickness=draw(widths) / 4, profile="apron")
    return Trim(
        casing,
        draw(small) / 2,
        head_style=draw(st.sampled_from(styles)),
        head_casing=None
        if foot is Bottom.CASING
        else Casing(width=draw(widths), thickness=F(3, 4), profile="head"),
        overhang=draw(small),
        stool=Stool(thickness=F(3, 4), horn=draw(small), nosing=draw(small), profile="stool"),
        apron=apron,
        floor_clearance=draw(small),
    )


@st.composite
def openings(draw: st.DrawFn) -> Opening:
    """An opening with each side its own; two heights in one of three."""
    foot = draw(feet)
    left = draw(sixteenths)
    right = draw(st.sampled_from((left, left, left + F(1, 16), left + F(5, 2))))
    readings = read(PlumbSides(draw(sixteenths), left, right), F(3) + draw(small) / 8, F(3) + draw(small) / 8)
    sides = 4 if foot is Bottom.CASING else 3  # a sill's reveal is refused where nothing is cased there
    own = Reveals(*(draw(st.none() | small.map(lambda n: n / 2)) for _ in range(sides)))
    return Opening("T1", readings, trim=draw(trims(foot)), bottom=foot, reveals=own)


def lengths(piece: Piece) -> list[Any]:
    notches = [value for end in piece.ends if end.notch for value in (end.notch.depth, end.notch.length)]
    return [
        piece.short_point,
        piece.long_point,
        piece.overall,
        piece.width,
        piece.thickness,
        *([] if piece.rip_width is None else [piece.rip_width]),
        *notches,
        *(mark.at for mark in piece.marks),
    ]


@given(given_=openings())
def test_on_square_corners_every_length_stays_exact(given_: Opening) -> None:
    built = build_opening(given_)
    if not built.frame.square:
        return
    for piece in built.pieces:
        assert not any(isinstance(length, float) for length in lengths(piece)), piece.key


@given(given_=openings())
def test_no_piece_is_longer_than_it_takes_of_a_stick(given_: Opening) -> None:
    for piece in build_opening(given_).pieces:
        assert piece.overall >= piece.long_point - 1e-9
        assert piece.overall >= piece.short_point - 1e-9


def mirrored(given_: Opening) -> Opening:
    """The same opening seen in a mirror: left and right change places."""
    shape = given_.outline.shape
    assert isinstance(shape, PlumbSides)
    readings = read(
        PlumbSides(shape.jamb_width, shape.right_jamb_height, shape.left_jamb_height),
        given_.readings.right_depth,
        given_.readings.left_depth,
    )
    own = given_.reveals
    reveals = Reveals(own.right, own.left, own.head, own.sill)
    return Opening(given_.mark, readings, trim=given_.trim, bottom=given_.bottom, reveals=reveals)


OTHER = {Hand.LEFT: Hand.RIGHT, Hand.RIGHT: Hand.LEFT, None: None}


def at_in_mirror(at: str) -> str:
    return {"left": "right", "right": "left"}.get(at, at)


def end_facts(end: End, *, mirror: bool) -> tuple[Any, ...]:
    hand = OTHER if mirror else {each: each for each in OTHER}
    notch = None if end.notch is None else (float(end.notch.depth), float(end.notch.length))
    return (
        at_in_mirror(end.at) if mirror else end.at,
        hand[end.on_saw],
        end.cut,
        round(float(end.miter), 9),
        hand[end.miter_direction],
        float(end.bevel),
        hand[end.bevel_direction],
        end.long_edge,
        notch,
    )


def facts(built: Built, *, mirror: bool) -> dict[str, Any]:
    """What a piece is, by key; told as its mirror image would be where that is asked for."""
    told = {}
    for piece in built.pieces:
        side = at_in_mirror(piece.side) if mirror else piece.side
        ends = [end_facts(end, mirror=mirror) for end in piece.ends]
        told[f"{piece.kind}/{side}"] = (
            [round(float(x), 9) for x in (piece.short_point, piece.long_point, piece.overall, piece.width)],
            ends[::-1] if mirror else ends,
        )
    return told


@given(given_=openings())
def test_a_mirrored_opening_swaps_left_and_right_and_every_swing(given_: Opening) -> None:
    assert facts(build_opening(mirrored(given_)), mirror=True) == facts(build_opening(given_), mirror=False)


def scaled(given_: Opening, by: Fraction) -> Opening:
    """The same opening, every length that many times as long."""
    shape, trim, own = given_.outline.shape, given_.trim, given_.reveals
    assert isinstance(shape, PlumbSides)
    assert trim.stool is not None
    assert trim.apron is not None

    def casing(of: Casing) -> Casing:
        return Casing(width=of.width * by, thickness=of.thickness * by, profile=of.profile)

    def maybe(value: Fraction | None) -> Fraction | None:
        return None if value is None else value * by

    return Opening(
        given_.mark,
        read(
            PlumbSides(shape.jamb_width * by, shape.left_jamb_height * by, shape.right_jamb_height * by),
            maybe(given_.readings.left_depth),
            maybe(given_.readings.right_depth),
            jamb_thickness=given_.readings.jamb_thickness * by,
        ),
        trim=Trim(
            casing(trim.casing),
            trim.reveal * by,
            head_style=trim.head_style,
            head_casing=None if trim.head_casing is None else casing(trim.head_casing),
            overhang=trim.overhang * by,
            stool=Stool(
                thickness=trim.stool.thickness * by,
                horn=trim.stool.horn * by,
                nosing=trim.stool.nosing * by,
                profile="stool",
            ),
            apron=Apron(
                width=trim.apron.width * by,
                thickness=trim.apron.thickness * by,
                ends=trim.apron.ends,
                profile="apron",
            ),
            floor_clearance=trim.floor_clearance * by,
        ),
        bottom=given_.bottom,
        reveals=Reveals(maybe(own.left), maybe(own.right), maybe(own.head), maybe(own.sill)),
        square_gap=given_.square_gap * by,
    )


@given(given_=openings(), by=st.sampled_from((F(5, 127), F(1, 12), F(3))))
def test_an_opening_in_another_unit_gives_the_same_pieces_in_that_unit(given_: Opening, by: Fraction) -> None:
    pairs = zip(build_opening(given_).pieces, build_opening(scaled(given_, by)).pieces, strict=True)
    for piece, other in pairs:
        assert [end.cut for end in piece.ends] == [end.cut for end in other.ends]
        for one, two in zip(lengths(piece), lengths(other), strict=True):
            if isinstance(one, float):
                assert abs(one * float(by) - two) < 1e-9
            else:
                assert one * by == two


@given(
    jamb=st.tuples(sixteenths, sixteenths),
    reveal=small.map(lambda n: n / 2),
)
def test_a_rectangle_given_by_its_sides_is_the_rectangle(
    jamb: tuple[Fraction, Fraction], reveal: Fraction
) -> None:
    width, height = jamb
    trim = Trim(Casing(width=F(5, 2), thickness=F(5, 8), profile="casing"), reveal)
    square = (F(90),) * 4
    polygon = build_opening(
        opening(Polygon((width, height, width, height), square), trim, bottom=Bottom.CASING)
    )
    plain = build_opening(opening(PlumbSides(width, height, height), trim, bottom=Bottom.CASING))
    assert polygon.pieces == plain.pieces
