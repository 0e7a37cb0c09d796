"""No text of a drawing lies on another, on a line or off the sheet, whatever the opening's size and shape."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from longpoint.geometry import Built, PartKind
from longpoint.lengths import Fraction, Rounding, RoundTo
from longpoint.sheets.drawing.elevation import elevation
from longpoint.sheets.drawing.piece import piece_drawing
from longpoint.sheets.drawing.section import leg_section, section
from longpoint.sheets.wording import Wording
from sheets.openings import EVERY, window
from sheets.reading import Drawing

INCHES = Wording()
SIXTEENTHS = st.integers(12 * 16, 144 * 16).map(lambda n: Fraction(n, 16))
WORDINGS = (INCHES, Wording(feet=True), Wording(Rounding(RoundTo.HALF_MILLIMETRE)))


def clear(svg: str) -> Drawing:
    drawing = Drawing(svg)
    assert drawing.collisions() == []
    assert drawing.outside() == []
    return drawing


@pytest.mark.parametrize("wording", WORDINGS, ids=("inches", "feet", "millimetres"))
@pytest.mark.parametrize("built", EVERY.values(), ids=EVERY)
def test_an_elevation_is_clear_in_every_shape_and_unit(built: Built, wording: Wording) -> None:
    drawing = clear(elevation(built, wording))
    assert len(drawing.rings) == len(built.parts), "every piece has its number"
    for text in drawing.texts:
        if not text.text.isdigit():
            assert all(text.box.intersection(piece).area < 0.01 for piece in drawing.pieces), text.text


@pytest.mark.parametrize("built", EVERY.values(), ids=EVERY)
def test_an_elevation_gives_every_piece_its_lengths(built: Built) -> None:
    texts = {one.text for one in Drawing(elevation(built, INCHES)).texts}
    for part in built.parts:
        if part.kind not in (PartKind.APRON_RETURN, PartKind.PLINTH_BLOCK):
            assert INCHES.figure(part.long_point) in texts, part.title


@given(width=SIXTEENTHS, left=SIXTEENTHS, right=SIXTEENTHS, plumb=st.booleans())
@settings(max_examples=100, deadline=None)
def test_windows_from_one_foot_to_twelve_are_clear(
    width: Fraction, left: Fraction, right: Fraction, plumb: bool
) -> None:
    # A head steeper than 75 degrees is no opening the service builds.
    built = window("W1", width, left, left if plumb or abs(left - right) > 3 * width else right)
    drawing = clear(elevation(built, INCHES))
    assert len(drawing.rings) == len(built.parts)


@pytest.mark.parametrize("wording", WORDINGS, ids=("inches", "feet", "millimetres"))
@pytest.mark.parametrize("built", EVERY.values(), ids=EVERY)
def test_sections_are_clear_and_dimensioned(built: Built, wording: Wording) -> None:
    drawing = clear(section(built, wording))
    clear(leg_section(built, wording))
    texts = {one.text for one in drawing.texts}
    stool = next((part for part in built.parts if part.kind is PartKind.STOOL), None)
    trim = built.opening.trim
    said = (
        (stool.width, stool.thickness, trim.stool.nosing, trim.stool.sash_clearance, trim.apron.width)
        if stool and trim.stool and trim.apron
        else (trim.casing.width, trim.casing.thickness, trim.reveal)
    )
    assert {wording.figure(length) for length in said} <= texts


@pytest.mark.parametrize("built", EVERY.values(), ids=EVERY)
def test_piece_drawings_are_clear_and_dimensioned(built: Built) -> None:
    for part in built.parts:
        texts = {one.text for one in clear(piece_drawing(part, INCHES)).texts}
        said = {part.width, part.long_point}
        if any(end.mitre for end in part.ends):
            said.add(part.short_point)
        for end in part.ends:
            if end.notch:
                said |= {end.notch.depth, end.notch.length}
        assert {INCHES.figure(length) for length in said} <= texts, part.title
