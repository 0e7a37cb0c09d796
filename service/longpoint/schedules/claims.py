"""Claims of sticks: who is about to cut one, and until when. They are no part of the history."""

from __future__ import annotations

from typing import Annotated

import msgspec
from msgspec import Meta
from sqlalchemy import select, update
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.schedules.basics import moment
from longpoint.schedules.models import StickRecord
from longpoint.schedules.rows import StickRow
from longpoint.texts import Sentence, say
from longpoint.values import Given, Name

MOST_SECONDS = 86_400


class Claim(Given, frozen=True, kw_only=True):
    """That somebody is about to cut a stick.

    Attributes:
        by: The name of who cuts it, or of the saw.
        seconds: The time that the claim lasts, in seconds; nobody else can cut the stick until then.
    """

    by: Name
    seconds: Annotated[int, Meta(ge=1, le=MOST_SECONDS)] = 1800


class Claimed(msgspec.Struct, frozen=True):
    """A claim that is kept.

    Attributes:
        by: Whose.
        until: When it is over.
    """

    by: str
    until: str

    @property
    def over(self) -> bool:
        """Whether its time is over."""
        return self.until <= moment()

    def holds_off(self, by: str | None) -> bool:
        """Whether it keeps somebody, or one who does not say who it is, from cutting the stick."""
        return self.by != by and not self.over

    def note(self, name: str, by: str | None) -> Sentence | None:
        """What is said to somebody who cuts or claims the stick when the time is over."""
        if not self.over:
            return None
        if self.by == by:
            return say("note", "claim.yours-was-over", stick=name, until=self.until)
        return say("note", "claim.was-over", stick=name, by=self.by, until=self.until)


def claim_of(row: StickRow) -> Claimed | None:
    """The claim of a stick; None where nobody ever claimed it, or it was given up."""
    if row.claimed_by is None or row.claimed_until is None:
        return None
    return Claimed(row.claimed_by, row.claimed_until)


async def claim(connection: AsyncConnection, row: StickRow, asked: Claim) -> StickRow:
    """Keep a claim of a stick of a schedule that is held, and whose was over that it takes the place of."""
    lost = row.lost_by, row.lost_at
    if row.claimed_by not in (None, asked.by):
        lost = row.claimed_by, row.claimed_until
    return await _keep(connection, row, (asked.by, moment(asked.seconds)), lost)


async def release(connection: AsyncConnection, row: StickRow) -> StickRow:
    """Let a stick go."""
    return row if claim_of(row) is None else await _keep(connection, row, (None, None), (None, None))


async def claimed_now(connection: AsyncConnection, schedule_id: str) -> list[StickRow]:
    """The sticks of a schedule that somebody has claimed."""
    own = StickRecord.schedule_id == schedule_id, StickRecord.claimed_until > moment()
    return [StickRow.of(row) for row in await connection.execute(select(StickRecord).where(*own))]


_Who = tuple[str | None, str | None]


async def _keep(connection: AsyncConnection, row: StickRow, claim: _Who, lost: _Who) -> StickRow:
    now = row._replace(claimed_by=claim[0], claimed_until=claim[1], lost_by=lost[0], lost_at=lost[1])
    own = update(StickRecord).where(StickRecord.schedule_id == row.schedule_id, StickRecord.name == row.name)
    await connection.execute(own.values(now._asdict()))
    return now
