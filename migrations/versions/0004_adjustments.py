"""What athletes ask of single lines of their versions."""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None

_BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    op.create_table(
        "adjustment",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("session_id", _BIG, nullable=False),
        sa.Column("person_id", _BIG, nullable=False),
        sa.Column("version_id", _BIG, nullable=False),
        sa.Column("block", sa.Integer(), nullable=False),
        sa.Column("part", sqlmodel.AutoString(), nullable=False),
        sa.Column("line", sa.Integer(), nullable=False),
        sa.Column("step", sqlmodel.AutoString(), nullable=False),
        sa.Column("cause", sqlmodel.AutoString(), nullable=True),
        sa.Column("schema_number", sa.Integer(), nullable=False),
        sa.Column("body", sa.JSON(), nullable=True),
        sa.Column("made_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.Column("undone_at", sqlmodel.UTCDateTime(), nullable=True),
        sa.ForeignKeyConstraint(["session_id"], ["session.id"], name="fk_adjustment_session_id_session"),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name="fk_adjustment_person_id_person"),
        sa.ForeignKeyConstraint(["version_id"], ["version.id"], name="fk_adjustment_version_id_version"),
        sa.PrimaryKeyConstraint("id", name="pk_adjustment"),
    )
    op.create_index("ix_adjustment_session_id_person_id", "adjustment", ["session_id", "person_id"])


def downgrade() -> None:
    op.drop_table("adjustment")
