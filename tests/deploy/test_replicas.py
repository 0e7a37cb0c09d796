"""Two replicas, PostgreSQL and the proxy with TLS, as processes: what a caller sees of it all."""

import threading
import time
import uuid
from collections.abc import Iterator
from typing import Any

import httpx
import pytest

import deployment
from deployment import Deployment, Replica, longpoint, wait_until
from stored import house, opening

pytestmark = [
    pytest.mark.skipif(bool(deployment.MISSING), reason=f"not on this machine: {deployment.MISSING}"),
    pytest.mark.xdist_group("replicas"),
]
ASK = {"lengths": ["30 5/8 in"]}


@pytest.fixture(scope="module")
def running(postgres: Any) -> Iterator[Deployment]:
    with deployment.deployed(postgres, LONGPOINT_NOTICE_SECONDS="1.5") as all_of_it:
        yield all_of_it


@pytest.fixture(scope="module")
def key(running: Deployment) -> str:
    return longpoint("keys", "create", "--name", "tests", "--database", running.database)


@pytest.fixture
def client(running: Deployment, key: str) -> Iterator[httpx.Client]:
    with running.client(authorization=f"Bearer {key}") as caller:
        yield caller


def test_without_keys_a_caller_from_afar_cannot_pass_for_one_on_this_machine(running):
    """Without keys only this machine is served; who is asking is what the proxy says. First, since keys come next."""
    # As the proxy would say of a caller elsewhere; what a caller claims through the proxy counts for nothing.
    afar = {"x-forwarded-for": "203.0.113.7"}
    with running.client() as near:
        assert near.post("/v1/lengths", json=ASK).status_code == 200
        assert near.post("/v1/lengths", json=ASK, headers=afar).status_code == 200
    port = running.replicas[0].port
    assert httpx.post(f"http://127.0.0.1:{port}/v1/lengths", json=ASK, headers=afar).status_code == 401


def test_it_answers_over_tls_alone(running, client):
    answer = client.post("/v1/lengths", json=ASK)
    assert answer.status_code == 200
    assert "max-age" in answer.headers["strict-transport-security"]
    assert "server" not in answer.headers or "/" not in answer.headers["server"]
    plain = httpx.get(running.address.replace("https", "http") + "/health/live")
    assert plain.status_code == 400


def test_a_schedule_written_through_one_replica_is_read_through_the_other(running, client, key):
    made = client.post("/v1/schedules", json=house())
    assert made.status_code == 201, made.text
    path = made.headers["location"]
    for replica in running.replicas:
        answer = httpx.get(
            f"http://127.0.0.1:{replica.port}{path}", headers={"authorization": f"Bearer {key}"}
        )
        assert answer.headers["etag"] == made.headers["etag"]


def test_a_post_sent_again_to_the_other_replica_is_done_once(running, key):
    headers = {"authorization": f"Bearer {key}", "idempotency-key": f'"{uuid.uuid4()}"'}
    ids = {
        httpx.post(
            f"http://127.0.0.1:{replica.port}/v1/schedules", json=house(), headers=headers, timeout=30
        ).json()["id"]
        for replica in running.replicas
    }
    assert len(ids) == 1


def test_a_body_over_the_limit_is_refused_in_the_services_own_words(client):
    answer = client.post(
        "/v1/lengths", content=b" " * (3 * 1024 * 1024), headers={"content-type": "application/json"}
    )
    assert answer.status_code == 413
    assert answer.json()["type"] == "/problems/content-too-large"


def test_a_replica_told_to_stop_is_not_ready_first_and_finishes_what_it_has(running, key):
    replica = Replica(running.database, LONGPOINT_NOTICE_SECONDS="1", LONGPOINT_BODY_SECONDS="30")
    replica.start()
    live = f"http://127.0.0.1:{replica.port}/health/live"
    half_sent = threading.Event()
    told = threading.Event()

    def slowly() -> Iterator[bytes]:
        yield b'{"lengths": '
        half_sent.set()
        assert told.wait(10)
        yield b'["30 5/8 in"]}'

    answers: list[int] = []

    def ask() -> None:
        answer = httpx.post(
            f"http://127.0.0.1:{replica.port}/v1/lengths",
            content=slowly(),
            headers={"authorization": f"Bearer {key}", "content-type": "application/json"},
            timeout=30,
        )
        answers.append(answer.status_code)

    asking = threading.Thread(target=ask)
    asking.start()
    assert half_sent.wait(20)
    replica.tell_to_stop()
    wait_until(lambda: replica.ready() == 503, "notice of stopping")
    assert httpx.get(live).status_code == 200
    wait_until(lambda: replica.ready() == 0, "no more connections")
    told.set()
    asking.join(20)
    assert answers == [200]
    assert replica.process
    assert replica.process.wait(30) in (0, -15)


def test_nobody_notices_when_one_replica_after_the_other_is_replaced(running, key):
    """Computations, reads, and writes that are sent again under their key as a client does: none fails."""
    done = threading.Event()
    failed: list[str] = []
    counts = {"computed": 0, "read": 0, "written": 0}

    def drive() -> None:
        with running.client(authorization=f"Bearer {key}") as client:
            path = client.post("/v1/schedules", json=house()).headers["location"]
            while not done.is_set():
                computed = client.post("/v1/lengths", json=ASK)
                read = client.get(path)
                mark = f"W{counts['written']}"
                headers = {"idempotency-key": f'"{uuid.uuid4()}"'}
                for _ in range(3):
                    written = client.post(f"{path}/openings", json=opening(mark), headers=headers)
                    if written.status_code != 503:
                        break
                    time.sleep(float(written.headers["retry-after"]))
                for name, answer, wanted in (
                    ("computed", computed, 200),
                    ("read", read, 200),
                    ("written", written, 201),
                ):
                    counts[name] += 1
                    if answer.status_code != wanted:
                        failed.append(f"{name}: {answer.status_code} {answer.text[:200]}")
            listed = client.get(f"{path}/openings", params={"limit": 500}).json()["items"]
            if len(listed) != min(counts["written"], 500):
                failed.append(f"{counts['written']} openings were written and {len(listed)} are there")

    driving = threading.Thread(target=drive)
    driving.start()
    try:
        for replica in running.replicas:
            replica.stop()
            replica.start()
    finally:
        done.set()
        driving.join(60)
    assert not failed, failed[:5]
    assert min(counts.values()) > 5, counts


def test_where_no_replica_answers_the_proxy_says_so_in_the_same_form(running, client):
    for replica in running.replicas:
        replica.kill()
    try:
        answer = client.get("/health/live")
        assert answer.status_code == 503
        assert answer.headers["content-type"] == "application/problem+json"
        assert answer.headers["retry-after"] == "1"
        assert answer.json()["status"] == 503
    finally:
        for replica in running.replicas:
            replica.start()
