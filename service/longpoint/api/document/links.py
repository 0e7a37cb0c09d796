"""How one stored operation's answer leads to the next: what a caller, or whoever tries the API, can take up from it."""

from typing import Any

_THIS = "$response.body#/id"
_UNDER = "$request.path.schedule_id"
_FIRST = "$response.body#/items/0/id"
_NUMBER = "$response.body#/items/0/number"
_NOW = {"If-Match": "$response.header.ETag"}


def _leads_to(id: str, **parameters: str) -> dict[str, Any]:
    """A link to an operation, with where its parameters come from."""
    return {"operationId": id, "parameters": parameters}


SCHEDULE_LINKS = {
    name: _leads_to(name, schedule_id=_THIS)
    for name in (
        "get_schedule",
        "list_openings",
        "add_opening",
        "import_openings",
        "list_revisions",
        "compute_schedule_cut_list",
        "get_schedule_sheet",
        "get_sticks_drawing",
        "export_schedule",
        "record_work",
        "list_lengths",
        "add_length",
        "list_pieces",
        "make_plan",
        "list_plans",
        "cut_sticks",
        "release_openings",
        "hold_openings",
    )
}
SCHEDULE_LINKS |= {
    name: _leads_to(name, schedule_id=_THIS, **_NOW)
    for name in (
        "replace_schedule",
        "archive_schedule",
        "unarchive_schedule",
        "delete_schedule",
        "restore_revision",
    )
}
"""From a schedule to what it holds and what is done with it."""
MOVED_LINKS = {
    name: _leads_to(name, schedule_id=_UNDER, **_NOW)
    for name in ("replace_schedule", "archive_schedule", "unarchive_schedule", "delete_schedule")
}
"""From a schedule that was changed to what comes next."""
LISTED_SCHEDULE_LINKS = {"get_schedule": _leads_to("get_schedule", schedule_id=_FIRST)}
OPENING_LINKS = {
    name: _leads_to(name, schedule_id=_UNDER, opening=_THIS, **more)
    for name, more in (
        ("get_opening", {}),
        ("get_opening_drawing", {}),
        ("replace_opening", _NOW),
        ("remove_opening", _NOW),
    )
}
LISTED_OPENING_LINKS = {"get_opening": _leads_to("get_opening", schedule_id=_UNDER, opening=_FIRST)}
LENGTH_LINKS = {
    name: _leads_to(name, schedule_id=_UNDER, lot=_THIS, **more)
    for name, more in (("get_length", {}), ("put_length", _NOW), ("remove_length", _NOW))
}
LISTED_LENGTH_LINKS = {"get_length": _leads_to("get_length", schedule_id=_UNDER, lot=_FIRST)}
PIECE_LINKS = {"remove_piece": _leads_to("remove_piece", schedule_id=_UNDER, piece_id=_THIS, **_NOW)}
LISTED_PIECE_LINKS = {"get_piece": _leads_to("get_piece", schedule_id=_UNDER, piece_id=_FIRST)}
WORK_LINKS = {"get_piece": _leads_to("get_piece", schedule_id=_UNDER, piece_id="$response.body#/pieces/0/id")}
LISTED_PLAN_LINKS = {"get_plan": _leads_to("get_plan", schedule_id=_UNDER, number=_NUMBER)}
PLAN_LINKS = {
    id: _leads_to(id, schedule_id=_UNDER, name="$response.body#/sticks/0/name")
    for id in ("get_stick", "claim_stick")
}
STICK_LINKS = {
    id: _leads_to(id, schedule_id=_UNDER, name="$request.path.name")
    for id in ("get_stick", "claim_stick", "give_up_claim")
}
REVISION_LINKS = {
    "get_revision": _leads_to("get_revision", schedule_id=_UNDER, number=_NUMBER),
    "compare_revisions": _leads_to("compare_revisions", schedule_id=_UNDER, **{"from": _NUMBER}),
}
JOB_LINKS = {
    name: _leads_to(name, job_id=_THIS)
    for name in ("get_job", "get_job_events", "get_job_result", "cancel_job")
}
"""From a job to how it goes on."""
