"""A house's readings beside each other: one that is ten times its neighbors, a width and a height that changed places,
one of two openings that are alike but for a digit. What is found is common practice, and refuses nothing."""

from __future__ import annotations

from bisect import bisect_left
from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from msgspec.structs import replace

from longpoint.geometry import Built, Finding, PlumbSides
from longpoint.geometry.checks.doubted import Kind, Read, doubt, is_confirmed, readings_of, stands_on_floor
from longpoint.geometry.checks.unusual import MOSTLY, without_slip
from longpoint.lengths import Fraction
from longpoint.shop.digits import differ_by_one
from longpoint.shop.house import Certainty, HouseOpening
from longpoint.texts import Sentence, say
from longpoint.values import Place

# Common practice, no source: openings of a house that are not ten times each other seldom are four times, and without
# the slip a reading lies near what the others are. Of a few neighbors that says nothing of what is usual by itself.
FAR, NEAR = 4, (Fraction(1, 2), Fraction(2))
FEW = 3
# Inches: how near to each other sizes of windows of one kind lie; and what is so nearly square that nobody can say
# which is its width.
ALIKE = Fraction(1, 2)
SQUARISH = 2
MOST_NAMED = 3


class _Row(NamedTuple):
    """An opening whose readings are compared. Attributes: its place; how many are alike; whether it stands on the
    floor."""

    place: int
    one: HouseOpening
    built: Built
    reads: tuple[Read, ...]
    on_floor: bool

    def only(self, kind: Kind) -> Read | None:
        """Its reading of a kind, where it has but one."""
        found = [read for read in self.reads if read.kind == kind]
        return found[0] if len(found) == 1 else None


_Doubt = tuple[_Row, Read, str, Sentence]


def compared_readings(openings: Sequence[HouseOpening], built: Sequence[Built]) -> tuple[Built, ...]:
    """The same openings, each with what is found of its readings beside the others'; one finding of a reading.

    Openings that are only estimated are left out: their readings are guesses, and alike.
    """
    rows = [
        _Row(place, one, done, readings_of(done.opening), stands_on_floor(done.opening))
        for place, (one, done) in enumerate(zip(openings, built, strict=True))
        if one.certainty is not Certainty.ESTIMATED
    ]
    found: dict[int, dict[str, Finding]] = {}
    for look in (_ten_times, _swapped, _repeated, _one_digit):
        for row, read, code, detail in look(rows):
            if not is_confirmed(row.built.opening, read) and not _told(row, read):
                found.setdefault(row.place, {}).setdefault(read.name, doubt(code, read, detail))
    return tuple(
        replace(one, findings=(*found[place].values(), *one.findings)) if place in found else one
        for place, one in enumerate(built)
    )


def _told(row: _Row, read: Read) -> bool:
    """Whether it was doubted by itself."""
    at = ("readings", *read.path)
    codes = "reading-unusual", "readings-swapped"
    return any(
        one.code in codes and isinstance(one.field, Place) and one.field.steps == at
        for one in row.built.findings
    )


def _ten_times(rows: list[_Row]) -> Iterator[_Doubt]:
    """Readings that a digit too many or a point out of place explains, beside what the others are."""
    usual: dict[tuple[Kind, bool], list[Fraction]] = defaultdict(list)
    sound = [(row, read) for row in rows for read in row.reads if not _told(row, read)]
    for row, read in sound:
        usual[read.kind, row.on_floor].append(+read.value)
    for values in usual.values():
        values.sort()
    for row, read in sound:
        values = usual[read.kind, row.on_floor]
        if len(values) < 2:
            continue
        middle = _middle_of_others(values, +read.value)
        if middle / FAR <= read.value <= middle * FAR:
            continue
        least, most = MOSTLY[read.kind]
        if len(values) <= FEW and least <= read.value <= most:
            continue
        would = min(without_slip(read.value), key=lambda value: abs(value - middle))
        if NEAR[0] * middle <= would <= NEAR[1] * middle:
            yield (
                row,
                read,
                "reading-ten-times",
                say(
                    "finding",
                    "readings.ten-times",
                    kind=read.kind,
                    read=read.value.text,
                    usual=middle,
                    would=would,
                ),
            )


def _middle_of_others(values: list[Fraction], own: Fraction) -> Fraction:
    """The lower median of sorted values, one of them left out."""
    at = bisect_left(values, own)
    middle = (len(values) - 2) // 2
    return values[middle if middle < at else middle + 1]


class _Sized(NamedTuple):
    """An opening of plumb sides, with its width and its height."""

    row: _Row
    width: Read
    height: Read


def _sized(rows: list[_Row]) -> Iterator[_Sized]:
    for row in rows:
        width, height = row.only("width"), row.only("height")
        plumb = isinstance(row.built.opening.outline.shape, PlumbSides)
        if plumb and width is not None and height is not None:
            yield _Sized(row, width, height)


def _swapped(rows: list[_Row]) -> Iterator[_Doubt]:
    """One opening that lies while two and more of its size stand, or the other way round."""
    sized = list(_sized(rows))
    by_inches: dict[tuple[bool, int, int], list[_Sized]] = defaultdict(list)
    for one in sized:
        by_inches[one.row.on_floor, int(one.width.value), int(one.height.value)].append(one)

    def alike(on_floor: bool, width: Fraction, height: Fraction) -> list[_Sized]:
        near = (
            each
            for across in range(int(width) - 1, int(width) + 2)
            for up in range(int(height) - 1, int(height) + 2)
            for each in by_inches.get((on_floor, across, up), ())
        )
        return [
            each
            for each in near
            if abs(each.width.value - width) <= ALIKE and abs(each.height.value - height) <= ALIKE
        ]

    for one in sized:
        width, height = +one.width.value, +one.height.value
        if one.row.one.count > 1 or abs(width - height) <= SQUARISH:
            continue
        others = alike(one.row.on_floor, height, width)
        if sum(each.row.one.count for each in others) < 2 or len(alike(one.row.on_floor, width, height)) > 1:
            continue
        yield (
            one.row,
            one.width,
            "readings-swapped",
            say("finding", "readings.swapped", width=width, height=height, marks=_marks(others)),
        )


def _repeated(rows: list[_Row]) -> Iterator[_Doubt]:
    """The one square opening of a house, where others have the one of its readings and not the other."""
    sized = list(_sized(rows))
    square = [one for one in sized if one.width.value == one.height.value]
    if len(square) != 1 or square[0].row.one.count > 1:
        return
    own = square[0]
    size = own.width.value
    same_height = [one for one in sized if one is not own and abs(one.height.value - size) <= ALIKE]
    same_width = [one for one in sized if one is not own and abs(one.width.value - size) <= ALIKE]
    for doubtful, kind, others in ((own.width, "height", same_height), (own.height, "width", same_width)):
        if len(others) >= 2:
            marks = _marks(others)
            detail = say("finding", "readings.repeated", read=doubtful.value.text, marks=marks, kind=kind)
            yield own.row, doubtful, "reading-repeated", detail
            return


def _marks(sized: list[_Sized]) -> tuple[str, ...]:
    return tuple(one.row.one.mark for one in sized[:MOST_NAMED])


def _one_digit(rows: list[_Row]) -> Iterator[_Doubt]:
    """Openings with one trim whose readings are the same but for one, and that but for one digit."""
    held = Counter[tuple[Kind, Fraction]]()
    for row in rows:
        for kind, value in {(read.kind, +read.value) for read in row.reads}:
            held[kind, value] += row.one.count
    for alike in _alike_but_one(rows):
        by_value: dict[Fraction, list[tuple[_Row, Read]]] = defaultdict(list)
        for row, read in alike:
            by_value[+read.value].append((row, read))
        usual, *others = sorted(by_value.values(), key=_how_many, reverse=True)
        if len(others) > 1 and _how_many(usual) < 2:
            continue  # sizes that all differ
        (standing, of_it), *_ = usual
        for odd in others:
            row, read = odd[0]
            # A size that the house has elsewhere is none that a slip made.
            if held[read.kind, +read.value] == 1 and differ_by_one(read.value, of_it.value):
                detail = say(
                    "finding",
                    "readings.one-digit",
                    kind=read.kind,
                    read=read.value.text,
                    mark=standing.one.mark,
                    other=of_it.value.text,
                )
                yield row, read, "reading-one-digit", detail


def _how_many(alike: list[tuple[_Row, Read]]) -> int:
    return sum(row.one.count for row, _ in alike)


def _alike_but_one(rows: list[_Row]) -> Iterator[list[tuple[_Row, Read]]]:
    """Groups of openings that agree in all but one reading, each with that reading, in the order of the house."""
    groups: dict[object, list[tuple[_Row, Read]]] = defaultdict(list)
    for row in rows:
        opening = row.built.opening
        if not isinstance(opening.outline.shape, PlumbSides) or opening.outline.mulls:
            continue
        said = [(read.name, read.value.as_integer_ratio()) for read in row.reads]
        for number, read in enumerate(row.reads):
            rest = (*said[:number], *said[number + 1 :])
            groups[row.one.trim, opening.bottom, read.name, rest].append((row, read))
    for group in groups.values():
        if len({read.value.as_integer_ratio() for _, read in group}) > 1:
            yield group
