"""What of an athlete's words is the score and nothing else: `9+3, my right knee hurts` is `9+3`.

A coach reads these words. So nothing is looked for that must not be shown; only what belongs to a score is kept.
"""

import re
from typing import Final

from core.notation.quantities import NUMBER_WORDS
from core.notation.text import plain

_MOST_LETTERS: Final = 200
_TOKEN: Final = re.compile(r"[^\W_]+(?:['\u2019][^\W_]+)*|[+:./=-]|[^\s\w]|_")
# Numbers as they are written in scores, with their unit close by: `7+12`, `8:43`, `3x8`, `60kg`, `10k`, `7rds`.
_NUMBER: Final = re.compile(
    r"[0-9]+(?:x[0-9]*|kg|kgs|lb|lbs|k|km|m|s|sec|secs|min|mins|rds|rd|r|reps|rep|cal|cals|kcal)?(?:st|nd|rd|th)?"
    r"|x[0-9]+"
)
_JOINTS: Final = frozenset("+:./=-")


def _words(text: str) -> frozenset[str]:
    return frozenset(text.split())


# Beside numbers, what scores are told with. None of it can be said of a body.
_COUNTED: Final = _words(
    """round rounds rd rds rep reps repetition repetitions set sets min mins minute minutes sec secs second seconds
    hour hours kg kgs kilo kilos lb lbs pound pounds m km metre metres meter meters mile miles cal cals kcal calorie
    calories part parts main strength block amrap emom cap total score time result half full complete"""
)
_KIND: Final = _words("capped dnf scaled scale modified rx rxd rx'd lighter easier written prescribed posted")
_BETWEEN: Final = _words(
    """and plus at in of to the a an for with each x times as not i did got made done finished completed was is it my
    all version weight extra more than then into under over after per stopped stop by on only just about
    around roughly almost nearly"""
)
_WORDS_OF_NUMBERS: Final = frozenset(word for name in NUMBER_WORDS for word in name.split()) - _BETWEEN


def bare_score(text: str) -> str:
    """The parts of the words that tell the score, each as it was typed; empty where there are none."""
    words = plain(text)[:_MOST_LETTERS]
    runs: list[list[re.Match[str]]] = [[]]
    for token in _TOKEN.finditer(words):
        if _belongs(token[0].casefold()):
            runs[-1].append(token)
        elif runs[-1]:
            runs.append([])
    told = [one for one in (_trimmed(words, run) for run in runs) if one]
    # A number alone beside a score may be an age, or weeks of a pregnancy.
    more = [one for one in told if not (one.isdecimal() or one.casefold() in _WORDS_OF_NUMBERS)]
    return ", ".join(more or told)


def _belongs(token: str) -> bool:
    return _tells(token) or token in _BETWEEN or token in _JOINTS


def _tells(token: str) -> bool:
    """By itself it says something of a score."""
    known = token in _COUNTED or token in _KIND or token in _WORDS_OF_NUMBERS
    return known or _NUMBER.fullmatch(token) is not None


def _trimmed(words: str, run: list[re.Match[str]]) -> str:
    """From the first word that tells something to the last; nothing where it tells no number and no kind."""
    tokens = [token[0].casefold() for token in run]
    telling = [place for place, token in enumerate(tokens) if _tells(token)]
    if all(tokens[place] in _COUNTED for place in telling):
        return ""
    first = telling[0]
    while first > 0 and tokens[first - 1] in {"not", "as"}:  # `not as written` is another kind than `written`
        first -= 1
    return words[run[first].start() : run[telling[-1]].end()]
