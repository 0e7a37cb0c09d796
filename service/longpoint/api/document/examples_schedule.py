"""Examples for the stored operations, and how one leads to another. An invented house."""

from __future__ import annotations

from typing import Any

from longpoint.api.document.examples import HOUSE_TRIM
from longpoint.api.http.operation import Example

HOUSE_BODY: dict[str, Any] = {
    "name": "Heron Cottage",
    "site_note": "Key with the neighbour at number 12.",
    "unit": "in",
    "trim_specs": {"painted": HOUSE_TRIM},
    "stock": [
        {
            "profile": "casing 2 1/2",
            "sticks": [{"length": "8 ft", "price": "9.60"}, {"length": "14 ft", "price": "16.10"}],
        },
        {"profile": "stool stock", "sticks": [{"length": "8 ft", "price": "21.00"}]},
        {"profile": "apron", "sticks": [{"length": "8 ft", "price": "8.40"}]},
    ],
}

OPENING_BODY: dict[str, Any] = {
    "mark": "K1",
    "room": "kitchen",
    "trim": "painted",
    "readings": {"jamb_width": "30 5/8", "leg_height": "46 1/4", "jamb_depth": "3 1/8"},
}

OFFCUT_BODY: dict[str, Any] = {"profile": "casing 2 1/2", "length": "41 1/2", "note": "Behind the bench."}

SCHEDULE = {
    "empty": Example(summary="A house before anything is measured", request=HOUSE_BODY),
    "measured": Example(
        summary="A house with an opening measured and an offcut on the rack",
        request={**HOUSE_BODY, "openings": [OPENING_BODY], "rack": [OFFCUT_BODY]},
    ),
}
HOUSE = {
    "renamed": Example(summary="Another name for the house", request={**HOUSE_BODY, "name": "The Heronry"})
}
OPENING = {"window": Example(summary="A kitchen window", request=OPENING_BODY)}
WORK = {
    "cut": Example(
        summary="A leg cut, and the other spoiled",
        request={
            "pieces": [
                {"opening": "K1", "part": "casing_leg/left", "state": "cut"},
                {"opening": "K1", "part": "casing_leg/right", "state": "spoiled", "note": "Cut short."},
            ]
        },
    )
}
STICKS = {
    "first": Example(summary="The first stick of casing", request={"profile": "casing 2 1/2", "sticks": [1]})
}
IMPORT = {
    "two": Example(
        summary="Two more windows",
        request={"openings": [{**OPENING_BODY, "mark": "B1"}, {**OPENING_BODY, "mark": "B2", "count": 2}]},
    )
}
OFFCUT = {"casing": Example(summary="A length of casing", request=OFFCUT_BODY)}

_THIS = "$response.body#/id"
_UNDER = "$request.path.schedule_id"
_NOW = {"If-Match": "$response.header.ETag"}


def leads_to(id: str, **parameters: str) -> dict[str, Any]:
    """A link to an operation, with where its parameters come from."""
    return {"operationId": id, "parameters": parameters}


SCHEDULE_LINKS = {
    name: leads_to(name, schedule_id=_THIS)
    for name in (
        "get_schedule",
        "list_openings",
        "add_opening",
        "list_revisions",
        "compute_schedule_cut_list",
        "export_schedule",
        "list_offcuts",
        "list_pieces",
    )
}
SCHEDULE_LINKS |= {
    name: leads_to(name, schedule_id=_THIS, **_NOW)
    for name in ("replace_schedule", "archive_schedule", "unarchive_schedule", "delete_schedule")
}
OPENING_LINKS = {
    name: leads_to(name, schedule_id=_UNDER, opening=_THIS, **more)
    for name, more in (("get_opening", {}), ("replace_opening", _NOW), ("remove_opening", _NOW))
}
_FIRST = "$response.body#/items/0/id"
LISTED_OPENING_LINKS = {"get_opening": leads_to("get_opening", schedule_id=_UNDER, opening=_FIRST)}
OFFCUT_LINKS = {
    "get_offcut": leads_to("get_offcut", schedule_id=_UNDER, offcut_id=_THIS),
    "remove_offcut": leads_to("remove_offcut", schedule_id=_UNDER, offcut_id=_THIS, **_NOW),
}
LISTED_OFFCUT_LINKS = {"get_offcut": leads_to("get_offcut", schedule_id=_UNDER, offcut_id=_FIRST)}
LISTED_PIECE_LINKS = {"get_piece": leads_to("get_piece", schedule_id=_UNDER, piece_id=_FIRST)}
_NUMBER = "$response.body#/items/0/number"
REVISION_LINKS = {
    "get_revision": leads_to("get_revision", schedule_id=_UNDER, number=_NUMBER),
    "compare_revisions": leads_to(
        "compare_revisions", schedule_id=_UNDER, **{"from": "$response.body#/items/0/number"}
    ),
}
