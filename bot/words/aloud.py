"""English words for what is worth saying aloud to a group: plain text, shared by the private chat and the command line."""

from collections.abc import Sequence

from bot.words.text import listed
from core.desk.reference import catalogue
from core.measures import MassUnit, as_marked
from core.scaling.values import Because, Instead, Say

# More names than these are a number: nobody reads ten names three times.
MOST_NAMED = 3

ALOUD = {
    Because.NOT_OWNED: "{some} {dont} have what “{written}” asks for{instead}",
    Because.NOT_ASKED: "nobody knows yet what {some} {has} for “{written}”: let them tell me{instead}",
    Because.LIMIT: "“{written}” may look different where somebody spares something, {count} of {of} today: say so",
    Because.SPACE: "{some} {has} no room for “{written}”{instead}",
    Because.SKILL: "“{written}” is a skill that {some} may not have yet: show the step before it",
    Because.TOO_OFTEN: "“{written}” comes back soon for {some}: lighter, so that the last set is as good as the first",
    Because.TOO_HEAVY: "“{written}” is heavy for {some}: lighter is right, full range first",
    Because.TOO_LIGHT: "“{written}” is light for {some}: slow and perfect, or allow more",
    Because.UNTESTED: "nobody knows yet how {some} {do} with “{written}”: start light, ask how many go",
    Because.UNKNOWN_HEAVY: "“{written}” is untried for {some}: build up, stop with three left",
}
FOR_ONE = {"do": "does", "dont": "doesn't", "has": "has"}
FOR_MANY = {"do": "do", "dont": "don't", "has": "have"}


def aloud_words(say: Say) -> str:
    """One thing worth saying to the group. A limit is the athlete's own business: counted, never named."""
    template, count = ALOUD.get(say.because, "look at “{written}” with {some}"), len(say.names)
    some = listed(say.names) if count <= MOST_NAMED else f"{count} of {say.of}"
    verbs = FOR_ONE if count == 1 else FOR_MANY
    return template.format(
        some=some, written=say.written, count=count, of=say.of, instead=_instead(say.instead), **verbs
    )


def _instead(ways: Sequence[Instead]) -> str:
    """`. Instead: goblet squats (8 kg to 12 kg); or squats`: the answer to whoever asks what else will do."""
    return f". Instead: {'; or '.join(map(_way, ways))}" if ways else ""


def _way(one: Instead) -> str:
    label = catalogue().variant(f"{one.movement}/{one.variant}")[1].label
    loads = dict.fromkeys(as_marked(kg, MassUnit.KG) for kg in (one.lightest_kg, one.heaviest_kg) if kg)
    return f"{label} ({' to '.join(loads)})" if loads else label
