"""The sheets in a real browser: they open quietly, ask for nothing, print as many pages as they should."""

import re
from collections.abc import Iterator

import pytest

from longpoint.sheets.costs import cost_sheet
from longpoint.sheets.cutting import cut_list_sheet
from longpoint.sheets.document import Document, Paper
from longpoint.sheets.drawing.elevation import elevation
from longpoint.sheets.drawing.piece import piece_drawing
from longpoint.sheets.drawing.section import section
from longpoint.sheets.html import html
from longpoint.sheets.labels import label_sheet
from longpoint.sheets.material_list import material_list
from longpoint.sheets.measure import blank_measure_sheet, measure_sheet
from longpoint.sheets.opening import opening_sheet
from longpoint.sheets.pdf import pdf
from longpoint.sheets.stick_sheet import stick_sheet
from longpoint.sheets.wording import Wording
from sheets.browser import Browser, needs_chromium
from sheets.houses import sheet_house, styled_sheet_house
from sheets.openings import EVERY
from sheets.styles import STYLED

pytestmark = needs_chromium
SHEETS = (cut_list_sheet, opening_sheet, stick_sheet, material_list, cost_sheet, label_sheet, measure_sheet)
OPENINGS = 7

# In the page: every text of each drawing as a box, turned as it is drawn, and the pairs that overlap.
OVERLAPS = """
[...document.querySelectorAll('svg.lp')].flatMap(svg => {
  const boxes = [...svg.querySelectorAll('text')].map(t => {
    const b = t.getBBox(), m = t.getCTM(), p = (x, y) => [m.a*x + m.c*y + m.e, m.b*x + m.d*y + m.f];
    // The face's ascent and descent are empty above and below: digits and letters stand within.
    const top = b.y + b.height * .08, low = b.y + b.height * .95;
    return {text: t.textContent, at: [p(b.x, top), p(b.x + b.width, top), p(b.x + b.width, low), p(b.x, low)]};
  });
  const apart = (one, two) => one.some((q, i) => {
    const r = one[(i + 1) % 4], nx = q[1] - r[1], ny = r[0] - q[0];
    const d = pts => pts.map(([x, y]) => nx * x + ny * y);
    return Math.max(...d(one)) <= Math.min(...d(two)) + 1e-6 || Math.max(...d(two)) <= Math.min(...d(one)) + 1e-6;
  });
  const hits = [];
  boxes.forEach((one, i) => boxes.slice(i + 1).forEach(two => {
    if (!apart(one.at, two.at) && !apart(two.at, one.at)) hits.push(one.text + ' on ' + two.text);
  }));
  const sheet = svg.getBoundingClientRect();
  [...svg.querySelectorAll('text')].forEach(t => {
    const b = t.getBoundingClientRect();
    if (b.left < sheet.left - 1 || b.right > sheet.right + 1 || b.top < sheet.top - 1 || b.bottom > sheet.bottom + 1)
      hits.push(t.textContent + ' off the sheet');
  });
  return hits;
})
"""
TOO_WIDE = "document.documentElement.scrollWidth - document.documentElement.clientWidth"


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    with Browser() as one:
        yield one


def pages(pdf: bytes) -> int:
    return len(re.findall(rb"/Type ?/Page\b(?!s)", pdf))


def quiet(browser: Browser) -> None:
    assert browser.complaints == []
    assert browser.requests == []


@pytest.mark.parametrize("sheet", SHEETS, ids=lambda sheet: sheet.__name__)
def test_a_sheet_opens_quietly_and_its_drawings_are_clear(browser: Browser, sheet: object) -> None:
    document: Document = sheet(sheet_house(OPENINGS))  # type: ignore[operator]
    browser.show(html(document, Wording()))
    quiet(browser)
    assert browser.run("document.title").startswith(document.title)
    assert browser.run(OVERLAPS) == []


# In the page: figures that are broken over lines, and columns of letters where a word should be.
BROKEN = """
[...document.querySelectorAll('td, th')].flatMap(cell => {
  const range = document.createRange();
  range.selectNodeContents(cell);
  const lines = new Set([...range.getClientRects()].map(r => Math.round(r.top))).size;
  const words = cell.textContent.trim().split(/\\s+/).length;
  return (cell.classList.contains('n') && cell.tagName == 'TD' && lines > 1) || lines > words ? [cell.outerHTML] : [];
})
"""


@pytest.mark.parametrize("width", [390, 1200])
@pytest.mark.parametrize("sheet", SHEETS, ids=lambda sheet: sheet.__name__)
def test_no_figure_and_no_word_of_a_table_is_broken(browser: Browser, sheet: object, width: int) -> None:
    browser.show(html(sheet(sheet_house(OPENINGS)), Wording()), width)  # type: ignore[operator]
    assert browser.run(BROKEN) == []


@pytest.mark.parametrize("sheet", SHEETS, ids=lambda sheet: sheet.__name__)
def test_a_sheet_fits_a_phone(browser: Browser, sheet: object) -> None:
    browser.show(html(sheet(sheet_house(OPENINGS)), Wording()), width=390)  # type: ignore[operator]
    quiet(browser)
    assert browser.run(TOO_WIDE) <= 0


# Faces differ from machine to machine: one a tenth wider and taller than any common text face must fit, too.
WIDE = "<style>*{font-family:'DejaVu Serif',serif!important;letter-spacing:.05em;line-height:1.38}</style></head>"


@pytest.mark.parametrize("wide", [False, True], ids=("own-faces", "wide-face"))
@pytest.mark.parametrize("paper", Paper)
def test_the_opening_sheet_prints_a_page_for_each_opening_after_the_first(
    browser: Browser, paper: Paper, wide: bool
) -> None:
    text = html(opening_sheet(sheet_house(OPENINGS, paper)), Wording())
    browser.show(text.replace("</head>", WIDE, 1) if wide else text)
    assert pages(browser.printed()) == OPENINGS + 1


@pytest.mark.parametrize("paper", Paper)
def test_an_opening_of_fifteen_pieces_takes_one_page(browser: Browser, paper: Paper) -> None:
    house = styled_sheet_house(paper)
    assert max(len(one.built.pieces) for one in house.cut_list.openings) == 15
    browser.show(html(opening_sheet(house), Wording()))
    assert pages(browser.printed()) == len(STYLED) + 1
    assert pages(pdf(opening_sheet(house), Wording())) == len(STYLED) + 1


# In the page, set for print: how far anything runs out of its opening's leaf or over what follows it there.
OUT_OF_LEAF = """
Math.max(...[...document.querySelectorAll('.leaf')].flatMap(leaf => {
  const boxes = [...leaf.children].map(e => e.getBoundingClientRect());
  const after = boxes.slice(1).map((box, i) => boxes[i].bottom - box.top);
  const drawn = [...leaf.querySelectorAll('.pictures svg')].map(e =>
    e.getBoundingClientRect().bottom - e.parentElement.getBoundingClientRect().bottom);
  return [boxes.at(-1).bottom - leaf.getBoundingClientRect().bottom, ...after, ...drawn];
}))
"""


@pytest.mark.parametrize("wide", [False, True], ids=("own-faces", "wide-face"))
def test_nothing_on_paper_lies_over_anything_else(browser: Browser, wide: bool) -> None:
    text = html(opening_sheet(styled_sheet_house()), Wording())
    browser.ask("Emulation.setEmulatedMedia", media="print")
    try:
        browser.show(text.replace("</head>", WIDE, 1) if wide else text, width=701)
        assert browser.run(OUT_OF_LEAF) <= 1
    finally:
        browser.ask("Emulation.setEmulatedMedia", media="")


@pytest.mark.parametrize("paper", Paper)
def test_labels_print_whole_sheets_of_labels(browser: Browser, paper: Paper) -> None:
    document = label_sheet(sheet_house(OPENINGS, paper), skip=4)
    (block,) = document.blocks
    each = block.grid.across * block.grid.down  # type: ignore[union-attr]
    browser.show(html(document, Wording()))
    assert pages(browser.printed()) == -(-(len(block.labels) + 4) // each)  # type: ignore[union-attr]


@pytest.mark.parametrize("paper", Paper)
def test_a_blank_measure_sheet_prints_on_one_page(browser: Browser, paper: Paper) -> None:
    browser.show(html(blank_measure_sheet(paper), Wording()))
    printed = browser.printed()
    assert pages(printed) == 1
    width, height = (float(side) * 72 for side in paper.size)
    (box,) = set(re.findall(rb"/MediaBox ?\[0 0 ([0-9.]+) ([0-9.]+)\]", printed))
    assert [float(side) for side in box] == pytest.approx([height, width], abs=1.5)


def test_every_shape_is_drawn_clear_in_the_browser(browser: Browser) -> None:
    wording = Wording()
    drawings = [
        drawing
        for built in (*EVERY.values(), *STYLED.values())
        for drawing in (
            elevation(built, wording),
            section(built, wording),
            *(piece_drawing(built.opening.mark, piece, wording) for piece in built.pieces),
        )
    ]
    browser.show(f"<!doctype html><link rel=icon href='data:,'>{''.join(drawings)}")
    quiet(browser)
    assert browser.run("document.querySelectorAll('svg.lp').length") == len(drawings)
    assert browser.run(OVERLAPS) == []


def test_a_drawing_stands_alone_as_an_image(browser: Browser) -> None:
    svg = elevation(EVERY["plain"], Wording())
    browser.show(
        "<!doctype html><link rel=icon href='data:,'><img id=i src='data:image/svg+xml;charset=utf-8,"
        + "".join(f"%{byte:02x}" for byte in svg.encode())
        + "'>"
    )
    quiet(browser)
    assert browser.run("document.getElementById('i').naturalWidth") > 100
