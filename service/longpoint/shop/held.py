"""What is held at each cut, followed through an order as its sticks are cut up."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from longpoint.lengths import Fraction
from longpoint.shop.operations import Holding, OperationKind
from longpoint.shop.saw_step import SawStep, Work
from longpoint.shop.sticks import WorkStick
from longpoint.values import Value

CUTS_OFF = (OperationKind.CUT_OFF, OperationKind.ANGLED_CUT_OFF, OperationKind.SHARED_CUT)


class Held(Value, frozen=True):
    """A step, and what is held at it. Attributes: step; holds; length, None where no stick was planned."""

    step: SawStep
    holds: Holding
    length: Fraction | None


def in_hand(steps: Iterable[SawStep], sticks: Sequence[WorkStick]) -> list[Held]:
    """Every step that needs a cut, with the longer of what lies on either side of it, which is what is held.

    The last piece of a stick that leaves nothing over is there already, and needs none.
    """
    rest = _lengths(sticks)
    found: list[Held] = []
    for step in steps:
        if step.on_piece:
            found.append(Held(step, Holding.PIECE, step.length))
            continue
        length = rest[step.work]
        if length is None:
            found.append(Held(step, Holding.STICK, None))
            continue
        if step.kind is OperationKind.CUT_OFF and length == step.length:
            continue
        rest[step.work] = left = length - step.takes
        if step.kind in CUTS_OFF and step.length > left:
            found.append(Held(step, Holding.PIECE, step.length))
        else:
            found.append(Held(step, Holding.STICK, left))
    return found


def _lengths(sticks: Sequence[WorkStick]) -> dict[Work, Fraction | None]:
    """Of every stick whole, and of the lengths it may be cut into."""
    rest: dict[Work, Fraction | None] = {}
    for stick in sticks:
        rest[stick.profile, stick.name] = stick.length if stick.name else None
        for section in stick.sections:
            begin = section.begin if section.place else Fraction(0)
            own = None if section.end is None else section.end - begin
            rest[stick.profile, stick.name, section.place] = own
    return rest
