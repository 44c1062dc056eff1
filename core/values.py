"""The frozen base of all domain values."""

from pydantic import BaseModel, ConfigDict


class Value(BaseModel):
    """A frozen value: equal by content, no unknown fields, stored as JSON."""

    model_config = ConfigDict(frozen=True, extra="forbid")
