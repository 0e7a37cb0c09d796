"""Strong entity tags (RFC 9110, section 8.8.3) and the conditions that name them."""

import re
from typing import Any

from litestar import Response

from longpoint.api.http.frame import RAW_HEADERS
from longpoint.api.http.negotiate import JSON
from longpoint.api.http.problems import BadRequest
from longpoint.api.http.problems_stored import PreconditionFailed, PreconditionRequired
from longpoint.api.http.request import AnyRequest
from longpoint.texts import Sentence, say
from longpoint.values import Fault

_TAG = r'(W/)?"[!#-~\x80-\xff]*"'
ENTITY_TAGS = rf"^(\*|([ \t]*,)*[ \t]*{_TAG}([ \t]*,([ \t]*{_TAG})?)*[ \t]*)$(?![\s\S])"
"""What a condition is: a list of entity tags, or any."""
MOST_TAGS = 1000
"""How long it may be, in characters."""
_LIST = re.compile(ENTITY_TAGS)
_TAGS = re.compile(r'(W/)?"([^"]*)"')
ETAG = {
    "ETag": "Names this state of it; send it in If-Match to change it, in If-None-Match to hear only of news."
}


class NotModified(Exception):  # noqa: N818 - an answer, not a mistake
    """The caller has this state already: answered 304, without content.

    Attributes:
        tag: Of the state.
        keep: The Cache-Control field the answer itself has; "" for the service's usual one.
    """

    def __init__(self, tag: str, keep: str = "") -> None:
        super().__init__(tag)
        self.tag = tag
        self.keep = keep


def state_tag(revision: int, digest: str) -> str:
    """What a stored state is named by: the revision that made it, and what is in it."""
    return f"{revision}-{digest[:16]}"


def etag(request: AnyRequest, tag: str) -> str:
    """The ETag field of a state in the format this answer has: two formats of one state differ in octets."""
    wanted: str = getattr(request, "wanted", JSON) or JSON
    return f'"{tag}"' if wanted == JSON else f'"{tag}+{wanted.rpartition("/")[2]}"'


def check_current(request: AnyRequest, tag: str) -> None:
    """Make sure a change was made from the state that now stands.

    Raises:
        PreconditionRequired: when it does not say what it was made from.
        PreconditionFailed: when it was made from another.
    """
    given = _given(request, "If-Match")
    if given is None:
        fault = Fault(code="missing", detail=say("problem", "tag.send"), header="If-Match")
        raise PreconditionRequired(say("problem", "tag.missing"), [fault])
    check_match(request, tag)


def check_match(request: AnyRequest, tag: str) -> None:
    """Make sure that a change that says what it was made from was made from the state that now stands, and that it is
    not one to be made only where that state does not stand.

    Raises:
        PreconditionFailed: when it was not, or is.
    """
    given = _given(request, "If-Match") or "*"
    if given != "*" and not any(not weak and bare(one) == tag for weak, one in _tags(given)):
        fault = Fault(code="stale", detail=say("problem", "tag.stale"), header="If-Match")
        raise _failed(tag, say("problem", "tag.made-from-another", tag=tag), fault)
    # After If-Match, and whatever that says (RFC 9110, section 13.2.2).
    check_unless(request, tag)


def check_unless(request: AnyRequest, tag: str) -> None:
    """Make sure that a change is not one to be made only where the state that now stands does not.

    Raises:
        PreconditionFailed: when it is.
    """
    unless = _given(request, "If-None-Match") or ""
    if unless == "*" or any(bare(one) == tag for _, one in _tags(unless)):
        fault = Fault(code="stands", detail=say("problem", "tag.stands"), header="If-None-Match")
        raise _failed(tag, say("problem", "tag.made-unless", tag=tag), fault)


def check_absent(request: AnyRequest) -> None:
    """Make sure that something that is not there yet was not taken to be.

    Raises:
        PreconditionFailed: when it was.
    """
    if _given(request, "If-Match") is not None:
        fault = Fault(code="stale", detail=say("problem", "tag.leave-out"), header="If-Match")
        raise PreconditionFailed(say("problem", "tag.not-there"), [fault])


def check_news(request: AnyRequest, tag: str, keep: str = "") -> None:
    """Answer at once when the caller has this state already.

    Raises:
        NotModified: when an If-None-Match header names it.
    """
    given, own = _given(request, "If-None-Match") or "", etag(request, tag)
    if given == "*" or any(f'"{one}"' == own for _, one in _tags(given)):
        raise NotModified(own, keep)


def on_not_modified(request: AnyRequest, answer: NotModified) -> Response[Any]:  # noqa: ARG001
    """Answer 304."""
    # What is kept is kept on under the 304's own rule (RFC 9110, section 15.4.5): it must not say less.
    keep = {"cache-control": answer.keep} if answer.keep else {}
    return Response(None, status_code=304, headers={"etag": answer.tag, "vary": "accept", **keep})


def _failed(tag: str, detail: Sentence, fault: Fault) -> PreconditionFailed:
    return PreconditionFailed(detail, [fault], {"etag": f'"{tag}"'})


def _given(request: AnyRequest, name: str) -> str | None:
    headers: dict[bytes, bytes] = request.scope["state"][RAW_HEADERS]
    value = headers.get(name.lower().encode())
    if value is None:
        return None
    text = value.decode("latin-1").strip()
    if len(text) > MOST_TAGS or not _LIST.match(text):
        fault = Fault(code="wrong-header", detail=say("problem", "tag.wrong-form"), header=name)
        raise BadRequest(say("problem", "tag.not-a-list", header=name), [fault])
    return text


def _tags(value: str) -> list[tuple[bool, str]]:
    """Each tag of a list, and whether it is weak."""
    return [(found[1] is not None, found[2]) for found in _TAGS.finditer(value)]


def bare(tag: str) -> str:
    """The state's name without that of the format it was read in."""
    return tag.partition("+")[0]
