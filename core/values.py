"""The frozen base of all domain values."""

from pydantic import BaseModel, ConfigDict


class Value(BaseModel):
    """A frozen value: equal by content, no unknown fields, stored as JSON."""

    # Built when first used: most values of a process are none of the hundreds it knows, and starts stay short.
    # No number is endless: such a one comes from a slip or an attack, and no later reckoning is ready for it.
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)
