"""What a matched shape says of a block beside its aim, as facts named like the fields of a `Block`."""

import re
from collections.abc import Callable
from itertools import pairwise
from typing import Any

from core.measures import AmountUnit
from core.notation.phrases.aims import Facts, Match
from core.notation.phrases.efforts import effort_told
from core.notation.quantities import DURATION, NUMBER_WORDS, seconds
from core.sessions.values import Counts, Format

_TABATA_ROUNDS = 8
# With one of these the time is that of an interval.
_IN_TURNS = re.compile(r"\b(?:on|off|every|emom|rounds?|rds|tabata)\b(?! (?:the|an?) )")
_SECONDS_FROM = 10
_SHORTEST_PART_MIN = 5  # an estimate
_SHORTEST_LIMIT_MIN = 1
_NAMED = re.compile(r"\b(?!(?:sets?|series|rounds?|rds|then|now)\b)[a-z]+")
_BETWEEN = re.compile(r"b|after \w+ \w|after [a-h][1-9]\b")
_SHARE = re.compile(r"%\s?(?:of|from)\s[a-z' ]{0,16}$")
_CHAIN = re.compile(r"[0-9]\s[a-z\s]+\s?\+\s?[0-9]\s[a-z\s]+$")
_FEWEST_METRES = 100
_RUNGS = range(2, 50)


def number(text: str) -> int:
    """`4` or `four`."""
    return NUMBER_WORDS[text] if text in NUMBER_WORDS else int(text)


def minutes(text: str) -> float:
    """`12`, `12m`, `12 min` or `12:00`."""
    bare = re.fullmatch(r"([0-9.]+)m?", text.strip())
    return float(bare[1]) if bare else seconds(text) / 60


def says(**facts: Any) -> Callable[[Match], Facts]:
    return lambda _: dict(facts)


def amrap(match: Match) -> Facts:
    return {"format": Format.AMRAP, "minutes": minutes(match["time"])}


def rounds(match: Match) -> Facts:
    return {"rounds": number(match["n"])}


def sets(match: Match) -> Facts:
    return {"format": Format.SETS, "rounds": number(match["n"])}


def of_each(match: Match) -> Facts:
    """`100 of each`: how many of every line that tells no amount."""
    return {"amount": int(match["a"])}


def of_all_below(match: Match) -> Facts:
    """`3 rounds, 10 each`; behind a name it is of that alone: `split squats, 8 each`."""
    return {} if _NAMED.search(match.string[: match.start()]) else of_each(match)


def climbing(match: Match) -> Facts:
    """`add 2 each round`: by how many a ladder climbs."""
    return {"climbs": number(match["n"])}


def sets_of(match: Match) -> Facts:
    upper = {"amount_to": int(match["b"])} if match["b"] else {}
    return sets(match) | of_each(match) | upper


def each_round_for_time(match: Match) -> Facts:
    return {"format": Format.INTERVALS, "rounds": number(match["n"])}


def rounds_for_time(match: Match) -> Facts:
    return {"format": Format.FOR_TIME, "rounds": number(match["n"])}


def most_calories(match: Match) -> Facts:
    """`bike 20 min, calories`: as many as can be where a time stands beside them."""
    return (told := most_metres(match)) and told | {"in_kcal": True, "counted_in": AmountUnit.KCAL}


def most_metres(match: Match) -> Facts:
    """`row 30 min, metres`."""
    before = match.string[: match.start()]
    alone = re.search(DURATION, before) and not _IN_TURNS.search(before)
    return {"format": Format.MAX_REPS, "counted_in": AmountUnit.METRES} if alone else {}


def cap(match: Match) -> Facts:
    return {"cap_s": minutes(match["time"]) * 60}


def work(match: Match) -> Facts:
    return {"work_s": seconds(match["time"])}


def rest(match: Match) -> Facts:
    """`2 s pause` is within a repetition, no rest."""
    told = seconds(match["time"])
    return {} if told < _SECONDS_FROM and "pause" in match[0] else {"rest_s": told}


def rest_in_short(match: Match) -> Facts:
    """`r2` is two minutes, `r90` are 90 s (common practice, no source)."""
    told = float(match["n"])
    return {"rest_s": told * 60 if told < _SECONDS_FROM else told}


def rest_between(match: Match) -> Facts:
    """`90 s between sets` and `90 s after the pair` say so without a word for rest; a duration alone says nothing."""
    said = re.sub(re.escape(match["time"]), "", match[0])
    return rest(match) if _BETWEEN.search(said) else {}


def within(match: Match) -> Facts:
    """No part is over in seconds: `all five within 3 s of each other`."""
    told = minutes(match["time"])
    return {} if 0 < told < _SHORTEST_LIMIT_MIN else {"minutes": told}


def for_so_long(match: Match) -> Facts:
    """`for 20 minutes`; so short a time behind words is that of what they name: `chest stretch for 30 seconds`."""
    told = {"minutes": minutes(match["time"])}
    behind_words = match.string[: match.start()].rstrip()[-1:].isalpha()
    return {} if behind_words and told["minutes"] < _SHORTEST_PART_MIN else told


def best_of(match: Match) -> Facts:
    """`best of 3 tries`: as much as goes, so often; the best of them counts."""
    return rounds(match) | {"counts": Counts.BEST, "most": True}


def tries(match: Match) -> Facts:
    """`3 tries`: of as much as goes the best counts, unless the coach says otherwise."""
    return rounds(match) | {"tries": True}


def practice(match: Match) -> Facts:
    """`10 min to practise double-unders`: a time, and nothing to score."""
    told = within(match)
    return told | {"format": Format.QUALITY} if told else {}


def team(match: Match) -> Facts:
    return {"team": number(match["n"])}


def minutely(match: Match) -> Facts:
    return {"format": Format.INTERVALS, "every_s": 60.0 * float(match["every"] or 1)}


def minutely_for(match: Match) -> Facts:
    return minutely(match) | within(match)


def minutely_times(match: Match) -> Facts:
    return minutely(match) | rounds(match)


def every(match: Match) -> Facts:
    if match["work"].isdigit():
        return {}
    return {"format": Format.INTERVALS, "every_s": seconds(match["work"])}


def every_for(match: Match) -> Facts:
    return (told := every(match)) and told | within(match)


def every_times(match: Match) -> Facts:
    return (told := every(match)) and told | rounds(match)


def rounds_of_time(match: Match) -> Facts:
    """`3 rounds of 3 minutes`."""
    return rounds(match) | {"work_s": seconds(match["time"])}


def at_each(match: Match) -> Facts:
    return {"format": Format.INTERVALS, "every_s": seconds(match["time"]), "in_turn": True, "most": True}


def on_off(match: Match) -> Facts:
    work, off = (float(text) if text.isdigit() else seconds(text) for text in match.group("work", "off"))
    hard = effort_told(match.string[match.end("work") : match.start("off")])
    told: Facts = {"format": Format.INTERVALS, "work_s": work, "rest_s": off, "every_s": work + off}
    return told | ({"effort": hard} if hard else {})


def on_off_times(match: Match) -> Facts:
    return on_off(match) | rounds(match)


def bare_on_off_times(match: Match) -> Facts:
    """`40/20 x 4` tells seconds only in the steps that a clock is set by."""
    work, off = (int(text) if text.isdigit() else 5 for text in match.group("work", "off"))
    return {} if work % 5 or off % 5 else on_off_times(match)


def times_of_a_chain(match: Match) -> Facts:
    """`1 clean + 1 front squat + 1 jerk x 5`: behind what is done in one go it is how often."""
    return rounds(match) if _CHAIN.search(match.string[: match.start()]) else {}


def timed_on_off_times(match: Match) -> Facts:
    """`4 x 3'/1'`: both are told as times."""
    return {} if match["work"].isdigit() or match["off"].isdigit() else on_off_times(match)


def bare_on_off_for(match: Match) -> Facts:
    """`30/30 for 12 min`."""
    work, off = (int(text) if text.isdigit() else 5 for text in match.group("work", "off"))
    return {} if work % 5 or off % 5 else on_off(match) | within(match)


def tabata(match: Match) -> Facts:
    """Eight times 20 s of work and 10 s of rest, unless it says how often (common practice, no source)."""
    times = re.search(r"(?<![0-9])([1-9][0-9]?)\s?x\s?20|\b([1-9][0-9]?)\s?(?:times|rounds|x)\b", match[0])
    rounds = int(times[1] or times[2]) if times else _TABATA_ROUNDS
    return {"format": Format.INTERVALS, "work_s": 20.0, "rest_s": 10.0, "every_s": 30.0, "rounds": rounds}


def amrap_again(match: Match) -> Facts:
    again = number(match["n"])
    return amrap(match) | {"again": again} if again in _RUNGS else {}


def heaviest(match: Match) -> Facts:
    """`amount` goes to the line: a heavy single is one repetition. A share of the heaviest is no search for it."""
    if _SHARE.search(match.string[: match.start()]):
        return {}
    words = {"s": 1, "d": 2, "t": 3}
    return {"format": Format.MAX_LOAD, "amount": words.get(match["n"][:1]) or int(match["n"] or 1)}


def scheme(match: Match) -> Facts:
    """`21-15-9`; hundreds that are all round are rather metres: `200-400-600-400-200`."""
    told = tuple(int(part) for part in re.findall("[0-9]+", match["s"]))
    return {} if min(told) >= _FEWEST_METRES and not any(one % 50 for one in told) else {"scheme": told}


def listed(match: Match) -> Facts:
    """`3,3,2,2,1` and `21 15 9` are a scheme where they go one way, or up and down in even steps."""
    told = scheme(match).get("scheme", ())
    steps = [later - before for before, later in pairwise(told)]
    one_way = all(step <= 0 for step in steps) or all(step >= 0 for step in steps)
    waves = len({abs(step) for step in steps if step}) == 1
    return {"scheme": told} if told and (one_way or waves) else {}


def ladder(match: Match) -> Facts:
    first, second, last = (int(text) if text else None for text in match.group("a", "b", "z"))
    assert first is not None and last is not None  # noqa: PT018 - the pattern has both
    step = second - first if second is not None else (1 if last > first else -1)
    if step == 0 or (last - first) % step or (last - first) // step not in _RUNGS:
        return {}
    return {"scheme": tuple(range(first, last + (1 if step > 0 else -1), step))}
