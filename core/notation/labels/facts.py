"""What a labelled stretch says of its block: the label tells what its number is."""

import re
from collections.abc import Callable
from typing import Final

from core.notation.labels.labelling import chances, label
from core.notation.phrases.aims import Facts
from core.notation.phrases.efforts import effort_told
from core.notation.quantities import COUNT_WORD, DURATION, MINUTE_S, NUMBER_WORDS, seconds
from core.sessions.values import BlockKind, Format

# How sure the label must be. What is asked for nothing, and done by nobody, is only shown as unread.
SURE: Final = 0.66
# Below it, words behind a line are taken as said of it.
UNLIKELY: Final = 0.25
# What is said of the work and is no fact of it.
_OF_WORK: Final = ("note", "load", "quality", "effort")
KINDS: Final = {
    "warm_up": BlockKind.WARM_UP,
    "skill": BlockKind.SKILL,
    "strength": BlockKind.STRENGTH,
    "main": BlockKind.MAIN,
    "cool_down": BlockKind.COOL_DOWN,
}
# Beside these, words for how hard it is are said of the work.
_HOW_LONG: Final = frozenset(("minutes", "rounds", "sets", "work", "for_time", "amrap"))
_MOST_WORDS_OF_A_HEADING: Final = 5
_MOST_WORDS_OF_A_MANNER: Final = 8
_MINUTES_BELOW: Final = 10
# When people meet is nothing of the work: `Tue 19:00`, `7:30 pm`.
_TIME_OF_DAY: Final = re.compile(
    r"\b(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*,?\s(?:at\s)?[0-9]{1,2}[:.][0-9]{2}\b|\b[0-9]{1,2}[:.][0-9]{2}\s?(?:am|pm|h|uhr|o'clock)\b"
)
# `rest to 3:00`: the clock says when it is over, not how long it is.
_UNTIL: Final = re.compile(r"\b(?:to|til|till|until)\s[0-9]{1,2}:[0-9]{2}\b")
# `4 sets of gizmos` names what is done, known or not.
_OF_SOMETHING: Final = re.compile(
    r"\bof (?!(?:each|all|every\w*|them|those|these|this|that|it|both|work|the|what)\b)[a-z]{3,}"
)
_DURATION: Final = re.compile(rf"(?<![0-9.:\-]){DURATION}")
_COUNT: Final = re.compile(rf"(?<![\w.:/\-])x?(?P<n>[0-9]{{1,3}}|(?:{COUNT_WORD})\b)x?(?![0-9.:/%\-]|\w)")
_IN_TURN: Final = re.compile(r"\s(?:and|with|then|followed by|plus)\s|\s?[/+,]\s?")
_KCAL: Final = re.compile(r"\bk?cal")

Builder = Callable[[str, float | None, int | None], Facts]


def told_by(words: str) -> Facts:
    """The facts of a stretch in lower case that is labelled with confidence; {} where it says none, or unclearly."""
    return _told_once(words) or _told_in_turn(words)


def _told_in_turn(words: str) -> Facts:
    """Several things said in turn, each of which is sure: `40 seconds of work and 20 seconds to change`."""
    parts = [part for part in _IN_TURN.split(words) if part.strip()]
    told = [_told_once(part.strip()) for part in parts]
    names = [name for facts in told for name in facts]
    if len(parts) < 2 or not all(told) or len(set(names)) < len(names):  # noqa: PLR2004
        return {}
    return {name: value for facts in told for name, value in facts.items()}


def _told_once(words: str) -> Facts:
    name, chance = label(words)
    if name == "effort" and chance >= SURE:
        return _effort(words)
    builder = _BUILDERS.get(name)
    if builder is None or chance < SURE or _TIME_OF_DAY.search(words):
        return {}
    times = _DURATION.findall(words)
    bare = _DURATION.sub(" ", words)
    counts = [match["n"] for match in _COUNT.finditer(bare)]
    if len(times) + len(counts) > 1 or re.search("[0-9]", _COUNT.sub(" ", bare)):
        return {}
    time = seconds(_DURATION.search(words)[0]) if times else None  # type: ignore[index]
    count = (NUMBER_WORDS.get(counts[0]) or int(counts[0])) if counts else None
    facts = builder(words, time, count)
    effort = effort_told(words) if facts and name in _HOW_LONG else None
    return {"effort": effort} | facts if effort else facts


def heading_of(words: str) -> BlockKind | None:
    """The kind of block that a short stretch opens."""
    if len(words.split()) > _MOST_WORDS_OF_A_HEADING or re.search("[0-9]", words):
        return None
    name, chance = label(words)
    return KINDS.get(name) if chance >= SURE else None


def is_remark(words: str) -> bool:
    """Whether words behind something to do, in lower case, are hardly another thing to do."""
    return chances(words).get("movement", 0.0) < UNLIKELY


def is_said_to_people(words: str) -> bool:
    """Whether words in lower case greet, praise or ask people rather than say how something is done."""
    told = chances(words)
    return told.get("talk", 0.0) > sum(told.get(name, 0.0) for name in _OF_WORK)


def is_surely_of_work(words: str) -> bool:
    """Whether a few words in lower case that stand by themselves say how the work is done."""
    told = chances(words)
    return (
        len(words.split()) <= _MOST_WORDS_OF_A_MANNER
        and sum(told.get(name, 0.0) for name in _OF_WORK) >= SURE
    )


def may_head(words: str) -> bool:
    """Whether words in lower case that nobody knows may be the name of a part: nothing is said in them."""
    told = chances(words)
    return told.get("talk", 0.0) + sum(told.get(name, 0.0) for name in _OF_WORK) < SURE


def _rest(words: str, time: float | None, count: int | None) -> Facts:
    if _UNTIL.search(words):
        return {}
    if count is not None:
        time = float(count * MINUTE_S if count < _MINUTES_BELOW else count)
    return {"rest_s": time} if time else {}


def _time(name: str, *, format_: Format | None = None, minutes: bool = False) -> Builder:
    """A time, a bare number of which counts minutes."""

    def facts(_: str, time: float | None, count: int | None) -> Facts:
        time = time or (float(count) * MINUTE_S if count else None)
        if not time:
            return {}
        return {name: time / MINUTE_S if minutes else time} | ({"format": format_} if format_ else {})

    return facts


def _rounds(words: str, time: float | None, count: int | None) -> Facts:
    told = count and count > 1 and not time and not _OF_SOMETHING.search(words)
    return {"rounds": count} if told else {}


def _sets(words: str, time: float | None, count: int | None) -> Facts:
    return (told := _rounds(words, time, count)) and told | {"format": Format.SETS}


def _scored(format_: Format, counted: str = "") -> Builder:
    """A format that needs no number; a time beside it is its length, or its cap where it is done for time."""

    def facts(words: str, time: float | None, count: int | None) -> Facts:
        told: Facts = {"format": format_}
        if format_ is Format.MAX_REPS and _KCAL.search(words):
            told |= {"in_kcal": True}
        if time:
            told |= {"cap_s": time} if format_ is Format.FOR_TIME else {"minutes": time / MINUTE_S}
        if count:
            told |= {counted: count} if counted else {}
        return told if counted or not count else {}

    return facts


def _effort(words: str) -> Facts:
    """`at an easy pace`; `40 minutes easy` tells how long as well."""
    told = effort_told(words)
    if told is None:
        return {}
    time = _DURATION.search(words)
    said = " ".join(_DURATION.sub(" ", words).split()).strip(" ,:;.-")
    length = {"minutes": seconds(time[0]) / MINUTE_S} if time else {}
    return {"effort": told.model_copy(update={"words": said})} | length


def _team(_: str, time: float | None, count: int | None) -> Facts:
    return {} if time else {"team": count or 2} if count != 1 else {"team": 2}


_BUILDERS: Final[dict[str, Builder]] = {
    "rest": _rest,
    "work": _time("work_s"),
    "every": _time("every_s", format_=Format.INTERVALS),
    "minutes": _time("minutes", minutes=True),
    "cap": _time("cap_s"),
    "rounds": _rounds,
    "sets": _sets,
    "for_time": _scored(Format.FOR_TIME, "rounds"),
    "amrap": _scored(Format.AMRAP),
    "max_reps": _scored(Format.MAX_REPS),
    "hold": _scored(Format.HOLD),
    "max_load": _scored(Format.MAX_LOAD, "amount"),
    "quality": _scored(Format.QUALITY),
    "team_2": _team,
    "team": _team,
    "minutely": lambda _words, _time, _count: {"format": Format.INTERVALS, "every_s": float(MINUTE_S)},
}
