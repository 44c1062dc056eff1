"""English words for what is worth saying aloud to a group: plain text, shared by the private chat and the command line."""

from bot.words.text import listed
from core.scaling.values import Because, Say

# More names than these are a number: nobody reads ten names three times.
MOST_NAMED = 3

ALOUD = {
    Because.NOT_OWNED: "{some} {dont} have what “{written}” asks for: say what else will do",
    Because.LIMIT: "“{written}” may look different where somebody spares something, {count} of {of} today: say so",
    Because.SPACE: "{some} {has} no room for “{written}”",
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
    return template.format(some=some, written=say.written, count=count, of=say.of, **verbs)
