"""A coach's message as their room reads it: each order with what is ordered for whom, and nobody named is lost."""

import re
from collections.abc import Iterator, Sequence
from itertools import chain
from typing import Final

from core.notation.coaching.asking import asked_of_version
from core.notation.coaching.pinging import asks_to_ping
from core.notation.coaching.wishes import read_wish
from core.notation.people import all_named, word_to
from core.understanding.acts import Announce, AnyAct, EasyWeek, HowIs, Order
from core.understanding.ordering import told_in
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
    told = told_in(message.text, people)
    if told.orders:
        rest = [_of_one(one, context, people) for one in (*told.left, *told.why)]
        acts = (*map(_as_act, told.orders), *chain.from_iterable(one.acts for one in rest))
        return _with_everybody(
            Understood(acts=acts, unread=tuple(chain.from_iterable(one.unread for one in rest))),
            message.text,
            people,
        )
    found = understand(message, context)
    asked = asked_of_version(message.text, people)
    if not found.acts and asked and asked.name:
        return Understood(acts=(HowIs(text=message.text, person=asked.name),))
    return _with_everybody(found, message.text, people)


def _of_one(words: str, context: Context, people: Sequence[str]) -> Understood:
    """`Hold Tam` and `tell Cal well done` are for one athlete, too."""
    wish, word = read_wish(words, people), word_to(words, people)
    name = wish.name if wish else word.name if word else None
    if name is not None:
        return Understood(acts=(Order(text=words, person=name),))
    return understand(Message(text=words, role="coach"), context)


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
