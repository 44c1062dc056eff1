"""What stands under a letter stays known, so that it can be typed."""

import sqlalchemy as sa
from alembic import op

revision = "0020"
down_revision = "0019"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("outbox", sa.Column("buttons", sa.JSON(), nullable=True))


def downgrade() -> None:
    with op.batch_alter_table("outbox") as batch:
        batch.drop_column("buttons")
