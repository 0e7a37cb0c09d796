"""Types of the document's part "a_house". Generated; do not edit."""

from __future__ import annotations

from longpoint_sdk.types._base import LengthText, Request, Result
from longpoint_sdk.types.basics import Unit
from longpoint_sdk.types.common import Caution, HouseGroup, HouseOpening, Rounding
from longpoint_sdk.types.materials import Materials
from longpoint_sdk.types.movement import Conditions
from longpoint_sdk.types.shop import Shop
from longpoint_sdk.types.stock import Stock
from longpoint_sdk.types.trim import Trim


class House(Request, frozen=True, kw_only=True):
    """A house or a part of one: openings, the trim they name, and what to cut from.

    With no stock, pieces are computed and no sticks. At most 50,000 pieces are worked out together, those of
    openings alike counted each, from at most 40,000 lengths on hand; their marks and profiles, each piece
    with its own, come to at most 4,000,000 bytes, and the seasons of all openings to 20,000.

    Attributes:
        trim_specs: The trims that its openings name.
        openings: The openings of the house.
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
        stock: The sticks and lengths on hand that each profile can be cut from.
        unit: The unit of lengths that are written without one; without it each must carry its own.
    """

    trim_specs: dict[str, Trim]
    openings: list[HouseOpening]
    currency: str = "USD"
    end_trim: LengthText = "1/2 in"
    groups: list[HouseGroup] = []
    keep_length: LengthText = "24 in"
    kerf: LengthText = "1/8 in"
    movement: Conditions | None = None
    rounding: Rounding = Rounding()
    shop: Shop = Shop()
    stock: list[Stock] = []
    unit: Unit | None = None


class MaterialsAnswer(Result, frozen=True, kw_only=True):
    """Nails, glue, caulk, filler, primer, paint, shims, tape and abrasive, and what to beware of.

    Attributes:
        materials: These are the materials to buy.
        cautions: They say what to know before work starts.
    """

    materials: Materials
    cautions: list[Caution]
