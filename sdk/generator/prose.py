"""Descriptions from the document, set as docstrings."""

from __future__ import annotations

import textwrap

WIDTH = 110


def docstring(first: str, *rest: str, indent: int = 0) -> str:
    """A docstring: a first paragraph, then others; `Args:` and the like keep their lines."""
    margin = " " * indent
    paragraphs = [wrapped(part, indent) for part in (first, *rest) if part.strip()]
    body = "\n\n".join(paragraphs).replace("\\", "\\\\").replace('"""', '\\"\\"\\"')
    if "\n" in body or len(body) + indent + 6 > WIDTH or body.endswith('"'):
        return f'{margin}"""{body.lstrip()}\n{margin}"""'
    return f'{margin}"""{body.lstrip()}"""'


def wrapped(text: str, indent: int) -> str:
    """Paragraphs filled to the width; `Args:` and the like keep their lines, `Example:` every space."""
    margin = " " * indent
    done = []
    for paragraph in text.strip().split("\n\n"):
        lines = [line.strip() for line in paragraph.strip().splitlines()]
        if lines[0] == "Example:":
            done.append(textwrap.indent(paragraph.replace("\n", "\n    "), margin))
        elif lines[0] in ("Attributes:", "Args:", "Returns:", "Raises:"):
            done.append(
                "\n".join(
                    [f"{margin}{lines[0]}"]
                    + [
                        textwrap.fill(
                            line,
                            WIDTH,
                            initial_indent=f"{margin}    ",
                            subsequent_indent=margin + " " * (4 if lines[0] == "Returns:" else 8),
                            break_long_words=False,
                            break_on_hyphens=False,
                        )
                        for line in lines[1:]
                    ]
                )
            )
        else:
            done.append(
                textwrap.fill(
                    " ".join(lines),
                    WIDTH,
                    initial_indent=margin,
                    subsequent_indent=margin,
                    break_long_words=False,
                    break_on_hyphens=False,
                )
            )
    return "\n\n".join(done)


def one_line(text: str) -> str:
    """A description on one line."""
    return " ".join(text.split())
