"""What hurts, clause by clause, beside what is fine again: `my shoulder is no better, knee is all good`.

A joint hurts by any word of it. A muscle that is only sore or tight has been trained; pulled, or in pain where one of
them is named, it is hurt.
"""

import re
from collections.abc import Callable, Iterator, Sequence
from itertools import pairwise
from typing import Final

from core.athletes.limits import limit
from core.notation.body.directions import without_directions
from core.notation.body.sides import joints_in
from core.notation.text import plain

_CLAUSE: Final = re.compile(r"[,;.!?\n]+|\b(?:but|and|though|although|while|whereas|however|only)\b")
_GONE: Final = (
    r"\b(?:pain|ache|soreness|niggle|twinge)s?(?:'s| is| has| are| have)?(?: all| now| completely)? gone\b"
)
_GOOD: Final = re.compile(
    r"\b(?:no|without(?: any)?|zero) (?:more )?(?:pain|trouble|problem|bother|issue|ache|complaint)s?\b"
    r"|\b(?:not|no longer|never|stopped|hardly|(?:does|do|did|is|are|was)n'?t|does not|do not)(?: even| really)?"
    r" (?:hurt(?:s|ing)?|sore|painful|ach(?:es?|ing)|bother\w*|troubl\w*|complain\w*|play\w* up|in pain|bad)\b"
    r"|\bstill (?:fine|ok|okay|good|great)\b"
    rf"|{_GONE}"
)
HURTS: Final = re.compile(
    r"\b(?:hurts?|hurting|aches?|aching|painful|pain|sore|injured|tweaked|sprained|strained|twisted|swollen"
    r"|(?:acting|playing|acts|plays|acted|played) up|bothering me|bothers me|killing me"
    r"|niggl\w+|niggle|grumbl\w+|twinges?|twinged|complain(?:s|ed|ing)|irritated|aggravated"
    r"|flar(?:es?|ed|ing)(?: up)?|bark(?:s|ed|ing)|g[ai]v(?:e|es|ing) out|seiz(?:ed|es|ing) up)\b"
)
# What happened to it, of a joint or a muscle.
INJURED: Final = re.compile(
    r"\b(?:tweak(?:s|ed|ing)?|pull(?:s|ed|ing)?|strain(?:s|ed|ing)?|sprain(?:s|ed)?|twisted|tear|tears|tore|torn"
    r"|ruptured|injur(?:y|ed)|pinged|popped|(?:just |has |have )?went|gave (?:way|out)|gone (?:ping|again)"
    r"|(?:problems?|trouble|issues?|bother) with|worse|no better|twing\w+|niggl\w+"
    r"|(?:acting|playing|acts|plays|acted|played) up)\b"
)
# Beside words of pain, what denies or goes wrong.
_BAD: Final = re.compile(
    r"\b(?:neither|nor|still|(?:is|are|was|does|do|ai)n'?t|not|hardly|never|swelling|stiff"
    rf"|click(?:s|ed|ing|y)?|pinch(?:es|ed|ing)?|pop(?:s|ping))\b|{INJURED.pattern}|{HURTS.pattern}"
)
# What a joint is that isn't well, in a word of everyday; of a muscle they only say that it was trained.
_UNHAPPY: Final = (
    r"\b(?:meh|so[- ]so|dodgy|iffy|wonky|cranky|achy|tender|unhappy|moan(?:s|ed|ing)|rubbish|naff|sensitive|wobbly"
    r"|bad|shaky|grumpy|angry|touchy|a bit (?:off|rough|weird|funny)|(?:isn'?t|not) (?:right|happy))\b"
)
# What stands before a joint and is said of it.
_LEADS: Final = re.compile(
    rf"(?:(?:\b(?:my|the|a|an|bit|of|old|other|with|n|plus|sore|stiff|painful|swollen|tight)\b|{_UNHAPPY})\W*)*$"
)
# `Back still a bit meh`: said of what was named just before.
_IS_UNHAPPY: Final = re.compile(
    r"^(?:'s|\W|\b(?:is|are|feels?|felt|seems?|still|an?|bit|little|kinda|kind of|pretty|rather|quite|now|today)\b)*"
    + _UNHAPPY
)
_PAIN: Final = re.compile(r"\b(?:neither|nor|still|hurts?|hurting|painful|pain|stabbing|sharp)\b")
_PLAINLY: Final = re.compile(
    rf"\b(?:click(?:s|ed|ing|y)?|pinch(?:es|ed|ing)?|pop(?:s|ping)|swelling|swollen)\b|{INJURED.pattern}|{HURTS.pattern}"
)
_AT_SOMETHING: Final = re.compile(
    r"\b(?:hurts|hurting|pinch(?:es|ing)|stabbing|sharp pain|click(?:s|ing)) (?:\w+ )?"
    r"(?:when(?:ever)?|every time|if i|on|in|during)\b"
    r"|\b(?:pulled|strained|tweaked|tore|torn) (?:a|some|my) (?:muscle|something)\b|\b(?:pulled|tweaked) something\b"
)
WELL: Final = re.compile(r"\b(?:fine|ok|okay|good|better|healed|great|grand|happy|sorted)\b")
_WELL_NOW: Final = re.compile(r"\b(?:fine|ok|okay|good|healed|great|grand|happy|sorted)\b")
_SORE: Final = re.compile(
    r"\b(?:tight|sore|stiff|achy|aching|aches|heavy|tired|fried|cooked|wrecked|knotted)\b"
)
_NO_BETTER: Final = re.compile(
    r"\b(?:not|(?:is|are)n'?t|no)(?: (?:any|much|really|getting|feeling|at all|a lot))* better\b"
    r"|\b(?:not|(?:is|are|was|were)n'?t)(?: (?:so|that|too|very|really|all|quite))*"
    r" (?:good|great|fine|well|ok|okay|happy|hot)\b"
    r"|\bnot (?:so|really)\W*$"
)
_SAID_OF_IT: Final = re.compile(
    rf"{WELL.pattern}|{_NO_BETTER.pattern}|{_BAD.pattern}|{_GOOD.pattern}|{_UNHAPPY}"
)
_DENIED: Final = re.compile(
    r"\b(?:no|not|never|if|without|(?:is|are|was|were|do|does|did|has|have|ca|wo)n'?t)\b"
)
_TRAINED: Final = re.compile(r"\b(?:raises?|stretch(?:es|ing)?|curls?|rolls?|day|drops?)\b")


def no_better(text: str) -> tuple[str, ...]:
    """What is named, by its limits, of which a clause of its own says that it isn't well."""
    return _named(text, lambda _: True)


def injured(text: str) -> tuple[str, ...]:
    """The same, of what a clause plainly tells: that it hurts, what happened to it, or that it is no good."""
    plainly = _named(text, lambda said: not _DENIED.search(said) and bool(_PLAINLY.search(said)))
    unhappy = (
        one
        for clause in _clauses(text)
        for one, named in joints_in(clause)
        if limit(one).kind != "muscle" and _IS_UNHAPPY.match(clause[named.end() :])
    )
    return tuple(dict.fromkeys((*plainly, *unhappy)))


def well_beside(text: str) -> tuple[str, ...]:
    """What a clause of its own says to be fine, where another one tells what isn't."""
    bad = no_better(text)
    fine = (one for clause in _clauses(text) if is_well(clause) for one, _ in joints_in(clause))
    return tuple(dict.fromkeys(one for one in fine if one not in bad))


def plainly_well(text: str) -> bool:
    """`Knees fine`: whether every clause with a joint says that it is well, not only better."""
    named = [clause for clause in _clauses(text) if any(joints_in(clause))]
    return bool(named) and all(_WELL_NOW.search(one) and not _DENIED.search(one) for one in named)


def is_sore(text: str) -> bool:
    """`Tight calf`, `quads heavy`: a muscle that was trained, and nothing that happened to it."""
    return not no_better(text) and any(
        limit(one).kind == "muscle" and _SORE.search(clause)
        for clause in _clauses(text)
        for one, _ in joints_in(clause)
    )


def is_well(clause: str) -> bool:
    return bool(WELL.search(clause) or pain_is_gone(clause))


def pain_is_gone(text: str) -> bool:
    """`My back pain is gone`, in whose words there is pain."""
    return re.search(_GONE, text.casefold()) is not None


def hurts_somewhere(text: str) -> bool:
    """`Pinching when I go overhead`, `pulled a muscle`: something hurts, whatever it is."""
    return any(_AT_SOMETHING.search(clause) and not _GOOD.search(clause) for clause in _clauses(text))


def _clauses(text: str) -> Sequence[str]:
    said = without_directions(plain(text).replace("\u2019", "'").casefold())
    return [one for clause in _CLAUSE.split(said) for one in _by_joint(clause)]


def _by_joint(clause: str) -> Iterator[str]:
    """`Knees fine shoulder still iffy`: cut before the next joint where something was said of the one before it."""
    start = 0
    for before, named in pairwise(match for _, match in joints_in(clause)):
        between = clause[before.end() : named.start()]
        own = _LEADS.sub("", between)
        if _SAID_OF_IT.search(own):
            cut = before.end() + len(own)
            yield clause[start:cut]
            start = cut
    yield clause[start:]


def _named(text: str, is_meant: Callable[[str], bool]) -> tuple[str, ...]:
    """What hurts by the clauses that are meant, which are looked at without what says that something is fine."""
    parted = ((_NO_BETTER.sub("worse", _GOOD.sub(" ", clause)), clause) for clause in _clauses(text))
    found = (
        one
        for said, clause in parted
        if is_meant(said)
        for one, named in joints_in(clause)
        if _is_bad(said, one, named)
    )
    return tuple(dict.fromkeys(found))


def _is_bad(clause: str, limit_id: str, named: re.Match[str]) -> bool:
    if limit(limit_id).kind != "muscle":
        return bool(_BAD.search(clause) or re.search(_UNHAPPY, clause))
    if _TRAINED.match(named.string[named.end() :].lstrip()):
        return False
    is_one = not named[0].endswith("s")
    return bool(INJURED.search(clause) or (is_one and _PAIN.search(clause)))
