"""What a piece can be cut again into, held against polygons: cut it by Shapely, and slide the needed piece over it.

A piece's ends run straight from its back to its face, so one solid lies within another just when it does at both.
"""

import math
from collections.abc import Iterator
from itertools import pairwise

from hypothesis import assume, event, given, settings
from hypothesis import strategies as st
from shapely import Polygon
from shapely.affinity import translate

from longpoint.geometry import CutKind
from longpoint.lengths import Fraction
from longpoint.shop.recut import can_be_recut
from longpoint.shop.shape import EndCut, PieceShape, SawnOut, alike

HAIR = 4e-6
NOUGHT = Fraction(0)
Draw = st.DrawFn


def sixteenths(least: int, most: int) -> st.SearchStrategy[Fraction]:
    return st.integers(least, most).map(lambda number: Fraction(number, 16))


def square(**notch: Fraction) -> EndCut:
    depth = notch.get("depth", NOUGHT)
    return EndCut(
        CutKind.SQUARE, 0.0, 0.0, None, depth, notch.get("length", NOUGHT), notch.get("end", depth), None
    )


@st.composite
def casing_ends(draw: Draw) -> EndCut:
    """Square, mitered either way, or mitered and beveled."""
    miter = draw(st.sampled_from((0.0, 22.5, 45.0, 45.02, 44.1, 30.0)))
    if not miter:
        return square()
    edge = draw(st.sampled_from(("outer", "inner")))
    if draw(st.booleans()):
        return EndCut(CutKind.MITER, miter, 0.0, edge, NOUGHT, NOUGHT, NOUGHT, None)
    bevel = draw(st.sampled_from((3.5, 12.0)))
    bevel_direction = draw(st.sampled_from(("left", "right")))
    return EndCut(CutKind.COMPOUND, miter, bevel, edge, NOUGHT, NOUGHT, NOUGHT, bevel_direction)


@st.composite
def apron_ends(draw: Draw, hand: str) -> EndCut:
    """Returned, square, cut back below the stool, or a half of a scarf."""
    kind = draw(st.sampled_from(("face", "back", "square", "top")))
    if kind == "square":
        return square()
    if kind == "top":
        return EndCut(CutKind.MITER, 15.0, 0.0, "top", NOUGHT, NOUGHT, NOUGHT, None)
    outwards = {"left": "left", "right": "right"}[hand]
    inwards = {"left": "right", "right": "left"}[hand]
    bevel_direction = outwards if kind == "face" else inwards
    return EndCut(CutKind.BEVEL, 0.0, 45.0, kind, NOUGHT, NOUGHT, NOUGHT, bevel_direction)


@st.composite
def horns(draw: Draw, hand: str) -> EndCut:
    """A stool's end: notched, its wall in plane or not, its nosing returned or not; or half a scarf.

    A horn is longer than its return is deep.
    """
    kind = draw(st.sampled_from(("square", "square", "front", "scarf")))
    if kind == "scarf":
        return draw(apron_ends(hand).filter(lambda end: end.cut is CutKind.BEVEL))
    depth, length = draw(sixteenths(32, 40)), draw(sixteenths(48, 64))
    far = depth + draw(st.sampled_from((0, 0, 0, Fraction(1, 8), Fraction(-1, 8))))
    if kind == "square":
        return square(depth=depth, length=length, end=far)
    return EndCut(CutKind.MITER, 45.0, 0.0, "front", depth, length, depth, None)


@st.composite
def casings(draw: Draw) -> PieceShape:
    width = draw(st.sampled_from((Fraction(5, 2), Fraction(5, 2), Fraction(9, 4))))
    left, right = draw(casing_ends()), draw(casing_ends())
    return PieceShape(
        "casing", draw(sixteenths(480, 500)), width, Fraction(5, 8), width < 2.5, left, right, None, ()
    )


@st.composite
def aprons(draw: Draw) -> PieceShape:
    width, ripped = draw(
        st.sampled_from(((Fraction(5, 2), False), (Fraction(2), True), (Fraction(9, 4), True)))
    )
    left, right = draw(apron_ends("left")), draw(apron_ends("right"))
    return PieceShape(
        "apron", draw(sixteenths(480, 500)), width, Fraction(5, 8), ripped, left, right, None, ()
    )


@st.composite
def stools(draw: Draw) -> PieceShape:
    length, width = draw(sixteenths(960, 980)), draw(sixteenths(72, 78))
    cutouts = []
    if draw(st.booleans()):
        start, depth = draw(sixteenths(400, 420)), draw(sixteenths(32, 40))
        end = start + draw(sixteenths(60, 70))
        cutouts.append(SawnOut(start, end, depth, depth + draw(st.sampled_from((0, 0, Fraction(1, 8))))))
    left, right = draw(horns("left")), draw(horns("right"))
    return PieceShape("stool", length, width, Fraction(3, 4), True, left, right, None, tuple(cutouts))


@st.composite
def boards(draw: Draw) -> PieceShape:
    """A jamb extension's: ripped, often to a taper."""
    widths = draw(sixteenths(4, 16)), draw(sixteenths(4, 16))
    taper = None if widths[0] == widths[1] or draw(st.booleans()) else widths
    width = max(widths) if taper else widths[0]
    ends = (draw(apron_ends(hand).filter(lambda end: end.long_edge != "top")) for hand in ("left", "right"))
    return PieceShape("board", draw(sixteenths(480, 500)), width, Fraction(3, 4), True, *ends, taper, ())


def nearly(piece: PieceShape) -> st.SearchStrategy[PieceShape]:
    """The same piece, a little shorter, longer or narrower, as after a second reading; its ends as they were."""
    fields = PieceShape.__struct_fields__
    return st.builds(
        lambda by, off: PieceShape(
            **{name: getattr(piece, name) for name in fields}
            | {
                "length": piece.length + by,
                "width": piece.width - (off if piece.ripped and not piece.taper else 0),
            }
        ),
        sixteenths(-24, 4),
        st.sampled_from((NOUGHT, NOUGHT, Fraction(1, 8))),
    )


@st.composite
def pairs(draw: Draw) -> tuple[PieceShape, PieceShape]:
    kind = draw(st.sampled_from((casings(), aprons(), stools(), boards())))
    piece = draw(kind)
    return piece, draw(nearly(piece) if draw(st.booleans()) else kind)


def slices(shape: PieceShape) -> Iterator[Polygon]:
    """The piece as its back and as its face show it, outer edge along y = 0, its left-most point at x = 0."""
    length, width, thick = (float(each) for each in (shape.length, shape.width, shape.thickness))
    for at_face in (False, True):
        left_outer, left_inner = corners(shape.left, width, thick, at_face, "left")
        right_outer, right_inner = corners(shape.right, width, thick, at_face, "right")
        outline = Polygon(
            [(left_outer, 0), (length - right_outer, 0), (length - right_inner, width), (left_inner, width)]
        )
        outline -= gone_at_back(shape)
        for end, x, way in ((shape.left, 0.0, 1), (shape.right, length, -1)):
            if end.long_edge == "front":
                deep = float(end.notch_depth)
                outline -= Polygon([(x, width), (x, deep), (x + way * (width - deep), deep)])
        if shape.taper is not None:
            at_left, at_right = (float(each) for each in shape.taper)
            outline &= Polygon([(0, 0), (length, 0), (length, at_right), (0, at_left)])
        yield outline


def corners(end: EndCut, width: float, thick: float, at_face: bool, hand: str) -> tuple[float, float]:
    """How far inside the farthest point the end lies at the outer and at the inner edge."""
    if end.long_edge == "front":
        return 0.0, 0.0
    run = width * math.tan(math.radians(end.miter))
    lean = thick * math.tan(math.radians(end.bevel)) / math.cos(math.radians(end.miter))
    # The top of the blade cuts the face; leaning out over the offcut it leaves the face the longer.
    face_long = end.bevel_direction == hand
    back = lean if at_face is not face_long else 0.0
    return (run + back, back) if end.long_edge == "inner" else (back, run + back)


def gone_at_back(shape: PieceShape) -> Polygon:
    length, gone = float(shape.length), Polygon()
    stretches = [(each.start, each.end, each.depth, each.end_depth) for each in shape.cutouts or ()]
    left, right = shape.left, shape.right
    if left.notch_length:
        stretches.append((NOUGHT, left.notch_length, left.notch_end or NOUGHT, left.notch_depth))
    if right.notch_length:
        start = shape.length - right.notch_length
        stretches.append((start, shape.length, right.notch_depth, right.notch_end or NOUGHT))
    for start, end, one, other in stretches:
        a, b = (-1.0 if start == 0 else float(start)), (length + 1 if end == shape.length else float(end))
        slope = (float(other) - float(one)) / float(end - start)
        low, high = float(one) + slope * (a - float(start)), float(other) + slope * (b - float(end))
        gone |= Polygon([(a, 0), (b, 0), (b, high), (a, low)])
    return gone


def places(piece: Polygon, need: Polygon) -> Iterator[float]:
    """Every slide that brings a corner of one onto an edge of the other."""
    for corners_of, edges_of, sign in ((need, piece, 1), (piece, need, -1)):
        ring = list(edges_of.exterior.coords)
        for x, y in corners_of.exterior.coords:
            for (x1, y1), (x2, y2) in pairwise(ring):
                if min(y1, y2) - HAIR <= y <= max(y1, y2) + HAIR:
                    spots = (x1, x2) if abs(y2 - y1) < HAIR else (x1 + (x2 - x1) * (y - y1) / (y2 - y1),)
                    yield from (sign * (spot - x) for spot in spots)


def fits(piece: PieceShape, need: PieceShape, off: float) -> bool:
    has, wants = list(slices(piece)), [translate(each, 0, off) for each in slices(need)]
    roomy = [each.buffer(HAIR, join_style="mitre") for each in has]
    tried = {round(place, 7) for one, other in zip(has, wants, strict=True) for place in places(one, other)}
    return any(
        all(room.covers(translate(want, place)) for room, want in zip(roomy, wants, strict=True))
        for place in tried
    )


def snapped(piece: PieceShape, need: PieceShape) -> bool:
    """Whether angles differ by so little that the saw cannot tell, where the service takes one for the other."""
    ends = zip((piece.left, piece.right), (need.left, need.right), strict=True)
    return any(0 < abs(one.miter - other.miter) < 0.05 for one, other in ends)


@settings(max_examples=600, deadline=None)
@given(pair=pairs())
def test_what_is_said_to_be_cut_from_a_piece_lies_within_it_and_what_does_is_not_refused(
    pair: tuple[PieceShape, PieceShape],
) -> None:
    piece, need = pair
    assume(not snapped(piece, need))
    assume(
        all(slice_.is_valid and slice_.geom_type == "Polygon" for shape in pair for slice_ in slices(shape))
    )
    rips = piece.width == need.width or (piece.ripped and need.ripped and piece.width > need.width)
    tapered = piece.taper is not None or need.taper is not None
    off = 0.0 if tapered else float(piece.width - need.width)
    wanted = rips and fits(piece, need, off)
    event(f"{piece.profile}: {'fits' if wanted else 'does not fit'}")
    assert can_be_recut(piece, need) is wanted


def apron(length: str, tilts: tuple[str, str] = ("left", "right")) -> PieceShape:
    edges = {("left", "left"): "face", ("right", "right"): "face"}
    left, right = (
        EndCut(
            CutKind.BEVEL,
            0.0,
            45.0,
            edges.get((hand, bevel_direction), "back"),
            NOUGHT,
            NOUGHT,
            NOUGHT,
            bevel_direction,
        )
        for hand, bevel_direction in zip(("left", "right"), tilts, strict=True)
    )
    return PieceShape("apron", Fraction(length), Fraction(5, 2), Fraction(5, 8), False, left, right, None, ())


def test_a_bevelled_apron_is_bevelled_anew_an_eighth_shorter() -> None:
    """One end stays; the other's cut moves along by the eighth, and loses none of the bevel's 5/8 in."""
    assert can_be_recut(apron("36"), apron("287/8"))
    assert not can_be_recut(apron("36"), apron("577/16"))
    # Bevelled the other way, both backs lack the thickness that both faces have to spare.
    assert not can_be_recut(apron("36"), apron("287/8", ("right", "left")))
    assert can_be_recut(apron("36"), apron("139/4", ("right", "left")))


def test_pieces_cut_before_their_cutouts_were_kept_are_taken_for_what_they_were_cut_as() -> None:
    whole = PieceShape("stool", Fraction(40), Fraction(5), Fraction(3, 4), True, square(), square(), None, ())
    fields = {name: getattr(whole, name) for name in PieceShape.__struct_fields__}
    sawn = SawnOut(Fraction(10), Fraction(14), Fraction(3), Fraction(3))
    kept, old = PieceShape(**fields | {"cutouts": (sawn,)}), PieceShape(**fields | {"cutouts": None})
    assert alike(old, kept)
    assert not alike(whole, kept)
    assert can_be_recut(whole, kept)
    assert not can_be_recut(kept, whole)
