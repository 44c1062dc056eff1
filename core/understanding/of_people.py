"""A coach's message as their room reads it: each order with what is ordered for whom, and nobody named is lost."""

import re
from collections.abc import Iterator, Sequence
from itertools import chain, groupby
from typing import Final

from core.notation.coaching.asking import asked_of_version
from core.notation.coaching.pinging import asks_to_ping
from core.notation.coaching.wishes import read_wish
from core.notation.people import all_named, word_to
from core.understanding.acts import Announce, AnyAct, EasyWeek, HowIs, Order
from core.understanding.each_matter import matters_of
from core.understanding.ordering import Told, strangers_in, told_in
from core.understanding.several import sentences_of
from core.understanding.understand import understand
from core.understanding.values import Context, Message, Understood

_WEEK: Final = re.compile(r"\b(?:week|wk|deload)\b", re.IGNORECASE)
# Whatever it names, nothing is told of it.
_CHAT: Final = frozenset({"small_talk", "thanks", "greeting"})


def understand_of_people(message: Message, context: Context) -> Understood:
    """The same as `understand` for an athlete, and for a coach of whose people nobody is known."""
    people = tuple(context.people or ())
    if message.role != "coach" or not people:
        return understand(message, context)
    parts = [_of_part(one, context, people) for one in _parts(message.text, people)]
    return _with_everybody(_joined(parts), message.text, people)


def _parts(text: str, people: Sequence[str]) -> Iterator[str]:
    """Each wish that is of somebody, and what stands between them; the whole where none is."""

    def is_of_somebody(words: str) -> bool:
        return bool(_told_in(words, people).orders or _about_one(words, people))

    found = [one.words for one in matters_of(text, people)]
    if len(found) < 2 or not any(map(is_of_somebody, found)):  # noqa: PLR2004 - one is the message itself
        yield text
        return
    for apart, run in groupby(found, is_of_somebody):
        wishes = tuple(run)
        yield from wishes if apart else (", ".join(wishes),)


def _told_in(words: str, people: Sequence[str]) -> Told:
    return told_in(words, (*people, *strangers_in(words, people)))


def _of_part(words: str, context: Context, people: Sequence[str]) -> Understood:
    """What is ordered of whom there isn't anybody is unread, by their name."""
    told = _told_in(words, people)
    if not told.orders:
        found = understand(Message(text=words, role="coach"), context)
        own = None if found.acts else _about_one(words, people)
        return Understood(acts=(own,)) if own else found
    rest = _joined([_beside(one, context, people) for one in (*told.left, *(why.words for why in told.why))])
    known = [one for one in told.orders if one.person in people]
    strangers = dict.fromkeys(one.person for one in told.orders if one.person not in people)
    return Understood(acts=(*map(_as_act, known), *rest.acts), unread=(*strangers, *rest.unread))


def _beside(words: str, context: Context, people: Sequence[str]) -> Understood:
    """What is told beside an order."""
    own = _about_one(words, people)
    return Understood(acts=(own,)) if own else understand(Message(text=words, role="coach"), context)


def _about_one(words: str, people: Sequence[str]) -> AnyAct | None:
    """`Hold Tam` and `tell Cal well done` are for one athlete, too; `is the load right for Bo` is asked of one."""
    asked = asked_of_version(words, people)
    if asked and asked.name:
        return HowIs(text=words, person=asked.name)
    wish, word = read_wish(words, people), word_to(words, people)
    name = wish.name if wish else word.name if word else None
    return Order(text=words, person=name) if name else None


def _joined(parts: Sequence[Understood]) -> Understood:
    if len(parts) == 1:
        return parts[0]
    return Understood(
        acts=tuple(chain.from_iterable(one.acts for one in parts)),
        unread=tuple(chain.from_iterable(one.unread for one in parts)),
        between=next((one.between for one in parts if one.between), ()),
    )


def _as_act(order: Order) -> AnyAct:
    """`Easy week for Tam` has an act of its own, where no end is told."""
    is_week = order.step == "easier" and order.movement is None and order.until is None
    if is_week and order.day and _WEEK.search(order.text):
        return EasyWeek(text=order.text, person=order.person)
    return order


def _with_everybody(found: Understood, text: str, people: Sequence[str]) -> Understood:
    """What names somebody of whom no act tells is unread; who is quiet is to have a word."""
    thoughts = tuple(chain.from_iterable(sentences_of(text)))
    pings = tuple(Announce(text=one) for one in thoughts if asks_to_ping(one) and len(thoughts) > 1)
    lost = tuple(_lost(found, thoughts, people))
    if not pings and not lost:
        return found
    return found.model_copy(update={"acts": (*found.acts, *pings), "unread": (*found.unread, *lost)})


def _lost(found: Understood, thoughts: Sequence[str], people: Sequence[str]) -> Iterator[str]:
    for words in thoughts:
        named = all_named(words, people)
        if named and not any(_is_in(found, name, words) for name in named):
            yield words


def _is_in(found: Understood, name: str, words: str) -> bool:
    if any(words in one or one in words for one in found.unread):
        return True
    matter = [act for act in found.acts if act.act not in _CHAT]
    whose = [(getattr(act, "person", None), act.text.casefold()) for act in matter]
    return any(person == name or (person is None and name.casefold() in said) for person, said in whose)
