"""An athlete's own words about what to avoid: `sore wrist, no jumping and I'm on beta blockers`."""

import re
from collections.abc import Iterator
from functools import cache

from rapidfuzz import process
from rapidfuzz.distance import OSA

from core.athletes.limits import limit, limits
from core.movements.names import key
from core.notation.body.directions import without_directions
from core.notation.text import plain
from core.notation.values import ReadLimits

_PARTING = re.compile(r"[,;.!/&+]+|\b(?:and|also|plus|but)\b")
_WORD = re.compile(r"[a-z0-9']+")
_CAN_NOT = re.compile(r"\b(?:can ?not|may ?not|must ?not|mustn't|should ?not|shouldn't|unable to|couldn't)\b")
_NO = re.compile(r"\b(?:avoid(?:ing)?|never|without|zero|do not|don't)\b")
_FINE_WORD = r"(?:fine|good|ok|okay|great|well|healthy|alright|all right|sound|perfect)"
_NOTHING = re.compile(
    r"^(?:i'?m |i am |i feel |feeling |i have |i've got )?(?:all )?"
    rf"(?:no|none|nope|nah|nothing|nil|n/a|na|{_FINE_WORD}|not? (?:really|at all))"
    r"(?:,? (?:limits?|limitations?|injur(?:y|ies)|pain|problems?|issues?|aches|at all|really|thanks?|thank you|here"
    r"|to avoid|that i know(?: of)?|so far|today|i'?m|i am|it'?s|it is|all|else|more|other|otherwise|nothing|none|or"
    rf"|injured|{_FINE_WORD}))*$"
    rf"|^(?:otherwise|apart from that|other than that|the rest is|everything else is|all the rest is) (?:all )?"
    rf"(?:nothing|none|no problems?|{_FINE_WORD})$|^(?:that'?s|that is) (?:all|it|everything)$"
)
# How somebody is who has nothing to avoid: a state of the day, or of training.
_ONLY_TIRED = re.compile(
    r"^(?:i'?m |i am |i feel |feeling |just |only |a |an |bit |little |very |so |really |still |quite |pretty |total "
    r"|complete |today |and )*"
    r"(?:tired|exhausted|sleepy|knackered|worn out|lazy|stressed|busy|hung ?over|hungry|unfit|out of shape|weak|slow"
    r"|(?:getting )?old|beginner|new to (?:this|training|it)|no energy|low energy|low on energy|slept badly"
    r"|didn'?t sleep (?:well|much)|little sleep|no sleep|not much sleep)"
    r"(?: today| right now| lately| this week| at the moment| from work)*$"
)
# A piece that only adds to another one: `pregnant, 20 weeks`, `left and right wrist`.
_ASIDE = re.compile(
    r"^(?:(?:for|since|about|now|it was|in|my|the|around|on)\s)*"
    r"(?:(?:[0-9]{1,3}|an?|one|two|three|four|five|six|(?:a )?few|(?:a )?couple of)\s(?:days?|weeks?|months?|years?)"
    r"(?:\s(?:ago|along|now|in|already|old))*|last (?:week|month|year)|yesterday"
    r"|(?:left|right|both)(?: (?:one|side)s?)?)$"
)
_FINE = re.compile(
    r"(?:\b(?:is|are|feels?|feeling|seems?|now|doing|all|both)|'s)\s"
    rf"(?:(?:all|totally|perfectly|completely|absolutely|now|just)\s)*{_FINE_WORD}\b"
    r"|\b(?:healed|fully recovered)\b"
)
_HEDGED = re.compile(
    r"\b(?:not|isn'?t|aren'?t|never|mostly|almost|nearly|unless|except|if|when|while|as long as|sometimes|usually"
    r"|until|only|careful|more or less|kind of|sort of|getting|half|partly|hasn'?t|haven'?t)\b"
)
# What happened within a year may still matter (common practice, no source).
_RECENT = re.compile(
    r"\b(?:(?:[0-9]{1,2}|an?|one|two|three|four|five|six|seven|eight|nine|ten|(?:a )?few|(?:a )?couple of)\s"
    r"(?:days?|weeks?)|(?:[0-9]|1[0-2]|an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|(?:a )?few"
    r"|(?:a )?couple of)\smonths?)\sago\b|\blast (?:week|month)\b|\byesterday\b|\brecently\b"
)
_TROUBLE = {
    "problem",
    "pain",
    "issue",
    "trouble",
    "injury",
    "limit",
    "more",
    "any",
    "no",
    "at",
    "all",
    "anymore",
}
_OVER = {"fine", "ok", "okay", "healed", "better", "gone", "longer", "used", "ago", "past"}
_NOT_THE = re.compile(
    r"\b(?:not|isn'?t|wasn'?t)(?: (?:in|about|on|really))* (?:my|the)\b|^\W*not (?!only|just|right)\w+$"
)
_NOT_HURTING = re.compile(
    r"\b(?:doesn'?t|does not|don'?t|do not|no|not|isn'?t|aren'?t|no longer) (?:hurt|hurting|sore|painful)\b"
)
# Words of dislike, a desk job and an arm that is missing: none means that somebody can't stand.
_NOT_OF_LEGS = re.compile(
    r"\bcan'?t stand (?!(?:up|on|for|long|at|any|anymore|because|due|without|with|or|since|after|yet|alone|now"
    r"|unaided)\b)\w"
    r"|\b(?:arms?|hands?|fingers?|elbow)\b.{0,15}\bamput"
    r"|\b(?:seated|sitting)\b.{0,15}\b(?:all day|a lot|much|at work|at a desk|for work|hours|job)\b"
)
_BESIDE_NOT = {
    *(
        "not",
        "isn't",
        "isnt",
        "wasn't",
        "doesn't",
        "does",
        "don't",
        "no",
        "longer",
        "aren't",
        "are",
        "is",
        "at",
        "all",
    ),
    *(
        "my",
        "the",
        "it",
        "it's",
        "its",
        "that",
        "that's",
        "this",
        "in",
        "about",
        "on",
        "really",
        "actually",
        "so",
    ),
    *("left", "right", "sore", "hurting", "painful", "hurt", "pain", "i", "mean", "meant", "said", "sorry"),
}
# `not my back only my wrist`: two things without a comma.
_ONLY = re.compile(r"(?<!\bnot )\b(?:only|just|it's|it is)(?= (?:my|the)\b)")
_LONGEST_NAME = 6
_LONGEST_TEXT = 1000
_SHORTEST_SLIP = 5
_TWO_SLIPS = 8


def read_limits(text: str) -> ReadLimits:
    """Limit ids out of free words, each once, with the pieces that a person has to look at.

    A limit that is named in doubt counts: leaving one out may hurt somebody. A joint that is said to be fine is
    none; what else is said to be over is given back as not understood.
    """
    pieces = _without_asides(list(_pieces(text[:_LONGEST_TEXT])))
    read = [(piece, _read_piece(piece)) for piece in pieces]
    unread = tuple(piece for piece, ids in read if ids is None)
    if len(unread) == len(pieces):
        return ReadLimits(limits=None, not_understood=unread)
    return ReadLimits(
        limits=tuple(dict.fromkeys(one for _, ids in read for one in ids or ())), not_understood=unread
    )


def _pieces(text: str) -> Iterator[str]:
    """The stretches between commas, ands and line ends; all of it where it says that there is nothing."""
    for line in text.splitlines():
        words = plain(line).strip(" .!")
        parts = [words] if _NOTHING.match(words.casefold()) else _PARTING.split(_told_apart(words))
        yield from (part.strip() for part in parts if part.strip())


def _told_apart(words: str) -> str:
    """With a comma before what is meant, where it is said that something else isn't."""
    return _ONLY.sub(",", words) if re.search(r"\bnot\b", words, re.IGNORECASE) else words


def _without_asides(pieces: list[str]) -> list[str]:
    """The pieces without those that only add to others; all of them where there is nothing else."""
    return [piece for piece in pieces if not _ASIDE.match(piece.casefold())] or pieces


def _read_piece(piece: str) -> list[str] | None:
    """Ids in one piece; empty where it says that there is nothing; None where it says nothing known."""
    said = without_directions(piece.casefold())
    if _NOTHING.match(said):
        return []
    if _NOT_OF_LEGS.search(_CAN_NOT.sub("can't", said)):
        return None
    words = _WORD.findall(_NO.sub("no", _CAN_NOT.sub("can't", said)))
    found, rest = _named(words)
    if found and (_is_denied(found, rest) or _is_another(found, said, rest)):
        return []
    if found:
        return _still(found, said, rest)
    return _nearly_named(words) or ([] if _ONLY_TIRED.match(said) else None)


def _still(found: list[str], said: str, rest: list[str]) -> list[str] | None:
    """The ids unless what was named is fine or over; None where a person should look."""
    if _HEDGED.search(said):
        return found
    if _FINE.search(said):
        return [] if all(limit(one).may_hurt for one in found) else None
    return None if _OVER.intersection(rest) and not _RECENT.search(said) else found


def _named(words: list[str]) -> tuple[list[str], list[str]]:
    """Ids by the longest names first, from the left, and the words that belong to none."""
    found, rest, place = [], [], 0
    while place < len(words):
        length = _length_of_name(words, place)
        if length:
            found.append(_ids_by_key()[key(" ".join(words[place : place + length]))])
        else:
            rest.append(words[place])
        place += length or 1
    return found, rest


def _length_of_name(words: list[str], place: int) -> int:
    """How many words from here make the longest name; 0 for none."""
    for long in range(_LONGEST_NAME, 0, -1):
        name, after = key(" ".join(words[place : place + long])), words[place + long : place + long + 1]
        if name in _ids_by_key() and (name not in _only_at_end() or not after or after[0].isdigit()):
            return min(long, len(words) - place)
    return 0


def _is_denied(found: list[str], rest: list[str]) -> bool:
    """`no knee pain` names no limit; `no knee bending` does."""
    wishes = any(limit(one).kind == "wish" for one in found)
    return not wishes and "no" in rest and all(key(word) in _TROUBLE for word in rest)


def _is_another(found: list[str], said: str, rest: list[str]) -> bool:
    """`not my back`, `the knee doesn't hurt`: a joint that is named to say that it isn't the one."""
    joints = all(limit(one).may_hurt for one in found)
    named = _NOT_THE.search(said) or _NOT_HURTING.search(said)
    return joints and bool(named) and _BESIDE_NOT.issuperset(rest)


def _nearly_named(words: list[str]) -> list[str]:
    """The id of a slip of the pen, longer stretches first."""
    near = (_near(window) for window in _windows(words))
    return [limit_id for limit_id in near if limit_id][:1]


def _windows(words: list[str]) -> Iterator[str]:
    return (key(" ".join(words[at : at + length])) for length in (3, 2, 1) for at in range(len(words)))


def _near(typed: str) -> str | None:
    """One slip in five to seven letters, two in more; a shorter word leaves no room."""
    slips = 0 if len(typed) < _SHORTEST_SLIP else 1 if len(typed) < _TWO_SLIPS else 2
    if not slips:
        return None
    hit = process.extractOne(typed, _ids_by_key().keys(), scorer=OSA.distance, score_cutoff=slips)
    return _ids_by_key()[hit[0]] if hit else None


@cache
def _ids_by_key() -> dict[str, str]:
    return {
        key(name): one.id for one in limits() for name in (one.id, one.label, *one.names, *one.names_at_end)
    }


@cache
def _only_at_end() -> frozenset[str]:
    """`I'm expecting`, `expecting, 12 weeks`, but not `I'm expecting a parcel`."""
    return frozenset(key(name) for one in limits() for name in one.names_at_end)
