"""What every table is made of."""

from typing import Any, ClassVar, cast

from sqlalchemy import JSON, BigInteger, Integer, MetaData, Table
from sqlmodel import Field, SQLModel

# SQLite counts rows up by itself only where the key's type is exactly INTEGER.
BIG = cast("type[Any]", BigInteger().with_variant(Integer, "sqlite"))


def key() -> Any:
    return Field(default=None, primary_key=True, sa_type=BIG)


def to(column: str, **more: Any) -> Any:
    return Field(foreign_key=column, sa_type=BIG, **more)


def maybe_to(column: str) -> Any:
    return to(column, default=None, nullable=True)


def json() -> Any:
    return Field(sa_type=JSON)


class Row(SQLModel):
    metadata: ClassVar[MetaData] = MetaData(
        naming_convention={
            "ix": "ix_%(table_name)s_%(column_0_N_name)s",
            "uq": "uq_%(table_name)s_%(column_0_N_name)s",
            "fk": "fk_%(table_name)s_%(column_0_name)s_%(referred_table_name)s",
            "pk": "pk_%(table_name)s",
        }
    )


def table(row: type[Row]) -> Table:
    return Row.metadata.tables[str(row.__tablename__)]
