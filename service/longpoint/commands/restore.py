"""Fill an empty database from a backup."""

import argparse
from pathlib import Path

from longpoint.commands.with_store import add_database, run_with_store
from longpoint.schedules.backup import restore
from longpoint.schedules.store import Store

NAME = "restore"
HELP = "Fill an empty, migrated database from a backup; of either kind, whichever the backup was made from."


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare the command's arguments."""
    add_database(parser)
    parser.add_argument("file", type=Path, help="the backup")


def run(chosen: argparse.Namespace) -> int:
    """Restore."""

    async def work(store: Store) -> int:
        print(f"{await restore(store, chosen.file)} rows of {chosen.file} are in {store.name}")
        return 0

    return run_with_store(chosen, work)
