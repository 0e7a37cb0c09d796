"""Operations of the document's part "plans" as methods. Generated; do not edit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from longpoint_sdk import calls, types
from longpoint_sdk._async_client import BaseAsyncClient
from longpoint_sdk._pages import AsyncPages
from longpoint_sdk._versioned import Versioned


class Plans(BaseAsyncClient):
    """Operations as methods."""

    def list_plans(self, schedule_id: str, *, limit: int | None = None) -> AsyncPages[types.PlanLine]:
        """List plans.

        Plans of the schedule's sticks, the latest first. One that nothing was printed or cut from goes by
        age.

        Args:
            schedule_id: The id of a schedule.
            limit: How many to fetch at a time, at most 500; 50 when left out. The list goes on to its end.

        Returns:
            The list, to iterate over: each page is fetched when it is reached.
        """
        return AsyncPages(self, calls.list_plans(schedule_id, limit=limit))

    async def make_plan(
        self,
        schedule_id: str,
        request: types.PlanAsked | Mapping[str, Any],
        *,
        idempotency_key: str | None = None,
    ) -> Versioned[types.StoredPlan]:
        """Plan the sticks.

        The plan of what is left to cut, searched for as long as is asked: 201 with the plan that then stands.

        It is kept, and every answer and sheet of the schedule comes from it until what it was made from
        changes. Asked again, the same plan is answered; a longer search that finds a cheaper one makes a new
        plan, and one that only learns how good the old one is says so in it. Sticks of the plan before stay
        as they are where that costs nothing. Ask for `text/event-stream` to hear how the search comes along:
        `progress` for each better plan or bound of a profile, then `answer` with what JSON would have been,
        or `problem`. The search goes on when nobody listens.

        Args:
            schedule_id: The id of a schedule.
            request: A `types.PlanAsked`, or a mapping of its shape.
            idempotency_key: Names this request, so that sent again it is done once; one is made when left
                out.

        Returns:
            A `Versioned`: its `value` is `types.StoredPlan`; its `etag` is the version.

        Raises:
            BodyTooSlow: The body did not come in time.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.
        """
        return await self.send(calls.make_plan(schedule_id, request, idempotency_key=idempotency_key))

    async def get_plan(
        self,
        schedule_id: str,
        number: int,
        *,
        room: dict[str, Any] | None = None,
        opening: dict[str, Any] | None = None,
        if_none_match: Versioned[types.StoredPlan] | None = None,
    ) -> Versioned[types.StoredPlan]:
        """Read a plan.

        A plan with every stick of it, those that were cut too.

        Asked for some rooms or openings, `sticks` and `buy` are of the sticks that hold any of their pieces,
        with all that is on those; what else there is, its cost and its proof, is said of the whole plan.

        Args:
            schedule_id: The id of a schedule.
            number: The number of a plan.
            room: Only the openings of these rooms.
            opening: Only the openings, or groups, of these marks.
            if_none_match: What was read before: it comes back itself while it still stands, and is not sent
                again.

        Returns:
            A `Versioned`: its `value` is `types.StoredPlan`; its `etag` is the version.
        """
        return await self.send(
            calls.get_plan(schedule_id, number, room=room, opening=opening, if_none_match=if_none_match)
        )

    async def get_stick(
        self, schedule_id: str, name: str, *, if_none_match: Versioned[types.StickDetail] | None = None
    ) -> Versioned[types.StickDetail]:
        """Read a stick.

        A stick by the name on any sheet, whatever plan that was printed from: how it is laid out, and who
        claims it.

        Args:
            schedule_id: The id of a schedule.
            name: The name of a stick: C7.
            if_none_match: What was read before: it comes back itself while it still stands, and is not sent
                again.

        Returns:
            A `Versioned`: its `value` is `types.StickDetail`; its `etag` is the version.
        """
        return await self.send(calls.get_stick(schedule_id, name, if_none_match=if_none_match))

    async def give_up_claim(self, schedule_id: str, name: str, *, by: str | None = None) -> types.StickDetail:
        """Give up a claim.

        Nobody has it claimed from now on; where nobody had, nothing changes.

        Args:
            schedule_id: The id of a schedule.
            name: The name of a stick: C7.
            by: Only where the claim is this one's; whoever's it is when left out.

        Raises:
            ScheduleArchived: The schedule is archived.
            StickChanged: The stick is laid out otherwise by now.
            StickClaimed: Somebody else has claimed the stick.
            StickCut: The stick was cut already.
        """
        return await self.send(calls.give_up_claim(schedule_id, name, by=by))

    async def claim_stick(
        self, schedule_id: str, name: str, request: types.Claim | Mapping[str, Any]
    ) -> types.StickDetail:
        """Claim a stick to cut it.

        So that two people do not cut one stick: until the claim is over nobody else can claim it or record it
        as cut.

        Claimed again by the same name it holds from now on. One that is over can be taken over; `notes` says
        whose it was.

        Args:
            schedule_id: The id of a schedule.
            name: The name of a stick: C7.
            request: A `types.Claim`, or a mapping of its shape.

        Raises:
            BodyTooSlow: The body did not come in time.
            ScheduleArchived: The schedule is archived.
            StickChanged: The stick is laid out otherwise by now.
            StickClaimed: Somebody else has claimed the stick.
            StickCut: The stick was cut already.
            ContentTooLarge: The body is too large.
            UnsupportedMediaType: The body is in a format this address does not read.

        Example:
            plan = await client.make_plan(schedule_id, types.PlanAsked())
            name = plan.value.sticks[0].name
            stick = await client.claim_stick(schedule_id, name, types.Claim(by="shop saw", seconds=600))
            print(stick.claimed_until, stick.notes)
        """
        return await self.send(calls.claim_stick(schedule_id, name, request))
