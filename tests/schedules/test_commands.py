"""The commands that look after a database, run as they are at a prompt."""

import asyncio
import gzip
import json
from pathlib import Path

import httpx
import pytest
from sqlalchemy import text

from databases import fresh_sqlite
from longpoint.__main__ import main
from longpoint.schedules.store import Store
from stored import made, opening, serving


def command(*arguments: str) -> int:
    """Run a command in this process, outside any event loop of the test."""
    return main(list(arguments))


def fill(address: str) -> str:
    """Put a schedule with some history, plans, a cut stick, a claim and a lot into a database; gives its address."""

    async def run() -> str:
        async with serving(address) as service:
            where = (await made(service, openings=[opening("K1"), opening("K2")])).headers["location"]
            one = await service.get(f"{where}/openings/K1")
            tag = {"if-match": one.headers["etag"]}
            await service.put(f"{where}/openings/K1", json=opening("K1", "31"), headers=tag)
            await service.post(f"{where}/openings", json=opening("K3"), headers={"idempotency-key": "one"})
            two = await service.get(f"{where}/openings/K2")
            await service.delete(f"{where}/openings/K2", headers={"if-match": two.headers["etag"]})
            lot = {"lot": "yard 1", "profile": "casing", "length": "14 ft", "ordered": 2, "paid": "15.90"}
            assert (await service.post(f"{where}/lengths", json=lot)).status_code == 201
            first, second, *_ = (await service.post(f"{where}/plans", json={})).json()["sticks"]
            cut = await service.post(f"{where}/cut-sticks", json={"sticks": [first["name"]]})
            assert cut.status_code == 201, cut.text
            claimed = {"by": "yard saw", "seconds": 86_000}
            kept = await service.put(f"{where}/sticks/{second['name']}/claim", json=claimed)
            assert kept.status_code == 200, kept.text
        return where

    return asyncio.run(run())


def tell(address: str, statement: str) -> None:
    """Change a database behind the service's back."""

    async def run() -> None:
        store = Store(address)
        async with store.writing() as connection:
            await connection.execute(text(statement))
        await store.close()

    asyncio.run(run())


def see(address: str, path: str) -> httpx.Response:
    async def run() -> httpx.Response:
        async with serving(address) as service:
            return await service.get(path)

    return asyncio.run(run())


def test_migrate_says_from_where_to_where(empty_database: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert command("migrate", "--database", empty_database) == 0
    assert "from nothing to 0004" in capsys.readouterr().out
    assert command("migrate", "--database", empty_database) == 0
    assert "at 0004 already" in capsys.readouterr().out
    assert command("migrate", "--database", empty_database, "--to", "0001") == 0
    assert command("check", "--database", empty_database) == 2
    assert "at revision 0001 and this service needs 0004" in capsys.readouterr().err


def test_a_database_that_is_not_there_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    address = fresh_sqlite(tmp_path)
    assert command("check", "--database", address) == 2
    assert "does not exist; run `python -m longpoint migrate`" in capsys.readouterr().err
    assert command("check", "--database", "postgresql://nobody@127.0.0.1:1/none") == 2
    assert "longpoint: " in capsys.readouterr().err
    assert command("check", "--database", "mysql://x/y") == 2
    assert "only sqlite:// and postgresql://" in capsys.readouterr().err


def test_check_finds_nothing_wrong_with_what_the_service_wrote(
    database: str, capsys: pytest.CaptureFixture[str]
) -> None:
    fill(database)
    assert command("check", "--database", database) == 0
    assert "nothing wrong" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("statement", "told"),
    [
        ("UPDATE opening SET document = replace(document, '31', '32')", "is not what its history says"),
        ("UPDATE version SET document = replace(document, '31', '32')", "was tampered with"),
        ("DELETE FROM opening WHERE mark = 'K1'", "is not what its history says"),
        ("UPDATE revision SET who = 'somebody' WHERE number = 2", "revision 2 does not follow"),
        ("DELETE FROM revision WHERE number = 2", "revision 2 is missing"),
        ("UPDATE schedule SET opening_count = 7", "counts 7 openings and has 2"),
        ("UPDATE schedule SET next_position = 1", "next place is taken"),
        ("UPDATE schedule SET name = name, document = '{}'", "not that of its history"),
        ("UPDATE retry SET status = 0", "claimed without an answer"),
        ("UPDATE schedule SET last_plan = 0", "has a number that was not given out"),
        ("UPDATE schedule SET last_names = '{}'", "has a name that was not given out"),
        ("DELETE FROM stick WHERE claimed_by IS NOT NULL", "that is not there"),
        ("UPDATE stick SET claimed_until = NULL", "half a claim"),
        ("UPDATE length SET document = replace(document, '15.90', '1.59')", "is not what its history says"),
    ],
)
def test_check_tells_what_was_done_behind_its_back(
    sqlite_database: str, statement: str, told: str, capsys: pytest.CaptureFixture[str]
) -> None:
    fill(sqlite_database)
    tell(sqlite_database, statement)
    assert command("check", "--database", sqlite_database) == 1
    assert told in capsys.readouterr().out


def test_a_backup_is_restored_into_either_kind_of_database(
    database: str, postgres: object, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    from databases import fresh_postgres

    where = fill(database)
    there = [f"{where}/{what}" for what in ("openings", "plans", "plans/1", "work", "lengths")]
    there += [f"{where}/sticks/{one['name']}" for one in see(database, there[2]).json()["sticks"]]
    before = [see(database, address).json() for address in there]
    assert any(one.get("claimed_by") for one in before)
    backup = tmp_path / "backup.gz"
    assert command("backup", "--database", database, str(backup)) == 0
    assert command("backup", "--database", database, str(backup)) == 2
    assert "is there already" in capsys.readouterr().err
    for other in (fresh_sqlite(tmp_path), fresh_postgres(postgres)):
        assert command("migrate", "--database", other) == 0
        assert command("restore", "--database", other, str(backup)) == 0
        assert command("check", "--database", other) == 0
        assert [see(other, address).json() for address in there] == before
        assert command("restore", "--database", other, str(backup)) == 2
        assert "is not empty" in capsys.readouterr().err
    assert list(tmp_path.glob("*.piece")) == []


DATA = Path(__file__).parent / "data"
"""What the first release wrote of an invented house: its backup, and its export as JSON and as CSV."""


def test_a_backup_of_the_first_release_is_restored_and_migrated(
    empty_database: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert command("migrate", "--database", empty_database) == 0
    assert command("restore", "--database", empty_database, str(DATA / "backed_up_by_0_1_0.gz")) == 0
    assert "84 rows" in capsys.readouterr().out
    assert command("check", "--database", empty_database) == 0
    listed = see(empty_database, "/v1/schedules").json()["items"]
    (cottage,) = [one for one in listed if one["name"] == "Heron Cottage"]
    left = see(empty_database, f"/v1/schedules/{cottage['id']}/cut-list").json()
    assert [(one["opening"], one["piece"]) for one in left["cut_again"]] == [("K1", "side_casing/left")]


def test_an_export_of_the_first_release_starts_a_schedule_once_it_is_converted(
    sqlite_database: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert command("convert-export", str(DATA / "exported_by_0_1_0.json")) == 0
    house = json.loads(capsys.readouterr().out)
    assert command("convert-export", str(DATA / "exported_by_0_1_0.csv")) == 0
    rows = capsys.readouterr().out.encode()

    async def run() -> None:
        async with serving(sqlite_database) as service:
            made = await service.post("/v1/schedules", json=house)
            assert made.status_code == 201, made.text
            where = made.headers["location"]
            lots = (await service.get(f"{where}/lengths")).json()["items"]
            assert [(one["profile"], one["length"]) for one in lots] == [
                (one["profile"], one["length"]) for one in house["lengths"]
            ]
            before = (await service.get(f"{where}/openings")).json()["items"]
            assert [(one["mark"], one["bottom"]) for one in before] == [
                ("K1", "stool"),
                ("K2", "stool"),
                ("D1", "floor"),
                ("B1", "stool"),
                ("B2", "stool"),
            ]
            tag = {"if-match": made.headers["etag"], "content-type": "text/csv"}
            again = await service.post(f"{where}/import?existing=update", content=rows, headers=tag)
            assert again.status_code == 200, again.text
            assert (again.json()["unchanged"], again.json()["updated"]) == (5, [])

    asyncio.run(run())


def test_what_is_no_export_is_not_converted(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for name, said in (("a.json", "[]"), ("b.json", "{"), ("c.csv", "mark")):
        (tmp_path / name).write_text(said)
        assert command("convert-export", str(tmp_path / name)) == 2
        assert "is no export" in capsys.readouterr().err
    assert command("convert-export", str(tmp_path / "none.json")) == 2
    assert "cannot be read" in capsys.readouterr().err


def test_a_broken_backup_is_refused_whole(
    sqlite_database: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    fill(sqlite_database)
    backup, broken = tmp_path / "backup.gz", tmp_path / "broken.gz"
    assert command("backup", "--database", sqlite_database, str(backup)) == 0
    other = fresh_sqlite(tmp_path)
    assert command("migrate", "--database", other) == 0
    data = backup.read_bytes()
    first, second, *rest = gzip.decompress(data).splitlines(keepends=True)
    for wrong, told in (
        (data[:-40], "cannot be read"),
        (data[: len(data) // 2], "cannot be read"),
        (b"nothing of the kind", "cannot be read"),
        (b"", "is not a backup"),
        (gzip.compress(b'{"some":"file"}\n{"of":"others"}\n'), "is not a backup"),
        (
            gzip.compress(b"".join((first.replace(b"backup-1", b"backup-9"), second, *rest))),
            "is not a backup",
        ),
        (gzip.compress(b"".join((first, *rest))), "is not whole"),
        (gzip.compress(b"".join((first, second, second, *rest))), "is not whole"),
        (gzip.compress(b"".join((first, second, *rest[:-1]))), "is not whole"),
    ):
        broken.write_bytes(wrong)
        assert command("restore", "--database", other, str(broken)) == 2
        assert told in capsys.readouterr().err
    assert command("restore", "--database", other, str(tmp_path / "absent.gz")) == 2
    assert command("restore", "--database", other, str(backup)) == 0


def test_serve_refuses_to_start_where_it_should_not(
    sqlite_database: str,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setenv("LONGPOINT_DATABASE", sqlite_database)
    for host in ("0.0.0.0", "::", "192.0.2.7", "longpoint.example"):
        assert command("serve", "--host", host) == 2
        assert "no keys are made" in capsys.readouterr().err
    assert command("migrate", "--to", "0001") == 0
    assert command("serve") == 2
    assert "at revision 0001" in capsys.readouterr().err
    monkeypatch.setenv("LONGPOINT_DATABASE", fresh_sqlite(tmp_path))
    assert command("serve") == 2
    assert "does not exist" in capsys.readouterr().err
