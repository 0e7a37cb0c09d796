"""The cost sheet says what its sums leave out."""

from longpoint.sheets.costs import cost_sheet
from longpoint.sheets.document import Notes
from sheets.houses import sheet_house


def test_profiles_without_stock_are_named_apart_from_what_has_no_price() -> None:
    (stocked,) = [one for one in cost_sheet(sheet_house(5)).blocks if isinstance(one, Notes)]
    (bare,) = [one for one in cost_sheet(sheet_house(5, stock=False)).blocks if isinstance(one, Notes)]
    assert not [line for line in stocked.lines if "stock" in str(line).partition(":")[0]]
    without_stock, *rest = bare.lines
    assert str(without_stock).endswith(": apron, casing 2 1/2, stool stock.")
    assert tuple(rest) == stocked.lines
