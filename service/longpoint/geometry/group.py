"""Openings that are trimmed together: heads that must line up, and one long stool under several."""

from __future__ import annotations

from msgspec.structs import replace

from longpoint.geometry.checks.findings import Finding, Offer
from longpoint.geometry.checks.trim import check_stool
from longpoint.geometry.faults import Faults, GeometryError
from longpoint.geometry.frame.kernel import ZERO, Frame, rectangle
from longpoint.geometry.frame.sides import cased_sides
from longpoint.geometry.opening import Built, Pieces, build_opening
from longpoint.geometry.parts import Cutout, Part, PartKind
from longpoint.geometry.pieces.apron import apron_parts
from longpoint.geometry.pieces.scarf import joints, scarfed
from longpoint.geometry.pieces.stool import stool_parts
from longpoint.geometry.readings.inputs import Foot, Mull, Opening, PlumbSides, Readings
from longpoint.geometry.value import Value
from longpoint.lengths import Fraction, Real, spoken


class SharedStool(Value, frozen=True):
    """One stool, and apron, under every opening of a group.

    Attributes:
        gaps: from each opening's right jamb face to the next one's left, left to right.
        stock_length: the longest stick; None where any length is to be had.
        solid: places from the first opening's left jamb face over which a joint may fall (studs, mulls); where
            none is named, the middles of the gaps.
    """

    gaps: tuple[Fraction, ...]
    stock_length: Fraction | None = None
    solid: tuple[Fraction, ...] = ()


class Group(Value, frozen=True):
    """Attributes:
    mark: the group's name.
    heads: each opening's head jamb underside over one level line; () where they were not read.
    stool: None where each opening keeps its own.
    """

    mark: str
    heads: tuple[Fraction, ...] = ()
    stool: SharedStool | None = None


class BuiltGroup(Value, frozen=True):
    """Attributes: each opening worked out, in order; what they share as an opening of the group's mark, if anything
    is; and what was found of the group."""

    members: tuple[Built, ...]
    shared: Built | None
    findings: tuple[Finding, ...]


def build_group(openings: tuple[Opening, ...], group: Group) -> BuiltGroup:
    """Openings trimmed together, left to right.

    Raises:
        GeometryError: with every fault found; paths start with "openings" and a member's number, or with "group".
    """
    faults = Faults()
    _check(openings, group, faults)
    faults.raise_any()
    wanted = Pieces.ALL if group.stool is None else Pieces.CASING
    members = tuple(build_opening(opening, wanted) for opening in openings)
    shared = None if group.stool is None else _shared(members, group, group.stool, faults)
    faults.raise_any()
    return BuiltGroup(members, shared, _heads(members, group.heads))


def _check(openings: tuple[Opening, ...], group: Group, faults: Faults) -> None:
    if len(openings) < 2 and not any(opening.readings.mulls for opening in openings):
        detail = "A group is two openings or more, or one of joined units whose stool is to be jointed."
        faults.add(("group", "openings"), "too-few", detail)
    if group.heads and len(group.heads) != len(openings):
        faults.add(
            ("group", "heads"),
            "head-count",
            f"{len(openings)} openings have as many heads, and {len(group.heads)} came.",
        )
    if group.stool is None:
        return
    if len(group.stool.gaps) != len(openings) - 1:
        faults.add(
            ("group", "gaps"),
            "gap-count",
            f"{len(openings)} openings have {len(openings) - 1} gaps between them, and {len(group.stool.gaps)} came.",
        )
    first = openings[0]
    for number, opening in enumerate(openings):
        _check_member(number, opening, first, faults)


def _check_member(number: int, opening: Opening, first: Opening, faults: Faults) -> None:
    at = ("openings", number)
    readings = opening.readings
    if opening.foot is not Foot.STOOL or opening.trim.stool is None:
        faults.add((*at, "foot"), "stool-missing", "A shared stool is under openings that stand on a stool.")
    elif (opening.trim.stool, opening.trim.apron) != (first.trim.stool, first.trim.apron):
        faults.add(
            (*at, "trim"),
            "stools-differ",
            "A shared stool and apron are one stock: give all of them the same.",
        )
    if not isinstance(readings.shape, PlumbSides):
        faults.add(
            (*at, "readings", "jamb_width"),
            "not-plumb",
            "A shared stool needs openings with plumb sides: describe this one by its width and heights.",
        )
    for name in ("left_depth", "right_depth"):
        if getattr(readings, name) is None:
            faults.add(
                (*at, "readings", name),
                "depth-missing",
                "A stool needs the jamb's depth: measure from the wall's face back to the sash stop.",
            )


def _shared(members: tuple[Built, ...], group: Group, stool: SharedStool, faults: Faults) -> Built | None:
    """What the members share, worked out as one wide opening whose mulls are the gaps between them."""
    wide, frame, gaps = _wide(members, group, stool)
    deepest = max(
        _read(depth)
        for member in members
        for depth in (member.opening.readings.left_depth, member.opening.readings.right_depth)
    )
    check_stool(wide, faults, deepest)
    faults.raise_any()
    sides = cased_sides(wide, frame)
    boards = _own_depths(stool_parts(wide, frame, sides, deepest), members, stool)
    if wide.trim.apron is not None and not wide.without_apron:
        boards += apron_parts(wide, frame, sides)
    parts: list[Part] = []
    for board in boards:
        if board.kind not in (PartKind.STOOL, PartKind.APRON):
            parts.append(board)
            continue
        from_left = (
            next(mark.at for mark in board.marks if mark.name == "centre line of opening")
            - frame.sides[0] / 2
        )
        places: list[Real] = [from_left + place for place in stool.solid or gaps]
        found = joints(board.overall, tuple(places), stool.stock_length, board.thickness)
        if found is None:
            faults.add(
                ("group", "solid"),
                "no-joint-in-reach",
                f"The {board.title} is {spoken(board.overall)} long and no place to joint it lies within a stick: "
                "name the studs below it, or take longer stock.",
            )
            return None
        parts.extend(scarfed(board, found))
    return Built(wide, frame, tuple(parts), 0.0, ())


def _own_depths(boards: tuple[Part, ...], members: tuple[Built, ...], stool: SharedStool) -> tuple[Part, ...]:
    """The stool as ripped to the deepest opening, sawn out between openings to the depth that each was read at."""
    body, *rest = boards
    trim = members[0].opening.trim.stool
    assert trim is not None
    less = trim.sash_clearance + trim.scribe
    lefts = [_read(member.opening.readings.left_depth) for member in members]
    rights = [_read(member.opening.readings.right_depth) for member in members]
    at = next(mark.at for mark in body.marks if mark.name == "left jamb face")
    cutouts: list[Cutout] = []
    for number, member in enumerate(members):
        depth, other = lefts[number] - less, rights[number] - less
        within = None if depth == other else other
        cutouts += [Cutout(at + mull.at, mull.width, depth, within) for mull in member.opening.readings.mulls]
        at += _width(member)
        if number < len(stool.gaps):
            following = lefts[number + 1] - less
            cutouts.append(Cutout(at, stool.gaps[number], other, None if following == other else following))
            at += stool.gaps[number]
    return (replace(body, cutouts=tuple(cutouts)), *rest)


def _read(depth: Fraction | None) -> Fraction:
    assert depth is not None
    return depth


def _width(member: Built) -> Fraction:
    shape = member.opening.readings.shape
    assert isinstance(shape, PlumbSides)
    return shape.jamb_width


def _wide(
    members: tuple[Built, ...], group: Group, stool: SharedStool
) -> tuple[Opening, Frame, tuple[Fraction, ...]]:
    first, last = members[0].opening, members[-1].opening
    reached = ZERO
    mulls: list[Mull] = []
    for number, member in enumerate(members):
        mulls += [Mull(reached + mull.at, mull.width) for mull in member.opening.readings.mulls]
        reached += _width(member)
        if number < len(stool.gaps):
            mulls.append(Mull(reached, stool.gaps[number]))
            reached += stool.gaps[number]
    height = first.readings.shape
    assert isinstance(height, PlumbSides)
    readings = Readings(
        shape=PlumbSides(reached, height.left_height, height.left_height),
        left_depth=first.readings.left_depth,
        right_depth=last.readings.right_depth,
        mulls=tuple(mulls),
        left_horn_depth=first.readings.left_horn_depth,
        right_horn_depth=last.readings.right_horn_depth,
    )
    wide = replace(
        first,
        mark=group.mark,
        readings=readings,
        reveals=replace(first.reveals, right=last.reveals.right),
        horns=replace(first.horns, right=last.horns.right),
        widths=replace(first.widths, right=last.widths.right),
    )
    middles = tuple(mull.at + mull.width / 2 for mull in mulls)
    return wide, rectangle(reached, height.left_height), middles


def _heads(members: tuple[Built, ...], heads: tuple[Fraction, ...]) -> tuple[Finding, ...]:
    """Own head reveals that bring every head casing's lower edge to the height of the highest."""
    if not heads:
        return ()
    edges = [head + _head_reveal(member) for head, member in zip(heads, members, strict=True)]
    highest = max(edges)
    amount = highest - min(edges)
    if amount == 0:
        return ()
    offers: list[Offer] = []
    several = sum(edge != highest for edge in edges) > 1
    rest = "; nothing is out of line once every head that lies lower is set so" if several else ""
    for number, (member, edge) in enumerate(zip(members, edges, strict=True)):
        reveal = _head_reveal(member) + highest - edge
        mark = member.opening.mark
        if edge != highest and reveal < member.opening.readings.jamb_thickness:
            up = spoken(highest - edge)
            detail = f"Set the head of {mark} {up} higher on its jamb, to line up with the highest{rest}."
            field = ("openings", number, "reveals", "head")
            offer = Offer("line_up_head", detail, field, reveal, (("head reveal", reveal),))
            offers.append(_tried(member.opening, offer))
        elif edge != highest:
            detail = f"The jamb of {mark} is too thin to line up by its reveal: fur its head down."
            offers.append(Offer("fur_head", detail, (), None, (("still to go", highest - edge),)))
    detail = f"The heads lie up to {spoken(amount)} out of line."
    return (Finding("heads-out-of-line", "", detail, amount, tuple(offers)),)


def _tried(opening: Opening, offer: Offer) -> Offer:
    """The offer, without its field where its opening cannot be built with it."""
    own = replace(opening, reveals=replace(opening.reveals, head=offer.value))
    try:
        build_opening(own, Pieces.CASING)
    except GeometryError as error:
        why = f"It cannot be sent as things are: {error.faults[0].detail}"
        return replace(offer, detail=f"{offer.detail} {why}", field=(), value=None)
    return offer


def _head_reveal(member: Built) -> Fraction:
    opening = member.opening
    return opening.trim.reveal if opening.reveals.head is None else opening.reveals.head
