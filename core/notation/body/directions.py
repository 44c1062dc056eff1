"""Which way and from where: `can't bend it back`, `back to training` and `from my knees` name no part of the body."""

import re
from typing import Final

_MOVED: Final = (
    r"(?:bend|bending|bent|pull|pulling|push|pushing|move|moving|lean|leaning|put|putting|stretch|stretching|straighten"
    r"|straightening|twist|twisting|turn|turning|reach|reaching|get|getting|hold|holding|take|taking|bring|bringing"
    r"|fold|folding|flex|flexing|extend|extending|force|forcing)"
)
_OBJECT: Final = (
    r"(?:it|them|that|this|(?:my |the )?(?:(?:left|right) )?(?:wrist|hand|thumb|finger|elbow|arm|shoulder|knee|leg"
    r"|ankle|foot|toe|hip|neck|head)s?)"
)
_MOVED_BACK: Final = re.compile(
    rf"\b({_MOVED} {_OBJECT}(?: (?:all the way|fully|properly|right|too far|far))*) back(?:wards?)?\b"
)
_AGAIN: Final = re.compile(
    r"(?<!my )(?<!the )(?<!er )(?<!low )(?<!bad )(?<!sore )(?<!stiff )(?<!weak )(?<!\ba )(?<!no )\bback"
    r"(?= (?:to|from|at|again|when|then|home|squats?|and forth|(?:on |by )?(?:next )?"
    r"(?:tomorrow|mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?)\b)"
    r"|(?<=\bi'm )back\b|(?<=\bi am )back\b|(?<=\bcoming )back\b|(?<=\bcame )back\b|(?<=\bcome )back\b"
    r"|(?<=\bgoing )back\b|(?<=\bgo )back\b|(?<=\bstep )back\b"
)


# How a push-up is done.
_FROM_THE_KNEES: Final = re.compile(r"(?<!pain )(?<!ache )\b(?:from|on) (?:my |the )?knees\b")


def without_directions(words: str) -> str:
    """The words, in lower case, without `back` where it says which way, and knees from which something is done."""
    return _FROM_THE_KNEES.sub("", _AGAIN.sub("", _MOVED_BACK.sub(r"\1", words)))
