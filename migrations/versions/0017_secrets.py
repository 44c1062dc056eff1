"""Keys that never leave the database, such as the one that presses are checked with."""

import sqlalchemy as sa
from alembic import op

revision = "0017"
down_revision = "0016"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "secret",
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("value", sa.LargeBinary(), nullable=False),
        sa.PrimaryKeyConstraint("name", name="pk_secret"),
    )


def downgrade() -> None:
    op.drop_table("secret")
