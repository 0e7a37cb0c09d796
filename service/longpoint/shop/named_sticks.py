"""Sticks with names that last: a name stands for one layout of one stick, whatever is planned later.

A kept plan is its sticks by name. The cut list that answers and sheets are made from is put together from those that
are not cut yet, so that what is printed today says the same as what was printed before.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Mapping, Sequence
from typing import Any

from msgspec.structs import replace

from longpoint.geometry import PieceKey
from longpoint.lengths import Fraction
from longpoint.shop.build import HouseKey
from longpoint.shop.house import House
from longpoint.shop.remaining import Slot
from longpoint.shop.stick_names import StickNames
from longpoint.stock import Layout, Placed, Plan
from longpoint.values import Value


class StickPiece(Value, frozen=True):
    """A piece's place on a stick.

    Attributes:
        opening_id: What it is cut for: an opening, or a group for what its openings share.
        piece: Which part of it.
        instance: Which of several alike.
        placed: Where it lies on the stick, and how.
    """

    opening_id: str
    piece: PieceKey
    instance: int
    placed: Placed

    @property
    def slot(self) -> Slot:
        """The piece's place in the house."""
        return self.opening_id, self.piece, self.instance


class NamedStick(Value, frozen=True):
    """One stick as it is to be cut.

    Attributes:
        profile: What it is.
        length: From end to end.
        price: What it costs, in cents.
        lot: The lot of lengths on hand that it comes from; None for one to buy.
        pieces: From its left end to its right.
        offcut: What remains.
        kept: Whether the offcut is long enough to keep.
    """

    profile: str
    length: Fraction
    price: int
    lot: str | None
    pieces: tuple[StickPiece, ...]
    offcut: Fraction
    kept: bool


_UNSTOCKED = "unstocked"


class PlannedProfile(Value, frozen=True):
    """The sticks of one profile, and how good they are; or that there was no stock of it when they were planned.

    Attributes:
        profile: Whose sticks.
        sticks: Their names, in the order they come to the saw.
        cost: What they cost, in cents.
        bound: No plan costs less.
        method: What found it.
        stopped: Why the search ended: proven, effort, clock or memory; unstocked where no stock was given.
        seconds: How long it took.
        split_openings: Openings that were to come from one stick each and that no stick can hold.
    """

    profile: str
    sticks: tuple[str, ...]
    cost: int
    bound: int
    method: str
    stopped: str
    seconds: float
    split_openings: tuple[str, ...]

    @classmethod
    def missing(cls, profile: str) -> PlannedProfile:
        """A profile that pieces need and no stock was given for."""
        return cls(profile, (), 0, 0, "", _UNSTOCKED, 0.0, ())

    @property
    def stocked(self) -> bool:
        """Whether there was stock of it."""
        return self.stopped != _UNSTOCKED


class Sited(Value, frozen=True):
    """A house, and what its openings and lengths on hand are kept under.

    Attributes:
        house: As it is described.
        ids: Of each opening, then of each group that has pieces of its own.
        lots: For each profile, the lot of each of its lengths on hand, as its stock has them.
    """

    house: House
    ids: tuple[str, ...]
    lots: Mapping[str, tuple[str, ...]]

    @property
    def places(self) -> dict[str, int]:
        """Where each opening or group of these ids stands in the house."""
        return {id: index for index, id in enumerate(self.ids)}

    def lot_of(self, profile: str, key: str) -> str:
        """The lot of the length on hand that the stock room knows by a key."""
        stock = next(one for one in self.house.stock if one.profile == profile)
        return self.lots[profile][stock.on_hand_at(key)]


def name_sticks(
    sited: Sited,
    plan: Plan,
    kept: Mapping[str, NamedStick],
    waiting: dict[HouseKey, list[int]],
    names: StickNames,
) -> tuple[PlannedProfile, dict[str, NamedStick]]:
    """A plan's sticks by name, and those of them that are new or come from elsewhere than before.

    Args:
        sited: What was planned.
        plan: Of one profile.
        kept: The first sticks in it, which stay as they were laid out.
        waiting: Which of the pieces alike no stick has yet; what the new sticks take goes out of it.
        names: What gives the new ones theirs.
    """
    new: dict[str, NamedStick] = {}
    moved: dict[str, NamedStick] = {}
    staying = iter(kept.items())
    for layout in plan.layouts:
        taken = _taken(sited, plan.profile, layout)
        placed: tuple[Placed, ...] = ()
        for keys in layout.keys:
            stays = next(staying, None)
            if stays is None:
                placed = placed or tuple(_plain(one) for one in layout.placed)
                name = names.next(plan.profile)
                pieces = _pieces(sited.ids, placed, keys, waiting)
                new[name] = NamedStick(profile=plan.profile, length=+layout.length, pieces=pieces, **taken)
            elif stays[1] != (now := replace(stays[1], **taken)):
                moved[stays[0]] = now
    of_profile = PlannedProfile(
        profile=plan.profile,
        sticks=(*kept, *new),
        cost=plan.cost_cents,
        bound=plan.bound_cents,
        method=plan.method,
        stopped=plan.stopped,
        seconds=round(plan.seconds, 3),
        split_openings=tuple(plan.split_openings),
    )
    return of_profile, moved | new


def _pieces(
    ids: Sequence[str], placed: Sequence[Placed], keys: Sequence[HouseKey], waiting: dict[HouseKey, list[int]]
) -> tuple[StickPiece, ...]:
    return tuple(
        StickPiece(ids[key.opening], key.piece, waiting[key].pop(0), one)
        for one, key in zip(placed, keys, strict=True)
    )


def _plain(one: Placed) -> Placed:
    """A place in plain fractions, without the texts that lengths were read from."""
    return dataclasses.replace(
        one, start=+one.start, length=+one.length, left=+one.left, right=+one.right, eats=+one.eats
    )


def _taken(sited: Sited, profile: str, layout: Layout) -> dict[str, Any]:
    """Where a stick comes from, and whether what is left of it is kept: what may change without its layout."""
    return {
        "price": layout.price_cents,
        "lot": sited.lot_of(profile, layout.stick) if layout.on_hand else None,
        "offcut": +layout.offcut,
        "kept": layout.kept,
    }


def laid_out(key: str, stick: NamedStick, keys: tuple[tuple[HouseKey, ...], ...]) -> Layout:
    """A stick as the stock room has it, from what it knows by a key."""
    return Layout(
        stick=key,
        on_hand=stick.lot is not None,
        length=stick.length,
        price_cents=stick.price,
        placed=tuple(piece.placed for piece in stick.pieces),
        keys=keys,
        offcut=stick.offcut,
        kept=stick.kept,
    )
