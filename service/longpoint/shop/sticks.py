"""The plan's sticks as the saw meets them: sections free of defects, each a row of blanks.

A blank is what a square cut parts from the stick: one piece or, on stock that is turned over, a row of pieces
whose shared angled cuts are made afterwards. Blanks of a section may be cut in any order, since each takes
its own length and one kerf; that freedom is what lets cuts of one setting be made together.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from itertools import pairwise

from longpoint.geometry import Part
from longpoint.lengths import Fraction, Rounding, round_to
from longpoint.shop.build import CutList, HouseKey
from longpoint.shop.house import House
from longpoint.shop.operations import PieceName
from longpoint.stock import Layout, Placed
from longpoint.values import Value

ZERO = Fraction(0)


class Piece(Value, frozen=True):
    """One piece to make. Attributes: name; part; length, rip and taper, on the marks of the rounding."""

    name: PieceName
    part: Part
    length: Fraction
    rip: Fraction | None
    taper: tuple[Fraction, Fraction] | None = None


class Blank(Value, frozen=True):
    """Pieces parted from the stick together. Attributes: pieces and their places; length, on a mark."""

    pieces: tuple[Piece, ...]
    placed: tuple[Placed, ...]
    length: Fraction

    @property
    def shared(self) -> bool:
        return len(self.pieces) > 1


class Section(Value, frozen=True):
    """A stretch of a stick between square cuts.

    Attributes:
        place: its number on the stick, from 0; with profile and stick it names the section.
        length: inches to cut from; None for parts that no plan lays on a stick.
        exact: no waste at its end, so that the last blank left needs no cut.
        blanks: what is still to be cut from it.
    """

    profile: str
    stick: int
    place: int
    length: Fraction | None
    kerf: Fraction
    exact: bool
    blanks: tuple[Blank, ...]

    @property
    def name(self) -> tuple[str, int, int]:
        return self.profile, self.stick, self.place


class WorkStick(Value, frozen=True):
    """A stick with its sections and the stretches sawn out between them.

    Attributes:
        profile: what it is.
        number: from 1 through its profile's plan; 0 for parts that no plan lays on a stick.
        length: uncut.
        trim: squared off each end.
        rip: the width to rip the whole stick to; None when its pieces are not all of one.
        pieces: every piece on it.
        begun: already squared, freed of defects and ripped.
    """

    profile: str
    number: int
    length: Fraction
    trim: Fraction
    rip: Fraction | None
    sections: tuple[Section, ...]
    cut_out: tuple[tuple[Fraction, Fraction], ...]
    pieces: tuple[Piece, ...]
    begun: bool = False


def work_sticks(cut_list: CutList) -> list[WorkStick]:
    """Every stick of every plan, then the parts no plan holds, in one section a profile with no stick."""
    house = cut_list.house
    waiting = _pieces(cut_list)
    sticks: list[WorkStick] = []
    for plan in cut_list.plans:
        rows = ((layout, keys) for layout in plan.layouts for keys in layout.keys)
        for number, (layout, keys) in enumerate(rows, 1):
            pieces = tuple(waiting[key].pop() for key in keys)
            sticks.append(_stick(number, house, plan.profile, layout, pieces))
    left = [piece for queue in waiting.values() for piece in reversed(queue)]
    return sticks + _without_plan(left)


def _pieces(cut_list: CutList) -> dict[HouseKey, list[Piece]]:
    """Every piece by its key in the plans, the first instance last."""
    rounding = cut_list.house.rounding
    pieces: dict[HouseKey, list[Piece]] = {}
    for index, one in enumerate(cut_list.openings):
        for part in one.built.parts:
            length = round_to(part.overall, rounding)
            rip = None if part.rip_width is None else round_to(part.rip_width, rounding)
            taper = None
            if part.taper is not None:
                taper = round_to(part.taper[0], rounding), round_to(part.taper[1], rounding)
            key = HouseKey(index, part.key)
            pieces[key] = [
                Piece(PieceName(one.built.opening.mark, part.key, instance), part, length, rip, taper)
                for instance in reversed(cut_list.instances(key, one.count))
            ]
    return pieces


def _stick(number: int, house: House, profile: str, layout: Layout, pieces: tuple[Piece, ...]) -> WorkStick:
    trim = +house.end_trim
    rows: list[tuple[Fraction, Fraction, list[Blank]]] = []
    cut_out: list[tuple[Fraction, Fraction]] = []
    begins = ends = trim
    eats = ZERO
    row: list[Blank] = []
    for blank in _blanks(pieces, layout.placed, house.rounding):
        start = blank.placed[0].start
        if start > ends + eats:
            if row:
                rows.append((begins, ends, row))
            cut_out.append((ends, start))
            begins, row = start, []
        row.append(blank)
        ends, eats = blank.placed[-1].end, blank.placed[-1].eats
    last = layout.length - trim
    rows.append((begins, last, row))
    exact = ends == last and all(blank.placed[-1].eats == house.kerf for *_, row in rows for blank in row)
    sections = tuple(
        Section(profile, number, place, end - begin, house.kerf, exact or end < last, tuple(row))
        for place, (begin, end, row) in enumerate(rows)
    )
    return WorkStick(
        profile, number, +layout.length, trim, _one_rip(pieces), sections, tuple(cut_out), pieces
    )


def _one_rip(pieces: tuple[Piece, ...]) -> Fraction | None:
    widths = {piece.rip for piece in pieces}
    return widths.pop() if len(widths) == 1 and not any(piece.taper for piece in pieces) else None


def _blanks(pieces: tuple[Piece, ...], placed: tuple[Placed, ...], rounding: Rounding) -> Iterator[Blank]:
    starts = [at for at, place in enumerate(placed) if not place.shares_cut] + [len(placed)]
    for first, after in pairwise(starts):
        row = placed[first:after]
        length = pieces[first].length
        if len(row) > 1:
            length = round_to(row[-1].end - row[0].start, rounding)
        yield Blank(pieces[first:after], row, length)


def _without_plan(pieces: list[Piece]) -> list[WorkStick]:
    profiles: dict[str, list[Piece]] = defaultdict(list)
    for piece in pieces:
        profiles[piece.part.profile].append(piece)
    sticks = []
    for profile, row in profiles.items():
        blanks = tuple(Blank((piece,), (), piece.length) for piece in row)
        section = Section(profile, 0, 0, None, ZERO, False, blanks)
        sticks.append(WorkStick(profile, 0, ZERO, ZERO, None, (section,), (), tuple(row)))
    return sticks
