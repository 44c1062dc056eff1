"""Weeks that a coach calls easy, for the whole group or for one athlete."""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0011"
down_revision = "0010"
branch_labels = None
depends_on = None

_BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    op.create_table(
        "easy_week",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("group_id", _BIG, nullable=False),
        sa.Column("person_id", _BIG, nullable=True),
        sa.Column("monday", sa.Date(), nullable=False),
        sa.Column("by_id", _BIG, nullable=False),
        sa.Column("made_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.Column("undone_at", sqlmodel.UTCDateTime(), nullable=True),
        sa.ForeignKeyConstraint(
            ["group_id"], ["training_group.id"], name="fk_easy_week_group_id_training_group"
        ),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name="fk_easy_week_person_id_person"),
        sa.ForeignKeyConstraint(["by_id"], ["person.id"], name="fk_easy_week_by_id_person"),
        sa.PrimaryKeyConstraint("id", name="pk_easy_week"),
    )
    op.create_index("ix_easy_week_group_id_monday", "easy_week", ["group_id", "monday"])


def downgrade() -> None:
    op.drop_table("easy_week")
