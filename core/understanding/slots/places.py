"""Places, out of a stretch: a city, a word like hotel, or a name that nobody knows."""

from core.understanding.lexicon import lexicon
from core.understanding.slots.stretch import Stretch


def where(stretch: Stretch) -> str | None:
    """A city, what stands behind an `in` and is nobody's name, or a word like hotel."""
    city = stretch.first("city") or behind_in(stretch)
    named = [one for one in stretch.marks("place") if one.value("place") != "home"]
    return city or (stretch.marked.text.tokens[named[0].end - 1].typed if named else None)


def behind_in(stretch: Stretch) -> str | None:
    """`in Lienz`: a capital that nobody knows."""
    for one in stretch.marks("person"):
        before = one.start - 1
        if (
            before >= stretch.start
            and stretch.marked.helps(before, "in_word")
            and stretch.context.people is None
        ):
            return stretch.marked.text.words(one.start, one.end)
    return None


def offset(stretch: Stretch) -> str | None:
    """`UTC-3`, `gmt +2`: as it was typed."""
    for one in stretch.marks("zone_name"):
        tokens = stretch.marked.text.tokens[one.end : one.end + 2]
        joined = bool(tokens) and tokens[0].kind == "number" and tokens[0].glued
        signed = [token.kind for token in tokens] == ["mark", "number"]
        if one.value("zone_name") == "GMT" and (joined or signed):
            return stretch.marked.text.words(one.start, one.end + (1 if joined else 2)).replace(" ", "")
    return None


def unknown_words(stretch: Stretch) -> str | None:
    """The words that are none of any language here: asked for a place, they name one. The last that stand together."""
    known = lexicon().words
    tokens = stretch.marked.text.tokens
    unknown = [
        at
        for at in range(stretch.start, stretch.end)
        if tokens[at].kind == "word" and tokens[at].word not in known
    ]
    if not unknown:
        return None
    named = [at for at in unknown if tokens[at].typed[0].isupper()] or unknown
    start = end = named[-1]
    while start > stretch.start and (start - 1 in named or _is_name_inside(stretch, start - 1)):
        start -= 1
    return stretch.marked.text.words(max(start, end - 2), end + 1)


def _is_name_inside(stretch: Stretch, at: int) -> bool:
    """`Las` of `Vivo en Las Palmas`: a capital inside a sentence."""
    tokens = stretch.marked.text.tokens
    return at > 0 and tokens[at].typed[0].isupper() and tokens[at - 1].kind == "word"
