"""Openings that are trimmed together: heads that must line up, and one long stool under several."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta
from msgspec.structs import replace

from longpoint.geometry.checks.findings import Finding, Offer
from longpoint.geometry.checks.offers import refused
from longpoint.geometry.checks.trim import HORNS, SIDES, check_depths, check_stool
from longpoint.geometry.faults import GeometryError
from longpoint.geometry.frame.kernel import ZERO, Frame, rectangle
from longpoint.geometry.frame.sides import cased_sides
from longpoint.geometry.opening import Built, Pieces, build_opening
from longpoint.geometry.piece import Cutout, Piece
from longpoint.geometry.piece_names import PieceKind
from longpoint.geometry.piece_order import in_order
from longpoint.geometry.pieces.apron import apron_pieces
from longpoint.geometry.pieces.scarf import joints, scarfed
from longpoint.geometry.pieces.stool import stool_pieces
from longpoint.geometry.readings.inputs import Bottom, Opening
from longpoint.geometry.readings.outline import Mull, PlumbSides
from longpoint.geometry.readings.readings import Readings
from longpoint.geometry.readings.taken import as_read
from longpoint.lengths import Fraction, Length, PositiveLength, Real
from longpoint.texts import say
from longpoint.values import Faults, Given, Name, Path, Value


class Group(Given, frozen=True, kw_only=True):
    """Openings trimmed together, or one of joined units, its `gaps` an empty list, whose stool is too long for a stick.

    Their heads are brought to one level line; with `gaps`, the widths of wall between them, they stand so close that
    one stool and one apron run under all of them.

    Attributes:
        mark: The group's own name.
        heads: Heights of the heads, one an opening, each measured from one level line up to the head jamb's
            underside; they are checked for being in line.
        gaps: Widths of wall between the openings, left to right, each measured from one opening's right jamb
            face to the next one's left.
        stock_length: The longest stick for the shared stool, measured from end to end; a longer stool is
            scarfed. Left out where any length is to be had.
        solid: Places over which a joint may fall (studs, mulls), each measured from the first opening's left
            jamb face; where none is named, the middles of the gaps.
    """

    mark: Name
    heads: Annotated[tuple[Length, ...], Meta(max_length=20)] | None = None
    gaps: Annotated[tuple[PositiveLength, ...], Meta(max_length=19)] | None = None
    stock_length: PositiveLength | None = None
    solid: Annotated[tuple[Length, ...], Meta(max_length=100)] = ()

    @property
    def shares(self) -> bool:
        """Whether its openings share a stool, so that it has pieces of its own."""
        return self.gaps is not None

    def report(self, faults: Faults, at: Path = ()) -> None:
        """Note what belongs to a shared stool where there is none."""
        if self.gaps is None:
            for name, given in (("stock_length", self.stock_length is not None), ("solid", bool(self.solid))):
                if given:
                    faults.add(
                        (*at, name),
                        "gaps-missing",
                        say("problem", "group.gaps-missing"),
                    )


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
    faults.raise_any(GeometryError)
    wanted = Pieces.CASING if group.shares else Pieces.ALL
    members = tuple(build_opening(opening, wanted) for opening in openings)
    shared = _shared(members, group, faults) if group.shares else None
    faults.raise_any(GeometryError)
    return BuiltGroup(members, shared, _heads(members, group.heads or ()))


def _check(openings: tuple[Opening, ...], group: Group, faults: Faults) -> None:
    if len(openings) < 2 and not any(opening.outline.mulls for opening in openings):
        detail = say("problem", "group.too-few")
        faults.add(("group", "openings"), "too-few", detail)
    if group.heads and len(group.heads) != len(openings):
        faults.add(
            ("group", "heads"),
            "head-count",
            say("problem", "group.head-count", openings=len(openings), heads=len(group.heads)),
        )
    if group.gaps is None:
        return
    if len(group.gaps) != len(openings) - 1:
        needed, came = len(openings) - 1, len(group.gaps)
        detail = say("problem", "group.gap-count", openings=needed + 1, needed=needed, gaps=came)
        faults.add(("group", "gaps"), "gap-count", detail)
    first = openings[0]
    for number, opening in enumerate(openings):
        _check_member(number, opening, first, faults, last=number == len(openings) - 1)


def _check_member(number: int, opening: Opening, first: Opening, faults: Faults, *, last: bool) -> None:
    at = ("openings", number)
    if opening.bottom is not Bottom.STOOL or opening.trim.stool is None:
        faults.add((*at, "bottom"), "stool-missing", say("problem", "group.stool-missing"))
    elif (opening.trim.stool, opening.trim.apron) != (first.trim.stool, first.trim.apron):
        faults.add(
            (*at, "trim"),
            "stools-differ",
            say("problem", "group.stools-differ"),
        )
    if not isinstance(opening.outline.shape, PlumbSides):
        faults.add(
            (*at, "readings", *as_read(opening.readings, ("jamb_width",))),
            "not-plumb",
            say("problem", "group.not-plumb"),
        )
    if opening.trim.stool is not None:
        names = (*SIDES, *(HORNS[:1] if number == 0 else ()), *(HORNS[1:] if last else ()))
        check_depths(opening, opening.trim.stool, names, faults, at)


def _shared(members: tuple[Built, ...], group: Group, faults: Faults) -> Built | None:
    """What the members share, worked out as one wide opening whose mulls are the gaps between them."""
    shared_gaps = group.gaps or ()
    wide, frame, middles = _wide(members, group, shared_gaps)
    deepest = max(
        _read(depth)
        for member in members
        for depth in (member.opening.outline.left_depth, member.opening.outline.right_depth)
    )
    of_stool = Faults()
    check_stool(wide, of_stool, deepest)
    for fault in of_stool:
        faults.note(fault.under("openings", 0))
    sides = cased_sides(wide, frame)
    boards = _own_depths(stool_pieces(wide, frame, sides, deepest), members, shared_gaps)
    if wide.trim.apron is not None and not wide.without_apron:
        boards += apron_pieces(wide, frame, sides)
    pieces: list[Piece] = []
    for board in boards:
        if board.kind not in (PieceKind.STOOL, PieceKind.APRON):
            pieces.append(board)
            continue
        from_left = (
            next(mark.at for mark in board.marks if mark.name == "center line of opening")
            - frame.sides[0] / 2
        )
        places: list[Real] = [from_left + place for place in group.solid or middles]
        found = joints(board.overall, tuple(places), group.stock_length, board.thickness)
        if found is None:
            faults.add(
                ("group", "solid"),
                "no-joint-in-reach",
                say("problem", "group.no-joint-in-reach", piece=board.title, length=board.overall),
            )
            return None
        pieces.extend(scarfed(board, found))
    return Built(wide, frame, in_order(pieces), 0.0, ())


def _own_depths(
    boards: tuple[Piece, ...], members: tuple[Built, ...], gaps: tuple[Fraction, ...]
) -> tuple[Piece, ...]:
    """The stool as ripped to the deepest opening, sawn out between openings to the depth that each was read at."""
    body, *rest = boards
    trim = members[0].opening.trim.stool
    assert trim is not None
    less = trim.sash_clearance + trim.scribe
    lefts = [_read(member.opening.outline.left_depth) for member in members]
    rights = [_read(member.opening.outline.right_depth) for member in members]
    at = next(mark.at for mark in body.marks if mark.name == "left jamb face")
    cutouts: list[Cutout] = []
    for number, member in enumerate(members):
        depth, other = lefts[number] - less, rights[number] - less
        within = None if depth == other else other
        cutouts += [Cutout(at + mull.at, mull.width, depth, within) for mull in member.opening.outline.mulls]
        at += _width(member)
        if number < len(gaps):
            following = lefts[number + 1] - less
            cutouts.append(Cutout(at, gaps[number], other, None if following == other else following))
            at += gaps[number]
    return (replace(body, cutouts=tuple(cutouts)), *rest)


def _read(depth: Fraction | None) -> Fraction:
    assert depth is not None
    return depth


def _length(depth: Fraction | None) -> PositiveLength | None:
    return None if depth is None else PositiveLength(depth)


def _width(member: Built) -> Fraction:
    shape = member.opening.outline.shape
    assert isinstance(shape, PlumbSides)
    return shape.jamb_width


def _wide(
    members: tuple[Built, ...], group: Group, gaps: tuple[Fraction, ...]
) -> tuple[Opening, Frame, tuple[Fraction, ...]]:
    first, last = members[0].opening, members[-1].opening
    reached = ZERO
    mulls: list[Mull] = []
    for number, member in enumerate(members):
        mulls += [Mull(reached + mull.at, mull.width) for mull in member.opening.outline.mulls]
        reached += _width(member)
        if number < len(gaps):
            mulls.append(Mull(reached, gaps[number]))
            reached += gaps[number]
    height = first.outline.shape
    assert isinstance(height, PlumbSides)
    joined_widths, left = [], ZERO
    for mull in mulls:
        joined_widths.append(mull.at - left)
        left = mull.at + mull.width
    readings = Readings(
        joined_widths=(*map(PositiveLength, joined_widths), PositiveLength(reached - left)),
        mull_widths=tuple(PositiveLength(mull.width) for mull in mulls),
        jamb_height=Length(height.left_jamb_height),
        left_depth=_length(first.outline.left_depth),
        right_depth=_length(last.outline.right_depth),
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
    return wide, rectangle(reached, height.left_jamb_height), middles


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
    rest = say("offer", "heads.line-up-all") if several else None
    for number, (member, edge) in enumerate(zip(members, edges, strict=True)):
        reveal = _head_reveal(member) + highest - edge
        mark = member.opening.mark
        if edge != highest and reveal < member.opening.readings.jamb_thickness:
            detail = say("offer", "heads.line-up", mark=mark, up=highest - edge) + rest
            field = ("openings", number, "reveals", "head")
            offer = Offer("line_up_head", detail, field, reveal, (("head reveal", reveal),))
            offers.append(_tried(member.opening, offer))
        elif edge != highest:
            detail = say("offer", "heads.fur", mark=mark)
            offers.append(Offer("fur_head", detail, (), None, (("still to go", highest - edge),)))
    detail = say("finding", "heads.out-of-line", amount=amount)
    return (Finding("heads-out-of-line", "", detail, amount, tuple(offers)),)


def _tried(opening: Opening, offer: Offer) -> Offer:
    """The offer, without its field where its opening cannot be built with it."""
    own = replace(opening, reveals=replace(opening.reveals, head=offer.worth))
    try:
        build_opening(own, Pieces.CASING)
    except GeometryError as error:
        return refused(offer, error)
    return offer


def _head_reveal(member: Built) -> Fraction:
    opening = member.opening
    return opening.trim.reveal if opening.reveals.head is None else opening.reveals.head
