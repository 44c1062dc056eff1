"""A coach's message cut into its wishes, with all that is known of how wishes about people are told."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from itertools import chain, groupby

from core.notation.coaching.easing import read_easy_week
from core.notation.coaching.leeway import read_leeway
from core.notation.coaching.wishes import read_wish
from core.notation.people import name_in_front
from core.notation.talk.chat import is_like_a_score
from core.understanding.ordering import orders_in
from core.understanding.several import Matter, asks_of_each, each_alone, matters


def matters_of(text: str, names: Sequence[str]) -> tuple[Matter, ...]:
    """The wishes of a message; of several lines only where each begins one, as they are else a session."""

    def is_of_each(words: str) -> bool:
        return bool(read_wish(words, names) or read_leeway(words, names) or read_easy_week(words, names))

    def is_whole(words: str) -> bool:
        alone = each_alone(words, names)[0]
        return is_of_each(alone) or bool(orders_in(words, names)) or is_told_of_one(words, names)

    found = matters(text, names, is_whole)
    is_list = "\n" not in text.strip() or all(one.about for one in found)
    each = chain.from_iterable(of_each(one, names, is_of_each) for one in found)
    return tuple(scores_together(each, names)) if is_list else ()


def scores_together(found: Iterable[Matter], names: Sequence[str]) -> Iterator[Matter]:
    """The scores of several that stand beside each other are told as one matter."""

    def is_score(one: Matter) -> bool:
        named = name_in_front(one.words, names)
        return named is not None and is_like_a_score(named.rest)

    for is_told, run in groupby(found, is_score):
        if is_told:
            yield Matter("people", ", ".join(one.words for one in run))
        else:
            yield from run


def of_each(one: Matter, names: Sequence[str], is_of_each: Callable[[str], bool]) -> tuple[Matter, ...]:
    """What is wished of a list of people is a wish about each of them."""
    alone = each_alone(one.words, names)
    is_asked = one.about == "ask" and asks_of_each(one.words)
    is_list = len(alone) > 1 and (is_asked or all(map(is_of_each, alone)))
    return tuple(Matter(one.about, words) for words in alone) if is_list else (one,)


def is_told_of_one(words: str, names: Sequence[str]) -> bool:
    """`Tam 12:50, as written`: a score, with or without whose it is."""
    named = name_in_front(words, names)
    return is_like_a_score(named.rest if named else words)
