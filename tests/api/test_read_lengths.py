"""/v1/lengths."""

from hypothesis import given
from hypothesis import strategies as st

from longpoint.lengths import Fraction, Mode, Rounding, RoundTo, Unit, length_writer, parse


async def read(client, **body):
    return await client.post("/v1/lengths", json=body)


async def test_each_length_comes_back_exact_and_rounded_in_order(client):
    answer = await read(client, lengths=["30 5/8 in", "2' 6-5/8\"", "778 mm", "5'"])
    assert answer.status_code == 200
    assert answer.json()["lengths"] == [
        {
            "given": "30 5/8 in",
            "exact": "245/8",
            "real": None,
            "text": "30 5/8 in",
            "unit": "in",
            "residual": "0 in",
            "feet_inches": "2' 6 5/8\"",
        },
        {
            "given": "2' 6-5/8\"",
            "exact": "245/8",
            "real": None,
            "text": "30 5/8 in",
            "unit": "in",
            "residual": "0 in",
            "feet_inches": "2' 6 5/8\"",
        },
        {
            "given": "778 mm",
            "exact": "3890/127",
            "real": None,
            "text": "30 5/8 in",
            "unit": "in",
            "residual": "-5/1016 in",
            "feet_inches": "2' 6 5/8\"",
        },
        {
            "given": "5'",
            "exact": "60",
            "real": None,
            "text": "60 in",
            "unit": "in",
            "residual": "0 in",
            "feet_inches": "5' 0\"",
        },
    ]


async def test_bare_numbers_are_in_the_unit_of_the_request(client):
    answer = await read(
        client, lengths=["778", "30 5/8 in"], unit="mm", rounding={"to": "1 mm", "mode": "up"}
    )
    texts = [(each["exact"], each["text"], each["residual"]) for each in answer.json()["lengths"]]
    assert texts == [("778", "778 mm", "0 mm"), ("6223/8", "778 mm", "0.125 mm")]
    assert [each["feet_inches"] for each in answer.json()["lengths"]] == [None, None]


async def test_every_length_that_is_wrong_is_told(client):
    answer = await read(client, lengths=["34 1/0 in", "30 5/8 in", "-3 in", "34", "30 5/8 1/2", "1e400 in"])
    assert answer.status_code == 422
    assert [(fault["pointer"], fault["code"]) for fault in answer.json()["errors"]] == [
        ("/lengths/0", "zero-denominator"),
        ("/lengths/2", "negative"),
        ("/lengths/3", "missing-unit"),
        ("/lengths/4", "not-a-length"),
        ("/lengths/5", "exponent"),
    ]


async def test_wrong_lengths_are_told_together_with_wrong_fields(client):
    answer = await read(client, lengths=["34", "x"], unit="mm", rounding={"too": "1 mm"})
    assert [(fault["pointer"], fault["code"]) for fault in answer.json()["errors"]] == [
        ("/lengths/1", "not-a-length"),
        ("/rounding/too", "unknown-field"),
    ]


@given(
    value=st.fractions(0, 12_000, max_denominator=2048),
    to=st.sampled_from(RoundTo),
    mode=st.sampled_from(Mode),
)
def test_the_written_length_is_the_exact_one_plus_the_residual(value, to, mode):
    out = length_writer(Rounding(to, mode))(Fraction(value))
    written = parse(out.text)
    sign = -1 if out.residual.startswith("-") else 1
    residual = sign * Fraction(*_ratio(out.residual.lstrip("-").removesuffix(f" {out.unit}")))
    exact = Fraction(*_ratio(out.exact)) * parse("1", Unit(out.unit))
    assert exact == value
    assert written - residual * parse("1", Unit(out.unit)) == value


def _ratio(text):
    whole, _, piece = text.rpartition(" ")
    value = Fraction(piece) + (Fraction(whole) if whole else 0)
    return value.as_integer_ratio()


def test_an_irrational_length_says_so():
    out = length_writer(Rounding(RoundTo.SIXTEENTH, Mode.NEAREST))(46.3117123456789)
    assert out.exact is None
    assert out.real == 46.311712346
    assert (out.text, out.residual) == ("46 5/16 in", "0.000788 in")


def test_a_float_is_not_taken_for_the_exact_length_it_equals():
    rounding = Rounding(RoundTo.SIXTEENTH, Mode.NEAREST)
    assert length_writer(rounding)(Fraction(1, 2)).exact == "1/2"
    assert length_writer(rounding)(0.5).exact is None
    assert length_writer(rounding)(0.5).residual == "0 in"
