"""What athletes said for their coaches, in their own words."""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0013"
down_revision = "0012"
branch_labels = None
depends_on = None

_BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    op.create_table(
        "coach_word",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("group_id", _BIG, nullable=False),
        sa.Column("person_id", _BIG, nullable=False),
        sa.Column("about", sqlmodel.AutoString(), nullable=False),
        sa.Column("text", sqlmodel.AutoString(), nullable=False),
        sa.Column("said_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.Column("passed_at", sqlmodel.UTCDateTime(), nullable=True),
        sa.Column("told_on", sa.Date(), nullable=True),
        sa.Column("forgotten_at", sqlmodel.UTCDateTime(), nullable=True),
        sa.ForeignKeyConstraint(
            ["group_id"], ["training_group.id"], name="fk_coach_word_group_id_training_group"
        ),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name="fk_coach_word_person_id_person"),
        sa.PrimaryKeyConstraint("id", name="pk_coach_word"),
    )
    op.create_index("ix_coach_word_group_id_told_on", "coach_word", ["group_id", "told_on"])
    op.create_index("ix_coach_word_person_id", "coach_word", ["person_id"])


def downgrade() -> None:
    op.drop_table("coach_word")
