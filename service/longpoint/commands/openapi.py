"""Write the OpenAPI document."""

import argparse
import sys

from longpoint.api.document.openapi import document_bytes

NAME = "openapi"
HELP = "Write the OpenAPI document of the API to standard output."


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """This command takes no arguments."""


def run(chosen: argparse.Namespace) -> int:  # noqa: ARG001
    """Write the document."""
    sys.stdout.buffer.write(document_bytes())
    return 0
