"""The cutting as whole numbers: equal pieces gathered, equal stock gathered, every length in one small unit."""

from dataclasses import dataclass

from longpoint.lengths import Fraction

__all__ = [
    "Counts",
    "Form",
    "FormPiece",
    "Item",
    "Pattern",
    "PieceGroup",
    "ScaledCutting",
    "Span",
    "StockGroup",
]

Span = tuple[int, int]
Counts = tuple[tuple[int, int], ...]  # the items that there are some of, rising, and how many of each


@dataclass(frozen=True, slots=True)
class PieceGroup:
    """Pieces that are the same to the saw.

    Attributes:
        length: units.
        left: what sharing the cut of one miter saves against a kerf; zero on stock that cannot be turned.
        right: the same of the other.
        cuts: what the cut at the left and at the right end takes when it cuts the piece off the stick.
        runs: inches both miters run.
        lines: the cutting's piece lines that are of it, and whether that line has its ends the other way about.
    """

    length: int
    left: int
    right: int
    cuts: tuple[int, int]
    runs: tuple[Fraction, Fraction]
    lines: tuple[tuple[int, bool], ...]


@dataclass(frozen=True, slots=True)
class FormPiece:
    """A piece within a form.

    Attributes:
        kind: index of its kind.
        reversed: whether it lies end for end.
        shares: whether its left end is cut together with the piece before.
    """

    kind: int
    reversed: bool = False
    shares: bool = False


@dataclass(frozen=True, slots=True)
class Form:
    """One way an item can lie on a stick.

    Attributes:
        item: index of the item.
        length: units from its left-most to its right-most point.
        left: what a shared cut at its left end saves against a kerf, zero when that end shares no cut; ends that
            save the same are alike.
        right: the same at its right end.
        eats: what the cut at its right end takes when it is not shared.
        pieces: the pieces of it, from left to right.
    """

    item: int
    length: int
    left: int
    right: int
    eats: int
    pieces: tuple[FormPiece, ...]


@dataclass(frozen=True, slots=True)
class Item:
    """What is placed as one: a piece, or all pieces of an opening that stay together.

    Attributes:
        demand: how many are to be cut.
        forms: the ways it can lie.
        weight: the least length a form takes, less half of what its shared cuts may save.
        cut: the least that a cut after it takes, as long as that is not shared.
        openings: for a gathered opening, the openings that are this item, one for each of the demand.
    """

    demand: int
    forms: tuple[Form, ...]
    weight: Fraction
    cut: int
    openings: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class StockGroup:
    """Sticks that are all alike.

    Attributes:
        keys: names of them; one for a kind that is bought, one each for lengths on hand.
        on_hand: whether they are lengths on hand.
        length: units, end to end.
        start: where the first piece may start.
        end: where the last piece must have ended.
        blocked: defects between, sorted, none touching another.
        price: cents each.
        most: how many there are, or None.
    """

    keys: tuple[str, ...]
    on_hand: bool
    length: int
    start: int
    end: int
    blocked: tuple[Span, ...]
    price: int
    most: int | None

    @property
    def clear(self) -> int:
        """Units a piece may take, all clear stretches together."""
        return sum(self.stretches)

    @property
    def stretches(self) -> tuple[int, ...]:
        """Units between the defects, as far as there are any."""
        edges = [self.start, *(edge for span in self.blocked for edge in span), self.end]
        pairs = zip(edges[::2], edges[1::2], strict=True)
        lengths = (min(to, self.end) - max(since, self.start) for since, to in pairs)
        return tuple(length for length in lengths if length > 0)


@dataclass(frozen=True, slots=True)
class Pattern:
    """Forms laid on a stick from left to right, each as far left as it goes."""

    stock: int
    forms: tuple[Form, ...]


@dataclass(frozen=True, slots=True)
class ScaledCutting:
    """The whole cutting in units.

    Attributes:
        unit: inches in one unit.
        kerf: units one square cut eats.
        kinds: the distinct pieces.
        items: longest first.
        stocks: what to cut from, of a use to any item.
        split: openings that no stick holds whole.
    """

    unit: Fraction
    kerf: int
    kinds: tuple[PieceGroup, ...]
    items: tuple[Item, ...]
    stocks: tuple[StockGroup, ...]
    split: tuple[str, ...]

    @property
    def spare(self) -> int:
        """What the last cut on a stick takes at most, which may lie past the stick's end."""
        return max(item.cut for item in self.items)

    def start_after(self, stock: StockGroup, before: Form | None, end: int, form: Form) -> int | None:
        """Where ``form`` starts, laid after ``before`` that ended at ``end``; None when it does not fit."""
        if before is None:
            start = stock.start
        else:
            start = end + before.eats
            if before.right and before.right == form.left:
                shared = end + self.kerf - form.left
                if _clear(stock, shared, shared + form.length) == shared:
                    return shared
        return _clear(stock, start, start + form.length)

    def shares(self, before: Form | None, end: int, start: int) -> bool:
        """Whether a form that starts there shares its cut with the one before."""
        return before is not None and start < end + self.kerf

    def places(self, pattern: Pattern) -> tuple[int, ...] | None:
        """Where each form of the pattern starts, or None when they do not all fit."""
        stock = self.stocks[pattern.stock]
        starts: list[int] = []
        before: Form | None = None
        end = 0
        for form in pattern.forms:
            start = self.start_after(stock, before, end, form)
            if start is None:
                return None
            starts.append(start)
            before, end = form, start + form.length
        return tuple(starts)


def _clear(stock: StockGroup, start: int, end: int) -> int | None:
    for from_, to in stock.blocked:
        if start < to and end > from_:
            start, end = to, to + end - start
    return start if end <= stock.end else None
