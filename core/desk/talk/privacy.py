"""What is kept and who sees it, told to whoever asks."""

from collections.abc import Awaitable, Callable

from core.desk.coached import coached_groups
from core.desk.commands import AboutMe
from core.desk.outcome import Outcome
from core.desk.profile.own import sharing_of
from core.desk.profile.says import Privacy
from core.desk.talk.asked import keeps
from core.desk.talk.helping import about_me
from core.desk.visit import Visit
from core.notation.talk.privacy import asks_what_is_known, read_privacy_question, told_in_secret

Reading = Callable[[Visit, str, int | None], Awaitable[Outcome | None]]
Answer = Callable[[Visit, str, int | None], Awaitable[Outcome]]


def in_secret(read: Answer) -> Reading:
    """The reading of what is told with the wish that nobody hears of it: heard as ever, then who sees it."""

    async def as_secret(visit: Visit, text: str, session: int | None) -> Outcome | None:
        rest = told_in_secret(text) if visit.private and not await coached_groups(visit) else None
        if not rest or not any(one.isalnum() for one in rest) or await keeps(visit, "any_time"):
            return None
        seen = visit.told(Privacy(topic="spared", shares=await sharing_of(visit)))
        return await read(visit, rest, session) + seen

    return as_secret


async def as_privacy(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """A question that is open stays so: this is often asked because of it."""
    if asks_what_is_known(text) and await visit.uow.consents.given(visit.person.id):
        return await about_me(visit, AboutMe())
    topic = "spared" if told_in_secret(text) is not None else read_privacy_question(text)
    if topic is None:
        return None
    return visit.told(Privacy(topic=topic, shares=await sharing_of(visit)))
