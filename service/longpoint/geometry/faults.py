"""What geometry refuses, and why."""

from __future__ import annotations

from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing wrong with an opening.

    Attributes:
        path: attribute names from the opening down to the field at fault.
        code: a stable kebab-case name.
        detail: what is wrong and what to measure or change.
    """

    path: tuple[str | int, ...]
    code: str
    detail: str

    def under(self, *prefix: str | int) -> Fault:
        """The same fault, seen from further up."""
        return Fault((*prefix, *self.path), self.code, self.detail)


class GeometryError(ValueError):
    """An opening that cannot be built as described; carries every fault found."""

    def __init__(self, faults: tuple[Fault, ...]) -> None:
        super().__init__("; ".join(f.detail for f in faults))
        self.faults = faults


@dataclass(slots=True)
class Faults:
    """Gathers faults so that all are told at once."""

    found: list[Fault] = field(default_factory=list)

    def add(self, path: tuple[str | int, ...], code: str, detail: str) -> None:
        self.found.append(Fault(path, code, detail))

    def raise_any(self) -> None:
        if self.found:
            raise GeometryError(tuple(self.found))
