"""Cautions: what the person should know before starting, by what is in the house.

They inform and defer; they approve nothing. `source` names the published text a caution leans on, or says that
it is common practice.
"""

from __future__ import annotations

from longpoint.geometry import Bottom
from longpoint.shop.build import CutList
from longpoint.shop.operations import PieceName
from longpoint.shop.rates import PRACTICE
from longpoint.values import Value

LEAD_YEAR = 1978
"""Housing built before it may hold lead paint (40 CFR 745 subpart E)."""


class Caution(Value, frozen=True):
    """What to know before starting: it informs and defers, and approves nothing.

    Attributes:
        code: A stable name of the caution.
        text: The caution in words.
        source: The source that the caution rests on.
        applies_to: The marks of the openings it was raised for; empty for the whole house.
        pieces: The pieces it was raised for, where it bears on single cuts.
    """

    code: str
    text: str
    source: str
    applies_to: tuple[str, ...] = ()
    pieces: tuple[PieceName, ...] = ()


SAW_GUARDS = Caution(
    "saw_guards",
    "Keep the saw's guards on and your hands well clear of the blade; let it stop before you reach in or lift a "
    "piece, and unplug the saw before setting it.",
    "29 CFR 1910.213 and 1926.300(b)(1)",
)
WOOD_DUST = Caution(
    "wood_dust",
    "Catch the dust at the saw and wear eye, ear and breathing protection: wood dust harms the lungs, and NIOSH "
    "recommends no more than 1 mg in a cubic meter of air.",
    "NIOSH recommended exposure limit for wood dust",
)
SHORT_PIECE = Caution(
    "short_piece",
    "Too short to hold: cut it from a longer piece held well clear of the blade, to a mark and not against a stop, "
    "and let the blade stop before you lift it.",
    PRACTICE,
)
CLAMP = Caution(
    "clamp",
    "The workpiece in hand is shorter than the smallest you hold by hand: clamp it in a jig, or take a hand saw.",
    PRACTICE,
)
SHORT_RIP = Caution(
    "short_rip",
    "Too short to push through the table saw by hand: rip it before it is cut to length, or plane it to width.",
    PRACTICE,
)
TAPER = Caution(
    "taper_jig",
    "A tapered rip: hold the piece in a taper jig against the fence, never by hand alone, or plane it to the line.",
    PRACTICE,
)
SHARP_MITER = Caution(
    "sharp_miter",
    "Sharper than most saws turn: use a jig that stands the piece off the fence, well clamped, or a hand saw.",
    PRACTICE,
)
LEAD_PAINT = Caution(
    "lead_paint",
    "Paint in housing built before 1978 may hold lead, and an unknown age counts as before 1978: have it tested, and "
    "follow the rules for renovation around lead paint before you scrape, sand, cut or pull off old trim.",
    "40 CFR 745 subpart E",
)
ESCAPE = Caution(
    "escape_opening",
    "Trim must not narrow a window that serves as an escape opening, nor hide a safety-glazing mark: ask the "
    "building department what this house has to keep clear.",
    "IRC R310, as a possible trigger and not a determination",
)
FINISHES = Caution(
    "finishes",
    "Paint, filler, caulk and glue: keep the room aired, keep fire away, and follow the label and its data sheet.",
    PRACTICE,
)
LOCAL_CODES = Caution(
    "local_codes",
    "Local codes, the makers' instructions and licensed practice come first. These are computed sizes and amounts; "
    "they approve nothing.",
    PRACTICE,
)

WINDOW_FEET = (Bottom.STOOL, Bottom.CASING)

AT_THE_SAW = {each.code: each for each in (SHORT_PIECE, CLAMP, SHORT_RIP, TAPER, SHARP_MITER)}
"""Cautions that a single cut can raise."""


def cautions(
    cut_list: CutList, *, build_year: int | None, at_the_saw: tuple[Caution, ...] = ()
) -> tuple[Caution, ...]:
    """The house's cautions.

    Args:
        build_year: when the house was built; None when nobody knows, which counts as before 1978.
        at_the_saw: those its cuts raised.
    """
    windows = tuple(
        one.built.opening.mark
        for one in cut_list.openings
        if one.shown and one.built.opening.bottom in WINDOW_FEET
    )
    found = [SAW_GUARDS, WOOD_DUST, *at_the_saw]
    if build_year is None or build_year < LEAD_YEAR:
        found.append(LEAD_PAINT)
    if windows:
        found.append(Caution(ESCAPE.code, ESCAPE.text, ESCAPE.source, windows))
    return (*found, FINISHES, LOCAL_CODES)
