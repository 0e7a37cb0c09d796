"""The commands of `python -m longpoint`, one module for each."""

import argparse
from typing import Protocol, cast

from longpoint.commands import (
    backup,
    check,
    convert_export,
    keys,
    migrate,
    openapi,
    restore,
    serve,
    settings,
    work,
)


class Command(Protocol):
    """What a module here offers."""

    NAME: str
    HELP: str

    def add_arguments(self, parser: argparse.ArgumentParser) -> None:
        """Declare the command's arguments."""

    def run(self, chosen: argparse.Namespace) -> int:
        """Run the command; gives the exit status."""


COMMANDS = [
    cast("Command", module)
    for module in (serve, work, migrate, keys, backup, restore, check, convert_export, openapi, settings)
]
"""Every command, in the order the help lists them."""
