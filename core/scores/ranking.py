"""The scoreboard's order: standard competition ranking ("1224"), and team totals."""

from collections.abc import Callable, Iterable, Sequence
from itertools import groupby
from typing import TypeVar

from core.errors import InputError
from core.scores.text import in_words
from core.scores.values import Board, Entry, Place, Score, TeamPlace
from core.sessions.values import Format

# Two scores are level when their keys are equal; the smaller key stands first.
Key = tuple[float, ...]
Thing = TypeVar("Thing")


class Unrankable(InputError):
    """A score lacks what its format ranks by; `place` names the entry."""


def rank(format: Format, entries: Iterable[Entry], cap_s: float | None = None) -> Board:  # noqa: A002 - our word for it
    """Places every entry: as written before scaled, finished before capped, then in the format's own order.

    amrap and max_reps: more first; for_time and time_trial: less first; hold: longer first; sets and
    max_load: heavier first, and behind them more repetitions of who told no load; intervals: what counts of them,
    heavier, more repetitions, rounds or metres, or less time, whoever missed some behind whoever did all. Level entries
    keep their order. Other work stands behind, in the same order, without a place. Raises Unrankable.
    """
    cap_s = cap_s if format in _TIMED else None
    every = [(_key(format, number, entry, cap_s), entry) for number, entry in enumerate(entries, 1)]
    every.sort(key=lambda pair: pair[0])
    keyed = [(key, entry) for key, entry in every if not entry.apart]
    ranked = [(1 + before, entry) for before, entry in _competition(keyed)]
    places = [_place(place, entry, cap_s) for place, entry in ranked]
    places += [_place(None, entry, cap_s) for _, entry in every if entry.apart]
    return Board(format=format, places=tuple(places), teams=_team_places(ranked))


def _place(rank: int | None, entry: Entry, cap_s: float | None) -> Place:
    return Place(rank=rank, name=entry.name, score=entry.score, text=_text(entry.score, cap_s))


def _team_places(ranked: Sequence[tuple[int, Entry]]) -> tuple[TeamPlace, ...]:
    """Team totals, most points first; who has no team earns nobody points."""
    points: dict[str, int] = {}
    names: dict[str, tuple[str, ...]] = {}
    for place, entry in ranked:
        if entry.team:
            points[entry.team] = points.get(entry.team, 0) + len(ranked) + 1 - place
            names[entry.team] = (*names.get(entry.team, ()), entry.name)
    keyed = sorted((((-float(total),), team) for team, total in points.items()), key=lambda pair: pair[0])
    return tuple(
        TeamPlace(rank=1 + before, team=team, points=points[team], names=names[team])
        for before, team in _competition(keyed)
    )


def _competition(keyed: Sequence[tuple[Key, Thing]]) -> Iterable[tuple[int, Thing]]:
    """Each thing with how many stand before it; level ones share that number."""
    before = 0
    for _, level in groupby(keyed, key=lambda pair: pair[0]):
        things = [thing for _, thing in level]
        yield from ((before, thing) for thing in things)
        before += len(things)


def _key(format_: Format, number: int, entry: Entry, cap_s: float | None) -> Key:
    own = _ORDERS[format_](entry.score, cap_s) if format_ in _ORDERS else None
    if own is None:
        lacks = _NEEDS.get(format_, f"{format_} has no ranking")
        raise Unrankable(f"score {number} ({entry.name})", lacks)
    return (float(entry.score.scaled), *own)


def _rounds(score: Score, _: float | None) -> Key | None:
    if score.rounds is None:
        return None
    return (-score.rounds, -(score.reps or 0))


def _most(score: Score, _: float | None) -> Key | None:
    """Repetitions, calories or metres; of several sets what counts of them."""
    if score.value is not None and (score.unit == "m" or score.sets):
        return (-score.value,)
    return None if score.reps is None else (-score.reps,)


def _time(score: Score, cap_s: float | None) -> Key | None:
    if is_capped(score, cap_s):
        return (1, -(score.rounds or 0), -(score.reps or 0))
    return None if score.seconds is None else (0, score.seconds)


def _longest(score: Score, _: float | None) -> Key | None:
    return None if score.seconds is None else (-score.seconds,)


def _load(score: Score, _: float | None) -> Key | None:
    if score.load_kg is not None:
        return (0, -float(score.load_kg))
    return None if score.reps is None else (1, -score.reps)


def _intervals(score: Score, cap_s: float | None) -> Key | None:
    """Loads, heavier first, or timed ones, whoever missed some behind; then what is counted, then what is only told."""
    if score.load_kg is not None and score.unit == "kg":
        return (0, -float(score.load_kg))
    if score.seconds is not None:
        missing = (1, -(score.rounds or 0)) if score.capped else (0, 0)
        return (0, *missing, score.seconds)
    if (most := _most(score, cap_s)) is not None:
        return (1, *most)
    return None if score.rounds is None else (2, -score.rounds)


def is_capped(score: Score, cap_s: float | None) -> bool:
    """Not finished, said so or by the clock."""
    return score.capped or (cap_s is not None and score.seconds is not None and score.seconds > cap_s)


def _text(score: Score, cap_s: float | None) -> str:
    return in_words(score.model_copy(update={"capped": True}) if is_capped(score, cap_s) else score)


_TIMED = {Format.FOR_TIME, Format.TIME_TRIAL}
_ORDERS: dict[Format, Callable[[Score, float | None], Key | None]] = {
    Format.AMRAP: _rounds,
    Format.MAX_REPS: _most,
    Format.FOR_TIME: _time,
    Format.TIME_TRIAL: _time,
    Format.HOLD: _longest,
    Format.SETS: _load,
    Format.MAX_LOAD: _load,
    Format.INTERVALS: _intervals,
}
_NEEDS = {
    Format.AMRAP: "an amrap needs rounds",
    Format.MAX_REPS: "max_reps needs reps, or metres",
    Format.FOR_TIME: "for_time needs seconds, or capped and reps",
    Format.TIME_TRIAL: "a time_trial needs seconds",
    Format.HOLD: "a hold needs seconds",
    Format.SETS: "sets need load_kg or reps",
    Format.MAX_LOAD: "max_load needs load_kg",
    Format.INTERVALS: "intervals need reps, seconds or rounds",
}
