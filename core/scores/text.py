"""A score in words: `7 rounds + 12`, `8:43`, `capped, 120 reps`, `120 cal`, `60 kg`."""

from typing import TYPE_CHECKING

from core.measures import MassUnit
from core.measures import in_words as mass_in_words

if TYPE_CHECKING:
    from core.scores.values import Score


def in_words(score: "Score", unit: MassUnit = MassUnit.KG) -> str:
    """What was done, as it stands on the scoreboard; loads in `unit`."""
    if score.capped and score.rounds is not None and (score.sets or score.seconds is None):
        return _some_of_them(score, unit)
    if score.capped:
        done = _rounds_and_reps(score)
        return f"capped, {done}" if done else "capped"
    if score.rounds is not None:
        return _rounds_and_reps(score)
    if score.load_kg is not None and score.unit == "kg":
        return mass_in_words(score.load_kg, unit)
    return _plainly(score)


def _plainly(score: "Score") -> str:
    if score.seconds is not None:
        return clock(score.seconds)
    if score.reps is not None:
        return _in_all(score)
    if score.value is None:
        return "done"
    return f"{score.value or 0:g} {score.unit}"


def _some_of_them(score: "Score", unit: MassUnit) -> str:
    """Of intervals, how many were done: `4 of them, 6:28`, `4 rounds`."""
    if not score.sets:
        return _counted(score.rounds or 0, "round")
    return f"{score.rounds} of them, {in_words(score.model_copy(update={'capped': False, 'rounds': None}), unit)}"


def clock(seconds: float) -> str:
    """`8:43`, `1:02:05`, `0:45.5`."""
    minutes, rest = divmod(round(seconds, 1), 60)
    hours, minutes = divmod(int(minutes), 60)
    tail = f"{rest:04.1f}".removesuffix(".0")
    return f"{hours}:{minutes:02d}:{tail}" if hours else f"{minutes}:{tail}"


def _rounds_and_reps(score: "Score") -> str:
    if score.rounds is None:
        return "" if score.reps is None else _in_all(score)
    rounds = _counted(score.rounds, "round")
    if (
        not score.capped and score.unit == "reps" and score.value == score.reps
    ):  # of intervals: all of it counts
        return f"{rounds}, {_in_all(score)}"
    return f"{rounds} + {score.reps}" if score.reps else rounds


def _in_all(score: "Score") -> str:
    reps = score.reps or 0
    return f"{reps} cal" if score.unit == "kcal" else _counted(reps, "rep")


def _counted(number: int, thing: str) -> str:
    return f"{number} {thing}" if number == 1 else f"{number} {thing}s"
