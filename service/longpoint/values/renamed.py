"""What callers of 0.1.0 sent under other names, for whoever read its document: a problem says the new name."""

from __future__ import annotations

from collections.abc import Collection

from longpoint.texts import Sentence, say

RENAMED: dict[str, str | tuple[str, ...]] = {
    "part": "piece",
    "parts": "pieces",
    "foot_style": "bottom",
    "picture_frame": "casing",
    "leg_height": "jamb_height",
    "left_height": "left_jamb_height",
    "right_height": "right_jamb_height",
    "lights": "joined_widths",
    "left_neighbour": "left_neighbor",
    "right_neighbour": "right_neighbor",
    "sill_casing": "bottom_casing",
    "remnants": "lengths_on_hand",
    "rack": "lengths",
    "offcuts": "lengths",
    "used_offcuts": "used_lengths",
    "caulk_fillet": "caulk_bead",
    "fit_minutes": "install_minutes",
    "setup_minutes": ("detent_seconds", "angle_seconds", "bevel_seconds", "stop_seconds", "fence_seconds"),
    "cut_minutes": ("cut_seconds", "short_cut_seconds", "notch_seconds"),
    "fit": "install",
    "fitted": "installed",
    "mitre_degrees": "miter_degrees",
    "sharpest_mitre": "sharpest_miter",
    "mitred": "mitered",
    "mitred_return": "mitered_return",
    "tapered_strip": "tapered_shim",
    "casing_leg": "side_casing",
    "casing_head": "head_casing",
    "casing_sill": "bottom_casing",
    "levelling_strip": "tapered_shim",
    "saw-sheet": "stick-sheet",
    "yard-list": "material-list",
    "fitting-sheet": "opening-sheet",
    "piece-labels": "labels",
}
"""By the old name the new one, or those that say now what it said. The kind of a piece begins its key."""
ADDRESSES = frozenset(("lengths", "stick-sheet", "material-list", "opening-sheet", "labels"))
"""New names that stand in addresses."""
_SAID_BY_THE_KIND = ("head", "sill")
"""Sides that keys had and have no more."""


def renamed(name: object, choices: Collection[str] | None = None) -> Sentence | None:
    """What a name was changed to, to say after something else; None when it was not, or not here.

    Args:
        name: as it came; the columns of a spreadsheet have spaces, the keys of pieces a side.
        choices: the names there are; None where that is known otherwise.
    """
    old = str(name)
    kind, slash, side = old.partition("/")
    if slash and side.startswith("head "):  # the pieces of a curve were counted from the right
        return renamed(kind, choices and {one.partition("/")[0] for one in choices})
    new = RENAMED.get(kind.replace(" ", "_"))
    if isinstance(new, tuple):
        new = new if choices is None else tuple(one for one in new if one in choices)
        return say("hint", "values.split", old=old, new=tuple(f'"{one}"' for one in new)) if new else None
    if new and " " in kind:
        new = new.replace("_", " ")
    if new and slash and side not in _SAID_BY_THE_KIND:
        new = f"{new}/{side}"
    if not new or (choices is not None and new not in choices):
        return None
    return say("hint", "values.renamed", old=old, new=new)


def moved(path: str) -> Sentence | None:
    """The same of an address, by the first of its names that was changed."""
    found = (renamed(name, ADDRESSES) for name in path.split("/"))
    return next((one for one in found if one), None)
