"""The wire's view of what changed between two revisions of a schedule."""

from __future__ import annotations

from enum import StrEnum

from longpoint.api.wire.base import WireOut
from longpoint.api.wire.lengths import LengthOut


class Became(StrEnum):
    """What became of an opening."""

    NEW = "new"
    GONE = "gone"
    CHANGED = "changed"
    TRIM_CHANGED = "trim_changed"
    GROUP_CHANGED = "group_changed"


class PartBecame(StrEnum):
    """What became of a part; altered is the same length with other ends, width or stock."""

    NEW = "new"
    GONE = "gone"
    LONGER = "longer"
    SHORTER = "shorter"
    ALTERED = "altered"
    UNCHANGED = "unchanged"


class FieldChange(WireOut):
    """One thing that was said differently.

    Attributes:
        pointer: Where, as a JSON pointer into the opening or the house.
        before: What it was, as JSON; null when it was not there.
        after: What it is, as JSON; null when it is not there.
    """

    pointer: str
    before: str | None
    after: str | None


class PartChange(WireOut):
    """What became of one part of an opening.

    Attributes:
        part: The part's key.
        became: Longer and shorter go by what it takes of a stick, exactly.
        before: What it took of a stick.
        after: What it takes.
        longer_by: The difference, exactly, as a fraction of an inch; negative when it became shorter.
        quantity_before: How many there were.
        quantity_after: How many there are.
    """

    part: str
    became: PartBecame
    before: LengthOut | None
    after: LengthOut | None
    longer_by: str | None
    quantity_before: int
    quantity_after: int


class OpeningChange(WireOut):
    """What became of one opening.

    Attributes:
        mark: Its mark, the later one.
        mark_before: The mark it had before; null when it is new.
        became: With trim_changed only the trim spec it names was changed; with group_changed it began or ceased to
            share a stool.
        readings: What was said of it differently.
        parts: Each of its parts.
    """

    id: str
    mark: str
    mark_before: str | None
    became: Became
    readings: list[FieldChange]
    parts: list[PartChange]


class GroupChange(WireOut):
    """What became of the pieces that a group's openings share.

    Attributes:
        mark: The group's.
        parts: Each of its parts.
    """

    mark: str
    became: Became
    parts: list[PartChange]


class ChangesOut(WireOut):
    """What changed between two revisions.

    Attributes:
        from_revision: The earlier one.
        to_revision: The later one.
        house: What was said of the house as a whole differently.
        openings: Each opening that changed, by its place in the schedule.
        groups: Each group of which a shared piece changed, by its mark.
        unchanged_openings: How many openings stand in both and did not change.
    """

    from_revision: int
    to_revision: int
    house: list[FieldChange]
    openings: list[OpeningChange]
    groups: list[GroupChange]
    unchanged_openings: int
