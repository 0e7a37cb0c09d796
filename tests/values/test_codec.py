"""Values in and out by the types of their fields."""

from __future__ import annotations

from typing import Any

import msgspec
import pytest

from longpoint.lengths import (
    Fraction,
    Irrational,
    Length,
    PositiveLength,
    Real,
    Rounding,
    Unit,
    length_writer,
)
from longpoint.values import (
    Angle,
    Given,
    Place,
    Price,
    Unreadable,
    Value,
    decoder,
    encoder,
    packed_decoder,
    packer,
    schemas,
)

WRITE = length_writer(Rounding())
REFERENCE = "#/components/schemas/{name}"


class Board(Given, frozen=True, kw_only=True):
    width: PositiveLength
    reveal: Length = Length.of("3/16 in")
    price: Price | None = None
    angle: Angle = Angle(45)
    name: str = "board"


class Cut(Value, frozen=True):
    exact: Fraction
    real: Real
    at: Place | None = None


SENT = {"width": "2 1/2", "reveal": "5 mm", "price": "14.8", "angle": 22.5, "name": "casing"}
STORED = SENT | {"price": "14.80"}


def test_a_record_is_read_by_the_types_of_its_fields() -> None:
    board = decoder(Board, Unit.IN).decode(msgspec.json.encode(SENT))
    assert (board.width, board.reveal, board.price, board.angle) == (
        Fraction(5, 2),
        Fraction(25, 127),
        1480,
        22.5,
    )
    kinds = [type(each) for each in (board.width, board.reveal, board.price, board.angle)]
    assert kinds == [PositiveLength, Length, Price, Angle]


def test_it_is_the_same_record_by_message_pack() -> None:
    by_text = decoder(Board, Unit.IN).decode(msgspec.json.encode(SENT))
    packed = packed_decoder(Board, Unit.IN).decode(msgspec.msgpack.encode(SENT))
    assert by_text == packed
    assert packed_decoder(Board, Unit.IN).decode(packer(WRITE).encode(packed)) == packed


def test_what_is_echoed_is_what_was_sent() -> None:
    board = decoder(Board, Unit.IN).decode(msgspec.json.encode(SENT))
    assert msgspec.json.decode(encoder(WRITE).encode(board)) == STORED
    assert msgspec.msgpack.decode(packer(WRITE).encode(board)) == STORED


def test_bare_lengths_take_the_decoders_unit_and_need_one() -> None:
    body = b'{"width": "25.4"}'
    assert decoder(Board, Unit.MM).decode(body).width == 1
    assert decoder(Board, Unit.IN).decode(body).width == Fraction("25.4")
    with pytest.raises(msgspec.ValidationError) as refused:
        decoder(Board).decode(body)
    assert isinstance(refused.value.__cause__, Unreadable)
    assert refused.value.__cause__.code == "missing-unit"


@pytest.mark.parametrize(
    ("change", "code"),
    [
        ({"width": "0 in"}, "zero"),
        ({"width": 2.5}, "wrong-type"),
        ({"price": "-1"}, "wrong-form"),
        ({"angle": "45"}, "wrong-type"),
        ({"reveal": "wide"}, "not-a-length"),
    ],
)
def test_what_a_field_cannot_take_says_why_and_where(change: dict[str, Any], code: str) -> None:
    (name,) = change
    for decode, encode in ((decoder, msgspec.json.encode), (packed_decoder, msgspec.msgpack.encode)):
        with pytest.raises(msgspec.ValidationError) as refused:
            decode(Board, Unit.IN).decode(encode(SENT | change))
        assert str(refused.value).endswith(f"at `$.{name}`")
        assert isinstance(refused.value.__cause__, Unreadable)
        assert refused.value.__cause__.code == code


def test_a_field_nobody_knows_is_refused() -> None:
    with pytest.raises(msgspec.ValidationError):
        decoder(Board, Unit.IN).decode(b'{"width": "1", "depth": "2"}')


def test_lengths_go_out_rounded_with_what_rounding_added() -> None:
    out = msgspec.json.decode(encoder(WRITE).encode(Cut(Fraction(1, 3), Irrational(2**0.5), Place(("a", 0)))))
    assert (out["exact"]["exact"], out["exact"]["real"], out["exact"]["text"]) == ("1/3", None, "5/16 in")
    assert (out["real"]["exact"], out["real"]["real"]) == (None, 1.414213562)
    assert out["at"] == "/a/0"
    assert (
        msgspec.msgpack.decode(packer(WRITE).encode(Cut(Fraction(1, 3), Irrational(2**0.5), Place(("a", 0)))))
        == out
    )


def test_a_schema_tells_defaults_as_they_are_written() -> None:
    (reference,), components = schemas([Board], REFERENCE, WRITE)
    assert reference == {"$ref": "#/components/schemas/Board"}
    board = components["Board"]
    assert board["required"] == ["width"]
    assert board["additionalProperties"] is False
    defaults = {name: field["default"] for name, field in board["properties"].items() if "default" in field}
    assert defaults == {"reveal": "3/16 in", "price": None, "angle": 45.0, "name": "board"}


def test_a_schema_tells_each_type_as_it_stands_on_the_wire() -> None:
    _, components = schemas([Board, Cut], REFERENCE, WRITE)
    fields = components["Board"]["properties"]
    assert (fields["width"]["type"], fields["width"]["format"]) == ("string", "length")
    assert fields["angle"]["type"] == "number"
    assert {"string", "null"} == {each["type"] for each in fields["price"]["anyOf"]}
    assert components["Cut"]["properties"]["real"] == {"$ref": "#/components/schemas/MarkedLength"}


def test_a_type_that_says_nothing_of_itself_has_no_schema() -> None:
    class Odd:
        pass

    with pytest.raises(TypeError, match="Odd"):
        schemas([Odd], REFERENCE, WRITE)
