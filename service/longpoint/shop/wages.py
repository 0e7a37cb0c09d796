"""What an hour of work costs."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

from longpoint.shop.takeoff import Task
from longpoint.values import Given, Price


class Wages(Given, frozen=True):
    """It says what an hour of hands-on work costs. Without either, labor has its hours and no money.

    Attributes:
        hour: An hour of any task that has no wage of its own.
        tasks: The tasks that cost otherwise.
    """

    hour: Price | None = None
    tasks: Annotated[dict[Task, Price], Meta(max_length=len(Task))] = {}

    def of(self, task: Task) -> int | None:
        """Price an hour of a task; None where it has no wage."""
        return self.tasks.get(task, self.hour)


NO_WAGES = Wages()
