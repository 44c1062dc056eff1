"""Athletes whose versions wait for a coach's OK, and the OKs that were given."""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0007"
down_revision = "0006"
branch_labels = None
depends_on = None

_BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    op.add_column("membership", sa.Column("held", sa.Boolean(), nullable=False, server_default=sa.false()))
    op.create_table(
        "coach_ok",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("session_id", _BIG, nullable=False),
        sa.Column("session_revision", sa.Integer(), nullable=False),
        sa.Column("person_id", _BIG, nullable=False),
        sa.Column("by_id", _BIG, nullable=False),
        sa.Column("at", sqlmodel.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["session_id"], ["session.id"], name="fk_coach_ok_session_id_session"),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name="fk_coach_ok_person_id_person"),
        sa.ForeignKeyConstraint(["by_id"], ["person.id"], name="fk_coach_ok_by_id_person"),
        sa.PrimaryKeyConstraint("id", name="pk_coach_ok"),
        sa.UniqueConstraint(
            "session_id",
            "session_revision",
            "person_id",
            name="uq_coach_ok_session_id_session_revision_person_id",
        ),
    )
    op.create_index("ix_coach_ok_person_id", "coach_ok", ["person_id"])


def downgrade() -> None:
    op.drop_table("coach_ok")
    op.drop_column("membership", "held")
