"""What every type of a request or an answer is built on."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, Generic, TypeVar

import msgspec

if TYPE_CHECKING:
    from decimal import Decimal

    from longpoint_sdk._length import Length

    MoneyText = str | Decimal
    """An amount of money in a request: decimal text, or a `Decimal`. Read back from the service it is text."""
    LengthText = str | Length
    """A length in a request: text as a tape reads, or a length. Read back from the service it is text."""
else:
    LengthText = MoneyText = Any


T = TypeVar("T")
RequestT = TypeVar("RequestT", bound="Request")


class Request(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """Base of what is sent. What is left out is not sent: the service's own default holds."""

    def changed(self: RequestT, **fields: Any) -> RequestT:
        """The same with other values for some fields.

        Checked by nothing until it is sent: a type checker does not know the fields either.

        Raises:
            TypeError: for a field it does not have.
        """
        return msgspec.structs.replace(self, **fields)


class Result(msgspec.Struct, frozen=True, kw_only=True):
    """Base of what is answered. Fields that a newer service adds are skipped."""


class Page(Result, Generic[T], frozen=True, kw_only=True):
    """One page of a list.

    Attributes:
        items: What is on it.
        next: Where the next page begins; None on the last.
    """

    items: list[T]
    next: str | None = None


def request_from(kind: type[RequestT], value: msgspec.Struct, fields: dict[str, Any]) -> RequestT:
    """What is sent to change something stored: it as it was read, with other values for some fields.

    Raises:
        TypeError: for a field that cannot be sent.
    """
    kept = {name: getattr(value, name) for name in kind.__struct_fields__ if hasattr(value, name)}
    return kind(**{**kept, **fields})
