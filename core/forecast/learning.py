"""What a score teaches of whoever made it.

What isn't known of a person has a middle and a covariance (`core.athletes.learned`). The forecast of a session is made
for many people whom they may turn out to be; how their scores hang together with what is unknown of them is the slope
of the score in each unknown. With it the score moves the middle and narrows the covariance in closed form: a
Gauss-Newton step of the maximum a posteriori, the slope taken over the whole range instead of at a point.
"""

from collections.abc import Iterable
from datetime import date
from math import log, sqrt
from typing import NamedTuple

import numpy as np

from core.athletes.learned import MOST_NAMES, Learned
from core.athletes.values import Profile
from core.forecast.fatigue import Floats
from core.forecast.forecast import DAY_SPREAD, Expected, expected_of
from core.forecast.people import People
from core.forecast.values import ScoreUnit
from core.movements.lookup import Catalogue
from core.scaling.values import Version, VersionBlock
from core.scores.values import Score
from core.sessions.counting import COUNTED

# What no unknown of ours tells in a score, in ln: the day, how well it was paced, a miscounted round (estimate).
UNTOLD_SPREAD = 0.06
# A score further off than so many spreads says less the further it is: a joke, a wrong unit, a terrible day.
BELIEVED = 2.0
# Of a load everything stands on what was lifted: there is no pacing, and no round to miscount.
BELIEVED_LOAD = 4.0
# Beyond this it isn't of what was forecast at all: nothing is learned of it.
ABSURD = 6.0
# Who had something left tells a bound from below only (efforts of 10).
IN_EARNEST = 7
# Of an ensemble of two hundred, slopes of nothing aren't quite 0: they are drawn there like so many further draws.
_STEADYING = 4.0
_LEAST = 1e-6


class Taught(NamedTuple):
    """One score: of a version's block, on a day. `effort`: how hard it was, of 10, where that was told."""

    version: Version
    block: VersionBlock
    score: Score
    on: date
    effort: float | None = None


def learned_from(
    taught: Iterable[Taught], profile: Profile, catalogue: Catalogue, learned: Learned | None = None
) -> Learned | None:
    """What all these scores, the earliest first, leave beside what was `learned` before them."""
    for one in taught:
        learned = after(one, profile.model_copy(update={"learned": learned}), catalogue)
    return learned


def after(taught: Taught, profile: Profile, catalogue: Catalogue) -> Learned | None:
    """What is learned after one more score; what it was before, where the score is of nothing that was expected."""
    learned = profile.learned and profile.learned.as_of(taught.on)
    people = People(profile.model_copy(update={"learned": learned}), catalogue, taught.on.year)
    expected = expected_of(taught.version, taught.block, people)
    if expected is None or not _is_open(expected):
        return profile.learned
    at_least = _at_least(expected, taught.score, taught.block)
    came_to = at_least or came_to_in(expected.unit, taught.score, taught.block)
    if not came_to or (at_least and log(at_least) <= _mean_log(expected)):
        return profile.learned
    return _stepped(people, expected, log(came_to), taught, learned)


def _at_least(expected: Expected, score: Score, block: VersionBlock) -> float | None:
    """What a score came to at least, where a cap cut it off, or the forecast: so slow, or all repetitions."""
    if score.capped:
        return block.cap_s if expected.unit == "s" else None
    is_all = expected.unit == "reps" and score.seconds is not None and np.isfinite(expected.most)
    return expected.most if is_all else None


def came_to_in(unit: ScoreUnit, score: Score, block: VersionBlock) -> float | None:
    """The score in the unit of a forecast; None where it was counted in another."""
    if score.capped and unit != "reps":
        return None
    if unit == "rounds":
        return _rounds(score, block)
    told = {
        "s": score.seconds,
        "reps": None if score.reps is None else float(score.reps),
        "kg": None if score.load_kg is None else float(score.load_kg),
        "m": score.value if score.unit == "m" else None,
    }
    return told[unit]


def _rounds(score: Score, block: VersionBlock) -> float | None:
    if score.rounds is None:
        return None
    counted = sum(
        (line.amount or 0.0) * (2 if line.per_side else 1) for line in block.lines if line.unit in COUNTED
    )
    return score.rounds + (min((score.reps or 0) / counted, 1.0) if counted else 0.0)


def _is_open(expected: Expected) -> bool:
    """Whether the score could have come out otherwise: not what stands in the version, nor held by everybody."""
    return bool(np.ptp(expected.found) > 0) and bool(np.median(expected.found) > 0)


def _stepped(
    people: People, expected: Expected, came_to: float, taught: Taught, learned: Learned | None
) -> Learned | None:
    names, middle, covariance = _prior(people, learned)
    logs = _logs(expected)
    used = [place for place, name in enumerate(names) if name in people.unknowns.rows]
    drawn = np.stack([people.unknowns.of(names[place]) for place in used])
    slopes = np.zeros(len(names))
    slopes[used], unexplained = _slopes(drawn, logs, covariance[np.ix_(used, used)])
    missed = came_to - _mean_log(expected)
    noise = UNTOLD_SPREAD**2 + DAY_SPREAD**2 + unexplained
    of_score = float(slopes @ covariance @ slopes)
    spreads = abs(missed) / sqrt(of_score + noise)
    is_bound = taught.effort is not None and taught.effort < IN_EARNEST
    worse = missed < 0 if expected.unit != "s" else missed > 0
    if spreads > ABSURD or (is_bound and worse):
        return learned
    believed = BELIEVED_LOAD if expected.unit == "kg" else BELIEVED
    if spreads > believed:  # as if it had been as noisy as would make it ordinary
        noise = max(noise, (missed / believed) ** 2 - of_score)
    gain = covariance @ slopes / (of_score + noise)
    left = covariance - np.outer(gain, slopes @ covariance)
    return _as_learned(taught.on, names, middle + gain * missed, (left + left.T) / 2, learned)


def _logs(expected: Expected) -> Floats:
    return np.asarray(np.log(np.maximum(expected.found, _LEAST)))


def _mean_log(expected: Expected) -> float:
    return float(np.mean(_logs(expected)))


def _prior(people: People, learned: Learned | None) -> tuple[list[str], Floats, Floats]:
    """Names, middle and covariance of all that is unknown here; those first that something was learned of."""
    known = list(learned.names) if learned else []
    names = known + [name for name in people.unknowns.rows if name not in known][: MOST_NAMES - len(known)]
    middle, covariance = np.zeros(len(names)), np.eye(len(names))
    if learned and known:
        middle[: len(known)] = learned.middle
        covariance[: len(known), : len(known)] = learned.covariance
    return names, middle, covariance


def _slopes(drawn: Floats, logs: Floats, covariance: Floats) -> tuple[Floats, float]:
    """Of ln of the score in each unknown, by least squares over the people; and the variance that they leave."""
    centred = drawn - drawn.mean(axis=1, keepdims=True)
    told = logs - logs.mean()
    steadied = centred @ centred.T + _STEADYING * covariance
    slopes = np.linalg.solve(steadied + _LEAST * np.eye(len(steadied)), centred @ told)
    return slopes, float(np.var(told - slopes @ centred))


def _as_learned(
    on: date, names: list[str], middle: Floats, covariance: Floats, before: Learned | None
) -> Learned:
    return Learned(
        seen=before.seen if before else 0,
        until=before.until if before else 0,
        on=on,
        names=tuple(names),
        middle=tuple(round(float(one), 6) for one in middle),
        covariance=tuple(tuple(round(float(one), 6) for one in row) for row in covariance),
    )
