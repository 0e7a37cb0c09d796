"""The refusal that carries what was wrong with a request, all of it in one answer."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Self

from longpoint.api.http.problems import Problem
from longpoint.values import Fault, Faults


class InvalidRequest(Problem, status=422, title="The request was read, but cannot be done as it stands"):
    """Each of the errors says where (a JSON pointer into the body, a parameter or a header), what was wrong and what to
    send, measure or change. All that could be found is listed at once. Nothing was saved."""

    @classmethod
    def of(cls, faults: Iterable[Fault], omitted: int = 0) -> Self:
        """One refusal with every fault that was gathered, and how many more there were."""
        found = list(faults)
        count = len(found) + omitted
        detail = found[0].detail if count == 1 else f"{count} things in the request are wrong."
        if omitted:
            detail += f" The first {len(found)} are listed."
        return cls(detail, found)


def refuse_any(faults: Faults) -> None:
    """Refuse the request if anything was noted.

    Raises:
        InvalidRequest: carrying every fault.
    """
    if faults:
        raise InvalidRequest.of(faults, faults.omitted)
