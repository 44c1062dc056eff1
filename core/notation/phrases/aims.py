"""What a matched shape says of the coach's aim: `aim: 6-7 rounds`, `sub 10 min`, `effort 7`."""

import re
from typing import Any

from core.notation.quantities import MINUTE_S, NUMBER, seconds
from core.sessions.values import Aim, Effort

Facts = dict[str, Any]
Match = re.Match[str]

_HARDEST = 10


def aim(of: str, low: float | None, high: float | None) -> Facts:
    upside_down = low is not None and high is not None and low > high
    return {} if upside_down else {"aim": Aim.model_validate({"of": of, "low": low, "high": high})}


def aim_count(match: Match) -> Facts:
    low = float(match["lo"])
    if match["more"]:
        return aim(_aim_of(match), low, None)
    return aim(_aim_of(match), low, float(match["hi"] or low))


def _aim_of(match: Match) -> str:
    return "unbroken" if match["what"].startswith("unbroken") else "score"


def aim_below(match: Match) -> Facts:
    return aim("score", None, _count_or_seconds(match))


def aim_above(match: Match) -> Facts:
    return aim("score", _count_or_seconds(match), None)


def _count_or_seconds(match: Match) -> float:
    return float(match["lo"]) if match["lo"] else seconds(match["time"])


def aim_within(match: Match) -> Facts:
    """`sub 10 min`; a bare number counts minutes: `aim: under 15`."""
    told = match["time"]
    return aim("score", None, float(told) * MINUTE_S if told.isdigit() else seconds(told))


def aim_time(match: Match) -> Facts:
    low, high = match["lo"].strip(), (match["hi"] or match["lo"]).strip()
    if re.fullmatch(NUMBER, high):
        return {}
    unit = " min" if ":" in high else re.sub("[0-9.]", "", high)
    return aim("score", seconds(low + unit if re.fullmatch(NUMBER, low) else low), seconds(high))


def aim_effort(match: Match) -> Facts:
    low, high = float(match["lo"]), float(match["hi"] or match["lo"])
    return {"effort": Effort(low=low, high=high)} if low <= high <= _HARDEST else {}
