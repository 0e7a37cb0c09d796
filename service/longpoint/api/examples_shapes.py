"""Requests for openings that are not plain rectangles. An invented house."""

from __future__ import annotations

from longpoint.api.operation import Example

_CASING = {"casing_width": "2 1/2 in", "reveal": "3/16 in"}

CORNERS = {
    "two_diagonals": Example(
        summary="Two widths, two heights and both diagonals: the second checks the tape",
        request={
            "readings": {
                "jamb_width": "30 5/8 in",
                "head_width": "30 1/2 in",
                "left_height": "46 1/4 in",
                "right_height": "46 1/8 in",
                "diagonal_from_bottom_left": "55 3/8 in",
                "diagonal_from_bottom_right": "55 3/8 in",
            },
            **_CASING,
        },
    ),
    "half_round": Example(
        summary="A half-round head in seven straight pieces",
        request={
            "readings": {"jamb_width": "36 in", "leg_height": "40 in", "rise": "18 in", "head_pieces": 7},
            **_CASING,
        },
    ),
    "leaning": Example(
        summary="A square frame whose casing leans: compound saw settings",
        request={
            "readings": {"jamb_width": "900", "leg_height": "1200"},
            "foot_style": "picture_frame",
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
        summary="Flat-sawn red oak casing, fitted at 8 percent, over a winter and a summer",
        request={
            "species": "red_oak",
            "width": "3 1/2 in",
            "installed": {"name": "fitted", "moisture_content": 8},
            "seasons": [
                {"name": "winter", "temperature": 68, "relative_humidity": 25},
                {"name": "summer", "temperature": 77, "relative_humidity": 65},
            ],
        },
    ),
    "celsius": Example(
        summary="Quarter-sawn white oak in millimetres and Celsius",
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
