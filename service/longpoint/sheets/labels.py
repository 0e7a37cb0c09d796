"""Labels on plain grids of labels, given by their dimensions."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from functools import cache

from longpoint.geometry import End
from longpoint.lengths import Fraction, Length, PositiveLength
from longpoint.sheets.document import Document, Label, Labels, Paper
from longpoint.sheets.grid import LabelGrid
from longpoint.sheets.house import SheetHouse
from longpoint.sheets.pieces import NumberedPiece, pieces_by_key
from longpoint.sheets.wording import Wording, angle
from longpoint.shop.build import CutList, HouseKey
from longpoint.texts import Sentence, say


@cache
def common_grid(paper: Paper) -> LabelGrid:
    """Common practice, no source: 30 labels of 2 5/8 by 1 in on Letter, 24 of 70 by 37 mm on A4."""
    if paper is Paper.LETTER:
        return LabelGrid(
            across=3,
            down=10,
            width=PositiveLength.of("2 5/8 in"),
            height=PositiveLength.of("1 in"),
            left=Length.of("3/16 in"),
            top=Length.of("1/2 in"),
            gap_across=Length.of("1/8 in"),
        )
    return LabelGrid(
        across=3,
        down=8,
        width=PositiveLength.of("70 mm"),
        height=PositiveLength.of("37 mm"),
        left=Length.of("0 mm"),
        top=Length.of("0.5 mm"),
    )


def grid_faults(grid: LabelGrid, paper: Paper) -> tuple[Sentence, ...]:
    """What keeps a grid off its paper."""
    width, height = paper.size
    faults = []
    if grid.left + grid.across * grid.width + (grid.across - 1) * grid.gap_across > width:
        faults.append(say("problem", "labels.past-right-edge"))
    # A sheet's height in whole millimeters may fall short of its labels' by a hair.
    if grid.top + grid.down * grid.height + (grid.down - 1) * grid.gap_down > height + Fraction(1, 100):
        faults.append(say("problem", "labels.past-bottom-edge"))
    return tuple(faults)


def label_sheet(house: SheetHouse, grid: LabelGrid | None = None, skip: int = 0) -> Document:
    """A label for every single piece that is to be cut, opening by opening.

    Args:
        house: the house.
        grid: where labels lie; None for the paper's common one.
        skip: places on the first sheet that are used up.
    """
    found = tuple(_labels(house))
    block = Labels(grid or common_grid(house.paper), found, skip)
    return Document("labels", "Labels", house.name, (block,), house.paper)


def _labels(house: SheetHouse) -> Iterator[Label]:
    sticks = sticks_by_piece(house.cut_list)
    for key, piece in pieces_by_key(house.cut_list).items():
        # The plans hold the pieces that are still to be cut, the first of those alike first.
        for place, instance in enumerate(house.cut_list.instances(key, piece.count)):
            stick = sticks[key][place] if key in sticks else ""
            yield _label(piece, instance, stick, house.wording)


def _label(numbered: NumberedPiece, instance: int, stick: str, wording: Wording) -> Label:
    piece = numbered.piece
    of = f", {instance} of {numbered.count}" if numbered.count > 1 else ""
    left, right = piece.ends
    return Label(
        numbered.label if numbered.count == 1 else f"{numbered.label}.{instance}",
        wording.figure(piece.overall),
        (
            f"{piece.title}{of}" + (f", {numbered.room}" if numbered.room else ""),
            f"{piece.profile}{stick}",
            f"left {_short(left)}, right {_short(right)}",
        ),
    )


def _short(end: End) -> str:
    said = end.cut.value
    for degrees in (end.miter, end.bevel):
        if degrees:
            said += f" {angle(degrees)}"
    return said


def sticks_by_piece(cut_list: CutList) -> dict[HouseKey, list[str]]:
    """For each piece's key, the name of the stick that each of its instances comes from."""
    found: dict[HouseKey, list[str]] = defaultdict(list)
    for plan in cut_list.plans:
        names = iter(cut_list.stick_names[plan.profile])
        for layout in plan.layouts:
            for keys in layout.keys:
                name = next(names)
                for key in keys:
                    found[key].append(f", {name}")
    return dict(found)
