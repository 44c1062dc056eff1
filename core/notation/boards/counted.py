"""What a coach says to be the score of a part: `Score: total metres`, `record the time of each`, `longest counts`."""

import re
import tomllib
from dataclasses import replace
from pathlib import Path
from typing import Any, Final

from core.measures import AmountUnit
from core.notation.boards.drafts import Draft
from core.notation.names.catalogued import Lexicon
from core.notation.phrases.aims import Facts
from core.notation.text import Strip
from core.sessions.values import Counts, Format

_TABLE: Final[dict[str, Any]] = tomllib.loads(
    Path(__file__).with_name("counted.toml").read_text(encoding="utf-8")
)
_OPENS: Final = re.compile(rf"(?:^|(?<=[.;,!]\s))[\s*>-]*{_TABLE['opens']}(?P<what>[^.;!?]*)[.;!?\s]*$")
_BEHIND: Final = re.compile(r"(?:^|(?<=[.,;:]\s))(?P<what>(?:the |your )?[a-z]+(?: [a-z]+)?) counts[.!?\s]*$")
_FOR: Final = re.compile(
    r"(?<=[,;:\s])(?:each for(?! time)|all for) (?P<what>(?:max |total )?[a-z]+)(?=\s*[:;.,(]|\s*$)"
)
_WORD: Final = re.compile(r"[a-z]+(?:-[a-z]+)*|[0-9]")


def _by_word(table: dict[str, str]) -> dict[str, str]:
    return {word: name for name, listed in table.items() for word in listed.split()}


_UNIT: Final = _by_word(_TABLE["unit"])
_WHICH: Final = _by_word(_TABLE["which"])
_BESIDE: Final = frozenset(_TABLE["words"]["beside"].split())
_COUNTS: Final = {"best": Counts.BEST, "worst": Counts.WORST}
_FAR: Final = {
    "m": AmountUnit.METRES,
    "kcal": AmountUnit.KCAL,
    "reps": AmountUnit.REPS,
    "s": AmountUnit.SECONDS,
}


def take_counted(strip: Strip, lexicon: Lexicon) -> Facts:
    """Takes away what is said of the score, and says what it is; nothing where a word of it is not known.

    `told`: in what the score is told, `counted_in`: the same as a unit of work, `counts`: which of several it is.
    """
    for shape in (_OPENS, _BEHIND, _FOR):
        match = shape.search(strip.text)
        if match and (facts := _facts(match["what"], lexicon)):
            strip.blank(*match.span())
            return facts
    return {}


def _facts(what: str, lexicon: Lexicon) -> Facts:
    words = _WORD.findall(what)
    units = [_UNIT[word] for word in words if word in _UNIT]
    which = [_WHICH[word] for word in words if word in _WHICH]
    others = [word for word in words if word not in _UNIT and word not in _WHICH and word not in _BESIDE]
    if any(lexicon.exact(word) is None for word in others) or not (units or which or others):
        return {}
    told = units[0] if units else "reps" if others else ""
    if told == "rounds" and which:
        told = "reps" if others else ""  # `each round`
    named = {"counted_in": _FAR[told]} if told in _FAR else {}
    counts = next((_COUNTS[one] for one in which if one in _COUNTS), None)
    return {"told": told, **named} | ({"counts": counts} if counts or which else {})


def as_counted(draft: Draft) -> Draft:
    """The draft with the format that its score leaves no doubt about; of tries at as much as goes the best counts."""
    facts = dict(draft.facts)
    told, tries = facts.pop("told", None), facts.pop("tries", False)
    open_still = facts.get("format") in _OPEN
    if told is not None:
        facts["scored"] = facts.get("scored", True)
        facts |= _format(draft, told) if open_still else {}
    tried = tries and draft.only is not None and draft.only.amount is None and facts.get("format") in _TRIED
    if tried:
        facts |= {"counts": facts.get("counts", Counts.BEST), "most": True}
    return replace(draft, facts=facts)


_OPEN: Final = {None, Format.QUALITY, Format.SETS}
_TRIED: Final = {None, Format.SETS, Format.HOLD, Format.MAX_REPS}


def _format(draft: Draft, told: str) -> Facts:
    timed = all(one.unit is AmountUnit.SECONDS and one.amount for one in draft.pieces)
    again = "rounds" in draft.facts or any(one.sets for one in draft.pieces)
    held = all(one.meaning and one.meaning.unit is AmountUnit.SECONDS for one in draft.pieces)
    if told in {"m", "kcal", "reps"} and timed and draft.lines:
        return {
            "format": Format.INTERVALS if again else Format.MAX_REPS,
            "in_kcal": told == "kcal" and not again,
        }
    if told in {"m", "kcal"} and draft.facts.get("minutes") and draft.only and not again:
        return {"format": Format.MAX_REPS, "in_kcal": told == "kcal"}
    if told in {"s", ""} and held:
        return {"format": Format.HOLD, "most": True}
    if told == "kg":
        return {"format": Format.SETS if again else Format.MAX_LOAD}
    if told == "s" and "format" not in draft.facts and not any(one.sets for one in draft.pieces):
        return {"format": Format.FOR_TIME}
    return {}
