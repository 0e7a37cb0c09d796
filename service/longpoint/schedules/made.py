"""What is answered of a change that was made."""

from __future__ import annotations

from longpoint.schedules.answers import StoredPiece
from longpoint.texts import Sentence
from longpoint.values import Value


class Made(Value, frozen=True):
    """A change that was made.

    Attributes:
        revision: The number of the schedule's revision that the change made: every change makes one, counted from 1.
    """

    revision: int


class Released(Value, frozen=True):
    """Openings that were released, or held back.

    Attributes:
        revision: The schedule's revision it made; the one that stands, when it made none.
        changed: Marks of those that were not so before.
        estimated: Marks of those that are released and still wait, since they are only estimated.
    """

    revision: int
    changed: tuple[str, ...]
    estimated: tuple[str, ...]


class WorkMade(Value, frozen=True):
    """Work that was recorded.

    Attributes:
        revision: The number of the schedule's revision that the work made: every change makes one, counted from 1.
        pieces: Every piece it touched, as it now is; those cut again from are gone.
        lengths: The lots that are new.
        notes: What else is to be known: claims that were over, sticks that were recorded before.
    """

    revision: int
    pieces: tuple[StoredPiece, ...]
    lengths: tuple[str, ...]
    notes: tuple[Sentence, ...] = ()


class Imported(Value, frozen=True):
    """It lists what was brought in, or would be.

    Attributes:
        dry_run: Whether it was only tried: nothing was kept then.
        revision: The revision it made; the one that stands, when it made none.
        added: The marks that are new.
        updated: The marks whose opening changed.
        unchanged: The number of openings that were there already, just so.
        removed: Marks that went, since the import replaces the whole.
    """

    dry_run: bool
    revision: int
    added: tuple[str, ...]
    updated: tuple[str, ...]
    unchanged: int
    removed: tuple[str, ...]
