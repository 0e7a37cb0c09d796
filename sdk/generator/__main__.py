"""`python -m generator`: write everything; `--check`: say what would change, and fail if anything would."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

from generator import calls, clients, problems, types, typescript
from generator.document import load

HERE = Path(__file__).resolve().parents[1]
DOCUMENT = HERE.parent / "openapi" / "longpoint.json"
PACKAGE = HERE / "src" / "longpoint_sdk"
PACKAGES = ("types", "calls", "_sync", "_async")


def files() -> dict[Path, str]:
    """Everything generated, by where it goes."""
    document = load(DOCUMENT)
    packages = {
        "types": types.modules(document),
        "calls": calls.calls(document),
        "_sync": clients.clients(document, asynchronous=False),
        "_async": clients.clients(document, asynchronous=True),
    }
    written = {
        PACKAGE / package / f"{name}.py": text
        for package, modules in packages.items()
        for name, text in modules.items()
    }
    written[PACKAGE / "problems.py"] = problems.problems(document)
    formatted = {path: _formatted(path, text) for path, text in written.items()}
    return formatted | {HERE / "typescript" / "longpoint.d.ts": typescript.declarations(document)}


def _formatted(path: Path, text: str) -> str:
    """As ruff would leave it: unused imports out, the rest in order, lines filled."""
    for command in (["check", "--fix-only", "--select", "F401,I", "--quiet"], ["format"]):
        done = subprocess.run(
            [sys.executable, "-m", "ruff", *command, "--stdin-filename", str(path), "-"],
            input=text,
            capture_output=True,
            text=True,
            check=False,
        )
        if done.returncode:
            raise SystemExit(f"{path.name} came out as no Python: {done.stderr}")
        text = done.stdout
    return text


def main() -> int:
    """Write, or compare."""
    wanted = files()
    stray = {path for package in PACKAGES for path in (PACKAGE / package).glob("[!_]*.py")} - wanted.keys()
    changed = [path for path, text in wanted.items() if not path.exists() or path.read_text("utf-8") != text]
    if "--check" in sys.argv[1:]:
        for path in sorted([*changed, *stray]):
            print(f"{path.relative_to(HERE)} is not what the document makes; run: python -m generator")
        return 1 if changed or stray else 0
    for path in changed:
        path.parent.mkdir(exist_ok=True)
        path.write_text(wanted[path], encoding="utf-8")
    for path in stray:
        path.unlink()
    print(f"{len(wanted)} files, {len(changed)} changed, {len(stray)} removed")
    return 0


if __name__ == "__main__":
    sys.exit(main())
