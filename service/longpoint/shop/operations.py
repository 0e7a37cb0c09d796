"""The saw order: operations, and the settings they are made at.

Lengths are inches on the marks of the rounding asked for; angles are degrees on the saw's scale.
"""

from __future__ import annotations

from enum import StrEnum

import msgspec

from longpoint.geometry import Hand, PieceKey
from longpoint.lengths import Fraction
from longpoint.shop.quantity import Quantity
from longpoint.shop.rates import Rate
from longpoint.texts import Sentence
from longpoint.values import Angle, Value

SQUARE = Angle(0)


class Tool(StrEnum):
    """A cut is made with one of these."""

    MITER_SAW = "miter_saw"
    TABLE_SAW = "table_saw"
    HAND_SAW = "hand_saw"


class OperationKind(StrEnum):
    """What is done, each with one cut.

    rip_stick: a whole stick is ripped to width.
    square_end: a stick's free end, from which the next piece is cut, is cut square.
    cut_out: a stick is cut through beyond a defect.
    angled_end: a miter, bevel or compound cut at the end of a piece, to its corner or to a mark.
    cut_off: a square cut cuts a piece off its stick.
    angled_cut_off: a miter, bevel or compound cut cuts a piece off its stick and makes its end.
    shared_cut: the same, and the cut makes the end of the next piece too: that lies turned over, its face down, so
        that the slanted end which the cut leaves is the one it needs.
    rip: one piece is ripped to width.
    notch: a stool's notch is sawn out.
    """

    RIP_STICK = "rip_stick"
    SQUARE_END = "square_end"
    CUT_OUT = "cut_out"
    ANGLED_END = "angled_end"
    CUT_OFF = "cut_off"
    ANGLED_CUT_OFF = "angled_cut_off"
    SHARED_CUT = "shared_cut"
    RIP = "rip"
    NOTCH = "notch"


class MarkFrom(StrEnum):
    """The point that a length is measured from, on the edge that is marked.

    free_end: the end of what is left of the stick from which the next piece is cut.
    left_end: the end of the stick that lay left in its drawing, before anything was cut.
    long_point: the long point of the piece's other end, that is there already.
    short_point: the short point of the piece's other end.
    square_end: the piece's other end, that is square.
    """

    FREE_END = "free_end"
    LEFT_END = "left_end"
    LONG_POINT = "long_point"
    SHORT_POINT = "short_point"
    SQUARE_END = "square_end"


class Holding(StrEnum):
    """What is held when a cut is made: the stick, or the piece."""

    STICK = "stick"
    PIECE = "piece"


class OrderKind(StrEnum):
    """An order to cut in.

    stick_by_stick: each stick is finished before the next is picked up.
    opening_by_opening: each opening's pieces are finished before the next opening's.
    setting_by_setting: cuts of one setting are made together, whatever stick they are on.
    """

    STICK_BY_STICK = "stick_by_stick"
    OPENING_BY_OPENING = "opening_by_opening"
    SETTING_BY_SETTING = "setting_by_setting"


class Setting(Value, frozen=True):
    """It says how a tool is set. Two cuts at equal settings need one setup.

    Attributes:
        tool: The tool that is set.
        miter_direction: The side to which the front of the saw's table turns; null for a square table.
        miter: The table is turned this far off a square cut, to the step of the saw's scale.
        bevel_direction: The side to which the top of the blade leans; null for an upright blade.
        bevel: The blade is tilted this far from upright, to the step of the saw's scale.
        stop: The distance from the blade's near side to the stop block, a block clamped to the saw's fence that the end
            of the stick is pushed against, so that pieces come out alike; null for a cut to a mark or to a corner.
        fence: The distance from the rip fence to the blade, at the wider end of a taper; null where nothing is
            ripped.
        taper: Widths at the left and at the right end as the piece lies, ripped on a taper jig, a carrier that
            holds the board at a slant to the rip fence; null where it is parallel.
        notch_depth: The depth of the notch, measured from the stool's back edge in; null where nothing is
            notched.
        notch_length: The length of the notch, measured from the stick's end in.
        notch_end_depth: The depth at the horn's end, measured from the back edge in, where that is another
            depth.
    """

    tool: Tool
    miter_direction: Hand | None = None
    miter: Angle = msgspec.field(default=SQUARE, name="miter_degrees")
    bevel_direction: Hand | None = None
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
        number: The number of the setup, counted from 1.
        setting: It says how the tool is set.
        operations: The number of operations made so.
    """

    number: int
    setting: Setting
    operations: int


class PieceName(Value, frozen=True):
    """A piece among all the house's.

    Attributes:
        opening: The mark of the piece's opening.
        piece: The key of the piece within its opening.
        instance: It says which of several alike this is, counted from 1.
    """

    opening: str
    piece: PieceKey
    instance: int = 1


class Operation(Value, frozen=True):
    """An operation of the saw order is one cut.

    Attributes:
        number: The place of the cut in the sequence, counted from 1.
        setup: The number of the setup that it is made at: a tool set once, as the order's `setups` list it.
        kind: It says what is done: a square cut, a miter, a bevel, a compound cut, a rip or a notch.
        profile: The profile of the stock that is cut.
        stick: The stick's name; null for a piece without stock.
        pieces: What it makes or cuts: two for a shared cut, all of the stick's where a whole stick is ripped.
        title: The piece in words; empty where a whole stick is worked on.
        end: The end of the piece as installed: left, foot, head and so on; empty where none is meant.
        on_saw: It says which end of the piece that is as it lies.
        face_up: Whether its face, the side that is seen in the room, lies up. It lies down where a piece of stock that
            is `turnable` is turned over.
        fence_edge: The edge that lies against the fence. Of a casing the inner edge is the one at the opening, and the
            outer edge the one away from it; of an apron top is the edge under the stool; of a stool back is the edge
            at the sash.
        mark: The length to mark; null where a stop block, or the corner of what is there, says where to cut.
        mark_from: The mark is measured from here.
        mark_edge: The edge that the cut has its long point on, where the mark is: outer and inner as at `fence_edge`;
            the stool's front, into the room, or back; an apron's top; the face, seen in the room, or the back, on
            the wall; outer_back and inner_back are the same edges on the piece's back; empty for a cut square across
            a square piece.
        holds: It says what is held when the cut is made.
        held: The length of the piece or stick that is held, measured from end to end; of a stick, the longer part on
            either side of the cut. Null where no stick was planned.
        stops_after: How far from the front edge the cut goes, where it stops: at a stool's notch, or at the back of a
            return that is narrower than its stick; null for a cut right through.
        mirror_of: The `key` of the piece of the same opening that the piece cut here is the mirror image of; null
            for none.
        cautions: Codes of the answer's cautions that bear on this cut.
    """

    number: int
    setup: int
    kind: OperationKind
    profile: str
    stick: str | None
    pieces: tuple[PieceName, ...]
    title: str = ""
    end: str = ""
    on_saw: Hand | None = None
    face_up: bool = True
    fence_edge: str = "outer"
    mark: Fraction | None = None
    mark_from: MarkFrom | None = None
    mark_edge: str = ""
    holds: Holding = Holding.STICK
    held: Fraction | None = None
    stops_after: Fraction | None = None
    mirror_of: PieceKey | None = None
    cautions: tuple[str, ...] = ()


class OrderSum(Value, frozen=True):
    """It says what one order comes to, by the shop's rates at the saw.

    Attributes:
        order: It says which order this is.
        minutes: The minutes at the saws, from the first stick picked up to the last piece labeled.
        setting_minutes: The part of those minutes that goes into setting the saws.
        cuts: The number of cuts made.
        pick_ups: It counts how often a stick is picked up.
        settings: It counts how often a saw is set.
        open_at_once: The most openings that are begun and not finished at any one time.
    """

    order: OrderKind
    minutes: Quantity
    setting_minutes: Quantity
    cuts: int
    pick_ups: int
    settings: int
    open_at_once: int


class SawOrder(Value, frozen=True):
    """The cuts in an order to make them.

    Attributes:
        order: Which order it is: the one asked for, or else the quickest of three.
        why: It says in words why it is that order.
        cuts: How many cuts there are: as many as operations, and as the hours reckon with.
        orders: It says what each of the three orders comes to.
        apart: Returns that are cut from another stick than their apron or stool: theirs has no room for them, or moving
            them would change what is kept of a stick.
        setups: The settings of the tools, in order.
        operations: The cuts, in order.
        rates: The rates that the minutes were computed with.
    """

    order: OrderKind
    why: Sentence
    cuts: int
    orders: tuple[OrderSum, ...]
    apart: tuple[PieceName, ...]
    setups: tuple[Setup, ...]
    operations: tuple[Operation, ...]
    rates: tuple[Rate, ...]

    def setting_of(self, operation: Operation) -> Setting:
        """How the tool is set for one of its operations."""
        return self.setups[operation.setup - 1].setting

    @property
    def sum(self) -> OrderSum:
        """What this order comes to."""
        return next(one for one in self.orders if one.order is self.order)

    @property
    def cuts_by_opening(self) -> dict[str, Fraction]:
        """How many of the cuts are each opening's; one that several pieces share is each piece's in equal pieces."""
        found: dict[str, Fraction] = {}
        for operation in self.operations:
            for piece in operation.pieces:
                share = Fraction(1, len(operation.pieces))
                found[piece.opening] = found.get(piece.opening, Fraction(0)) + share
        return found
