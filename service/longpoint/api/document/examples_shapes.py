"""Requests for openings that are not plain rectangles. An invented house."""

from __future__ import annotations

from longpoint.api.http.operation import Example

_CASING = {"casing_width": "2 1/2 in", "reveal": "3/16 in"}

CORNERS = {
    "two_diagonals": Example(
        summary="Two widths, two heights and both diagonals: the second checks the tape",
        request={
            "readings": {
                "jamb_width": "30 5/8 in",
                "head_width": "30 1/2 in",
                "left_jamb_height": "46 1/4 in",
                "right_jamb_height": "46 1/8 in",
                "diagonal_from_bottom_left": "55 3/8 in",
                "diagonal_from_bottom_right": "55 3/8 in",
            },
            **_CASING,
        },
    ),
    "half_round": Example(
        summary="A half-round head in seven straight pieces",
        request={
            "readings": {"jamb_width": "36 in", "jamb_height": "40 in", "rise": "18 in", "head_pieces": 7},
            **_CASING,
        },
    ),
    "leaning": Example(
        summary="A square frame whose casing leans: compound saw settings",
        request={
            "readings": {"jamb_width": "900", "jamb_height": "1200"},
            "bottom": "casing",
            "casing_width": "70",
            "reveal": "5",
            "spring_degrees": 85,
            "unit": "mm",
            "rounding": {"to": "0.5 mm"},
        },
    ),
}

MOVEMENT = {
    "oak_over_a_year": Example(
        summary="Flat-sawn red oak casing, installed at 8 percent, over a winter and a summer",
        request={
            "species": "red_oak",
            "width": "3 1/2 in",
            "installed": {"name": "installed", "moisture_content": 8},
            "seasons": [
                {"name": "winter", "temperature": 68, "relative_humidity": 25},
                {"name": "summer", "temperature": 77, "relative_humidity": 65},
            ],
        },
    ),
    "celsius": Example(
        summary="Quarter-sawn white oak in millimeters and Celsius",
        request={
            "species": "white_oak",
            "grain": "quarter_sawn",
            "width": "90",
            "unit": "mm",
            "scale": "celsius",
            "installed": {"temperature": 20, "relative_humidity": 50},
            "seasons": [{"name": "heating", "temperature": 21, "relative_humidity": 30}],
        },
    ),
}

_TRIM = {
    "casing": {"profile": "casing 2 1/2", "width": "2 1/2 in", "thickness": "5/8 in"},
    "reveal": "3/16 in",
    "stool": {"profile": "stool stock", "thickness": "3/4 in", "horn": "3/4 in", "nosing": "7/8 in"},
    "apron": {"profile": "apron", "width": "2 1/2 in", "thickness": "5/8 in"},
}

REAL_OPENINGS = {
    "out_of_square": Example(
        summary="A window out of square, a cabinet at its left, the wall proud of its jamb",
        request={
            "mark": "B2",
            "trim": _TRIM,
            "square_gap": "0 in",
            "readings": {
                "jamb_width": "30 5/8 in",
                "head_width": "30 1/2 in",
                "left_jamb_height": "46 1/4 in",
                "right_jamb_height": "46 1/8 in",
                "diagonal_from_bottom_left": "55 3/8 in",
                "jamb_depth": "3 1/8 in",
                "clearances": {"left": "3 in"},
                "wall": [{}, {"proud": "1/16 in"}, {"proud": "1/8 in"}, {"proud": "1/4 in"}],
            },
        },
    ),
    "mulled_pair": Example(
        summary="Two units joined by a mull, under one butted head with a fillet and a cap",
        request={
            "mark": "D1",
            "trim": {
                **_TRIM,
                "head_style": "butted",
                "overhang": "1/2 in",
                "fillet": {"profile": "fillet", "height": "1/2 in", "depth": "1 in", "overhang": "3/4 in"},
                "cap": {
                    "profile": "cap",
                    "height": "3/4 in",
                    "depth": "2 in",
                    "overhang": "1 1/2 in",
                    "ends": "mitered_return",
                },
                "mull_casing": {"profile": "mull casing", "width": "3 in", "thickness": "5/8 in"},
            },
            "readings": {
                "joined_widths": ["24 in", "24 in"],
                "mull_widths": ["3 1/2 in"],
                "jamb_height": "48 in",
                "jamb_depth": "3 1/8 in",
            },
        },
    ),
    "extended_jamb": Example(
        summary="A jamb extended to a wall that stands proud of it, tapered, in millimeters",
        request={
            "mark": "E1",
            "unit": "mm",
            "rounding": {"to": "0.5 mm"},
            "bottom": "casing",
            "wall_answer": "extend",
            "trim": {
                "casing": {"profile": "casing 70", "width": "70", "thickness": "15"},
                "reveal": "5",
                "extension": {"profile": "lining", "thickness": "19", "reveal": "3"},
            },
            "readings": {
                "jamb_width": "900",
                "jamb_height": "1200",
                "wall": [{"proud": "14"}, {"proud": "12"}, {"proud": "10"}, {"proud": "12"}],
            },
        },
    ),
    "door_to_hang": Example(
        summary="A door in a jamb made for it: hinge and strike legs, stops and casing",
        request={
            "mark": "F1",
            "bottom": "floor",
            "trim": {
                "casing": _TRIM["casing"],
                "reveal": "1/4 in",
                "floor_clearance": "1/8 in",
                "stop": {"width": "1 1/4 in", "thickness": "3/8 in"},
            },
            "readings": {
                "door": {
                    "width": "30 in",
                    "height": "80 in",
                    "hinge_side": "right",
                    "rough_width": "32 1/4 in",
                }
            },
        },
    ),
}

GROUPED = {
    "one_stool_under_two": Example(
        summary="Two windows whose heads are to line up, over one long stool jointed between them",
        request={
            "trim_specs": {"house": _TRIM},
            "openings": [
                {
                    "mark": mark,
                    "room": "Hall",
                    "trim": "house",
                    "readings": {"jamb_width": width, "jamb_height": "48 in", "jamb_depth": "3 1/8 in"},
                }
                for mark, width in (("H1", "30 in"), ("H2", "36 in"))
            ],
            "groups": [
                {
                    "mark": "H1+H2",
                    "openings": ["H1", "H2"],
                    "heads": ["80 in", "80 1/8 in"],
                    "gaps": ["12 in"],
                    "stock_length": "6 ft",
                }
            ],
        },
    ),
}
