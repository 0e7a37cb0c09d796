"""Writes an exception for each kind of problem."""

from __future__ import annotations

from generator.document import Document
from generator.prose import docstring
from generator.signatures import NOTE

_HERE = {
    "key-needed": "Here the key is the client's `api_key`, or LONGPOINT_API_KEY.",
    "key-refused": "Here the key is the client's `api_key`, or LONGPOINT_API_KEY.",
    "not-acceptable": "Here the Accept header is `accept`.",
    "precondition-failed": "`mine` is what was sent, `current` a `Versioned` of what stands: change that, and send it "
    "with `if_match=current`.",
    "precondition-required": "Here the If-Match header is `if_match`, which takes the `Versioned` that was read.",
    "idempotency-key-reused": "Here the key is `idempotency_key`; one is made for each call that is not given any.",
    "invalid-request": "`errors` holds a `Fault` for each; `pointers` their JSON pointers.",
}
"""What the SDK adds: where what is spoken of is found in it."""


def problems(document: Document) -> str:
    """The module `problems`."""
    classes = [
        f"class {class_name(kind.slug)}({'VersionConflict' if kind.status == 412 else 'Problem'}):\n"
        f"{docstring(f'{kind.title} ({kind.status}).', kind.advice, _HERE.get(kind.slug, ''), indent=4)}\n\n"
        f'    type_uri = "/problems/{kind.slug}"'
        for kind in document.problems
    ]
    names = ", ".join(class_name(slug) for slug in (kind.slug for kind in document.problems))
    return (
        f'"""An exception for each kind of problem the service answers with. {NOTE}\n\n'
        "Each is a `longpoint_sdk.Problem`, which says what they all carry: `status`, `detail`, `errors`, "
        "`request_id`.\n\n"
        "    try:\n"
        '        client.read_lengths({"lengths": ["30 5/8"]})\n'
        "    except problems.InvalidRequest as refusal:\n"
        "        for fault in refusal.errors:\n"
        "            print(fault.pointer, fault.code, fault.detail)\n"
        '"""\n\n'
        "from __future__ import annotations\n\n"
        "from longpoint_sdk._errors import Problem, VersionConflict\n\n\n"
        + "\n\n\n".join(classes)
        + f"\n\n\nKINDS: dict[str, type[Problem]] = {{kind.type_uri: kind for kind in ({names},)}}\n"
        '"""Every kind, by its type."""\n'
    )


def class_name(slug: str) -> str:
    """The exception for a kind of problem."""
    return "".join(word.capitalize() for word in slug.split("-"))
