"""Milliseconds and kilobytes of every sheet of a house, as HTML and as PDF.

The time is a sheet's own, from the worked-out house to the file's bytes; the house is worked out before. The least of
five runs for HTML, of three for PDF.

Run from the repository's top: PYTHONPATH=service:tests python tests/bench/house_sheets.py [OPENINGS]
"""

import sys
from collections.abc import Callable
from functools import partial
from time import perf_counter

from longpoint.sheets import RECIPES, Recipe, SheetHouse, html, pdf
from sheets.houses import sheet_house


def timed(make: Callable[[], bytes], runs: int) -> tuple[float, int]:
    """Milliseconds of the fastest run, and the bytes made."""
    best, size = float("inf"), 0
    for _ in range(runs):
        start = perf_counter()
        size = len(make())
        best = min(best, perf_counter() - start)
    return best * 1000, size


def as_html(recipe: Recipe, house: SheetHouse) -> bytes:
    return html(recipe.make(house), house.wording).encode()


def as_pdf(recipe: Recipe, house: SheetHouse) -> bytes:
    return pdf(recipe.make(house), house.wording)


def main(openings: int) -> None:
    house = sheet_house(openings)
    print(f"{openings} openings{'HTML ms':>20}{'kB':>8}{'PDF ms':>10}{'kB':>8}")
    for sheet, recipe in RECIPES.items():
        page, page_size = timed(partial(as_html, recipe, house), 5)
        paper, paper_size = timed(partial(as_pdf, recipe, house), 3)
        print(f"{sheet:<20}{page:>12.1f}{page_size // 1000:>8}{paper:>10.0f}{paper_size // 1000:>8}")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 30)
