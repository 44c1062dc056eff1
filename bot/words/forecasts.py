"""What is expected of somebody, and how to pace it: `5 to 6 rounds`, `about 1:50 a round`."""

from collections.abc import Iterator

from core.desk.reference import catalogue
from core.forecast.values import Broken, Forecast, Outlook

_MINUTE_S, _HOUR_S = 60, 3600
# Whoever plans by it needs no more: a range is told in steps of so many seconds, metres and kilograms.
_STEPS = {"s": 5, "m": 50, "kg": 2.5, "reps": 1}
# Instead of a range that would help nobody.
NOT_KNOWN = "What to expect of you here I don't know yet: tell me a score or two, and I will."
_RESTS = {"in": " with its rest", "on top": ", rest not counted", None: ""}
_UNITS = {"reps": "repetitions", "m": "m", "kg": "kg"}


def forecast_words(one: Forecast) -> str:
    """`5 to 6 rounds`; `about 8:20 to 9:40`; `72.5 to 80 kg`; plain text."""
    if one.unit == "rounds":
        return _rounds(_range(one, 1))
    if one.unit == "s":
        low, high = (clock(_to(edge, _STEPS["s"])) for edge in (one.low, one.high))
        return f"about {low}" if low == high else f"about {low} to {high}"
    return f"{_range(one, _STEPS[one.unit])} {_UNITS[one.unit]}"


def middle_words(one: Forecast) -> str:
    """`6 rounds`, `8:40`: the middle alone."""
    if one.unit == "rounds":
        return _rounds(f"{_to(one.expected, 0.5):g}")
    if one.unit == "s":
        return clock(_to(one.expected, _STEPS["s"]))
    return f"{_to(one.expected, _STEPS[one.unit]):g} {_UNITS[one.unit]}"


def _rounds(number: str) -> str:
    return f"{number} round{'' if number == '1' else 's'}"


def pacing_words(outlook: Outlook) -> tuple[str, ...]:
    """One or two short sentences; none where there is nothing to say."""
    return tuple(_pacing(outlook))


def _pacing(outlook: Outlook) -> Iterator[str]:
    pacing = outlook.pacing
    if pacing.round_s is not None:
        about = f"About {clock(_to(pacing.round_s, _STEPS['s']))} a round{_RESTS[pacing.rest]}"
        yield f"{about}, the first no faster than the last."
    elif pacing.half_s is not None:
        yield f"Half of it done by about {clock(_to(pacing.half_s, _STEPS['s']))}."
    elif pacing.rounds_s is not None:
        yield f"Through the rounds by about {clock(_to(pacing.rounds_s, _STEPS['s']))}."
    if pacing.broken:
        yield f"Break it up from the start: {', '.join(_parts(one) for one in pacing.broken)}."


def _parts(one: Broken) -> str:
    _, variant = catalogue().variant(f"{one.movement}/{one.variant}")
    return f"the {variant.label} {' + '.join(str(part) for part in one.parts)}"


def clock(seconds: float) -> str:
    """`1:50`, `1:02:30`."""
    whole = round(seconds)
    hours, rest = divmod(whole, _HOUR_S)
    minutes, left = divmod(rest, _MINUTE_S)
    return f"{hours}:{minutes:02}:{left:02}" if hours else f"{minutes}:{left:02}"


def _range(one: Forecast, step: float) -> str:
    low, high = (f"{_to(edge, step):g}" for edge in (one.low, one.high))
    return low if low == high else f"{low} to {high}"


def _to(value: float, step: float) -> float:
    return step * round(value / step)
