"""Writes an exception for each kind of problem."""

from __future__ import annotations

from generator.document import Document
from generator.signatures import NOTE


def problems(document: Document) -> str:
    """The module `problems`."""
    classes = [
        f"class {class_name(slug)}({'VersionConflict' if status == 412 else 'Problem'}):\n"
        f'    """{title} ({status})."""\n\n    type_uri = "/problems/{slug}"'
        for status, slug, title in document.problems
    ]
    names = ", ".join(class_name(slug) for _, slug, _ in document.problems)
    return (
        f'"""An exception for each kind of problem the service answers with. {NOTE}"""\n\n'
        "from __future__ import annotations\n\n"
        "from longpoint_sdk._errors import Problem, VersionConflict\n\n\n"
        + "\n\n\n".join(classes)
        + f"\n\n\nKINDS: dict[str, type[Problem]] = {{kind.type_uri: kind for kind in ({names},)}}\n"
        '"""Every kind, by its type."""\n'
    )


def class_name(slug: str) -> str:
    """The exception for a kind of problem."""
    return "".join(word.capitalize() for word in slug.split("-"))
