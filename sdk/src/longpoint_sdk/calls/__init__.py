"""A call of each operation, for a client's `send` and `send_raw`. Generated; do not edit."""

from longpoint_sdk.calls.a_house import compute_cut_list, compute_materials
from longpoint_sdk.calls.health import check_live, check_ready
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
from longpoint_sdk.calls.revisions import get_revision, list_revisions, restore_revision
from longpoint_sdk.calls.schedules import (
    archive_schedule,
    create_schedule,
    delete_schedule,
    get_schedule,
    list_schedules,
    replace_schedule,
    unarchive_schedule,
)

__all__ = [
    "add_opening",
    "archive_schedule",
    "check_live",
    "check_ready",
    "compute_apron",
    "compute_casing",
    "compute_corners",
    "compute_cut_list",
    "compute_materials",
    "compute_movement",
    "compute_opening",
    "compute_stool",
    "create_schedule",
    "delete_schedule",
    "get_opening",
    "get_revision",
    "get_schedule",
    "list_openings",
    "list_revisions",
    "list_schedules",
    "read_lengths",
    "remove_opening",
    "replace_opening",
    "replace_schedule",
    "restore_revision",
    "unarchive_schedule",
]
