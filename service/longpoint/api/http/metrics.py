"""What the service did, for Prometheus, at a port of its own. Imported, and so paid for, only where it is asked for."""

from collections.abc import Iterable
from functools import cache
from typing import Any

from prometheus_client import CollectorRegistry, Counter, Histogram, start_http_server
from prometheus_client.core import CounterMetricFamily, GaugeMetricFamily
from prometheus_client.gc_collector import GCCollector
from prometheus_client.metrics_core import Metric
from prometheus_client.platform_collector import PlatformCollector
from prometheus_client.process_collector import ProcessCollector
from prometheus_client.registry import Collector

from longpoint import __version__
from longpoint.api.http.gate import Gate
from longpoint.api.http.operation import operation_of
from longpoint.schedules.store import Store

_BOUNDS = (0.0005, 0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1.0, 2.5, 5.0, 10.0)
_NONE = "none"
"""What requests of no operation are counted under: pages, files and addresses where nothing is."""


class Meter(Collector):
    """Counts answers by operation and status, and how long they took.

    Args:
        gate: Which knows what is under way and what was turned away.
        store: Whose connections are counted; None when nothing is stored.
        host: Address where they are read.
        port: Port where they are read.
    """

    def __init__(self, gate: Gate, store: Store | None, host: str, port: int) -> None:
        self._gate = gate
        self._address = host, port
        self._pool: Any = store.engine.pool if store else None
        self._server: Any = None
        self._registry = registry = CollectorRegistry()
        answers = Counter(
            "longpoint_requests", "Requests answered.", ["operation", "status"], registry=registry
        )
        times = Histogram(
            "longpoint_request_seconds", "Time to answer.", ["operation"], registry=registry, buckets=_BOUNDS
        )
        # Looked up once each: that costs more than counting.
        self._answers = cache(answers.labels)
        self._times = cache(times.labels)
        registry.register(self)
        for further in (ProcessCollector, PlatformCollector, GCCollector):
            further(registry=registry)

    def note(self, handler: Any, status: int, seconds: float) -> None:
        """Count an answer.

        Args:
            handler: The route handler that gave it; None when there was none.
            status: Its status.
            seconds: How long it took.
        """
        said = operation_of(handler) if handler else None
        name = said.id if said else _NONE
        self._answers(name, status).inc()
        self._times(name).observe(seconds)

    def start(self) -> None:
        """Answer GET /metrics at a port of its own, so that it is reached only from where that port is."""
        host, port = self._address
        self._server, self._thread = start_http_server(port, host, self._registry)

    def stop(self) -> None:
        """Listen no more."""
        if self._server:
            self._server.shutdown()
            self._server.server_close()
            self._thread.join()

    def collect(self) -> Iterable[Metric]:
        """What the gate and the store know of their own accord."""
        away = CounterMetricFamily(
            "longpoint_turned_away", "Requests turned away for too much.", labels=["too_much"]
        )
        for reason, count in self._gate.turned_away.items():
            away.add_metric([reason], count)
        yield away
        yield GaugeMetricFamily("longpoint_under_way", "Requests being answered.", self._gate.under_way)
        if self._pool:
            in_use = self._pool.checkedout()
            yield GaugeMetricFamily("longpoint_database_connections", "Database connections in use.", in_use)
        build = GaugeMetricFamily("longpoint_build", "The version, as a label.", labels=["version"])
        build.add_metric([__version__], 1)
        yield build
