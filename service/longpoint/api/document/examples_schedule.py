"""Examples for the stored operations, and how one leads to another. An invented house."""

from __future__ import annotations

from typing import Any

from longpoint.api.document.examples import HOUSE_TRIM
from longpoint.api.http.operation import Example

HOUSE_BODY: dict[str, Any] = {
    "name": "Heron Cottage",
    "site_note": "Key with the neighbor at number 12.",
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
    "readings": {"jamb_width": "30 5/8", "jamb_height": "46 1/4", "jamb_depth": "3 1/8"},
}

FOUND_BODY: dict[str, Any] = {"profile": "casing 2 1/2", "length": "39 1/2", "note": "Behind the bench."}

SCHEDULE = {
    "empty": Example(summary="A house before anything is measured", request=HOUSE_BODY),
    "measured": Example(
        summary="A house with an opening measured and a length on hand",
        request={**HOUSE_BODY, "openings": [OPENING_BODY], "lengths": [FOUND_BODY]},
    ),
    "row": Example(
        summary="Two windows over one stool, and the seasons their joints will live through",
        request={
            **HOUSE_BODY,
            "openings": [{**OPENING_BODY, "mark": "W1"}, {**OPENING_BODY, "mark": "W2"}],
            "groups": [{"mark": "W", "openings": ["W1", "W2"], "gaps": ["8"], "stock_length": "8 ft"}],
            "movement": {
                "species": "red_oak",
                "installed": {"moisture_content": 7},
                "seasons": [
                    {"name": "winter", "moisture_content": 6},
                    {"name": "summer", "moisture_content": 11},
                ],
            },
        },
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
                {"opening": "K1", "piece": "side_casing/left", "state": "cut"},
                {"opening": "K1", "piece": "side_casing/right", "state": "spoiled", "note": "Cut short."},
            ]
        },
    )
}
STICKS = {
    "two": Example(summary="A stick of casing and one of apron", request={"sticks": ["C1", "A1"]}),
}
CLAIM = {
    "half_an_hour": Example(summary="For half an hour, at the saw in the shop", request={"by": "shop saw"})
}
PLAN = {
    "usual": Example(summary="As long as is usual", request={}),
    "longer": Example(summary="Ten seconds", request={"planning_seconds": 10}),
}
RELEASE = {
    "room": Example(summary="A room", request={"rooms": ["kitchen"]}),
    "all": Example(summary="The whole house", request={"all": True}),
}
IMPORT = {
    "two": Example(
        summary="Two more windows",
        request={"openings": [{**OPENING_BODY, "mark": "B1"}, {**OPENING_BODY, "mark": "B2", "count": 2}]},
    )
}
FOUND_LENGTH = {"casing": Example(summary="An offcut of casing that was found", request=FOUND_BODY)}
LENGTH = {
    "delivered": Example(
        summary="Six of ten sticks came, and two of them are cut",
        request={
            "profile": "casing 2 1/2",
            "length": "14 ft",
            "ordered": 10,
            "delivered": 6,
            "used_up": 2,
            "paid": "16.10",
        },
    ),
    "ordered": Example(
        summary="Ordered, and still to come",
        request={"profile": "apron", "length": "8 ft", "ordered": 3, "paid": "8.40"},
    ),
}
