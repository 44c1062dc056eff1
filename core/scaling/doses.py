"""How long a set of a way lasts: seconds of work by what it mainly trains; a table of data (`doses.toml`)."""

import tomllib
from functools import cache
from pathlib import Path

from core.movements.values import Movement, Part, Pattern, Variant
from core.values import Value

TABLE = Path(__file__).parent / "doses.toml"


class Dose(Value):
    """Seconds of work in a set of what is of these patterns, or trains these parts most; of one side, or both in turn.

    `from_s`: if a repetition takes so long; `least_s`: shorter is nothing; `gentle_s`: the most of whoever goes gently;
    `most_s`: of what nobody wrote, if such a share `of_written` isn't longer.
    """

    parts: tuple[Part, ...] = ()
    patterns: tuple[Pattern, ...] = ()
    from_s: float = 0.0
    least_s: float
    gentle_s: float
    most_s: float
    of_written: float = 1.0
    why: str


@cache
def doses() -> tuple[Dose, ...]:
    """The table in its order."""
    rows = tomllib.loads(TABLE.read_text(encoding="utf-8"))["dose"]
    return tuple(map(Dose.model_validate, rows))


def dose_of(movement: Movement, variant: Variant) -> Dose:
    """How long a set of this is, by its pattern, else by what it mainly trains: the two may share a name."""
    return _dose(movement.pattern, movement.main_of(variant), variant.seconds.value)


@cache
def _dose(pattern: Pattern, main: Part, one_s: float) -> Dose:
    lasting = [dose for dose in doses() if one_s >= dose.from_s]
    of_pattern = (dose for dose in lasting if pattern in dose.patterns)
    return next(of_pattern, None) or next(dose for dose in lasting if main in dose.parts)
