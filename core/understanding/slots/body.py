"""Parts of the body, what to leave out, conditions and signs, out of a stretch."""

from collections.abc import Iterator
from itertools import pairwise

from core.athletes.limits import limit
from core.notation.body.complaints import read_complaint
from core.notation.body.healing import hurts_somewhere, injured, is_sore, plainly_well
from core.notation.body.limits import read_limits
from core.understanding.acts import Side
from core.understanding.lexicon import NearSign, lexicon
from core.understanding.marks import Marked
from core.understanding.slots.stretch import Stretch
from core.understanding.text import stem
from core.understanding.values import Context

# How many words may stand between an `if` and what it supposes, and before a sign for a no to belong to it.
_NEAR = 5
_DENIED_WITHIN = 4
_NO_CONTEXT = Context()
_WEIGH = frozenset({("i", "weigh"), ("i", "weighed")})
_LIGHTEST_KG, _HEAVIEST_KG = 30, 250


def joints(stretch: Stretch, *, loosely: bool = True) -> tuple[str, ...]:
    """The limits of the joints that are named; `my back` only where the sentence is about bodies (`loosely`)."""
    kinds = ("part", "maybe_part") if loosely else ("part",)
    found = [one for one in stretch.marks(*kinds) if not _is_another(stretch, one.start)]
    return tuple(dict.fromkeys(value for one in found if (value := one.value(*kinds))))


def spared(stretch: Stretch) -> tuple[str, ...]:
    """Joints and things to leave out."""
    return tuple(dict.fromkeys((*joints(stretch), *stretch.values("wish"))))


def muscles(stretch: Stretch) -> tuple[str, ...]:
    """The limits of the muscles that are named."""
    marks = stretch.marks("muscle")
    words = (" ".join(stretch.marked.words[one.start : one.end]) for one in marks)
    named = [
        one
        for said in (*words, *(one.value("muscle") or "" for one in marks))
        for one in read_limits(said).limits or ()
    ]
    return tuple(dict.fromkeys(one for one in named if limit(one).kind == "muscle"))


def surely_hurts(stretch: Stretch) -> bool:
    """Whether it says plainly that something of the speaker's own body hurts, or what happened to it."""
    if is_of_another(stretch, "other_person", "person"):
        return False
    return hurts_somewhere(stretch.said) or not {*joints(stretch), *muscles(stretch)}.isdisjoint(
        injured(stretch.said)
    )


def surely_well(stretch: Stretch) -> bool:
    """Whether it says of the speaker's own body that something is fine, and nothing that isn't."""
    if plainly_well(stretch.said) and not is_of_another(stretch, "other_person", "person"):
        return not any(True for _ in stretch.helps("if_word"))
    told = read_complaint(stretch.said)
    return told is not None and told.kind == "over"


def surely_sore(stretch: Stretch) -> bool:
    """Whether a muscle of the speaker's own is tight or sore, and nothing else is said of it."""
    return is_sore(stretch.said) and not is_of_another(stretch, "other_person", "person")


def surely_weighs(stretch: Stretch) -> bool:
    """`I weigh 82`: one number that a body may weigh, said of the speaker."""
    words = stretch.words
    says_so = any(pair in _WEIGH for pair in pairwise(words))
    numbers = stretch.quantities("number", "load")
    return says_so and len(numbers) == 1 and _LIGHTEST_KG <= numbers[0].value <= _HEAVIEST_KG


def conditions(stretch: Stretch) -> tuple[str, ...]:
    """What is neither denied nor over: `I'm not pregnant`, `I was pregnant last year`."""
    told = [
        one
        for one in stretch.marks("condition")
        if not (stretch.is_denied(one.start) or _is_supposed(stretch, one.start))
    ]
    return tuple(dict.fromkeys(value for one in told if (value := one.value("condition"))))


def _is_supposed(stretch: Stretch, at: int) -> bool:
    """`I was pregnant last year`, `what if I'm pregnant`."""
    helps = stretch.marked.helps
    near = range(max(stretch.start, at - _NEAR), at)
    # `We're expecting` is no `were`.
    past = helps(at - 1, "past_word") is not None and stretch.marked.text.tokens[at - 1].typed.isalpha()
    return past or any(helps(one, "if_word") is not None for one in near)


def side(stretch: Stretch) -> Side | None:
    """The one side that is named; `right now`, `all right` are none."""
    found = {
        one.value("side")
        for one in stretch.marks("side")
        if not (one.end < stretch.end and stretch.marked.helps(one.end, "no_side") is not None)
    }
    if len(found) != 1:
        return None
    return "left" if found.pop() == "left" else "right"


def muscle(stretch: Stretch) -> str | None:
    """The place that is sore, in a plain word."""
    named = stretch.marks("muscle") or stretch.marks("part", "maybe_part")
    if not named:
        return None
    said = " ".join(stretch.marked.words[named[0].start : named[0].end])
    value = named[0].value("muscle")
    own = stretch.marked.language == "en" and (value is None or stem(said) != stem(value))
    return said if own or value is None else value


def _is_another(stretch: Stretch, at: int) -> bool:
    """`not my back, only my wrist`."""
    before = at - 2
    return before >= stretch.start and stretch.marked.helps(before, "not_the") is not None


def signs(marked: Marked) -> list[tuple[str, int]]:
    """Every stop sign that is told, with its place: by a phrase, or by two words near each other."""
    whole = Stretch(marked, 0, len(marked.words), _NO_CONTEXT)
    no_sign = {at for one in whole.marks("not_sign", "movement") for at in range(one.start, one.end)}
    found = [(one.value("sign") or "", one.start) for one in whole.marks("sign") if one.start not in no_sign]
    for near in lexicon().near_signs:
        found += [(near.sign, at) for at in _near(marked, near) if at not in no_sign]
    return [one for one in dict.fromkeys(found) if not whole.is_denied(one[1], near=_DENIED_WITHIN)]


def _near(marked: Marked, near: NearSign) -> Iterator[int]:
    stems = [stem(word) for word in marked.words]
    for at, word in enumerate(stems):
        if word in near.heads:
            around = stems[max(0, at - near.within) : at] + stems[at + 1 : at + 1 + near.within]
            if all(words.intersection(around) for words in near.others):
                yield at


def tells_of_another(marked: Marked) -> bool:
    """Somebody else is who it is told of: `my wife fainted`, `Bo fainted`."""
    return is_of_another(Stretch(marked, 0, len(marked.words), _NO_CONTEXT), "other_person", "person")


def is_of_another(stretch: Stretch, *kinds: str) -> bool:
    """Whether somebody else is named, and the speaker isn't."""
    return bool(stretch.marks(*(kinds or ("other_person",)))) and not _names_oneself(stretch)


def speaks_of_oneself(marked: Marked) -> bool:
    """Whether any word stands for the speaker, outside of `my wife`."""
    return _names_oneself(Stretch(marked, 0, len(marked.words), _NO_CONTEXT))


def _names_oneself(stretch: Stretch) -> bool:
    return any(stretch.marked.mark_at[at] is None for at in stretch.helps("self_word"))
