"""Serve the API."""

import argparse
import asyncio
import sys
from ipaddress import ip_address

import msgspec
import uvicorn

from longpoint.log import configuration
from longpoint.schedules.errors import StorageError
from longpoint.schedules.keys import any_key
from longpoint.schedules.store import Store
from longpoint.server import Protocol
from longpoint.settings import Settings, SettingsError

NAME = "serve"
HELP = "Serve the API over HTTP until interrupted."
KEEP_ALIVE_SECONDS = 30
"""How long an idle connection is kept: longer than a proxy in front keeps its own, so that the proxy closes first."""


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
    try:
        asyncio.run(_refuse_unready(settings))
    except (StorageError, SettingsError) as refusal:
        print(f"longpoint: {refusal}", file=sys.stderr)
        return 2
    uvicorn.run(
        "longpoint.app:create_app_from_environment",
        factory=True,
        host=settings.host,
        port=settings.port,
        workers=settings.workers,
        loop="auto" if sys.platform == "win32" else "uvloop",
        http=Protocol,
        ws="none",
        access_log=False,
        log_config=configuration(settings.log_level),
        server_header=False,
        proxy_headers=bool(settings.trusted_proxies),
        forwarded_allow_ips=settings.trusted_proxies,
        timeout_keep_alive=KEEP_ALIVE_SECONDS,
        timeout_graceful_shutdown=settings.drain_seconds,
    )
    return 0


async def _refuse_unready(settings: Settings) -> None:
    """Make sure that the database can be worked with, and that a service others can reach asks for keys.

    Raises:
        StorageError: when the database is out of reach or of another revision.
        SettingsError: when it would be open to everybody on the network.
    """
    keyed = False
    if settings.database:
        store = Store(settings.database)
        try:
            await store.refuse_wrong_schema(next_too=True)
            async with store.reading() as connection:
                keyed = await any_key(connection)
        finally:
            await store.close()
    if not keyed and not _is_loopback(settings.host):
        raise SettingsError(
            f"no keys are made, so anybody who reaches {settings.host} could read and change everything; make a key "
            "with `python -m longpoint keys create --name NAME`, or listen on 127.0.0.1"
        )


def _is_loopback(host: str) -> bool:
    try:
        return ip_address(host.strip("[]")).is_loopback
    except ValueError:
        return host == "localhost"
