"""A process that plans cuttings for a server: `python -m longpoint.api.running.planning_worker`.

It reads cuttings from its standard input and writes what it finds to its standard output, both as pickles behind
their length. It ends when its input does, in the middle of work too, so that none outlives its server.
"""

from __future__ import annotations

import os
import pickle
import struct
import sys
from collections.abc import Callable
from queue import SimpleQueue
from threading import Thread
from typing import IO, Any

from longpoint.stock import Budget, Cutting, Progress, Replanned, Standing, StockError, replan

Task = tuple[Cutting, tuple[Standing, ...]]
"""A cutting, and the sticks of an earlier plan that are to be kept where that costs nothing."""

BETWEEN = 0.05  # seconds between two bounds that are told
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


class Told:
    """What a listener heard last: every better plan, and a better bound when some time has gone."""

    def __init__(self) -> None:
        self._cost = -1
        self._seconds = 0.0

    def due(self, step: Progress) -> bool:
        """Whether to tell of this step."""
        due = step.cost_cents != self._cost or step.seconds >= self._seconds + BETWEEN
        due = due or step.cost_cents == step.bound_cents
        if due:
            self._cost, self._seconds = step.cost_cents, step.seconds
        return due


def plan_all(tasks: tuple[Task, ...], seconds: float, send: Callable[[Any], None]) -> None:
    """Plan the cuttings one after the other, those with the fewest pieces first, within the seconds for all.

    What a cutting leaves of its share goes to those after it, counted as work rather than time, so that the same
    cuttings get the same plans.
    """
    order = sorted(range(len(tasks)), key=lambda index: (len(tasks[index][0].pieces), index))
    left = seconds
    for done, index in enumerate(order):
        share = left / (len(order) - done)

        told = Told()

        def tell(step: Progress, index: int = index, told: Told = told) -> None:
            if told.due(step):
                send(("progress", index, step))

        def found(better: Replanned, index: int = index) -> None:
            send(("better", index, better))

        try:
            result = replan(*tasks[index], Budget(share), tell, found)
        except StockError as refused:
            send(("refused", index, refused.faults))
            left -= share
        else:
            send(("planned", index, result))
            left -= min(share, result.plan.work)
    send(("done", -1, None))


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

    Thread(target=listen, daemon=True).start()
    write(out, ("ready", -1, None))
    while True:
        tasks, seconds = waiting.get()
        plan_all(tasks, seconds, lambda message: write(out, message))


if __name__ == "__main__":
    main()
