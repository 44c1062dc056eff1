"""Files that letters carry."""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None

_BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    op.create_table(
        "file",
        sa.Column("outbox_id", _BIG, nullable=False),
        sa.Column("name", sqlmodel.AutoString(), nullable=False),
        sa.Column("content", sa.LargeBinary(), nullable=False),
        sa.ForeignKeyConstraint(["outbox_id"], ["outbox.id"], name="fk_file_outbox_id_outbox"),
        sa.PrimaryKeyConstraint("outbox_id", name="pk_file"),
    )


def downgrade() -> None:
    op.drop_table("file")
