"""Pain told in free words: `my left wrist hurts`, `the knee is fine again`."""

import re
from collections.abc import Iterator, Mapping
from typing import Literal, NamedTuple

from core.athletes.limits import limit
from core.athletes.values import Side
from core.notation.body.directions import without_directions
from core.notation.body.healing import HURTS, WELL, no_better, pain_is_gone
from core.notation.body.sides import joints_in, read_sides
from core.notation.text import plain

_OVER = re.compile(
    r"\b(?:is|are|was|were|feels?|felt|'s) (?:(?:all|completely|totally|quite|now) )*(?:fine|ok|okay|good"
    r"|healed|well)\b|\b(?:doesn't|does not|don't|no longer|not) (?:hurts?|hurting|ache|painful|sore)\b"
    r"|\bstopped hurting\b|\bno (?:more )?pain\b|\b(?:has |have |is )?healed\b"
)
# Of what was told of before, with no word of what it is; `it's fine` alone may be said of anything.
_IT_IS = (
    r"^(?:(?:ok|okay|oh|hey|hi|thanks|phew|good news|and|so|actually|now|today|i think)\W+)*"
    r"(?:(?:it|that|the pain|pain)(?:'?s| is| has| feels?| seems?)?|feels|feeling)\s+"
    r"(?:(?:all|much|completely|totally|quite|a lot|a bit|so much|really|back to|now|been|feeling|doing"
    r"|gotten|got|already)\s+)*"
)
_ENDS = (
    r"(?:\W+(?:now|again|today|already|thanks|thank you|thx|since|this morning|actually|so|after all|i think"
    r"|than (?:before|yesterday)))*\W*$"
)
_ALL_OVER = re.compile(
    _IT_IS
    + r"(?:(?:fine|ok|okay|good|well|great|grand)\W+(?:again|now)|healed|gone|settled|normal again)"
    + _ENDS
    + r"|^it (?:doesn'?t|does not|no longer|stopped) hurt(?:s|ing)?"
    r" ?(?:any ?more|now|at all|tho|though|really|at all any ?more)?\W*$"
)
_BETTER = re.compile(_IT_IS + "(?:better|improving|improved|less)" + _ENDS)
_HEDGED = re.compile(
    r"\b(?:almost|nearly|mostly|if|when|unless|except|until|not (?:fine|ok|okay|good|healed|well)|still|but)\b"
)
# What stands before a joint of one's own; `Bo's wrist` and `I'm back` are something else.
_BEFORE_OWN = re.compile(
    r"(?:^|[,;.]|\b(?:my|me|the|sore|painful|swollen|injured|ouch|ow|oh no|and|or)\b)\W*$"
)
# `not my back`; but `not only my back` tells of it.
_NOT_THIS = re.compile(r"\b(?:not|isn't|wasn't)(?: (?:in|about|on|really|my|the|left|right|lower))*\W*$")
_CAN_NOT_MOVE = re.compile(
    r"\b(?:can't|cannot|can not|can hardly|can barely|unable to) (?:\w+ )?(?:bend|move|straighten|lift|turn|stretch"
    r"|grip|twist|rotate|stand on|put (?:any )?weight on) (?:it|them|that|this)\b"
)
_LONGEST = 160


class ToldPain(NamedTuple):
    """`limits`: the joints, by their limits; `sides` where told; `others`: joints that are said not to be it."""

    kind: Literal["hurts", "over"]
    limits: tuple[str, ...]
    sides: Mapping[str, Side]
    others: tuple[str, ...] = ()


def read_complaint(text: str) -> ToldPain | None:
    """What the speaker says of their own joints; None where it is about something or somebody else."""
    words = without_directions(plain(text).replace("\u2019", "'").casefold().strip())
    if len(words) > _LONGEST or "\n" in text.strip():
        return None
    found = [(joint, words[: match.start()]) for joint, match in joints_in(words)]
    others = tuple(dict.fromkeys(joint for joint, before in found if _NOT_THIS.search(before)))
    own = (joint for joint, before in found if _BEFORE_OWN.search(before) and joint not in others)
    joints = tuple(dict.fromkeys(own))
    if not joints:
        return None
    worse = no_better(text)
    bad = tuple(one for one in worse if one in joints)
    joints = tuple(one for one in joints if one in bad or limit(one).kind != "muscle" or _OVER.search(words))
    if not joints:
        return None
    if worse and len(bad) < len(joints) and WELL.search(words):
        return None  # two tellings, each an act of its own
    if (_OVER.search(words) or pain_is_gone(words)) and not (bad or _HEDGED.search(words)):
        return ToldPain("over", joints, read_sides(words))
    hurts = others or bad or HURTS.search(words)
    return ToldPain("hurts", joints, read_sides(words), others) if hurts else None


def says_it_will_not_move(text: str) -> bool:
    """`Can't bend it back`, of what was told of before."""
    words = plain(text).replace("\u2019", "'").casefold()
    return len(words) <= _LONGEST and bool(_CAN_NOT_MOVE.search(words)) and not any(joints_in_own(words))


def joints_in_own(words: str) -> Iterator[str]:
    """The joints that are named in these words, directions left out."""
    return (joint for joint, _ in joints_in(without_directions(words)))


_FINE_NOW = re.compile(
    r"\b(?:but|though|although|just|only|and|it'?s|is|are|they'?re|all)\b[^,;.]{0,25}"
    r"\b(?:fine|ok|okay|good|all ?right|quiet|no (?:problem|trouble|bother|issue)|doesn'?t bother|not bothering)\b"
    r"[^,;.]{0,10}\b(?:atm|now|right now|at the moment|today|currently|this week|these days|lately)\b"
)
_FINE_ALL_THE_SAME = re.compile(
    r"\b(?:but|though|although)\b[^,;.]{0,20}\b(?:fine|ok|okay|good|all ?right|manageable|nothing bad)"
    r"(?: to go| though)?\W*$"
)
# `Is not good now`; but `is not bothering me now`.
_NOT = re.compile(
    r"\b(?:not|never|no longer|hardly|isn'?t|aren'?t)\b(?! bothering)|\b(?:un|less|almost|nearly)\b"
)
_REST_OF_ME = re.compile(r"\b(?:otherwise|everything else|the rest|apart|except|besides|other than)\b")


def is_fine_now(text: str) -> bool:
    """`Dodgy achilles sometimes but fine atm`: it is told, and is nothing to spare today; not `otherwise fine now`."""
    words = plain(text).lower().replace("\u2019", "'")
    found = _FINE_NOW.search(words)
    return found is not None and not _NOT.search(found[0]) and not _REST_OF_ME.search(words)


def is_fine_all_the_same(text: str) -> bool:
    """`Tight calves but fine`: a muscle that is felt, and is nothing to go easy on."""
    found = _FINE_ALL_THE_SAME.search(plain(text).lower().replace("\u2019", "'"))
    return found is not None and not _NOT.search(found[0])


def says_it_is_over(text: str) -> Literal["gone", "better"] | None:
    """`It's fine again`, `it's better now`: of what was told of before."""
    words = plain(text).replace("\u2019", "'").casefold().strip()
    if len(words) > _LONGEST:
        return None
    return "gone" if _ALL_OVER.match(words) else "better" if _BETTER.match(words) else None
