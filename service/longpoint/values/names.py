"""Names and notes, as they may be written."""

from typing import Annotated

from msgspec import Meta

from longpoint.texts import say

EXPECT = "longpoint.expect"
"""Key under which a type's Meta(extra=...) may say what to write where something else was found."""

_NAME_FORM = r"^[^ \x00-\x1f\x7f][^\x00-\x1f\x7f]*$(?![\s\S])"

Name = Annotated[
    str,
    Meta(
        min_length=1,
        max_length=120,
        pattern=_NAME_FORM,
        description="A name on one line, not starting with a space.",
        extra={EXPECT: say("hint", "values.name")},
    ),
]
"""A name of something in the house or the shop."""

Text = Annotated[
    str,
    Meta(
        max_length=2000,
        description="Free text; may have several lines.",
        extra_json_schema={"pattern": r"^[^\u0000]*$"},
    ),
]
"""A note."""

Room = Annotated[str, Meta(max_length=80, pattern=r"^[^\x00]*$")]
"""A room of the house; may be empty."""
