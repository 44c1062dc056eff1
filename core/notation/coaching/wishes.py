"""What a coach wishes about one athlete: `hold Ilse for my OK`, `stop holding Ilse`, `show me Ilse`."""

import re
from collections.abc import Iterable
from typing import Literal, NamedTuple

from core.notation.body.limits import read_limits
from core.notation.in_full import in_full
from core.notation.people import find_name
from core.notation.talk.chat import is_like_a_score

Wish = Literal["hold", "lift", "look"]

_VERSIONS = r"(?: versions?| sessions?| training)?"
_ENDS = r"(?:,? (?:any ?more|please|now|again|too|as well|from now on|from today))*"
_OK = r"(?:ok|okay|go|go-ahead|eyes|check|approval)"
_LOOKED = r"(?:say|said|give|gave|look|looked|check|checked)"
_UNTIL = rf"(?: back)?(?: (?:for|until|till|before) my {_OK}(?: first)?| (?:until|till) i(?:'ve| have)? {_LOOKED}\b.*)?"

# With the name as `@`; the first that fits decides.
_WISHES: tuple[tuple[Wish, str], ...] = (
    ("lift", rf"(?:stop|no more|don't|do not) hold(?:ing)?(?: back)? @{_VERSIONS}{_UNTIL}"),
    ("lift", rf"(?:un-?hold|release) @{_VERSIONS}"),
    ("lift", r"(?:lift|end|drop) (?:the hold on @|@ hold)"),
    ("lift", rf"let @{_VERSIONS} (?:go out|through)(?: without my {_OK})?"),
    ("lift", rf"@{_VERSIONS} (?:needs? no|do(?:es)?n't need|do(?:es)? not need) (?:my )?{_OK}"),
    ("hold", rf"(?:hold|keep) @{_VERSIONS}{_UNTIL}"),
    ("hold", rf"my {_OK} first (?:for|with) @{_VERSIONS}"),
    ("hold", rf"@{_VERSIONS} needs? my {_OK}(?: first)?"),
    ("hold", rf"(?:let me|i want to|i'd like to|i'll) (?:see|check|look at) @{_VERSIONS} first"),
    ("look", rf"(?:show|show me|look at|see|what's|what is) @{_VERSIONS}(?: first| 1st)?"),
    (
        "look",
        rf"@{_VERSIONS}|what(?:'s| does| is| will| would) @ (?:do|doing|get|getting)|how does @ do(?: it)?",
    ),
    ("look", r"what(?:'?s)? @ (?:get|gets|getting|do|doing|have)"),
    ("look", rf"(?:what|how) (?:does|will|would) @{_VERSIONS} look(?: like)?"),
)


_ASKED = r"^(?:please,? )?(?:(?:can|could|may) (?:i|you|we) )?(?:please )?"
_HOLD_OF_SOMEBODY = re.compile(
    rf"(?:hold|keep) (?P<name>[^\W\d_][\w' \-]{{0,30}}?)(?:'s)?{_VERSIONS}(?: back)? (?:for|until|till|before) my {_OK}"
    r"(?: first)?"
)


_ABOUT = re.compile(r"@|\b(?:has|have|got|is|was|had|for|her|him|them|his|their|today|please|a|an|the)\b")


_ASKS = re.compile(r"^\W*(?:how|what|which|why|when|who|whose|where)\b", re.IGNORECASE)


class WishAbout(NamedTuple):
    name: str
    wish: Wish


def read_wish(text: str, names: Iterable[str]) -> WishAbout | None:
    """The wish in a coach's words about one of these people; None where there is none, or no one name."""
    words = _wished(text)
    found = find_name(words, names)
    if found is None:
        return None
    name, rest = found
    return next((WishAbout(name, wish) for wish, pattern in _WISHES if re.fullmatch(pattern, rest)), None)


def read_body_of_another(text: str, names: Iterable[str]) -> str | None:
    """Of whom a coach tells what their body must spare: `Ilse has a bad shoulder`, `no jumping for Bo`."""
    if "?" in text or _ASKS.match(text):
        return None
    found = find_name(re.sub(r"\s+", " ", text.replace("\u2019", "'")).casefold(), names)
    if found is None:
        return None
    name, rest = found
    about = _ABOUT.sub(" ", rest)
    return name if read_limits(about).limits and not is_like_a_score(about) else None


def read_hold_of_somebody(text: str) -> str | None:
    """Whom a hold is wished for, in the coach's spelling; None where no hold is wished."""
    match = _HOLD_OF_SOMEBODY.fullmatch(_wished(text))
    if match is None:
        return None
    start = text.casefold().find(match["name"])
    return text[start : start + len(match["name"])] if start >= 0 else match["name"]


def _wished(text: str) -> str:
    words = in_full(re.sub(r"\s+", " ", text.replace("\u2019", "'")).strip(" .!?").casefold())
    return re.sub(rf"{_ASKED}(.*?){_ENDS}$", r"\1", words)
