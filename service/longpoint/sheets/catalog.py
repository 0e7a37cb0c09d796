"""The sheets by name, and which of the shop's sections each is made from."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from enum import StrEnum

from msgspec.structs import replace

from longpoint.sheets.costs import cost_sheet
from longpoint.sheets.cutting import cut_list_sheet
from longpoint.sheets.document import Document
from longpoint.sheets.house import SheetHouse
from longpoint.sheets.labels import label_sheet
from longpoint.sheets.material_list import material_list
from longpoint.sheets.measure import measure_sheet
from longpoint.sheets.opening import opening_sheet
from longpoint.sheets.plan_words import plan_words
from longpoint.sheets.stick_sheet import stick_sheet
from longpoint.shop import Section
from longpoint.shop.build import CutList
from longpoint.values import Value


class Sheet(StrEnum):
    """A sheet's name, as in an address."""

    CUT_LIST = "cut-list"
    OPENING_SHEET = "opening-sheet"
    STICK_SHEET = "stick-sheet"
    MATERIAL_LIST = "material-list"
    COST_SHEET = "cost-sheet"
    MEASURE_SHEET = "measure-sheet"
    LABELS = "labels"


MOST_PRINTED = 2500
"""Pieces that one sheet shows: as PDF those of an ordinary house take 6 s, and 60 to an arch take three times that."""


class Recipe(Value, frozen=True):
    """How a sheet is made.

    Attributes:
        make: From the house.
        needs: Sections of the shop's work it cannot do without.
        pieces: How many pieces it shows one by one; None for a sheet that shows none.
    """

    make: Callable[[SheetHouse], Document]
    needs: frozenset[Section] = frozenset()
    pieces: Callable[[CutList], int] | None = None


def _drawn(cut_list: CutList) -> int:
    return sum(len(one.built.pieces) for one in cut_list.openings)


def _to_cut(cut_list: CutList) -> int:
    return cut_list.to_cut


RECIPES: Mapping[Sheet, Recipe] = {
    Sheet.CUT_LIST: Recipe(cut_list_sheet, frozenset({Section.SAW_ORDER}), _to_cut),
    Sheet.OPENING_SHEET: Recipe(opening_sheet, pieces=_drawn),
    Sheet.STICK_SHEET: Recipe(stick_sheet, frozenset({Section.SAW_ORDER}), _to_cut),
    Sheet.MATERIAL_LIST: Recipe(material_list, frozenset({Section.MATERIALS})),
    Sheet.COST_SHEET: Recipe(cost_sheet, frozenset({Section.COST, Section.HOURS})),
    Sheet.MEASURE_SHEET: Recipe(measure_sheet),
    Sheet.LABELS: Recipe(label_sheet, pieces=_to_cut),
}


_OF_STICKS = (Sheet.CUT_LIST, Sheet.STICK_SHEET, Sheet.MATERIAL_LIST, Sheet.COST_SHEET, Sheet.LABELS)


def made(house: SheetHouse, sheet: Sheet, skip: int = 0) -> Document:
    """A sheet of a house.

    Args:
        house: The house.
        sheet: Which sheet.
        skip: Places on the first sheet of labels that are used up.
    """
    document = label_sheet(house, skip=skip) if sheet is Sheet.LABELS else RECIPES[sheet].make(house)
    return replace(document, plan=plan_words(house.cut_list)) if sheet in _OF_STICKS else document
