"""Write the table of settings."""

import argparse
from typing import Any, get_args, get_type_hints

import msgspec

from longpoint.settings import DEFAULT_DATABASE, PREFIX, Settings

NAME = "settings"
HELP = "Write every LONGPOINT_* variable, its default and what it does, as a Markdown table."


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """This command takes no arguments."""


def run(chosen: argparse.Namespace) -> int:  # noqa: ARG001
    """Write the table."""
    print(settings_table())
    return 0


def settings_table() -> str:
    """The table, as it stands in the notes for operators."""
    lines = ["| variable | default | what it does |", "| --- | --- | --- |"]
    hints = get_type_hints(Settings, include_extras=True)
    for field in msgspec.structs.fields(Settings):
        description = next(meta.description for meta in _metas(hints[field.name]) if meta.description)
        default = DEFAULT_DATABASE if field.name == "database" else field.default
        lines.append(f"| `{PREFIX}{field.name.upper()}` | {_shown(default)} | {description} |")
    return "\n".join(lines)


def _metas(hint: Any) -> list[msgspec.Meta]:
    return [part for part in get_args(hint)[1:] if isinstance(part, msgspec.Meta)]


def _shown(value: Any) -> str:
    if value is None or value == ():
        return "none"
    if isinstance(value, bool):
        return f"`{str(value).lower()}`"
    return f"`{value:g}`" if isinstance(value, float) else f"`{value}`"
