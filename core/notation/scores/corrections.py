"""A score put right in the same breath: `sorry 9:24`, `oops, it was 9:24`, `9:24, not 9:42`."""

import re
from typing import Final

from core.notation.part_labels import find_part
from core.notation.talk.chat import is_like_a_score
from core.notation.text import plain

_LONGEST: Final = 160
_SLIP: Final = (
    r"(?:sorry|oops|oops+y?|whoops|woops|ups|correction|typo|my (?:bad|mistake)|mistake|(?:no,? )?wait|hang on|actually"
    r"|i mean|i meant|i mis-?(?:typed|counted|read)|mistyped|miscounted|mis-?read|wrong (?:again|score|time|number|one)"
    r"|that(?:'s| is| was) (?:wrong|not right)|not right"
    r"|no(?=\W+(?:wait|sorry|it|that|i)\b|\W+[0-9]+(?::|\s?\+|\s?rounds?|\s?rds?)))"
)
_WAS: Final = (
    r"(?:(?:it|that|this|my (?:score|time|result)|the (?:score|time|result)|score|time)"
    r"(?:'?s| is| was| should(?: be|'ve been| have been))|(?:it |that )?should (?:be|have been)"
    r"|i (?:meant(?: to (?:say|write|type))?|got|did|had)|make (?:it|that)|change (?:it|that|my (?:score|time)) to"
    r"|meant(?: to (?:say|write|type))?|(?:it )?was)"
)
# Without a word of regret, `I got 7+12` may as well be a second session.
_RATHER: Final = (
    r"(?:(?:it|that) (?:was|is)|(?:(?:it|that|this) )?should(?: be|'ve been| have been)"
    r"|i meant(?: to (?:say|write|type))?|make (?:it|that)|change (?:it|that|my (?:score|time)) to)"
)
_IN_FRONT: Final = re.compile(
    rf"^\W*(?:(?:{_SLIP}\b\W*)+(?:{_WAS}\b\W*)?|{_RATHER}\W+)(?:(?:actually|really|only|rather|in fact|meant to be) )*"
)
# `12:50 wasn't me, I did 13:50`, `that 4+20 Marit put in isn't mine, it was 5+2`
_NOT_MINE: Final = re.compile(
    r"^\W*(?:(?:sorry|oops|hi|hey|no|wait|btw|that|the|my)\W+)*[0-9][0-9:+.]*[^0-9,;.]{0,40}"
    r"\b(?:wasn'?t|isn'?t|(?:was|is) not|was|is)"
    r" (?:mine|me|my (?:score|time|result)|right|correct|true|wrong)\b\W+(?:(?:and|but|cos|because|as)\W+)?"
    r"(?:(?:i|mine|it|my (?:time|score|result))\W+(?:(?:only|actually|really) )?(?:did|got|had|was|is|made)\W+)"
)
_BEHIND: Final = re.compile(
    r"\W+(?:(?:i )?(?:meant|mean)|sorry|oops|whoops|typo|my (?:bad|mistake)|(?:and )?not [0-9][0-9:+. ]*)"
    r"(?:\W+sorry)?\W*$"
)
_NOT_BUT: Final = re.compile(r"^\W*not [0-9][0-9:+. ]*\W+(?:but|it(?:'s| was))\W+")


def read_correction(text: str) -> str | None:
    """The score that is told in place of another, in the words that tell it; None where none is put right."""
    words = plain(text).lower().strip()
    if len(words) > _LONGEST or "\n" in text.strip() or words.endswith("?"):
        return None
    denied = _NOT_MINE.match(words)
    words = words if denied is None else words[denied.end() :]
    rest = _BEHIND.sub("", _NOT_BUT.sub("", _IN_FRONT.sub("", words, count=1), count=1)).strip()
    named = find_part(rest)
    if (rest == words and denied is None) or not re.match(r"\W*[0-9]", named[1] if named else rest):
        return None
    return rest if denied or is_like_a_score(rest) else None
