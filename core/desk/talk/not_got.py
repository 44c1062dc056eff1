"""What isn't understood gets one line: the words, the nearest thing as a button, and the coach's ear."""

from collections.abc import Iterable, Mapping, Sequence
from itertools import chain
from typing import Final, get_args

from core.desk.coached import coached_athletes, coached_groups
from core.desk.joining.door import show_way_in
from core.desk.outcome import Outcome
from core.desk.talk.passing_on import keep, trains_in
from core.desk.talk.says import LeftOver, Nearest, NotGot, NotYet
from core.desk.talk.scene import Scene
from core.desk.visit import Visit
from core.notation.people import all_named
from core.notation.talk.chat import asks
from core.understanding import acts as a
from core.understanding.acts import Coached
from core.understanding.several import sentences_of

# What was typed is quoted back no longer than this.
QUOTED: Final = 80

# What can be tapped in place of the act that the words may have been.
NEAREST: Final[Mapping[str, Nearest]] = {
    "my_version": "version", "how_long": "version", "how_to_pace": "version", "why": "version", "how_to": "version",
    "how_heavy": "lines", "swap": "lines", "too_hard": "lines", "too_easy": "lines", "wants_easy": "today",
    "has_minutes": "today", "sick": "today", "well": "today", "sore": "today", "elsewhere": "today",
    "home_again": "today", "back_after": "today", "hurt": "today", "board": "board", "scored": "board",
    "corrects": "board", "did_as_written": "board", "did_scaled": "board", "when_is_class": "classes",
    "class_link": "classes", "joins_class": "classes", "leaves_class": "classes", "skips": "classes",
    "class": "classes", "class_change": "classes", "class_off": "classes", "has": "equipment",
    "has_nothing": "equipment", "got": "equipment", "lost": "equipment", "shares": "equipment", "spares": "limits",
    "condition": "limits", "well_again": "limits", "weighs": "weight", "remind": "reminders",
    "no_reminders": "reminders", "quiet": "reminders", "zone": "reminders", "units": "me", "my_data": "me",
    "my_history": "me", "my_progress": "me", "can": "me", "forget_me": "forget", "export_me": "export",
    "wants_timer": "version",
    "who_needs_me": "needs", "order": "needs", "how_is": "needs", "note_fault": "needs", "easy_week": "needs",
    "who_reported": "scores",
}  # fmt: skip

_OF_COACH: Final = frozenset(cls.model_fields["act"].default for cls in get_args(Coached))


async def not_got(visit: Visit, words: Sequence[str], near: Iterable[str], scene: Scene) -> Outcome:
    """Whoever belongs to no group is shown the way in instead."""
    if not await visit.memberships():
        return await show_way_in(visit, short(scene.text))
    near = tuple(near)
    buttons = dict.fromkeys(NEAREST[one] for one in near if one in NEAREST)
    there = [one for one in buttons if await is_there(visit, one, scene)]
    quoted = short(" … ".join(words) or scene.text)
    said = NotGot(
        words=quoted,
        asks=asks(scene.text) and not await coached_groups(visit),
        nearest=there[0] if there else None,
        like=next(iter(near), None),
        word=await word_for_coach(visit, scene.text),
        session=scene.record.id if scene.record else None,
        version=scene.version,
        revision=scene.record.revision if scene.record else 0,
    )
    return visit.told(said)


async def is_there(visit: Visit, one: Nearest, scene: Scene) -> bool:
    """Whether its button would lead anywhere."""
    if one in {"lines", "today"}:
        return scene.version is not None
    if one in {"board", "needs", "scores"}:
        coach = one == "board" or bool(await coached_groups(visit))
        return coach and scene.record is not None
    return True


async def left_over(visit: Visit, words: Sequence[str]) -> Outcome:
    """Quoted beside what was taken; for the coach, if the athlete agrees."""
    word = await word_for_coach(visit, ", ".join(words))
    return visit.told(LeftOver(words=tuple(short(one) for one in words), word=word))


async def nobody_lost(visit: Visit, text: str, done: Outcome) -> Outcome:
    """What was done, with the words of a coach about somebody whom no answer names: quoted, as nothing came of them."""
    athletes = tuple(await coached_athletes(visit))
    thoughts = tuple(chain.from_iterable(sentences_of(text)))
    if not athletes or "\n" in text.strip() or len(thoughts) < 2:  # noqa: PLR2004 - one thought has its answer
        return done
    answers = " ".join(repr(say.what) for say in done.says)
    lost = [
        words for words in thoughts if (named := all_named(words, athletes)) and not all_named(answers, named)
    ]
    return done + await left_over(visit, lost) if lost and len(lost) < len(thoughts) else done


async def not_yet(visit: Visit, act: a.AnyAct) -> Outcome | None:
    """An honest word where there is no way to do it so far; None where there is nothing to say about it."""
    if act.act not in UNDONE:
        return None
    word = None if act.act in _OF_COACH else await word_for_coach(visit, act.text)
    return visit.told(NotYet(act=act.act, word=word))


# What is understood and no use case does, or not however it is said; each has its words.
UNDONE: Final = frozenset(
    {"how_heavy", "did_as_written", "did_scaled", "how_long", "how_to_pace", "how_to"}
    | {"teach", "event", "post", "withdraw"}
)


async def word_for_coach(visit: Visit, words: str) -> int | None:
    """Kept so that a tap can pass it on; it counts for nothing before that. None where not one coach would read it."""
    here = await trains_in(visit)
    if len(here) != 1 or not words.strip() or not await visit.uow.consents.given(visit.person.id):
        return None
    return (await keep(visit, here[0], "unread", words)).id


def short(words: str) -> str:
    """On one line, and not too long to be quoted."""
    line = " ".join(words.split())
    return line if len(line) <= QUOTED else line[: QUOTED - 1].rstrip() + "…"
