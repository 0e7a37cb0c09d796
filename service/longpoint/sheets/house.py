"""What every sheet of a house is made from."""

from __future__ import annotations

from longpoint.sheets.document import Notes, Paper
from longpoint.sheets.wording import Wording
from longpoint.shop import Caution, ShopWork, cautions
from longpoint.shop.build import BuiltOpening, CutList
from longpoint.texts import say
from longpoint.values import Value


class SheetHouse(Value, frozen=True):
    """A house worked out, and how its sheets are to look.

    Attributes:
        cut_list: openings, pieces and sticks.
        work: the shop's answer, with the sections that the sheet needs.
        name: whose house it is.
        paper: what the sheets are printed on.
        feet: lengths in drawings in feet and inches.
    """

    cut_list: CutList
    work: ShopWork | None = None
    name: str = ""
    paper: Paper = Paper.LETTER
    feet: bool = False

    @property
    def wording(self) -> Wording:
        """How its lengths are written."""
        return Wording(self.cut_list.house.rounding, self.feet)

    @property
    def shown(self) -> tuple[BuiltOpening, ...]:
        """The openings that were asked for."""
        return tuple(one for one in self.cut_list.openings if one.shown)

    @property
    def cautions(self) -> tuple[Caution, ...]:
        """Its cautions; a house whose age nobody gave counts as an old one."""
        return self.work.cautions if self.work else cautions(self.cut_list, build_year=None)


AT_THE_SAW = ("saw_guards", "wood_dust", "short_piece", "clamp", "short_rip", "sharp_miter")
AT_THE_WALL = ("lead_paint", "escape_opening", "oily_rags", "finishes", "local_codes")


def caution_notes(house: SheetHouse, *codes: str) -> Notes:
    """The cautions of these codes that the house raises, set apart."""
    chosen = (caution for caution in house.cautions if not codes or caution.code in codes)
    lines = tuple(
        caution.text
        + (say("caution", "sheet.here", marks=caution.applies_to) if caution.applies_to else None)
        for caution in chosen
    )
    return Notes("Before you start", lines, caution=True)
