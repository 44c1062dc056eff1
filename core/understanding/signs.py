"""Stop signs in any language: told of oneself, asked about, or somebody else's."""

import re
from collections.abc import Iterable
from functools import lru_cache
from typing import Final

from core.notation.body.alarm import Alarm, name_others, read_alarm
from core.understanding.marks import Marked, mark
from core.understanding.slots import body


def alarm_in(marked: Marked) -> Alarm | None:
    """A stop sign by a phrase of the lexicon or a shape of words; every doubt on the safe side; or None."""
    shape = read_alarm(marked.text.typed)
    if shape in {"told", "asked"} or not body.signs(marked):
        return shape
    if shape == "other" or body.tells_of_another(marked):
        return "other"
    asks = marked.text.typed.rstrip().endswith("?") and not body.speaks_of_oneself(marked)
    return "asked" if asks else "told"


def alarm(text: str, names: Iterable[str] = ()) -> Alarm | None:
    """The same of words as they were typed; `names` of others, whose signs are theirs. Never raises."""
    return _alarm(name_others(text, names))


# Being out of breath from climbing or hurrying is no sign by itself; at rest, lying or all at once it is.
_EFFORT: Final = re.compile(
    r"\b(?:out of breath|short of breath|breathless|winded|puffed|(?:heavy|hard) breathing)\b",
    re.IGNORECASE,
)
_NO_EFFORT: Final = re.compile(
    r"\b(?:rest(?:ing)?|sitting|lying|sleep\w*|night|bed|just from|making|sudden\w*|unusual\w*|now|still"
    r"|no reason|nothing)\b",
    re.IGNORECASE,
)


def tells_of_effort(text: str) -> bool:
    """Whether the only sign told is being out of breath, of which it isn't said that no effort explains it."""
    rest = _EFFORT.sub(" ", text)
    return rest != text and alarm(rest) is None and not _NO_EFFORT.search(rest)


@lru_cache(maxsize=200)
def _alarm(words: str) -> Alarm | None:
    return alarm_in(mark(words, ()))
