"""OpenTelemetry traces: one span for each request. Imported, and so paid for, only where traces are sent.

Needs the `traces` extra.
"""

from typing import Any

from litestar.types import ASGIApp, Receive, Send
from opentelemetry import propagate
from opentelemetry.sdk.resources import Resource
from opentelemetry.sdk.trace import TracerProvider
from opentelemetry.sdk.trace.export import BatchSpanProcessor, SpanExporter
from opentelemetry.trace import SpanKind, Status, StatusCode

from longpoint import __version__
from longpoint.api.http.frame import REQUEST_ID


class Traced:
    """Wraps the whole application.

    A span is named by the method and the route, never by the path asked for, and holds no body, query or key. It
    belongs to the trace that a traceparent header names.

    Args:
        app: What answers.
        exporter: Where spans go.
    """

    def __init__(self, app: ASGIApp, exporter: SpanExporter) -> None:
        self.app = app
        resource = Resource.create({"service.name": "longpoint", "service.version": __version__})
        self._provider = TracerProvider(resource=resource)
        self._provider.add_span_processor(BatchSpanProcessor(exporter))
        self._tracer = self._provider.get_tracer("longpoint", __version__)

    async def __call__(self, scope: Any, receive: Receive, send: Send) -> None:
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return
        carried = {name.decode("latin-1"): value.decode("latin-1") for name, value in scope["headers"]}
        parent = propagate.extract(carried)
        method: str = scope["method"]
        with self._tracer.start_as_current_span(
            method, parent, SpanKind.SERVER, {"http.request.method": method, "url.scheme": scope["scheme"]}
        ) as span:

            async def send_noted(message: Any) -> None:
                if message["type"] == "http.response.start":
                    status: int = message["status"]
                    span.set_attribute("http.response.status_code", status)
                    if status >= 500:
                        span.set_status(Status(StatusCode.ERROR))
                await send(message)

            await self.app(scope, receive, send_noted)
            if handler := scope.get("route_handler"):
                route = min(handler.paths)
                span.update_name(f"{method} {route}")
                span.set_attribute("http.route", route)
            span.set_attribute("longpoint.request_id", scope["state"][REQUEST_ID])

    def close(self) -> None:
        """Send what is waiting."""
        self._provider.shutdown()
