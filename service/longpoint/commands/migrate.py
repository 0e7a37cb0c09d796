"""Bring the database to a revision."""

import argparse

from longpoint.commands.with_store import add_database, run_with_store
from longpoint.schedules.migrate import migrate
from longpoint.schedules.store import Store

NAME = "migrate"
HELP = "Bring the database to the revision this service works with, or to another."


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare the command's arguments."""
    add_database(parser)
    parser.add_argument(
        "--to", default="head", help='a revision such as 0001, "head" (the newest) or "base" (none)'
    )


def run(chosen: argparse.Namespace) -> int:
    """Migrate."""

    async def work(store: Store) -> int:
        before, after = await migrate(store, chosen.to)
        moved = (
            f"from {before or 'nothing'} to {after or 'nothing'}"
            if before != after
            else f"at {after} already"
        )
        print(f"{store.name}: {moved}")
        return 0

    return run_with_store(chosen, work, create=True, any_schema=True)
