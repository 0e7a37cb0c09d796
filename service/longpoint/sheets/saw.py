"""The saw sheet: each setting of the saw, and under it the cuts made at it, in the order to make them."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby

from longpoint.geometry import PieceKey
from longpoint.sheets.cutting import UPRIGHT, stick_pictures
from longpoint.sheets.document import Block, Cell, Column, Document, Facts, Rows, Table, Tick
from longpoint.sheets.job import AT_THE_SAW, Job, caution_notes
from longpoint.sheets.pieces import pieces_by_key
from longpoint.sheets.wording import Wording, angle, unbroken, words
from longpoint.shop import Operation, OperationKind, SawOrder, Setting, Tool

CUTS = (
    Column("Step", "step", 2),
    Column("Cut", "cut", 12),
    Column("Pieces", "pieces", 5),
    Column("Stick", "stick", 4),
    Column("Take care", "take_care", 4),
    Column("Done", "done", 1),
)
CARE = {
    "short_piece": "short: to a mark",
    "clamp": "clamp it",
    "short_rip": "short to rip",
    "sharp_mitre": "jig, or hand saw",
}
Labels = dict[tuple[str, PieceKey], str]


def saw_sheet(job: Job) -> Document:
    """Setups and cuts, then the sticks as they are cut.

    Raises:
        ValueError: for a job whose saw order was not worked out.
    """
    order = job.work.saw_order if job.work else None
    if order is None:
        raise ValueError("a saw sheet needs the job's saw order")
    blocks: list[Block] = [
        caution_notes(job, *AT_THE_SAW, "local_codes"),
        Facts(_facts(order)),
        _cuts(job, order),
    ]
    blocks += stick_pictures(job, UPRIGHT)
    return Document("saw-sheet", "Saw sheet", job.name, tuple(blocks), job.paper)


def _facts(order: SawOrder) -> tuple[tuple[str, Cell], ...]:
    return (
        ("cuts", sum(1 for one in order.operations if one.pieces)),
        ("times a saw is set", order.setup_count),
        ("times, opening by opening", order.setup_count_by_opening),
    )


def _cuts(job: Job, order: SawOrder) -> Table:
    labels = {(piece.opening, piece.part.key): piece.label for piece in pieces_by_key(job.cut_list).values()}
    wording = job.wording
    groups = tuple(
        Rows(
            tuple(_rows(order, tuple(operations), labels, wording)),
            f"Setting {number}: {setting_words(order.setups[number - 1].setting, wording)}",
        )
        for number, operations in groupby(order.operations, key=lambda one: one.setup)
    )
    return Table("cuts", "Cuts in order", CUTS, groups)


def _rows(
    order: SawOrder, operations: tuple[Operation, ...], labels: Labels, wording: Wording
) -> Iterator[tuple[Cell, ...]]:
    """A row for each cut; whole sticks that are treated alike one after another take one row together."""
    for (_, cut, profile), same in groupby(
        operations,
        key=lambda one: (
            one.number if one.title else 0,
            cut_words(one, order.setting_of(one), wording),
            one.profile,
        ),
    ):
        run = tuple(same)
        first = run[0]
        step = str(first.number) if len(run) == 1 else f"{first.number}\N{EN DASH}{run[-1].number}"
        names = dict.fromkeys(labels[name.opening, name.part] for one in run for name in one.pieces)
        mirror = labels.get((first.pieces[0].opening, first.mirror_of)) if first.mirror_of else None
        pieces = ", ".join(names) + (f" (mirror of {mirror})" if mirror else "")
        sticks = [one.stick for one in run if one.stick]
        stick = f"{profile}, {_span(sticks)}" if sticks else profile
        care = "; ".join(
            CARE.get(code, words(code)) for code in dict.fromkeys(c for one in run for c in one.cautions)
        )
        yield step, cut, pieces if first.title else "", stick, care, Tick()


def _span(numbers: list[int]) -> str:
    """Stick numbers, in runs: `1–4, 7`."""
    runs: list[list[int]] = []
    for number in sorted(set(numbers)):
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    return ", ".join(f"{run[0]}\N{EN DASH}{run[-1]}" if len(run) > 1 else str(run[0]) for run in runs)


def setting_words(setting: Setting, wording: Wording) -> str:
    """How a tool is set: `mitre saw, table 45° right, blade upright, stop at 46 7/16"`."""
    said = [words(setting.tool)]
    if setting.tool is Tool.MITRE_SAW:
        said.append(
            f"table {angle(setting.mitre)} {setting.swing.value}" if setting.swing else "table square"
        )
        if setting.tilt:
            said.append(f"blade {angle(setting.bevel)}, its top {setting.tilt.value}")
    if setting.fence is not None:
        said.append(f"fence at {unbroken(wording.figure(setting.fence))}")
    if setting.stop is not None:
        said.append(f"stop at {unbroken(wording.figure(setting.stop))}")
    if setting.notch_depth is not None and setting.notch_length is not None:
        depth, length = wording.figure(setting.notch_depth), wording.figure(setting.notch_length)
        said.append(f"{unbroken(depth)} from the back edge, {unbroken(length)} from the end")
    return ", ".join(said)


def cut_words(one: Operation, setting: Setting, wording: Wording) -> str:
    """What is done, in a sentence."""

    def at(value: object) -> str:
        return unbroken(wording.figure(value)) if value is not None else ""  # type: ignore[arg-type]

    mark, title = at(one.mark), one.title
    match one.kind:
        case OperationKind.SQUARE_ENDS:
            return f"square both ends, {mark} off each" if one.mark else "square both ends"
        case OperationKind.CUT_OUT:
            return f"saw out the defect from {mark} to {at(one.mark_to)}"
        case OperationKind.RIP_STICK:
            return f"rip the whole stick to {at(setting.fence)}"
        case OperationKind.PART_OFF:
            return f"{title}: part off the free end, {mark}"
        case OperationKind.CROSSCUT:
            return f"{title}: cut square to {at(setting.stop)}"
        case OperationKind.SHARED_CUT:
            return f"{title}: one cut for both, at {mark} along the row"
        case OperationKind.ANGLED_END:
            return f"{title}: {one.end} end, to its corner{_hand(one)}"
        case OperationKind.RIP:
            return f"{title}: rip to {at(setting.fence)}"
        case OperationKind.NOTCH:
            return f"{title}: notch the {one.end} end"
    return f"{title}: {words(one.kind)}"


def _hand(one: Operation) -> str:
    return f", {one.on_saw.value} on the saw" if one.on_saw else ""
