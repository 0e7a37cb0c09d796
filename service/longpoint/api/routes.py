"""Every resource of the API, in the order the document lists them."""

from typing import Any

from longpoint.api.corners import compute_corners
from longpoint.api.cut_list import compute_cut_list
from longpoint.api.health import check_live, check_ready
from longpoint.api.lengths import read_lengths
from longpoint.api.movement import compute_movement
from longpoint.api.opening import compute_opening
from longpoint.api.pieces import compute_apron, compute_casing, compute_stool

OPERATIONS: list[Any] = [
    read_lengths,
    compute_stool,
    compute_apron,
    compute_casing,
    compute_opening,
    compute_corners,
    compute_movement,
    compute_cut_list,
    check_live,
    check_ready,
]
"""What the OpenAPI document describes."""
