"""Reads a drawing back from its SVG text, knowing nothing of how it was made."""

import math
import re
from dataclasses import dataclass
from xml.etree import ElementTree

from shapely.affinity import rotate
from shapely.geometry import LineString, Polygon, box
from shapely.geometry.base import BaseGeometry

NAME = "{http://www.w3.org/2000/svg}"
ADVANCE, ASCENT, DESCENT = 0.60205, 0.928, 0.236  # DejaVu Sans Mono, the widest face drawings name


@dataclass
class Lettering:
    text: str
    box: BaseGeometry


class Drawing:
    def __init__(self, svg: str) -> None:
        self.root = ElementTree.fromstring(svg)
        self.texts = [_lettering(one) for one in self.root.iter(f"{NAME}text")]
        self.lines = [
            LineString([(_f(one, "x1"), _f(one, "y1")), (_f(one, "x2"), _f(one, "y2"))])
            for one in self.root.iter(f"{NAME}line")
            if one.get("class") in ("dim", "tick", "edge", "heavy")
        ]
        self.pieces = [
            Polygon([tuple(map(float, spot.split(","))) for spot in one.get("points", "").split()])
            for one in self.root.iter(f"{NAME}polygon")
            if one.get("class") == "piece"
        ]
        self.rings = list(self.root.iter(f"{NAME}circle"))

    @property
    def title(self) -> str:
        return self.root.findtext(f"{NAME}title") or ""

    @property
    def description(self) -> str:
        return self.root.findtext(f"{NAME}desc") or ""

    def collisions(self) -> list[str]:
        """Texts that lie on one another or have a line through them."""
        found = []
        for index, one in enumerate(self.texts):
            found += [
                f"{one.text!r} on {other.text!r}"
                for other in self.texts[index + 1 :]
                if one.box.intersection(other.box).area > 0.01
            ]
            found += [f"{one.text!r} struck through" for line in self.lines if _struck(one.box, line)]
        return found

    def outside(self) -> list[str]:
        """Texts that leave the sheet."""
        left, top, across, down = map(float, self.root.get("viewBox", "").split())
        sheet = box(left, top, left + across, top + down)
        return [one.text for one in self.texts if not sheet.contains(one.box)]


def _struck(room: BaseGeometry, line: LineString) -> bool:
    # A tick may graze the empty corner of a text's room; through its middle half none may go.
    return bool(room.buffer(-1.5).intersection(line).length > 0)


def _f(element: ElementTree.Element, name: str) -> float:
    return float(element.get(name, "nan"))


def _lettering(element: ElementTree.Element) -> Lettering:
    text = element.text or ""
    x, y, size = _f(element, "x"), _f(element, "y"), _f(element, "font-size")
    across = len(text) * ADVANCE * size
    left = x if "s" in element.get("class", "").split() else x - across / 2
    shape = box(left, y - ASCENT * size, left + across, y + DESCENT * size)
    turn = re.fullmatch(r"rotate\((\S+) (\S+) (\S+)\)", element.get("transform", ""))
    if turn:
        degrees, about_x, about_y = map(float, turn.groups())
        assert not math.isnan(degrees)
        shape = rotate(shape, degrees, origin=(about_x, about_y))
    return Lettering(text, shape)
