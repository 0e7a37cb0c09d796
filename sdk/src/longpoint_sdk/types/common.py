"""Types of the document's part "common". Generated; do not edit."""

from __future__ import annotations

from decimal import Decimal
from typing import TYPE_CHECKING, Literal

from longpoint_sdk.types._base import LengthText, MoneyText, Request, Result
from longpoint_sdk.types.basics import MarkedLength, Unit
from longpoint_sdk.types.costs import CostSheet
from longpoint_sdk.types.hours import Hours
from longpoint_sdk.types.materials import Materials
from longpoint_sdk.types.movement import Conditions
from longpoint_sdk.types.pieces import Piece
from longpoint_sdk.types.readings import Readings
from longpoint_sdk.types.saw_order import PieceName, SawOrder
from longpoint_sdk.types.shop import Shop
from longpoint_sdk.types.sticks import ProfilePlan
from longpoint_sdk.types.stock import Defect, Stick, Stock
from longpoint_sdk.types.trim import Trim

if TYPE_CHECKING:
    Bottom = Literal["casing", "floor", "plinth", "stool"]
    """What the side casings stand on: a window's `stool`, a bottom `casing` (a picture frame, without a stool),
    the `floor`, or a `plinth` block at each foot.
    """
    Certainty = Literal["confirmed", "estimated", "measured"]
    """It says how sure an opening's readings are."""
    Mode = Literal["down", "nearest", "up"]
    """Which mark is taken: nearest (the longer of two equally near), up (never short), down (never long).
    """
    RoundTo = Literal["0.5 mm", "1 mm", "1/16 in", "1/32 in", "1/64 in", "1/8 in"]
    """The fineness of the marks a length is rounded to."""
    Section = Literal["cost", "hours", "materials", "saw_order"]
    """A part of the shop's answer."""
    SillAnswer = Literal["shim", "tapered_shim"]
    """What is done under a stool on a sill out of level: shims, or one tapered strip."""
    WallAnswer = Literal["extend", "flat", "lean"]
    """What is done where the wall does not lie flush. `flat` changes no size: the casing is cut as on a flush
    wall; `lean` cuts it to lean from the jamb onto the wall; `extend` brings the jamb out to the wall by
    boards.
    """
else:
    Bottom = str
    Certainty = str
    Mode = str
    RoundTo = str
    Section = str
    SillAnswer = str
    WallAnswer = str


class BuyLine(Result, frozen=True, kw_only=True):
    """A line for the yard.

    Attributes:
        profile: The name to ask the yard for.
        length: The length of each stick, measured from end to end.
        quantity: The number of sticks.
        price: The price of one stick. An amount of money as decimal text with two places.
        cost: The price of all these sticks. An amount of money as decimal text with two places.
    """

    profile: str
    length: MarkedLength
    quantity: int
    price: Decimal
    cost: Decimal


class Caution(Result, frozen=True, kw_only=True):
    """What to know before starting: it informs and defers, and approves nothing.

    Attributes:
        code: A stable name of the caution.
        text: The caution in words.
        source: The source that the caution rests on.
        applies_to: The marks of the openings it was raised for; empty for the whole house.
        pieces: The pieces it was raised for, where it bears on single cuts.
    """

    code: str
    text: str
    source: str
    applies_to: list[str]
    pieces: list[PieceName]


class ClosingCorner(Result, frozen=True, kw_only=True):
    """A joint of pieces that are rounded together.

    Attributes:
        before: The key of the piece that ends at this joint, going counterclockwise as seen from the room.
        after: The key of the piece that begins at it.
        before_degrees: The saw's setting for the end of `before`, off a square cut; negative where its long
            point lies on the inner edge.
        after_degrees: The saw's setting for the end of `after`, counted in the same way.
        gap: How far the joint's long point lies from its exact place once all before it are cut to their
            marks, measured in a straight line.
    """

    before: str
    after: str
    before_degrees: float
    after_degrees: float
    gap: str


class Closing(Result, frozen=True, kw_only=True):
    """Mitered pieces round a curve or a polygon whose lengths, and whose settings on the saw's scale of tenths
    of a degree, are rounded together.

    Attributes:
        first: The key of the piece whose beginning is held; the others are counted from it, counterclockwise.
        first_turned: How far `first` is turned off its exact direction, in degrees, counterclockwise; its
            foot is cut to match.
        corners: Their joints, counterclockwise from the right; of a picture frame the last one closes the
            ring.
        gap: How far the whole stands open: from the end of the last piece to its exact place.
        closes: Whether `gap` is at most one step of the rounding, as 1/16 in, and each corner's gap at most
            one and a half steps.
        least_gap: The least gap that any way of rounding leaves; null where it closes, or where there are too
            many pieces to try every way.
        opens_off_zero: How far the end of the last piece comes off its place, the first being held, where
            each cut is 0.05 degrees off because the saw's pointer stands at zero while the blade is that far
            off square.
        try_first: The joint to cut and try first, by its place in `corners`: its settings come most often.
        dry_fit: How many pieces to lay out dry, from the first on, before the rest is cut.
    """

    first: str
    first_turned: float
    corners: list[ClosingCorner]
    gap: str
    closes: bool
    least_gap: str | None
    opens_off_zero: str
    try_first: int
    dry_fit: int


class Confirmed(Request, frozen=True, kw_only=True):
    """Readings that were doubted and stand as they are. Each is given as it was read: nothing more is said of it
    for as long as the opening has that very reading, and another is looked at anew.

    Attributes:
        door_height: The door's `height` that is confirmed. A length as a tape reads it, with its unit: feet,
            inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when
            the request has one.
        door_width: The door's `width` that is confirmed. A length as a tape reads it, with its unit: feet,
            inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when
            the request has one.
        head_width: The `head_width` that is confirmed. A length as a tape reads it, with its unit: feet,
            inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when
            the request has one.
        jamb_depth: The `jamb_depth` that is confirmed. A length as a tape reads it, with its unit: feet,
            inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when
            the request has one.
        jamb_height: The `jamb_height` that is confirmed. A length as a tape reads it, with its unit: feet,
            inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when
            the request has one.
        jamb_width: The `jamb_width` that is confirmed. A length as a tape reads it, with its unit: feet,
            inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when
            the request has one.
        left_depth: The `left_depth` that is confirmed. A length as a tape reads it, with its unit: feet,
            inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when
            the request has one.
        left_jamb_height: The `left_jamb_height` that is confirmed. A length as a tape reads it, with its
            unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
        right_depth: The `right_depth` that is confirmed. A length as a tape reads it, with its unit: feet,
            inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when
            the request has one.
        right_jamb_height: The `right_jamb_height` that is confirmed. A length as a tape reads it, with its
            unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
    """

    door_height: LengthText | None = None
    door_width: LengthText | None = None
    head_width: LengthText | None = None
    jamb_depth: LengthText | None = None
    jamb_height: LengthText | None = None
    jamb_width: LengthText | None = None
    left_depth: LengthText | None = None
    left_jamb_height: LengthText | None = None
    right_depth: LengthText | None = None
    right_jamb_height: LengthText | None = None


class LeftOver(Result, frozen=True, kw_only=True):
    """A length that goes back on the rack.

    Attributes:
        profile: The profile that the offcut is of.
        length: The length of each offcut, measured from end to end.
        quantity: The number of such offcuts.
    """

    profile: str
    length: MarkedLength
    quantity: int


class Offer(Result, frozen=True, kw_only=True):
    """One of the trade's answers to a finding.

    Attributes:
        answer: A stable name of the offer, as "shorten_horn".
        detail: It says in words what the offer means.
        field: The field that takes it up, a JSON pointer into the opening or, for what a group's openings
            have together, into the house; null where no one field does, as for caulk: `detail` then says what
            does. It was tried: with that value the answer comes without the finding, a group's once every
            opening of it that is offered one has its own.
        value: The value to write in that field.
        figures: Lengths, and angles in degrees, that go with it, each by its name.
    """

    answer: str
    detail: str
    field: str | None
    value: str | bool | int | None
    figures: dict[str, str]


class Finding(Result, frozen=True, kw_only=True):
    """Something in the way, out of plane or out of level. It has changed no size: an answer that is taken up is
    sent back in its field.

    Attributes:
        code: A stable name for the kind of finding.
        side: Where: left, right, head, sill, base, above or below; empty for a group's.
        detail: It says in words what was found.
        amount: It says by how much.
        offers: The answers that can be given to it, the least work first.
        by: What is in the way or was read, where a side may have two of a kind: "neighbor", "depth" or empty.
        field: The field that it is about, a JSON pointer into the opening, in which `/trim` is the trim it
            names; null where it is about the room, the wall, or several openings.
    """

    code: str
    side: str
    detail: str
    amount: MarkedLength
    offers: list[Offer]
    by: str
    field: str | None


class OpenJoint(Result, frozen=True, kw_only=True):
    """The joint of an opening that stands open the widest in one set of conditions.

    Attributes:
        name: The conditions, as they were named.
        moisture_content: The moisture content that the wood comes to in them, in percent.
        piece: The key of the piece on one side of it; null where no joint is mitered.
        gap: The width of the gap at the joint's open end.
        opens_at: Which end that is, "short point" or "long point"; empty where nothing moved.
        within_table: Whether the moisture contents lie where the coefficients hold.
    """

    name: str
    moisture_content: float
    piece: str | None
    gap: str
    opens_at: str
    within_table: bool


class OpeningAnswer(Result, frozen=True, kw_only=True):
    """One opening worked out: its pieces and what was assumed.

    Attributes:
        mark: The name of the opening in the house.
        room: The room that the opening is in.
        count: The number of openings that are alike.
        pieces: Every piece of its trim; left and right are a mirrored pair, each a piece of its own.
        numbers: The number of each piece, by its key, as sheets print it: `K1-4` is number 4 of K1. Null for
            an opening by itself, whose pieces are numbered as they come.
        square_gap: The joint gap left by taking its corners as square: zero where they are, or where their
            own angles were cut.
        notes: They say what was assumed.
        findings: What is in the way, out of plane or out of level; none has changed a size.
        closings: How the pieces close that are rounded together: casing, and a back band, mitered round a
            curve or a polygon. Empty where each piece is rounded by itself.
        movement: The widest miter season by season; null where no conditions were given.
    """

    mark: str
    room: str
    count: int
    pieces: list[Piece]
    numbers: dict[str, int] | None
    square_gap: str
    notes: list[str]
    findings: list[Finding]
    closings: list[Closing]
    movement: list[OpenJoint] | None


class CutListAnswer(Result, frozen=True, kw_only=True):
    """A cut list: every opening's pieces, the sticks they come from, what to buy and what is left over. The
    sections that were not asked for are null.

    Attributes:
        openings: The openings, each with its pieces.
        plans: The sticks of each profile and what is cut from each.
        buy: The sticks to buy, a line for each profile and length.
        cost: What the sticks cost; of profiles in `unstocked` it holds nothing. An amount of money as decimal
            text with two places.
        held: Marks of the openings, and groups, that are held back or only estimated: no stick is cut for
            them yet.
        cost_later: The estimated cost of the sticks for what is in `held`, planned first-fit after the others
            and from what those leave. An amount of money as decimal text with two places.
        later_unpriced: Profiles of what is in `held` that the stock cannot give, so that `cost_later` holds
            nothing of them.
        currency: The currency of every amount.
        proven: Whether no plan of any profile can be cheaper; false while a profile is unstocked.
        unstocked: Profiles that pieces need and no stock was given for.
        unused_stock: Profiles with stock from which nothing is cut.
        offcuts: The offcuts that go back on the rack.
        notes: They say what was assumed or left out.
        cautions: They say what to know before work starts.
        saw_order: The cuts in the order to make them.
        materials: The materials to buy beside the sticks.
        hours: The hands-on time, and the drying waits.
        cost_sheet: The money by line, by opening and by room.
    """

    openings: list[OpeningAnswer]
    plans: list[ProfilePlan]
    buy: list[BuyLine]
    cost: Decimal
    held: list[str]
    cost_later: Decimal
    later_unpriced: list[str]
    currency: str
    proven: bool
    unstocked: list[str]
    unused_stock: list[str]
    offcuts: list[LeftOver]
    notes: list[str]
    cautions: list[Caution]
    saw_order: SawOrder | None
    materials: Materials | None
    hours: Hours | None
    cost_sheet: CostSheet | None


class HouseGroup(Request, frozen=True, kw_only=True):
    """Some of a house's openings, trimmed together.

    Attributes:
        mark: The group's own name. A name on one line, not starting with a space.
        openings: The marks of its openings, left to right.
        gaps: Widths of wall between the openings, left to right, each measured from one opening's right jamb
            face to the next one's left.
        heads: Heights of the heads, one an opening, each measured from one level line up to the head jamb's
            underside; they are checked for being in line.
        solid: Places over which a joint may fall (studs, mulls), each measured from the first opening's left
            jamb face; where none is named, the middles of the gaps.
        stock_length: The longest stick for the shared stool, measured from end to end; a longer stool is
            scarfed. Left out where any length is to be had. A length as a tape reads it, with its unit: feet,
            inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's `unit`, when
            the request has one.
    """

    mark: str
    openings: list[str]
    gaps: list[LengthText] | None = None
    heads: list[LengthText] | None = None
    solid: list[LengthText] = []
    stock_length: LengthText | None = None


class Horns(Request, frozen=True, kw_only=True):
    """A stool's own horns at this opening, where they are not the trim's: past the trim's outside edge.

    Attributes:
        left: The left horn's length, measured from the trim's outside edge to the stool's left end. A length
            as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a
            unit it is in the request's `unit`, when the request has one.
        right: The right horn's length, measured from the trim's outside edge to the stool's right end. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
    """

    left: LengthText | None = None
    right: LengthText | None = None


class Limits(Request, frozen=True, kw_only=True):
    """How far the wall may lie off the jamb's edge; beyond `plane` the jamb is extended. Common practice, no
    source.

    Attributes:
        caulk: Caulk alone closes the joint of casing and wall where the wall's face stands no more than this
            proud or shy of the jamb's edge, measured square to the wall. A length as a tape reads it, with
            its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
        plane: No extension is needed where the wall's face lies no farther than this proud or shy of the
            jamb's edge, measured square to the wall: the wall is cut back with a plane, or the casing's back
            beveled to lie on both. A length as a tape reads it, with its unit: feet, inches and fractions,
            decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one.
    """

    caulk: LengthText = "1/16 in"
    plane: LengthText = "3/16 in"


class Reveals(Request, frozen=True, kw_only=True):
    """Each side's own reveal, where it is not the trim's: the jamb left showing from its inside face to the
    casing.

    Attributes:
        head: The reveal under the head casing, measured from the head jamb's underside up to the casing's
            lower edge. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm,
            cm or m. Without a unit it is in the request's `unit`, when the request has one.
        left: The reveal on the left jamb, measured from the jamb's inside face to the casing's inner edge. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        right: The reveal on the right jamb, measured from the jamb's inside face to the casing's inner edge.
            A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        sill: The reveal above a picture frame's bottom casing, measured from the sill jamb's face down to the
            casing's upper edge. A length as a tape reads it, with its unit: feet, inches and fractions,
            decimals, mm, cm or m. Without a unit it is in the request's `unit`, when the request has one.
    """

    head: LengthText | None = None
    left: LengthText | None = None
    right: LengthText | None = None
    sill: LengthText | None = None


class Widths(Request, frozen=True, kw_only=True):
    """Widths that pieces are ripped to at this opening; without one the stock's own is kept.

    Attributes:
        apron: The apron's width, measured down the wall from its upper to its lower edge. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        head: The head casing's width, measured across its face from edge to edge. A length as a tape reads
            it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        left: The left side casing's width, measured across its face from edge to edge. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        right: The right side casing's width, measured across its face from edge to edge. A length as a tape
            reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is
            in the request's `unit`, when the request has one.
        sill: The width of a picture frame's bottom casing, measured across its face from edge to edge. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
    """

    apron: LengthText | None = None
    head: LengthText | None = None
    left: LengthText | None = None
    right: LengthText | None = None
    sill: LengthText | None = None


class HouseOpening(Request, frozen=True, kw_only=True):
    """One opening of a house.

    Attributes:
        mark: What it is called in the house; part of each piece's name. A name on one line, not starting with
            a space.
        readings: The readings that the tape gave at this opening.
        trim: The name of one of the house's trim specs. A name on one line, not starting with a space.
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
    bottom: Bottom = "stool"
    certainty: Certainty = "measured"
    confirmed: Confirmed = Confirmed()
    count: int = 1
    held: bool = False
    horns: Horns = Horns()
    reveals: Reveals = Reveals()
    room: str = ""
    sill_answer: SillAnswer = "shim"
    square_gap: LengthText = "1/64 in"
    tape_spread: LengthText = "1/32 in"
    wall_answer: WallAnswer = "flat"
    wall_limits: Limits = Limits()
    widths: Widths = Widths()
    without_apron: bool = False


class Rounding(Request, frozen=True, kw_only=True):
    """A rule by which lengths of the answer are rounded.

    Attributes:
        mode: Which mark is taken: the nearest (the longer of two equally near), the next up or the next down.
        to: The fineness of the tape they will be marked with. It decides the unit of the answer, too.
    """

    mode: Mode = "nearest"
    to: RoundTo = "1/16 in"


class CutListRequest(Request, frozen=True, kw_only=True):
    """A house or a part of one: openings, the trim they name, and the stock to cut from.

    With no stock, pieces are computed and no sticks. At most 50,000 pieces are worked out together, those of
    openings alike counted each, from at most 40,000 lengths on hand; their marks and profiles, each piece
    with its own, come to at most 4,000,000 bytes, and the seasons of all openings to 20,000. A sheet as HTML,
    PDF or SVG shows at most 2,500 pieces.

    Attributes:
        trim_specs: The trims that its openings name.
        openings: The openings of the house.
        currency: The currency of every price; it is only repeated in the answer. ISO 4217 code.
        end_trim: The length that is squared off each factory end, measured from that end in. A length as a
            tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it
            is in the request's `unit`, when the request has one.
        groups: Openings trimmed together: those with heads in one line, or with one stool and apron under all
            of them; or joined units whose stool is too long for a stick.
        include: Sections of the answer that are only worked out when asked for.
        keep_length: An offcut of this length or longer is kept; it is measured from end to end. A length as a
            tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it
            is in the request's `unit`, when the request has one.
        kerf: The width of the kerf: what one cut eats, measured from one side of the cut to the other. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        movement: The wood, and the air its joints will live through: the answer then says how far miters
            open.
        planning_seconds: The time to search for cheaper sticks, in seconds, all profiles together, where the
            first plan is not proven cheapest. 0 takes the first plan.
        rounding: It says how lengths are rounded.
        shop: It says how the shop works.
        stock: The sticks and lengths on hand that each profile can be cut from.
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    trim_specs: dict[str, Trim]
    openings: list[HouseOpening]
    currency: str = "USD"
    end_trim: LengthText = "1/2 in"
    groups: list[HouseGroup] = []
    include: list[Section] = []
    keep_length: LengthText = "24 in"
    kerf: LengthText = "1/8 in"
    movement: Conditions | None = None
    planning_seconds: float = 2.0
    rounding: Rounding = Rounding()
    shop: Shop = Shop()
    stock: list[Stock] = []
    unit: Unit | None = None


class StockForSale(Request, frozen=True, kw_only=True):
    """It says what the yard sells of one profile, and how its sticks may be laid out.

    Attributes:
        profile: The name of the profile, as the trim's pieces name theirs. A name on one line, not starting
            with a space.
        sticks: The lengths that the yard sells.
        one_stick_each: Asks that each opening's pieces come side by side from one stick, so that their grain
            and color agree; those no stick can hold are named in the plan's `split_openings`. Openings alike
            under one mark count as one: give each its own mark where each is to have its own stick.
        square_first: Pieces are cut off square and mitered afterwards: one more cut each, and what cuts a
            piece off from its stick eats the kerf alone. Otherwise a miter cuts the piece off, and eats more
            than a square cut.
        turnable: Flat and square-edged, its back as good as its face: a piece may be cut turned over, so that
            two mitered ends share a cut.
    """

    profile: str
    sticks: list[Stick]
    one_stick_each: bool = False
    square_first: bool = False
    turnable: bool = False


class KeptHouse(Request, frozen=True, kw_only=True):
    """A record of what is said of a house as a whole.

    Attributes:
        name: The name of the house. A name on one line, not starting with a space.
        currency: The currency of every price; it is only repeated in the answer. ISO 4217 code.
        end_trim: The length that is squared off each factory end, measured from that end in. A length as a
            tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it
            is in the request's `unit`, when the request has one.
        groups: Openings trimmed together: those with heads in one line, or with one stool and apron under all
            of them; or joined units whose stool is too long for a stick.
        keep_length: An offcut of this length or longer is kept; it is measured from end to end. A length as a
            tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it
            is in the request's `unit`, when the request has one.
        kerf: The width of the kerf: what one cut eats, measured from one side of the cut to the other. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        movement: The wood, and the air its joints will live through: the answer then says how far miters
            open.
        rounding: It says how lengths are rounded.
        shop: It says how the shop works.
        site_note: A note about the site. Free text; may have several lines.
        stock: The sticks and lengths on hand that each profile can be cut from.
        trim_specs: The trims that its openings name.
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    name: str
    currency: str = "USD"
    end_trim: LengthText = "1/2 in"
    groups: list[HouseGroup] = []
    keep_length: LengthText = "24 in"
    kerf: LengthText = "1/8 in"
    movement: Conditions | None = None
    rounding: Rounding = Rounding()
    shop: Shop = Shop()
    site_note: str = ""
    stock: list[StockForSale] = []
    trim_specs: dict[str, Trim] = {}
    unit: Unit | None = None


class LengthOnHand(Request, frozen=True, kw_only=True):
    """A lot of lengths on hand, or on their way: of one profile, one length and one price.

    Attributes:
        length: The length of each length on hand, measured from end to end. A length as a tape reads it, with
            its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
        profile: The profile's name, as trim specs and stock have it. A name on one line, not starting with a
            space.
        defects: The stretches that no piece may touch.
        delivered: The number that came or were found in all. When left out, it is none of those that were
            ordered and, where nothing is said of an order, one.
        lot: The name of these sticks, entered together; no other lot of the schedule has it. The service
            names it where this is left out. A name on one line, not starting with a space.
        note: It says where the lot came from, or where it stands. Free text; may have several lines.
        ordered: How many were ordered in all; none when left out.
        paid: The price that was paid for each; `price` is what using one is taken to cost when sticks are
            planned. Leave `price` out for those that are paid for, so that they are used before any are
            bought. An amount of money as decimal text, at most two places.
        price: The amount that using it is taken to cost. An amount of money as decimal text, at most two
            places.
        stick: The stick that it is left over from, where it is an offcut of one.
        used_up: The number of them that are gone in all: cut, spoiled or given away. When left out, it is as
            many as were recorded before; none of a new lot.
    """

    length: LengthText
    profile: str
    defects: list[Defect] = []
    delivered: int | None = None
    lot: str | None = None
    note: str = ""
    ordered: int | None = None
    paid: MoneyText = "0.00"
    price: MoneyText = "0.00"
    stick: str | None = None
    used_up: int | None = None


class Made(Result, frozen=True, kw_only=True):
    """A change that was made.

    Attributes:
        revision: The number of the schedule's revision that the change made: every change makes one, counted
            from 1.
    """

    revision: int


class NewSchedule(Request, frozen=True, kw_only=True):
    """A house's schedule, with its openings and lengths on hand where they are known already; an export looks
    the same.

    Attributes:
        name: The name of the house. A name on one line, not starting with a space.
        currency: The currency of every price; it is only repeated in the answer. ISO 4217 code.
        end_trim: The length that is squared off each factory end, measured from that end in. A length as a
            tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it
            is in the request's `unit`, when the request has one.
        groups: Openings trimmed together: those with heads in one line, or with one stool and apron under all
            of them; or joined units whose stool is too long for a stick.
        keep_length: An offcut of this length or longer is kept; it is measured from end to end. A length as a
            tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it
            is in the request's `unit`, when the request has one.
        kerf: The width of the kerf: what one cut eats, measured from one side of the cut to the other. A
            length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m.
            Without a unit it is in the request's `unit`, when the request has one.
        lengths: The lots that are on hand, or on their way.
        movement: The wood, and the air its joints will live through: the answer then says how far miters
            open.
        openings: The openings, in the order in which they are to be listed.
        rounding: It says how lengths are rounded.
        shop: It says how the shop works.
        site_note: A note about the site. Free text; may have several lines.
        stock: The sticks and lengths on hand that each profile can be cut from.
        trim_specs: The trims that its openings name.
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    name: str
    currency: str = "USD"
    end_trim: LengthText = "1/2 in"
    groups: list[HouseGroup] = []
    keep_length: LengthText = "24 in"
    kerf: LengthText = "1/8 in"
    lengths: list[LengthOnHand] = []
    movement: Conditions | None = None
    openings: list[HouseOpening] = []
    rounding: Rounding = Rounding()
    shop: Shop = Shop()
    site_note: str = ""
    stock: list[StockForSale] = []
    trim_specs: dict[str, Trim] = {}
    unit: Unit | None = None


class PlanLine(Result, frozen=True, kw_only=True):
    """A plan in a list.

    Attributes:
        number: The number of the plan; the schedule's plans are counted from 1.
        stands: Whether it is the plan of what the schedule is now.
        made_at: The time at which the plan was made. RFC 3339, in UTC.
        used_at: When something was first printed or cut from it; null while nothing was. Such a plan is kept;
            of the others the oldest go. RFC 3339, in UTC.
        planning_seconds: How long was allowed for the search; 0 took the first plan that was found.
        cost: The cost of the sticks that were left to cut when it was made; of profiles in `unstocked` it
            holds nothing. An amount of money as decimal text with two places.
        bound: A lower bound: no plan of those sticks costs less. An amount of money as decimal text with two
            places.
        above: How far the cost may be above the cheapest: zero is proven, where nothing is in `unstocked`. An
            amount of money as decimal text with two places.
        unstocked: Profiles that pieces needed and no stock was given for when it was made.
        proven: True where it is proven that no plan is cheaper; false where a profile was unstocked.
    """

    number: int
    stands: bool
    made_at: str
    used_at: str | None
    planning_seconds: float
    cost: Decimal
    bound: Decimal
    above: Decimal
    unstocked: list[str]
    proven: bool


class TableContents(Result, frozen=True, kw_only=True):
    """One table of a sheet.

    Attributes:
        key: Its name, which `table` asks for in a CSV answer.
        caption: The title of the table.
        columns: The headings of the columns, from left to right.
        rows: The cells, as they are printed.
    """

    key: str
    caption: str
    columns: list[str]
    rows: list[list[str]]


class SheetContents(Result, frozen=True, kw_only=True):
    """A sheet's contents as data, for a page of one's own; drawings are in the HTML and the PDF alone.

    Attributes:
        name: It says which sheet this is.
        title: The title at the sheet's head.
        house: The name of the house.
        plan: Which plan its sticks are from and how good that is; empty where it shows none.
        tables: The tables of the sheet, in order.
        notes: The cautions and notes of the sheet, in order.
        labels: Each label's texts, on a sheet of labels.
    """

    name: str
    title: str
    house: str
    plan: str
    tables: list[TableContents]
    notes: list[str]
    labels: list[list[str]]


class StoredSchedule(Result, frozen=True, kw_only=True):
    """A schedule as it stands, its openings aside.

    Attributes:
        id: The id of the schedule.
        revision: The number of its latest revision.
        opening_count: How many openings it has; alike ones under one mark are one.
        created_at: The time at which it was made. RFC 3339, in UTC.
        updated_at: The time at which it was last changed. RFC 3339, in UTC.
        archived_at: When it was archived; null when it is not. RFC 3339, in UTC.
        house: All that is said of the house as a whole, as it was sent.
        exact: The exact value of every length in it. Every length exactly, by its JSON pointer, as a fraction
            of an inch.
    """

    id: str
    revision: int
    opening_count: int
    created_at: str
    updated_at: str
    archived_at: str | None
    house: KeptHouse
    exact: dict[str, str]
