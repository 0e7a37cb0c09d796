"""Lengths against published figures. Each check names its source; "found" was read, "memory" was recalled."""

import pytest

from longpoint.lengths import (
    Fraction,
    Mode,
    Rounding,
    RoundTo,
    Unit,
    exact,
    feet_inches,
    parse,
    round_to,
    tape,
)

F = Fraction


# 16 CFR 500.19(a), the factors marked "exactly" (found).
# The inch and the foot stand in NIST SP 811, Appendix B, with the same exact factors (memory).
@pytest.mark.parametrize(
    ("customary", "metric"),
    [("1 in", "2.54 cm"), ("1 ft", "30.48 cm"), ("3 ft", "0.9144 m"), ("0.001 in", "0.0254 mm")],
)
def test_the_exact_factors_of_the_code_of_federal_regulations(customary: str, metric: str) -> None:
    assert parse(customary) == parse(metric)


# 16 CFR 500.19(a), the other way, given there to six figures (found).
@pytest.mark.parametrize(
    ("metric", "published", "unit", "last_place"),
    [
        ("1 mm", "0.039370", Unit.IN, F(1, 10**6)),
        ("1 cm", "0.393701", Unit.IN, F(1, 10**6)),
        ("1 m", "3.28084", Unit.FT, F(1, 10**5)),
    ],
)
def test_the_six_figure_factors_of_the_code_of_federal_regulations(
    metric: str, published: str, unit: Unit, last_place: Fraction
) -> None:
    assert abs(F(exact(parse(metric), unit)) - F(published)) <= last_place / 2


# Fractions of an inch in millimeters: computed from 25.4 mm. A published chart (amsupplyco.com, "Fractions to
# decimals to millimeters conversion chart", found) gives the same figures to four places.
@pytest.mark.parametrize(
    ("inches", "millimeters", "chart"),
    [
        ("1/64 in", "0.396875", "0.3969"),
        ("1/32 in", "0.79375", "0.7938"),
        ("1/16 in", "1.5875", "1.5875"),
        ("3/16 in", "4.7625", "4.7625"),
        ("5/8 in", "15.875", "15.8750"),
        ("11/16 in", "17.4625", "17.4625"),
        ("31/32 in", "24.60625", "24.6063"),
        ("63/64 in", "25.003125", "25.0031"),
    ],
)
def test_fractions_of_an_inch_in_millimeters(inches: str, millimeters: str, chart: str) -> None:
    assert F(exact(parse(inches), Unit.MM)) == F(millimeters)
    assert abs(F(millimeters) - F(chart)) <= F(1, 20_000)


# A published table of whole millimeters to the nearest 1/16 in, and of sixteenths to the nearest millimeter
# (kp44.org, "Decimal/Fractional Conversion Tables", found). No entry is a tie. Its row for 1 mm
# says 0 and is left out: 0.03937 in is past 1/32, hence nearer 1/16.
MM_TO_SIXTEENTHS = ["1/16", "1/8", "3/16", "3/16", "1/4", "1/4", "5/16", "3/8", "3/8", "7/16"]
SIXTEENTHS_TO_MM = [2, 3, 5, 6, 8, 10, 11, 13, 14, 16, 17, 19, 21, 22, 24, 25]


@pytest.mark.parametrize(("millimeters", "inches"), list(enumerate(MM_TO_SIXTEENTHS, start=2)))
def test_millimeters_to_the_nearest_sixteenth(millimeters: int, inches: str) -> None:
    assert tape(round_to(parse(f"{millimeters} mm"), Rounding())) == f"{inches} in"


@pytest.mark.parametrize(("sixteenths", "millimeters"), list(enumerate(SIXTEENTHS_TO_MM, start=1)))
def test_sixteenths_to_the_nearest_millimeter(sixteenths: int, millimeters: int) -> None:
    rounded = round_to(F(sixteenths, 16), Rounding(RoundTo.MILLIMETER))
    assert tape(rounded, Unit.MM) == f"{millimeters} mm"


# "Carpentry & Building Construction", Self-Check Math Activity 1 (found): 4 feet, 1 inch and 2 sixteenths
# is written 4' 1 1/8".
def test_a_reading_is_written_as_a_carpentry_textbook_writes_it() -> None:
    assert feet_inches(parse("4 ft 1-2/16 in")) == "4' 1 1/8\""


def both_ways(value: str, place: str) -> tuple[Fraction, Fraction]:
    """Round value to `place` by our rule, one place standing for one millimetre; and by half-even."""
    places = F(value) / F(place)
    ours = round_to(places * parse("1 mm"), Rounding(RoundTo.MILLIMETER)) / parse("1 mm")
    return ours * F(place), round(places) * F(place)


# ASTM E29's rule (ties to the even digit) as two public manuals print it. Off a tie, ours is the same.
# First three: "Field Sampling and Testing Manual, Rounding Procedures" (found);
# the rest: Alberta test method ATT-70/96, "Rounding-Off Calculated Values" (found).
@pytest.mark.parametrize(
    ("value", "place", "published"),
    [
        ("45.71", "0.1", "45.7"),
        ("45.76", "0.1", "45.8"),
        ("45.45001", "0.1", "45.5"),
        ("5.684", "0.01", "5.68"),
        ("5.686", "0.01", "5.69"),
        ("5.6852", "0.01", "5.69"),
        ("50.49", "1", "50"),
        ("51.51", "1", "52"),
        ("2350.51", "1", "2351"),
    ],
)
def test_off_a_tie_ours_is_the_half_even_rule(value: str, place: str, published: str) -> None:
    assert both_ways(value, place) == (F(published), F(published))


# The same two manuals, on a tie: the two rules agree where the longer is also the even one, and ours is one
# place longer where it is not. Ours is the rule for a piece that can be shaved but not stretched
# (common practice, no source).
@pytest.mark.parametrize(
    ("value", "place", "published", "ours"),
    [
        ("45.7500", "0.1", "45.8", "45.8"),
        ("45.4500", "0.1", "45.4", "45.5"),
        ("5.6750", "0.01", "5.68", "5.68"),
        ("5.6850", "0.01", "5.68", "5.69"),
        ("5.765", "0.01", "5.76", "5.77"),
        ("50.5", "1", "50", "51"),
        ("51.5", "1", "52", "52"),
        ("13.25", "0.1", "13.2", "13.3"),
        ("13.35", "0.1", "13.4", "13.4"),
    ],
)
def test_on_a_tie_ours_is_the_longer_and_half_even_may_not_be(
    value: str, place: str, published: str, ours: str
) -> None:
    assert both_ways(value, place) == (F(ours), F(published))


# Half-even to a sixteenth is computed, ours beside it.
@pytest.mark.parametrize(
    ("inches", "half_even", "ours"),
    [("1/32", "0", "1/16"), ("3/32", "1/8", "1/8"), ("5/32", "1/8", "3/16"), ("7/32", "1/4", "1/4")],
)
def test_ties_to_a_sixteenth(inches: str, half_even: str, ours: str) -> None:
    assert round(F(inches) * 16) == F(half_even) * 16
    assert round_to(F(inches), Rounding(RoundTo.SIXTEENTH, Mode.NEAREST)) == F(ours)


# Ontario test method LS-100 (found): a 5 is always increased, as here, and a number is rounded in one step:
# 1.347 is 1.35 to two places, and 1.3 to one, not 1.4.
def test_one_step_never_a_rounding_of_a_rounding() -> None:
    once, _ = both_ways("1.347", "0.1")
    first, _ = both_ways("1.347", "0.01")
    assert (first, once) == (F("1.35"), F("1.3"))
    assert both_ways("1.35", "0.1")[0] == F("1.4")
