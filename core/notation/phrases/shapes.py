"""What coaches type around the lines: formats, rounds, caps, rests, aims; the tables of it, tried in their order."""

from functools import cache

from core.notation.needles import needles
from core.notation.phrases.aims import Facts
from core.notation.phrases.of_clock import OF_CLOCK
from core.notation.phrases.of_rounds import OF_ROUNDS
from core.notation.phrases.of_score import OF_SCORE
from core.notation.phrases.phrasing import Phrase
from core.notation.text import Strip
from core.sessions.values import Format

# Aims first: they too count rounds and minutes.
PHRASES: tuple[Phrase, ...] = (*OF_SCORE, *OF_CLOCK, *OF_ROUNDS)


# None of these is over when it is done.
_ON_A_CLOCK = frozenset((Format.AMRAP, Format.INTERVALS))


@cache
def _places() -> dict[str, list[int]]:
    """Places in the table by a word that the phrase needs; one that needs none stands under the empty word."""
    places: dict[str, list[int]] = {}
    for at, one in enumerate(PHRASES):
        for needle in needles(one.source) or ("",):
            places.setdefault(needle, []).append(at)
    return places


def possible(text: str) -> tuple[Phrase, ...]:
    """The phrases that may stand in a text in lower case, in the order of the table."""
    found = {at for needle, places in _places().items() if needle in text for at in places}
    return tuple(PHRASES[at] for at in sorted(found))


def take_phrases(facts: Facts, strip: Strip) -> list[tuple[tuple[int, int], Facts]]:
    """Takes away each phrase that doesn't contradict the facts so far, and adds what it says to them.

    Gives back where another format is told than before, or another rest than that of the clock, and what.
    """
    against = []
    for phrase in possible(strip.text):
        at = 0
        while match := phrase.pattern.search(strip.text, at):
            said = phrase.facts(match)
            if said.get("format") is Format.SETS and "format" in facts:
                said = {name: told for name, told in said.items() if name != "format"}
            if not said or any(facts.get(name, value) != value for name, value in said.items()):
                other_format = facts.get("format") in _ON_A_CLOCK and said.get("format") is Format.FOR_TIME
                if other_format or ("work_s" in facts and said.keys() == {"rest_s"}):
                    against.append((match.span(), said))
                at = max(match.end(), match.start() + 1)
                continue
            strip.blank(*match.span())
            facts.update(said)
    return against
