"""Work on the jobs of a service, on any machine that reaches its database."""

import argparse
import asyncio
import contextlib
import logging.config
import os
import signal
import sys

import msgspec

from longpoint.app import create_app
from longpoint.log import configuration
from longpoint.schedules.errors import StorageError
from longpoint.settings import Settings, SettingsError

NAME = "work"
HELP = "Do long work that services over the same PostgreSQL database were asked for, until interrupted."

_NICENESS = 10
"""How far long work gives way to whatever else is done on its machine: to callers who wait for an answer."""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare the command's arguments; what is left out comes from LONGPOINT_* variables."""
    parser.add_argument("--at-once", type=int, help="jobs to work on at a time, two or more")


def run(chosen: argparse.Namespace) -> int:
    """Work; on SIGINT or SIGTERM take no more jobs, finish what is under way or give it back, and stop."""
    try:
        settings = Settings.from_environment()
        if not settings.over_postgresql:
            raise SettingsError(
                "workers need a PostgreSQL database, over which services hand them their jobs"
            )
        at_once = settings.jobs_at_once if chosen.at_once is None else max(2, chosen.at_once)
        # As many planning processes as jobs: none of them waits for another here.
        settings = msgspec.structs.replace(settings, jobs="here", jobs_at_once=at_once, planners=at_once)
        logging.config.dictConfig(configuration(settings.log_level))
        asyncio.run(_work(settings))
    except (StorageError, SettingsError) as refusal:
        print(f"longpoint: {refusal}", file=sys.stderr)
        return 2
    return 0


async def _work(settings: Settings) -> None:
    if hasattr(os, "nice"):
        os.nice(_NICENESS)
    app = create_app(settings)
    log = logging.getLogger("longpoint.jobs")
    told = asyncio.Event()
    for number in (signal.SIGTERM, signal.SIGINT):
        with contextlib.suppress(NotImplementedError):  # where the system knows no signals, it is interrupted
            asyncio.get_running_loop().add_signal_handler(number, told.set)
    try:
        await app.state.store.refuse_wrong_schema(next_too=True)
        await app.state.jobs.start()
        log.info("working on %d jobs at a time", settings.jobs_at_once)
        await told.wait()
        log.info("stopping: %d s for what is under way", settings.drain_seconds)
    finally:
        await app.state.jobs.close(settings.drain_seconds)
        await app.state.searches.close()
        await app.state.planning.close()
        await app.state.access.close()
        await app.state.store.close()
