"""People, out of a stretch, where nobody knows their names."""

from core.understanding.slots.stretch import Stretch


def partner(stretch: Stretch) -> str | None:
    """Whoever a thing is shared with, as one says it back: `Bo`, `your wife` of `my wife`."""
    person = stretch.first("person") or _beside_oneself(stretch)
    others = stretch.marks("other_person")
    if person or not others:
        return person
    words = stretch.marked.text.words(others[0].start, others[0].end)
    _, _, rest = words.partition(" ")
    return f"your {rest}" if stretch.marked.helps(others[0].start, "self_word") and rest else words


def _beside_oneself(stretch: Stretch) -> str | None:
    """`Bo and I`: the capital that begins a sentence is a name there."""
    typed, helps = stretch.marked.text.tokens, stretch.marked.helps
    for at in range(stretch.start, stretch.end - 2):
        joined = helps(at + 1, "and_word") is not None and helps(at + 2, "self_word") is not None
        if joined and typed[at].typed.istitle() and stretch.marked.mark_at[at] is None:
            return typed[at].typed
    return None
