"""Check the database."""

import argparse

from longpoint.commands.with_store import add_database, run_with_store
from longpoint.schedules.check import check_store
from longpoint.schedules.store import Store

NAME = "check"
HELP = "Check that the database is whole and that what stands follows from its history."


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare the command's arguments."""
    add_database(parser)


def run(chosen: argparse.Namespace) -> int:
    """Check; status 1 when something is wrong, with a line for each thing."""

    async def work(store: Store) -> int:
        wrong = await check_store(store)
        print("\n".join(wrong) if wrong else f"{store.name}: nothing wrong")
        return 1 if wrong else 0

    return run_with_store(chosen, work)
