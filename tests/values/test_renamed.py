"""What 0.1.0 called otherwise is answered with the name it has now."""

import pytest

from longpoint.schedules import words
from longpoint.values.fault import nearest
from longpoint.values.renamed import RENAMED, moved, renamed

OLD_AND_NEW = """
part piece; parts pieces; foot_style bottom; picture_frame casing; leg_height jamb_height;
left_height left_jamb_height; right_height right_jamb_height; lights joined_widths; left_neighbour left_neighbor;
right_neighbour right_neighbor; sill_casing bottom_casing; remnants lengths_on_hand; fit_minutes install_minutes;
caulk_fillet caulk_bead;
fit install; fitted installed; mitre_degrees miter_degrees; sharpest_mitre sharpest_miter; mitred mitered;
mitred_return mitered_return; tapered_strip tapered_shim; saw-sheet stick-sheet; yard-list material-list;
fitting-sheet opening-sheet; piece-labels labels
"""
PAIRS = [tuple(pair.split()) for pair in OLD_AND_NEW.split(";")]
STORED = {"fields": words.FIELDS, "kinds": words.KINDS, "tasks": words._TASKS, **words.VALUES}
"""What stored documents are renamed by."""


@pytest.mark.parametrize(("old", "new"), PAIRS)
def test_an_old_name_is_answered_with_the_new_one(old: str, new: str) -> None:
    assert renamed(old) == renamed(old, {new}) == nearest(old, [new, "other"])
    assert str(renamed(old)) == f'"{old}" is called "{new}" now.'
    assert renamed(old, {"other"}) is None


def test_no_other_name_is_old() -> None:
    assert set(RENAMED) == {old for old, _ in PAIRS}
    assert renamed("stool") is None


def test_a_column_has_spaces_and_an_address_its_last_name() -> None:
    assert str(renamed("leg height")) == '"leg height" is called "jamb height" now.'
    assert str(moved("/v1/sheets/saw-sheet")) == '"saw-sheet" is called "stick-sheet" now.'
    assert moved("/v1/parts") is None


def test_of_names_that_are_near_the_nearest_is_meant() -> None:
    assert str(nearest("casig", ["casings", "casing", "stool"])) == 'Was "casing" meant?'
    assert nearest("zzz", ["casing"]) is None


@pytest.mark.parametrize("table", STORED)
def test_a_caller_is_told_the_name_that_stored_documents_have_now(table: str) -> None:
    shared = {old: new for old, new in STORED[table].items() if old in RENAMED}
    assert shared == {old: RENAMED[old] for old in shared}


def test_names_are_shared_to_be_compared() -> None:
    common = {table for table, names in STORED.items() if names.keys() & RENAMED.keys()}
    assert common == STORED.keys() - {"kinds", "cut"}
    assert len(words.FIELDS.keys() & RENAMED.keys()) > 10
