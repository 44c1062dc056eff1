"""First tables."""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None

_BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    for make in _TABLES.values():
        make()


def downgrade() -> None:
    for table in reversed(_TABLES):
        op.drop_table(table)


def _person() -> None:
    op.create_table(
        "person",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("user_id", sa.BigInteger(), nullable=False),
        sa.Column("name", sqlmodel.AutoString(), nullable=False),
        sa.Column("language", sqlmodel.AutoString(), nullable=False),
        sa.Column("created_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_person"),
        sa.UniqueConstraint("user_id", name="uq_person_user_id"),
    )


def _chat() -> None:
    op.create_table(
        "chat",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("address", sa.BigInteger(), nullable=False),
        sa.Column("kind", sqlmodel.AutoString(), nullable=False),
        sa.Column("person_id", _BIG, nullable=True),
        sa.Column("reachable", sa.Boolean(), nullable=False),
        sa.Column("unreachable_since", sqlmodel.UTCDateTime(), nullable=True),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name="fk_chat_person_id_person"),
        sa.PrimaryKeyConstraint("id", name="pk_chat"),
        sa.UniqueConstraint("address", name="uq_chat_address"),
    )
    op.create_index("ix_chat_person_id", "chat", ["person_id"])


def _consent() -> None:
    op.create_table(
        "consent",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("person_id", _BIG, nullable=False),
        sa.Column("about", sqlmodel.AutoString(), nullable=False),
        sa.Column("given_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.Column("withdrawn_at", sqlmodel.UTCDateTime(), nullable=True),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name="fk_consent_person_id_person"),
        sa.PrimaryKeyConstraint("id", name="pk_consent"),
    )
    op.create_index("ix_consent_person_id", "consent", ["person_id"])


def _profile() -> None:
    op.create_table(
        "profile",
        sa.Column("person_id", _BIG, nullable=False),
        sa.Column("schema_number", sa.Integer(), nullable=False),
        sa.Column("body", sa.JSON(), nullable=False),
        sa.Column("changed_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name="fk_profile_person_id_person"),
        sa.PrimaryKeyConstraint("person_id", name="pk_profile"),
    )


def _evidence() -> None:
    op.create_table(
        "evidence",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("person_id", _BIG, nullable=False),
        sa.Column("movement", sqlmodel.AutoString(), nullable=False),
        sa.Column("kind", sqlmodel.AutoString(), nullable=False),
        sa.Column("day", sa.Date(), nullable=True),
        sa.Column("schema_number", sa.Integer(), nullable=False),
        sa.Column("body", sa.JSON(), nullable=False),
        sa.Column("added_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name="fk_evidence_person_id_person"),
        sa.PrimaryKeyConstraint("id", name="pk_evidence"),
    )
    op.create_index("ix_evidence_person_id", "evidence", ["person_id"])


def _training_group() -> None:
    op.create_table(
        "training_group",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("chat_id", _BIG, nullable=False),
        sa.Column("title", sqlmodel.AutoString(), nullable=False),
        sa.Column("zone", sqlmodel.AutoString(), nullable=True),
        sa.Column("units", sqlmodel.AutoString(), nullable=False),
        sa.Column("state", sqlmodel.AutoString(), nullable=False),
        sa.Column("created_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["chat_id"], ["chat.id"], name="fk_training_group_chat_id_chat"),
        sa.PrimaryKeyConstraint("id", name="pk_training_group"),
        sa.UniqueConstraint("chat_id", name="uq_training_group_chat_id"),
    )


def _membership() -> None:
    op.create_table(
        "membership",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("person_id", _BIG, nullable=False),
        sa.Column("group_id", _BIG, nullable=False),
        sa.Column("role", sqlmodel.AutoString(), nullable=False),
        sa.Column("pair", sa.Integer(), nullable=True),
        sa.Column("shares_limits", sa.Boolean(), nullable=False),
        sa.Column("lead_minutes", sa.Integer(), nullable=False),
        sa.Column("joined_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.Column("left_at", sqlmodel.UTCDateTime(), nullable=True),
        sa.ForeignKeyConstraint(
            ["group_id"], ["training_group.id"], name="fk_membership_group_id_training_group"
        ),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name="fk_membership_person_id_person"),
        sa.PrimaryKeyConstraint("id", name="pk_membership"),
        sa.UniqueConstraint("person_id", "group_id", name="uq_membership_person_id_group_id"),
    )
    op.create_index("ix_membership_group_id", "membership", ["group_id"])


def _document() -> None:
    op.create_table(
        "document",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("kind", sqlmodel.AutoString(), nullable=False),
        sa.Column("schema_number", sa.Integer(), nullable=False),
        sa.Column("body", sa.JSON(), nullable=False),
        sa.Column("created_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_document"),
    )


def _session() -> None:
    op.create_table(
        "session",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("group_id", _BIG, nullable=False),
        sa.Column("author_id", _BIG, nullable=False),
        sa.Column("day", sa.Date(), nullable=False),
        sa.Column("title", sqlmodel.AutoString(), nullable=True),
        sa.Column("revision", sa.Integer(), nullable=False),
        sa.Column("state", sqlmodel.AutoString(), nullable=False),
        sa.Column("post_at", sqlmodel.UTCDateTime(), nullable=True),
        sa.Column("posted_at", sqlmodel.UTCDateTime(), nullable=True),
        sa.ForeignKeyConstraint(["author_id"], ["person.id"], name="fk_session_author_id_person"),
        sa.ForeignKeyConstraint(
            ["group_id"], ["training_group.id"], name="fk_session_group_id_training_group"
        ),
        sa.PrimaryKeyConstraint("id", name="pk_session"),
    )
    op.create_index("ix_session_author_id_state", "session", ["author_id", "state"])
    op.create_index("ix_session_group_id_state_day", "session", ["group_id", "state", "day"])
    op.create_index("ix_session_group_id_state_posted_at", "session", ["group_id", "state", "posted_at"])


def _session_revision() -> None:
    op.create_table(
        "session_revision",
        sa.Column("session_id", _BIG, nullable=False),
        sa.Column("revision", sa.Integer(), nullable=False),
        sa.Column("document_id", _BIG, nullable=False),
        sa.Column("text", sqlmodel.AutoString(), nullable=False),
        sa.Column("created_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(
            ["document_id"], ["document.id"], name="fk_session_revision_document_id_document"
        ),
        sa.ForeignKeyConstraint(
            ["session_id"], ["session.id"], name="fk_session_revision_session_id_session"
        ),
        sa.PrimaryKeyConstraint("session_id", "revision", name="pk_session_revision"),
    )


def _version() -> None:
    op.create_table(
        "version",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("session_id", _BIG, nullable=False),
        sa.Column("session_revision", sa.Integer(), nullable=False),
        sa.Column("person_id", _BIG, nullable=False),
        sa.Column("document_id", _BIG, nullable=False),
        sa.Column("revision", sa.Integer(), nullable=False),
        sa.Column("state", sqlmodel.AutoString(), nullable=False),
        sa.Column("shown_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["document_id"], ["document.id"], name="fk_version_document_id_document"),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name="fk_version_person_id_person"),
        sa.ForeignKeyConstraint(["session_id"], ["session.id"], name="fk_version_session_id_session"),
        sa.PrimaryKeyConstraint("id", name="pk_version"),
        sa.UniqueConstraint(
            "session_id", "person_id", "revision", name="uq_version_session_id_person_id_revision"
        ),
    )
    op.create_index("ix_version_person_id", "version", ["person_id"])


def _score() -> None:
    op.create_table(
        "score",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("session_id", _BIG, nullable=False),
        sa.Column("block", sa.Integer(), nullable=False),
        sa.Column("person_id", _BIG, nullable=False),
        sa.Column("version_id", _BIG, nullable=True),
        sa.Column("text", sqlmodel.AutoString(), nullable=False),
        sa.Column("schema_number", sa.Integer(), nullable=False),
        sa.Column("body", sa.JSON(), nullable=False),
        sa.Column("recorded_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.Column("entered_by", _BIG, nullable=False),
        sa.Column("state", sqlmodel.AutoString(), nullable=False),
        sa.ForeignKeyConstraint(["entered_by"], ["person.id"], name="fk_score_entered_by_person"),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name="fk_score_person_id_person"),
        sa.ForeignKeyConstraint(["session_id"], ["session.id"], name="fk_score_session_id_session"),
        sa.ForeignKeyConstraint(["version_id"], ["version.id"], name="fk_score_version_id_version"),
        sa.PrimaryKeyConstraint("id", name="pk_score"),
    )
    op.create_index("ix_score_person_id", "score", ["person_id"])
    op.create_index("ix_score_session_id_block_state", "score", ["session_id", "block", "state"])
    op.create_index("ix_score_session_id_person_id", "score", ["session_id", "person_id"])


def _question() -> None:
    op.create_table(
        "question",
        sa.Column("chat_id", _BIG, nullable=False),
        sa.Column("kind", sqlmodel.AutoString(), nullable=False),
        sa.Column("refs", sa.JSON(), nullable=False),
        sa.Column("asked_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["chat_id"], ["chat.id"], name="fk_question_chat_id_chat"),
        sa.PrimaryKeyConstraint("chat_id", name="pk_question"),
    )


def _inbox() -> None:
    op.create_table(
        "inbox",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("update_id", sa.BigInteger(), nullable=False),
        sa.Column("lane", sa.BigInteger(), nullable=False),
        sa.Column("body", sa.JSON(), nullable=False),
        sa.Column("received_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.Column("state", sqlmodel.AutoString(), nullable=False),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("error", sqlmodel.AutoString(), nullable=True),
        sa.PrimaryKeyConstraint("id", name="pk_inbox"),
        sa.UniqueConstraint("update_id", name="uq_inbox_update_id"),
    )
    op.create_index("ix_inbox_state_id", "inbox", ["state", "id"])
    op.create_index("ix_inbox_state_lane_id", "inbox", ["state", "lane", "id"])


def _outbox() -> None:
    op.create_table(
        "outbox",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("chat_id", _BIG, nullable=False),
        sa.Column("purpose", sqlmodel.AutoString(), nullable=False),
        sa.Column("method", sqlmodel.AutoString(), nullable=False),
        sa.Column("payload", sa.JSON(), nullable=False),
        sa.Column("refs", sa.JSON(), nullable=False),
        sa.Column("key", sqlmodel.AutoString(), nullable=False),
        sa.Column("subject", sqlmodel.AutoString(), nullable=True),
        sa.Column("edits_id", _BIG, nullable=True),
        sa.Column("priority", sa.Integer(), nullable=False),
        sa.Column("due_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.Column("expires_at", sqlmodel.UTCDateTime(), nullable=True),
        sa.Column("state", sqlmodel.AutoString(), nullable=False),
        sa.Column("leased_until", sqlmodel.UTCDateTime(), nullable=True),
        sa.Column("message_id", sa.BigInteger(), nullable=True),
        sa.Column("tries", sa.Integer(), nullable=False),
        sa.Column("resends", sa.Integer(), nullable=False),
        sa.Column("created_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.Column("settled_at", sqlmodel.UTCDateTime(), nullable=True),
        sa.ForeignKeyConstraint(["chat_id"], ["chat.id"], name="fk_outbox_chat_id_chat"),
        sa.ForeignKeyConstraint(["edits_id"], ["outbox.id"], name="fk_outbox_edits_id_outbox"),
        sa.PrimaryKeyConstraint("id", name="pk_outbox"),
        sa.UniqueConstraint("key", name="uq_outbox_key"),
    )
    op.create_index("ix_outbox_chat_id_message_id", "outbox", ["chat_id", "message_id"])
    op.create_index("ix_outbox_chat_id_state_id", "outbox", ["chat_id", "state", "id"])
    op.create_index("ix_outbox_state_due_at", "outbox", ["state", "due_at"])
    op.create_index("ix_outbox_state_edits_id", "outbox", ["state", "edits_id"])
    op.create_index("ix_outbox_state_expires_at", "outbox", ["state", "expires_at"])
    op.create_index("ix_outbox_state_leased_until", "outbox", ["state", "leased_until"])
    op.create_index("ix_outbox_state_priority_id", "outbox", ["state", "priority", "id"])
    op.create_index("ix_outbox_subject_state", "outbox", ["subject", "state"])


def _attempt() -> None:
    op.create_table(
        "attempt",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("outbox_id", _BIG, nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("started_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.Column("ended_at", sqlmodel.UTCDateTime(), nullable=True),
        sa.Column("outcome", sqlmodel.AutoString(), nullable=True),
        sa.Column("detail", sqlmodel.AutoString(), nullable=True),
        sa.ForeignKeyConstraint(["outbox_id"], ["outbox.id"], name="fk_attempt_outbox_id_outbox"),
        sa.PrimaryKeyConstraint("id", name="pk_attempt"),
        sa.UniqueConstraint("outbox_id", "number", name="uq_attempt_outbox_id_number"),
    )


def _due() -> None:
    op.create_table(
        "due",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("key", sqlmodel.AutoString(), nullable=False),
        sa.Column("kind", sqlmodel.AutoString(), nullable=False),
        sa.Column("at", sqlmodel.UTCDateTime(), nullable=False),
        sa.Column("refs", sa.JSON(), nullable=False),
        sa.Column("state", sqlmodel.AutoString(), nullable=False),
        sa.Column("done_at", sqlmodel.UTCDateTime(), nullable=True),
        sa.PrimaryKeyConstraint("id", name="pk_due"),
        sa.UniqueConstraint("key", name="uq_due_key"),
    )
    op.create_index("ix_due_state_at_id", "due", ["state", "at", "id"])


_TABLES = {
    "person": _person,
    "chat": _chat,
    "consent": _consent,
    "profile": _profile,
    "evidence": _evidence,
    "training_group": _training_group,
    "membership": _membership,
    "document": _document,
    "session": _session,
    "session_revision": _session_revision,
    "version": _version,
    "score": _score,
    "question": _question,
    "inbox": _inbox,
    "outbox": _outbox,
    "attempt": _attempt,
    "due": _due,
}
