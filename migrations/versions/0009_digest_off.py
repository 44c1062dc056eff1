"""Whether a coach wants the evening digest."""

import sqlalchemy as sa
from alembic import op

revision = "0009"
down_revision = "0008"
branch_labels = None
depends_on = None


def upgrade() -> None:
    with op.batch_alter_table("habits") as habits:
        habits.add_column(sa.Column("wants_digest", sa.Boolean(), nullable=False, server_default=sa.true()))
        habits.alter_column("wants_digest", server_default=None)


def downgrade() -> None:
    with op.batch_alter_table("habits") as habits:
        habits.drop_column("wants_digest")
