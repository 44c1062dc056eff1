"""What was typed beside a score is kept apart from it, and a score knows the message that told it."""

import re

import sqlalchemy as sa
from alembic import op

revision = "0016"
down_revision = "0015"
branch_labels = None
depends_on = None

SCORE = sa.table(
    "score", sa.column("id"), sa.column("person_id"), sa.column("text"), sa.column("body", sa.JSON())
)
HEALTH = sa.table(
    "score_health", sa.column("score_id"), sa.column("person_id"), sa.column("text"), sa.column("pain")
)
# Numbers with the units of scores, and how it was done; the rest of what was typed is the athlete's own.
TOLD = re.compile(
    r"[0-9]+(?:\s?[:+x.,]\s?[0-9]+)*(?:\s?(?:rounds?|rds?|reps?|min|sec|kg|lbs?|km|m|cals?)\b)?"
    r"|\b(?:not )?(?:as (?:written|prescribed)|r ?x|scaled|modified|lighter|easier|capped)\b",
    re.IGNORECASE,
)


def upgrade() -> None:
    op.create_table(
        "score_health",
        sa.Column("score_id", sa.Integer(), sa.ForeignKey("score.id"), primary_key=True),
        sa.Column("person_id", sa.Integer(), sa.ForeignKey("person.id"), nullable=False),
        sa.Column("text", sa.String(), nullable=False),
        sa.Column("pain", sa.String(), nullable=True),
    )
    op.create_index("ix_score_health_person_id", "score_health", ["person_id"])
    with op.batch_alter_table("score") as score:
        score.add_column(sa.Column("told_chat_id", sa.Integer(), nullable=True))
        score.add_column(sa.Column("told_message_id", sa.BigInteger(), nullable=True))
        score.create_foreign_key("fk_score_told_chat_id_chat", "chat", ["told_chat_id"], ["id"])
        score.create_index("ix_score_told_chat_id_told_message_id", ["told_chat_id", "told_message_id"])
    connection = op.get_bind()
    for row in connection.execute(sa.select(SCORE)).mappings().all():
        _part(connection, row)
    # Who asked is known of the next such question.
    connection.execute(sa.text("DELETE FROM question WHERE kind = 'coach'"))


def _part(connection: sa.Connection, row: sa.RowMapping) -> None:
    pain, bare = row["body"].get("pain"), " ".join(TOLD.findall(row["text"]))
    if pain or bare != row["text"]:
        apart = {"score_id": row["id"], "person_id": row["person_id"], "text": row["text"], "pain": pain}
        connection.execute(sa.insert(HEALTH), apart)
    body = {name: value for name, value in row["body"].items() if name not in {"pain", "note"}}
    connection.execute(sa.update(SCORE).where(SCORE.c.id == row["id"]).values(text=bare, body=body))


def downgrade() -> None:
    connection = op.get_bind()
    for row in connection.execute(sa.select(HEALTH)).mappings().all():
        connection.execute(sa.update(SCORE).where(SCORE.c.id == row["score_id"]).values(text=row["text"]))
    with op.batch_alter_table("score") as score:
        score.drop_index("ix_score_told_chat_id_told_message_id")
        score.drop_column("told_message_id")
        score.drop_column("told_chat_id")
    op.drop_table("score_health")
