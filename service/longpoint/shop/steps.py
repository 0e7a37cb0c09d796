"""What is cut in which phase: from sections and blanks to steps that still lack a place in the sequence."""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache

from longpoint.geometry import CutKind, End, Hand
from longpoint.lengths import Fraction, Real, Rounding, round_to
from longpoint.shop.operations import OperationKind, Setting, Tool
from longpoint.shop.rates import as_written
from longpoint.shop.saw import Saw
from longpoint.shop.sticks import Blank, Piece, Section, WorkStick
from longpoint.values import Angle, Value

ZERO = Fraction(0)
FREE = Setting(Tool.MITRE_SAW)
"""Square, no stop block: a cut to a mark."""


class Step(Value, frozen=True):
    """A cut and its setting.

    Attributes:
        pieces: what it makes or works on.
        section: what it is cut from, for a part_off, a crosscut or a squared stick's held length; else None.
        length: what it takes off the section, kerf apart; for other cuts the workpiece's length.
    """

    kind: OperationKind
    setting: Setting
    profile: str
    stick: int
    pieces: tuple[Piece, ...]
    section: Section | None = None
    length: Fraction | None = None
    end: End | None = None
    mark: Fraction | None = None
    mark_to: Fraction | None = None


def angle(degrees: Real, step: Fraction) -> Angle:
    """Degrees as the saw's scale can be set."""
    return Angle(round(Fraction(degrees) / step) * step)


def squarings(stick: WorkStick) -> Iterator[Step]:
    """Both factory ends of a stick, and its defects sawn out."""
    if stick.trim > 0:
        yield Step(
            OperationKind.SQUARE_ENDS,
            FREE,
            stick.profile,
            stick.number,
            (),
            length=stick.length,
            mark=stick.trim,
        )
    for begin, end in stick.cut_out:
        yield Step(
            OperationKind.CUT_OUT,
            FREE,
            stick.profile,
            stick.number,
            (),
            length=stick.length,
            mark=begin,
            mark_to=end,
        )


def stick_rip(stick: WorkStick) -> Iterator[Step]:
    """A whole stick whose pieces all have one width."""
    if stick.rip is not None:
        yield Step(
            OperationKind.RIP_STICK,
            Setting(Tool.TABLE_SAW, fence=stick.rip),
            stick.profile,
            stick.number,
            stick.pieces,
            length=stick.length - 2 * stick.trim if stick.number else None,
        )


def end_setting(end: End, saw: Saw) -> Setting:
    """How the saw is set for the end of a piece, its outer edge against the fence."""
    return _end_setting(end.mitre, end.swing, end.bevel, end.tilt, as_written(saw.angle_step))


@lru_cache(maxsize=1024)
def _end_setting(mitre: Real, swing: Hand | None, bevel: Real, tilt: Hand | None, step: Fraction) -> Setting:
    """A house has few settings and many ends."""
    turned, tilted = angle(mitre, step), angle(bevel, step)
    return Setting(
        Tool.MITRE_SAW,
        swing=swing if turned else None,
        mitre=turned,
        tilt=tilt if tilted else None,
        bevel=tilted,
    )


def angled(end: End, saw: Saw) -> bool:
    """Whether the end needs a cut of its own after the square one."""
    return end.cut is not CutKind.SQUARE and end_setting(end, saw) != FREE


def is_short(blank: Blank, saw: Saw) -> bool:
    return not blank.shared and blank.length < saw.smallest_held


def part_offs(blank: Blank, section: Section, saw: Saw) -> tuple[Step | None, Step]:
    """A short piece: its first angled end, cut at the free end of the long stick, then the square cut."""
    (piece,) = blank.pieces
    free = next((end for end in piece.part.ends if angled(end, saw)), None)
    first = None
    if free is not None:
        first = Step(
            OperationKind.ANGLED_END,
            end_setting(free, saw),
            section.profile,
            section.stick,
            (piece,),
            section,
            ZERO,
            free,
        )
    parting = Step(
        OperationKind.PART_OFF,
        FREE,
        section.profile,
        section.stick,
        (piece,),
        section,
        blank.length,
        mark=blank.length,
    )
    return first, parting


def crosscut(blank: Blank, section: Section) -> Step:
    return Step(
        OperationKind.CROSSCUT,
        Setting(Tool.MITRE_SAW, stop=blank.length),
        section.profile,
        section.stick,
        blank.pieces,
        section,
        blank.length,
    )


def shared_cuts(blank: Blank, section: Section, rounding: Rounding, saw: Saw) -> Iterator[Step]:
    """The angled cuts inside a row of turned pieces, each marked from the row's left end along the fence."""
    if not blank.shared:
        return
    origin = blank.placed[0].start
    for at in range(1, len(blank.pieces)):
        piece, place = blank.pieces[at - 1], blank.placed[at - 1]
        end = piece.part.ends[0 if place.reversed else 1]
        # A turned piece's long edge lies away from the fence, where the cut leans the other way.
        swing = Hand.RIGHT if place.turned else Hand.LEFT
        along_fence = place.end - origin - (place.right if place.turned else ZERO)
        yield Step(
            OperationKind.SHARED_CUT,
            Setting(Tool.MITRE_SAW, swing=swing, mitre=angle(end.mitre, as_written(saw.angle_step))),
            section.profile,
            section.stick,
            blank.pieces[at - 1 : at + 1],
            length=blank.length,
            mark=round_to(along_fence, rounding),
        )


def angled_ends(blank: Blank, section: Section, saw: Saw) -> Iterator[Step]:
    """The angled ends still to be made once the blank is parted and its shared cuts are done."""
    last = len(blank.pieces) - 1
    short = is_short(blank, saw)
    for at, piece in enumerate(blank.pieces):
        done = [False, False]
        if blank.shared:
            turned_about = blank.placed[at].reversed
            done[1 if turned_about else 0] = at > 0
            done[0 if turned_about else 1] = at < last
        open_ends = [
            end for end, made in zip(piece.part.ends, done, strict=True) if not made and angled(end, saw)
        ]
        for end in open_ends[1:] if short else open_ends:
            yield Step(
                OperationKind.ANGLED_END,
                end_setting(end, saw),
                section.profile,
                section.stick,
                (piece,),
                length=piece.length,
                end=end,
            )


def piece_rips(piece: Piece, section: Section) -> Iterator[Step]:
    if piece.rip is not None:
        setting = Setting(Tool.TABLE_SAW, fence=piece.rip, taper=piece.taper)
        yield Step(OperationKind.RIP, setting, section.profile, section.stick, (piece,), length=piece.length)


def notches(piece: Piece, section: Section, rounding: Rounding) -> Iterator[Step]:
    for end in piece.part.ends:
        if end.notch is None or end.notch.depth <= 0 or end.notch.length <= 0:
            continue
        setting = Setting(
            Tool.HAND_SAW,
            notch_depth=round_to(end.notch.depth, rounding),
            notch_length=round_to(end.notch.length, rounding),
            notch_end_depth=None if end.notch.end_depth is None else round_to(end.notch.end_depth, rounding),
        )
        yield Step(
            OperationKind.NOTCH,
            setting,
            section.profile,
            section.stick,
            (piece,),
            length=piece.length,
            end=end,
        )
