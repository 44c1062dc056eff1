"""How a session felt, and what coaches decide about scores."""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None

_BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    op.create_table(
        "score_mark",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("score_id", _BIG, nullable=False),
        sa.Column("mark", sqlmodel.AutoString(), nullable=False),
        sa.Column("by_id", _BIG, nullable=False),
        sa.Column("at", sqlmodel.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["score_id"], ["score.id"], name="fk_score_mark_score_id_score"),
        sa.ForeignKeyConstraint(["by_id"], ["person.id"], name="fk_score_mark_by_id_person"),
        sa.PrimaryKeyConstraint("id", name="pk_score_mark"),
    )
    op.create_index("ix_score_mark_score_id", "score_mark", ["score_id"])
    op.create_table(
        "report",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("session_id", _BIG, nullable=False),
        sa.Column("person_id", _BIG, nullable=False),
        sa.Column("effort", sa.Integer(), nullable=True),
        sa.Column("hurt", sqlmodel.AutoString(), nullable=True),
        sa.Column("changed_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["session_id"], ["session.id"], name="fk_report_session_id_session"),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name="fk_report_person_id_person"),
        sa.PrimaryKeyConstraint("id", name="pk_report"),
        sa.UniqueConstraint("session_id", "person_id", name="uq_report_session_id_person_id"),
    )


def downgrade() -> None:
    op.drop_table("report")
    op.drop_table("score_mark")
