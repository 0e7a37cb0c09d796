"""The cuts as a sequence that changes the saws least, compared with cutting opening by opening."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import chain

from longpoint.geometry import Part, PieceKey
from longpoint.lengths import Fraction, Rounding, round_to
from longpoint.shop.arrange import Sequence, arrange, opening_by_opening, setups
from longpoint.shop.build import BuiltOpening, CutList
from longpoint.shop.cautions import AT_THE_SAW, CLAMP, SHARP_MITRE, SHORT_PIECE, SHORT_RIP, TAPER, Caution
from longpoint.shop.operations import Operation, OperationKind, SawOrder, Setting, Setup, Tool
from longpoint.shop.saw import Saw
from longpoint.shop.steps import Step
from longpoint.shop.sticks import WorkStick, work_sticks

STANDARD = Saw()

Mirrors = dict[tuple[str, PieceKey], PieceKey]


def saw_order(cut_list: CutList, saw: Saw = STANDARD) -> SawOrder:
    """Every cut of a house in the order to make it.

    Never more setups than opening by opening: where grouping should not pay, that order itself is given.
    """
    rounding = cut_list.house.rounding
    sticks = work_sticks(cut_list)
    grouped = arrange(sticks, rounding, saw)
    marks = [one.built.opening.mark for one in cut_list.openings]
    singly = list(chain.from_iterable(opening_by_opening(sticks, marks, rounding, saw)))
    singly_setups = setups(singly)
    steps = grouped if setups(grouped) <= singly_setups else singly
    operations, made = _Numbering(sticks, mirrored(cut_list.openings, rounding), saw).number(steps)
    return SawOrder(
        setup_count=len(made),
        setup_count_by_opening=singly_setups,
        setups=made,
        operations=operations,
    )


def raised(order: SawOrder) -> tuple[Caution, ...]:
    """Each caution that an operation names, once, with the openings it was raised for."""
    codes = {code for operation in order.operations for code in operation.cautions}
    return tuple(_for(caution, order.operations) for code, caution in AT_THE_SAW.items() if code in codes)


def mirrored(openings: Iterable[BuiltOpening], rounding: Rounding) -> Mirrors:
    """By opening and part, the part that is its mirror image: left and right, alike on the tape."""
    found: Mirrors = {}
    for one in openings:
        mark = one.built.opening.mark
        sided: dict[tuple[object, ...], dict[str, Part]] = {}
        for part in one.built.parts:
            if part.side in ("left", "right"):
                sided.setdefault(_likeness(part, rounding), {})[part.side] = part
        for pair in sided.values():
            if len(pair) == 2:
                left, right = pair["left"], pair["right"]
                found[mark, left.key] = right.key
                found[mark, right.key] = left.key
    return found


def _likeness(part: Part, rounding: Rounding) -> tuple[object, ...]:
    lengths = (part.overall, part.long_point, part.short_point, part.width)
    cuts = sorted((end.at, end.cut.value, round(float(end.mitre), 3)) for end in part.ends)
    return part.kind, part.profile, *(round_to(each, rounding) for each in lengths), *cuts


def _for(caution: Caution, operations: tuple[Operation, ...]) -> Caution:
    marks = dict.fromkeys(
        name.opening
        for operation in operations
        if caution.code in operation.cautions
        for name in operation.pieces
    )
    return Caution(caution.code, caution.text, caution.source, tuple(marks))


def _plain(length: Fraction | None) -> Fraction | None:
    """A length fit to be answered: not one that was sent, with its text."""
    return None if length is None else +length


class _Numbering:
    """Numbers steps and setups, and follows what is left of each section as it is cut up."""

    def __init__(self, sticks: list[WorkStick], mirrors: Mirrors, saw: Saw) -> None:
        sections = [section for stick in sticks for section in stick.sections]
        self._left = {section.name: section.length for section in sections}
        self._blanks = {section.name: len(section.blanks) for section in sections}
        self._mirrors = mirrors
        self._saw = saw

    def number(self, steps: Sequence) -> tuple[tuple[Operation, ...], tuple[Setup, ...]]:
        operations: list[Operation] = []
        settings: list[Setting] = []
        cuts: list[int] = []
        now: dict[Tool, int] = {}
        for step in steps:
            if self._needs_no_cut(step):
                continue
            tool = step.setting.tool
            if tool not in now or settings[now[tool]] != step.setting:
                now[tool] = len(settings)
                settings.append(step.setting)
                cuts.append(0)
            setup = now[tool]
            cuts[setup] += 1
            operations.append(self._operation(len(operations) + 1, setup + 1, step))
        made = tuple(map(Setup, range(1, len(settings) + 1), settings, cuts))
        return tuple(operations), made

    def _needs_no_cut(self, step: Step) -> bool:
        """The last blank of a section without waste is already there."""
        if step.section is None or step.kind is OperationKind.ANGLED_END:
            return False
        name = step.section.name
        self._blanks[name] -= 1
        return step.section.exact and self._blanks[name] == 0

    def _operation(self, number: int, setup: int, step: Step) -> Operation:
        piece = step.pieces[0] if len(step.pieces) == 1 else None
        held = self._held(step)
        part = piece.part if piece else None
        return Operation(
            number=number,
            setup=setup,
            kind=step.kind,
            profile=step.profile,
            stick=step.stick or None,
            pieces=tuple(piece.name for piece in step.pieces),
            title=part.title if part else "",
            end=step.end.at if step.end else "",
            on_saw=step.end.on_saw if step.end else None,
            mark=_plain(step.mark),
            mark_to=_plain(step.mark_to),
            held=_plain(held),
            mirror_of=self._mirrors.get((piece.name.opening, piece.name.part)) if piece else None,
            cautions=tuple(self._cautions(step, held)),
        )

    def _held(self, step: Step) -> Fraction | None:
        if step.section is None:
            return step.length
        held = self._left[step.section.name]
        if held is not None and step.length:
            self._left[step.section.name] = held - step.length - step.section.kerf
        return held

    def _cautions(self, step: Step, held: Fraction | None) -> Iterable[str]:
        if step.kind is OperationKind.PART_OFF or (step.section and step.kind is OperationKind.ANGLED_END):
            yield SHORT_PIECE.code
        if step.kind is OperationKind.SHARED_CUT and any(
            piece.length < self._saw.smallest_held for piece in step.pieces
        ):
            yield SHORT_PIECE.code
        if step.setting.tool is Tool.MITRE_SAW and held is not None and held < self._saw.smallest_held:
            yield CLAMP.code
        if step.setting.tool is Tool.TABLE_SAW and held is not None and held < self._saw.smallest_ripped:
            yield SHORT_RIP.code
        if step.setting.taper is not None:
            yield TAPER.code
        if step.setting.mitre > self._saw.sharpest_mitre:
            yield SHARP_MITRE.code
