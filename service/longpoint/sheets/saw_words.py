"""What is said of one cut: what to do, how the saw is set, where to mark, what to hold, what to mind."""

from __future__ import annotations

from longpoint.lengths import Fraction
from longpoint.sheets.wording import Wording, angle, unbroken, words
from longpoint.shop import Operation, OperationKind, Setting, Tool

TOOLS = {Tool.MITER_SAW: "miter saw", Tool.TABLE_SAW: "table saw", Tool.HAND_SAW: "hand saw"}
CARE = {
    "short_piece": "short: stop the blade, then lift",
    "clamp": "too short: clamp it in a jig, or a hand saw",
    "short_rip": "short to rip: plane it to width, or rip a longer one",
    "taper_jig": "taper jig",
    "sharp_miter": "sharp: a jig, or a hand saw",
}
CUTS = {
    OperationKind.RIP_STICK: "rip the whole stick",
    OperationKind.SQUARE_END: "square the free end",
    OperationKind.CUT_OUT: "cut the defect off",
    OperationKind.CUT_OFF: "cut off square",
    OperationKind.RIP: "rip",
}


def cut_words(one: Operation, wording: Wording) -> str:
    """What is done: `cut off at its head end`, `notch the left end`, `cut the head end; face down, inner edge to the
    fence`."""
    done = CUTS.get(one.kind) or _end_words(one)
    if one.stops_after is not None:
        done += f", stopping {unbroken(wording.figure(one.stops_after))} from the front edge"
    return done if one.face_up else f"{done}; face down, {one.fence_edge} edge to the fence"


def _end_words(one: Operation) -> str:
    end = f"{one.end} end"
    match one.kind:
        case OperationKind.ANGLED_CUT_OFF:
            return f"cut off at its {end}"
        case OperationKind.SHARED_CUT:
            return f"cut off at its {end}; one cut for both"
        case OperationKind.NOTCH:
            return f"notch the {end}"
    return f"cut the {end}"


def setting_words(setting: Setting, wording: Wording) -> str:
    """How a tool is set: `miter 45° right`, `square, stop at 46 7/16"`, `table saw, fence at 4 5/8"`."""
    said = [] if setting.tool is Tool.MITER_SAW else [TOOLS[setting.tool]]
    if setting.tool is Tool.MITER_SAW:
        if setting.miter_direction:
            said.append(f"miter {unbroken(f'{angle(setting.miter)} {setting.miter_direction.value}')}")
        if setting.bevel_direction:
            said.append(f"bevel {unbroken(f'{angle(setting.bevel)} {setting.bevel_direction.value}')}")
        if not said:
            said.append("square")
    if setting.taper is not None:
        left, right = (unbroken(wording.figure(width)) for width in setting.taper)
        said.append(f"taper {left} left to {right} right")
    elif setting.fence is not None:
        said.append(f"fence at {unbroken(wording.figure(setting.fence))}")
    if setting.stop is not None:
        said.append(f"stop at {unbroken(wording.figure(setting.stop))}")
    return ", ".join(said)


def mark_words(one: Operation, setting: Setting, wording: Wording) -> str:
    """Where to cut: `46 7/16" from the square end, on the outer edge`."""
    if setting.stop is not None:
        return "to the stop"
    if setting.notch_depth is not None and setting.notch_length is not None:
        return _notch_words(setting.notch_depth, setting.notch_end_depth, setting.notch_length, wording)
    where = f", on the {edge_words(one.mark_edge)}" if one.mark_edge else ""
    if one.mark is None or one.mark_from is None:
        return f"to the corner{where}" if one.kind is OperationKind.ANGLED_END else ""
    return f"{unbroken(wording.figure(one.mark))} from the {words(one.mark_from)}{where}"


def _notch_words(depth: Fraction, end_depth: Fraction | None, length: Fraction, wording: Wording) -> str:
    deep = unbroken(wording.figure(depth))
    if end_depth is not None:
        deep += f" at the jamb, {unbroken(wording.figure(end_depth))} at the end"
    return f"{deep} from the back edge, {unbroken(wording.figure(length))} from the end"


def edge_words(edge: str) -> str:
    """`outer edge`, `face`, `outer edge of the back`."""
    edge, _, back = edge.partition("_")
    if back:
        return f"{edge} edge of the back"
    return edge if edge in ("face", "back") else f"{edge} edge"


def hold_words(one: Operation, wording: Wording) -> str:
    """What is held and how long it is: `stick, 83 1/4"`."""
    if one.held is None:
        return one.holds.value
    return f"{one.holds.value}, {unbroken(wording.figure(one.held))}"


def care_words(one: Operation) -> str:
    return "; ".join(CARE.get(code, words(code)) for code in one.cautions)
