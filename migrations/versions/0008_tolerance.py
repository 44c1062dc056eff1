"""What counts as written in a group."""

import sqlalchemy as sa
from alembic import op

revision = "0008"
down_revision = "0007"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column(
        "training_group", sa.Column("lighter_percent", sa.Integer(), nullable=False, server_default="0")
    )
    op.add_column(
        "training_group",
        sa.Column("other_implement", sa.Boolean(), nullable=False, server_default=sa.false()),
    )


def downgrade() -> None:
    op.drop_column("training_group", "other_implement")
    op.drop_column("training_group", "lighter_percent")
