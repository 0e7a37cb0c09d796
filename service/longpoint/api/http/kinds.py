"""Which wire types take which kind of decoded value."""

import datetime
from decimal import Decimal
from typing import Any
from uuid import UUID

from msgspec import inspect as mi


def bare_of(t: mi.Type) -> mi.Type:
    """A type without its constraints."""
    while isinstance(t, mi.Metadata):
        t = t.type
    return t


_KINDS: dict[type[mi.Type], type | tuple[type, ...]] = {
    mi.StrType: str,
    mi.IntType: int,
    mi.FloatType: (int, float),
    mi.BoolType: bool,
    mi.NoneType: type(None),
    mi.StructType: dict,
    mi.DictType: dict,
    mi.ListType: list,
    mi.VarTupleType: list,
    mi.TupleType: list,
}
READ_BY_MSGSPEC: dict[type[mi.Type], Any] = {
    mi.DateTimeType: datetime.datetime,
    mi.DateType: datetime.date,
    mi.TimeType: datetime.time,
    mi.DecimalType: Decimal,
    mi.UUIDType: UUID,
}


def takes_kind(t: mi.Type, value: Any) -> bool:
    """Whether a value is of the kind a type is made of, whatever else is wrong with it."""
    if isinstance(t, mi.CustomType):
        return value is not None
    kind = _KINDS.get(type(t))
    if kind is None or (isinstance(value, bool) and not isinstance(t, mi.BoolType)):
        return False
    return isinstance(value, kind)
