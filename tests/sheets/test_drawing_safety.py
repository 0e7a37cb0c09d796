"""Drawings are safe to embed: well-formed, titled, without script, every text escaped."""

from xml.etree import ElementTree

import pytest

from longpoint.geometry import Built
from longpoint.sheets.drawing.elevation import elevation
from longpoint.sheets.drawing.piece import piece_drawing
from longpoint.sheets.drawing.section import section
from longpoint.sheets.drawing.style import VARIABLES, Styling
from longpoint.sheets.wording import Wording
from sheets.openings import EVERY, window
from sheets.reading import Drawing
from sheets.styles import STYLED

HOSTILE = "</title><script>alert(1)</script>&\"'\x00\x1b\ufffe"


def test_a_hostile_mark_stays_text() -> None:
    built = window(HOSTILE, 30, 40)
    for svg in (
        elevation(built, Wording()),
        section(built, Wording()),
        piece_drawing(built.opening.mark, built.pieces[0], Wording()),
    ):
        root = ElementTree.fromstring(svg)
        assert not [one for one in root.iter() if one.tag.endswith("script")]
        assert "</title><script>alert(1)</script>&\"'" in Drawing(svg).title


@pytest.mark.parametrize("built", (EVERY | STYLED).values(), ids=EVERY | STYLED)
def test_every_drawing_has_a_title_and_a_description_and_nothing_active(built: Built) -> None:
    for svg in (elevation(built, Wording()), section(built, Wording())):
        drawing = Drawing(svg)
        assert built.opening.mark in drawing.title
        assert drawing.description
        for one in drawing.root.iter():
            assert one.tag.rpartition("}")[2] in {
                "svg", "title", "desc", "style", "rect", "line", "polygon", "path", "text", "circle",
            }  # fmt: skip
            assert not [name for name in one.attrib if name.startswith("on") or "href" in name]


def test_the_description_names_every_piece_with_its_length() -> None:
    built = EVERY["plain"]
    description = Drawing(elevation(built, Wording())).description
    for number, piece in enumerate(built.pieces, 1):
        assert f"{number} {piece.title}, {Wording().figure(piece.overall)}" in description


def test_the_look_is_variables_or_plain_values_or_left_to_the_page() -> None:
    built = EVERY["plain"]
    themed = elevation(built, Wording(), Styling.THEMED)
    plain = elevation(built, Wording(), Styling.PLAIN)
    bare = elevation(built, Wording(), Styling.NONE)
    for name, default in VARIABLES.items():
        assert f"var(--lp-{name},{default})" in themed
    assert "var(" not in plain
    assert "<style" in plain
    assert "<style" not in bare


def test_the_same_opening_is_drawn_the_same() -> None:
    assert elevation(EVERY["raked"], Wording()) == elevation(EVERY["raked"], Wording())


def test_colors_of_texts_and_lines_contrast_with_the_paper() -> None:
    paper = VARIABLES["paper"]
    for name in ("ink", "text", "dimension"):
        assert contrast(VARIABLES[name], paper) >= 4.5
        assert contrast(VARIABLES[name], VARIABLES["wood"]) >= 4.5
    # Hatching is a graphic, for which 3 is enough.
    assert contrast(VARIABLES["faint"], paper) >= 3


def contrast(one: str, other: str) -> float:
    """Contrast of two colors as WCAG 2.2 defines it."""
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def luminance(color: str) -> float:
    pieces = [int(color[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    red, green, blue = (p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in pieces)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue
