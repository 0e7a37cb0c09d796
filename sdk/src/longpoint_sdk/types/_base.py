"""What every type of a request or an answer is built on."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import msgspec

if TYPE_CHECKING:
    from longpoint_sdk._length import Length

    LengthText = str | Length
    """A length in a request: text as a tape reads, or a length. Read back from the service it is text."""
else:
    LengthText = Any


class Request(msgspec.Struct, frozen=True, kw_only=True, omit_defaults=True):
    """Base of what is sent. What is left out is not sent: the service's own default holds."""


class Result(msgspec.Struct, frozen=True, kw_only=True):
    """Base of what is answered. Fields that a newer service adds are skipped."""
