"""Metrics and traces: off unless asked for, and what they say when they are on."""

import json
import subprocess
import sys
import urllib.request

import httpx
import pytest
from prometheus_client.parser import text_string_to_metric_families

from deployment import free_port
from longpoint.app import create_app
from longpoint.settings import Settings, SettingsError

ASK = {"lengths": ["30 5/8 in"]}


def calling(app):
    return httpx.AsyncClient(transport=httpx.ASGITransport(app=app), base_url="http://longpoint")


def scrape(port: int) -> dict[tuple[str, tuple[str, ...]], float]:
    """Every sample by name and label values, as Prometheus reads them."""
    with urllib.request.urlopen(f"http://127.0.0.1:{port}/metrics") as answer:
        text = answer.read().decode()
    return {
        (sample.name, tuple(sample.labels.values())): sample.value
        for family in text_string_to_metric_families(text)
        for sample in family.samples
    }


async def test_metrics_count_by_operation_and_never_by_path(sqlite_database):
    port = free_port()
    app = create_app(Settings(access_log=False, metrics_port=port, database=sqlite_database))
    async with app.lifespan(), calling(app) as client:
        await client.post("/v1/lengths", json=ASK)
        await client.post("/v1/lengths", json=ASK)
        await client.post("/v1/lengths", json={})
        for name in range(3):
            await client.get(f"/v1/schedules/{name}")
            await client.get(f"/nothing/{name}")
        app.asgi_handler.app.turned_away["waiting"] += 1
        found = scrape(port)
        assert (await client.get("/metrics")).status_code == 404
    assert found["longpoint_requests_total", ("read_lengths", "200")] == 2
    assert found["longpoint_requests_total", ("read_lengths", "422")] == 1
    assert found["longpoint_requests_total", ("get_schedule", "404")] == 3
    assert found["longpoint_requests_total", ("none", "404")] == 3
    assert found["longpoint_request_seconds_count", ("read_lengths",)] == 3
    assert found["longpoint_request_seconds_bucket", ("+Inf", "read_lengths")] == 3
    assert found["longpoint_request_seconds_sum", ("read_lengths",)] > 0
    assert found["longpoint_turned_away_total", ("waiting",)] == 1
    assert found["longpoint_under_way", ()] == 0
    assert found["longpoint_database_connections", ()] == 0
    assert found["process_resident_memory_bytes", ()] > 1e6
    with pytest.raises(OSError, match="refused"):
        scrape(port)


def test_metrics_of_several_workers_are_refused_rather_than_wrong():
    with pytest.raises(SettingsError, match="LONGPOINT_METRICS_PORT needs LONGPOINT_WORKERS=1"):
        Settings.from_environment({"LONGPOINT_METRICS_PORT": "9100", "LONGPOINT_WORKERS": "2"})


def test_nothing_of_either_is_imported_when_they_are_off():
    script = (
        "import sys; from longpoint.app import create_app; create_app();"
        "print([name for name in sys.modules if name.startswith(('opentelemetry.sdk', 'prometheus'))])"
    )
    done = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"


class TestTraces:
    @pytest.fixture
    def spans(self):
        exporting = pytest.importorskip(
            "opentelemetry.sdk.trace.export.in_memory_span_exporter",
            reason="the traces extra is not installed",
        )
        return exporting.InMemorySpanExporter()

    @pytest.fixture
    def app(self, spans):
        from longpoint.api.http.traces import Traced

        app = create_app(Settings(access_log=False))
        app.asgi_handler = Traced(app.asgi_handler, spans)
        return app

    async def test_a_request_is_a_span_of_the_trace_it_came_with(self, app, spans):
        trace, parent = "4bf92f3577b34da6a3ce929d0e0e4736", "00f067aa0ba902b7"
        headers = {"traceparent": f"00-{trace}-{parent}-01", "authorization": "Bearer not-to-be-seen"}
        async with calling(app) as client:
            answer = await client.post(
                "/v1/lengths", json=ASK, headers={"traceparent": headers["traceparent"]}
            )
            await client.get("/v1/schedules/some-id?secret=1", headers=headers)
        app.asgi_handler.close()
        lengths, schedule = spans.get_finished_spans()
        assert lengths.name == "POST /v1/lengths"
        assert f"{lengths.context.trace_id:032x}" == trace
        assert f"{lengths.parent.span_id:016x}" == parent
        assert lengths.attributes["http.response.status_code"] == 200
        assert lengths.attributes["longpoint.request_id"] == answer.headers["x-request-id"]
        assert schedule.name == "GET /v1/schedules/{schedule_id:str}"
        said = json.dumps([dict(lengths.attributes), dict(schedule.attributes)])
        for secret in ("not-to-be-seen", "secret", "some-id", "30 5/8"):
            assert secret not in said

    async def test_spans_are_sent_where_the_setting_says(self):
        pytest.importorskip("opentelemetry.exporter.otlp", reason="the traces extra is not installed")
        from http.server import BaseHTTPRequestHandler, HTTPServer
        from threading import Thread

        came = []

        class Collector(BaseHTTPRequestHandler):
            def do_POST(self):
                came.append((self.path, self.rfile.read(int(self.headers["content-length"]))))
                self.send_response(200)
                self.end_headers()

            def log_message(self, *_):
                pass

        collector = HTTPServer(("127.0.0.1", 0), Collector)
        Thread(target=collector.serve_forever, daemon=True).start()
        endpoint = f"http://127.0.0.1:{collector.server_port}/v1/traces"
        app = create_app(Settings(access_log=False, traces_endpoint=endpoint))
        async with app.lifespan(), calling(app) as client:
            await client.post("/v1/lengths", json=ASK)
        collector.shutdown()
        collector.server_close()
        ((path, body),) = came
        assert path == "/v1/traces"
        assert b"POST /v1/lengths" in body
