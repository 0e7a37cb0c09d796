"""Serve the API."""

import argparse
import sys

import msgspec
import uvicorn

from longpoint.log import configuration
from longpoint.settings import Settings, SettingsError

NAME = "serve"
HELP = "Serve the API over HTTP until interrupted."


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare the command's arguments; what is left out comes from LONGPOINT_* variables."""
    parser.add_argument("--host", help="address to listen on")
    parser.add_argument("--port", type=int, help="port to listen on; 0 picks a free one")


def run(chosen: argparse.Namespace) -> int:
    """Serve; on SIGINT or SIGTERM finish the answers under way and stop."""
    try:
        settings = Settings.from_environment()
    except SettingsError as refusal:
        print(f"longpoint: {refusal}", file=sys.stderr)
        return 2
    given = {name: getattr(chosen, name) for name in ("host", "port") if getattr(chosen, name) is not None}
    settings = msgspec.structs.replace(settings, **given)
    uvicorn.run(
        "longpoint.app:create_app_from_environment",
        factory=True,
        host=settings.host,
        port=settings.port,
        workers=settings.workers,
        loop="auto" if sys.platform == "win32" else "uvloop",
        http="httptools",
        ws="none",
        access_log=False,
        log_config=configuration(settings.log_level),
        server_header=False,
        timeout_graceful_shutdown=settings.drain_seconds,
    )
    return 0
