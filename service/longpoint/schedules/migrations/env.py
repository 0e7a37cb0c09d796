"""Alembic's environment: migrates over the connection it is handed, in the transaction that is already open."""

from alembic import context

from longpoint.schedules.models import Base

connection = context.config.attributes["connection"]
if connection is None:
    raise RuntimeError("migrations run through `python -m longpoint migrate`")
context.configure(
    connection=connection, target_metadata=Base.metadata, render_as_batch=True, transactional_ddl=False
)
context.run_migrations()
