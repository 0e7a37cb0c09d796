"""How things are called: by what a carpenter would call them, and by what was sent."""

from collections.abc import Iterator

import pytest

from asking import Service


@pytest.fixture(scope="module")
def service() -> Iterator[Service]:
    with Service() as service:
        yield service


OCTAGON = {"sides": ["12 in"] * 8, "angles": [135] * 8}


def test_the_sides_of_an_octagon_are_no_legs(service: Service) -> None:
    request = {
        "mark": "O1",
        "bottom": "casing",
        "readings": OCTAGON,
        "trim": {"casing": {"width": "2 in", "thickness": "5/8 in"}, "reveal": "1/4 in"},
    }
    answer = service.opening(request)
    ends = {piece["key"]: [end["at"] for end in piece["ends"]] for piece in answer["pieces"]}
    assert ends["side_casing/right"] == ["head 5", "sill"]
    house = {"openings": [request | {"trim": "house"}], "trim_specs": {"house": request["trim"]}}
    house["stock"] = [{"profile": "casing", "sticks": [{"length": "8 ft", "price": "9"}]}]
    sheet = service.post("/v1/sheets/stick-sheet", house).json()
    assert "casing side 2" in str(sheet)
    assert "side casing" not in str(sheet)


def test_a_corner_too_sharp_is_named(service: Service) -> None:
    trim = {"casing": {"width": "2 in", "thickness": "5/8 in"}, "reveal": "1/4 in"}
    for readings, named in (
        ({"sides": ["5 in", "30 in", "30 in"]}, "The top corner comes to 9.56 degrees"),
        (
            OCTAGON | {"angles": [135, 135, 179, 91, 135, 135, 135, 135]},
            "corner between sides 3 and 4 has 179",
        ),
        (
            {"jamb_width": "10 in", "left_jamb_height": "60 in", "right_jamb_height": "10 in"},
            "The top left corner comes to",
        ),
    ):
        asked = {"mark": "A", "bottom": "casing", "readings": readings, "trim": trim}
        errors = service.post("/v1/opening", asked).json()["errors"]
        assert any(named in error["detail"] for error in errors), errors


def test_a_stool_of_two_depths_says_how_much_further_off_it_stands(service: Service) -> None:
    stool = {"thickness": "3/4 in", "horn": "3/4 in", "nosing": "7/8 in"}
    answer = service.opening(
        {
            "mark": "A",
            "readings": {
                "jamb_width": "30 in",
                "jamb_height": "40 in",
                "left_depth": "3 in",
                "right_depth": "3 1/8 in",
            },
            "trim": {"casing": {"width": "2 in", "thickness": "5/8 in"}, "reveal": "1/4 in", "stool": stool},
        }
    )
    (note,) = answer["pieces"][0]["notes"]
    assert note.endswith("at the left end the nosing stands 1/8 in further off the wall.")
