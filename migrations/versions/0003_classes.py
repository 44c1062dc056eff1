"""Classes, who comes, and how people want to be reminded."""

import sqlalchemy as sa
import sqlmodel
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None

_BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    for make in _TABLES.values():
        make()


def downgrade() -> None:
    for table in reversed(_TABLES):
        op.drop_table(table)


def _training_class() -> None:
    op.create_table(
        "training_class",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("group_id", _BIG, nullable=False),
        sa.Column("author_id", _BIG, nullable=False),
        sa.Column("title", sqlmodel.AutoString(), nullable=False),
        sa.Column("zone", sqlmodel.AutoString(), nullable=False),
        sa.Column("start", sqlmodel.AutoString(), nullable=False),
        sa.Column("rule", sqlmodel.AutoString(), nullable=True),
        sa.Column("minutes", sa.Integer(), nullable=False),
        sa.Column("link", sqlmodel.AutoString(), nullable=True),
        sa.Column("state", sqlmodel.AutoString(), nullable=False),
        sa.Column("replaces_id", _BIG, nullable=True),
        sa.Column("created_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["author_id"], ["person.id"], name="fk_training_class_author_id_person"),
        sa.ForeignKeyConstraint(
            ["group_id"], ["training_group.id"], name="fk_training_class_group_id_training_group"
        ),
        sa.ForeignKeyConstraint(
            ["replaces_id"], ["training_class.id"], name="fk_training_class_replaces_id_training_class"
        ),
        sa.PrimaryKeyConstraint("id", name="pk_training_class"),
    )
    op.create_index("ix_training_class_group_id_state", "training_class", ["group_id", "state"])


def _occurrence() -> None:
    op.create_table(
        "occurrence",
        sa.Column("class_id", _BIG, nullable=False),
        sa.Column("slot", sa.BigInteger(), nullable=False),
        sa.Column("state", sqlmodel.AutoString(), nullable=False),
        sa.Column("moved_to", sa.BigInteger(), nullable=True),
        sa.Column("changed_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(
            ["class_id"], ["training_class.id"], name="fk_occurrence_class_id_training_class"
        ),
        sa.PrimaryKeyConstraint("class_id", "slot", name="pk_occurrence"),
    )


def _sign_up() -> None:
    op.create_table(
        "sign_up",
        sa.Column("id", _BIG, nullable=False),
        sa.Column("person_id", _BIG, nullable=False),
        sa.Column("class_id", _BIG, nullable=False),
        sa.Column("slot", sa.BigInteger(), nullable=False),
        sa.Column("coming", sa.Boolean(), nullable=False),
        sa.Column("attended", sa.Boolean(), nullable=True),
        sa.Column("changed_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(
            ["class_id"], ["training_class.id"], name="fk_sign_up_class_id_training_class"
        ),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name="fk_sign_up_person_id_person"),
        sa.PrimaryKeyConstraint("id", name="pk_sign_up"),
        sa.UniqueConstraint("person_id", "class_id", "slot", name="uq_sign_up_person_id_class_id_slot"),
    )
    op.create_index("ix_sign_up_class_id_slot", "sign_up", ["class_id", "slot"])


def _habits() -> None:
    op.create_table(
        "habits",
        sa.Column("person_id", _BIG, nullable=False),
        sa.Column("zone", sqlmodel.AutoString(), nullable=True),
        sa.Column("quiet_start", sqlmodel.AutoString(), nullable=True),
        sa.Column("quiet_end", sqlmodel.AutoString(), nullable=True),
        sa.Column("digest_at", sqlmodel.AutoString(), nullable=True),
        sa.Column("changed_at", sqlmodel.UTCDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name="fk_habits_person_id_person"),
        sa.PrimaryKeyConstraint("person_id", name="pk_habits"),
    )


_TABLES = {
    "training_class": _training_class,
    "occurrence": _occurrence,
    "sign_up": _sign_up,
    "habits": _habits,
}
