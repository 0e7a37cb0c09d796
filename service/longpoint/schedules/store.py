"""The way into the database: transactions that read, and transactions that write, with failures told apart."""

import asyncio
from collections.abc import AsyncIterator, Iterator
from contextlib import asynccontextmanager, contextmanager
from pathlib import Path

from sqlalchemy import inspect, text
from sqlalchemy.exc import DBAPIError, IntegrityError, ProgrammingError, SQLAlchemyError
from sqlalchemy.exc import TimeoutError as PoolTimeout
from sqlalchemy.ext.asyncio import AsyncConnection

from longpoint.schedules.engine import BUSY_SECONDS, IMMEDIATE, database_url, is_sqlite, open_engine
from longpoint.schedules.errors import DatabaseUnavailable, WrongDatabase
from longpoint.schedules.turns import Turns

SCHEMA = "0004"
"""The database revision this code works with: the newest in migrations/versions."""


class Store:
    """One database.

    Args:
        address: sqlite:///file.db or postgresql://...
        create: Whether an SQLite file may be made where there is none.
        connections: How many there are at most.
        wait: Seconds to wait for one of them.
    """

    def __init__(
        self, address: str, *, create: bool = False, connections: int = 10, wait: float = BUSY_SECONDS
    ) -> None:
        self.url = database_url(address)
        self.engine = open_engine(self.url, create=create, connections=connections)
        self.sqlite = is_sqlite(self.url)
        self._turns = Turns(connections, wait)
        # SQLite has one writer at a time: within this process they queue here rather than poll the file.
        self._writing = asyncio.Lock()

    @property
    def name(self) -> str:
        """The database, without its password."""
        plain = self.url.set(drivername=self.url.get_backend_name())
        return plain.render_as_string(hide_password=True)

    @asynccontextmanager
    async def reading(self) -> AsyncIterator[AsyncConnection]:
        """A transaction that reads one consistent state.

        Raises:
            DatabaseUnavailable: when the database cannot be used.
            DatabaseBusy: when its turn did not come in time.
        """
        with _told_apart():
            async with self._turns.take(under_way=True), self.engine.connect() as connection:
                if not self.sqlite:
                    await connection.execution_options(
                        isolation_level="REPEATABLE READ", postgresql_readonly=True
                    )
                async with connection.begin():
                    yield connection

    @asynccontextmanager
    async def looking(self) -> AsyncIterator[AsyncConnection]:
        """A connection to read by one statement, with no transaction around it: one round trip and not three.

        It is for what a request begins with: transactions of those already under way go first.

        Raises:
            DatabaseUnavailable: when the database cannot be used.
            DatabaseBusy: when its turn did not come in time.
        """
        with _told_apart():
            async with self._turns.take(under_way=False), self.engine.connect() as connection:
                if not self.sqlite:
                    await connection.execution_options(isolation_level="AUTOCOMMIT")
                yield connection

    @asynccontextmanager
    async def writing(self) -> AsyncIterator[AsyncConnection]:
        """A transaction that writes: committed when the block ends, undone when it raises.

        Raises:
            DatabaseUnavailable: when the database cannot be used; nothing is saved then.
            DatabaseBusy: when its turn did not come in time.
        """
        if not self.sqlite:
            with _told_apart():
                async with self._turns.take(under_way=True), self.engine.begin() as connection:
                    yield connection
            return
        async with self._writing:
            with _told_apart():
                async with self._turns.take(under_way=True), self.engine.connect() as connection:
                    await connection.execution_options(**{IMMEDIATE: True})
                    async with connection.begin():
                        yield connection

    async def schema(self) -> str | None:
        """The revision the database is at; None when it holds nothing of this service."""
        async with self.reading() as connection:
            tables = await connection.run_sync(lambda sync: inspect(sync).get_table_names())
            if "alembic_version" not in tables:
                return None
            found = await connection.execute(text("SELECT version_num FROM alembic_version"))
            return found.scalar_one_or_none()

    async def refuse_wrong_schema(self, *, next_too: bool = False) -> None:
        """Make sure the database is of the revision this code works with.

        Args:
            next_too: Whether the revision after it will do. A migration only adds to what the code of the revision
                before it uses, so that code can still serve, while the code that came with it takes over.

        Raises:
            WrongDatabase: when it is not, with what to do.
            DatabaseUnavailable: when that cannot be found out.
        """
        if self.sqlite and not Path(str(self.url.database)).exists():
            raise WrongDatabase(f"{self.name} does not exist; run `python -m longpoint migrate` to make it.")
        found = await self.schema()
        if found == SCHEMA or (next_too and found == f"{int(SCHEMA) + 1:04}"):
            return
        if found is None:
            raise WrongDatabase(f"{self.name} has no tables yet; run `python -m longpoint migrate` first.")
        if found < SCHEMA:
            raise WrongDatabase(
                f"{self.name} is at revision {found} and this service needs {SCHEMA}; back it up, then run "
                "`python -m longpoint migrate`."
            )
        raise WrongDatabase(
            f"{self.name} is at revision {found}, newer than the {SCHEMA} this service knows; run the newer "
            "service, or migrate the database down with it."
        )

    async def close(self) -> None:
        """Close every connection."""
        await self.engine.dispose()


@contextmanager
def _told_apart() -> Iterator[None]:
    """Turn failures of the database itself into `DatabaseUnavailable`; mistakes of this code stay what they are."""
    try:
        yield
    except (IntegrityError, ProgrammingError):
        raise
    except (DBAPIError, PoolTimeout, OSError, TimeoutError) as failure:
        cause = failure.orig if isinstance(failure, DBAPIError) else failure
        raise DatabaseUnavailable(f"{type(cause).__name__}: {cause}") from failure
    except SQLAlchemyError as failure:
        if isinstance(failure.__cause__, (OSError, DBAPIError)):
            raise DatabaseUnavailable(str(failure)) from failure
        raise
