"""Requests shown in the document, each tried against the service by a test. An invented house."""

from __future__ import annotations

from typing import Any

from longpoint.api.http.operation import Example

HOUSE_TRIM: dict[str, Any] = {
    "casing": {"profile": "casing 2 1/2", "width": "2 1/2 in", "thickness": "5/8 in"},
    "reveal": "3/16 in",
    "stool": {"profile": "stool stock", "thickness": "3/4 in", "horn": "3/4 in", "nosing": "7/8 in"},
    "apron": {"profile": "apron", "width": "2 1/2 in", "thickness": "5/8 in"},
}

KITCHEN_WINDOW = {"jamb_width": "30 5/8 in", "jamb_height": "46 1/4 in", "jamb_depth": "3 1/8 in"}

STOOL = {
    "one_reading": Example(
        summary="One depth for both ends",
        request={
            "jamb_width": "30 5/8 in",
            "jamb_depth": "3 1/8 in",
            "reveal": "3/16 in",
            "casing_width": "2 1/2 in",
            "horn": "3/4 in",
            "nosing": "7/8 in",
            "apron_thickness": "5/8 in",
        },
    ),
}

APRON = {
    "returned": Example(
        summary="Ends returned to the wall",
        request={
            "jamb_width": "30 5/8 in",
            "reveal": "3/16 in",
            "casing_width": "2 1/2 in",
            "thickness": "5/8 in",
        },
    ),
}

CASING = {
    "on_a_stool": Example(
        summary="Mitered head, legs on the stool",
        request={
            "jamb_width": "30 5/8 in",
            "jamb_height": "46 1/4 in",
            "reveal": "3/16 in",
            "casing_width": "2 1/2 in",
        },
    ),
    "door": Example(
        summary="A door: butted head, legs short of the floor, in millimeters",
        request={
            "jamb_width": "762",
            "jamb_height": "2032",
            "reveal": "5",
            "casing_width": "70",
            "bottom": "floor",
            "floor_clearance": "3",
            "head_style": "butted",
            "overhang": "12",
            "unit": "mm",
            "rounding": {"to": "0.5 mm"},
        },
    ),
}

OPENING = {
    "window": Example(
        summary="A window on a stool",
        request={
            "mark": "K1",
            "readings": {"jamb_width": "30 5/8 in", "jamb_height": "46 1/4 in", "jamb_depth": "3 1/8 in"},
            "trim": HOUSE_TRIM,
        },
    ),
    "octagon": Example(
        summary="An eight-sided window, picture-framed",
        request={
            "mark": "A1",
            "bottom": "casing",
            "readings": {"sides": ["10 in"] * 8, "angles": [135] * 8},
            "trim": {"casing": HOUSE_TRIM["casing"], "reveal": "3/16 in"},
        },
    ),
}

CUT_LIST = {
    "two_rooms": Example(
        summary="Three openings over two rooms, with stock",
        request={
            "trim_specs": {"house": HOUSE_TRIM},
            "openings": [
                {
                    "mark": "K1",
                    "room": "Kitchen",
                    "trim": "house",
                    "count": 2,
                    "readings": KITCHEN_WINDOW,
                },
                {
                    "mark": "P1",
                    "room": "Pantry",
                    "trim": "house",
                    "bottom": "casing",
                    "readings": {"jamb_width": "24 in", "jamb_height": "24 in"},
                },
            ],
            "stock": [
                {
                    "profile": "casing 2 1/2",
                    "sticks": [{"length": "8 ft", "price": "9.20"}, {"length": "14 ft", "price": "15.90"}],
                },
                {"profile": "stool stock", "sticks": [{"length": "8 ft", "price": "21.00"}]},
                {"profile": "apron", "sticks": [{"length": "8 ft", "price": "7.40"}]},
            ],
        },
    ),
    "all_of_it": Example(
        summary="A window with its saw order, materials, hours and money",
        request={
            "trim_specs": {"house": HOUSE_TRIM},
            "openings": [{"mark": "K1", "room": "Kitchen", "trim": "house", "readings": KITCHEN_WINDOW}],
            "stock": [
                {"profile": "casing 2 1/2", "sticks": [{"length": "14 ft", "price": "15.90"}]},
                {"profile": "stool stock", "sticks": [{"length": "8 ft", "price": "21.00"}]},
                {"profile": "apron", "sticks": [{"length": "8 ft", "price": "7.40"}]},
            ],
            "include": ["saw_order", "materials", "hours", "cost"],
            "shop": {
                "build_year": 1954,
                "rates": {"nail_spacing": "14 in", "paint_coats": 1, "install_minutes": 6.5},
                "packages": [
                    {"material": "caulk", "name": "tube", "size": 10.1, "price": "4.20"},
                    {"material": "paint", "name": "quart", "size": 32, "price": "18.50"},
                ],
                "wages": {"hour": "58.00", "tasks": {"final_coat": "44.00"}},
                "saw": {"smallest_held": "8 in"},
            },
        },
    ),
}

MATERIALS = {
    "a_window": Example(
        summary="What one window takes beside its sticks",
        request={
            "trim_specs": {"house": HOUSE_TRIM},
            "openings": [{"mark": "K1", "room": "Kitchen", "trim": "house", "readings": KITCHEN_WINDOW}],
            "shop": {"packages": [{"material": "caulk", "name": "tube", "size": 10.1, "price": "4.20"}]},
        },
    ),
}

LABELS = {
    "common_grid": Example(summary="On the paper's common grid", request=CUT_LIST["two_rooms"].request),
    "own_grid": Example(
        summary="On a grid of one's own, five places used up",
        request={
            **CUT_LIST["two_rooms"].request,
            "grid": {
                "across": 2,
                "down": 7,
                "width": "99 mm",
                "height": "38 mm",
                "left": "5 mm",
                "top": "6 mm",
                "gap_across": "3 mm",
            },
            "skip": 5,
        },
    ),
}
