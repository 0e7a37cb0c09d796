"""The trade's further styles, each worked by hand on one window: 30 5/8 by 46 1/4, casing 2 1/2, reveal 3/16."""

from __future__ import annotations

from typing import Any

import pytest
from msgspec.structs import replace

from geometry.builders import APRON, CASING, STOOL, TRIM, F, mulled, opening, piece
from longpoint.geometry import (
    ApronEnds,
    BackBand,
    Bottom,
    Built,
    Casing,
    CornerBlock,
    CutKind,
    Face,
    GeometryError,
    Hand,
    HeadStrip,
    HeadStyle,
    Horns,
    Mull,
    PlumbSides,
    Polygon,
    StoolEnds,
    StripEnds,
    Trim,
    Widths,
    build_opening,
)

WINDOW = PlumbSides(F("30.625"), F("46.25"), F("46.25"))


def built(**fields: Any) -> Built:
    trim = {name: fields.pop(name) for name in list(fields) if name in Trim.__struct_fields__}
    return build_opening(opening(WINDOW, replace(TRIM, **trim), **fields))


def refusal(**fields: Any) -> set[str]:
    with pytest.raises(GeometryError) as refused:
        built(**fields)
    return {fault.code for fault in refused.value.faults}


def test_a_head_with_fillet_and_cap() -> None:
    found = built(
        head_style=HeadStyle.BUTTED,
        fillet=HeadStrip("fillet", height=F(1, 2), depth=F(1), overhang=F(1, 4)),
        cap=HeadStrip("cap", height=F(3, 4), depth=F(2), overhang=F(5, 4), ends=StripEnds.MITERED_RETURN),
    )
    # Over the legs' outsides: 30 5/8 + 2 (3/16 + 2 1/2) = 36.
    assert piece(found, "head_casing").overall == F(36)
    assert piece(found, "fillet").overall == F("36.5")
    cap = piece(found, "cap")
    assert (cap.long_point, cap.short_point) == (F("38.5"), F("34.5"))
    assert {end.long_edge for end in cap.ends} == {"front"}
    assert piece(found, "cap_return/left").long_point == 2
    assert piece(found, "side_casing/left").overall == F("46.4375")


def test_a_back_band_has_miters_and_lengths_of_its_own() -> None:
    found = built(back_band=BackBand(width=F(1), thickness=F(1), lap=F(1, 4), profile="band"))
    # Its inner edge lies 1/4 in inside the casing's outside edge, 2 7/16 from the jamb; its outer edge 3 7/16.
    head, leg = piece(found, "back_band/head"), piece(found, "back_band/left")
    assert (head.short_point, head.long_point) == (F("35.5"), F("37.5"))
    assert (leg.short_point, leg.long_point) == (F("48.6875"), F("49.6875"))
    assert {end.miter for end in head.ends} == {45}
    # Stool and apron go by the band's outside edge: 30 5/8 + 2 (3 7/16) = 37 1/2, and a horn of 3/4 at each end.
    assert piece(found, "apron").long_point == F("37.5")
    assert piece(found, "stool").overall == F(39)


def test_corner_blocks_take_the_place_of_miters() -> None:
    found = built(
        head_style=HeadStyle.CORNER_BLOCKS,
        corner_block=CornerBlock(width=F("2.75"), thickness=F(1), profile="block"),
    )
    # Each block stands 1/8 past the casing's edges: legs to 46 1/4 + 3/16 - 1/8, head 30 5/8 + 2 (1/16).
    leg, head = piece(found, "side_casing/right"), piece(found, "head_casing")
    assert leg.overall == leg.short_point == F("46.3125")
    assert head.overall == F("30.75")
    assert {end.cut for end in (*leg.ends, *head.ends)} == {CutKind.SQUARE}
    assert piece(found, "corner_block/left").overall == F("2.75")


def test_a_picture_frame_has_four_blocks() -> None:
    found = built(
        head_style=HeadStyle.CORNER_BLOCKS,
        corner_block=CornerBlock(width=F("2.75"), thickness=F(1), profile="block"),
        bottom=Bottom.CASING,
    )
    assert [each.side for each in found.pieces if each.kind == "corner_block"] == [
        "left",
        "right",
        "sill left",
        "sill right",
    ]
    assert piece(found, "side_casing/left").overall == F("46.25") + 2 * F(1, 16)
    assert piece(found, "bottom_casing").overall == F("30.75")


def test_a_stool_returned_to_the_wall() -> None:
    found = built(stool=replace(STOOL, ends=StoolEnds.MITERED_RETURN))
    stool = piece(found, "stool")
    # The horn stands apron 5/8 + nosing 7/8 = 1 1/2 off the wall, so that is what a return takes.
    assert (stool.long_point, stool.short_point) == (F("37.5"), F("34.5"))
    assert [end.long_edge for end in stool.ends] == ["front", "front"]
    assert piece(found, "stool_return/left").long_point == F("1.5")
    assert piece(found, "stool_return/right").width == F("1.5")


def test_an_eased_stool_says_so() -> None:
    assert any(
        "1/8" in str(note) for note in piece(built(stool=replace(STOOL, ends=StoolEnds.EASED)), "stool").notes
    )


def test_an_apron_cut_back_at_an_angle() -> None:
    found = piece(built(apron=replace(APRON, ends=ApronEnds.ANGLED, end_angle=F(45))), "apron")
    assert (found.long_point, found.short_point) == (F(36), F(31))
    assert [(end.long_edge, end.miter_direction) for end in found.ends] == [
        ("top", Hand.RIGHT),
        ("top", Hand.LEFT),
    ]


def test_a_scribe_allowance_and_a_wall_out_of_plane_shape_the_notches() -> None:
    base = opening(WINDOW, replace(TRIM, stool=replace(STOOL, scribe=F(1, 4))))
    readings = replace(base.readings, left_horn_depth=F(3), right_horn_depth=F("3.25"))
    stool = piece(build_opening(replace(base, readings=readings)), "stool")
    left, right = (end.notch for end in stool.ends)
    assert left is not None
    assert right is not None
    assert (left.depth, left.end_depth) == (F("2.875"), F("2.75"))
    assert (right.depth, right.end_depth) == (F("2.875"), F(3))
    # Ripped to the deepest reading, 3 1/4 + 5/8 + 7/8.
    assert stool.rip_width == F("4.75")


def test_own_horns_and_ripped_widths_are_kept_side_by_side() -> None:
    flat = replace(CASING, face=Face.FLAT)
    found = built(casing=flat, horns=Horns(left=F(1, 4)), widths=Widths(left=F(2), apron=F("1.5")))
    leg, stool = piece(found, "side_casing/left"), piece(found, "stool")
    assert (leg.width, leg.rip_width) == (F(2), F(2))
    assert piece(found, "side_casing/right").rip_width is None
    # 30 5/8 + left (3/16 + 2 + 1/4) + right (3/16 + 2 1/2 + 3/4)
    assert stool.overall == F("36.5")
    assert piece(found, "apron").width == F("1.5")
    left, right = piece(found, "head_casing").ends
    assert (float(left.miter), float(right.miter)) == pytest.approx((38.6598, 45), abs=1e-4)
    assert float(leg.ends[1].miter) == pytest.approx(90 - 38.6598, abs=1e-4)


def test_mull_casing_stands_between_two_lights() -> None:
    trim = replace(TRIM, mull_casing=Casing(width=F(3), thickness=F(5, 8), profile="mull"))
    base = opening(PlumbSides(F(51), F("46.25"), F("46.25")), trim)
    readings = mulled(base.readings, (Mull(F(24), F("3.5")),))
    found = build_opening(replace(base, readings=readings))
    mull = piece(found, "mull_casing/1")
    assert mull.overall == mull.short_point == F("46.4375")
    assert mull.how[1].inputs == (("reveal at each side", F(1, 4)),)
    assert len([each for each in found.pieces if each.kind == "stool"]) == 1


def test_a_mull_under_a_raked_head_is_cut_to_its_slope() -> None:
    trim = replace(TRIM, mull_casing=Casing(width=F(3), thickness=F(5, 8), profile="mull"))
    base = opening(PlumbSides(F(48), F(60), F(36)), trim)
    found = build_opening(replace(base, readings=mulled(base.readings, (Mull(F(22), F(4)),))))
    mull, head = piece(found, "mull_casing/1"), piece(found, "head_casing")
    # Down 24 in 48: 26.565 degrees; the left edge, 22 1/2 from the left jamb, is the longer by 1 1/2.
    assert mull.short_point - mull.long_point == pytest.approx(1.5)
    assert mull.ends[0].miter == pytest.approx(26.5651, abs=1e-4)
    assert mull.short_point == pytest.approx(60 - 22.5 / 2 + 3 / 16 * (1 + 0.25) ** 0.5)
    assert head.overall > 53


def test_an_uncased_window_keeps_its_stool() -> None:
    found = built(casing=None)
    assert {each.kind for each in found.pieces} == {"stool", "apron", "apron_return"}
    assert piece(found, "stool").overall == F("30.625") + 2 * F(3, 4)


BAND, BLOCK = (
    BackBand(width=F(1), thickness=F(1), profile="band"),
    CornerBlock(width=F("2.75"), thickness=F(1), profile="block"),
)
STRIP = HeadStrip("strip", F(1), F(1))


@pytest.mark.parametrize(
    ("fields", "code"),
    [
        ({"fillet": STRIP}, "butted-head-only"),
        ({"cap": STRIP}, "butted-head-only"),
        ({"head_style": HeadStyle.CORNER_BLOCKS}, "block-missing"),
        (
            {"head_style": HeadStyle.CORNER_BLOCKS, "corner_block": replace(BLOCK, width=F(2))},
            "block-too-narrow",
        ),
        (
            {"head_style": HeadStyle.CORNER_BLOCKS, "corner_block": replace(BLOCK, width=F(3))},
            "block-too-wide",
        ),
        ({"head_style": HeadStyle.BUTTED, "back_band": BAND}, "mitered-head-only"),
        ({"back_band": replace(BAND, lap=F(1))}, "lap-too-wide"),
        ({"apron": replace(APRON, ends=ApronEnds.ANGLED, end_angle=F(70))}, "out-of-range"),
    ],
)
def test_styles_that_do_not_go_together_are_refused(fields: dict[str, Any], code: str) -> None:
    assert code in refusal(**fields)


@pytest.mark.parametrize(
    ("mulls", "code"),
    [
        ((Mull(F(0), F(3)),), "mull-out-of-place"),
        ((Mull(F(28), F(3)),), "mull-out-of-place"),
        ((Mull(F(10), F(1)),), "mull-too-narrow"),
        ((Mull(F(20), F(3)), Mull(F(10), F(3))), "mull-out-of-place"),
    ],
)
def test_mulls_that_cannot_be_are_refused(mulls: tuple[Mull, ...], code: str) -> None:
    base = opening(WINDOW, replace(TRIM, mull_casing=Casing(width=F(2), thickness=F(1), profile="mull")))
    with pytest.raises(GeometryError) as refused:
        build_opening(replace(base, readings=mulled(base.readings, mulls)))
    assert code in {fault.code for fault in refused.value.faults}


def test_blocks_and_mulls_need_one_straight_head() -> None:
    octagon = Polygon((F(10),) * 8, (F(135),) * 8)
    trim = Trim(CASING, F(3, 16), HeadStyle.CORNER_BLOCKS, corner_block=BLOCK)
    with pytest.raises(GeometryError) as refused:
        build_opening(opening(octagon, trim, bottom=Bottom.CASING))
    assert {fault.code for fault in refused.value.faults} == {"blocks-many-heads"}
