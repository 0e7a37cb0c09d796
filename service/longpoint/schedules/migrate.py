"""Bringing a database to a revision, up or down, with the migrations inside this package."""

from pathlib import Path

from alembic import command
from alembic.config import Config
from alembic.runtime.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import Connection

from longpoint.schedules.errors import WrongDatabase
from longpoint.schedules.store import Store


def migration_config(connection: Connection | None = None) -> Config:
    """Alembic's configuration, with the connection its environment is to use."""
    config = Config()
    config.set_main_option("script_location", str(Path(__file__).parent / "migrations"))
    config.attributes["connection"] = connection
    return config


def known_revisions() -> list[str]:
    """Every database revision there is a migration to, oldest first."""
    script = ScriptDirectory.from_config(migration_config())
    return [one.revision for one in script.walk_revisions()][::-1]


async def migrate(store: Store, target: str = "head") -> tuple[str | None, str | None]:
    """Migrate to a revision ("head", "base" or its number); gives where the database was and is now.

    All of it happens in one transaction: a migration that fails leaves the database as it was.

    Raises:
        WrongDatabase: when there is no such revision, or the database is at one this service does not know.
    """
    known = known_revisions()
    if target not in ("head", "base", *known):
        raise WrongDatabase(f"There is no database revision {target}; there are {', '.join(known)}.")
    before = await store.schema()
    if before is not None and before not in known:
        raise WrongDatabase(
            f"{store.name} is at revision {before}, which this service does not know; run the newer service."
        )
    async with store.writing() as connection:
        await connection.run_sync(move, target)
    return before, await store.schema()


def move(connection: Connection, target: str) -> None:
    """Bring the database of a transaction to a revision that there is, up or down."""
    known = known_revisions()
    order = ["base", *known]
    now = MigrationContext.configure(connection).get_current_revision()
    down = order.index(known[-1] if target == "head" else target) < order.index(now or "base")
    (command.downgrade if down else command.upgrade)(migration_config(connection), target)
