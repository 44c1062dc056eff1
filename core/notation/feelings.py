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
            r"|\bmy (?:\w+ )?(?:legs|arms|muscles) (?:are|feel) (?:\w+ )?sore\b"
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


class Feeling(NamedTuple):
    """`minutes`: how long they have, where they said so."""

    kind: Kind
    minutes: int | None = None


def read_feeling(text: str) -> Feeling | None:
    """How the speaker is today, or what they can't do; None where it is about something else, or denied."""
    words = plain(text).replace("\u2019", "'").casefold().strip()
    if len(words) > _LONGEST or "\n" in text.strip() or _NOT.search(words):
        return None
    kind = next((kind for kind, pattern in _KINDS if pattern.search(words)), None)
    if kind is None:
        return None
    told = _MINUTES.search(words) if kind == "short" else None
    return Feeling(kind, int(told["minutes"]) if told and 1 <= int(told["minutes"]) <= LONGEST_DAY else None)
