"""`python -m longpoint`: serve the API, and look after its database and keys."""

import argparse
import sys

from longpoint import __version__
from longpoint.commands import COMMANDS


def main(arguments: list[str] | None = None) -> int:
    """Run one command and give its exit status."""
    parser = argparse.ArgumentParser(prog="longpoint", description="Sizes window and door trim, over HTTP.")
    parser.add_argument("--version", action="version", version=f"longpoint {__version__}")
    subparsers = parser.add_subparsers(required=True, metavar="command")
    for command in COMMANDS:
        subparser = subparsers.add_parser(command.NAME, help=command.HELP, description=command.HELP)
        command.add_arguments(subparser)
        subparser.set_defaults(run=command.run)
    chosen = parser.parse_args(arguments)
    status: int = chosen.run(chosen)
    return status


if __name__ == "__main__":
    sys.exit(main())
