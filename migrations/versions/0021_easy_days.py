"""An easy week is an order of its days, for one athlete or for everybody in the group."""

from datetime import timedelta

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0021"
down_revision = "0020"
branch_labels = None
depends_on = None

_BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
_SHARED = (
    sa.column("id", _BIG),
    sa.column("group_id", _BIG),
    sa.column("person_id", _BIG),
    sa.column("by_id", _BIG),
    sa.column("made_at", sqlmodel.UTCDateTime()),
    sa.column("undone_at", sqlmodel.UTCDateTime()),
)
WEEK = sa.table("easy_week", *_SHARED, sa.column("monday", sa.Date()))
ORDER = sa.table(
    "coach_order",
    *(sa.column(one.name, one.type) for one in _SHARED),
    sa.column("session_id", _BIG),
    sa.column("movement", sa.String()),
    sa.column("schema_number", sa.Integer()),
    sa.column("body", sa.JSON()),
)
EASY_DAYS = "*easy*"
SIX_DAYS = timedelta(days=6)


def upgrade() -> None:
    with op.batch_alter_table("coach_order") as order:
        order.alter_column("person_id", existing_type=_BIG, nullable=True)
    connection = op.get_bind()
    for row in connection.execute(sa.select(WEEK).order_by(WEEK.c.id)).mappings().all():
        sunday = row["monday"] + SIX_DAYS
        kept = {name: row[name] for name in ("group_id", "person_id", "by_id", "made_at", "undone_at")}
        body = {"block": 1, "line": 1, "since": row["monday"].isoformat(), "until": sunday.isoformat()}
        anew = {"session_id": None, "movement": EASY_DAYS, "schema_number": 1, "body": body}
        connection.execute(sa.insert(ORDER), kept | anew)
    op.drop_table("easy_week")


def downgrade() -> None:
    """What was called easy is lost: the days of an order needn't be a week."""
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
    op.get_bind().execute(sa.delete(ORDER).where(ORDER.c.person_id.is_(None)))
    with op.batch_alter_table("coach_order") as order:
        order.alter_column("person_id", existing_type=_BIG, nullable=False)
