"""One act in a line for people: what it is, then what was told of it."""

from collections.abc import Callable, Iterator, Mapping
from decimal import Decimal
from typing import Any, Final

from bot.words.en.talk.acts import ACTS
from bot.words.en.versions.questions import things
from bot.words.forecasts import clock
from bot.words.versions import limit_names
from core.desk.reference import AnyAct, Result
from core.measures import MassUnit


def in_words(act: AnyAct) -> str:
    """`how hard it was: 8 of 10`; `something you want to spare: sore knee, left`."""
    told = ", ".join(_told(act))
    return f"{ACTS[act.act]}: {told}" if told else ACTS[act.act]


def _told(act: AnyAct) -> Iterator[str]:
    for name in type(act).model_fields:
        value = getattr(act, name)
        if name in FIELDS and value not in (None, ()):
            yield FIELDS[name](value)


def number(value: float | Decimal) -> str:
    return f"{value:f}".rstrip("0").rstrip(".") if "." in f"{value:f}" else f"{value:f}"


def result(score: Result) -> str:
    told = [
        f"{score.rounds} rounds" if score.rounds is not None else "",
        f"{score.reps} repetitions" if score.reps is not None else "",
        clock(score.seconds) if score.seconds is not None else "",
        f"{number(score.load_kg)} kg" if score.load_kg is not None else "",
        f"{number(score.distance_m)} m" if score.distance_m is not None else "",
        f"{score.calories} kcal" if score.calories is not None else "",
        "stopped early" if score.unfinished else "",
    ]
    return " and ".join(one for one in told if one)


_as_it_is: Final = str

# By the name of a field; days, places and people are as they were typed.
FIELDS: Final[Mapping[str, Callable[[Any], str]]] = {
    "equipment": lambda value: things(value, MassUnit.KG),
    "limits": lambda value: limit_names(value, {}),
    "limit": lambda value: limit_names([value], {}),
    "called": _as_it_is,
    "side": _as_it_is,
    "sign": lambda value: SIGNS[value],
    "body_mass_kg": lambda value: f"{number(value)} kg",
    "load_kg": lambda value: f"with {number(value)} kg",
    "reps": lambda value: f"{value} repetitions",
    "distance_m": lambda value: f"{number(value)} m",
    "seconds": clock,
    "score": result,
    "value": lambda value: f"{number(value)} of 10",
    "level": _as_it_is,
    "minutes": lambda value: f"{value} minutes",
    "minutes_before": lambda value: f"{value} minutes before",
    "days": lambda value: f"{value} days",
    "person": _as_it_is,
    "step": lambda value: STEPS.get(value, value),
    "amount": number,
    "movement": _as_it_is,
    "term": _as_it_is,
    "to": lambda value: f"to {value}",
    "way": _as_it_is,
    "instead_of": lambda value: f"instead of {number(value)}",
    "since": lambda value: f"from {value}",
    "until": lambda value: UNTIL.get(value, f"until {value}"),
    "day": _as_it_is,
    "when": _as_it_is,
    "rule": _as_it_is,
    "time": _as_it_is,
    "link": _as_it_is,
    "place": _as_it_is,
    "what": _as_it_is,
    "change": _as_it_is,
    "units": lambda value: {"kg": "kilos", "lb": "pounds"}[value],
    "where": _as_it_is,
}

UNTIL: Final[Mapping[str, str]] = {"always": "from now on", "month": "until the end of the month"}

# What an order asks, where its name alone says little.
STEPS: Final[Mapping[str, str]] = {
    "out": "without",
    "other": "another",
    "bare": "nothing in the hands",
    "written": "as written",
    "spare": "nothing of",
    "away": "left out",
    "back": "counted in again",
    "normal": "as usual again",
    "amount": "so many",
    "load": "so heavy",
    "at_most": "at most in the hands",
    "rest": "held back",
    "more": "more of",
    "number": "a number",
}

SIGNS: Final[Mapping[str, str]] = {
    "chest": "the chest",
    "breath": "breath",
    "faint": "feeling faint",
    "heart": "the heartbeat",
    "swelling": "a swelling",
    "calves": "the calves",
}
