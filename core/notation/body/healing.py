"""What is said to be no better, beside what is fine again: `my shoulder is no better, knee is all good`."""

import re
from typing import Final

from core.notation.body.directions import without_directions
from core.notation.body.sides import joints_in
from core.notation.text import plain

_CLAUSE: Final = re.compile(r"[,;.!?\n]+|\b(?:but|and|though|although|while|whereas|however|only)\b")
_GOOD: Final = re.compile(
    r"\b(?:no|without(?: any)?|zero) (?:more )?(?:pain|trouble|problem|bother|issue|ache|complaint)s?\b"
    r"|\b(?:not|no longer|never|stopped|hardly|(?:does|do|did|is|are|was)n'?t|does not|do not)(?: even| really)?"
    r" (?:hurt(?:s|ing)?|sore|painful|ach(?:es?|ing)|bother\w*|troubl\w*|complain\w*|play\w* up|in pain|bad)\b"
    r"|\bstill (?:fine|ok|okay|good|great)\b"
)
HURTS: Final = re.compile(
    r"\b(?:hurts?|hurting|aches?|aching|painful|pain|sore|injured|tweaked|sprained|strained|twisted|swollen"
    r"|(?:acting|playing|acts|plays|acted|played) up|bothering me|bothers me|killing me"
    r"|niggl\w+|niggle|grumbl\w+|twinges?|twinged|complain(?:s|ed|ing)|irritated|aggravated"
    r"|bark(?:s|ed|ing)|g[ai]v(?:e|es|ing) out|seiz(?:ed|es|ing) up)\b"
)
# Beside words of pain, what denies or goes wrong.
_BAD: Final = re.compile(
    r"\b(?:worse|no better|neither|nor|still|(?:is|are|was|does|do|ai)n'?t|not|hardly|never|swelling|stiff|pulled|went"
    rf"|click(?:s|ed|ing)?|pinch(?:es|ed|ing)?|pop(?:s|ped|ping)|gave way)\b|{HURTS.pattern}"
)


def no_better(text: str) -> tuple[str, ...]:
    """The joints, by their limits, of which a clause of its own says that they aren't well."""
    words = without_directions(plain(text).replace("\u2019", "'").casefold())
    found: dict[str, None] = {}
    for clause in _CLAUSE.split(words):
        if _BAD.search(_GOOD.sub(" ", clause)):
            found |= dict.fromkeys(joint for joint, _ in joints_in(clause))
    return tuple(found)
