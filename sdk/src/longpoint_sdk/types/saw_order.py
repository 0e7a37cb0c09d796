"""Types of the document's part "saw_order". Generated; do not edit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import Result
from longpoint_sdk.types.basics import Hand, LengthOut

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


class PieceOut(Result, frozen=True, kw_only=True):
    """A piece: its opening's mark, its part's key, and which of the count it is."""

    opening: str
    part: str
    instance: int


class OperationOut(Result, frozen=True, kw_only=True):
    """One step at the saw, made at the setup of that number.

    `stick` is the stick's number in its profile's plan, null for a part without stock. `end` is the end of
    the piece as installed, `on_saw` the end as it lies, face up, outer edge against the fence. `mark` is
    where to cut: from the stick's left end (cut_out, to `mark_to`), from its free end (part_off, and what
    square_ends takes off), or along the fence from the left end of the row (shared_cut). `held` is the length
    of the workpiece in hand. `mirror_of` is the part that this one is the mirror image of; `cautions` are
    codes of the answer's cautions.

    Attributes:
        pieces: What it makes or cuts.
        title: The step in words.
    """

    number: int
    setup: int
    kind: OperationKind | str
    profile: str
    stick: int | None
    pieces: list[PieceOut]
    title: str
    end: str
    on_saw: Hand | str | None
    mark: LengthOut | None
    mark_to: LengthOut | None
    held: LengthOut | None
    mirror_of: str
    cautions: list[str]


class SettingOut(Result, frozen=True, kw_only=True):
    """How a tool is set.

    `mitre_degrees` is the table's turn towards `swing`, `bevel_degrees` the blade's tilt towards `tilt`, both
    to the step of the saw's scale. `stop` is blade to stop block, null for a cut to a mark or to the piece's
    corner; `fence` is rip fence to blade, and a tapered rip has its widths at the left and right end as the
    piece lies; the notch is gauged `notch_depth` from the back edge and `notch_length` from the end,
    `notch_end_depth` at the horn's end where that is another.
    """

    tool: Tool | str
    swing: Hand | str | None
    mitre_degrees: float
    tilt: Hand | str | None
    bevel_degrees: float
    stop: LengthOut | None
    fence: LengthOut | None
    taper: list[LengthOut] | None
    notch_depth: LengthOut | None
    notch_length: LengthOut | None
    notch_end_depth: LengthOut | None


class SetupOut(Result, frozen=True, kw_only=True):
    """A tool set once, and how many operations are made so."""

    number: int
    setting: SettingOut
    operations: int


class SawOrderOut(Result, frozen=True, kw_only=True):
    """The cuts in the order that sets the saws least.

    `setup_count` is how often a tool is set, `setup_count_by_opening` how often it would be, cutting one
    opening after the other.

    Attributes:
        setups: Each tool setting, in order.
        operations: Each step, in order.
    """

    setup_count: int
    setup_count_by_opening: int
    setups: list[SetupOut]
    operations: list[OperationOut]
