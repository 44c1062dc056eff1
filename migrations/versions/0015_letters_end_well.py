"""Where a message was sent, whether it is pinned; where a chat was before, and until when it wants silence."""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0015"
down_revision = "0014"
branch_labels = None
depends_on = None

_SENT_TO = """
UPDATE outbox SET sent_to = (SELECT address FROM chat WHERE chat.id = outbox.chat_id)
WHERE message_id IS NOT NULL
"""


def upgrade() -> None:
    op.add_column("outbox", sa.Column("sent_to", sa.BigInteger(), nullable=True))
    op.add_column("outbox", sa.Column("pinned", sa.Boolean(), nullable=False, server_default=sa.false()))
    op.execute(_SENT_TO)
    op.add_column("chat", sa.Column("former_address", sa.BigInteger(), nullable=True))
    op.add_column("chat", sa.Column("silent_until", sqlmodel.UTCDateTime(), nullable=True))
    op.create_index("ix_chat_former_address", "chat", ["former_address"])


def downgrade() -> None:
    op.drop_index("ix_chat_former_address", "chat")
    op.drop_column("chat", "silent_until")
    op.drop_column("chat", "former_address")
    op.drop_column("outbox", "pinned")
    op.drop_column("outbox", "sent_to")
