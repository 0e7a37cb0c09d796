"""Every sheet and drawing can be read by everybody: real tables, named pictures, enough contrast, nothing active."""

import re
from collections.abc import Iterator
from html.parser import HTMLParser
from importlib.resources import files

import pytest
from msgspec.structs import replace

from longpoint.sheets import (
    RECIPES,
    Document,
    Sheet,
    SheetHouse,
    Styling,
    Wording,
    blank_measure_sheet,
    house_sticks,
    html,
)
from longpoint.sheets.drawing.elevation import elevation
from longpoint.sheets.drawing.piece import piece_drawing
from longpoint.sheets.drawing.section import section
from longpoint.sheets.drawing.where_to_measure import depth_key, opening_key
from longpoint.shop import Section, work
from longpoint.shop.build import CutList, build_openings, cuttings
from longpoint.stock import Budget, plan
from sheets.browser import Browser, needs_chromium
from sheets.houses import FLOOR, ROOMS, SETTINGS, STOCK, opening, sheet_house
from sheets.openings import EVERY
from sheets.styles import STYLED
from sheets.test_drawing_safety import contrast
from shop.builders import Entry, house_of

HOSTILE = "</title><script>alert(1)</script><img src=x onerror=alert(2)>&\"'"
KNOWN = (
    "html head meta link title style body header h1 h2 p main section small dl div dt dd ul li table caption colgroup "
    "col thead tbody tfoot tr th td footer span b svg desc rect line polygon path text circle"
)
ALLOWED = frozenset(KNOWN.split())
VOID = ("meta", "link", "col")


class Page(HTMLParser):
    """A page read back: every element with its attributes, the path it stands at, and its text."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.elements: list[tuple[tuple[str, ...], dict[str, str]]] = []
        self.texts: list[tuple[int, str]] = []
        self._path: list[str] = []
        self.feed(text)
        assert self._path == []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.elements.append(((*self._path, tag), {name: value or "" for name, value in attrs}))
        if tag not in VOID:
            self._path.append(tag)

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.elements.append(((*self._path, tag), {name: value or "" for name, value in attrs}))

    def handle_endtag(self, tag: str) -> None:
        assert self._path.pop() == tag

    def handle_data(self, data: str) -> None:
        if self.elements and data.strip():
            self.texts.append((len(self.elements) - 1, data))

    def within(self, tag: str) -> Iterator[list[tuple[tuple[str, ...], dict[str, str]]]]:
        """Each element of a kind, with all that stands in it."""
        for index, (path, _) in enumerate(self.elements):
            if path[-1] == tag:
                following = self.elements[index + 1 :]
                depth = len(path)
                end = next(
                    (n for n, (other, _) in enumerate(following) if len(other) <= depth), len(following)
                )
                yield self.elements[index : index + 1 + end]


def hostile_sheet_house() -> SheetHouse:
    """A house whose every name is an attempt."""
    first, door = opening(1), opening(5)
    trim = replace(first.opening.trim, casing=replace(first.opening.trim.casing, profile=HOSTILE))
    entries = (
        Entry(replace(first.opening, mark=HOSTILE, trim=trim), HOSTILE, first.count),
        Entry(replace(door.opening, trim=FLOOR), ROOMS[0], door.count),
    )
    house = house_of(entries, stock=(*STOCK, replace(STOCK[0], profile=HOSTILE)))
    built = build_openings(house)
    cut_list = CutList(
        house, built, tuple(plan(sheet_house, Budget(0)) for sheet_house in cuttings(house, built))
    )
    return SheetHouse(cut_list, work(cut_list, frozenset(Section), SETTINGS), HOSTILE)


def documents(house: SheetHouse) -> dict[str, Document]:
    made = {str(sheet): RECIPES[sheet].make(house) for sheet in Sheet}
    return {**made, "blank": blank_measure_sheet(name=house.name)}


PAGES = {name: html(one, Wording()) for name, one in documents(sheet_house(6)).items()}
HOSTILE_PAGES = {name: html(one, Wording()) for name, one in documents(hostile_sheet_house()).items()}
DRAWINGS = {
    **{f"elevation {name}": elevation(built, Wording()) for name, built in (EVERY | STYLED).items()},
    **{f"section {name}": section(built, Wording()) for name, built in (EVERY | STYLED).items()},
    **{f"piece {piece.key}": piece_drawing("K1", piece, Wording()) for piece in STYLED["dressed"].pieces},
    "sticks": house_sticks(sheet_house(6).cut_list, Wording()),
    "opening key": opening_key(),
    "depth key": depth_key(),
}


@pytest.mark.parametrize("page", PAGES.values(), ids=PAGES)
def test_tables_have_a_caption_and_headers_for_columns_and_rows(page: str) -> None:
    read = Page(page)
    tables = list(read.within("table"))
    assert tables or 'class="label"' in page
    for table in tables:
        assert table[1][0][-1] == "caption"
        columns = [attrs for path, attrs in table if path[-1] == "th" and "thead" in path]
        assert columns
        assert all(attrs["scope"] == "col" for attrs in columns)
    for row in read.within("tr"):
        if "thead" in row[0][0]:
            continue
        cells = [(path[-1], attrs) for path, attrs in row if path[-1] in ("th", "td")]
        heads = [attrs for tag, attrs in cells if tag == "th"]
        assert cells[0][0] == "th"
        assert [attrs["scope"] for attrs in heads] in (["row"], ["rowgroup"])


@pytest.mark.parametrize("page", PAGES.values(), ids=PAGES)
def test_a_page_names_its_language_and_itself(page: str) -> None:
    read = Page(page)
    assert read.elements[0][1]["lang"] == "en"
    tags = [path[-1] for path, _ in read.elements if "svg" not in path]
    assert tags.count("title") == 1
    assert tags.count("h1") == (0 if 'class="label"' in page else 1)
    assert tags.count("main") == 1


@pytest.mark.parametrize("text", (PAGES | DRAWINGS).values(), ids=PAGES | DRAWINGS)
def test_every_picture_has_a_title_and_a_description(text: str) -> None:
    read = Page(text)
    said = dict(read.texts)
    found = [index for index, (path, _) in enumerate(read.elements) if path[-1] == "svg"]
    for index in found:
        assert read.elements[index][1]["role"] == "img"
        assert [read.elements[index + step][0][-1] for step in (1, 2)] == ["title", "desc"]
        assert said[index + 1].strip()
        assert len(said[index + 2].strip()) > 20


ALL_PAGES = {
    **PAGES,
    **{f"hostile {name}": page for name, page in HOSTILE_PAGES.items()},
    **DRAWINGS,
    "hostile elevation": elevation(hostile_sheet_house().cut_list.openings[0].built, Wording()),
    "hostile section": section(hostile_sheet_house().cut_list.openings[0].built, Wording()),
    "hostile sticks": house_sticks(hostile_sheet_house().cut_list, Wording(), Styling.PLAIN),
}


@pytest.mark.parametrize("text", ALL_PAGES.values(), ids=ALL_PAGES)
def test_nothing_is_active_and_nothing_is_fetched(text: str) -> None:
    for path, attrs in Page(text).elements:
        assert path[-1] in ALLOWED, path
        for name, value in attrs.items():
            assert not name.startswith("on"), path
            assert name not in ("src", "xlink:href", "srcdoc", "action"), path
            assert name != "href" or value == "data:,", path
    assert "url(" not in text
    assert "@import" not in text


def test_a_hostile_name_is_there_as_text() -> None:
    for name, page in HOSTILE_PAGES.items():
        if name != "blank":
            assert HOSTILE in "".join(text for _, text in Page(page).texts), name


# The look.

CSS = (files("longpoint.sheets") / "pages" / "sheet.css").read_text()
COLORS = dict(re.findall(r"--([a-z]+):(#[0-9a-f]{3,6})", CSS.partition("}")[0]))


def whole(color: str) -> str:
    return color if len(color) == 7 else "#" + "".join(2 * c for c in color[1:])


def test_every_color_that_text_is_set_in_contrasts_with_every_ground_there_is() -> None:
    inks = set(re.findall(r"(?<![-a-z])color:([^;}]+)", CSS))
    grounds = set(re.findall(r"background:([^;}]+)", CSS))
    assert inks == {"var(--ink)", "var(--soft)"}
    assert grounds == {"var(--paper)", "var(--tint)"}
    for ink in inks:
        for ground in grounds:
            pair = [whole(COLORS[name[6:-1]]) for name in (ink, ground)]
            assert contrast(*pair) >= 4.5, pair
    # One look for light and dark, so nothing but these is ever seen.
    assert "prefers-color-scheme" not in CSS


# In the page: the least contrast of any text with what lies under it.
CONTRAST = """
(() => {
  const pieces = c => (c.match(/[0-9.]+/g) || []).map(Number);
  const light = ([r, g, b]) => [r, g, b].map(v => v / 255)
    .map(v => v <= .04045 ? v / 12.92 : ((v + .055) / 1.055) ** 2.4)
    .reduce((sum, v, i) => sum + v * [.2126, .7152, .0722][i], 0);
  const ground = e => {
    for (; e; e = e.parentElement) {
      const c = pieces(getComputedStyle(e).backgroundColor);
      if (c.length < 4 || c[3] > 0) return c;
    }
    return [255, 255, 255];
  };
  const found = [];
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walk.nextNode()) {
    const e = walk.currentNode.parentElement;
    if (!walk.currentNode.data.trim() || ['title', 'desc', 'STYLE'].includes(e.tagName)) continue;
    const style = getComputedStyle(e);
    const ink = light(pieces(e.closest('svg') ? style.fill : style.color)), under = light(ground(e));
    found.push((Math.max(ink, under) + .05) / (Math.min(ink, under) + .05));
  }
  return found.length ? Math.min(...found) : 99;
})()
"""


@needs_chromium
@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_what_the_browser_shows_has_that_contrast_whatever_the_reader_prefers(scheme: str) -> None:
    with Browser() as browser:
        browser.ask(
            "Emulation.setEmulatedMedia", features=[{"name": "prefers-color-scheme", "value": scheme}]
        )
        for name, page in PAGES.items():
            for width in (1200, 390):
                browser.show(page, width)
                assert browser.run(CONTRAST) >= 4.5, (name, width)


@needs_chromium
def test_a_reader_that_speaks_hears_every_picture_by_its_name_and_every_table_as_one() -> None:
    with Browser() as browser:
        browser.ask("Accessibility.enable")
        for width in (1200, 390):
            browser.show(PAGES["opening-sheet"], width)
            nodes = browser.ask("Accessibility.getFullAXTree")["nodes"]
            roles = [
                (node["role"]["value"], node.get("name", {}).get("value", ""))
                for node in nodes
                if not node["ignored"]
            ]
            images = [name for role, name in roles if role in ("image", "img", "graphics-document")]
            assert len(images) == PAGES["opening-sheet"].count("<svg")
            assert all(name.startswith(("Elevation of", "Section of")) for name in images)
            tables = [name for role, name in roles if role == "table"]
            assert len(tables) == PAGES["opening-sheet"].count("<table")
            assert all(tables), "each is called by its caption"
            assert "columnheader" in {role for role, _ in roles}
            assert "rowheader" in {role for role, _ in roles}


@needs_chromium
def test_the_hostile_pages_open_quietly() -> None:
    with Browser() as browser:
        for page in HOSTILE_PAGES.values():
            browser.show(page)
            assert browser.complaints == []
            assert browser.requests == []
