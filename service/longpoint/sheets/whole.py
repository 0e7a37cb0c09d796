"""All of a house's sticks in one drawing."""

from __future__ import annotations

from longpoint.sheets.drawing.sticks import sticks_drawing
from longpoint.sheets.drawing.style import Styling
from longpoint.sheets.pieces import pieces_by_key
from longpoint.sheets.plan_words import plan_words
from longpoint.sheets.rows import stick_rows
from longpoint.sheets.wording import Wording
from longpoint.shop.build import CutList


def house_sticks(cut_list: CutList, wording: Wording, styling: Styling = Styling.THEMED) -> str:
    """Every plan's sticks, profile by profile, all to one scale, as SVG text."""
    pieces = pieces_by_key(cut_list)
    groups = [(plan.profile, list(stick_rows(cut_list, plan, pieces))) for plan in cut_list.plans]
    return sticks_drawing(" ".join(filter(None, ("Sticks.", plan_words(cut_list)))), groups, wording, styling)
