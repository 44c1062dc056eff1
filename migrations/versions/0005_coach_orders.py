"""What coaches decide for single athletes."""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None

_BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    op.create_table(
        "coach_order",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("group_id", _BIG, nullable=False),
        sa.Column("person_id", _BIG, nullable=False),
        sa.Column("session_id", _BIG, nullable=True),
        sa.Column("movement", sqlmodel.AutoString(), nullable=False),
        sa.Column("schema_number", sa.Integer(), nullable=False),
        sa.Column("body", sa.JSON(), nullable=False),
        sa.Column("by_id", _BIG, nullable=False),
        sa.Column("made_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.Column("undone_at", sqlmodel.UTCDateTime(), nullable=True),
        sa.ForeignKeyConstraint(
            ["group_id"], ["training_group.id"], name="fk_coach_order_group_id_training_group"
        ),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name="fk_coach_order_person_id_person"),
        sa.ForeignKeyConstraint(["session_id"], ["session.id"], name="fk_coach_order_session_id_session"),
        sa.ForeignKeyConstraint(["by_id"], ["person.id"], name="fk_coach_order_by_id_person"),
        sa.PrimaryKeyConstraint("id", name="pk_coach_order"),
    )
    op.create_index("ix_coach_order_group_id_person_id", "coach_order", ["group_id", "person_id"])


def downgrade() -> None:
    op.drop_table("coach_order")
