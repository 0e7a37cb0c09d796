"""/v1/lengths: read what people write, and give it back exact and rounded."""

from typing import Annotated

from litestar import post
from litestar.params import JSONBody
from msgspec import Meta

from longpoint.api.http.faults import Faults
from longpoint.api.http.operation import Example, operation
from longpoint.api.wire.base import LengthText, Wire, WireOut
from longpoint.api.wire.lengths import LengthOut, RoundingIn, length_writer, read_length
from longpoint.lengths import Unit, feet_inches, rounded


class LengthsIn(Wire):
    """Lengths to read.

    Attributes:
        lengths: Each as it was written down.
        unit: The unit of those that carry none; without it each must carry its own.
        rounding: How to round them.
    """

    lengths: Annotated[list[LengthText], Meta(min_length=1, max_length=1000)]
    unit: Unit | None = None
    rounding: RoundingIn = RoundingIn()


class LengthRead(LengthOut):
    """One length that was read.

    Attributes:
        given: The text it was read from.
        feet_inches: The rounded length in feet and inches, when it is rounded to a fraction of an inch.
    """

    given: str
    feet_inches: str | None


class LengthsOut(WireOut):
    """The lengths that were read, in the order they came.

    Attributes:
        lengths: One for each that was given.
    """

    lengths: list[LengthRead]


_EXAMPLES = {
    "tape": Example(
        summary="Inches, feet and inches, and millimetres in one request, to the sixteenth",
        request={"lengths": ["34 1/2 in", "2' 10-1/2\"", "876 mm"]},
    ),
    "bare": Example(
        summary="Bare numbers in millimetres, to the half millimetre and never short",
        request={
            "lengths": ["876", "1203.3"],
            "unit": "mm",
            "rounding": {"to": "0.5 mm", "mode": "up"},
        },
    ),
}


@post(
    "/v1/lengths",
    **operation("read_lengths", summary="Read lengths", tag="Lengths", examples=_EXAMPLES),
)
async def read_lengths(data: JSONBody[LengthsIn]) -> LengthsOut:
    """Reads up to a thousand lengths as people write them and gives each back exact and rounded once.

    What cannot be read one way only is refused, never guessed: when any of them is wrong, all that are wrong
    are listed and none is answered.
    """
    faults = Faults()
    rounding = data.rounding.value()
    write = length_writer(rounding)
    read: list[LengthRead] = []
    for index, text in enumerate(data.lengths):
        value = read_length(text, data.unit, ("lengths", index), faults)
        if value is None:
            continue
        out = write(value)
        read.append(
            LengthRead(
                given=text,
                exact=out.exact,
                real=out.real,
                text=out.text,
                unit=out.unit,
                residual=out.residual,
                feet_inches=feet_inches(rounded(value, rounding).value) if out.unit is Unit.IN else None,
            )
        )
    faults.raise_any()
    return LengthsOut(lengths=read)
