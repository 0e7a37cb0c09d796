"""Write a backup of the database."""

import argparse
from pathlib import Path

from longpoint.commands.with_store import add_database, run_with_store
from longpoint.schedules.backup import back_up
from longpoint.schedules.store import Store

NAME = "backup"
HELP = "Write every row of the database into one compressed file, while the service runs."


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare the command's arguments."""
    add_database(parser)
    parser.add_argument("file", type=Path, help="the file to write; it must not be there yet")


def run(chosen: argparse.Namespace) -> int:
    """Back up."""

    async def work(store: Store) -> int:
        print(f"{await back_up(store, chosen.file)} rows of {store.name} are in {chosen.file}")
        return 0

    return run_with_store(chosen, work)
