"""Walls that do not lie flush with the jamb: what is advised, extensions, casing that leans, sills out of level."""

from __future__ import annotations

import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.builders import CASING, TRIM, F, off_plane, opening, piece
from longpoint.geometry import (
    Bottom,
    BoxCorners,
    Built,
    Casing,
    CutKind,
    End,
    GeometryError,
    Hand,
    HeadStyle,
    JambExtension,
    Limits,
    PlumbSides,
    SillAnswer,
    SillLevel,
    Taper,
    Trim,
    Wall,
    WallAnswer,
    build_opening,
    compound,
)

WINDOW = PlumbSides(F("30.625"), F("46.25"), F("46.25"))
BARE = Trim(CASING, F(3, 16))


def built(*proud: str, trim: Trim = TRIM, **fields: Any) -> Built:
    """Corners in order: bottom right, top right, top left, bottom left."""
    base = opening(WINDOW, trim, **fields)
    wall = Wall(tuple(F(each) for each in proud))
    return build_opening(replace(base, readings=replace(base.readings, wall=off_plane(wall))))


def advice(found: Built) -> dict[str, list[str]]:
    return {finding.side: [offer.answer for offer in finding.offers] for finding in found.findings}


def test_each_side_is_advised_by_its_own_corners() -> None:
    found = built("0", "1/16", "1/8", "1/4")
    assert advice(found) == {
        "right": ["caulk"],
        "head": ["plane_wall", "lean_casing", "extend_jamb"],
        "left": ["extend_jamb", "lean_casing"],
    }


def test_a_jamb_proud_of_the_wall_is_planed_or_the_wall_furred() -> None:
    found = built("-1/8", "0", "0", "-1/2")
    assert advice(found) == {"right": ["plane_jamb", "fur_wall"], "left": ["fur_wall", "plane_jamb"]}


def test_limits_are_the_callers() -> None:
    found = built("1/8", "1/8", "1/8", "1/8", wall_limits=Limits(F(1, 8), F(1, 4)))
    assert advice(found) == {side: ["caulk"] for side in ("right", "head", "left")}


def test_advice_changes_no_size() -> None:
    assert built("1/4", "1/4", "1/4", "1/4").pieces == build_opening(opening(WINDOW)).pieces


EXTENSION = JambExtension(thickness=F(3, 4), reveal=F(1, 8), profile="extension")


def test_a_butted_box_is_ripped_to_the_difference_and_tapered() -> None:
    trim = replace(TRIM, extension=EXTENSION)
    found = built("1/2", "3/8", "3/8", "1/4", trim=trim, wall_answer=WallAnswer.EXTEND)
    right, head, left = (piece(found, f"jamb_extension/{side}") for side in ("right", "head", "left"))
    # Legs from the stool to the head board's underside: 46 1/4 + 1/8; head over both: 30 5/8 + 2 (1/8 + 3/4).
    assert right.overall == left.overall == F("46.375")
    assert head.overall == F("32.375")
    assert (right.taper, head.taper, left.taper) == (Taper(F(1, 2), F(3, 8)), None, Taper(F(3, 8), F(1, 4)))
    assert (right.rip_width, head.rip_width) == (F(1, 2), F(3, 8))
    assert [end.at for end in right.ends] == ["foot", "head"]
    # The casing now keeps its reveal to the extension: 3/16 + 1/8 from the jamb.
    assert piece(found, "head_casing").short_point == F("31.25")
    assert ("extension reveal, counted in the reveal", F(1, 8)) in piece(found, "head_casing").how[0].inputs


def test_a_mitered_box_is_bevelled_through_its_thickness() -> None:
    trim = replace(BARE, extension=replace(EXTENSION, corners=BoxCorners.MITERED))
    found = built("1/2", "1/2", "1/2", "1/2", trim=trim, bottom=Bottom.CASING, wall_answer=WallAnswer.EXTEND)
    head = piece(found, "jamb_extension/head")
    assert (head.short_point, head.long_point) == (F("30.875"), F("32.375"))
    assert {(end.cut, end.bevel, end.long_edge) for end in head.ends} == {(CutKind.BEVEL, F(45), "back")}
    assert [end.bevel_direction for end in head.ends] == [Hand.RIGHT, Hand.LEFT]
    assert len([each for each in found.pieces if each.kind == "jamb_extension"]) == 4


def test_extensions_line_an_opening_that_is_not_cased() -> None:
    trim = replace(TRIM, casing=None, extension=replace(EXTENSION, reveal=F(0)))
    found = built("3", "3", "3", "3", trim=trim, wall_answer=WallAnswer.EXTEND)
    assert {each.kind for each in found.pieces} == {"stool", "apron", "apron_return", "jamb_extension"}
    assert piece(found, "jamb_extension/left").overall == F("46.25")


def test_a_board_that_tapers_to_nothing_says_so() -> None:
    trim = replace(TRIM, extension=EXTENSION)
    found = built("0", "1/4", "0", "0", trim=trim, wall_answer=WallAnswer.EXTEND)
    assert "nothing" in str(piece(found, "jamb_extension/right").notes[0])
    assert not [each for each in found.pieces if str(each.key) == "jamb_extension/left"]


def test_casing_that_leans_equally_has_the_crown_tables_settings() -> None:
    found = built("1/4", "1/4", "1/4", "1/4", trim=BARE, bottom=Bottom.CASING, wall_answer=WallAnswer.LEAN)
    lean = math.degrees(math.asin(0.25 / 2.5))
    for each in found.pieces:
        for end in each.ends:
            assert end.cut is CutKind.COMPOUND
            assert (end.miter, end.bevel) == pytest.approx(compound(90, 90 - lean))


proud = st.integers(0, 16).map(lambda n: F(n, 16))
Vector = tuple[float, float, float]


@given(proud, st.integers(2, 6), st.integers(2, 6), st.integers(-30, 30))
def test_leaning_pieces_meet_along_one_line_on_the_back_and_one_on_the_face(
    stands: F, legs: int, head: int, lean: int
) -> None:
    """Put together in space from lengths and angles alone, round the corner they were cut for."""
    trim = Trim(
        Casing(width=F(legs), thickness=F(1, 2), profile="legs"),
        F(1, 8),
        head_casing=Casing(width=F(head), thickness=F(1, 2), profile="head"),
    )
    base = opening(PlumbSides(F(40), F(60), F(60 + lean)), trim, bottom=Bottom.FLOOR, square_gap=F(0))
    wall = Wall((F(0), stands, F(0), F(0)))
    readings = replace(base.readings, wall=off_plane(wall))
    found = build_opening(replace(base, readings=readings, wall_answer=WallAnswer.LEAN))
    leg, over = piece(found, "side_casing/right"), piece(found, "head_casing")
    corner = math.radians(float(found.frame.corners[1].degrees))
    # The leg runs up along x past the corner; the head, seen likewise, is turned round by the corner.
    mine = _joint(leg.ends[0], legs, float(stands), (1.0, 0.0), (0.0, 1.0))
    along = (math.cos(corner), math.sin(corner))
    theirs = _joint(over.ends[1], head, float(stands), along, (math.sin(corner), -math.cos(corner)))
    assert mine[0] == pytest.approx(theirs[0], abs=1e-6)
    # Backs of unequal lean leave the short points of the two faces apart, but on one line along the joint.
    apart = tuple(one - other for one, other in zip(mine[1], theirs[1], strict=True))
    assert _cross(apart, mine[0]) == pytest.approx((0, 0, 0), abs=1e-6)
    if legs == head:
        assert apart == pytest.approx((0, 0, 0), abs=1e-6)


def _cross(a: Vector, b: Vector) -> Vector:
    return a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]


def _joint(
    end: End, width: int, rise: float, along: tuple[float, float], outward: tuple[float, float]
) -> tuple[Vector, Vector]:
    """From a piece's short point: to its long point on the back, and the step through its thickness to the face."""
    flat = math.sqrt(width * width - rise * rise)
    run = width * math.tan(math.radians(end.miter)) * (1 if end.long_edge == "outer" else -1)
    step = 0.5 * math.tan(math.radians(end.bevel)) / math.cos(math.radians(end.miter))
    step *= 1 if end.bevel_direction is end.on_saw else -1
    normal = (-rise / width, flat / width)

    def place(x: float, y: float, z: float) -> Vector:
        return x * along[0] + y * outward[0], x * along[1] + y * outward[1], z

    return place(run, flat, rise), place(step, 0.5 * normal[0], 0.5 * normal[1])


@pytest.mark.parametrize(
    ("proud", "fields", "code"),
    [
        (("0", "0", "0"), {}, "corner-count"),
        (("1/4",) * 4, {"wall_answer": WallAnswer.EXTEND}, "extension-missing"),
        (("2",) * 4, {"wall_answer": WallAnswer.LEAN}, "leans-too-far"),
        (
            ("1/4",) * 4,
            {"wall_answer": WallAnswer.LEAN, "trim": replace(TRIM, head_style=HeadStyle.BUTTED)},
            "mitered-head-only",
        ),
    ],
)
def test_answers_that_cannot_be_are_refused(
    proud: tuple[str, ...], fields: dict[str, Any], code: str
) -> None:
    with pytest.raises(GeometryError) as refused:
        built(*proud, **fields)
    assert code in {fault.code for fault in refused.value.faults}


def test_an_answer_without_the_reading_is_refused() -> None:
    with pytest.raises(GeometryError) as refused:
        build_opening(opening(WINDOW, wall_answer=WallAnswer.LEAN))
    assert {fault.code for fault in refused.value.faults} == {"wall-missing"}


def _on_a_sill(answer: SillAnswer) -> Built:
    base = opening(WINDOW, sill_answer=answer)
    return build_opening(replace(base, readings=replace(base.readings, sill=SillLevel(Hand.LEFT, F(3, 8)))))


def test_a_sill_out_of_level_is_shimmed() -> None:
    found = _on_a_sill(SillAnswer.SHIM)
    (finding,) = found.findings
    assert [offer.answer for offer in finding.offers] == ["shim", "tapered_shim"]
    assert finding.offers[0].figures == (("shim at the low end", F(3, 8)), ("shim at the middle", F(3, 16)))
    assert found.pieces == build_opening(opening(WINDOW)).pieces


def test_or_carries_a_tapered_strip() -> None:
    found = _on_a_sill(SillAnswer.TAPERED_SHIM)
    assert found.findings == ()
    strip = piece(found, "tapered_shim")
    assert (strip.overall, strip.taper) == (F("30.625"), Taper(F(3, 8), F(0)))


def test_casing_is_set_back_only_where_a_board_lies() -> None:
    trim = replace(TRIM, extension=EXTENSION)
    found = built("0", "0", "1/4", "1/4", trim=trim, wall_answer=WallAnswer.EXTEND)
    # The right side has no board: its reveal is its own, 3/16; head and left show 1/8 of the jamb as well.
    assert piece(found, "side_casing/right").short_point == F("46.25") + F("0.3125")
    assert piece(found, "head_casing").short_point == F("30.625") + F("0.1875") + F("0.3125")
    assert not [each for each in found.pieces if str(each.key) == "jamb_extension/right"]


def test_a_sill_without_a_stool_is_nobodys_finding() -> None:
    base = opening(WINDOW, BARE, bottom=Bottom.FLOOR)
    found = build_opening(replace(base, readings=replace(base.readings, sill=SillLevel(Hand.LEFT, F(3, 8)))))
    assert found.findings == ()
