"""What 0.1.0 called otherwise is answered with the name it has now."""

import pytest

from longpoint.schedules import words
from longpoint.shop.rates import DEFAULTS
from longpoint.values.fault import nearest
from longpoint.values.renamed import ADDRESSES, RENAMED, moved, renamed

OLD_AND_NEW = """
part piece; parts pieces; foot_style bottom; picture_frame casing; leg_height jamb_height;
left_height left_jamb_height; right_height right_jamb_height; lights joined_widths; left_neighbour left_neighbor;
right_neighbour right_neighbor; sill_casing bottom_casing; remnants lengths_on_hand; fit_minutes install_minutes;
caulk_fillet caulk_bead; rack lengths; offcuts lengths; used_offcuts used_lengths;
casing_leg side_casing; casing_head head_casing; casing_sill bottom_casing; levelling_strip tapered_shim;
fit install; fitted installed; mitre_degrees miter_degrees; sharpest_mitre sharpest_miter; mitred mitered;
mitred_return mitered_return; tapered_strip tapered_shim; saw-sheet stick-sheet; yard-list material-list;
fitting-sheet opening-sheet; piece-labels labels
"""
SPLIT = {"setup_minutes", "cut_minutes"}
PAIRS = [tuple(pair.split()) for pair in OLD_AND_NEW.split(";")]
STORED = {"fields": words.FIELDS, "kinds": words.KINDS, "tasks": words._TASKS, **words.VALUES}
"""What stored documents are renamed by."""


@pytest.mark.parametrize(("old", "new"), PAIRS)
def test_an_old_name_is_answered_with_the_new_one(old: str, new: str) -> None:
    assert renamed(old) == renamed(old, {new}) == nearest(old, [new, "other"])
    assert str(renamed(old)) == f'"{old}" is called "{new}" now.'
    assert renamed(old, {"other"}) is None


def test_no_other_name_is_old() -> None:
    assert set(RENAMED) == {old for old, _ in PAIRS} | SPLIT
    assert renamed("stool") is None


def test_a_column_has_spaces_and_an_address_its_last_name() -> None:
    assert str(renamed("leg height")) == '"leg height" is called "jamb height" now.'
    assert str(moved("/v1/sheets/saw-sheet")) == '"saw-sheet" is called "stick-sheet" now.'
    assert str(moved("/v1/schedules/1/offcuts/2")) == '"offcuts" is called "lengths" now.'
    assert moved("/v1/parts") is None
    assert {RENAMED[old] for old in ("offcuts", "saw-sheet", "yard-list", "piece-labels")} < ADDRESSES


def test_a_rate_that_others_took_the_place_of_names_them() -> None:
    assert set(RENAMED["cut_minutes"]) | set(RENAMED["setup_minutes"]) <= DEFAULTS.keys()
    assert str(renamed("cut_minutes", ["cut_seconds", "notch_seconds"])) == (
        '"cut_seconds" and "notch_seconds" say now what "cut_minutes" said.'
    )
    assert renamed("cut_minutes", ["stool"]) is None


KEYS = ["stool", "side_casing/left", "head_casing", "bottom_casing", "tapered_shim/left"]


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("casing_leg/left", "side_casing/left"),
        ("casing_head/head", "head_casing"),
        ("casing_head", "head_casing"),
        ("casing_sill/sill", "bottom_casing"),
        ("casing_sill", "bottom_casing"),
        ("levelling_strip/left", "tapered_shim/left"),
    ],
)
def test_an_old_key_of_a_piece_is_answered_with_the_new_one(old: str, new: str) -> None:
    assert str(nearest(old, KEYS)) == f'"{old}" is called "{new}" now.'


def test_pieces_of_a_curve_are_counted_otherwise_so_only_their_kind_is_named() -> None:
    said = nearest("casing_head/head 2", ["head_casing/1", "head_casing/2"])
    assert str(said) == '"casing_head" is called "head_casing" now.'


def test_of_names_that_are_near_the_nearest_is_meant() -> None:
    assert str(nearest("casig", ["casings", "casing", "stool"])) == 'Was "casing" meant?'
    assert nearest("zzz", ["casing"]) is None


@pytest.mark.parametrize("table", STORED)
def test_a_caller_is_told_the_name_that_stored_documents_have_now(table: str) -> None:
    shared = {old: new for old, new in STORED[table].items() if old in RENAMED}
    assert shared == {old: RENAMED[old] for old in shared}


def test_names_are_shared_to_be_compared() -> None:
    common = {table for table, names in STORED.items() if names.keys() & RENAMED.keys()}
    assert common == STORED.keys() - {"cut"}
    assert len(words.FIELDS.keys() & RENAMED.keys()) > 10
