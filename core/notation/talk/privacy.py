"""Questions about what is kept and who sees it."""

import re
from collections.abc import Mapping
from typing import Final, Literal

from core.notation.text import plain

Topic = Literal["all", "weight", "spared", "scores"]

_LONGEST: Final = 160
_SUBJECTS: Final[Mapping[Topic, str]] = {
    "weight": r"(?:body ?)?weight|mass|(?:what|how much|how heavy) i (?:weigh|am)",
    "spared": r"injur(?:y|ies)|limits?|limitations?|pain|health|medical|conditions?|pregnancy|what hurts|problems?"
    r"|what i (?:spare|avoid|told you)",
    "scores": r"scores?|results?|times?|effort",
    "all": r"data|info(?:rmation)?|details|stuff|answers?|messages?|chats?|profile|equipment|this|that|it",
}
_WHO: Final = (
    r"(?:who(?: else| all)?|does (?:anyone|anybody|someone|the group|everybody|everyone|(?:my|the) coach)(?: else)?"
    r"|(?:can|could|will|do|does|may) (?:(?:my|the|our) (?:coach(?:es)?|group|team)|others|other people|anyone|anybody"
    r"|everyone|everybody|they|people)(?: else)?)"
)
_SEES: Final = re.compile(
    rf"\b{_WHO} (?:can |could |will |gets? to |is able to |be able to )*"
    r"(?:sees?|reads?|knows?|looks? at|gets?|has access to)\b"
)
_MINE: Final = r"(?:data|info(?:rmation)?|answers?|details|messages?|chats?|weight|scores?)"
_KEEPS: Final = re.compile(
    r"\bwhat (?:do|will|are) (?:you|u) (?:do|doing|use|keep|store|save|know|going to do|remember)\b.{0,30}"
    rf"\b(?:{_MINE}|about me|of me)\b"
    rf"|\b(?:is|are) (?:this|it|all this|what i (?:write|say|tell you)|our chat|the chat|my {_MINE})"
    r" (?:kept |really |all )?(?:private|confidential|stored|kept|anonymous|public)\b"
    rf"|\b(?:is|are) my {_MINE} (?:safe|secure)\b"
    rf"|\b(?:where|how|how long) (?:do you|is|are|will you) (?:(?:store|keep|save) )?my {_MINE}\b"
    r"|\b(?:do|must) i (?:have to |need to )?(?:share|show|publish|tell (?:the group|everyone|them))\b"
    r"|\b(?:can|may|could) i (?:keep|hide|not (?:share|show))\b.{0,20}\b(?:scores?|results?|private|secret)\b"
    r"|\b(?:privacy|gdpr|data protection)\b"
    r"|\bwhy (?:do|would|should) (?:you|u|i) (?:need|want|have)\b.{0,25}\b(?:this|that|it|all|know|tell|answer)\b"
    r"|\bwhy (?:do|are) (?:you|u) ask(?:ing)?\b"
    rf"|\bdo you (?:share|sell|store|keep|pass on|give away) (?:my|our) {_MINE}\b"
)
_JOINT: Final = re.compile(r"[\s,;.]*\b(?:but|and|please|pls)?\s*$", re.IGNORECASE)
# `Don't tell my coach`: what of the body is told to nobody in any case.
_TELL_NOBODY: Final = re.compile(
    r"\b(?:do not|don'?t|dont|pls no|please not|never) (?:you )?(?:tell|say|show|share|mention)\b.{0,25}"
    r"\b(?:coach(?:es)?|anyone|anybody|nobody|group|team|others|everyone|everybody)\b(?: (?:that|about|of)\b)?"
)


def told_in_secret(text: str) -> str | None:
    """What else a message tells that asks for nobody to be told; None where it doesn't ask for that."""
    found = _TELL_NOBODY.search(_words(text)) if len(text) <= _LONGEST else None
    if found is None:
        return None
    before, behind = text.strip()[: found.start()], text.strip()[found.end() :]
    return f"{_JOINT.sub('', before)} {behind}".strip(" ,.;!")


def read_privacy_question(text: str) -> Topic | None:
    """What the question is about; `all` where nothing is named."""
    words = _words(text)
    if len(words) > _LONGEST:
        return None
    seen = _SEES.search(words)
    if seen is not None:
        return _topic(re.split("[?.!]", words[seen.end() :])[0])
    return (_topic(words) or "all") if _KEEPS.search(words) else None


def _topic(words: str) -> Topic | None:
    named = (topic for topic, names in _SUBJECTS.items() if re.search(rf"\b(?:{names})\b", words))
    return next(named, None)


def _words(text: str) -> str:
    return plain(text).lower().replace("\u2019", "'").strip()


_KNOWN: Final = re.compile(
    r"\bwhat (?:all )?(?:do|have) (?:you|u) (?:know|got|have|noted?|stored|saved|remember(?:ed)?)(?: all)? "
    r"(?:about|on|of) me\b"
    r"|\bwhat(?: is|'s|s) (?:known|stored|noted) (?:about|on|of) me\b"
)


def asks_what_is_known(text: str) -> bool:
    """`What do you know about me`: the notes themselves are asked for."""
    words = plain(text).replace("\u2019", "'").casefold()
    return len(words) <= _LONGEST and bool(_KNOWN.search(words))
