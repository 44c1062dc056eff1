"""An athlete's message of several matters: each clause that tells one by itself is heard by itself, in its turn.

What is told of things, days and the body comes before what is wished of a line, which is to go by it. A clause that
tells nothing by itself belongs to the one before it.
"""

import re
from collections.abc import Awaitable, Callable
from typing import Final, NamedTuple

from core.desk.coached import coached_groups
from core.desk.outcome import Outcome
from core.desk.talk.acts import OF_ONE_SCORE, ONLY_ANSWERED, near
from core.desk.talk.asked import ANSWERED_BY, ASKED_FOR_VERSIONS, keeps
from core.desk.talk.scene import scene_of
from core.desk.talk.together import as_one
from core.desk.talk.understood import in_own_words, matter
from core.desk.visit import Visit
from core.notation.body.unwell import unwell_from
from core.sessions.values import Session
from core.understanding.ordering import wanted_in

Reading = Callable[[Visit, str, int | None], Awaitable[Outcome | None]]
Answer = Callable[[Visit, str, int | None], Awaitable[Outcome]]
_CLAUSE: Final = re.compile(r"[,;!\n]+\s*|(?<=[.?])\s+|\s+(?:and|but|also|plus|then)\s+", re.IGNORECASE)
# Questions that such a message hardly answers.
_LEAVES: Final = ASKED_FOR_VERSIONS | {"set", "score"}
_LONGEST: Final = 240
_MOST: Final = 5
_LINE, _UNWELL = "line", "unwell"
# Told of the state of things: first, whatever is wished beside it.
_WISHES: Final = frozenset(
    {_LINE, "too_hard", "too_easy", "swap", "wants_easy", "my_version", "how_long", "how_to_pace"}
)
# Told beside something else, this is no answer to what is asked of a score.
_BODY: Final = frozenset({"hurt"})
_AWAY: Final = frozenset({"elsewhere", "leaves_class"})


class Clause(NamedTuple):
    """`kinds`: what it tells by itself."""

    words: str
    kinds: frozenset[str]


def each_clause(read: Answer) -> Reading:
    """The reading of a message whose clauses are each read by `read`; None where it is one telling, or a score's."""

    async def as_clauses(visit: Visit, text: str, session: int | None) -> Outcome | None:
        if not visit.private or await coached_groups(visit) or await keeps(visit, "any_time"):
            return None
        question = await visit.uow.questions.open_in(visit.chat)
        if question is not None and question.kind not in _LEAVES:
            return None
        record = (await scene_of(visit, text, session)).record
        asks_score = question is not None and question.kind == "score"
        # No other reader takes several things while a score is asked for.
        found = clauses_of(text, record.session if record else None, by_clause=asks_score)
        answers = ANSWERED_BY.get(question.kind, frozenset()) - _BODY if question else frozenset()
        if not found or any(one.kinds & answers for one in found):
            return None
        told = Outcome()
        for one in sorted(found, key=lambda one: bool(one.kinds & _WISHES)):
            told += await read(visit, one.words, session)
        return as_one(visit, told)

    return as_clauses


def clauses_of(text: str, session: Session | None, *, by_clause: bool = False) -> tuple[Clause, ...]:
    """The clauses, each of another kind than all others; none where two are alike, or the whole tells it as well.

    `by_clause`: even then.
    """
    if len(text) > _LONGEST:
        return ()
    parts = [one for one in _CLAUSE.split(text.strip()) if one and any(map(str.isalnum, one))]
    if not 1 < len(parts) <= _MOST:
        return ()
    found: list[Clause] = []
    for words in parts:
        kinds = kinds_of(words, session)
        if kinds:
            found.append(Clause(words, kinds))
        elif found:
            found[-1] = Clause(f"{found[-1].words}, {words}", found[-1].kinds)
        else:
            return ()
    if len(found) < 2:  # noqa: PLR2004 - there is nothing to part
        return ()
    if any("skips" in one.kinds for one in found):
        # Whoever skips as they are away trains nowhere else.
        found = [one for one in found if not one.kinds <= _AWAY]
    told = [kind for one in found for kind in one.kinds]
    is_list = len(told) > len(set(told)) or not OF_ONE_SCORE.isdisjoint(
        {*told} - {"too_hard", "too_easy", "hurt"}
    )
    whole = not by_clause and is_heard_whole(text, session, frozenset(told))
    return () if is_list or whole else tuple(found)


def kinds_of(words: str, session: Session | None) -> frozenset[str]:
    """What it surely tells by itself: acts, a wish about a line, or why somebody isn't at their best."""
    if unwell_from(words):
        return frozenset({_UNWELL})
    if wanted_in(words):
        return frozenset({_LINE})
    told = in_own_words(words, session)
    names = frozenset(act.act for act in matter(told))
    if names and not told.unread:
        return names
    likely = frozenset(near(told))
    return likely if likely and not told.acts and likely <= ONLY_ANSWERED.keys() else frozenset()


def is_heard_whole(text: str, session: Session | None, kinds: frozenset[str]) -> bool:
    """Whether all of it is acts that the whole message tells, too; a place is told with what is there."""
    told = in_own_words(text, session)
    heard = {act.act for act in matter(told)}
    things = {"has", "has_nothing"} if "elsewhere" in heard else set[str]()
    return not told.unread and kinds <= heard | things
