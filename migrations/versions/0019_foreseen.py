"""What was expected of a version stays with it."""

import sqlalchemy as sa
from alembic import op

revision = "0019"
down_revision = "0018"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("version", sa.Column("foreseen_schema", sa.Integer(), nullable=True))
    op.add_column("version", sa.Column("foreseen", sa.JSON(), nullable=True))


def downgrade() -> None:
    with op.batch_alter_table("version") as batch:
        batch.drop_column("foreseen")
        batch.drop_column("foreseen_schema")
