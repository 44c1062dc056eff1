"""A coach's message of several wishes: each is done or answered, in its order, or quoted."""

from collections.abc import Awaitable, Callable, Sequence
from typing import Final

from core.desk.classes.says import AskWhichDate
from core.desk.coached import WhoIsMeant, coached_athletes, coached_groups
from core.desk.outcome import Outcome
from core.desk.scores.which import WhichSession
from core.desk.sessions.says import AskChangeOrNew, AskLine, NotAmended
from core.desk.talk.asked import keeps
from core.desk.talk.meant import ask_which, ask_who
from core.desk.talk.not_got import left_over, short
from core.desk.talk.says import HeldBack, NotGot, OneQuestion
from core.desk.visit import Visit
from core.store.records import OpenQuestion
from core.understanding.each_matter import matters_of
from core.understanding.several import Matter, as_word

Reading = Callable[[Visit, str, int | None], Awaitable[Outcome | None]]
Answer = Callable[[Visit, str, int | None], Awaitable[Outcome]]
# Said of a change that wasn't carried out whole: what follows it would go out as it isn't meant.
_NOT_DONE: Final = (NotAmended, AskLine, AskChangeOrNew)


def each_in_turn(read: Answer) -> Reading:
    """The reading of a message whose wishes are each read by `read`; None where it holds one, or none can be read."""

    async def as_several(visit: Visit, text: str, session: int | None) -> Outcome | None:
        if not await coached_groups(visit) or await keeps(visit, "any_time"):
            return None
        found = matters_of(text, tuple(await coached_athletes(visit)))
        return await in_its_order(visit, found, session, read) if len(found) > 1 else None

    return as_several


async def of_one(
    visit: Visit,
    one: Matter,
    session: int | None,
    read: Answer,
) -> Outcome | None:
    """What comes of one wish; None where nobody gets it. Whom it means, or which session, is asked of it alone."""
    try:
        outcome = await read(visit, one.words, session)
    except WhoIsMeant as unclear:
        return await ask_who(visit, one.words, session, unclear)
    except WhichSession as unclear:
        return await ask_which(visit, one.words, unclear)
    return None if any(isinstance(say.what, NotGot) for say in outcome.says) else outcome


async def beside_what_is_asked(
    visit: Visit, asked: OpenQuestion | None, words: str, done: Outcome
) -> Outcome:
    """What came of words behind a question of the same message: a second question waits, the first stays open."""
    now_open = await visit.uow.questions.open_in(visit.chat)
    if asked is None or now_open == asked:
        return done
    await visit.uow.questions.ask(visit.chat, asked.kind, asked.refs, visit.now)
    return done if now_open is None else visit.told(OneQuestion(words=short(words)))


def tells_everybody(asked: Outcome) -> bool:
    """Whether a yes to it is told to the group by itself: `no class this thu, im sick. tell everyone`."""
    return any(isinstance(say.what, AskWhichDate) for say in asked.says)


async def in_its_order(
    visit: Visit,
    found: Sequence[Matter],
    session: int | None,
    read: Answer,
) -> Outcome | None:
    """None where nothing of it can be read. What follows a change that isn't whole waits for it."""
    told = Outcome()
    got = waits = False
    before, asked = await visit.uow.questions.open_in(visit.chat), None
    left: list[str] = []
    before_it: tuple[str, Outcome] = ("", Outcome())
    for one in found:
        if one.words == as_word(before_it[0]) and tells_everybody(before_it[1]):
            continue
        held = waits and one.about == "post"
        outcome = (
            visit.told(HeldBack(words=short(one.words))) if held else await of_one(visit, one, session, read)
        )
        got = got or outcome is not None
        if outcome is None:
            left.append(one.words)
            continue
        before_it = one.words, outcome
        outcome = await beside_what_is_asked(visit, asked, one.words, outcome)
        now_open = await visit.uow.questions.open_in(visit.chat)
        asked = now_open if now_open != before else asked
        told += (await left_over(visit, left) if left else Outcome()) + outcome
        left = []
        waits = waits or any(isinstance(say.what, _NOT_DONE) for say in outcome.says)
    told += await left_over(visit, left) if left else Outcome()
    return told if got else None
