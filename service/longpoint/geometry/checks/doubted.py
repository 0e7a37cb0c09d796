"""A reading that may be a slip: which readings are looked at, and what is said of one that is doubted. None is refused,
and none is corrected: who confirms it as it was read hears no more of it."""

from __future__ import annotations

from typing import Literal, NamedTuple

from msgspec.structs import replace

from longpoint.geometry.checks.findings import Finding, Offer
from longpoint.geometry.readings.inputs import ON_FLOOR, Opening
from longpoint.lengths import Fraction, Length, PositiveLength
from longpoint.texts import Sentence, say
from longpoint.values import Path

Kind = Literal["width", "height", "depth"]


class Read(NamedTuple):
    """A reading that is looked at.

    Attributes:
        name: of the field that confirms it.
        kind: what of the opening it is.
        path: of its field in the readings.
        side: where it was taken.
        value: what was read.
    """

    name: str
    kind: Kind
    path: Path
    side: str
    value: Length


_LOOKED_AT: tuple[tuple[str, Kind, Path, str], ...] = (
    ("jamb_width", "width", ("jamb_width",), "sill"),
    ("head_width", "width", ("head_width",), "head"),
    ("jamb_height", "height", ("jamb_height",), "left"),
    ("left_jamb_height", "height", ("left_jamb_height",), "left"),
    ("right_jamb_height", "height", ("right_jamb_height",), "right"),
    ("jamb_depth", "depth", ("jamb_depth",), "left"),
    ("left_depth", "depth", ("left_depth",), "left"),
    ("right_depth", "depth", ("right_depth",), "right"),
)


def readings_of(opening: Opening) -> tuple[Read, ...]:
    """Widths, heights and depths as they were read; of a curved head no height, which may be of any length."""
    readings = opening.readings
    door = readings.door
    if door is not None:
        return (
            Read("door_width", "width", ("door", "width"), "sill", _with_text(door.width)),
            Read("door_height", "height", ("door", "height"), "left", _with_text(door.height)),
        )
    found = []
    for name, kind, path, side in _LOOKED_AT:
        value: Fraction | None = getattr(readings, name)
        if value is not None and not (kind == "height" and readings.rise is not None):
            found.append(Read(name, kind, path, side, _with_text(value)))
    return tuple(found)


def _with_text(value: Fraction) -> Length:
    """A reading that code made up, as a test does, has no text of its own."""
    return value if isinstance(value, Length) else Length(value)


def stands_on_floor(opening: Opening) -> bool:
    """Whether it is a door, or stands as one does."""
    return opening.readings.door is not None or opening.bottom in ON_FLOOR


def is_confirmed(opening: Opening, read: Read) -> bool:
    """Whether this very reading was confirmed."""
    confirmed: Length | None = getattr(opening.confirmed, read.name)
    return confirmed is not None and confirmed == read.value


def with_confirmed(opening: Opening, name: str) -> Opening:
    """The opening with one of its readings confirmed."""
    value = next(read.value for read in readings_of(opening) if read.name == name)
    return replace(opening, confirmed=replace(opening.confirmed, **{name: PositiveLength(value, value.text)}))


def doubt(code: str, read: Read, detail: Sentence) -> Finding:
    """What is found of a reading: to take it again, or to confirm it."""
    again = Offer("take_again", say("offer", "readings.read-again", reading=read.path[-1]))
    stands = Offer(
        "confirm",
        say("offer", "readings.confirm", read=read.value.text),
        ("confirmed", read.name),
        read.value.text,
    )
    by = "depth" if read.kind == "depth" else ""
    return Finding(code, read.side, detail, +read.value, (again, stands), by, ("readings", *read.path))
