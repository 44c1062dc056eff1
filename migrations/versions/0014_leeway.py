"""What a coach lets single athletes do: go heavier than written, or do fewer before it gets easier."""

import sqlalchemy as sa
from alembic import op

revision = "0014"
down_revision = "0013"
branch_labels = None
depends_on = None

COLUMNS = ("goes_heavier", "volume_first")


def upgrade() -> None:
    for name in COLUMNS:
        op.add_column("membership", sa.Column(name, sa.Boolean(), nullable=False, server_default=sa.false()))


def downgrade() -> None:
    for name in COLUMNS:
        op.drop_column("membership", name)
