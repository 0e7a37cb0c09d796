"""One straight piece along a side of the frame, from how far it reaches past each corner."""

from __future__ import annotations

from collections.abc import Iterator

from longpoint.geometry.frame.joint import CornerReach
from longpoint.geometry.frame.kernel import saw_angle
from longpoint.geometry.frame.lean import face_run
from longpoint.geometry.frame.sides import CasedSide
from longpoint.geometry.piece import SQUARE, CutKind, End, Hand, Mark, Piece, Step, Tip
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.readings.trim import Casing
from longpoint.lengths import Fraction, Real
from longpoint.texts import Sentence, say

JIG_ANGLE = 50
# An enumeration's member costs more to fetch than to compare.
_LEFT, _RIGHT, _MITER = Hand.LEFT, Hand.RIGHT, CutKind.MITER

# The end a leg starts and finishes at, going counterclockwise round the frame as seen from the room.
_LEG_ENDS = {"right": ("foot", "head"), "left": ("head", "foot")}
_READINGS = {
    "left": "left jamb height",
    "right": "right jamb height",
    "sill": "jamb width",
    "head": "head width",
}


def frame_piece(
    kind: PieceKind,
    me: CasedSide,
    stock: Casing,
    jamb: Real,
    start: CornerReach,
    finish: CornerReach,
    meets: tuple[str, str],
    called: str = "",
) -> Piece:
    """A piece of casing, or of what is mitered like it, along one side.

    Args:
        kind: what the piece is.
        me: the side it lies on.
        stock: what it is cut from.
        jamb: length of that side of the jamb.
        start, finish: how far it reaches past the corners it starts and finishes at.
        meets: the sides it meets there.
        called: its name in words, where it is one of many sides rather than a leg or a head.
    """
    inner = jamb + start.inner + finish.inner
    outer = jamb + start.outer + finish.outer
    sawn: Fraction = stock.width
    start_outer, finish_outer = start.outer, finish.outer
    trimmed = start.mitered is not None or finish.mitered is not None
    if me.ripped_last or trimmed:
        # Ends are cut at the stock's width where a rip comes last.
        sawn = +me.sold if me.ripped_last and me.sold is not None else stock.width
        start_outer, finish_outer = start.at_width(stock.width, sawn), finish.at_width(stock.width, sawn)
    over_start = max(start_outer, start.inner)
    over_finish = max(finish_outer, finish.inner)
    # Other ends go by the side they meet: along a head of many pieces some stand upright or lean outwards.
    starts_at, finishes_at = meets if called else _LEG_ENDS.get(me.name, meets)
    # Outer edge against the fence puts the end a side finishes at on the saw's left.
    ends = (
        _end(finishes_at, _LEFT, finish, finish_outer, sawn),
        _end(starts_at, _RIGHT, start, start_outer, sawn),
    )
    if start.bevel or finish.bevel:
        over_start += max(0.0, face_run(start.bevel, stock.thickness, ends[1].miter))
        over_finish += max(0.0, face_run(finish.bevel, stock.thickness, ends[0].miter))
    return Piece(
        kind=kind,
        side=me.name,
        profile=stock.profile,
        short_point=inner,
        long_point=outer,
        overall=outer
        if over_start is start.outer and over_finish is finish.outer
        else jamb + over_start + over_finish,
        mitered_width=sawn if me.ripped_last else None,
        width=stock.width,
        thickness=stock.thickness,
        ends=ends,
        rip_width=stock.width if me.ripped else None,
        marks=_marks(me.name, jamb, over_finish),
        how=_how(me, jamb, start, finish),
        notes=_notes(
            me, ends, (outer, jamb + start_outer + finish_outer) if me.ripped_last or trimmed else None
        ),
        title=called,
    )


def _end(at: str, on_saw: Hand, reach: CornerReach, outer: Real, width: Fraction) -> End:
    degrees = float(saw_angle(outer - reach.inner, width))
    if not degrees:
        return End(at, on_saw)
    outer_long = degrees > 0
    # The table swings so that the cut runs from the long point back into the piece.
    inward = _RIGHT if on_saw is _LEFT else _LEFT
    return End(
        at,
        on_saw,
        CutKind.COMPOUND if reach.bevel else _MITER,
        miter=degrees if outer_long else -degrees,
        miter_direction=inward if outer_long else on_saw,
        bevel=abs(reach.bevel) if reach.bevel else SQUARE,
        # A blade leaning out over the offcut leaves the face the longer.
        bevel_direction=None if not reach.bevel else on_saw if reach.bevel > 0 else inward,
        long_edge="outer" if outer_long else "inner",
        tip=None if reach.mitered is None else Tip(reach.mitered - reach.outer, reach.trimmed),
    )


def _marks(name: str, jamb: Real, over_finish: Real) -> tuple[Mark, ...]:
    if name == "right":
        return (Mark("underside of head jamb", over_finish),)
    if name == "left":
        return (Mark("underside of head jamb", jamb + over_finish),)
    if name in ("head", "sill"):
        return (Mark("center line of opening", jamb / 2 + over_finish),)
    return ()


def _how(me: CasedSide, jamb: Real, start: CornerReach, finish: CornerReach) -> tuple[Step, ...]:
    name = _READINGS.get(me.name) or f"{me.name} side"
    rule = f"{name}; {start.rule}; {finish.rule}"
    inputs = ((name, jamb), *start.inputs, *finish.inputs)
    if me.set_back:
        inputs = (*inputs, ("extension reveal, counted in the reveal", me.set_back))
    return (Step("length", rule, inputs),)


def _notes(
    me: CasedSide, ends: tuple[End, End], long_points: tuple[Real, Real] | None
) -> tuple[Sentence, ...]:
    """What to know of a piece; `long_points`, as it is put up and as it is mitered, where these differ."""
    notes = tuple(say("note", "casing.sharp-miter", end=end.at) for end in ends if end.miter > JIG_ANGLE)
    if long_points is not None:
        notes += tuple(_shaped_later(me, ends, *long_points))
    elif me.ripped:
        return (*notes, say("note", "casing.ripped"))
    return notes


def _shaped_later(
    me: CasedSide, ends: tuple[End, End], long_point: Real, mitered: Real
) -> Iterator[Sentence]:
    for end in ends:
        if end.tip is not None:
            along, across = end.tip.along, end.tip.across
            yield say("note", "casing.tip", side=me.name, end=end.at, along=along, across=across)
    if me.ripped_last:
        yield say(
            "note",
            "casing.ripped-last",
            side=me.name,
            sold=me.sold,
            mitered=mitered,
            width=me.width,
            long_point=long_point,
        )
    elif me.ripped:
        yield say("note", "casing.ripped")
