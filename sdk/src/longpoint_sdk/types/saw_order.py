"""Types of the document's part "saw_order". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import Result
from longpoint_sdk.types.basics import Hand, MarkedLength

if TYPE_CHECKING:
    OperationKind = Literal[
        "angled_end",
        "crosscut",
        "cut_out",
        "notch",
        "part_off",
        "rip",
        "rip_stick",
        "shared_cut",
        "square_ends",
    ]
    """What is done.

    square_ends: both factory ends of a stick are squared off. cut_out: a defect is sawn out of a stick.
    rip_stick: a whole stick is ripped to width. part_off: a piece too short to hold is cut from the stick
    while that is long. crosscut: a piece is cut square to its overall length against the stop block.
    shared_cut: one angled cut makes the end of two pieces that lie turned over on the stick. angled_end: a
    mitre, bevel or compound cut at the end of a piece, to the corner. rip: one piece is ripped to width.
    notch: a stool's notch is sawn out.
    """
    Tool = Literal["hand_saw", "mitre_saw", "table_saw"]
    """What a cut is made with."""
else:
    OperationKind = str
    Tool = str


class PieceName(Result, frozen=True, kw_only=True):
    """A piece among all the job's.

    Attributes:
        opening: The mark of the piece's opening.
        part: The piece's key there.
        instance: Which of several alike, counted from 1.
    """

    opening: str
    part: str
    instance: int


class Operation(Result, frozen=True, kw_only=True):
    """One step at the saw.

    Attributes:
        number: Its place in the sequence, counted from 1.
        setup: Number of the setup it is made at.
        kind: What is done.
        profile: The stock that is cut.
        stick: The stick's number in its profile's plan; null for a part without stock.
        pieces: What it makes or cuts: two for a shared cut, all of the stick's where a whole stick is ripped.
        title: The piece in words; empty where a whole stick is worked on.
        end: The end of the piece as installed: left, foot, head and so on; empty where none is meant.
        on_saw: Which end of the piece that is as it lies, face up, outer edge against the fence.
        mark: Where to cut: from the stick's left end to the near side of what is cut out, from its free end
            for what is parted off or squared off, or along the fence from the left end of the row for a
            shared cut; null where nothing is marked.
        mark_to: From the stick's left end to the far side of what is cut out.
        held: Length of the workpiece in hand when the cut is made; null where no stick was planned.
        mirror_of: The part of the same opening that this one is the mirror image of; null for none.
        cautions: Codes of the answer's cautions that bear on this step.
    """

    number: int
    setup: int
    kind: OperationKind | str
    profile: str
    stick: int | None
    pieces: list[PieceName]
    title: str
    end: str
    on_saw: Hand | str | None
    mark: MarkedLength | None
    mark_to: MarkedLength | None
    held: MarkedLength | None
    mirror_of: str | None
    cautions: list[str]


class Setting(Result, frozen=True, kw_only=True):
    """How a tool is set. Two cuts at equal settings need one setup.

    Attributes:
        tool: What is set.
        swing: The side to which the front of the saw's table turns; null for a square table.
        mitre_degrees: How far the table is turned off a square cut, to the step of the saw's scale.
        tilt: The side to which the top of the blade leans; null for an upright blade.
        bevel_degrees: How far the blade is tilted from upright, to the step of the saw's scale.
        stop: From the blade to the stop block; null for a cut to a mark or to the piece's corner.
        fence: From the rip fence to the blade, at the wider end of a taper; null where nothing is ripped.
        taper: Widths at the left and at the right end as the piece lies, ripped on a taper jig; null where it
            is parallel.
        notch_depth: From the stool's back edge in; null where nothing is notched.
        notch_length: From the stool's end in.
        notch_end_depth: From the back edge in at the horn's end, where that is another depth.
    """

    tool: Tool | str
    swing: Hand | str | None
    mitre_degrees: float
    tilt: Hand | str | None
    bevel_degrees: float
    stop: MarkedLength | None
    fence: MarkedLength | None
    taper: tuple[MarkedLength, MarkedLength] | None
    notch_depth: MarkedLength | None
    notch_length: MarkedLength | None
    notch_end_depth: MarkedLength | None


class Setup(Result, frozen=True, kw_only=True):
    """A tool set once.

    Attributes:
        number: Counted from 1.
        setting: How it is set.
        operations: How many are made so.
    """

    number: int
    setting: Setting
    operations: int


class SawOrder(Result, frozen=True, kw_only=True):
    """The cuts in the order that sets the saws least.

    Attributes:
        setup_count: How often a tool is set.
        setup_count_by_opening: How often it would be, cutting one opening after the other.
        setups: Each tool setting, in order.
        operations: Each step, in order.
    """

    setup_count: int
    setup_count_by_opening: int
    setups: list[Setup]
    operations: list[Operation]
