"""The service as it is deployed, as processes of this machine: PostgreSQL, two replicas and the proxy with TLS.

The proxy reads deploy/proxy.conf itself; only its port, its replicas and its temporary folder are put in.
"""

import os
import re
import shlex
import shutil
import signal
import socket
import ssl
import subprocess
import sys
import tempfile
import time
from collections.abc import Collection, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import IO, Any

import httpx

import databases

ROOT = Path(__file__).parents[1]
DEPLOY = ROOT / "deploy"
NGINX = shutil.which("nginx") or ("/usr/sbin/nginx" if Path("/usr/sbin/nginx").exists() else None)
OPENSSL = shutil.which("openssl")
MISSING = ", ".join(name for name, path in (("nginx", NGINX), ("openssl", OPENSSL)) if not path)
"""What this machine lacks for a whole deployment."""
_START_SECONDS = 60.0


class Replica:
    """One service process.

    Attributes:
        port: Where it listens.
    """

    def __init__(
        self, database: str, *, output: IO[str] | None = None, cores: Collection[int] = (), **settings: str
    ) -> None:
        self.port = free_port()
        self._output = output
        self._cores = cores
        self._environment = {
            "PATH": os.environ["PATH"],
            "PYTHONPATH": str(ROOT / "service"),
            "LONGPOINT_DATABASE": database,
            "LONGPOINT_LOG_LEVEL": "warning",
            "LONGPOINT_ACCESS_LOG": "false",
            **settings,
        }
        self.process: subprocess.Popen[bytes] | None = None

    def start(self) -> None:
        """Start it and wait until it is ready."""
        self.begin()
        self.await_ready()

    def begin(self) -> None:
        """Start it, and return at once."""
        command = [sys.executable, "-m", "longpoint", "serve", "--port", str(self.port)]
        self.process = subprocess.Popen(command, env=self._environment, stderr=self._output)
        if self._cores:
            os.sched_setaffinity(self.process.pid, self._cores)

    def await_ready(self) -> None:
        """Wait until it is ready."""
        wait_until(lambda: self.ready() == 200, f"replica at port {self.port}", self.process)

    def ready(self) -> int:
        """The status of its readiness; 0 when it does not answer."""
        try:
            return httpx.get(f"http://127.0.0.1:{self.port}/health/ready", timeout=5).status_code
        except httpx.TransportError:
            return 0

    def tell_to_stop(self) -> None:
        """Ask it to stop, and return at once."""
        if self.process:
            self.process.send_signal(signal.SIGTERM)

    def stop(self) -> None:
        """Ask it to stop and wait until it has."""
        self.tell_to_stop()
        if self.process:
            self.process.wait(timeout=60)

    def kill(self) -> None:
        """End it as a crash would."""
        if self.process:
            self.process.kill()
            self.process.wait()


class Deployment:
    """All of it.

    Attributes:
        address: Of the proxy.
        database: Address of the database.
        server: The PostgreSQL server.
        replicas: The service processes.
        trust: What a client trusts the proxy's certificate by.
    """

    def __init__(self, folder: Path, server: Any, database: str, replicas: list[Replica]) -> None:
        port = free_port()
        self.address = f"https://localhost:{port}"
        self.server, self.database, self.replicas = server, database, replicas
        self._proxy = _start_proxy(folder, port, replicas)
        self.trust = ssl.create_default_context(cafile=str(folder / "deploy/tls/certificate.pem"))

    def client(self, **headers: str) -> httpx.Client:
        """A caller of the proxy."""
        return httpx.Client(base_url=self.address, verify=self.trust, headers=headers, timeout=30)

    def stop(self) -> None:
        """Stop everything but the database."""
        for replica in self.replicas:
            replica.kill()
        self._proxy.terminate()
        self._proxy.wait(timeout=30)


@contextmanager
def deployed(server: Any, cores: Collection[int] = (), **settings: str) -> Iterator[Deployment]:
    """A whole deployment, gone afterwards.

    Args:
        server: A PostgreSQL server.
        cores: The machine's cores that the replicas keep to; none lets them run on any.
        settings: LONGPOINT_* variables of both replicas.
    """
    with tempfile.TemporaryDirectory(prefix="longpoint-deployment-") as name:
        folder = Path(name)
        folder.chmod(0o755)  # the proxy's workers are another user
        database = databases.fresh_postgres(server)
        longpoint("migrate", "--database", database)
        replicas = [Replica(database, cores=cores, **settings) for _ in range(2)]
        deployment = None
        try:
            for replica in replicas:
                replica.begin()
            for replica in replicas:
                replica.await_ready()
            deployment = Deployment(folder, server, database, replicas)
            yield deployment
        finally:
            if deployment:
                deployment.stop()
            for replica in replicas:
                replica.kill()


def longpoint(*arguments: str) -> str:
    """Run a command of the service and give what it printed."""
    environment = {"PATH": os.environ["PATH"], "PYTHONPATH": str(ROOT / "service")}
    command = [sys.executable, "-m", "longpoint", *arguments]
    done = subprocess.run(command, env=environment, capture_output=True, text=True, check=True)
    return done.stdout.strip()


def documented_command(start: str) -> list[str]:
    """A command of the operators' notes, by how it starts."""
    text = (DEPLOY / "OPERATIONS.md").read_text().replace("\\\n", " ")
    found = re.search(rf"^ +({re.escape(start)}.*)$", text, re.MULTILINE)
    assert found, f"OPERATIONS.md has no command that starts with {start!r}"
    return shlex.split(found[1])


def free_port() -> int:
    """A port nobody listens on at the moment."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port: int = probe.getsockname()[1]
        return port


def wait_until(done: Any, what: str, process: subprocess.Popen[bytes] | None = None) -> None:
    """Wait until something is so, or the process that should bring it about has ended."""
    ends = time.monotonic() + _START_SECONDS
    while not done():
        if process and process.poll() is not None:
            raise RuntimeError(f"{what} ended with {process.returncode}")
        if time.monotonic() > ends:
            raise RuntimeError(f"{what}: not within {_START_SECONDS:g} s")
        time.sleep(0.05)


def _start_proxy(folder: Path, port: int, replicas: list[Replica]) -> subprocess.Popen[bytes]:
    (folder / "deploy/tls").mkdir(parents=True)
    subprocess.run(documented_command("openssl req"), cwd=folder, check=True, capture_output=True)
    configuration = (DEPLOY / "proxy.conf").read_text()
    configuration = configuration.replace("8443", f"127.0.0.1:{port}").replace("/tmp/", f"{folder}/")
    (folder / "deploy/nginx.conf").write_text(configuration)
    upstream = (DEPLOY / "upstream.conf").read_text()
    for name, replica in zip(("one", "two"), replicas, strict=True):
        upstream = upstream.replace(f"{name}:8000", f"127.0.0.1:{replica.port}")
    (folder / "deploy/upstream.conf").write_text(upstream)
    assert NGINX
    command = [NGINX, "-e", "stderr", "-p", str(folder), "-c", str(folder / "deploy/nginx.conf")]
    with (folder / "proxy.log").open("w") as log:
        process = subprocess.Popen([*command, "-g", "daemon off;"], stderr=log)
    wait_until(lambda: _listens(port), "the proxy", process)
    return process


def _listens(port: int) -> bool:
    with socket.socket() as probe:
        return probe.connect_ex(("127.0.0.1", port)) == 0
