"""Jamb extensions: boards on the jamb's edge, ripped to what the wall stands proud, tapered where it differs."""

from __future__ import annotations

from longpoint.geometry.frame.joint import CornerReach, miter, stand, under_head
from longpoint.geometry.frame.kernel import ZERO, Corner, Frame, meet, saw_angle
from longpoint.geometry.frame.sides import CasedSide, called_by_number
from longpoint.geometry.piece import CutKind, End, Hand, Piece, Step, Taper
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.readings.inputs import Opening
from longpoint.geometry.readings.trim import BoxCorners, Casing, JambExtension
from longpoint.lengths import Fraction, Real
from longpoint.texts import say

_LEG_ENDS = {"right": ("foot", "head"), "left": ("head", "foot")}
TO_NOTHING = say("note", "extension.tapers")


def extension_pieces(opening: Opening, frame: Frame, sides: tuple[CasedSide, ...]) -> tuple[Piece, ...]:
    """The boards of the box, for every trimmed side where the wall stands proud of the jamb at either corner."""
    extension, wall = opening.trim.extension, opening.outline.wall
    assert extension is not None
    assert wall is not None
    stock = Casing(extension.thickness, extension.thickness, extension.profile)
    boxed = tuple(_boxed(side, extension, stock) for side in sides)
    pieces = []
    for index, side in enumerate(boxed):
        widths = (max(ZERO, wall.proud[index - 1]), max(ZERO, wall.proud[index]))
        if side.casing is not None and any(widths):
            pieces.append(_board(opening, frame, boxed, index, widths))
    return tuple(pieces)


def _boxed(side: CasedSide, extension: JambExtension, stock: Casing) -> CasedSide:
    if side.name == "base":
        return side
    outer = extension.reveal + extension.thickness
    return CasedSide(side.name, extension.reveal, stock, outer, outer)


def _board(
    opening: Opening,
    frame: Frame,
    sides: tuple[CasedSide, ...],
    index: int,
    widths: tuple[Fraction, Fraction],
) -> Piece:
    me, before, after = sides[index], sides[index - 1], sides[(index + 1) % len(sides)]
    extension = opening.trim.extension
    assert extension is not None
    start = _reach(opening, frame.corners[index - 1], me, before, extension.corners)
    finish = _reach(opening, frame.corners[index], me, after, extension.corners)
    jamb = frame.sides[index]
    called = called_by_number(opening, len(sides), "jamb extension", index)
    meets = before.name, after.name
    starts_at, finishes_at = meets if called else _LEG_ENDS.get(me.name, meets)
    inner, outer = jamb + start.inner + finish.inner, jamb + start.outer + finish.outer
    return Piece(
        kind=PieceKind.JAMB_EXTENSION,
        side=me.name,
        profile=extension.profile,
        short_point=inner,
        long_point=outer,
        overall=jamb + max(start.inner, start.outer) + max(finish.inner, finish.outer),
        width=max(widths),
        thickness=extension.thickness,
        rip_width=max(widths),
        # Inner face up and the jamb's edge against the fence puts the end a side starts at on the saw's left.
        ends=(
            _end(starts_at, Hand.LEFT, start, extension.thickness),
            _end(finishes_at, Hand.RIGHT, finish, extension.thickness),
        ),
        how=(
            Step("length", f"{me.name} side; {start.rule}; {finish.rule}", (("side", jamb), *start.inputs)),
            Step(
                "rip_width",
                "how far the wall stands proud of the jamb at each corner",
                ((f"at the {starts_at}", widths[0]), (f"at the {finishes_at}", widths[1])),
            ),
        ),
        taper=None if widths[0] == widths[1] else Taper(*widths),
        notes=(TO_NOTHING,) if min(widths) == 0 else (),
        title=called,
    )


def _reach(
    opening: Opening, at: Corner, mine: CasedSide, theirs: CasedSide, corners: BoxCorners
) -> CornerReach:
    if theirs.casing is None:
        return stand(opening.bottom, at, mine, theirs)
    if corners is BoxCorners.MITERED:
        return miter(at, mine, theirs)
    if mine.name in ("left", "right"):
        return under_head(at, mine, theirs)
    end = meet(at, mine.reveal, theirs.outer)
    inputs = (("extension reveal", theirs.reveal), ("extension thickness", theirs.outer - theirs.reveal))
    return CornerReach(end, end, f"square over the {theirs.name} board: extension reveal + thickness", inputs)


def _end(at: str, on_saw: Hand, reach: CornerReach, thickness: Fraction) -> End:
    """The board's end through its thickness: the joint runs from the inner face to the back."""
    run: Real = reach.outer - reach.inner
    if run == 0:
        return End(at, on_saw)
    degrees = saw_angle(run if run > 0 else -run, thickness)
    back_long = run > 0
    inward = Hand.RIGHT if on_saw is Hand.LEFT else Hand.LEFT
    return End(
        at,
        on_saw,
        CutKind.BEVEL,
        bevel=degrees,
        # The inner face is up: a longer back means the blade's top leans in over the piece.
        bevel_direction=inward if back_long else on_saw,
        long_edge="back" if back_long else "face",
    )
