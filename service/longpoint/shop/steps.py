"""The cuts of a blank, as it is cut from the free end of its stick, and of its pieces afterwards."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import zip_longest

from msgspec.structs import replace

from longpoint.geometry import End
from longpoint.lengths import Fraction, Real, Rounding, round_to
from longpoint.shop.operations import MarkFrom, OperationKind, Setting, Tool
from longpoint.shop.saw import Saw
from longpoint.shop.saw_settings import (
    SQUARE,
    angled,
    end_setting,
    left_end,
    long_edge,
    lying_setting,
    right_end,
)
from longpoint.shop.saw_step import SawStep, Work, cut_step
from longpoint.shop.sticks import Blank, PieceToMake, StickSection, WorkStick
from longpoint.stock import Placed, eaten

ZERO = Fraction(0)
ACROSS_FACE = {"outer": "inner", "inner": "outer"}


class Rest:
    """What is left of a stick, or of a part of it: its name, whether its free end is square, and what lies there before
    the next piece."""

    def __init__(self, work: Work, waste: Fraction) -> None:
        self.work = work
        self.square = True
        self.waste = waste


class Bench:
    """Makes steps of a house's sticks."""

    def __init__(self, rounding: Rounding, saw: Saw) -> None:
        self.rounding = rounding
        self.saw = saw

    def round(self, length: Real) -> Fraction:
        return round_to(length, self.rounding)

    def is_short(self, blank: Blank) -> bool:
        """Whether a piece of it is too short to hold."""
        return any(piece.length < self.saw.smallest_held for piece in blank.pieces)

    def rip_stick(self, stick: WorkStick, work: Work) -> Iterator[SawStep]:
        """A whole stick whose pieces all have one width."""
        if stick.rip is not None:
            setting = Setting(Tool.TABLE_SAW, fence=stick.rip)
            yield cut_step(OperationKind.RIP_STICK, setting, work, stick, stick.pieces, length=stick.length)

    def squared(self, stick: WorkStick, section: StickSection, blank: Blank, rest: Rest) -> Iterator[SawStep]:
        """The free end of a stick made square for its next piece, what lies before that cut off with it."""
        if rest.square and not rest.waste:
            return
        beyond_defect = section.place > 0 and rest.waste > 0
        yield cut_step(
            OperationKind.CUT_OUT if beyond_defect else OperationKind.SQUARE_END,
            SQUARE,
            rest.work,
            stick,
            blank.pieces[:1],
            takes=rest.waste,
            mark=self.round(rest.waste) if rest.waste else None,
            mark_from=MarkFrom.FREE_END if rest.waste else None,
        )
        rest.square, rest.waste = True, ZERO

    def divided(self, stick: WorkStick, section: StickSection, work: Work) -> SawStep:
        """A stick cut apart where a section begins, so that each piece can be cut by itself."""
        return cut_step(
            OperationKind.CUT_OUT,
            SQUARE,
            work,
            stick,
            section.blanks[0].pieces[:1],
            mark=self.round(section.begin),
            mark_from=MarkFrom.LEFT_END,
        )

    def crosscut(self, stick: WorkStick, blank: Blank, rest: Rest) -> SawStep:
        """A piece cut off square at both ends, whatever its ends will be."""
        (piece,) = blank.pieces
        return cut_step(
            OperationKind.CUT_OFF,
            SQUARE,
            rest.work,
            stick,
            blank.pieces,
            takes=piece.length + stick.kerf,
            length=piece.length,
            placed=blank.placed[0],
            mark=piece.length,
            mark_from=MarkFrom.SQUARE_END,
        )

    def along(self, stick: WorkStick, section: StickSection, blank: Blank, rest: Rest) -> Iterator[SawStep]:
        """The cuts of a blank at the free end of its stick, one after the other."""
        yield from self._first_end(stick, section, blank, rest)
        pairs = zip_longest(zip(blank.pieces, blank.placed, strict=True), blank.placed[1:])
        for at, ((piece, placed), after) in enumerate(pairs):
            pieces = blank.pieces[at : at + 2] if after else (piece,)
            yield self._cut_off(stick, section, pieces, placed, after, rest)

    def _first_end(
        self, stick: WorkStick, section: StickSection, blank: Blank, rest: Rest
    ) -> Iterator[SawStep]:
        piece, placed = blank.pieces[0], blank.placed[0]
        end = left_end(piece, placed)
        if not self.in_place(end) or self.ripped_first(stick, piece):
            yield from self.squared(stick, section, blank, rest)
            return
        yield cut_step(
            OperationKind.ANGLED_END,
            lying_setting(end, placed, self.saw),
            rest.work,
            stick,
            (piece,),
            takes=rest.waste,
            end=end,
            placed=placed,
            mark=self.round(rest.waste) if rest.waste else None,
            mark_from=MarkFrom.FREE_END if rest.waste else None,
            mark_edge=long_edge(end),
            careful=piece.length < self.saw.smallest_held,
            # Its stick is as wide as the board the return belongs to: the rest of that is another piece.
            stops_after=self.round(piece.piece.width) if end.long_edge == "front" else None,
        )
        rest.waste = ZERO

    def _cut_off(
        self,
        stick: WorkStick,
        section: StickSection,
        pieces: tuple[PieceToMake, ...],
        placed: Placed,
        after: Placed | None,
        rest: Rest,
    ) -> SawStep:
        piece = pieces[0]
        left, right = left_end(piece, placed), right_end(piece, placed)
        if after is not None or self.pieces(stick, section, piece, right):
            kind = OperationKind.ANGLED_CUT_OFF if after is None else OperationKind.SHARED_CUT
            setting, made = lying_setting(right, placed, self.saw), right
            eats = eaten(stick.kerf, float(right.miter), float(right.bevel))
            takes = piece.length + eats if after is None else after.start - placed.start
        else:
            kind, setting, made = OperationKind.CUT_OFF, SQUARE, None
            takes = piece.length + stick.kerf
        left_made = self.in_place(left) and not self.ripped_first(stick, piece)
        mark, mark_from, edge = self._mark(piece, left, made, left_made=left_made)
        rest.square = kind is OperationKind.CUT_OFF
        return cut_step(
            kind,
            setting,
            rest.work,
            stick,
            pieces,
            takes=takes,
            length=piece.length,
            end=made,
            placed=placed,
            mark=mark,
            mark_from=mark_from,
            mark_edge=edge,
            careful=piece.length < self.saw.smallest_held,
        )

    def _mark(
        self, piece: PieceToMake, left: End, right: End | None, *, left_made: bool
    ) -> tuple[Fraction, MarkFrom, str]:
        """The length to mark from the end that is made already, on the edge where the next cut has its long point."""
        measured = right or (left if left_made else None)
        edge = "" if measured is None else long_edge(measured)
        if not left_made:
            return piece.length, MarkFrom.SQUARE_END, edge
        if right is not None and ACROSS_FACE.get(right.long_edge or "") == left.long_edge:
            along = piece.piece.long_point if right.long_edge == "outer" else piece.piece.short_point
            return self.round(along), MarkFrom.SHORT_POINT, edge
        return piece.length, MarkFrom.LONG_POINT, edge

    def in_place(self, end: End) -> bool:
        """Whether an end is angled, and cut while its piece is still part of the stick."""
        return angled(end, self.saw) and end.notch is None

    def ripped_first(self, stick: WorkStick, piece: PieceToMake) -> bool:
        """Whether a piece is cut off square and ripped before it is mitered: its miters are for the width that it has
        then, and the edge that their long points are on is the one that is ripped off."""
        last = piece.rip is None or stick.rip is not None or piece.piece.mitered_width is not None
        return not last and any(self.in_place(end) and end.long_edge == "outer" for end in piece.piece.ends)

    def pieces(self, stick: WorkStick, section: StickSection, piece: PieceToMake, end: End) -> bool:
        """Whether an angled cut is what cuts a piece off its stick: a piece too short to hold is never cut again."""
        if not self.in_place(end) or self.ripped_first(stick, piece):
            return False
        return not stick.square_first or (piece.length < self.saw.smallest_held and not section.tight)

    def angled_later(
        self, stick: WorkStick, section: StickSection, blank: Blank, crosscut: bool = False
    ) -> Iterator[SawStep]:
        """Angled ends still to be made once a blank is cut off, or was cut off square, stopped miters apart."""
        first, last = blank.pieces[0], blank.pieces[-1]
        left, right = left_end(first, blank.placed[0]), right_end(last, blank.placed[-1])
        if (crosscut or self.ripped_first(stick, first)) and self.in_place(left):
            yield self._on_piece(stick, first, left)
        if self.in_place(right) and (crosscut or not self.pieces(stick, section, last, right)):
            yield self._on_piece(stick, last, right)

    def returned_ends(self, stick: WorkStick, blank: Blank) -> Iterator[SawStep]:
        """Miters that stop at a notch."""
        for piece in blank.pieces:
            for end in piece.piece.ends:
                if end.notch is not None and angled(end, self.saw):
                    yield self._on_piece(stick, piece, end)

    def _on_piece(self, stick: WorkStick, piece: PieceToMake, end: End) -> SawStep:
        step = self._own(OperationKind.ANGLED_END, end_setting(end, self.saw), stick, piece, end)
        step = replace(step, mark_edge=long_edge(end))
        if end.notch is None:
            return step
        depth = end.notch.depth if end.notch.end_depth is None else end.notch.end_depth
        return replace(step, stops_after=self.round(piece.piece.width - depth))

    def rips(self, stick: WorkStick, piece: PieceToMake) -> Iterator[SawStep]:
        if stick.rip is None and piece.rip is not None:
            setting = Setting(Tool.TABLE_SAW, fence=piece.rip, taper=piece.taper)
            yield self._own(OperationKind.RIP, setting, stick, piece, None)

    def notches(self, stick: WorkStick, piece: PieceToMake) -> Iterator[SawStep]:
        for end in piece.piece.ends:
            if end.notch is None or end.notch.depth <= 0 or end.notch.length <= 0:
                continue
            far = end.notch.end_depth
            setting = Setting(
                Tool.HAND_SAW,
                notch_depth=self.round(end.notch.depth),
                notch_length=self.round(end.notch.length),
                notch_end_depth=None if far is None else self.round(far),
            )
            yield self._own(OperationKind.NOTCH, setting, stick, piece, end)

    def _own(
        self, kind: OperationKind, setting: Setting, stick: WorkStick, piece: PieceToMake, end: End | None
    ) -> SawStep:
        """A cut on a piece that was cut off before."""
        short = piece.length < self.saw.smallest_held
        return cut_step(
            kind, setting, (piece.name,), stick, (piece,), length=piece.length, end=end, careful=short
        )
