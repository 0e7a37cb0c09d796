"""Every resource of the API, in the order the document lists them."""

from typing import Any

from litestar import Response
from litestar.handlers import HTTPRouteHandler

from longpoint.api.computed.corners import compute_corners
from longpoint.api.computed.cut_list import compute_cut_list
from longpoint.api.computed.health import check_live, check_ready
from longpoint.api.computed.lengths import read_lengths
from longpoint.api.computed.materials import compute_materials
from longpoint.api.computed.movement import compute_movement
from longpoint.api.computed.opening import compute_opening
from longpoint.api.computed.pieces import compute_apron, compute_casing, compute_stool
from longpoint.api.computed.sheets import (
    get_blank_measure_sheet,
    make_cost_sheet,
    make_labels,
    make_material_list,
    make_measure_sheet,
    make_opening_sheet,
    make_stick_sheet,
)
from longpoint.api.stored.changes import compare_revisions
from longpoint.api.stored.cut_list import compute_schedule_cut_list
from longpoint.api.stored.lengths import add_length, get_length, list_lengths, put_length, remove_length
from longpoint.api.stored.openings import (
    add_opening,
    get_opening,
    list_openings,
    remove_opening,
    replace_opening,
)
from longpoint.api.stored.plans import get_plan, list_plans, make_plan
from longpoint.api.stored.releasing import hold_openings, release_openings
from longpoint.api.stored.revisions import get_revision, list_revisions, restore_revision
from longpoint.api.stored.schedules import (
    archive_schedule,
    create_schedule,
    delete_schedule,
    get_schedule,
    list_schedules,
    replace_schedule,
    unarchive_schedule,
)
from longpoint.api.stored.sheets import get_opening_drawing, get_schedule_sheet, get_sticks_drawing
from longpoint.api.stored.sticks import claim_stick, get_stick, release_stick
from longpoint.api.stored.transfer import export_schedule, import_openings
from longpoint.api.stored.work import cut_sticks, get_piece, list_pieces, record_work, remove_piece

OPERATIONS: list[Any] = [
    read_lengths,
    compute_stool,
    compute_apron,
    compute_casing,
    compute_opening,
    compute_corners,
    compute_movement,
    compute_cut_list,
    compute_materials,
    make_opening_sheet,
    make_stick_sheet,
    make_material_list,
    make_cost_sheet,
    make_measure_sheet,
    get_blank_measure_sheet,
    make_labels,
    create_schedule,
    list_schedules,
    get_schedule,
    replace_schedule,
    archive_schedule,
    unarchive_schedule,
    delete_schedule,
    list_openings,
    add_opening,
    get_opening,
    replace_opening,
    remove_opening,
    release_openings,
    hold_openings,
    list_revisions,
    get_revision,
    restore_revision,
    compare_revisions,
    import_openings,
    export_schedule,
    make_plan,
    list_plans,
    get_plan,
    get_stick,
    claim_stick,
    release_stick,
    compute_schedule_cut_list,
    get_schedule_sheet,
    get_sticks_drawing,
    get_opening_drawing,
    record_work,
    cut_sticks,
    list_pieces,
    get_piece,
    remove_piece,
    list_lengths,
    add_length,
    get_length,
    put_length,
    remove_length,
    check_live,
    check_ready,
]
"""What the OpenAPI document describes."""


def _options() -> list[HTTPRouteHandler]:
    """OPTIONS for each address: the framework's own answer knows only the first method registered for it."""
    methods: dict[str, set[str]] = {}
    for handler in OPERATIONS:
        for path in handler.paths:
            methods.setdefault(path, set()).update(handler.http_methods)
    return [_options_of(path, ", ".join(sorted({*known, "OPTIONS"}))) for path, known in methods.items()]


def _options_of(path: str, allow: str) -> HTTPRouteHandler:
    async def tell_methods() -> Response[None]:
        return Response(None, status_code=204, headers={"allow": allow})

    return HTTPRouteHandler(path, http_method=["OPTIONS"], status_code=204, include_in_schema=False)(
        tell_methods
    )


OPTIONS = _options()
"""What tells which methods an address has; no part of the document."""
