"""The saw order's values: operations, the settings they are made at, and the sticks they are made on.

Lengths are inches on the marks of the rounding asked for; angles are degrees on the saw's scale.
"""

from __future__ import annotations

from enum import StrEnum

from longpoint.geometry import Hand
from longpoint.geometry.value import Value
from longpoint.lengths import Fraction
from longpoint.shop.cautions import Caution

SQUARE_ANGLE = Fraction(0)


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
        swing: the side to which the front of the saw's table turns; None for a square table.
        mitre: degrees the table is turned.
        tilt: the side to which the top of the blade leans; None for an upright blade.
        bevel: degrees the blade is tilted.
        stop: blade to stop block; None for a cut made to a mark or to the piece's corner.
        fence: rip fence to blade, the wider end's on a taper; None where nothing is ripped.
        taper: widths at the left and right end as the piece lies, ripped on a taper jig; None where it is parallel.
        notch_depth: gauge setting from the back edge; None where nothing is notched.
        notch_length: from the end.
        notch_end_depth: the depth at the horn's end, where it is another.
    """

    tool: Tool
    swing: Hand | None = None
    mitre: Fraction = SQUARE_ANGLE
    tilt: Hand | None = None
    bevel: Fraction = SQUARE_ANGLE
    stop: Fraction | None = None
    fence: Fraction | None = None
    taper: tuple[Fraction, Fraction] | None = None
    notch_depth: Fraction | None = None
    notch_length: Fraction | None = None
    notch_end_depth: Fraction | None = None


class PieceName(Value, frozen=True):
    """A piece among all the job's. Attributes: opening, its mark; part, its key; instance, 1 to the count."""

    opening: str
    part: str
    instance: int = 1


class Operation(Value, frozen=True):
    """One step at the saw.

    Attributes:
        number: its place in the sequence, from 1.
        setup: number of the setup it is made at.
        stick: the stick's number in its profile's plan, from 1; 0 for a part that no plan lays on a stick.
        pieces: what it makes or works on; two for a shared cut, all of the stick's for a rip_stick.
        title: the piece in words; "" where a whole stick is worked on.
        end: the end of the piece as installed (left, foot, wall ...); "" where none is meant.
        on_saw: which end of the piece that is as it lies on the saw, face up, outer edge to the fence.
        mark: inches to the cut: from the stick's left end (cut_out), from the left end of the row, along the
            fence (shared_cut), or from the free end (part_off); None where nothing is marked.
        mark_to: the far side of what is cut out; None otherwise.
        held: length of the workpiece in hand when the cut is made; None where no stick was planned.
        mirror_of: key of the part of the same opening that this one is the mirror image of; "" for none.
        cautions: codes of the cautions that bear on this step.
    """

    number: int
    setup: int
    kind: OperationKind
    setting: Setting
    profile: str
    stick: int
    pieces: tuple[PieceName, ...]
    title: str = ""
    end: str = ""
    on_saw: Hand | None = None
    mark: Fraction | None = None
    mark_to: Fraction | None = None
    held: Fraction | None = None
    mirror_of: str = ""
    cautions: tuple[str, ...] = ()


class Setup(Value, frozen=True):
    """A tool set once. Attributes: number, from 1; setting; operations, how many are made at it."""

    number: int
    setting: Setting
    operations: int


class StickPiece(Value, frozen=True):
    """A piece's place on a stick, inches from the stick's left end. Attributes: name; title; start; end."""

    name: PieceName
    title: str
    start: Fraction
    end: Fraction


class Stick(Value, frozen=True):
    """One stick of the plan.

    Attributes:
        number: from 1 through its profile's plan.
        kind: key of the stick or remnant in the stock.
        length: uncut.
        pieces: from left to right.
        offcut: what is left at the right-hand end.
        kept: whether the offcut goes back on the rack.
    """

    number: int
    profile: str
    kind: str
    remnant: bool
    length: Fraction
    pieces: tuple[StickPiece, ...]
    offcut: Fraction
    kept: bool


class SawOrder(Value, frozen=True):
    """The cuts in the order that changes the saws least.

    Attributes:
        setups: each time a tool is set; their number is what the order is chosen to keep small.
        setups_by_opening: how many setups the same cuts take made opening by opening.
        cautions: each caution that an operation names, once.
    """

    operations: tuple[Operation, ...]
    setups: tuple[Setup, ...]
    setups_by_opening: int
    sticks: tuple[Stick, ...]
    cautions: tuple[Caution, ...]
