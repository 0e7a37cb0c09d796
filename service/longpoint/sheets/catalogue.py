"""The sheets by name, and which of the shop's sections each is made from."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from enum import StrEnum

from longpoint.geometry.value import Value
from longpoint.sheets.costs import cost_sheet
from longpoint.sheets.cutting import cut_list_sheet
from longpoint.sheets.document import Document
from longpoint.sheets.fitting import fitting_sheet
from longpoint.sheets.job import Job
from longpoint.sheets.labels import label_sheet
from longpoint.sheets.measure import measure_sheet
from longpoint.sheets.saw import saw_sheet
from longpoint.sheets.yard import yard_list
from longpoint.shop import Section


class Sheet(StrEnum):
    """A sheet's name, as in an address."""

    CUT_LIST = "cut-list"
    FITTING_SHEET = "fitting-sheet"
    SAW_SHEET = "saw-sheet"
    YARD_LIST = "yard-list"
    COST_SHEET = "cost-sheet"
    MEASURE_SHEET = "measure-sheet"
    PIECE_LABELS = "piece-labels"


class Recipe(Value, frozen=True):
    """How a sheet is made. Attributes: make, from the job; needs, sections of the shop's work it cannot do without."""

    make: Callable[[Job], Document]
    needs: frozenset[Section] = frozenset()


RECIPES: Mapping[Sheet, Recipe] = {
    Sheet.CUT_LIST: Recipe(cut_list_sheet, frozenset({Section.SAW_ORDER})),
    Sheet.FITTING_SHEET: Recipe(fitting_sheet),
    Sheet.SAW_SHEET: Recipe(saw_sheet, frozenset({Section.SAW_ORDER})),
    Sheet.YARD_LIST: Recipe(yard_list, frozenset({Section.MATERIALS})),
    Sheet.COST_SHEET: Recipe(cost_sheet, frozenset({Section.COST, Section.HOURS})),
    Sheet.MEASURE_SHEET: Recipe(measure_sheet),
    Sheet.PIECE_LABELS: Recipe(label_sheet),
}
