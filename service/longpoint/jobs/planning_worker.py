"""A process that plans cuttings for a server: `python -m longpoint.jobs.planning_worker`.

It reads cuttings, or what makes them, from its standard input and writes what it finds to its standard output, both as
pickles behind their length. It ends when its input does, in the middle of work too, so that none outlives its server.
"""

from __future__ import annotations

import os
import pickle
import struct
import sys
from collections.abc import Callable, Sequence
from queue import SimpleQueue
from threading import Thread
from typing import IO, Any, Protocol, TypeVar

from longpoint.stock import Budget, Cutting, Progress, Replanned, Standing, StockError, replan
from longpoint.values import Refusal

Task = tuple[Cutting, tuple[Standing, ...]]
"""A cutting, and the sticks of an earlier plan that are to be kept where that costs nothing."""
Outcome = Replanned | StockError | None
"""The plan that was found, why there is none, or None when time ran out."""

Made_co = TypeVar("Made_co", covariant=True)
BETWEEN = 0.05  # seconds between two bounds that are reported
LENGTH = struct.Struct(">I")


def write(stream: IO[bytes], message: Any) -> None:
    """Send one message."""
    body = pickle.dumps(message)
    stream.write(LENGTH.pack(len(body)) + body)
    stream.flush()


def read(stream: IO[bytes]) -> Any:
    """The next message.

    Raises:
        EOFError: when there are no more.
    """
    head = stream.read(LENGTH.size)
    if len(head) < LENGTH.size:
        raise EOFError
    body = stream.read(LENGTH.unpack(head)[0])
    return pickle.loads(body)


class Prepared(Protocol[Made_co]):
    """Work of which a search is the longest part."""

    @property
    def tasks(self) -> tuple[Task, ...]:
        """What is to be searched."""

    def finish(self, outcomes: Sequence[Outcome]) -> Made_co:
        """What comes of it, from what was found for each task.

        Raises:
            Refusal: when nothing can come of it.
        """


class Searched(Protocol[Made_co]):
    """Work as it is sent here: all of it but what the search finds can be made from it."""

    def prepare(self) -> Prepared[Made_co]:
        """What is to be searched, and what to do then.

        Raises:
            Refusal: when it cannot be done.
        """


class Heard:
    """What a listener heard last: every better plan, and a better bound when some time has gone."""

    def __init__(self) -> None:
        self._cost = -1
        self._seconds = 0.0

    def due(self, step: Progress) -> bool:
        """Whether to report this step."""
        due = step.cost_cents != self._cost or step.seconds >= self._seconds + BETWEEN
        due = due or step.cost_cents == step.bound_cents
        if due:
            self._cost, self._seconds = step.cost_cents, step.seconds
        return due


def plan_all(tasks: tuple[Task, ...], seconds: float, send: Callable[[Any], None]) -> list[Outcome]:
    """Plan the cuttings one after the other, those with the fewest pieces first, within the seconds for all.

    What a cutting leaves of its share goes to those after it, counted as work rather than time, so that the same
    cuttings get the same plans.
    """
    outcomes: list[Outcome] = [None] * len(tasks)
    order = sorted(range(len(tasks)), key=lambda index: (len(tasks[index][0].pieces), index))
    left = seconds
    for done, index in enumerate(order):
        share = left / (len(order) - done)

        heard = Heard()

        def report(step: Progress, index: int = index, heard: Heard = heard) -> None:
            if heard.due(step):
                send(("progress", index, step))

        def found(better: Replanned, index: int = index) -> None:
            send(("found", index, better))

        try:
            result = replan(*tasks[index], Budget(share), report, found)
        except StockError as refused:
            outcomes[index] = refused
            left -= share
        else:
            outcomes[index] = result
            left -= min(share, result.plan.work)
        send(("found", index, outcomes[index]))
    return outcomes


def do(job: Searched[Any], seconds: float, send: Callable[[Any], None]) -> None:
    """Prepare a job, search, and send what comes of it."""
    try:
        prepared = job.prepare()
        send(("prepared", -1, any(standing for _, standing in prepared.tasks)))
        outcomes = plan_all(prepared.tasks, seconds, lambda message: _report(prepared.tasks, message, send))
        send(("searched", -1, None))
        send(("made", -1, prepared.finish(outcomes)))
    except Refusal as refused:
        send(("refusal", -1, refused))


def _report(tasks: tuple[Task, ...], message: Any, send: Callable[[Any], None]) -> None:
    """Send only how far a search has come: what it found goes into what is made."""
    kind, index, what = message
    if kind == "progress":
        send((kind, tasks[index][0].profile, what))


def main() -> None:
    """Serve until the input ends."""
    out = os.fdopen(os.dup(1), "wb")
    os.dup2(os.open(os.devnull, os.O_WRONLY), 1)  # the solver's greeting is no message
    waiting: SimpleQueue[Any] = SimpleQueue()

    def listen() -> None:
        while True:
            try:
                waiting.put(read(sys.stdin.buffer))
            except EOFError:
                os._exit(0)

    def send(message: Any) -> None:
        try:
            write(out, message)
        except BrokenPipeError:  # the server was killed
            os._exit(0)

    Thread(target=listen, daemon=True).start()
    send(("ready", -1, None))
    while True:
        work, seconds = waiting.get()
        if isinstance(work, list):
            plan_all(tuple(work), seconds, send)
            send(("done", -1, None))
        else:
            do(work, seconds, send)


if __name__ == "__main__":
    main()
