"""A saw order as the wire carries it."""

from __future__ import annotations

from longpoint.api.wire.lengths import LengthOut, LengthWriter
from longpoint.api.wire.saw_order import OperationOut, PieceOut, SawOrderOut, SettingOut, SetupOut
from longpoint.lengths import Fraction
from longpoint.shop import Operation, SawOrder, Setting


def saw_order_out(order: SawOrder, write: LengthWriter) -> SawOrderOut:
    """The whole order."""
    return SawOrderOut(
        len(order.setups),
        order.setups_by_opening,
        [SetupOut(each.number, _setting(each.setting, write), each.operations) for each in order.setups],
        [_operation(each, write) for each in order.operations],
    )


def _operation(one: Operation, write: LengthWriter) -> OperationOut:
    return OperationOut(
        one.number,
        one.setup,
        one.kind,
        one.profile,
        one.stick or None,
        [PieceOut(each.opening, each.part, each.instance) for each in one.pieces],
        one.title,
        one.end,
        one.on_saw,
        _length(one.mark, write),
        _length(one.mark_to, write),
        _length(one.held, write),
        one.mirror_of,
        list(one.cautions),
    )


def _setting(one: Setting, write: LengthWriter) -> SettingOut:
    return SettingOut(
        one.tool,
        one.swing,
        float(one.mitre),
        one.tilt,
        float(one.bevel),
        _length(one.stop, write),
        _length(one.fence, write),
        None if one.taper is None else [write(width) for width in one.taper],
        _length(one.notch_depth, write),
        _length(one.notch_length, write),
        _length(one.notch_end_depth, write),
    )


def _length(value: Fraction | None, write: LengthWriter) -> LengthOut | None:
    return None if value is None else write(value)
