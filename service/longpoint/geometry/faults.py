"""What geometry refuses."""

from __future__ import annotations

from longpoint.values import Refusal


class GeometryError(Refusal):
    """An opening that cannot be built as described; carries every fault found, each path from the opening down."""
