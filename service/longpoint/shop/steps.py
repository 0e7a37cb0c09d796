"""What is cut in which phase: from sections and blanks to steps that still lack a place in the sequence."""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache

from longpoint.geometry import CutKind, End, Hand
from longpoint.geometry.value import Value
from longpoint.lengths import Fraction, Real, Rounding, round_to
from longpoint.shop.operations import OperationKind, Setting, Tool
from longpoint.shop.sticks import Blank, Piece, Section, WorkStick

ZERO = Fraction(0)
FREE = Setting(Tool.MITRE_SAW)
"""Square, no stop block: a cut to a mark."""


class SawHabits(Value, frozen=True):
    """The shop's own limits at the saw.

    Attributes:
        smallest_held: inches; a shorter workpiece is not held by hand. Common practice, no source.
        smallest_ripped: inches; a shorter one is not pushed through the table saw by hand. Common practice, no
            source.
        sharpest_mitre: degrees the saw's table turns at most. Common practice, no source.
        angle_step: degrees to which the saw's scale can be set. Common practice, no source.
    """

    smallest_held: Fraction = Fraction(6)
    smallest_ripped: Fraction = Fraction(12)
    sharpest_mitre: Fraction = Fraction(50)
    angle_step: Fraction = Fraction(1, 10)


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


def angle(degrees: Real, step: Fraction) -> Fraction:
    """Degrees as the saw's scale can be set."""
    return round(Fraction(degrees) / step) * step


def squarings(stick: WorkStick) -> Iterator[Step]:
    """Both factory ends of a stick, and its defects sawn out."""
    shown = stick.stick
    if stick.trim > 0:
        yield Step(
            OperationKind.SQUARE_ENDS,
            FREE,
            shown.profile,
            shown.number,
            (),
            length=shown.length,
            mark=stick.trim,
        )
    for begin, end in stick.cut_out:
        yield Step(
            OperationKind.CUT_OUT,
            FREE,
            shown.profile,
            shown.number,
            (),
            length=shown.length,
            mark=begin,
            mark_to=end,
        )


def stick_rip(stick: WorkStick) -> Iterator[Step]:
    """A whole stick whose pieces all have one width."""
    if stick.rip is not None:
        shown = stick.stick
        yield Step(
            OperationKind.RIP_STICK,
            Setting(Tool.TABLE_SAW, fence=stick.rip),
            shown.profile,
            shown.number,
            stick.pieces,
            length=shown.length - 2 * stick.trim if shown.number else None,
        )


def end_setting(end: End, habits: SawHabits) -> Setting:
    """How the saw is set for the end of a piece, its outer edge against the fence."""
    return _end_setting(end.mitre, end.swing, end.bevel, end.tilt, habits.angle_step)


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


def angled(end: End, habits: SawHabits) -> bool:
    """Whether the end needs a cut of its own after the square one."""
    return end.cut is not CutKind.SQUARE and end_setting(end, habits) != FREE


def is_short(blank: Blank, habits: SawHabits) -> bool:
    return not blank.shared and blank.length < habits.smallest_held


def part_offs(blank: Blank, section: Section, habits: SawHabits) -> tuple[Step | None, Step]:
    """A short piece: its first angled end, cut at the free end of the long stick, then the square cut."""
    (piece,) = blank.pieces
    free = next((end for end in piece.part.ends if angled(end, habits)), None)
    first = None
    if free is not None:
        first = Step(
            OperationKind.ANGLED_END,
            end_setting(free, habits),
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


def shared_cuts(blank: Blank, section: Section, rounding: Rounding, habits: SawHabits) -> Iterator[Step]:
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
            Setting(Tool.MITRE_SAW, swing=swing, mitre=angle(end.mitre, habits.angle_step)),
            section.profile,
            section.stick,
            blank.pieces[at - 1 : at + 1],
            length=blank.length,
            mark=round_to(along_fence, rounding),
        )


def angled_ends(blank: Blank, section: Section, habits: SawHabits) -> Iterator[Step]:
    """The angled ends still to be made once the blank is parted and its shared cuts are done."""
    last = len(blank.pieces) - 1
    short = is_short(blank, habits)
    for at, piece in enumerate(blank.pieces):
        done = [False, False]
        if blank.shared:
            turned_about = blank.placed[at].reversed
            done[1 if turned_about else 0] = at > 0
            done[0 if turned_about else 1] = at < last
        open_ends = [
            end for end, made in zip(piece.part.ends, done, strict=True) if not made and angled(end, habits)
        ]
        for end in open_ends[1:] if short else open_ends:
            yield Step(
                OperationKind.ANGLED_END,
                end_setting(end, habits),
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
