"""What people say for its own sake: `that was brutal but fun!`, `new PB!!`, `sorry I was late`, `good morning`.

Nothing is read from it: what may hold a fact (a number, a joint, a question) is left to the other readers.
"""

import re
from typing import Final, Literal

from core.notation.body.directions import without_directions
from core.notation.body.sides import joints_in
from core.notation.text import plain

Talk = Literal[
    "proud", "enjoyed", "hard", "bad day", "late", "away", "hello", "bye", "cheerful", "thanks", "well", "moved",
]  # fmt: skip

_LONGEST: Final = 120
_MAY_TELL: Final = re.compile(
    r"[0-9?]|\b(?:hurt\w*|pain\w*|ach(?:e|es|ing|y)|sore|injur\w+|pull(?:ed)?|tweak\w*|dizz\w*|faint\w*|sick|ill|fever"
    r"|weak|numb|swollen|pregnan\w+|too (?:hard|heavy|easy|light)|can'?t do|delete|forget|stop)\b"
)
_SO: Final = (
    r"(?:(?:so|really|very|pretty|absolutely|super|just|but|and|quite|that|it|was|what a|thanks)\W+)*"
)
# What it is said of: the training, or how they are after it.
_AFTER: Final = r"i'?m|i am|i feel|felt|(?:legs|arms|abs) are"
_IT: Final = rf"(?<!make )\b(?:that|it|this|today|session|workout|training|one|{_AFTER})\b.{{0,25}}?\b"
_FUN: Final = r"(?:fun|awesome|amazing|great|brilliant|lovely|nice|cool|fantastic|wonderful|good|strong)"
_HARD: Final = r"(?:brutal|tough|hard|killer|intense|exhausting|spicy|sweaty|destroyed|wrecked|dead|jelly)"
_BAD: Final = r"(?:sucked|awful|terrible|horrible|the worst|rubbish|disappointing|bad)"
# The first that fits decides.
_KINDS: Final[tuple[tuple[Talk, re.Pattern[str]], ...]] = (
    (
        "proud",
        re.compile(
            r"\b(?:new |a |my )?(?:pb|pr|personal (?:best|record))\b|\bproud of (?:myself|me|it|that)\b|\bnailed it\b"
            r"|\bi (?:finally )?(?:did|made) it\b|\bfirst time (?:ever|doing|i|without)\b|\bmy (?:very )?first \w+"
        ),
    ),
    (
        "late",
        re.compile(
            r"\bsorry\b.{0,20}\b(?:late|delay|slow)\b|\b(?:i was|i'?m|running|a bit) late\b"
            r"|\bsorry (?:for|about) the delay\b"
        ),
    ),
    (
        "away",
        re.compile(
            r"\b(?:can'?t|cannot|won'?t|couldn'?t|didn'?t) (?:make it|come|join|train|be there|work ?out)\b"
            r"|\b(?:missed|skipped) (?:the |today'?s |yesterday'?s |a )?(?:session|class|training|workout|day|one)\b"
            r"|^\W*(?:(?:i'?m|i am|i'?ll be|we'?re|away|off|out|till then)\W+)*back (?:on |by |again )?(?:next )?"
            r"(?:mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)\w*\W*$"
        ),
    ),
    (
        "bad day",
        re.compile(rf"{_IT}{_BAD}\b|\bworst \w+ ever\b|\bhated (?:it|that|this)\b|\bbad (?:day|session)\b"),
    ),
    (
        "enjoyed",
        re.compile(
            rf"{_IT}{_FUN}\b|^\W*{_SO}{_FUN}\W*(?:session|workout|one|training|today|stuff)\b"
            r"|\b(?:loved|enjoyed|liked) (?:it|that|this|the|today|every)\b"
        ),
    ),
    ("hard", re.compile(rf"{_IT}{_HARD}\b(?! to\b)|^\W*{_SO}{_HARD}\W*$|^\W*(?:phew|wow|ouf|oof)\W*$")),
    (
        "hello",
        re.compile(
            r"^\W*(?:hi|hello|hey|hiya|good (?:morning|afternoon|evening)|morning|i'?m back)"
            r"(?: (?:there|bot|bellwether|coach|all|everyone|again))*\W*$"
        ),
    ),
    (
        "bye",
        re.compile(
            r"^\W*(?:ok\W+)?(?:bye|good ?night|see (?:you|ya)|take care|have a (?:good|nice|great))\b.{0,30}$"
        ),
    ),
    (
        "cheerful",
        re.compile(
            r"^\W*(?:(?:lo+l|(?:ha)+h?|hehe|yay|woo+(?:hoo+)?|yess+|let'?s go+|nice|happy new year)\W*)+$"
        ),
    ),
    (
        "moved",
        re.compile(
            r"\b(?:just|only) moved\b|\bno score\b|\b(?:done|did it|finished|trained|all done|moved)\b.{0,20}"
            r"\b(?:didn'?t|did not|not|without) (?:count|tim|track|scor|keep(?:ing)? count|writ)\w*"
        ),
    ),
    ("thanks", re.compile(r"\b(?:thanks|thank you|thx|cheers|you'?re the best|appreciate)\b")),
)
# A face may be sad: only what can be nothing but cheerful counts.
_CHEERFUL: Final = frozenset(
    "\U0001f4aa\U0001f525\U0001f389\U0001f64c\U0001f44f\U0001f44d\U0001f600\U0001f603\U0001f604\U0001f601\U0001f60a"
)


def read_small_talk(text: str) -> Talk | None:
    """What kind of kindness it calls for; None where it may tell something that matters, or is anything else."""
    words = plain(text).replace("\u2019", "'").casefold()
    told = without_directions(words)
    if len(words) > _LONGEST or _MAY_TELL.search(words) or any(joints_in(told)):
        return None
    if text.strip() and set(text.strip()) <= _CHEERFUL:
        return "cheerful"
    return next((kind for kind, pattern in _KINDS if pattern.search(words)), None)
