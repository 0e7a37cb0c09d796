"""The SDK stands alone: without the service, on httpx and msgspec alone, quick to import, with a fixed surface."""

import importlib.metadata
import json
import re
import subprocess
import sys
from pathlib import Path

import longpoint_sdk

ROOT = Path(__file__).parents[2]
SDK = ROOT / "sdk"
MOST_SECONDS = 0.150


def needed(name: str, found: set[str]) -> set[str]:
    """A distribution and all that it needs here."""
    if name not in found:
        found.add(name)
        for requirement in importlib.metadata.requires(name) or []:
            if "extra ==" not in requirement:
                other = re.match(r"[A-Za-z0-9._-]+", requirement)
                assert other
                try:
                    importlib.metadata.distribution(other[0])
                except importlib.metadata.PackageNotFoundError:
                    continue  # needed on another Python
                needed(other[0], found)
    return found


def alone(tmp_path: Path, code: str) -> str:
    """Run code where the SDK, httpx, msgspec and what those need can be imported, and nothing else."""
    site = tmp_path / "site"
    site.mkdir()
    for name in needed("httpx", needed("msgspec", set())):
        files = importlib.metadata.distribution(name).files or []
        for top in {file.parts[0] for file in files if file.parts[0] not in ("..", "__pycache__")}:
            link = site / top
            if not link.exists():
                link.symlink_to(Path(str(importlib.metadata.distribution(name).locate_file(top))))
    start = f"import sys; sys.path[:0] = [{str(SDK / 'src')!r}, {str(site)!r}]\n"
    done = subprocess.run(
        [sys.executable, "-I", "-S", "-c", start + code],
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )
    assert done.returncode == 0, done.stderr
    return done.stdout


def test_it_works_where_the_service_is_not_installed(tmp_path: Path) -> None:
    out = alone(
        tmp_path,
        "import longpoint_sdk, asyncio\n"
        "for absent in ('longpoint', 'litestar', 'pint', 'sqlalchemy', 'quicktions'):\n"
        "    try: __import__(absent)\n"
        "    except ImportError: continue\n"
        "    raise SystemExit(absent + ' is here')\n"
        "retry = longpoint_sdk.Retry(times=0)\n"
        "try: longpoint_sdk.Client('http://127.0.0.1:9', retry=retry).check_live()\n"
        "except longpoint_sdk.NotReached: print('sync')\n"
        "async def main():\n"
        "    async with longpoint_sdk.AsyncClient('http://127.0.0.1:9', retry=retry) as client:\n"
        "        try: await client.check_live()\n"
        "        except longpoint_sdk.NotReached: print('async')\n"
        "asyncio.run(main())\n",
    )
    assert out.split() == ["sync", "async"]


def test_it_declares_what_it_needs_and_no_more() -> None:
    project = (SDK / "pyproject.toml").read_text()
    dependencies = re.search(r"^dependencies = (\[.*\])$", project, re.MULTILINE)
    assert dependencies
    assert [re.split(r"[<>=]", one)[0] for one in json.loads(dependencies[1])] == ["httpx", "msgspec"]
    assert 'requires-python = ">=3.10"' in project
    assert (SDK / "src/longpoint_sdk/py.typed").exists()


def test_importing_it_is_quick() -> None:
    code = "import time; t = time.process_time(); import longpoint_sdk; print(time.process_time() - t)"
    taken = [
        float(
            subprocess.run(
                [sys.executable, "-c", f"import sys; sys.path.insert(0, {str(SDK / 'src')!r}); {code}"],
                capture_output=True,
                text=True,
                check=True,
            ).stdout
        )
        for _ in range(3)
    ]
    assert min(taken) < MOST_SECONDS


def test_the_public_surface() -> None:
    assert sorted(longpoint_sdk.__all__) == longpoint_sdk.__all__
    public = {name for name in vars(longpoint_sdk) if not name.startswith("_")} | {"__version__"}
    assert public == set(longpoint_sdk.__all__)


def test_the_versions_agree() -> None:
    assert f'version = "{longpoint_sdk.__version__}"' in (ROOT / "pyproject.toml").read_text()
