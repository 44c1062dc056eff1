"""Which load of a written pair is meant is the profile's alone; nothing ever wrote the membership's."""

import sqlalchemy as sa
from alembic import op

revision = "0022"
down_revision = "0021"
branch_labels = None
depends_on = None


def upgrade() -> None:
    with op.batch_alter_table("membership") as membership:
        membership.drop_column("pair")


def downgrade() -> None:
    op.add_column("membership", sa.Column("pair", sa.Integer(), nullable=True))
