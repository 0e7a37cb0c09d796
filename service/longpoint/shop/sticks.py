"""The plan's sticks as the saw meets them: sections free of defects, each a row of blanks, left to right.

A blank is one piece or, on stock that is turned over, several in a row whose shared cuts piece one and begin the next.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping
from itertools import pairwise

from longpoint.geometry import Piece
from longpoint.lengths import Fraction, Rounding, round_to
from longpoint.shop.build import CutList, HouseKey
from longpoint.shop.house import House
from longpoint.shop.operations import PieceName
from longpoint.stock import Layout, Placed, Stretch
from longpoint.values import Value

ZERO = Fraction(0)


class PieceToMake(Value, frozen=True):
    """One piece to make. Attributes: name; piece; length, rip and taper, on the marks of the rounding."""

    name: PieceName
    piece: Piece
    length: Fraction
    rip: Fraction | None
    taper: tuple[Fraction, Fraction] | None = None


class Blank(Value, frozen=True):
    """Pieces with shared cuts between them, or one by itself. Attributes: pieces, and their places on the stick."""

    pieces: tuple[PieceToMake, ...]
    placed: tuple[Placed, ...]

    @property
    def eats(self) -> Fraction:
        """What the cut that cuts it off its stick takes at most."""
        return self.placed[-1].eats

    @property
    def length(self) -> Fraction:
        """From its left-most point to its right-most."""
        return self.placed[-1].end - self.placed[0].start


class StickSection(Value, frozen=True):
    """A stretch of a stick between its ends and its defects.

    Attributes:
        place: its number on the stick, from 0.
        begin: where its first piece starts, from the stick's left end.
        room: from there to where its last piece must have ended.
        waste: to cut off before its first piece, when what lies before it is cut.
        end: where the stick, cut apart at its defects, ends; None for pieces that no plan lays on a stick.
        blanks: from left to right.
        taken: what they take of it, with what every cut eats.
        tight: whether they do not fit in every order.
    """

    place: int
    begin: Fraction
    room: Fraction
    waste: Fraction
    end: Fraction | None
    blanks: tuple[Blank, ...]
    taken: Fraction
    tight: bool

    def fits(self, last: Blank) -> bool:
        """Whether its blanks fit in an order that ends with this one, whose own cut may lie past the room."""
        return self.taken - last.eats <= self.room


class WorkStick(Value, frozen=True):
    """A stick with its sections.

    Attributes:
        profile: what it is.
        name: its name; "" for pieces that no plan lays on a stick.
        length: uncut.
        rip: the width to rip the whole stick to; None when its pieces are not all of one.
        kerf: what a square cut eats.
        square_first: pieces are cut off square and mitered after that.
    """

    profile: str
    name: str
    length: Fraction
    rip: Fraction | None
    kerf: Fraction
    square_first: bool
    sections: tuple[StickSection, ...]

    @property
    def blanks(self) -> Iterator[Blank]:
        return (blank for section in self.sections for blank in section.blanks)

    @property
    def pieces(self) -> tuple[PieceToMake, ...]:
        return tuple(piece for blank in self.blanks for piece in blank.pieces)


def work_sticks(cut_list: CutList) -> list[WorkStick]:
    """Every stick of every plan, then the pieces no plan holds, in one section a profile with no stick."""
    house = cut_list.house
    waiting, defects = _pieces(cut_list), defects_of(house)
    sticks: list[WorkStick] = []
    for plan in cut_list.plans:
        square_first = next(one.square_first for one in house.stock if one.profile == plan.profile)
        rows = ((layout, keys) for layout in plan.layouts for keys in layout.keys)
        for name, (layout, keys) in zip(cut_list.stick_names[plan.profile], rows, strict=True):
            pieces = tuple(waiting[key].pop() for key in keys)
            free = sections(house, layout, pieces, defects.get((plan.profile, layout.stick), ()))
            rip = _one_rip(pieces)
            sticks.append(WorkStick(plan.profile, name, +layout.length, rip, +house.kerf, square_first, free))
    left = [piece for queue in waiting.values() for piece in reversed(queue)]
    return sticks + _without_plan(left, +house.kerf)


def _pieces(cut_list: CutList) -> dict[HouseKey, list[PieceToMake]]:
    """Every piece by its key in the plans, the first instance last."""
    house = cut_list.house
    pieces: dict[HouseKey, list[PieceToMake]] = {}
    for index, one in enumerate(cut_list.openings):
        for piece in one.built.pieces:
            key = HouseKey(index, piece.key)
            pieces[key] = [
                work_piece(one.built.opening.mark, piece, instance, house.rounding)
                for instance in reversed(cut_list.instances(key, one.count))
            ]
    return pieces


def work_piece(mark: str, piece: Piece, instance: int, rounding: Rounding) -> PieceToMake:
    """A piece to make, its lengths on the marks of the rounding."""
    rip = None if piece.rip_width is None else round_to(piece.rip_width, rounding)
    taper = None
    if piece.taper is not None:
        taper = round_to(piece.taper[0], rounding), round_to(piece.taper[1], rounding)
    return PieceToMake(
        PieceName(mark, piece.key, instance), piece, round_to(piece.overall, rounding), rip, taper
    )


Defects = Mapping[tuple[str, str], tuple[Stretch, ...]]


def defects_of(house: House) -> Defects:
    """The defects of the house's stock, by profile and by the name that plans give the stick; those that have any."""
    found: dict[tuple[str, str], tuple[Stretch, ...]] = {}
    for stock in house.stock:
        if any(one.defects for one in stock.sticks) or any(one.defects for one in stock.lengths_on_hand):
            found |= {(stock.profile, one.key): one.defects for one in stock.kinds if one.defects}
            found |= {(stock.profile, one.key): one.defects for one in stock.each_on_hand if one.defects}
    return found


def sections(
    house: House, layout: Layout, pieces: tuple[PieceToMake, ...], defects: tuple[Stretch, ...]
) -> tuple[StickSection, ...]:
    """Blanks follow one another, what the cut between them eats apart; where there is more, there is a defect."""
    trim = +house.end_trim
    free = ZERO  # how far the stick is cut up
    begins: list[tuple[Fraction, Fraction]] = [(trim, trim)]
    rows: list[list[Blank]] = [[]]
    for blank in _blanks(pieces, layout.placed):
        start = blank.placed[0].start
        if rows[-1] and start > free:
            begins.append((start, start - free))
            rows.append([])
        elif not rows[-1]:
            begins[-1] = start, start
        rows[-1].append(blank)
        free = start + blank.length + blank.eats
    ends = [*(begin for begin, _ in begins[1:]), layout.length]
    found = []
    for place, ((begin, waste), end, row) in enumerate(zip(begins, ends, rows, strict=True)):
        last = row[-1].placed[-1]
        clear = [defect.start for defect in defects if defect.start >= last.end]
        room = min(layout.length - trim, *clear) - begin if clear else layout.length - trim - begin
        taken = last.end + last.eats - begin
        tight = taken - min(blank.eats for blank in row) > room
        found.append(StickSection(place, begin, room, waste, end, tuple(row), taken, tight))
    return tuple(found)


def _one_rip(pieces: tuple[PieceToMake, ...]) -> Fraction | None:
    widths = {piece.rip for piece in pieces}
    own = any(piece.taper or piece.piece.mitered_width is not None for piece in pieces)
    return widths.pop() if len(widths) == 1 and not own else None


def _blanks(pieces: tuple[PieceToMake, ...], placed: tuple[Placed, ...]) -> Iterator[Blank]:
    starts = [at for at, place in enumerate(placed) if not place.shares_cut] + [len(placed)]
    for first, after in pairwise(starts):
        yield Blank(pieces[first:after], placed[first:after])


def _without_plan(pieces: list[PieceToMake], kerf: Fraction) -> list[WorkStick]:
    profiles: dict[str, list[PieceToMake]] = defaultdict(list)
    for piece in pieces:
        profiles[piece.piece.profile].append(piece)
    sticks = []
    for profile, row in profiles.items():
        blanks = tuple(Blank((piece,), (Placed(ZERO, piece.length),)) for piece in row)
        section = StickSection(0, ZERO, ZERO, ZERO, None, blanks, ZERO, False)
        sticks.append(WorkStick(profile, "", ZERO, None, kerf, False, (section,)))
    return sticks
