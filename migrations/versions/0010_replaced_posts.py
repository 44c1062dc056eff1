"""Which posted session a changed one takes the place of."""

import sqlalchemy as sa
from alembic import op

revision = "0010"
down_revision = "0009"
branch_labels = None
depends_on = None

_BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    with op.batch_alter_table("session") as session:
        session.add_column(sa.Column("replaces_id", _BIG, nullable=True))
        session.create_foreign_key("fk_session_replaces_id_session", "session", ["replaces_id"], ["id"])


def downgrade() -> None:
    with op.batch_alter_table("session") as session:
        session.drop_constraint("fk_session_replaces_id_session", type_="foreignkey")
        session.drop_column("replaces_id")
