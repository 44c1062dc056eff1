"""An athlete's message of several matters: each clause that tells one by itself is heard by itself, in its turn.

What is told of things, days and the body comes before what is wished of a line, which is to go by it. A clause that
tells nothing by itself belongs to the one before it, in front of all to the one behind it.
"""

import re
from collections.abc import Awaitable, Callable, Iterator, Mapping, Sequence
from typing import Final, NamedTuple

from core.desk.coached import coached_groups
from core.desk.outcome import Outcome
from core.desk.talk.acts import ONLY_ANSWERED, near
from core.desk.talk.asked import ANSWERED_BY, ASKED_FOR_VERSIONS, keeps
from core.desk.talk.scene import scene_of
from core.desk.talk.together import as_one
from core.desk.talk.understood import in_own_words, matter
from core.desk.visit import Visit
from core.notation.body.unwell import unwell_from
from core.notation.talk.chat import is_like_a_score
from core.notation.talk.common_questions import common_question
from core.notation.talk.for_coach import read_for_coach
from core.notation.talk.paces_asked import asked_pace, asks_for_rest, names_treadmill
from core.notation.talk.privacy import read_privacy_question
from core.notation.talk.shares_asked import asked_share
from core.notation.talk.undoing import asks_to_undo
from core.sessions.values import Session
from core.understanding.ordering import wanted_in

Reading = Callable[[Visit, str, int | None], Awaitable[Outcome | None]]
Answer = Callable[[Visit, str, int | None], Awaitable[Outcome]]
_CLAUSE: Final = re.compile(
    r"[,;!\n]+\s*|(?<=[.?])\s+|\s+[+&]\s+(?![0-9])|\s+(?:and|but|also|plus|then)\s+", re.IGNORECASE
)
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
_EASED: Final = frozenset({"easier", "harder"})
_EASES: Final = frozenset({"wants_easy", "too_hard", "too_easy"})
_MINUTES: Final = re.compile(r"^\W*[0-9]{1,3} ?(?:m|mins?|minutes?)\W*$", re.IGNORECASE)
_ASKED: Final = _WISHES | {"common", "help", "whats_coming", "rests", "does_less"}
_SCORE: Final = frozenset({"scored", "corrects"})
# Told beside a score, nothing of how it came about.
_BESIDE_A_SCORE: Final = frozenset(
    {"lost", "got", "remind", "no_reminders", "quiet", "zone", "when_is_class", "class_link", "joins_class"}
    | {"leaves_class", "my_history", "my_progress", "board", "how_to", "back_after", "weighs", "to_coach"}
    | {"elsewhere", "swap", "condition", "can", "how_long"}
    | {"rests", "pace", "share", "treadmill", "privacy"}
)


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
    return tuple(parted(list(told_by(parts, session)), text, session, by_clause=by_clause))


def told_by(parts: Sequence[str], session: Session | None) -> Iterator[Clause]:
    """What each tells by itself, with what tells nothing beside it."""
    found: list[Clause] = []
    before = ""
    bare = minutes_they_have(parts, session)
    for part in parts:
        words = f"{before}, {part}" if before else part
        if part in bare:
            words = f"only {part}"
        kinds = kinds_of(words, session)
        if kinds and not (found and "to_coach" in found[-1].kinds):
            found.append(Clause(words, kinds))
            before = ""
        elif found:
            found[-1] = Clause(f"{found[-1].words}, {words}", found[-1].kinds)
        else:
            before = words
    yield from with_its_score(found)


def minutes_they_have(parts: Sequence[str], session: Session | None) -> tuple[str, ...]:
    """`20 min. what do I do`: so many minutes, alone beside what is only asked or wished, are no score."""
    bare = tuple(one for one in parts if _MINUTES.match(one))
    others = [kinds_of(one, session) for one in parts if one not in bare]
    return bare if len(bare) == 1 and others and all(one and one <= _ASKED for one in others) else ()


def parted(found: list[Clause], text: str, session: Session | None, *, by_clause: bool) -> Sequence[Clause]:
    """None of them where two are alike, or the whole tells it as well."""
    if len(found) < 2:  # noqa: PLR2004 - there is nothing to part
        return ()
    if any("skips" in one.kinds for one in found):
        # Whoever skips as they are away trains nowhere else.
        found = [one for one in found if not one.kinds <= _AWAY]
    if any((wanted := wanted_in(one.words)) and wanted.step in _EASED for one in found):
        # `Push-ups too hard, make them easier` wishes one thing.
        found = [one for one in found if not one.kinds <= _EASES]
    told = [kind for one in found for kind in one.kinds]
    # Each line has a wish of its own.
    is_list = any(told.count(kind) > 1 for kind in told if kind != _LINE)
    # What names a line may be taken for all of it: `swap the run, I can do pull-ups`.
    whole = not by_clause and wanted_in(text) is None and is_heard_whole(text, session, frozenset(told))
    return () if is_list or whole else found


def with_its_score(found: Sequence[Clause]) -> Iterator[Clause]:
    """The same; what may be told of a score is left with it, in one telling at its place."""
    if not any(one.kinds & _SCORE for one in found):
        yield from found
        return
    if not any(is_like_a_score(one.words) for one in found):
        return  # `back squat 150, 12 pull-ups` is a list of one telling
    of_it = [one for one in found if not one.kinds <= _BESIDE_A_SCORE]
    for one in found:
        if one is of_it[0]:
            words = ", ".join(each.words for each in of_it)
            yield Clause(words, frozenset[str]().union(*(each.kinds for each in of_it)))
        elif one not in of_it:
            yield one


# What readers tell by its words alone, before all acts.
_BY_WORDS: Final[Mapping[str, Callable[[str], object]]] = {
    "to_coach": read_for_coach,
    "pace": asked_pace,
    "share": asked_share,
    "rests": asks_for_rest,
    "treadmill": names_treadmill,
    "undo": asks_to_undo,
    "privacy": read_privacy_question,
    "common": lambda words: common_question(words, coach=False),
    _UNWELL: unwell_from,
    _LINE: wanted_in,
}


def kinds_of(words: str, session: Session | None) -> frozenset[str]:
    """What it surely tells by itself: acts, a wish about a line, why somebody isn't at their best, what is asked."""
    by_words = next((kind for kind, tells in _BY_WORDS.items() if tells(words)), None)
    if by_words:
        return frozenset({by_words})
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
