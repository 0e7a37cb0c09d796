"""The trade's words: what each of them means, for whoever never saw a window being trimmed, and links to them."""

import re
from typing import Any

GLOSSARY: dict[str, str] = {
    "apron": "A flat piece under the stool, against the wall. It covers the joint of wall and window below the sill.",
    "back band": "A thin band round the outer edge of mitered casing. It makes the edge look thicker.",
    "base": "The bottom side of an opening's frame: the sill or stool of a window, the finished floor of a door.",
    "bevel": "A cut made with the blade tilted, so that the end is not square to the piece's face.",
    "bottom casing": "The casing under a picture frame: a window cased on all four sides, without a stool.",
    "butted": "Of a top piece, as a head casing: cut square at both ends, on top of the side pieces.",
    "cap": "A strip on top of a butted head casing. It often runs past the casing at both ends.",
    "casing": "The trim on the wall round a window or door. It covers the gap between jamb and wall.",
    "caulk": "The soft paste that closes the joint between trim and wall. The line of it is a bead.",
    "compound cut": "A cut with the table turned and the blade tilted at once.",
    "corner block": "A square block where two casings meet. The casings end square against it, with no miter to cut.",
    "detent": "A notch in the saw's table that holds it at an angle often used.",
    "door stop": "The strip on a door's jamb that the closed door rests against.",
    "drywall": "The board that covers the studs of a wall. Its face is the wall's face.",
    "end trim": "The short length that is cut off a stick's factory end, to have a clean and square end to start from.",
    "extension": "A board on the jamb's edge that brings the jamb out to the wall's face, where the wall is thicker "
    "than the jamb is deep.",
    "face": "The side that is seen from the room, of a piece as of the wall. A piece's back lies on the wall.",
    "fence": "The straight guide on a saw. The wood's edge lies against it.",
    "filler": "The paste that closes the holes over nails that were set below the face.",
    "fillet": "A thin strip between the side casings' tops and a butted head casing.",
    "grain": "The lines that the growth rings draw on wood. They run along a board; a cut across shows end grain.",
    "head casing": "The casing over the top of an opening.",
    "head jamb": "The jamb across the top of an opening.",
    "horn": "The end of a stool that runs past the opening, along the wall, under the side casing and beyond it. "
    "Its length is given from the casing's outer edge on; the notch behind it starts at the jamb.",
    "jamb": "The lining of an opening: the boards at both sides, over the top and, of a window cased on four sides, "
    "across the bottom (the sill jamb). The tape is hooked to their inside faces.",
    "joined units": "Windows that stand side by side in one opening and share a stool and a head casing.",
    "kerf": "The slot that the blade leaves. Each cut turns that much wood into sawdust.",
    "length on hand": "A stick, or a rest of one, that the carpenter has already or has on order. It need not "
    "be bought again.",
    "long point": "The tip of a mitered end: where the piece is longest. A length to the long point is measured to it.",
    "lot": "Sticks of one length and price that are entered together under one name.",
    "miter": "A cut at an angle across the face. Two mitered pieces meet in a corner, each cut at half its angle.",
    "mull": "The post between two joined units.",
    "mull casing": "The casing that covers a mull, between two windows.",
    "nosing": "The front edge of the stool that stands into the room, past the face of the apron.",
    "notch": "The corner that is sawn out of a stool's end, so that the stool fits between the jambs and its horn "
    "lies along the wall.",
    "offcut": "What is left of a stick when its pieces are cut. A long one is kept; a short one is waste.",
    "overhang": "The length that a head casing, or a strip on it, runs past the side casing's outer edge.",
    "penny": "The size of a nail: a larger number is a longer nail; 8 penny is 2 1/2 in long.",
    "plinth block": "A thick block on the floor that a door's side casing stands on.",
    "profile": "The shape of a stick's cross section, and so the name that the yard sells it under.",
    "proud": "Standing out past the thing beside it.",
    "return": "A short piece, mitered to an end, that turns the profile back to the wall and hides the end grain.",
    "reveal": "The strip of the jamb's edge that stays in sight beside the casing. The casing is set back by it.",
    "rip": "To saw a board along its length, to make it narrower.",
    "rough opening": "The hole that the framing leaves for a door or window before the jamb is set. "
    "The header is the beam across its top.",
    "sash": "The frame that holds the glass and opens. The stool stops just short of it.",
    "sash stop": "The strip on the window's jamb that the sash slides or closes against. "
    "The stool's back edge lands on it.",
    "scarf": "A joint of two pieces end to end, cut at a slant, where one stick is too short.",
    "scribe": "To cut an edge along a line drawn from the wall, so that it closes on a wall that is not straight.",
    "setup": "A tool set once, as a saw at one angle, and the cuts that are made until it is set again.",
    "shim": "A thin wedge that packs a gap and holds what is nailed over it in place.",
    "short point": "The inner corner of a mitered end: where the piece is shortest. "
    "A length to the short point is measured to it.",
    "shy": "Standing back from the thing beside it.",
    "side casing": "The casing up one side of an opening, left or right.",
    "sill": "The bottom of a window. On the room's side the stool lies on it.",
    "spring": "The lean of a casing that does not lie flat on the wall.",
    "springing": "The level at which a curved head starts: the jambs are straight below it.",
    "stool": "The shelf at the bottom of a window, in the room. The side casing stands on it.",
    "stop block": "A block clamped to a saw's fence. Sticks are pushed against it, so that pieces come out alike.",
    "strike": "The plate in the jamb that a door's latch closes into.",
    "stud": "An upright post inside the wall. The drywall and the outer edge of the casing are nailed to it.",
    "taper": "A width that changes evenly from one end to the other.",
    "waste": "What is bought and not used: of wood the kerfs, end trims and offcuts that are too short to keep.",
}
"""Each of the trade's words with what it means, in the order of the alphabet."""

INTRODUCTION = (
    "An opening is a window or a door. Its trim is the wood that is nailed round it: pieces, cut from sticks that "
    "the yard sells. The words below say which piece is which, and how it is measured."
)
TAGS: dict[str, str] = {
    "Lengths": "A length is text, as a tape reads it: start here to see how the service reads and rounds yours.",
    "One opening": "A window or a door by itself. Send its readings and its trim, and get every piece with its "
    "ends; or one kind of piece alone, out-of-square corners, and what the seasons do to a joint.",
    "A house": "All openings of a house at once: every piece, the sticks to buy, which piece comes from which stick, "
    "the saw's order, and on request materials, hours and cost. Nothing is kept.",
    "Sheets": "The same house on paper: what to measure, buy, cut, label and install.",
    "Schedules": "A house that the service keeps. Make a schedule once, and change it as the work goes on.",
    "Openings": "The openings of a schedule: add, measure again, remove, and say which are ready to be cut.",
    "Lengths on hand": "What stock a schedule's house has already or has on order. It is used before any is bought.",
    "Plans": "Which piece is cut from which stick. A plan keeps the names of its sticks until it is made anew.",
    "Work": "From the plan to the wall: the cut list of what is left, its sheets, and what was cut or spoiled.",
    "In and out": "Many openings at once, from a spreadsheet or another service, and a whole house taken along.",
    "Revisions": "Every change of a schedule is kept: read it, compare two, go back.",
    "Jobs": "Long work that is answered later: ask with `Prefer: respond-async`, follow the job, fetch its result.",
    "Health": "Whether the service runs, for whoever operates it.",
}
"""The groups of operations in the order of the work, each with what it is for."""
_FORMS = {form: term for term in GLOSSARY for form in (term, f"{term}s")} | {
    "beveled": "bevel",
    "compound": "compound cut",
    "jamb extension": "extension",
    "lengths on hand": "length on hand",
    "mitered": "miter",
    "plinth": "plinth block",
    "ripped": "rip",
    "scarfed": "scarf",
    "scribed": "scribe",
    "tapered": "taper",
}
"""Every form in which a term stands in descriptions and in fields' names."""
_WORDS = "|".join(sorted(map(re.escape, _FORMS), key=len, reverse=True))
_TERM = re.compile(rf"`[^`]*`|\[[^]]*\]\([^)]*\)|\b(?P<term>{_WORDS})\b", re.IGNORECASE)
LINK = re.compile(r"\[([^]]*)\]\(/docs#([a-z-]+)\)")
"""A link to where a term stands, as descriptions have it."""


def anchor(term: str) -> str:
    """Where a term stands on the page."""
    return f"glossary-{term.replace(' ', '-')}"


def terms_in(text: str) -> list[str]:
    """The terms that a text uses, each once."""
    found = (_FORMS[match["term"].lower()] for match in _TERM.finditer(text) if match["term"])
    return list(dict.fromkeys(found))


def linked(text: str, name: str = "") -> str:
    """A text of which each term leads to what it means, with those that only the field's name uses after it."""
    met: set[str] = set()

    def link(match: re.Match[str]) -> str:
        term = _FORMS.get((match["term"] or "").lower(), "")
        if not term or term in met:
            return match[0]
        met.add(term)
        return f"[{match[0]}](/docs#{anchor(term)})"

    text = _TERM.sub(link, text)
    only_named = [term for term in terms_in(name.replace("_", " ")) if term not in met]
    more = ", ".join(f"[{term}](/docs#{anchor(term)})" for term in only_named)
    return f"{text} See {more}." if more else text


def link_fields(outline: dict[str, Any]) -> None:
    """Link the terms in the descriptions of every field, parameter and list of values of a document."""
    for schema in outline["components"]["schemas"].values():
        if "enum" in schema and "description" in schema:
            schema["description"] = linked(schema["description"])
        for name, field in schema.get("properties", {}).items():
            if "description" in field:
                field["description"] = linked(field["description"], name)
    for methods in outline["paths"].values():
        for entry in methods.values():
            for field in entry["parameters"]:
                field["description"] = linked(field["description"], field["name"])


def as_markdown() -> str:
    """The glossary as part of the document's description."""
    lines = "\n".join(f"- **{term}**: {meaning}" for term, meaning in GLOSSARY.items())
    return f"## The trade's words\n\n{INTRODUCTION}\n\n{lines}\n"
