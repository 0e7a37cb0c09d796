"""What the service did, for Prometheus: counted in plain dictionaries, put into its form only when it is asked for."""

from bisect import bisect_left
from collections.abc import Iterable
from typing import Any

from prometheus_client import CollectorRegistry, start_http_server
from prometheus_client.core import CounterMetricFamily, GaugeMetricFamily, HistogramMetricFamily
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
    """

    def __init__(self, gate: Gate, store: Store | None) -> None:
        self._gate = gate
        self._store = store
        self._answers: dict[tuple[str, int], int] = {}
        self._times: dict[str, list[int]] = {}
        self._seconds: dict[str, float] = {}
        self._names: dict[Any, str] = {None: _NONE}

    def note(self, handler: Any, status: int, seconds: float) -> None:
        """Count an answer.

        Args:
            handler: The route handler that gave it; None when there was none.
            status: Its status.
            seconds: How long it took.
        """
        name = self._names.get(handler)
        if name is None:
            name = self._names[handler] = handler.operation_id if operation_of(handler) else _NONE
        key = name, status
        self._answers[key] = self._answers.get(key, 0) + 1
        times = self._times.get(name)
        if times is None:
            times = self._times[name] = [0] * (len(_BOUNDS) + 1)
        times[bisect_left(_BOUNDS, seconds)] += 1
        self._seconds[name] = self._seconds.get(name, 0.0) + seconds

    def collect(self) -> Iterable[Metric]:
        """Everything counted, in Prometheus's form."""
        answers = CounterMetricFamily(
            "longpoint_requests", "Requests answered.", labels=["operation", "status"]
        )
        for (name, status), count in list(self._answers.items()):
            answers.add_metric([name, str(status)], count)
        yield answers
        times = HistogramMetricFamily("longpoint_request_seconds", "Time to answer.", labels=["operation"])
        for name, counts in list(self._times.items()):
            total, buckets = 0, []
            for bound, count in zip((*map(str, _BOUNDS), "+Inf"), list(counts), strict=True):
                total += count
                buckets.append((bound, total))
            times.add_metric([name], buckets, self._seconds[name])
        yield times
        away = CounterMetricFamily(
            "longpoint_turned_away", "Requests turned away for too much.", labels=["too_much"]
        )
        for reason, count in self._gate.turned_away.items():
            away.add_metric([reason], count)
        yield away
        yield GaugeMetricFamily("longpoint_under_way", "Requests being answered.", self._gate.under_way)
        if self._store:
            pool: Any = self._store.engine.pool
            yield GaugeMetricFamily(
                "longpoint_database_connections", "Database connections in use.", pool.checkedout()
            )
        version = GaugeMetricFamily("longpoint_build", "The version, as a label.", labels=["version"])
        version.add_metric([__version__], 1)
        yield version


class MetricsServer:
    """Answers GET /metrics at a port of its own, so that it is reached only from where that port is.

    Args:
        meter: What is counted.
        host: Address to listen on.
        port: Port to listen on.
    """

    def __init__(self, meter: Meter, host: str, port: int) -> None:
        self._registry = CollectorRegistry()
        self._registry.register(meter)
        for further in (ProcessCollector, PlatformCollector, GCCollector):
            further(registry=self._registry)
        self._address = host, port
        self._server: Any = None

    def start(self) -> None:
        """Begin to listen."""
        host, port = self._address
        self._server, self._thread = start_http_server(port, host, self._registry)

    def stop(self) -> None:
        """Listen no more."""
        if self._server:
            self._server.shutdown()
            self._server.server_close()
            self._thread.join()
