"""What 0.1.0 called otherwise, for whoever read its document: a problem says the new name."""

from __future__ import annotations

from collections.abc import Container

from longpoint.texts import Sentence, say

RENAMED = {
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
    "caulk_fillet": "caulk_bead",
    "fit_minutes": "install_minutes",
    "fit": "install",
    "fitted": "installed",
    "mitre_degrees": "miter_degrees",
    "sharpest_mitre": "sharpest_miter",
    "mitred": "mitered",
    "mitred_return": "mitered_return",
    "tapered_strip": "tapered_shim",
    "saw-sheet": "stick-sheet",
    "yard-list": "material-list",
    "fitting-sheet": "opening-sheet",
    "piece-labels": "labels",
}


def renamed(name: object, choices: Container[str] | None = None) -> Sentence | None:
    """What a name was changed to, to say after something else; None when it was not, or not here.

    Args:
        name: as it came; the columns of a spreadsheet have spaces.
        choices: the names there are; None where that is known otherwise.
    """
    old = str(name)
    spaced = " " in old
    new = RENAMED.get(old.replace(" ", "_"), "")
    if spaced:
        new = new.replace("_", " ")
    if not new or (choices is not None and new not in choices):
        return None
    return say("hint", "values.renamed", old=old, new=new)


def moved(path: str) -> Sentence | None:
    """The same of an address, by its last name."""
    return renamed(path.rpartition("/")[2]) if "/sheets/" in path else None
