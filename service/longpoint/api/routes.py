"""Every resource of the API, in the order the document lists them."""

from typing import Any

from longpoint.api.health import check_live, check_ready
from longpoint.api.lengths import read_lengths

OPERATIONS: list[Any] = [read_lengths, check_live, check_ready]
"""What the OpenAPI document describes."""
