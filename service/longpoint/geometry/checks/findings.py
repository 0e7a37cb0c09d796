"""What the service noticed and what it could do about it; nothing here has changed a size."""

from __future__ import annotations

from longpoint.geometry.value import Value
from longpoint.lengths import Real

Path = tuple[str | int, ...]


class Offer(Value, frozen=True):
    """One of the trade's answers to a finding.

    Attributes:
        answer: a stable name, "shorten_horn".
        detail: what it means, in words.
        field: the opening's field that takes it up; () where no field of its own does, as for caulk.
        value: what to write there: a length, a word or True.
        figures: lengths and angles that go with it, each with its name.
    """

    answer: str
    detail: str
    field: Path = ()
    value: Real | str | bool | None = None
    figures: tuple[tuple[str, Real], ...] = ()


class Finding(Value, frozen=True):
    """Something in the way, out of plane or out of level.

    Attributes:
        code: a stable kebab-case name.
        side: left, right, head, sill, base, above or below; a group's finding names none.
        detail: what was found.
        amount: how much it is, inches.
        offers: what can be done, the least work first.
        by: what is in the way, where a side may have two of a kind: "neighbour" or "".
    """

    code: str
    side: str
    detail: str
    amount: Real
    offers: tuple[Offer, ...]
    by: str = ""
