"""The types that requests and answers are made of. Constraints live here and nowhere else."""

from typing import Annotated, Any, Generic, TypeVar, dataclass_transform

import msgspec
from msgspec import Meta

from longpoint.api.http.explain import CHECK, EXPECT
from longpoint.lengths import LengthError, Unit, parse

T = TypeVar("T")


@dataclass_transform(frozen_default=True, kw_only_default=True, field_specifiers=(msgspec.field,))
class _WireMeta(msgspec.StructMeta):
    """Makes every wire type frozen and its fields keywords, without each having to say so."""

    def __new__(mcls, name: str, bases: tuple[type, ...], namespace: dict[str, Any], **config: Any) -> Any:
        return super().__new__(mcls, name, bases, namespace, **{"frozen": True, "kw_only": True, **config})


class Wire(msgspec.Struct, metaclass=_WireMeta, forbid_unknown_fields=True):
    """Base of everything that comes in: fields it does not know are refused."""


class WireOut(msgspec.Struct, metaclass=_WireMeta):
    """Base of everything that goes out: fields may be added to it, so readers skip those they do not know."""


def _check_length(text: str, body: Any) -> tuple[str, str] | None:
    """So that an unreadable length is told together with the faults of the body around it."""
    unit = body.get("unit") if isinstance(body, dict) else None
    try:
        parse(text, Unit(unit) if unit in list(Unit) else None)
    except LengthError as refusal:
        return refusal.code, refusal.detail
    return None


LengthText = Annotated[
    str,
    Meta(
        min_length=1,
        max_length=64,
        description=(
            "A length as a tape reads it, with its unit: feet, inches and fractions, decimals, mm, cm or m. "
            "Without a unit it is in the request's `unit`, when the request has one."
        ),
        examples=["34 1/2 in", "2' 10-1/2\"", "876 mm", "34.5in"],
        extra={EXPECT: 'Write it as text with its unit, for example "34 1/2 in".', CHECK: _check_length},
        extra_json_schema={"format": "length", "pattern": r"^[^\u0000]*$"},
    ),
]
"""A length coming in."""

_NAME_FORM = r"^[^ \x00-\x1f\x7f][^\x00-\x1f\x7f]*$(?![\s\S])"

Name = Annotated[
    str,
    Meta(
        min_length=1,
        max_length=120,
        pattern=_NAME_FORM,
        description="A name on one line, not starting with a space.",
        extra={EXPECT: "A name is one line of text that does not start with a space."},
    ),
]
"""A name of something in the house or the shop."""

Text = Annotated[
    str,
    Meta(
        max_length=2000,
        description="Free text; may have several lines.",
        extra_json_schema={"pattern": r"^[^\u0000]*$"},
    ),
]
"""A note."""


class Page(WireOut, Generic[T]):
    """One page of a list.

    Attributes:
        items: What is on this page.
        next: Cursor of the next page, for the `cursor` parameter; null on the last page.
    """

    items: list[T]
    next: str | None = None
