"""What coaches type around the lines: formats, rounds, caps, rests, aims. All slang of formats lives here.

A row of the table is a shape and what it says, as facts named like the fields of a `Block`. In a shape a
space is some space or a hyphen, `_` the same or nothing, and `<word>` one of `PARTS`. The table is read from
top to bottom, so the longer phrasing of two stands first.
"""

import re
from collections.abc import Callable
from itertools import pairwise
from typing import Any, NamedTuple

from core.notation.phrase_aims import (
    Facts,
    Match,
    aim,
    aim_above,
    aim_below,
    aim_count,
    aim_effort,
    aim_time,
)
from core.notation.phrase_parts import PARTS
from core.notation.quantities import NUMBER_WORDS, seconds
from core.sessions.values import Format

_TABATA_ROUNDS = 8
_RUNGS = range(2, 50)


class Phrase(NamedTuple):
    pattern: re.Pattern[str]
    facts: Callable[[Match], Facts]


def phrase(shape: str, facts: Callable[[Match], Facts]) -> Phrase:
    """A row of the table; ready-made parts come in only after spaces have got their meaning."""
    spaced = shape.replace(" ", r"[\s\-]{1,3}").replace("_", r"[\s\-]{0,3}")
    return Phrase(re.compile(re.sub(r"(?<!\?P)<([a-z]+)>", lambda part: PARTS[part[1]], spaced)), facts)


def number(text: str) -> int:
    """`4` or `four`."""
    return NUMBER_WORDS[text] if text in NUMBER_WORDS else int(text)


def minutes(text: str) -> float:
    """`12`, `12m`, `12 min` or `12:00`."""
    bare = re.fullmatch(r"([0-9.]+)m?", text.strip())
    return float(bare[1]) if bare else seconds(text) / 60


def says(**facts: Any) -> Callable[[Match], Facts]:
    return lambda _: dict(facts)


def _amrap(match: Match) -> Facts:
    return {"format": Format.AMRAP, "minutes": minutes(match["time"])}


def _rounds(match: Match) -> Facts:
    return {"rounds": number(match["n"])}


def _sets(match: Match) -> Facts:
    return {"format": Format.SETS, "rounds": number(match["n"])}


def _rounds_for_time(match: Match) -> Facts:
    return {"format": Format.FOR_TIME, "rounds": number(match["n"])}


def _cap(match: Match) -> Facts:
    return {"cap_s": minutes(match["time"]) * 60}


def _work(match: Match) -> Facts:
    return {"work_s": seconds(match["time"])}


def _rest(match: Match) -> Facts:
    return {"rest_s": seconds(match["time"])}


def _rest_between(match: Match) -> Facts:
    """`90 s between sets` says so without a word for rest; a duration alone says nothing."""
    return _rest(match) if "b" in re.sub(re.escape(match["time"]), "", match[0]) else {}


def _within(match: Match) -> Facts:
    return {"minutes": minutes(match["time"])}


def _team(match: Match) -> Facts:
    return {"team": number(match["n"])}


def _minutely(match: Match) -> Facts:
    return {"format": Format.INTERVALS, "every_s": 60.0 * float(match["every"] or 1)}


def _minutely_for(match: Match) -> Facts:
    return _minutely(match) | _within(match)


def _minutely_times(match: Match) -> Facts:
    return _minutely(match) | _rounds(match)


def _every(match: Match) -> Facts:
    if match["work"].isdigit():
        return {}
    return {"format": Format.INTERVALS, "every_s": seconds(match["work"])}


def _every_for(match: Match) -> Facts:
    return (every := _every(match)) and every | _within(match)


def _every_times(match: Match) -> Facts:
    return (every := _every(match)) and every | _rounds(match)


def _on_off(match: Match) -> Facts:
    work, off = (float(text) if text.isdigit() else seconds(text) for text in match.group("work", "off"))
    return {"format": Format.INTERVALS, "work_s": work, "rest_s": off, "every_s": work + off}


def _on_off_times(match: Match) -> Facts:
    return _on_off(match) | _rounds(match)


def _bare_on_off_times(match: Match) -> Facts:
    """`40/20 x 4` tells seconds only in the steps that a clock is set by."""
    work, off = (int(text) if text.isdigit() else 1 for text in match.group("work", "off"))
    return {} if work % 5 or off % 5 else _on_off_times(match)


def _tabata(match: Match) -> Facts:
    """Eight times 20 s of work and 10 s of rest, unless it says how often (common practice, no source)."""
    times = re.search(r"(?<![0-9])([1-9][0-9]?)\s?x\s?20|\b([1-9][0-9]?)\s?(?:times|rounds|x)\b", match[0])
    rounds = int(times[1] or times[2]) if times else _TABATA_ROUNDS
    return {"format": Format.INTERVALS, "work_s": 20.0, "rest_s": 10.0, "every_s": 30.0, "rounds": rounds}


def _amrap_again(match: Match) -> Facts:
    again = number(match["n"])
    return _amrap(match) | {"again": again} if again in _RUNGS else {}


def _heaviest(match: Match) -> Facts:
    """`amount` goes to the line: a heavy single is one repetition."""
    words = {"s": 1, "d": 2, "t": 3}
    return {"format": Format.MAX_LOAD, "amount": words.get(match["n"][:1]) or int(match["n"] or 1)}


def _scheme(match: Match) -> Facts:
    return {"scheme": tuple(int(part) for part in re.findall("[0-9]+", match["s"]))}


def _listed(match: Match) -> Facts:
    """`3,3,2,2,1` and `21 15 9` are a scheme where they go one way, or up and down in even steps."""
    told = _scheme(match)["scheme"]
    steps = [later - before for before, later in pairwise(told)]
    one_way = all(step <= 0 for step in steps) or all(step >= 0 for step in steps)
    waves = len({abs(step) for step in steps if step}) == 1
    return {"scheme": told} if one_way or waves else {}


def _ladder(match: Match) -> Facts:
    first, second, last = (int(text) if text else None for text in match.group("a", "b", "z"))
    assert first is not None and last is not None  # noqa: PT018 - the pattern has both
    step = second - first if second is not None else (1 if last > first else -1)
    if step == 0 or (last - first) % step or (last - first) // step not in _RUNGS:
        return {}
    return {"scheme": tuple(range(first, last + (1 if step > 0 else -1), step))}


PHRASES: tuple[Phrase, ...] = (
    # aims first: they too count rounds and minutes
    phrase(r"<aim><is>(?:effort|rpe)<is><lo>(?:<to><hi>)?(?:\s?/\s?10|(?![0-9]))", aim_effort),
    phrase(r"<aim><is><below>\s?(?:<dur>|<lo>_(?:<rounds>|reps?\b))", aim_below),
    phrase(r"<aim><is><above>\s?(?:<dur>|<lo>_(?:<rounds>|reps?\b))", aim_above),
    phrase(
        r"<aim><is><lo>(?:<to><hi>)?(?P<more>\s?(?:\+|or more))?"
        r"_(?P<what>(?:complete |full )?<rounds>|reps?\b|unbroken(?: reps)?\b)",
        aim_count,
    ),
    phrase(r"<aim><is><lotime>(?:<to><hitime>)?(?![0-9])(?!<to>[0-9])", aim_time),
    phrase(r"\bsub _<dur>", lambda match: aim("score", None, seconds(match["time"]))),
    # without a score
    phrase(r"\bnot (?:for|against) (?:time|the clock)\b", says(format=Format.QUALITY)),
    phrase(r"\bfor (?:quality|good form|form)\b", says(format=Format.QUALITY)),
    phrase(
        r"\b(?:not (?:for (?:a )?)?scored?|no scores?|unscored|don't score(?: it| this)?)\b",
        says(scored=False),
    ),
    phrase(r"\b(?:for score|scored)\b", says(scored=True)),
    # said in full
    phrase(
        r"(?<!x.)(?<!x)(?<!of.)(?:\btest of )?\bmax(?:imum|imal)? rep(?:s|etitions?)?\b<of>",
        says(format=Format.MAX_REPS),
    ),
    phrase(
        r"^[\s;]*max(?:imum|imal)? (?:k?cals?|calories)\b(?=[\s;:,.]*(?:(?:in|for|within) <dur>)?[\s;:,.]*$)",
        says(format=Format.MAX_REPS, in_kcal=True),
    ),
    phrase(r"\b(?:hold )?(?:it )?(?:for )?as long as (?:possible|you can)\b", says(format=Format.HOLD)),
    phrase(r"^[\s;]*for load\s?(?::|$)", says(format=Format.MAX_LOAD)),
    phrase(r"^[\s;]*max(?:imum|imal)? holds?\s?(?::|$)", says(format=Format.HOLD)),
    phrase(r"\b(?:the )?heaviest weight\b(?: of the day)?", says(format=Format.MAX_LOAD)),
    phrase(r"\btime trial\b", says(format=Format.TIME_TRIAL)),
    phrase(
        r"\b(?:(?:for|cover|go) )?(?:the )?(?:greatest|most|longest|furthest|farthest)(?: possible)? distance\b"
        r"(?: possible| you can)?",
        says(format=Format.MAX_REPS),
    ),
    phrase(
        r"\b(?:record|note|write(?: down)?|score(?: is|:)?)(?: your| the| is)?(?: total| final| overall)? time\b",
        says(format=Format.FOR_TIME),
    ),
    phrase(r"\b(?:each|every) (?:round|set|one|interval)(?: is)? <fast>", says(format=Format.INTERVALS)),
    phrase(r"^[\s;]*sets\s?(?::|$)", says(format=Format.SETS)),
    phrase(r"^[\s;]*intervals\s?(?::|$)", says(format=Format.INTERVALS)),
    # the heaviest of the day
    phrase(
        r"<dur> to (?:(?=(?:find|build|work|establish|test|hit)\b)|(?:get|do|work up) (?:there|it)\b)",
        _within,
    ),
    phrase(
        r"\b(?:find|build_(?:up )?to|work_(?:up )?to|establish|test|hit) (?:an? |your |today's )?(?:new )?"
        r"(?:heavy|max(?:imum|imal)?|top)(?: set of)?_(?P<n>singles?\b|doubles?\b|triples?\b"
        r"|[0-9]{0,2})(?: reps?\b)?<of>",
        _heaviest,
    ),
    phrase(
        r"(?:\b(?:find|test|hit|build to|work to) )?(?:an? |your "
        r")?(?<!of.)(?<!%.)(?<!%)(?P<n>[0-9]{1,2})_(?:rm|rep max)\b<of>",
        _heaviest,
    ),
    phrase(
        r"\b(?:(?:find|build|work|get)(?: up)? (?:to )?)?(?:your |the |today's )?heaviest(?: set of)?"
        r"_(?P<n>singles?\b|doubles?\b|triples?\b|[0-9]{1,2}\b)(?: reps?\b)?(?: of the day\b|<of>)",
        _heaviest,
    ),
    # intervals
    phrase(
        r"\btabata\b[\s:,(\-]{0,3}(?:<n>_x_)?20_(?:s|sec|secs|seconds|\")?(?: work)?"
        r"\s?/\s?10_(?:s|sec|secs|seconds|\")?(?: rest)?"
        r"(?:[\s,:;)\-]{0,4}(?:x_)?(?:[1-9][0-9]?)_(?:times|rounds|x)\b)?",
        _tabata,
    ),
    phrase(r"\btabatas?\b<of>", _tabata),
    phrase(r"\be(?P<every>[2-9])mom(?:\b|(?=x))<is>x_<n>(?![0-9.:']|_min|_sec)", _minutely_times),
    phrase(r"\be(?P<every>[1-9]?)mom(?:\b|(?=[0-9]))<is>(?:for |of |x )?<minutes>", _minutely_for),
    phrase(r"<minutes>_(?:an? )?\be(?P<every>[1-9]?)mom\b", _minutely_for),
    phrase(r"\be(?P<every>[1-9]?)mom\b", _minutely),
    phrase(r"\bevery (?P<every>)minute(?: on the minute)?\b<is>(?:for |x )<minutes>", _minutely_for),
    phrase(r"<minutes>_:?_every (?P<every>)minute(?: on the minute)?\b", _minutely_for),
    phrase(r"\bevery (?P<every>)minute(?: on the minute)?\b", _minutely),
    phrase(r"\bon the (?P<every>)minute\b<is>(?:every minute )?(?:for |x )?<minutes>", _minutely_for),
    phrase(r"\bon the (?P<every>)minute\b", _minutely),
    phrase(
        r"^[\s;:,]*(?:alternating|alternate)(?: between)?(?: minutes| stations| movements| exercises)?[\s;:,]*$",
        says(in_turn=True),
    ),
    phrase(r"<n>_x?_(?:<rounds>|sets\b)[\s,:;\-]{0,4}every <work>", _every_times),
    phrase(r"\b(?:every|on the) <work><is>(?:for )?<n>_(?:<rounds>|times\b)", _every_times),
    phrase(r"\bevery <work><is>for <minutes>", _every_for),
    phrase(r"\b(?:every|on the) <work><is>x_<n>(?: <rounds>| sets\b| times\b)?(?![0-9.])", _every_times),
    phrase(r"\bevery <work>", _every),
    phrase(
        r":?<work>_(?:on|(?:of )?work)\b[\s/,:\-]{0,3}<off>_(?:off|(?:of )?rest)\b[\s,:\-]{0,3}(?:x|for)_<n>"
        r"(?: <rounds>| sets\b| times\b)?(?![0-9.]|:[0-9]| min)",
        _on_off_times,
    ),
    phrase(
        r"<n>_x_:?<work>_(?:on|(?:of )?work)\b[\s/,:\-]{0,3}<off>_(?:off|(?:of )?rest)\b",
        _on_off_times,
    ),
    phrase(
        r":?<work>_(?:on|(?:of )?work)\b[\s/,:\-]{0,3}<off>_(?:off|(?:of )?rest)\b(?! between| after)",
        _on_off,
    ),
    phrase(r"\bwork<is><work>[\s/,:\-]{0,3}rest<is><off>(?! between| after)", _on_off),
    phrase(r":?<work>\s?[/:]\s?<off>_(?:work[\s/:]rest|on[\s/]off|intervals)\b", _on_off),
    phrase(r"^[\s;*]*work(?:ing)?(?: time)?<is><dur>", _work),
    phrase(
        r"^[\s;*]*<work>\s?/\s?<off>_x_<n>(?: <rounds>| sets\b| times\b)?(?![0-9.]|_[a-z])",
        _bare_on_off_times,
    ),
    # rests and caps before bare durations mean anything else
    phrase(
        r"(?:with )?(?:a )?\b(?:<pause>\b|r(?=[0-9]))(?: for| of)?<is><dur>(?!<to>[0-9])<between>",
        _rest,
    ),
    phrase(r"(?:with )?(?:a )?<dur>_(?:of )?<pause>\b<between>", _rest),
    phrase(r"<dur><between>", _rest_between),
    phrase(r"<between><is><dur>(?!<to>[0-9])", _rest_between),
    phrase(
        r"\b(?:time_cap|cap(?:ped)?|tc|(?:time_)?limit|maximum(?: time)?)"
        r"(?:\b|(?=[0-9]))(?: it)?(?: at| of| is| after)?<is><minutes>",
        _cap,
    ),
    phrase(r"<dur>_(?:time_)?(?:cap|tc|limit)\b", _cap),
    # as many rounds as possible
    phrase(r"<dur>_(?:ascending )?ladder\b<of>", _amrap),
    phrase(r"\b(?:ascending |climbing )?ladder<is>(?:for |in )?<dur>", _amrap),
    phrase(r"\b<amrap><is><n>_x_<dur>", _amrap_again),
    phrase(r"<n>_x_(?:an? )?<amrap><is><minutes>", _amrap_again),
    phrase(r"<n>_x_<dur>[\s:,\-]{0,3}<amrap>", _amrap_again),
    phrase(r"\b<amrap>(?:\b|(?=[0-9]))<is>(?:in |of |for |within |x )?<minutes><of>", _amrap),
    phrase(r"\b(?:in |for )?<dur>(?: of| to (?:do|get))?[\s:,\-]{0,3}(?:an? )?<amrap><of>", _amrap),
    phrase(r"(?<![0-9.:\-])(?P<time>[0-9]{1,3}) <amrap><of>", _amrap),
    phrase(r"\b<amrap>\b<of>", says(format=Format.AMRAP)),
    # as fast as possible
    phrase(r"<n>_x?_<rounds><is>(?:each )?(?:round )?(?:<fast>|ft\b|f\.t\.)<of>", _rounds_for_time),
    phrase(r"<n>_rft\b<of>", _rounds_for_time),
    phrase(r"<fast><is><n>_<rounds><of>", _rounds_for_time),
    phrase(r"^[\s;*]*ft\b(?=[\s:;]|$)", says(format=Format.FOR_TIME)),
    phrase(r"(?<=[a-z;]\s)(?:ft\b|f\.t\.)(?=[\s:;,]*(?:$|;))", says(format=Format.FOR_TIME)),
    phrase(r"\b(?:<fast>|rft\b)(?: complete)?<of>", says(format=Format.FOR_TIME)),
    # schemes and rounds
    phrase(
        r"(?<![0-9.\-])(?P<a>[0-9]{1,3})-"
        r"(?P<b>[0-9]{1,3})-(?:[0-9]{1,3}-){0,5}\.\.\.-?(?P<z>[0-9]{1,3})(?![0-9])<of>",
        _ladder,
    ),
    phrase(r"(?<![0-9.\-])(?P<a>[0-9]{1,3})(?P<b>) (?:down |up )to (?P<z>[0-9]{1,3})(?![0-9])<of>", _ladder),
    # `10 to 1` and `10-1` can only be meant downwards; `8 to 10` is a range
    phrase(
        r"(?<![0-9.:\-])(?P<a>[0-9]{1,3})(?P<b>)(?:\s?-\s?|\sto\s)(?P<z>1)"
        r"(?![0-9.:/\-]|\s?(?:min|sec|s\b|kg|lb))<of>",
        _ladder,
    ),
    phrase(r"(?<!tempo.)<scheme>(?: rep(?:s|etitions?)?(?: each)?\b)?<of>(?! tempo)", _scheme),
    phrase(r"<listed>(?: rep(?:s|etitions?)?(?: each)?\b)?<of>(?![%@])", _listed),
    phrase(r"\b(?:rounds?|rds)\s?[:=]\s?<n>(?![0-9]|_[a-z])", _rounds),
    phrase(r"<n>_x?_<rounds><of>", _rounds),
    phrase(r"\b(?:repeat|complete|do this) x?_<n>_(?:times|x)\b", _rounds),
    phrase(r"<n> sets\b(?! of| x|_[0-9])", _sets),
    phrase(r"<n> sets of (?=[0-9]{1,3}\s?[a-z][^,;+]*[,;+])", _sets),
    phrase(
        r"\b(?:in|as) pairs\b|\b(?:with|w/)\s?(?:a |your )?partner\b|^[\s;]*partner\b|\b(?:yo)?u go[\s,]{1,3}i go\b",
        says(team=2),
    ),
    phrase(r"\b(?:in )?teams? of <n>", _team),
    phrase(r"\b(?:in|for|within) <minutes>", _within),
)
