"""The saw order of a house: three orders summed up by the clock, and the one to cut by, cut by cut."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from longpoint.geometry import Hand, Piece, PieceKey, PieceKind
from longpoint.lengths import Fraction, Rounding, round_to
from longpoint.shop.beside import lacking, returns_of
from longpoint.shop.build import BuiltOpening, CutList, HouseKey
from longpoint.shop.cautions import AT_THE_SAW, CLAMP, SHARP_MITER, SHORT_PIECE, SHORT_RIP, TAPER, Caution
from longpoint.shop.clock import CUTTING, SETTING, Clock
from longpoint.shop.held import Held, in_hand
from longpoint.shop.operations import (
    Operation,
    OperationKind,
    OrderKind,
    OrderSum,
    PieceName,
    SawOrder,
    Setting,
    Setup,
    Tool,
)
from longpoint.shop.orders import opening_by_opening, setting_by_setting, stick_by_stick, with_stops
from longpoint.shop.saw import Saw
from longpoint.shop.saw_step import SawStep
from longpoint.shop.settings import STANDARD, Shop
from longpoint.shop.steps import Bench
from longpoint.shop.sticks import WorkStick, work_sticks
from longpoint.texts import Sentence, say

Mirrors = dict[tuple[str, PieceKey], PieceKey]


def saw_order(cut_list: CutList, shop: Shop = STANDARD) -> SawOrder:
    """Every cut of a house, in the order the shop asks for, else in the one of three that takes least by its rates."""
    sticks = work_sticks(cut_list)
    bench = Bench(cut_list.house.rounding, shop.saw)
    marks = [one.built.opening.mark for one in cut_list.openings]
    made = {
        OrderKind.STICK_BY_STICK: stick_by_stick(sticks, bench),
        OrderKind.OPENING_BY_OPENING: opening_by_opening(sticks, marks, bench),
        OrderKind.SETTING_BY_SETTING: setting_by_setting(sticks, bench),
    }
    held = {order: in_hand(with_stops(steps, shop.rates), sticks) for order, steps in made.items()}
    clock = Clock(shop.rates, shop.saw)
    sums = tuple(clock.sum(order, [one.step for one in steps]) for order, steps in held.items())
    chosen = shop.order or min(sums, key=lambda one: one.minutes).order
    mirrors = mirrored(cut_list.openings, cut_list.house.rounding)
    operations, setups = _numbered(held[chosen], mirrors, shop.saw)
    return SawOrder(
        order=chosen,
        why=_why(chosen, sums, asked=shop.order is not None),
        cuts=len(operations),
        orders=sums,
        apart=tuple(_apart(cut_list, sticks)),
        setups=setups,
        operations=operations,
        rates=shop.rates.used((*CUTTING, *SETTING)),
    )


def _apart(cut_list: CutList, sticks: Sequence[WorkStick]) -> Iterator[PieceName]:
    """Returns on a stick that has no owner for them."""
    returns = returns_of(
        HouseKey(index, piece.key)
        for index, one in enumerate(cut_list.openings)
        for piece in one.built.pieces
    )
    marks = {one.built.opening.mark: index for index, one in enumerate(cut_list.openings)}
    for stick in sticks:
        keys = [HouseKey(marks[made.name.opening], made.name.piece) for made in stick.pieces]
        lacks = lacking(keys, returns) if stick.name else {}
        for key, made in zip(keys, stick.pieces, strict=True):
            if lacks.get(key, 0) < 0:
                lacks[key] += 1
                yield made.name


def _why(chosen: OrderKind, sums: Sequence[OrderSum], asked: bool) -> Sentence:
    least = next(one for one in sums if one.order is chosen)
    minutes = float(least.minutes)
    others = tuple(
        say("note", "saw-order.other", minutes=float(one.minutes), order=one.order.replace("_", " "))
        for one in sums
        if one.order is not chosen
    )
    if asked:
        return say("note", "saw-order.asked-for", minutes=minutes, others=others)
    return say("note", "saw-order.quickest", minutes=minutes, others=others)


def raised(order: SawOrder) -> tuple[Caution, ...]:
    """Each caution that an operation names, once, with the openings and the pieces it was raised for."""
    codes = {code for operation in order.operations for code in operation.cautions}
    return tuple(_for(caution, order.operations) for code, caution in AT_THE_SAW.items() if code in codes)


def _for(caution: Caution, operations: tuple[Operation, ...]) -> Caution:
    pieces = tuple(
        dict.fromkeys(
            name
            for operation in operations
            if caution.code in operation.cautions
            for name in operation.pieces
        )
    )
    marks = tuple(dict.fromkeys(name.opening for name in pieces))
    return Caution(caution.code, caution.text, caution.source, marks, pieces)


def mirrored(openings: Iterable[BuiltOpening], rounding: Rounding) -> Mirrors:
    """By opening and piece, the piece that is its mirror image: left and right, alike on the tape."""
    found: Mirrors = {}
    for one in openings:
        mark = one.built.opening.mark
        sided: dict[tuple[object, ...], dict[str, Piece]] = {}
        for piece in one.built.pieces:
            if piece.side in ("left", "right"):
                sided.setdefault(_likeness(piece, rounding), {})[piece.side] = piece
        for pair in sided.values():
            if len(pair) == 2:
                left, right = pair["left"], pair["right"]
                found[mark, left.key] = right.key
                found[mark, right.key] = left.key
    return found


def _likeness(piece: Piece, rounding: Rounding) -> tuple[object, ...]:
    lengths = (piece.overall, piece.long_point, piece.short_point, piece.width)
    cuts = sorted((end.at, end.cut.value, round(float(end.miter), 3)) for end in piece.ends)
    return piece.kind, piece.profile, *(round_to(each, rounding) for each in lengths), *cuts


def _numbered(
    steps: Sequence[Held], mirrors: Mirrors, saw: Saw
) -> tuple[tuple[Operation, ...], tuple[Setup, ...]]:
    operations: list[Operation] = []
    settings: list[Setting] = []
    cuts: list[int] = []
    now: dict[Tool, int] = {}
    for held in steps:
        setting = held.step.setting
        tool = setting.tool
        if tool not in now or settings[now[tool]] != setting:
            now[tool] = len(settings)
            settings.append(setting)
            cuts.append(0)
        cuts[now[tool]] += 1
        operations.append(_operation(len(operations) + 1, now[tool] + 1, held, mirrors, saw))
    return tuple(operations), tuple(map(Setup, range(1, len(settings) + 1), settings, cuts))


def _operation(number: int, setup: int, held: Held, mirrors: Mirrors, saw: Saw) -> Operation:
    step = held.step
    piece = step.pieces[0] if step.kind is not OperationKind.RIP_STICK else None
    end, placed = step.end, step.placed
    turned = placed is not None and placed.turned
    face_up = placed is None or placed.turned == placed.reversed
    on_saw = end.on_saw if end else None
    if on_saw and placed is not None and placed.reversed:
        on_saw = Hand.LEFT if on_saw is Hand.RIGHT else Hand.RIGHT
    return Operation(
        number=number,
        setup=setup,
        kind=step.kind,
        profile=step.profile,
        stick=step.stick or None,
        pieces=tuple(piece.name for piece in step.pieces),
        title=piece.piece.title if piece else "",
        end=end.at if end else "",
        on_saw=on_saw,
        face_up=face_up,
        fence_edge=fence_edge(piece.piece, turned) if piece else "",
        mark=_plain(step.mark),
        mark_from=step.mark_from,
        mark_edge=step.mark_edge,
        holds=held.holds,
        held=_plain(held.length),
        stops_after=_plain(step.stops_after),
        mirror_of=mirrors.get((piece.name.opening, piece.name.piece)) if piece else None,
        cautions=tuple(_cautions(step, held.length, saw)),
    )


def fence_edge(piece: Piece, turned: bool) -> str:
    """The edge that lies against the fence: the outer one; a stool's back, an apron's top; the other one of a piece
    that lies turned over."""
    edges = {end.long_edge for end in piece.ends}
    if piece.ends[0].notch is not None or "front" in edges:
        return "front" if turned else "back"
    if piece.kind is PieceKind.APRON or "top" in edges:
        return "bottom" if turned else "top"
    return "inner" if turned else "outer"


def _plain(length: Fraction | None) -> Fraction | None:
    """A length fit to be answered: not one that was sent, with its text."""
    return None if length is None else +length


def _cautions(step: SawStep, held: Fraction | None, saw: Saw) -> Iterable[str]:
    """One of a short piece at most, since what is held is either long enough or is not."""
    tool = step.setting.tool
    if tool is Tool.MITER_SAW:
        if held is not None and held < saw.smallest_held:
            yield CLAMP.code
        elif step.careful:
            yield SHORT_PIECE.code
    if tool is Tool.TABLE_SAW and held is not None and held < saw.smallest_ripped:
        yield SHORT_RIP.code
    if step.setting.taper is not None:
        yield TAPER.code
    if step.setting.miter > saw.sharpest_miter:
        yield SHARP_MITER.code
