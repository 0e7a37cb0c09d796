"""Rates: every figure the shop reckons with, its unit and where it comes from. All can be set by the caller."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import lru_cache
from typing import TYPE_CHECKING, Annotated, Any, Literal

from msgspec import Meta

from longpoint.lengths import Fraction, Length, PositiveLength
from longpoint.shop.quantity import Quantity
from longpoint.texts import say
from longpoint.values import Faults, Given, Path, Value

PRACTICE = "common practice, no source"
LABEL = "common practice, no source; the label rules"
BY_CALLER = "set by the caller"
LEAST_LENGTH, MOST_LENGTH = Fraction(1, 16), Fraction(120)
LEAST = 0.01
"""Of a number that something is divided by."""


class Rate(Value, frozen=True):
    """A rate that was reckoned with, and where it comes from.

    Attributes:
        name: The name of its field in the shop's `rates`.
        value: The amount, in `unit`.
        unit: The unit: in, mil (1/1000 in), percent, each, ft2, s, min, h or penny.
        source: Where it comes from: a published source, common practice, or the caller.
        says: It says in words what the rate is.
    """

    name: str
    value: Quantity
    unit: str
    source: str
    says: str


class _Rates(Given, frozen=True):
    """What a shop's rates can do; their fields follow from `DEFAULTS`."""

    def __getitem__(self, name: str) -> Fraction:
        given = getattr(self, name)
        if given is None:
            return DEFAULTS[name].value
        return given if isinstance(given, Fraction) else as_written(given)

    def share(self, name: str) -> Fraction:
        """A rate in percent, as a share."""
        return self[name] / 100

    def used(self, names: Iterable[str]) -> tuple[Rate, ...]:
        """These rates, each once, in the order of the defaults."""
        wanted = set(names)
        return tuple(self._rate(rate) for name, rate in DEFAULTS.items() if name in wanted)

    def _rate(self, rate: Rate) -> Rate:
        if getattr(self, rate.name) is None:
            return rate
        return Rate(rate.name, Quantity(self[rate.name]), rate.unit, BY_CALLER, rate.says)

    def report(self, faults: Faults, at: Path) -> None:
        """Note lengths beyond what a shop could mean, so that counts stay within reason."""
        for name, rate in DEFAULTS.items():
            found = getattr(self, name)
            if rate.unit != "in" or found is None:
                continue
            least = LEAST_LENGTH if name in DIVISORS else Fraction(0)
            if not least <= found <= MOST_LENGTH:
                faults.add(
                    (*at, name),
                    "out-of-range",
                    say(
                        "problem",
                        "rates.out-of-range",
                        rate=name,
                        says=rate.says,
                        least=least,
                        most=MOST_LENGTH,
                        found=found,
                    ),
                )


@lru_cache(1024)
def as_written(number: float) -> Fraction:
    """The number as it was written: 0.1 is a tenth."""
    return Fraction(repr(number))


def _rate(name: str, value: str, unit: str, says: str, source: str = PRACTICE) -> tuple[str, Rate]:
    return name, Rate(name, Quantity(Fraction(value)), unit, source, says)


DIVISORS = frozenset(
    (
        "nail_spacing",
        "stool_nail_spacing",
        "primer_solids",
        "primer_film",
        "paint_solids",
        "paint_film",
        "stain_covers",
        "clear_solids",
        "clear_film",
        "sheet_area",
    )
)
"""Rates that cannot be zero."""

DEFAULTS: Mapping[str, Rate] = dict(
    (
        _rate(
            "drywall", "1/2", "in", "thickness of the drywall, from the studs to the wall's face in the room"
        ),
        _rate(
            "stud_penetration",
            "3/4",
            "in",
            "least depth that a nail goes into stud or sill",
            "common practice, no source; gives casing of 5/8 to 3/4 in the 6d nails of NAVEDTRA 14044",
        ),
        _rate(
            "jamb_penetration",
            "3/4",
            "in",
            "least depth that a nail goes into the jamb's edge",
            "common practice, no source; gives casing of 5/8 to 3/4 in the 4d nails of NAVEDTRA 14044",
        ),
        _rate(
            "nail_spacing",
            "16",
            "in",
            "distance from nail to nail along casing and apron",
            "NAVEDTRA 14044: casing nailed in pairs about 16 in apart",
        ),
        _rate("nail_end_distance", "3", "in", "distance from a piece's end to its first nail"),
        _rate("shim_space", "1/2", "in", "space from a door's jamb to the stud, packed with shims"),
        _rate("stool_nail_spacing", "12", "in", "distance from nail to nail along the stool"),
        _rate("corner_nails", "2", "each", "nails across a mitered corner"),
        _rate("block_nails", "4", "each", "nails in a plinth or corner block"),
        _rate("outer_nail", "0", "penny", "size for what goes into studs; 0 takes the shortest that reaches"),
        _rate(
            "inner_nail",
            "0",
            "penny",
            "size of the nails that go into the jamb; 0 takes the shortest that reaches",
        ),
        _rate("nail_waste", "10", "percent", "share of the nails that is bent or dropped"),
        _rate("glue_film", "6", "mil", "thickness of the film of wet glue on mitered joints and returns"),
        _rate(
            "glue_waste", "50", "percent", "glue squeezed out and wiped off, beside what stays in the joints"
        ),
        _rate(
            "caulk_bead",
            "3/16",
            "in",
            "width of the caulk's bead, from the corner of casing and wall to the bead's edge on either",
        ),
        _rate(
            "caulk_gap",
            "1/16",
            "in",
            "width of the gap behind the casing that the caulk fills, from wall to casing",
        ),
        _rate(
            "caulk_depth",
            "1/8",
            "in",
            "depth that the bead goes into the gap behind the casing, from the casing's edge",
        ),
        _rate("caulk_waste", "10", "percent", "share of the caulk in a tube that is left in tube and nozzle"),
        _rate(
            "hole_width",
            "1/8",
            "in",
            "width across the hole that a nail leaves when it is set below the face",
        ),
        _rate("hole_depth", "1/8", "in", "depth of that hole, from the wood's face in to the nail's head"),
        _rate(
            "filler_waste",
            "100",
            "percent",
            "filler lost, proud and sanded off or dried up, as a share of what the nail holes hold",
        ),
        _rate(
            "profile_girth",
            "110",
            "percent",
            "width of a molded face, measured along its curves, as a share of its flat width",
        ),
        _rate("painted_backs", "0", "each", "coats of primer on the backs, which get no paint"),
        _rate("primer_coats", "1", "each", "coats of primer on faces and edges"),
        _rate("primer_solids", "35", "percent", "primer that stays when it is dry, by volume", LABEL),
        _rate("primer_film", "1.5", "mil", "thickness of a dry coat of primer (1 mil is 0.001 in)", LABEL),
        _rate("paint_coats", "2", "each", "coats of paint on faces and edges"),
        _rate("paint_solids", "35", "percent", "paint that stays when it is dry, by volume", LABEL),
        _rate("paint_film", "1.4", "mil", "thickness of a dry coat of paint (1 mil is 0.001 in)", LABEL),
        _rate("paint_waste", "15", "percent", "share of the paint that is left in brush, roller and can"),
        _rate("stain_coats", "1", "each", "coats of stain on faces and edges of stain-grade trim"),
        _rate("stain_covers", "400", "ft2", "area that a gallon of stain covers", LABEL),
        _rate("clear_coats", "3", "each", "coats of clear finish on faces and edges of stain-grade trim"),
        _rate("clear_solids", "30", "percent", "clear finish that stays when it is dry, by volume", LABEL),
        _rate("clear_film", "1", "mil", "thickness of a dry coat of clear finish (1 mil is 0.001 in)", LABEL),
        _rate("shims_per_opening", "4", "each", "tapered shims under stool and jamb"),
        _rate("tape_waste", "10", "percent", "share of the tape that goes to overlaps and corners"),
        _rate("sheet_area", "40", "ft2", "area sanded with one sheet"),
        _rate("sandings", "2", "each", "sandings before the first coat and between coats"),
        _rate("measure_minutes", "10", "min", "to measure an opening"),
        _rate("paint_minutes", "1", "min", "to put one coat on 1 ft2, bundled on the bench"),
        _rate("stain_minutes", "1.5", "min", "to wipe a coat of stain on 1 ft2 and off again"),
        _rate("clear_minutes", "1", "min", "to put one coat of clear finish on 1 ft2, on the bench"),
        _rate("rip_minutes", "0.5", "min", "to rip 1 ft"),
        _rate("rout_minutes", "1", "min", "to rout 1 ft of a stool's nosing"),
        _rate("pick_up_seconds", "20", "s", "to pick up a long stick and put it down"),
        _rate("carry_seconds", "15", "s", "to carry a piece to another saw, or back to one"),
        _rate("mark_seconds", "10", "s", "to measure and mark a length"),
        _rate("detent_seconds", "4", "s", "to swing the saw to a detent"),
        _rate("angle_seconds", "12", "s", "to swing the saw to an angle off its detents"),
        _rate("bevel_seconds", "15", "s", "to tilt the blade"),
        _rate("stop_seconds", "30", "s", "to set a stop block"),
        _rate("fence_seconds", "60", "s", "to set a rip fence"),
        _rate("cut_seconds", "5", "s", "to make a cut"),
        _rate("short_cut_seconds", "20", "s", "to make a careful cut of a short piece"),
        _rate("notch_seconds", "90", "s", "to saw out a notch at one end"),
        _rate("label_seconds", "5", "s", "to tick and label a piece"),
        _rate("install_minutes", "5", "min", "to fit a piece at the wall"),
        _rate("nail_minutes", "0.2", "min", "to drive and set a nail"),
        _rate("fill_minutes", "0.15", "min", "to fill the hole over one nail with filler and to sand it"),
        _rate("putty_minutes", "0.25", "min", "to press matched putty into the hole over one nail"),
        _rate("caulk_minutes", "0.3", "min", "to caulk 1 ft"),
        _rate("final_coat_minutes", "1.5", "min", "to put the last coat on 1 ft2, at the wall"),
        _rate("primer_wait", "2", "h", "until primer can be sanded", LABEL),
        _rate("filler_wait", "1", "h", "until filler can be sanded", LABEL),
        _rate("caulk_wait", "1", "h", "until caulk can be painted", LABEL),
        _rate("paint_wait", "4", "h", "between coats of paint, and after the last", LABEL),
        _rate("stain_wait", "8", "h", "until stain can be coated", LABEL),
        _rate("clear_wait", "3", "h", "between coats of clear finish, and after the last", LABEL),
    )
)
"""Every rate by name."""

_Penny = Literal[0, 2, 3, 4, 5, 6, 7, 8, 9, 10]
_MOST = {"percent": 1000, "mil": 100, "each": 100, "ft2": 10_000, "s": 3600, "min": 1440, "h": 720}
_LEADS = {"each": "number of ", "s": "time ", "min": "time ", "h": "wait ", "penny": "nail's "}
_UNITS = {
    "percent": "%",
    "mil": " mil",
    "ft2": " ft2",
    "s": " s",
    "min": " min",
    "h": " h",
    "in": " in",
    "penny": " penny",
}


def _says(rate: Rate) -> str:
    """What a rate is, and how much it is in its unit when it is left out, by which source."""
    number = str(rate.value) if rate.unit == "in" else f"{float(rate.value):g}"
    lead, unit = _LEADS.get(rate.unit, ""), _UNITS.get(rate.unit, "")
    return f"The {lead}{rate.says}; {number}{unit} when left out ({rate.source})."


def _type_of(rate: Rate) -> Any:
    """What a rate may be: a length, a whole count, else a number."""
    says = _says(rate)
    divides = rate.name in DIVISORS
    if rate.unit == "in":
        return Annotated[PositiveLength if divides else Length, Meta(description=says)] | None
    if rate.unit == "penny":
        return Annotated[_Penny, Meta(description=says)] | None
    most = _MOST[rate.unit]
    if rate.unit == "each":
        return Annotated[int, Meta(ge=0, le=most, description=says)] | None
    return Annotated[float, Meta(ge=LEAST if divides else 0, le=most, description=says)] | None


if TYPE_CHECKING:

    class Rates(_Rates, frozen=True):
        """Has a field for each of `DEFAULTS`."""

        def __init__(self, **given: Any) -> None: ...
else:
    Rates = type(_Rates)(
        "Rates",
        (_Rates,),
        {
            "__doc__": "The shop's own rates; the answer names the source of each rate it used.",
            "__module__": __name__,
            "__annotations__": {name: _type_of(rate) for name, rate in DEFAULTS.items()},
            **dict.fromkeys(DEFAULTS),
        },
        frozen=True,
        kw_only=True,
    )
