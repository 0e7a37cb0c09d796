"""Types of the document's part "sheets". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import LengthText, Request
from longpoint_sdk.types.basics import Unit
from longpoint_sdk.types.common import HouseGroup, HouseOpening, Rounding, Section
from longpoint_sdk.types.movement import Conditions
from longpoint_sdk.types.shop import Shop
from longpoint_sdk.types.stock import Stock
from longpoint_sdk.types.trim import Trim


class LabelGrid(Request, frozen=True, kw_only=True):
    """A grid by which labels lie on their sheet.

    Attributes:
        across: The number of labels side by side.
        down: The number of labels under one another.
        width: The width of one label, measured from its left to its right edge. A length as a tape reads it,
            with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        height: The height of one label, measured from its top to its bottom edge. A length as a tape reads
            it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the
            request's `unit`, when the request has one.
        left: The distance from the sheet's left edge to the first label. A length as a tape reads it, with
            its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
        top: The distance from the sheet's top edge to the first label. A length as a tape reads it, with its
            unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it is in the request's
            `unit`, when the request has one.
        gap_across: The gap between labels side by side, measured from one's right edge to the next one's
            left. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or
            m. Without a unit it is in the request's `unit`, when the request has one.
        gap_down: The gap between labels under one another, measured from one's bottom edge to the next one's
            top. A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or
            m. Without a unit it is in the request's `unit`, when the request has one.
    """

    across: int
    down: int
    width: LengthText
    height: LengthText
    left: LengthText
    top: LengthText
    gap_across: LengthText = "0 in"
    gap_down: LengthText = "0 in"


class LabelsRequest(Request, frozen=True, kw_only=True):
    """A house, and the labels its pieces are to have.

    Attributes:
        trim_specs: The trims that its openings name.
        openings: The openings of the house.
        currency: The currency of every price; it is only repeated in the answer. ISO 4217 code.
        end_trim: The length that is squared off each factory end, measured from that end in. A length as a
            tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. Without a unit it
            is in the request's `unit`, when the request has one.
        grid: Where labels lie; without it 3 by 10 labels of 2 5/8 by 1 in on Letter, 3 by 8 of 70 by 37 mm on
            A4.
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
        skip: Places on the first sheet that are used up.
        stock: The sticks and lengths on hand that each profile can be cut from.
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    trim_specs: dict[str, Trim]
    openings: list[HouseOpening]
    currency: str = "USD"
    end_trim: LengthText = "1/2 in"
    grid: LabelGrid | None = None
    groups: list[HouseGroup] = []
    include: list[Section] = []
    keep_length: LengthText = "24 in"
    kerf: LengthText = "1/8 in"
    movement: Conditions | None = None
    planning_seconds: float = 2.0
    rounding: Rounding = Rounding()
    shop: Shop = Shop()
    skip: int = 0
    stock: list[Stock] = []
    unit: Unit | None = None
