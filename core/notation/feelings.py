"""What makes today different, or a line unfit, in free words: `I feel sick`, `I have 15 minutes only`, `too hard`."""

import re
from typing import Final, Literal, NamedTuple

from core.notation.text import plain

Kind = Literal["hurts", "sick", "sore", "short", "hard", "easy"]

_LONGEST: Final = 160
# Nobody trains for longer, in minutes.
LONGEST_DAY: Final = 600
_MINUTES: Final = re.compile(
    r"\b(?:i've|i have|i) (?:only )?(?:got |have )?(?:only |just )?(?:about )?(?P<minutes>[0-9]{1,3})"
    r" ?min(?:ute)?s?\b"
)
# The first that fits decides: what may be an injury before what is a wish.
_KINDS: Final[tuple[tuple[Kind, re.Pattern[str]], ...]] = (
    ("hurts", re.compile(r"\b(?:it|this|that|these|those|something) (?:really |still )?hurts?\b|^\W*ouch\b")),
    (
        "sick",
        re.compile(
            r"\bi(?:'m| am| feel|'m feeling| am feeling) (?:\w+ )?(?:sick|ill|unwell)\b"
            r"|\bi (?:have|'ve got|got) (?:a )?(?:fever|cold|flu)\b"
        ),
    ),
    (
        "sore",
        re.compile(
            r"\bi(?:'m| am| feel) (?:\w+ )?sore\b"
            r"|\bmy (?:\w+ )?(?:legs|arms|muscles|calves|glutes|quads|hamstrings|thighs|abs)"
            r" (?:are|is|feels?) (?:(?:so|really|very|quite|still|a bit|a little|all|pretty) )*sore\b"
            r"|\b(?:i've got|i have|got) (?:(?:really|very|such) )*sore (?:legs|arms|muscles|calves|glutes|abs)\b"
        ),
    ),
    ("short", re.compile(rf"{_MINUTES.pattern}|\bshort (?:of|on) time\b|\bnot much time\b")),
    (
        "hard",
        re.compile(
            r"\btoo (?:hard|difficult|heavy)\b|\bsomething easier\b|\bi (?:can't|cannot|can not) do\b"
        ),
    ),
    ("easy", re.compile(r"\btoo (?:easy|light)\b|\bsomething harder\b")),
)
_NOT: Final = re.compile(r"\b(?:no longer|not|isn't|wasn't|don't|doesn't|didn't|nothing)\b(?! much time)")


# Muscles only: a sore shoulder or back may be the joint, and a sore chest or belly something else.
_SORE_PLACE: Final = re.compile(
    r"\b(?:(?P<legs>legs|quads|hamstrings|thighs)|(?P<calves>calves)|(?P<glutes>glutes|bum|butt)|(?P<chest>pecs)"
    r"|(?P<arms>arms|biceps|triceps)|(?P<belly>abs))\b"
)
_ALL_OVER: Final = re.compile(r"\b(?:all over|everywhere|everything)\b")


class Feeling(NamedTuple):
    """`minutes`: how long they have, `where`: the one place that is sore, where they said so."""

    kind: Kind
    minutes: int | None = None
    where: str | None = None


def read_feeling(text: str) -> Feeling | None:
    """How the speaker is today, or what they can't do; None where it is about something else, or denied."""
    words = plain(text).replace("\u2019", "'").casefold().strip()
    if len(words) > _LONGEST or "\n" in text.strip() or _NOT.search(words):
        return None
    kind = next((kind for kind, pattern in _KINDS if pattern.search(words)), None)
    if kind is None:
        return None
    if kind == "sore":
        return Feeling(kind, where=_sore_place(words))
    told = _MINUTES.search(words) if kind == "short" else None
    return Feeling(kind, int(told["minutes"]) if told and 1 <= int(told["minutes"]) <= LONGEST_DAY else None)


def _sore_place(words: str) -> str | None:
    if _ALL_OVER.search(words):
        return "all over"
    found = {match.lastgroup for match in _SORE_PLACE.finditer(words)}
    return found.pop() if len(found) == 1 else None
