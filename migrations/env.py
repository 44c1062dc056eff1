"""Alembic's entry: migrates over the connection that `core.store.migrate` brings."""

from alembic import context

from core.store.tables import Row

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=Row.metadata,
    render_as_batch=True,
    user_module_prefix="sqlmodel.",
)
context.run_migrations()
