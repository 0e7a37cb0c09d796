"""No text of a drawing lies on another, on a line or off the sheet, whatever the opening's size and shape."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from longpoint.geometry import Built, PieceKind
from longpoint.lengths import Fraction, Rounding, RoundTo
from longpoint.sheets.drawing.elevation import elevation
from longpoint.sheets.drawing.piece import piece_drawing
from longpoint.sheets.drawing.section import section
from longpoint.sheets.wording import Wording
from sheets.openings import EVERY, window
from sheets.reading import NAME, Drawing
from sheets.styles import STYLED

INCHES = Wording()
ALL = EVERY | STYLED
SIXTEENTHS = st.integers(12 * 16, 144 * 16).map(lambda n: Fraction(n, 16))
HIDDEN = (
    PieceKind.APRON_RETURN,
    PieceKind.STOOL_RETURN,
    PieceKind.FILLET_RETURN,
    PieceKind.CAP_RETURN,
    PieceKind.JAMB_EXTENSION,
    PieceKind.JAMB_LEG,
    PieceKind.HEAD_JAMB,
    PieceKind.TAPERED_SHIM,
)
IN_THE_LEGEND = (*HIDDEN, PieceKind.PLINTH_BLOCK, PieceKind.DOOR_STOP)
WORDINGS = (INCHES, Wording(feet=True), Wording(Rounding(RoundTo.HALF_MILLIMETER)))


def clear(svg: str) -> Drawing:
    drawing = Drawing(svg)
    assert drawing.collisions() == []
    assert drawing.outside() == []
    return drawing


@pytest.mark.parametrize("wording", WORDINGS, ids=("inches", "feet", "millimeters"))
@pytest.mark.parametrize("built", ALL.values(), ids=ALL)
def test_an_elevation_is_clear_in_every_shape_and_unit(built: Built, wording: Wording) -> None:
    drawing = clear(elevation(built, wording))
    assert len(drawing.rings) == len(built.pieces), "every piece has its number"
    for text in drawing.texts:
        if not text.text.isdigit():
            assert all(text.box.intersection(piece).area < 0.01 for piece in drawing.pieces), text.text


@pytest.mark.parametrize("built", ALL.values(), ids=ALL)
def test_an_elevation_gives_every_piece_its_lengths(built: Built) -> None:
    texts = {one.text for one in Drawing(elevation(built, INCHES)).texts}
    for piece in built.pieces:
        if piece.kind not in IN_THE_LEGEND:
            assert INCHES.figure(piece.long_point) in texts, piece.title


@pytest.mark.parametrize("built", ALL.values(), ids=ALL)
def test_the_legend_gives_every_piece_its_number_name_and_size_and_can_be_left_out(built: Built) -> None:
    with_legend, without = (Drawing(elevation(built, INCHES, legend=legend)) for legend in (True, False))
    said = {" ".join(one.text.split()) for one in with_legend.texts}
    lines = {
        f"{number} {piece.title}, {INCHES.figure(piece.long_point)} × {INCHES.figure(piece.width)}"
        for number, piece in enumerate(built.pieces, 1)
    }
    assert lines <= said
    assert not lines & {" ".join(one.text.split()) for one in without.texts}


@pytest.mark.parametrize("built", ALL.values(), ids=ALL)
def test_hidden_edges_are_dashed_and_every_mark_is_drawn(built: Built) -> None:
    lines = [one.get("class") for one in Drawing(elevation(built, INCHES)).root.iter(f"{NAME}line")]
    assert lines.count("hidden") == sum(piece.kind in HIDDEN for piece in built.pieces)
    marked = [piece for piece in built.pieces if piece.kind is not PieceKind.PLINTH_BLOCK]
    assert lines.count("center") == sum(len(piece.marks) for piece in marked)


@pytest.mark.parametrize("built", ALL.values(), ids=ALL)
def test_a_section_numbers_and_lists_what_it_cuts_through(built: Built) -> None:
    drawing = clear(section(built, INCHES))
    numbers = {one.text for one in drawing.texts if one.text.isdigit()}
    listed = {one.text.split()[0] for one in drawing.texts if " × " in one.text}
    assert numbers == listed
    cut = {built.pieces[int(number) - 1].kind for number in numbers}
    kinds = {piece.kind for piece in built.pieces}
    foot = {PieceKind.STOOL, PieceKind.APRON, PieceKind.TAPERED_SHIM}
    if PieceKind.STOOL not in kinds:
        foot = {PieceKind.SIDE_CASING, PieceKind.JAMB_LEG, PieceKind.DOOR_STOP}
    dressed = {PieceKind.FILLET, PieceKind.CAP, PieceKind.BACK_BAND, PieceKind.JAMB_EXTENSION}
    assert kinds & (foot | dressed) <= cut


@given(width=SIXTEENTHS, left=SIXTEENTHS, right=SIXTEENTHS, plumb=st.booleans())
@settings(max_examples=100, deadline=None)
def test_windows_from_one_foot_to_twelve_are_clear(
    width: Fraction, left: Fraction, right: Fraction, plumb: bool
) -> None:
    # A head steeper than 75 degrees is no opening the service builds.
    built = window("W1", width, left, left if plumb or abs(left - right) > 3 * width else right)
    drawing = clear(elevation(built, INCHES))
    assert len(drawing.rings) == len(built.pieces)


@pytest.mark.parametrize("wording", WORDINGS, ids=("inches", "feet", "millimeters"))
@pytest.mark.parametrize("built", ALL.values(), ids=ALL)
def test_sections_are_clear_and_dimensioned(built: Built, wording: Wording) -> None:
    drawing = clear(section(built, wording))
    texts = {one.text for one in drawing.texts}
    stool = next((piece for piece in built.pieces if piece.kind is PieceKind.STOOL), None)
    trim = built.opening.trim
    extended = trim.extension.reveal if trim.extension else 0
    said = (
        (stool.width, stool.thickness, trim.stool.nosing, trim.stool.sash_clearance, trim.apron.width)
        if stool and trim.stool and trim.apron
        else (trim.casing.width, trim.casing.thickness, trim.reveal + extended)
    )
    assert {wording.figure(length) for length in said} <= texts


@pytest.mark.parametrize("built", ALL.values(), ids=ALL)
def test_piece_drawings_are_clear_and_dimensioned(built: Built) -> None:
    for piece in built.pieces:
        texts = {one.text for one in clear(piece_drawing("K1", piece, INCHES)).texts}
        said = {piece.width, piece.long_point}
        if any(end.miter for end in piece.ends):
            said.add(piece.short_point)
        for end in piece.ends:
            if end.notch:
                said |= {end.notch.depth, end.notch.length}
        assert {INCHES.figure(length) for length in said} <= texts, piece.title
