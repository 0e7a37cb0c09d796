"""Cautions: what the person should know before starting, by what is in the house.

They inform and defer; they approve nothing. `source` names the published text a caution leans on, or says that
it is common practice.
"""

from __future__ import annotations

from longpoint.geometry import Bottom, Finish
from longpoint.shop.build import CutList
from longpoint.shop.operations import PieceName
from longpoint.shop.rates import PRACTICE
from longpoint.texts import Sentence, say
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
    text: Sentence
    source: str
    applies_to: tuple[str, ...] = ()
    pieces: tuple[PieceName, ...] = ()


SAW_GUARDS = Caution(
    "saw_guards",
    say("caution", "saw.guards"),
    "29 CFR 1910.213 and 1926.300(b)(1)",
)
WOOD_DUST = Caution(
    "wood_dust",
    say("caution", "saw.dust"),
    "NIOSH recommended exposure limit for wood dust",
)
SHORT_PIECE = Caution(
    "short_piece",
    say("caution", "saw.short-piece"),
    PRACTICE,
)
CLAMP = Caution(
    "clamp",
    say("caution", "saw.clamp"),
    PRACTICE,
)
SHORT_RIP = Caution(
    "short_rip",
    say("caution", "saw.short-rip"),
    PRACTICE,
)
TAPER = Caution(
    "taper_jig",
    say("caution", "saw.taper"),
    PRACTICE,
)
SHARP_MITER = Caution(
    "sharp_miter",
    say("caution", "saw.sharp-miter"),
    PRACTICE,
)
LEAD_PAINT = Caution(
    "lead_paint",
    say("caution", "house.lead-paint"),
    "40 CFR 745 subpart E",
)
ESCAPE = Caution(
    "escape_opening",
    say("caution", "house.escape-opening"),
    "IRC R310, as a possible trigger and not a determination",
)
FINISHES = Caution(
    "finishes",
    say("caution", "house.finishes"),
    PRACTICE,
)
OILY_RAGS = Caution(
    "oily_rags",
    say("caution", "house.oily-rags"),
    "29 CFR 1926.252(e)",
)
LOCAL_CODES = Caution(
    "local_codes",
    say("caution", "house.local-codes"),
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
    stained = tuple(
        one.built.opening.mark
        for one in cut_list.openings
        if one.shown and one.built.opening.trim.finish is Finish.STAIN_GRADE
    )
    if stained:
        found.append(Caution(OILY_RAGS.code, OILY_RAGS.text, OILY_RAGS.source, stained))
    return (*found, FINISHES, LOCAL_CODES)
