"""Whole numbers written with a point are taken where a type takes whole numbers, and nowhere else."""

from typing import Annotated, Literal

import msgspec
import pytest

from longpoint.values.whole import whole


class Screws(msgspec.Struct, tag="screws", tag_field="kind"):
    count: int
    gauge: Literal[6, 8]


class Glue(msgspec.Struct, tag="glue", tag_field="kind"):
    weight: float


class Order(msgspec.Struct):
    holds: Screws | Glue | None = None
    packs: list[Annotated[int, msgspec.Meta(ge=1)]] = []
    by_size: dict[str, int] = {}
    grade: Literal["1", "2"] = "1"
    either: int | float = 0


@pytest.mark.parametrize(
    ("sent", "taken"),
    [
        (
            {"holds": {"kind": "screws", "count": 12.0, "gauge": 8.0}},
            {"holds": {"kind": "screws", "count": 12, "gauge": 8}},
        ),
        ({"holds": {"kind": "glue", "weight": 2.0}}, {"holds": {"kind": "glue", "weight": 2.0}}),
        ({"packs": [1.0, 2.5]}, {"packs": [1, 2.5]}),
        ({"by_size": {"8": 3.0}}, {"by_size": {"8": 3}}),
        ({"grade": 1.0}, {"grade": 1.0}),
        ({"either": 4.0}, {"either": 4.0}),
        ({"unknown": 4.0}, {"unknown": 4.0}),
        ({"packs": [float(2**53)]}, {"packs": [float(2**53)]}),
        ({"holds": 3.0}, {"holds": 3.0}),
        ({"packs": 7.0, "by_size": 7.0}, {"packs": 7.0, "by_size": 7.0}),
    ],
)
def test_a_point_and_a_zero_are_dropped_where_a_whole_number_is_taken(sent: object, taken: object) -> None:
    got = whole(Order, sent)
    assert (got, repr(got)) == (taken, repr(taken))
