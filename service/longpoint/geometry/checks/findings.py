"""What the service noticed and what it could do about it; nothing here has changed a size."""

from __future__ import annotations

from typing import TYPE_CHECKING

from msgspec.structs import force_setattr

from longpoint.geometry.fitted import fit
from longpoint.geometry.spelled import Measures, Offered, Pairs
from longpoint.lengths import Real
from longpoint.texts import Sentence
from longpoint.values import Path, Place, Value

if TYPE_CHECKING:
    Field = Place | Path | None
    Worth = Offered | Real | str | bool | int | None
    Given = Measures | Pairs
else:
    Field, Worth, Given = Place | None, Offered | None, Measures


class Offer(Value, frozen=True):
    """One of the trade's answers to a finding.

    Attributes:
        answer: A stable name of the offer, as "shorten_horn".
        detail: It says in words what the offer means.
        field: The field that takes it up, a JSON pointer into the opening or, for what a group's openings have
            together, into the house; null where no one field does, as for caulk: `detail` then says what does. It was
            tried: with that value the answer comes without the finding, a group's once every opening of it that is
            offered one has its own.
        value: The value to write in that field.
        figures: Lengths, and angles in degrees, that go with it, each by its name.
    """

    answer: str
    detail: Sentence
    field: Field = None
    value: Worth = None
    figures: Given = Measures()

    def __post_init__(self) -> None:
        if not isinstance(self.field, Place | None):
            force_setattr(self, "field", Place(self.field) if self.field else None)
        if not isinstance(self.value, Offered | None):
            force_setattr(self, "value", Offered(self.value))
        if isinstance(self.figures, tuple):
            force_setattr(self, "figures", Measures(self.figures))

    @property
    def path(self) -> tuple[str | int, ...]:
        """The steps to its field; () where it has none."""
        return self.field.steps if isinstance(self.field, Place) else ()

    @property
    def worth(self) -> Real | str | bool | int | None:
        """What to write in its field."""
        return self.value.value if isinstance(self.value, Offered) else None


class Finding(Value, frozen=True):
    """Something in the way, out of plane or out of level. It has changed no size: an answer that is taken up is sent
    back in its field.

    Attributes:
        code: A stable name for the kind of finding.
        side: Where: left, right, head, sill, base, above or below; empty for a group's.
        detail: It says in words what was found.
        amount: It says by how much.
        offers: The answers that can be given to it, the least work first.
        by: What is in the way or was read, where a side may have two of a kind: "neighbor", "depth" or empty.
        field: The field that it is about, a JSON pointer into the opening, in which `/trim` is the trim it names; null
            where it is about the room, the wall, or several openings.
    """

    code: str
    side: str
    detail: Sentence
    amount: Real
    offers: tuple[Offer, ...]
    by: str = ""
    field: Field = None

    def __post_init__(self) -> None:
        fit(self)
        if not isinstance(self.field, Place | None):
            force_setattr(self, "field", Place(self.field) if self.field else None)
