"""A yes or a no to the questions of the start, with more in front of it or behind it, or to something else."""

import re
from typing import Final

from core.athletes.values import ScreeningQuestion
from core.notation.talk.yes_no import read_yes_no
from core.understanding.marks import mark
from core.understanding.slots.body import tells_of_another

_IN_FRONT: Final = re.compile(
    r"^\W*(?:(?:lol|ha(?:ha)*|hehe|h?mm+|um+|uh+|er+m?|oh|well|god|honestly|tbh|actually|so|ok so)\b\W*)+",
    re.IGNORECASE,
)
_NO_BUT: Final = re.compile(
    r"^\W*(?:no|nope|nah|not me)\b\W*(?:but|only|though|although)\b(?P<rest>.+)", re.IGNORECASE | re.DOTALL
)
_AT_THE_END: Final = re.compile(
    r"\bso (?:that'?s |it'?s |i'?d say )?(?:an? )?(?P<read>yes|yeah|yep|no|nope|nah)\W*$", re.IGNORECASE
)
# What tells of training; a yes to it is none to an illness.
_MOVES: Final = re.compile(
    r"\b(?:walk|run|jog|swim|cycle|ride|bike|train|exercise|gym|sports?|yoga|garden|hike|dance|lift)(?:s|ning|ming|ing|e?d)?\b",
    re.IGNORECASE,
)
# `Yes, when I run` is one.
_AT_WHICH: Final = re.compile(r"\b(?:when|if|while|after|during)\b", re.IGNORECASE)
_OF_BODIES: Final = ("condition", "sign", "illness", "part", "maybe_part", "muscle")
_OF_HEALTH: Final = frozenset({ScreeningQuestion.SYMPTOMS, ScreeningQuestion.KNOWN_DISEASE})


def answer_in(text: str, question: ScreeningQuestion) -> bool | None:
    """The yes or no to this question; None where it is in doubt, or said of something else.

    `No, but my dad had a heart attack` is a no. `Yes, I walk the dog every morning` is none to an illness.
    """
    words = _IN_FRONT.sub("", text, count=1)
    no_but, ends = _NO_BUT.match(words), _AT_THE_END.search(words)
    if no_but and "?" not in words and tells_of_another(mark(no_but["rest"])):
        return False
    read = read_yes_no(ends["read"] if ends else words)
    return None if read and question in _OF_HEALTH and _tells_only_of_training(words) else read


def _tells_only_of_training(words: str) -> bool:
    marked = mark(words)
    of_bodies = marked.within(0, len(marked.words), *_OF_BODIES)
    return bool(_MOVES.search(words)) and not of_bodies and not _AT_WHICH.search(words)
