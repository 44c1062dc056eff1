"""What an open question asks for gets the benefit of the doubt: data of `answers.toml`."""

import tomllib
from collections.abc import Iterable, Mapping
from functools import cache
from pathlib import Path

from core.understanding.slots.stretch import Stretch


@cache
def _tables() -> tuple[float, Mapping[str, float], Mapping[str, Mapping[str, tuple[str, ...]]]]:
    table = tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))
    given, sure = float(table.pop("given")), table.pop("sure")
    questions = {
        question: {act: tuple(kinds) for act, kinds in acts.items()} for question, acts in table.items()
    }
    return given, sure, questions


def needed(act: str, usual: float) -> float:
    """The chance from which on an act is taken."""
    return _tables()[1].get(act, usual)


def answers_to(question: str) -> Iterable[str]:
    """The acts that a question asks for."""
    return _tables()[2].get(question, {})


def given_the_question(act: str, chance: float, stretch: Stretch) -> float:
    """The chance of an act that was asked for, where what it needs is named; of any other as it is."""
    given, _, questions = _tables()
    kinds = questions.get(stretch.context.question, {}).get(act, ())
    if not kinds or not stretch.marks(*kinds):
        return chance
    return chance * given / (chance * given + 1 - chance)
