"""A call of each operation, for a client's `send` and `send_raw`. Generated; do not edit."""

from longpoint_sdk.calls.a_house import compute_cut_list, compute_materials
from longpoint_sdk.calls.health import check_live, check_ready
from longpoint_sdk.calls.in_and_out import export_schedule, import_openings
from longpoint_sdk.calls.lengths import read_lengths
from longpoint_sdk.calls.one_opening import (
    compute_apron,
    compute_casing,
    compute_corners,
    compute_movement,
    compute_opening,
    compute_stool,
)
from longpoint_sdk.calls.openings import (
    add_opening,
    get_opening,
    list_openings,
    remove_opening,
    replace_opening,
)
from longpoint_sdk.calls.rack import add_offcut, get_offcut, list_offcuts, remove_offcut
from longpoint_sdk.calls.revisions import compare_revisions, get_revision, list_revisions, restore_revision
from longpoint_sdk.calls.schedules import (
    archive_schedule,
    create_schedule,
    delete_schedule,
    get_schedule,
    list_schedules,
    replace_schedule,
    unarchive_schedule,
)
from longpoint_sdk.calls.sheets import (
    get_blank_measure_sheet,
    make_cost_sheet,
    make_fitting_sheet,
    make_measure_sheet,
    make_piece_labels,
    make_saw_sheet,
    make_yard_list,
)
from longpoint_sdk.calls.work import (
    compute_schedule_cut_list,
    cut_sticks,
    get_opening_drawing,
    get_piece,
    get_schedule_sheet,
    get_sticks_drawing,
    list_pieces,
    record_work,
    remove_piece,
)

__all__ = [
    "add_offcut",
    "add_opening",
    "archive_schedule",
    "check_live",
    "check_ready",
    "compare_revisions",
    "compute_apron",
    "compute_casing",
    "compute_corners",
    "compute_cut_list",
    "compute_materials",
    "compute_movement",
    "compute_opening",
    "compute_schedule_cut_list",
    "compute_stool",
    "create_schedule",
    "cut_sticks",
    "delete_schedule",
    "export_schedule",
    "get_blank_measure_sheet",
    "get_offcut",
    "get_opening",
    "get_opening_drawing",
    "get_piece",
    "get_revision",
    "get_schedule",
    "get_schedule_sheet",
    "get_sticks_drawing",
    "import_openings",
    "list_offcuts",
    "list_openings",
    "list_pieces",
    "list_revisions",
    "list_schedules",
    "make_cost_sheet",
    "make_fitting_sheet",
    "make_measure_sheet",
    "make_piece_labels",
    "make_saw_sheet",
    "make_yard_list",
    "read_lengths",
    "record_work",
    "remove_offcut",
    "remove_opening",
    "remove_piece",
    "replace_opening",
    "replace_schedule",
    "restore_revision",
    "unarchive_schedule",
]
