"""Whoever wants no message unasked is only answered."""

import sqlalchemy as sa
from alembic import op

revision = "0018"
down_revision = "0017"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("chat", sa.Column("only_answers", sa.Boolean(), nullable=False, server_default=sa.false()))


def downgrade() -> None:
    with op.batch_alter_table("chat") as batch:
        batch.drop_column("only_answers")
