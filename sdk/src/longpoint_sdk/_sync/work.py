"""Operations of the document's part "work" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal, overload

from longpoint_sdk import calls, types
from longpoint_sdk._client import BaseClient
from longpoint_sdk._pages import Pages
from longpoint_sdk._versioned import Versioned


class Work(BaseClient):
    """Operations as methods."""

    def compute_schedule_cut_list(
        self,
        schedule_id: str,
        *,
        include: dict[str, Any] | None = None,
        room: dict[str, Any] | None = None,
        opening: dict[str, Any] | None = None,
        if_none_match: Versioned[types.StillToCut] | None = None,
    ) -> Versioned[types.StillToCut]:
        """Work out what is still to be cut.

        The cut list of what is not cut yet, from the plan that stands.

        Where there is no plan yet, the first that is found is kept and answered, and a search for a cheaper
        one goes on; `plan` says how good it is. Pieces cut before that are not right any more are reported,
        with what each can be cut again into and what must be cut from stock once more. Asked for some rooms
        or openings, `cut_list` is of these: their pieces, and the sticks that hold any of them with all that
        is on those; so are `held` and `cost_later`, in which a stick that holds pieces of others besides
        counts whole.

        Args:
            schedule_id: The id of a schedule.
            include: Sections to work out, too; materials, hours and cost are the whole house's, and what was
                paid for lengths on hand and for sticks that are cut is in the cost.
            room: Only the openings of these rooms.
            opening: Only the openings, or groups, of these marks.
            if_none_match: What was read before: it comes back itself while it still stands, and is not sent
                again.

        Returns:
            A `Versioned`: its `value` is `types.StillToCut`; its `etag` is the version.

        Example:
            work = client.compute_schedule_cut_list(schedule_id, include=["saw_order"])
            for line in work.value.cut_list.buy:
                print(line.quantity, "x", line.length, line.profile, line.cost)
        """
        return self.send(
            calls.compute_schedule_cut_list(
                schedule_id, include=include, room=room, opening=opening, if_none_match=if_none_match
            )
        )

    def cut_sticks(
        self,
        schedule_id: str,
        request: types.CutSticks | Mapping[str, Any],
        *,
        why: str | None = None,
        if_match: Versioned[Any] | str | None = None,
        idempotency_key: str | None = None,
    ) -> types.WorkMade:
        """Record sticks cut as they were planned.

        Every piece on the sticks is cut, lengths on hand are used up, and offcuts long enough to keep are on
        hand.

        A stick is taken by its name, from whatever sheet that was read, as long as the plan that stands has
        it; recorded again, it changes nothing. The plan stands as it was, with its other sticks under their
        names. One that somebody else has claimed is refused; a claim that is over keeps nobody off, and
        `notes` says that it is.

        Args:
            schedule_id: The id of a schedule.
            request: A `types.CutSticks`, or a mapping of its shape.
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `compute_schedule_cut_list` that this is made from, or its `etag`: a
                newer one is left as it is. Left out, whatever stands is changed.
            idempotency_key: Names this request, so that sent again it is done once; one is made when left
                out.

        Raises:
            BodyTooSlow: The body did not come in time.
            ScheduleArchived: The schedule is archived.
            StickChanged: The stick is laid out otherwise by now.
            StickClaimed: Somebody else has claimed the stick.
            StickCut: The stick was cut already.
            PreconditionFailed: It was changed since it was read. The VersionConflict holds `mine` and
                `current`.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.

        Example:
            plan = client.make_plan(schedule_id, types.PlanAsked())
            first = types.CutSticks(sticks=[plan.value.sticks[0].name], by="shop saw")
            made = client.cut_sticks(schedule_id, first)
            print(made.lengths, made.notes)
        """
        return self.send(
            calls.cut_sticks(
                schedule_id, request, why=why, if_match=if_match, idempotency_key=idempotency_key
            )
        )

    def get_sticks_drawing(
        self,
        schedule_id: str,
        *,
        feet: bool | None = None,
        room: dict[str, Any] | None = None,
        opening: dict[str, Any] | None = None,
        if_none_match: Versioned[bytes] | None = None,
        accept: Literal["image/svg+xml"] = "image/svg+xml",
    ) -> Versioned[bytes]:
        """Draw the sticks to scale.

        Every stick that is still to be cut, with its pieces and what is left of it, as SVG.

        Args:
            schedule_id: The id of a schedule.
            feet: Write lengths in drawings that are in inches in feet and inches.
            room: Only the openings of these rooms.
            opening: Only the openings, or groups, of these marks.
            if_none_match: What was read before: it comes back itself while it still stands, and is not sent
                again.
            accept: The media type of the file; image/svg+xml is the only one.

        Returns:
            A `Versioned`: its `value` is the bytes of a file; its `etag` is the version.
        """
        return self.send(
            calls.get_sticks_drawing(
                schedule_id, feet=feet, room=room, opening=opening, if_none_match=if_none_match, accept=accept
            )
        )

    def get_opening_drawing(
        self,
        schedule_id: str,
        opening: str,
        *,
        drawing: Literal["elevation", "section", "piece"] | None = None,
        piece: str | None = None,
        feet: bool | None = None,
        if_none_match: Versioned[bytes] | None = None,
        accept: Literal["image/svg+xml"] = "image/svg+xml",
    ) -> Versioned[bytes]:
        """Draw an opening to scale.

        The elevation, the section, or one piece as it lies on the saw, as SVG.

        By the mark of a group, what its openings share.

        Args:
            schedule_id: The id of a schedule.
            opening: An opening's id, or its mark (its id when the mark has a slash in it).
            drawing: Which drawing an SVG answer is; the elevation when left out.
            piece: The piece to draw, for `drawing=piece`: its `key` in the JSON answer, or its number, as
                `K1-4`.
            feet: Write lengths in drawings that are in inches in feet and inches.
            if_none_match: What was read before: it comes back itself while it still stands, and is not sent
                again.
            accept: The media type of the file; image/svg+xml is the only one.

        Returns:
            A `Versioned`: its `value` is the bytes of a file; its `etag` is the version.

        Example:
            drawing = client.get_opening_drawing(schedule_id, "K1", drawing="piece", piece="head_casing")
            Path("head.svg").write_bytes(drawing.value)
        """
        return self.send(
            calls.get_opening_drawing(
                schedule_id,
                opening,
                drawing=drawing,
                piece=piece,
                feet=feet,
                if_none_match=if_none_match,
                accept=accept,
            )
        )

    @overload
    def get_schedule_sheet(
        self,
        schedule_id: str,
        sheet: Literal[
            "cut-list",
            "opening-sheet",
            "stick-sheet",
            "material-list",
            "cost-sheet",
            "measure-sheet",
            "labels",
        ],
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
        skip: int | None = None,
        room: dict[str, Any] | None = None,
        opening: dict[str, Any] | None = None,
        if_none_match: Versioned[types.SheetContents] | None = None,
    ) -> Versioned[types.SheetContents]: ...

    @overload
    def get_schedule_sheet(
        self,
        schedule_id: str,
        sheet: Literal[
            "cut-list",
            "opening-sheet",
            "stick-sheet",
            "material-list",
            "cost-sheet",
            "measure-sheet",
            "labels",
        ],
        *,
        accept: Literal["application/pdf", "text/csv", "text/html"],
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
        skip: int | None = None,
        room: dict[str, Any] | None = None,
        opening: dict[str, Any] | None = None,
        if_none_match: Versioned[types.SheetContents] | None = None,
    ) -> Versioned[bytes]: ...

    @overload
    def get_schedule_sheet(
        self,
        schedule_id: str,
        sheet: Literal[
            "cut-list",
            "opening-sheet",
            "stick-sheet",
            "material-list",
            "cost-sheet",
            "measure-sheet",
            "labels",
        ],
        *,
        accept: str,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
        skip: int | None = None,
        room: dict[str, Any] | None = None,
        opening: dict[str, Any] | None = None,
        if_none_match: Versioned[types.SheetContents] | None = None,
    ) -> Any: ...

    def get_schedule_sheet(
        self,
        schedule_id: str,
        sheet: Literal[
            "cut-list",
            "opening-sheet",
            "stick-sheet",
            "material-list",
            "cost-sheet",
            "measure-sheet",
            "labels",
        ],
        *,
        paper: Literal["letter", "a4"] | None = None,
        title: str | None = None,
        feet: bool | None = None,
        table: str | None = None,
        skip: int | None = None,
        room: dict[str, Any] | None = None,
        opening: dict[str, Any] | None = None,
        if_none_match: Versioned[types.SheetContents] | None = None,
        accept: str = "application/json",
    ) -> Any:
        """Make a sheet of a schedule.

        A sheet to print, with the schedule's shop settings and lengths on hand.

        Stick sheet, cut list, labels and the sticks to buy are of what is not cut yet; opening and measure
        sheet, materials and hours are the whole house's, or of the rooms and openings that are asked for.
        `title` is the schedule's name when left out. A sheet of sticks that were not planned with a search
        yet waits a few seconds for that, so that what is printed stands; where it is not over then, the sheet
        says that it is not proven, and the search goes on.

        Args:
            schedule_id: The id of a schedule.
            sheet: Which sheet.
            paper: What a sheet is printed on; letter when left out.
            title: Whose house it is: printed at the head and part of the file's name.
            feet: Write lengths in drawings that are in inches in feet and inches.
            table: Which of the sheet's tables a CSV answer holds; the main one when left out.
            skip: Places used up on the first sheet of labels.
            room: Only the openings of these rooms.
            opening: Only the openings, or groups, of these marks.
            if_none_match: What was read before: it comes back itself while it still stands, and is not sent
                again.
            accept: The media type of a file to have instead of data: application/pdf, text/csv, text/html.

        Returns:
            A `Versioned`: its `value` is `types.SheetContents`, or the bytes of a file where `accept` asks
            for one; its `etag` is the version.

        Example:
            sheet = client.get_schedule_sheet(schedule_id, "stick-sheet", accept="application/pdf")
            Path("stick-sheet.pdf").write_bytes(sheet.value)
        """
        return self.send(
            calls.get_schedule_sheet(
                schedule_id,
                sheet,
                paper=paper,
                title=title,
                feet=feet,
                table=table,
                skip=skip,
                room=room,
                opening=opening,
                if_none_match=if_none_match,
                accept=accept,
            )
        )

    def list_pieces(
        self,
        schedule_id: str,
        *,
        limit: int | None = None,
        opening: str | None = None,
        state: types.PieceState | None = None,
    ) -> Pages[types.StoredPiece]:
        """List pieces that were cut.

        Every piece that is in the shop, on the wall, or was spoiled; the first recorded first.

        Args:
            schedule_id: The id of a schedule.
            limit: How many to fetch at a time, at most 500; 50 when left out. The list goes on to its end.
            opening: Only those of this opening or group, by its mark or id.
            state: Only those in this state.

        Returns:
            The list, to iterate over: each page is fetched when it is reached.
        """
        return Pages(self, calls.list_pieces(schedule_id, limit=limit, opening=opening, state=state))

    def record_work(
        self,
        schedule_id: str,
        request: types.Work | Mapping[str, Any],
        *,
        why: str | None = None,
        if_match: Versioned[Any] | str | None = None,
        idempotency_key: str | None = None,
    ) -> types.WorkMade:
        """Record what was cut, installed or spoiled.

        Pieces are taken to be cut as the cut list has them now. An If-Match header names the schedule's
        state.

        Args:
            schedule_id: The id of a schedule.
            request: A `types.Work`, or a mapping of its shape.
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `get_schedule` that this is made from, or its `etag`: a newer one is
                left as it is. Left out, whatever stands is changed.
            idempotency_key: Names this request, so that sent again it is done once; one is made when left
                out.

        Raises:
            BodyTooSlow: The body did not come in time.
            ScheduleArchived: The schedule is archived.
            StickChanged: The stick is laid out otherwise by now.
            StickClaimed: Somebody else has claimed the stick.
            StickCut: The stick was cut already.
            PreconditionFailed: It was changed since it was read. The VersionConflict holds `mine` and
                `current`.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.

        Example:
            head = types.PieceDone(opening="K1", piece="head_casing", state="cut")
            made = client.record_work(schedule_id, types.Work(pieces=[head]))
        """
        return self.send(
            calls.record_work(
                schedule_id, request, why=why, if_match=if_match, idempotency_key=idempotency_key
            )
        )

    def remove_piece(
        self, schedule_id: str, piece_id: str, *, if_match: Versioned[Any] | str, why: str | None = None
    ) -> types.Made:
        """Strike a piece that was recorded by mistake.

        Its place counts as not cut again. A piece that was cut and spoiled is recorded as spoiled instead.

        With the last piece of a stick that was recorded as cut, the stick counts as not cut: the offcut that
        it left goes from the lengths on hand, and the length of a lot that it was is there again.

        Args:
            schedule_id: The id of a schedule.
            piece_id: The id of a piece.
            why: Why this is changed; kept with the revision.
            if_match: The `Versioned` of `get_piece` that this is made from, or its `etag`: a newer one is
                left as it is.

        Raises:
            ScheduleArchived: The schedule is archived.
            StickChanged: The stick is laid out otherwise by now.
            StickClaimed: Somebody else has claimed the stick.
            StickCut: The stick was cut already.
            PreconditionFailed: It was changed since it was read. The VersionConflict holds `mine` and
                `current`.
            PreconditionRequired: No version was named to change: give `if_match`.
        """
        return self.send(calls.remove_piece(schedule_id, piece_id, why=why, if_match=if_match))

    def get_piece(
        self, schedule_id: str, piece_id: str, *, if_none_match: Versioned[types.StoredPiece] | None = None
    ) -> Versioned[types.StoredPiece]:
        """Read a piece.

        One piece that was cut.

        Args:
            schedule_id: The id of a schedule.
            piece_id: The id of a piece.
            if_none_match: What was read before: it comes back itself while it still stands, and is not sent
                again.

        Returns:
            A `Versioned`: its `value` is `types.StoredPiece`; its `etag` is the version.
        """
        return self.send(calls.get_piece(schedule_id, piece_id, if_none_match=if_none_match))
