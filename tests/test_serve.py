"""`python -m longpoint serve`: it starts, answers, logs JSON and stops when told to."""

import json
import signal

import httpx

from serving import address, start


def test_it_serves_until_told_to_stop_and_logs_json_alone():
    with start(LONGPOINT_DATABASE="") as process:
        assert process.stderr
        lines: list[str] = []
        with httpx.Client(base_url=address(process, lines)) as client:
            answer = client.post("/v1/lengths", json={"lengths": ["30 5/8 in"]})
            assert answer.status_code == 200
            assert "server" not in answer.headers
            head = client.head("/health/live")
            assert head.headers["content-length"] == "15"
        process.send_signal(signal.SIGTERM)
        lines += process.stderr.readlines()
        assert process.wait(timeout=30) in (0, -signal.SIGTERM)
    entries = [json.loads(line) for line in lines]
    requests = [entry for entry in entries if entry["event"] == "request"]
    assert [entry["request_id"] for entry in requests] == [
        each.headers["x-request-id"] for each in (answer, head)
    ]


def test_the_most_talkative_log_holds_nothing_that_was_sent(sqlite_database):
    with start(LONGPOINT_DATABASE=sqlite_database, LONGPOINT_LOG_LEVEL="debug") as process:
        assert process.stderr
        lines: list[str] = []
        with httpx.Client(base_url=address(process, lines)) as client:
            made = client.post("/v1/schedules?why=hush", json={"name": "hush", "unit": "in"})
            assert made.status_code == 201
            bearer = {"authorization": "Bearer lp_hush_hush"}
            assert client.get("/v1/schedules", headers=bearer).status_code == 401
        process.send_signal(signal.SIGTERM)
        lines += process.stderr.readlines()
    assert made.headers["x-request-id"] in "".join(lines)
    assert "hush" not in "".join(lines)


def test_a_wrong_setting_stops_it_before_it_starts():
    with start(LONGPOINT_WORKERS="none", LONGPOINT_PROT="1") as process:
        assert process.stderr
        said = process.stderr.read()
        assert process.wait(timeout=30) == 2
    assert "LONGPOINT_WORKERS" in said
    assert "LONGPOINT_PROT" in said
