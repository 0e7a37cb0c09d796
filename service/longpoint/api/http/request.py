"""Requests: read once, strictly and quickly, before a handler sees anything."""

import asyncio
import contextlib
from functools import partial
from typing import TYPE_CHECKING, Any, TypeVar, cast, get_origin
from urllib.parse import parse_qsl

from litestar import Request
from litestar.handlers import HTTPRouteHandler
from litestar.types import Empty

from longpoint.api.http.body import BodyReader
from longpoint.api.http.frame import RAW_HEADERS
from longpoint.api.http.negotiate import BOTH, Encoding, choose, encoding_of, is_csv
from longpoint.api.http.operation import operation_of
from longpoint.api.http.problems import (
    BadRequest,
    BodyTooSlow,
    ContentTooLarge,
    MalformedBody,
    NotAcceptable,
    UnsupportedMediaType,
)
from longpoint.lengths import Unit
from longpoint.texts import say
from longpoint.values import Fault, Faults, nearest

T = TypeVar("T")
WHOLE = "whole"
"""Key in the scope's state that is there once the whole body has come, where that is known: a timer costs more
than the reading."""
_PLAN = "plan"
_MOST_DISCARDED = 64 * 1024 * 1024
MISREAD = "misread"
"""Key in the scope's state of what of a body could not be read."""
ROUNDING = "rounding"
"""Key in the scope's state of what says how the house that is asked about has its lengths rounded."""
CSV_PLACES = "csv_places"
"""Key in the scope's state of what a CSV body's values came from."""


class HandlerPlan:
    """What one handler takes and gives, worked out once.

    Attributes:
        offers: Media types it answers in, the favorite first; none for pages and files.
        reader: Reads its body; None when it has none.
        reads_csv: Reads its body when that is CSV; None when it takes none.
        most_bytes: The largest body it takes.
        named: Its parameters by the names it has for them: each by its name in an address, with its types.
        parameters: The query parameters it knows, each with the types of its values.
    """

    def __init__(self, handler: HTTPRouteHandler) -> None:
        said = operation_of(handler)
        data = handler.parsed_fn_signature.parameters.get("data")
        self.offers = said.offers if said else ()
        self.reader: BodyReader[Any] | None = BodyReader(data.annotation) if data else None
        self.reads_csv = said.reads_csv if said else None
        self.most_bytes = handler.resolve_request_max_body_size() or 0
        self.named = _parameters(handler, "path") | (query := _parameters(handler, "query"))
        self.parameters = dict(query.values())


def _parameters(handler: HTTPRouteHandler, place: str) -> dict[str, tuple[str, list[Any]]]:
    """Those of a place that a handler and what it depends on know: by their names, as written there, their types."""
    signatures = [handler.parsed_fn_signature]
    signatures += [provided.parsed_fn_signature for provided in handler.resolve_dependencies().values()]
    found = {}
    for signature in signatures:
        for name, field in signature.parameters.items():
            kwarg = field.kwarg_definition
            if getattr(kwarg, "param_type", None) == place:
                kinds = [one.annotation for one in (field.inner_types if field.is_union else [field])]
                found[name] = getattr(kwarg, "name", None) or name, kinds
    return found


class ApiRequest(Request[Any, Any, Any]):
    """A request whose body is decoded straight into its wire type, strictly, from JSON or MessagePack."""

    __slots__ = ("encoding", "wanted")

    wanted: str
    """The media type to answer in, once negotiated; "" for pages and files."""
    encoding: Encoding | None
    """What the body is in, once negotiated; None where it is CSV, or there is none."""

    @property
    def plan(self) -> HandlerPlan:
        """What the handler of this request takes and gives."""
        opt = self.route_handler.opt
        plan: HandlerPlan | None = opt.get(_PLAN)
        if plan is None:
            plan = opt[_PLAN] = HandlerPlan(self.route_handler)
        return plan

    def negotiate(self) -> None:
        """Settle what the answer will be in, and refuse what cannot be read, before any work is done.

        Raises:
            NotAcceptable: when every format of the answer is ruled out.
            UnsupportedMediaType: when the body is in a format that is not read.
            Refusal: when there are query parameters this address does not know.
        """
        headers: dict[bytes, bytes] = self.scope["state"][RAW_HEADERS]
        plan = self.plan
        wanted = choose(headers.get(b"accept", b""), plan.offers) if plan.offers else ""
        if wanted is None:
            raise NotAcceptable(say("problem", "request.not-acceptable", formats=plan.offers))
        self.wanted = wanted
        self.encoding = None
        if plan.reader:
            said = headers.get(b"content-type", b"")
            self.encoding = encoding_of(said)
            read = self.encoding is not None or (plan.reads_csv is not None and is_csv(said))
            if not read or b"content-encoding" in headers:
                raise _unsupported(headers)
        if self.scope["query_string"]:
            _check_query(self.scope["query_string"], plan.parameters)

    async def body(self) -> bytes:
        """The whole body, at most as long as the handler takes.

        Raises:
            ContentTooLarge: as soon as it is known to be longer.
            BodyTooSlow: when it takes longer than the service waits.
            MalformedBody: when it is empty and the handler needs one.
        """
        state = self._connection_state
        if state.body is Empty:
            state.body = await self._receive_body()
        if not state.body and self.plan.reader:
            raise MalformedBody(say("problem", "body.empty"))
        return state.body

    async def _receive_body(self) -> bytes:
        most = self.plan.most_bytes
        announced = self.scope["state"][RAW_HEADERS].get(b"content-length", b"0")
        if announced.isdigit() and int(announced[:20]) > most:
            await self._discard(int(announced[:20]))
            raise _too_large(most)
        if WHOLE in self.scope["state"]:
            return await self._receive_chunks(most)
        seconds: float = self.app.state.body_seconds
        try:
            async with asyncio.timeout(seconds):
                return await self._receive_chunks(most)
        except TimeoutError:
            late = say("problem", "body.too-slow", seconds=seconds)
            raise BodyTooSlow(late, headers={"connection": "close"}) from None

    async def _discard(self, announced: int) -> None:
        """Let a body go by that is too large, so that the refusal arrives: whoever is still sending does not read."""
        if announced > _MOST_DISCARDED or b"expect" in self.scope["state"][RAW_HEADERS]:
            return
        with contextlib.suppress(TimeoutError):
            async with asyncio.timeout(self.app.state.body_seconds):
                while (await self.receive()).get("more_body", False):
                    pass

    async def _receive_chunks(self, most: int) -> bytes:
        chunks: list[bytes] = []
        size, more = 0, True
        while more:
            message: Any = await self.receive()
            if message["type"] == "http.disconnect":
                raise BadRequest(say("problem", "request.closed"))
            chunk = message["body"]
            more = message.get("more_body", False)
            size += len(chunk)
            if size > most:
                raise _too_large(most)
            chunks.append(chunk)
        return chunks[0] if len(chunks) == 1 else b"".join(chunks)

    async def json(self) -> Any:
        """The body as the handler's wire type, whichever of the two encodings it came in.

        Raises:
            MalformedBody: when it cannot be read at all.
            Refusal: when it can, but is not what is wanted.
        """
        if self._json is Empty:
            body, plan = await self.body(), self.plan
            if self.encoding and plan.reader:
                self._json = plan.reader.read(body, self.encoding)
                if hasattr(self._json, "rounding"):
                    self.scope["state"][ROUNDING] = partial(getattr, self._json, "rounding")
            elif plan.reads_csv:
                # A file of blank cells takes a second: the service goes on answering meanwhile.
                self._json, _, _ = await asyncio.to_thread(plan.reads_csv, body, Unit.IN)
        return self._json

    async def under(self, unit: Unit | None, data: T) -> T:
        """The body again, now that the unit of the lengths in it that carry none is known: that of the house it is for.

        What of it cannot be read is noted in `misread`, with something else in its place: it is reported together with
        what else is wrong.

        Args:
            unit: Of the house.
            data: The body as it was read before that was known.
        """
        body, plan, again = await self.body(), self.plan, data
        misread = Faults()
        if self.encoding and plan.reader:
            again, misread = plan.reader.read_under(unit, body, self.encoding)
        elif plan.reads_csv:
            found = await asyncio.to_thread(plan.reads_csv, body, unit)
            again, self.scope["state"][CSV_PLACES], misread = cast("tuple[T, object, Faults]", found)
        if misread:
            self.scope["state"][MISREAD] = misread
        return again

    @property
    def misread(self) -> Faults:
        """The texts of the body that could not be read under its house's unit."""
        found: Faults = self.scope["state"].get(MISREAD) or Faults()
        return found


# The framework wants a handler's request declared as its own kind.
if TYPE_CHECKING:
    AnyRequest = ApiRequest
else:
    AnyRequest = Request[Any, Any, Any]


def _unsupported(headers: dict[bytes, bytes]) -> UnsupportedMediaType:
    if b"content-encoding" in headers:
        detail = say("problem", "body.encoded", formats=BOTH)
    elif given := headers.get(b"content-type", b"").decode("latin-1"):
        detail = say("problem", "body.other-type", given=given[:100], formats=BOTH)
    else:
        detail = say("problem", "body.no-type", formats=BOTH)
    return UnsupportedMediaType(detail, headers={"accept": ", ".join(BOTH)})


def _too_large(most: int) -> ContentTooLarge:
    return ContentTooLarge(say("problem", "body.too-large", most=most), headers={"connection": "close"})


def _check_query(query: bytes, known: dict[str, list[Any]]) -> None:
    """Refuse what the framework would pass over: unknown parameters, those given twice, and "null"."""
    faults = Faults()
    given: dict[str, list[str]] = {}
    for name, value in parse_qsl(query.decode("latin-1"), keep_blank_values=True):
        given.setdefault(name, []).append(value)
    for name, values in given.items():
        kinds = known.get(name)
        if kinds is None:
            hint = nearest(name, frozenset(known)) or (None if known else say("hint", "parameter.none-taken"))
            detail = say("problem", "parameter.unknown", name=name[:60]) + hint
            faults.note(Fault(code="unknown-parameter", detail=detail, parameter=name[:60]))
        elif len(values) > 1 and not any(get_origin(kind) is list for kind in kinds):
            detail = say("problem", "parameter.given-twice", name=name, times=len(values))
            faults.note(Fault(code="wrong-parameter", detail=detail, parameter=name))
        elif str not in kinds and any(value.lower() == "null" for value in values):
            detail = say("problem", "parameter.null", name=name)
            faults.note(Fault(code="wrong-parameter", detail=detail, parameter=name))
    faults.raise_any()
