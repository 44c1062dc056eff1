"""Which button is meant by what was typed: its label, or a yes or no where that is what it says."""

from collections.abc import Sequence

from core.desk.talk.understood import in_own_words, matter
from core.notation.talk.yes_no import calls_it_off, is_in_doubt, says_it_is_so
from core.understanding.lexicon import Sense, joined, lexicon
from core.understanding.text import fold

# Whoever answers with more words than this tells more than a button does (estimate).
MOST_WORDS = 6
# What opens a label that answers a question, before what comes of it: `Yes, erase everything`.
_BEHIND = ", "
ENDS = " .!"


def tapped(text: str, labels: Sequence[str]) -> str | None:
    """The one label that the words mean; None where they mean none of them, or might mean two."""
    if not labels or len(text.split()) > MOST_WORDS:
        return None
    said = bare(text)
    if "both" in said.split() and not any("both" in bare(one).split() for one in labels):
        return None  # a tap is of one message: of two, one done in silence would pass for both
    named = [one for one in labels if said in (bare(one), bare(one.partition(_BEHIND)[2]))]
    named = named or [one for one in labels if without_yes(said) == bare(one.partition(_BEHIND)[2])]
    found = named if said and named else by_yes_or_no(text, labels)
    return found[0] if len(found) == 1 else None


def by_yes_or_no(text: str, labels: Sequence[str]) -> list[str]:
    """Where one is a yes or a no; of two, the other one is the other whatever it says."""
    no = [one for one in labels if plainly(opening(one)) is False]
    others = [one for one in labels if one not in no]
    yes = [one for one in labels if plainly(opening(one))]
    if not yes and len(no) == len(others) == 1:
        yes = others
    said = yes_or_no(text) if yes else None
    if said is None:
        return []
    return yes if said else no or [one for one in labels if one not in yes]


def yes_among(labels: Sequence[str]) -> str | None:
    """The first label that is a yes, by its words or as the other of a no; None where nothing is asked."""
    return next(iter(by_yes_or_no("yes", labels)), None)


def yes_or_no(text: str) -> bool | None:
    """A yes or a no and nothing more, in any language that is understood."""
    if is_in_doubt(text):
        return None
    if any(one.isdigit() for one in text):
        return None  # a number beside a yes tells more than the yes
    plain = plainly(text)
    if plain is not None:
        return plain
    told = in_own_words(text)
    names = {act.act for act in matter(told)}
    if told.unread or len(names) != 1:
        return None
    return {"agrees": True, "declines": False}.get(names.pop())


def plainly(text: str) -> bool | None:
    """By the words that mean nothing else."""
    senses = lexicon().senses.get(joined(text.strip(ENDS)), ())
    for meaning, says in (("yes", True), ("no", False)):
        if Sense("meaning", meaning) in senses:
            return says
    if says_it_is_so(text) or calls_it_off(text):
        return says_it_is_so(text)
    return None


def without_yes(said: str) -> str:
    """`yea ok set it up`: what is said behind a yes; "" where none is said."""
    words = said.split()
    yes = next((at for at, one in enumerate(words) if plainly(one) is not True), len(words))
    return " ".join(words[yes:]) if yes and words[yes:] else " "


def opening(label: str) -> str:
    return label.partition(_BEHIND)[0]


def bare(words: str) -> str:
    """Letters and figures only, as they are compared; what is polite is no matter."""
    folded = "".join(one if one.isalnum() else " " for one in fold(words).replace("'", ""))
    return " ".join(one for one in folded.split() if one not in POLITE)


POLITE = frozenset({"please", "pls", "bitte", "thanks", "thx"})
