"""The saw order: operations, and the settings they are made at.

Lengths are inches on the marks of the rounding asked for; angles are degrees on the saw's scale.
"""

from __future__ import annotations

from enum import StrEnum

import msgspec

from longpoint.geometry import Hand, PieceKey
from longpoint.lengths import Fraction
from longpoint.values import Angle, Value

SQUARE = Angle(0)


class Tool(StrEnum):
    """What a cut is made with."""

    MITRE_SAW = "mitre_saw"
    TABLE_SAW = "table_saw"
    HAND_SAW = "hand_saw"


class OperationKind(StrEnum):
    """What is done.

    square_ends: both factory ends of a stick are squared off.
    cut_out: a defect is sawn out of a stick.
    rip_stick: a whole stick is ripped to width.
    part_off: a piece too short to hold is cut from the stick while that is long.
    crosscut: a piece is cut square to its overall length against the stop block.
    shared_cut: one angled cut makes the end of two pieces that lie turned over on the stick.
    angled_end: a mitre, bevel or compound cut at the end of a piece, to the corner.
    rip: one piece is ripped to width.
    notch: a stool's notch is sawn out.
    """

    SQUARE_ENDS = "square_ends"
    CUT_OUT = "cut_out"
    RIP_STICK = "rip_stick"
    PART_OFF = "part_off"
    CROSSCUT = "crosscut"
    SHARED_CUT = "shared_cut"
    ANGLED_END = "angled_end"
    RIP = "rip"
    NOTCH = "notch"


class Setting(Value, frozen=True):
    """How a tool is set. Two cuts at equal settings need one setup.

    Attributes:
        tool: What is set.
        swing: The side to which the front of the saw's table turns; null for a square table.
        mitre: How far the table is turned off a square cut, to the step of the saw's scale.
        tilt: The side to which the top of the blade leans; null for an upright blade.
        bevel: How far the blade is tilted from upright, to the step of the saw's scale.
        stop: From the blade to the stop block; null for a cut to a mark or to the piece's corner.
        fence: From the rip fence to the blade, at the wider end of a taper; null where nothing is ripped.
        taper: Widths at the left and at the right end as the piece lies, ripped on a taper jig; null where it is
            parallel.
        notch_depth: From the stool's back edge in; null where nothing is notched.
        notch_length: From the stool's end in.
        notch_end_depth: From the back edge in at the horn's end, where that is another depth.
    """

    tool: Tool
    swing: Hand | None = None
    mitre: Angle = msgspec.field(default=SQUARE, name="mitre_degrees")
    tilt: Hand | None = None
    bevel: Angle = msgspec.field(default=SQUARE, name="bevel_degrees")
    stop: Fraction | None = None
    fence: Fraction | None = None
    taper: tuple[Fraction, Fraction] | None = None
    notch_depth: Fraction | None = None
    notch_length: Fraction | None = None
    notch_end_depth: Fraction | None = None


class Setup(Value, frozen=True):
    """A tool set once.

    Attributes:
        number: Counted from 1.
        setting: How it is set.
        operations: How many are made so.
    """

    number: int
    setting: Setting
    operations: int


class PieceName(Value, frozen=True):
    """A piece among all the job's.

    Attributes:
        opening: The mark of the piece's opening.
        part: The piece's key there.
        instance: Which of several alike, counted from 1.
    """

    opening: str
    part: PieceKey
    instance: int = 1


class Operation(Value, frozen=True):
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
        mark: Where to cut: from the stick's left end to the near side of what is cut out, from its free end for what is
            parted off or squared off, or along the fence from the left end of the row for a shared cut; null where
            nothing is marked.
        mark_to: From the stick's left end to the far side of what is cut out.
        held: Length of the workpiece in hand when the cut is made; null where no stick was planned.
        mirror_of: The part of the same opening that this one is the mirror image of; null for none.
        cautions: Codes of the answer's cautions that bear on this step.
    """

    number: int
    setup: int
    kind: OperationKind
    profile: str
    stick: int | None
    pieces: tuple[PieceName, ...]
    title: str = ""
    end: str = ""
    on_saw: Hand | None = None
    mark: Fraction | None = None
    mark_to: Fraction | None = None
    held: Fraction | None = None
    mirror_of: PieceKey | None = None
    cautions: tuple[str, ...] = ()


class SawOrder(Value, frozen=True):
    """The cuts in the order that sets the saws least.

    Attributes:
        setup_count: How often a tool is set.
        setup_count_by_opening: How often it would be, cutting one opening after the other.
        setups: Each tool setting, in order.
        operations: Each step, in order.
    """

    setup_count: int
    setup_count_by_opening: int
    setups: tuple[Setup, ...]
    operations: tuple[Operation, ...]

    def setting_of(self, operation: Operation) -> Setting:
        """How the tool is set for one of its operations."""
        return self.setups[operation.setup - 1].setting
