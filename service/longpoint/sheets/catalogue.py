"""The sheets by name, and which of the shop's sections each is made from."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from enum import StrEnum

from msgspec.structs import replace

from longpoint.sheets.costs import cost_sheet
from longpoint.sheets.cutting import cut_list_sheet
from longpoint.sheets.document import Document
from longpoint.sheets.fitting import fitting_sheet
from longpoint.sheets.job import Job
from longpoint.sheets.labels import label_sheet
from longpoint.sheets.measure import measure_sheet
from longpoint.sheets.plan_words import plan_words
from longpoint.sheets.saw import saw_sheet
from longpoint.sheets.yard import yard_list
from longpoint.shop import Section
from longpoint.shop.build import CutList
from longpoint.values import Value


class Sheet(StrEnum):
    """A sheet's name, as in an address."""

    CUT_LIST = "cut-list"
    FITTING_SHEET = "fitting-sheet"
    SAW_SHEET = "saw-sheet"
    YARD_LIST = "yard-list"
    COST_SHEET = "cost-sheet"
    MEASURE_SHEET = "measure-sheet"
    PIECE_LABELS = "piece-labels"


MOST_PRINTED = 2500
"""Pieces that one sheet shows: as PDF those of an ordinary house take 6 s, and 60 to an arch take three times that."""


class Recipe(Value, frozen=True):
    """How a sheet is made.

    Attributes:
        make: From the job.
        needs: Sections of the shop's work it cannot do without.
        pieces: How many pieces it shows one by one; None for a sheet that shows none.
    """

    make: Callable[[Job], Document]
    needs: frozenset[Section] = frozenset()
    pieces: Callable[[CutList], int] | None = None


def _drawn(cut_list: CutList) -> int:
    return sum(len(one.built.parts) for one in cut_list.openings)


def _to_cut(cut_list: CutList) -> int:
    return cut_list.to_cut


RECIPES: Mapping[Sheet, Recipe] = {
    Sheet.CUT_LIST: Recipe(cut_list_sheet, frozenset({Section.SAW_ORDER}), _to_cut),
    Sheet.FITTING_SHEET: Recipe(fitting_sheet, pieces=_drawn),
    Sheet.SAW_SHEET: Recipe(saw_sheet, frozenset({Section.SAW_ORDER}), _to_cut),
    Sheet.YARD_LIST: Recipe(yard_list, frozenset({Section.MATERIALS})),
    Sheet.COST_SHEET: Recipe(cost_sheet, frozenset({Section.COST, Section.HOURS})),
    Sheet.MEASURE_SHEET: Recipe(measure_sheet),
    Sheet.PIECE_LABELS: Recipe(label_sheet, pieces=_to_cut),
}


_OF_STICKS = (Sheet.CUT_LIST, Sheet.SAW_SHEET, Sheet.YARD_LIST, Sheet.COST_SHEET)


def made(job: Job, sheet: Sheet, skip: int = 0) -> Document:
    """A sheet of a house.

    Args:
        job: The house.
        sheet: Which sheet.
        skip: Places on the first sheet of labels that are used up.
    """
    if sheet is Sheet.PIECE_LABELS:
        return label_sheet(job, skip=skip)
    document = RECIPES[sheet].make(job)
    return replace(document, plan=plan_words(job.cut_list)) if sheet in _OF_STICKS else document
