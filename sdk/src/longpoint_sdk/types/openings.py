"""Types of the document's part "openings". Generated; do not edit."""

from __future__ import annotations

from typing import Any

from longpoint_sdk.types._base import LengthText, Request, Result, request_from
from longpoint_sdk.types.common import (
    Bottom,
    Certainty,
    Confirmed,
    Horns,
    HouseOpening,
    Limits,
    Reveals,
    SillAnswer,
    WallAnswer,
    Widths,
)
from longpoint_sdk.types.readings import Readings


class Chosen(Request, frozen=True, kw_only=True):
    """Some of a schedule's openings.

    Attributes:
        all: True means every opening there is.
        openings: The openings, by their marks.
        rooms: The rooms of which every opening is meant.
    """

    all: bool = False
    openings: list[str] = []
    rooms: list[str] = []


class Released(Result, frozen=True, kw_only=True):
    """Openings that were released, or held back.

    Attributes:
        revision: The schedule's revision it made; the one that stands, when it made none.
        changed: Marks of those that were not so before.
        estimated: Marks of those that are released and still wait, since they are only estimated.
    """

    revision: int
    changed: list[str]
    estimated: list[str]


class StoredOpening(Result, frozen=True, kw_only=True):
    """An opening as it was sent, and the exact value of every length in it.

    Attributes:
        mark: What it is called in the house; part of each piece's name. A name on one line, not starting with
            a space.
        readings: The readings that the tape gave at this opening.
        trim: The name of one of the house's trim specs. A name on one line, not starting with a space.
        id: The id of the opening.
        revision: The schedule's revision that last changed it.
        position: Its place in the schedule's order; places may be skipped.
        exact: The exact value of every length in it. Every length exactly, by its JSON pointer, as a fraction
            of an inch.
        bottom: It says what the casing stands on.
        certainty: How sure its readings are: estimated before anybody was there with a tape, measured, or
            confirmed by measuring again. An estimated opening counts in the cost, and nothing is bought or
            cut for it.
        confirmed: The readings that were doubted and stand as they are.
        count: The number of openings that are alike.
        held: Whether it is held back: it counts in the cost, and nothing is bought or cut for it until it is
            released.
        horns: The horns of this opening, where they are not the trim's.
        reveals: The reveals of this opening, where they are not the trim's.
        room: Where it is; money is summed by room, too.
        sill_answer: It says what is done under a stool on a sill out of level.
        square_gap: The widest gap, measured at the open end of a miter, that cuts for square corners may
            leave: up to it an opening that is out of square is treated as square. A length as a tape reads
            it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        tape_spread: How far a reading of the tape is off as a rule, root mean square, measured between what
            was read and what is there; readings that check each other are weighed by it. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        wall_answer: The remedy chosen for a wall out of plane; until one is chosen no size changes for it.
        wall_limits: It says how far the wall may lie off the jamb's edge before the casing is planed or the
            jamb extended.
        widths: The widths that pieces of this opening are ripped to.
        without_apron: True leaves out the apron that the trim has.
    """

    mark: str
    readings: Readings
    trim: str
    id: str
    revision: int
    position: int
    exact: dict[str, str]
    bottom: Bottom | str = "stool"
    certainty: Certainty | str = "measured"
    confirmed: Confirmed = Confirmed()
    count: int = 1
    held: bool = False
    horns: Horns = Horns()
    reveals: Reveals = Reveals()
    room: str = ""
    sill_answer: SillAnswer | str = "shim"
    square_gap: LengthText = "1/64 in"
    tape_spread: LengthText = "1/32 in"
    wall_answer: WallAnswer | str = "flat"
    wall_limits: Limits = Limits()
    widths: Widths = Widths()
    without_apron: bool = False

    def changed(self, **fields: Any) -> HouseOpening:
        """The request that changes it: all as it was read, with other values for these fields.

        Raises:
            TypeError: for a field that HouseOpening does not have.
        """
        return request_from(HouseOpening, self, fields)
