"""/v1/lengths: read what people write, and give it back exact and rounded."""

from __future__ import annotations

from typing import Annotated

from litestar import post
from litestar.params import JSONBody
from msgspec import Meta

from longpoint.api.http.operation import Example, operation
from longpoint.lengths import (
    Length,
    MarkedLength,
    Rounding,
    Unit,
    feet_inches,
    length_writer,
    rounded,
)
from longpoint.values import Given, Value


class LengthsRequest(Given, frozen=True):
    """Lengths to read.

    Attributes:
        lengths: The texts to read, each as it was written down.
        unit: The unit of those that carry none; without it each must carry its own.
        rounding: It says how the answered lengths are rounded.
    """

    lengths: Annotated[tuple[Length, ...], Meta(min_length=1, max_length=1000)]
    unit: Unit | None = None
    rounding: Rounding = Rounding()


class LengthRead(MarkedLength, frozen=True, kw_only=True):
    """One length that was read.

    Attributes:
        given: The text it was read from.
        feet_inches: The rounded length in feet and inches, when it is rounded to a fraction of an inch.
    """

    given: str
    feet_inches: str | None


class LengthsAnswer(Value, frozen=True):
    """The lengths that were read, in the order they came.

    Attributes:
        lengths: The answer has one for each length that was given.
    """

    lengths: tuple[LengthRead, ...]


_EXAMPLES = {
    "tape": Example(
        summary="Inches, feet and inches, and millimeters in one request, to the sixteenth",
        request={"lengths": ["30 5/8 in", "2' 6-5/8\"", "778 mm"]},
    ),
    "bare": Example(
        summary="Bare numbers in millimeters, to the half millimeter and never short",
        request={
            "lengths": ["778", "1203.3"],
            "unit": "mm",
            "rounding": {"to": "0.5 mm", "mode": "up"},
        },
    ),
}


@post(
    "/v1/lengths",
    **operation("read_lengths", summary="Read lengths", tag="Lengths", examples=_EXAMPLES),
)
async def read_lengths(data: JSONBody[LengthsRequest]) -> LengthsAnswer:
    """Reads up to a thousand lengths as people write them and gives each back exact and rounded once.

    What cannot be read one way only is refused, never guessed: when any of them is wrong, all that are wrong
    are listed and none is answered.
    """
    return LengthsAnswer(tuple(_read(length, data.rounding) for length in data.lengths))


def _read(length: Length, rounding: Rounding) -> LengthRead:
    out = length_writer(rounding)(length)
    return LengthRead(
        out.exact,
        out.real,
        out.text,
        out.unit,
        out.residual,
        given=length.text,
        feet_inches=feet_inches(rounded(length, rounding).value) if out.unit is Unit.IN else None,
    )
