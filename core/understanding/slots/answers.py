"""What an open question asks for, and what can be one thing only, get the benefit of the doubt: `answers.toml`."""

import tomllib
from collections.abc import Callable, Iterable, Mapping
from functools import cache
from pathlib import Path
from typing import Final, NamedTuple

from core.understanding.slots.abilities import surely_can
from core.understanding.slots.body import surely_hurts, surely_sore, surely_weighs, surely_well
from core.understanding.slots.days import surely_away, surely_short
from core.understanding.slots.exchanged import surely_came_or_went, surely_went
from core.understanding.slots.stretch import Stretch

_SURE: Final = 0.9
_PLAINLY: Final[Mapping[str, Callable[[Stretch], bool]]] = {
    "hurt": surely_hurts,
    "well_again": surely_well,
    "sore": surely_sore,
    "lost": surely_went,
    "weighs": surely_weighs,
    "can": surely_can,
    "got": surely_came_or_went,
    "has_minutes": surely_short,
    "leaves_class": surely_away,
}


class _Shape(NamedTuple):
    """A stretch that holds one of `any` and nothing but `only`; `alone`: nothing else is said in the message."""

    any: tuple[str, ...]
    only: frozenset[str]
    alone: bool


class _Tables(NamedTuple):
    given: float
    sure: Mapping[str, float]
    shapes: Mapping[str, _Shape]
    questions: Mapping[str, Mapping[str, tuple[str, ...]]]


@cache
def _tables() -> _Tables:
    table = tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))
    given, sure = float(table.pop("given")), table.pop("sure")
    shapes = {
        act: _Shape(tuple(one["any"]), frozenset(one["only"]), one.get("alone", False))
        for act, one in table.pop("shape").items()
    }
    questions = {
        question: {act: tuple(kinds) for act, kinds in acts.items()} for question, acts in table.items()
    }
    return _Tables(given, sure, shapes, questions)


def needed(act: str, usual: float) -> float:
    """The chance from which on an act is taken."""
    return _tables().sure.get(act, usual)


def answers_to(question: str) -> Iterable[str]:
    """The acts that a question asks for."""
    return _tables().questions.get(question, {})


def surely_told(stretch: Stretch) -> tuple[str, ...]:
    """The acts that it tells plainly, whatever its words are most like."""
    return tuple(act for act, is_told in _PLAINLY.items() if is_told(stretch))


def given_the_benefit(act: str, chance: float, stretch: Stretch, *, sure: bool = False) -> float:
    """The chance of an act that was asked for, or that it can be alone, where what it needs is named."""
    if sure:
        return max(chance, _SURE)
    if not (_is_asked_for(act, stretch) or _is_its_shape(act, stretch)):
        return chance
    given = _tables().given
    return chance * given / (chance * given + 1 - chance)


def _is_asked_for(act: str, stretch: Stretch) -> bool:
    kinds = _tables().questions.get(stretch.context.question, {}).get(act, ())
    return bool(kinds) and bool(stretch.marks(*kinds))


def _is_its_shape(act: str, stretch: Stretch) -> bool:
    """`7+12`, `Bo 8:43`: every word of it is named, and of these kinds."""
    shape = _tables().shapes.get(act)
    if shape is None or not stretch.marks(*shape.any) or (shape.alone and not stretch.is_whole):
        return False
    named = stretch.marked.mark_at[stretch.start : stretch.end]
    tokens = stretch.marked.text.tokens[stretch.start : stretch.end]
    return all(
        token.kind == "mark" or (one is not None and not shape.only.isdisjoint(one.kinds))
        for token, one in zip(tokens, named, strict=True)
    ) and not any(token.word == "?" for token in tokens)
