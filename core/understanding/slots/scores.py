"""A score out of a stretch, as `core/notation/scores` reads it; other languages are put in its words."""

from collections.abc import Callable, Iterator, Mapping
from functools import lru_cache
from typing import Final

from core.measures import MassUnit
from core.notation.scores import read_parts, read_score
from core.notation.scores.unseen import read_unseen
from core.scores.text import clock
from core.scores.values import ReadScore
from core.scores.ways import Way, way_of
from core.sessions.counting import reps_in_round
from core.sessions.values import Session
from core.understanding.acts import Result
from core.understanding.quantities import Quantity
from core.understanding.slots.stretch import Stretch

_ENGLISH: Final = "en"
# While any other question is open, a bare number is its answer.
_ASKS_FOR_IT: Final = frozenset({"", "score"})
_IN_NUMBERS: Final = (
    "number", "plus", "rounds", "reps", "clock", "span", "load", "load_range", "times", "cal", "distance", "turn",
    "sets",
)  # fmt: skip
_KEPT: Final = 32
_UNITS: Final = frozenset({"kg", "s", "m", "kcal", "reps", "rounds", "done"})


def results(stretch: Stretch) -> tuple[Result, ...]:
    """The score that is told; of several parts one each. Nothing where no number is one."""
    stopped = stretch.means("stopped")
    return tuple(_result(one, stretch, stopped=stopped) for one in _told(stretch))


def said_of_it(stretch: Stretch) -> str | None:
    """The act that the score's words tell beside it: that it was lighter, or as written."""
    found = [one.score for one in _told(stretch) if one.score]
    if any(one.scaled for one in found):
        return "did_scaled"
    return "did_as_written" if any(one.claimed for one in found) else None


def _told(stretch: Stretch) -> tuple[ReadScore, ...]:
    told = stretch.quantities(*_IN_NUMBERS)
    question = stretch.context.question
    if not told or (question not in _ASKS_FOR_IT and all(one.kind == "number" for one in told)):
        return ()
    held, unit = _Held(stretch.context.session), stretch.context.units
    best: tuple[ReadScore, ...] = ()
    for words in _tellings(stretch):
        reads = _reads(words, held, unit, asked=question == "score")
        best = best if any(one.score for one in best) else reads
        if all(one.sure for one in reads):
            best = reads
            break
    return tuple(one for one in best if one.score and one.score.value is not None)


def _tellings(stretch: Stretch) -> Iterator[str]:
    """As it was typed, if that may be English, and with what is known of other languages in English."""
    if stretch.marked.language == _ENGLISH:
        yield _as_ones_own(stretch)
    yield " ".join(_words(stretch))


def _as_ones_own(stretch: Stretch) -> str:
    """What was typed with `I` for whoever is named: whose score it is, is another matter than what it is."""
    text, said, at = stretch.marked.text, "", stretch.start
    for one in stretch.marks("person"):
        said += f"{text.words(at, one.start)} I " if at < one.start else "I "
        at = one.end
    return said + text.words(at, stretch.end) if said else stretch.said


class _Held:
    """A session that is known by which one it is, not by all that it holds."""

    def __init__(self, session: Session | None) -> None:
        self.session = session

    def __hash__(self) -> int:
        return id(self.session)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Held) and other.session is self.session


@lru_cache(maxsize=_KEPT)
def _reads(words: str, held: _Held, unit: MassUnit, *, asked: bool) -> tuple[ReadScore, ...]:
    """Kept for a moment, as the same words are asked about in longer and shorter stretches."""
    if held.session is None:
        return (read_unseen(words, unit, asked=asked),)
    parts = read_parts(words, held.session, unit)
    reads = tuple(one.read for one in parts) or (read_score(words, held.session, None, unit),)
    told = any(one.score and way_of(held.session.blocks[one.block]) is not Way.DONE for one in reads)
    unseen = () if told else (read_unseen(words, unit, asked=asked),)
    fitting = _may_be_of(held.session)
    return unseen if any(one.score and one.score.unit in fitting for one in unseen) else reads


def _may_be_of(session: Session) -> frozenset[str]:
    """The units of a score that its parts don't expect: a weight only where one may be the score."""
    lifts = any(way_of(block) in {Way.LOAD, Way.DONE} for block in session.blocks)
    return _UNITS if lifts else _UNITS - {"kg"}


def _result(read: ReadScore, stretch: Stretch, *, stopped: bool) -> Result:
    """Of each kind what was told; rounds where rounds were, of which a capped score keeps the repetitions."""
    score = read.score
    assert score is not None
    session = stretch.context.session
    whole = (
        reps_in_round(session.blocks[read.block])
        if session and stretch.quantities("rounds", "plus")
        else None
    )
    if score.capped and score.rounds is None and score.reps is not None and whole:
        rounds, reps = divmod(score.reps, whole)
        return Result(rounds=rounds, reps=reps, unfinished=True)
    unfinished = score.capped or (stopped and score.load_kg is None)
    if score.unit == "kg":
        return Result(load_kg=score.load_kg, reps=score.reps)
    if score.unit == "kcal":
        return Result(calories=score.reps, rounds=score.rounds, unfinished=unfinished)
    if score.unit == "m":
        return Result(distance_m=score.value, unfinished=unfinished)
    seconds = None if score.capped and score.unit != "s" else score.seconds
    return Result(rounds=score.rounds, reps=score.reps, seconds=seconds, unfinished=unfinished)


# How a number of another language is written so that it can be nothing else.
_WRITTEN: Final[Mapping[str, Callable[[Quantity], str]]] = {
    "plus": lambda one: f"{one.value:g}+{one.second or 0:g}",
    "rounds": lambda one: f"{one.value:g} rounds",
    "reps": lambda one: f"{one.value:g} reps",
    "sets": lambda one: f"{one.value:g} sets",
    "cal": lambda one: f"{one.value:g} cal",
    "clock": lambda one: clock(one.value),
    "span": lambda one: clock(one.value),
    "load": lambda one: f"{one.value:.3f}".rstrip("0").rstrip(".") + " kg",
    "distance": lambda one: f"{one.value:g} m",
    "times": lambda one: f"{one.value:g} x {one.second or 0:g}" + (" kg" if one.unit else ""),
    "number": lambda one: f"{one.value:g}",
}
# What small words of another language say of a number.
_SAID: Final[Mapping[str, str]] = {
    "failed": "failed", "denial": "not", "nearly_word": "nearly", "minus_word": "minus", "left_word": "left",
    "for_word": "for", "and_word": "and", "half_word": "a half", "each": "each",
}  # fmt: skip


def _words(stretch: Stretch) -> Iterator[str]:
    at = stretch.start
    while at < stretch.end:
        mark = stretch.marked.mark_at[at]
        if mark and mark.start == at and mark.quantity and _is_counted(stretch, mark.quantity):
            yield _WRITTEN[mark.quantity.kind](mark.quantity)
            at = mark.end
        elif mark and mark.start == at and (movement := mark.value("movement")):
            yield movement.replace("-", " ")
            at = mark.end
        else:
            yield next(
                (said for kind, said in _SAID.items() if stretch.marked.helps(at, kind)), stretch.word(at)
            )
            at += 1


def _is_counted(stretch: Stretch, one: Quantity) -> bool:
    """Whether it is a number; `eine Runde` may be any."""
    is_article = one.value == 1 and stretch.marked.text.tokens[one.start].kind == "word"
    return one.kind in _WRITTEN and not is_article
