"""How well things fit: readings checked against each other, chains rounded so that they close, joints that move.

Pure and self-contained: it knows lengths and nothing of openings, pieces or findings.
"""

from longpoint.geometry.fit.adjust import Adjusted, adjust
from longpoint.geometry.fit.chain import Chain, equal_chords, polygon
from longpoint.geometry.fit.check import FALSE_ALARMS, Bow, Checked, Verdict, check
from longpoint.geometry.fit.closing import SAW_STEP, Closed, close
from longpoint.geometry.fit.contradictions import Contradiction, Mend
from longpoint.geometry.fit.miter_gap import MiterGap, miter_gap
from longpoint.geometry.fit.readings import BUBBLE_SPREAD, TAPE_SPREAD, Reading, ReadingKind
from longpoint.geometry.fit.saw_check import OFF_ZERO, SawCheck, saw_check
from longpoint.geometry.fit.six_readings import SixCheck, six_check
from longpoint.geometry.fit.slips import Slip
from longpoint.geometry.fit.spreads import (
    PAINT_LIMIT,
    STAIN_LIMIT,
    angle,
    expected_opening,
    side,
    spread_of,
)
from longpoint.geometry.fit.suspects import SuspectReading

__all__ = [
    "BUBBLE_SPREAD",
    "FALSE_ALARMS",
    "OFF_ZERO",
    "PAINT_LIMIT",
    "SAW_STEP",
    "STAIN_LIMIT",
    "TAPE_SPREAD",
    "Adjusted",
    "Bow",
    "Chain",
    "Checked",
    "Closed",
    "Contradiction",
    "Mend",
    "MiterGap",
    "Reading",
    "ReadingKind",
    "SawCheck",
    "SixCheck",
    "Slip",
    "SuspectReading",
    "Verdict",
    "adjust",
    "angle",
    "check",
    "close",
    "equal_chords",
    "expected_opening",
    "miter_gap",
    "polygon",
    "saw_check",
    "side",
    "six_check",
    "spread_of",
]
