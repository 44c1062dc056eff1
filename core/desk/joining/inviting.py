"""The way to the first questions for who tells a score before them: the score counts, the next session waits."""

from core.desk.joining.says import InviteToQuestions
from core.desk.outcome import Outcome, Say
from core.desk.visit import Visit
from core.store.records import Chat, SessionRecord


async def reached_in_private(visit: Visit) -> Chat | None:
    """The visitor's private chat, unless they blocked it."""
    chat = await visit.uow.chats.private_of(visit.person.id)
    return chat if chat and chat.reachable else None


async def is_to_invite(visit: Visit) -> bool:
    """Whether the first questions are still unanswered, and nobody was told of them with a score yet."""
    if (await visit.profile()).screening is not None:
        return False
    return await visit.uow.outbox.by_key(invitation(visit)) is None


def invitation(visit: Visit) -> str:
    """The key of the one letter that invites the visitor, in private or in the group."""
    return f"invite:{visit.person.id}"


def invite(visit: Visit, record: SessionRecord) -> Outcome:
    """No question is opened: what they type next may be another score."""
    what = InviteToQuestions(session=record.id)
    return Outcome((Say(visit.chat, what, key=invitation(visit), refs={"session": record.id}),))
