"""What is wrong with a cutting, every fault gathered before anything is refused."""

from dataclasses import dataclass

from longpoint.texts import Sentence

__all__ = ["StockError", "StockFault"]


@dataclass(frozen=True, slots=True)
class StockFault:
    """One thing wrong with a cutting.

    Attributes:
        field: path inside the cutting, e.g. ``("pieces", 3, "length")``.
        code: stable short name of the fault, e.g. ``"piece_too_long"``.
        detail: what is wrong and what to do.
    """

    field: tuple[str | int, ...]
    code: str
    detail: Sentence


class StockError(ValueError):
    """A cutting that cannot be planned.

    Attributes:
        faults: every fault found, in the order of the cutting's fields.
    """

    def __init__(self, faults: tuple[StockFault, ...]) -> None:
        super().__init__(faults)
        self.faults = faults

    def __str__(self) -> str:
        return "; ".join(str(fault.detail) for fault in self.faults)

    def __reduce__(self) -> tuple[type["StockError"], tuple[tuple[StockFault, ...]]]:
        """Cross a process boundary with the faults whole."""
        return StockError, (self.faults,)
