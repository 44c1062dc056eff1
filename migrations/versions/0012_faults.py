"""What coaches noted about how single athletes move."""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0012"
down_revision = "0011"
branch_labels = None
depends_on = None

_BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    op.create_table(
        "fault",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("group_id", _BIG, nullable=False),
        sa.Column("person_id", _BIG, nullable=False),
        sa.Column("schema_number", sa.Integer(), nullable=False),
        sa.Column("body", sa.JSON(), nullable=False),
        sa.Column("by_id", _BIG, nullable=False),
        sa.Column("written_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.Column("made_at", sqlmodel.UTCDateTime(), nullable=True),
        sa.Column("lifted_at", sqlmodel.UTCDateTime(), nullable=True),
        sa.ForeignKeyConstraint(["group_id"], ["training_group.id"], name="fk_fault_group_id_training_group"),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name="fk_fault_person_id_person"),
        sa.ForeignKeyConstraint(["by_id"], ["person.id"], name="fk_fault_by_id_person"),
        sa.PrimaryKeyConstraint("id", name="pk_fault"),
    )
    op.create_index("ix_fault_group_id_person_id", "fault", ["group_id", "person_id"])


def downgrade() -> None:
    op.drop_table("fault")
