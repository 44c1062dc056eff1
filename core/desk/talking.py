"""Free text: a reply to something > the answer to the open question > a session or score > help."""

from dataclasses import replace

from core.desk.answers import ask_again, tell_answer
from core.desk.commands import (
    AboutMe,
    AskHelp,
    DraftSession,
    OpenGroup,
    Reach,
    SeeBoard,
    SendNoText,
    TalkInGroup,
    Tell,
)
from core.desk.groups import open_group, tell_zone
from core.desk.outcome import Outcome
from core.desk.says.common import Help, NotText
from core.desk.says.groups import TalkInPrivate
from core.desk.says.versions import Me
from core.desk.scores import see_board, tell_score, tell_score_again
from core.desk.sessions import coached_groups, draft_session
from core.desk.visit import Visit
from core.notation.chat import is_like_a_score, is_like_a_session
from core.store.records import OpenQuestion

# What was typed is quoted back no longer than this.
QUOTED = 60

# A coach's text of this many line breaks was meant as a session, even if hardly anything in it can be read.
BOARD_BREAKS = 2


async def tell(visit: Visit, command: Tell) -> Outcome:
    if is_like_a_session(command.text):
        return await draft_session(visit, DraftSession(text=command.text))
    session = await session_replied_to(visit, visit.chat, command.reply_to)
    if session is not None and is_like_a_score(command.text):
        return await tell_score(visit, command.text, session)
    question = await visit.uow.questions.open_in(visit.chat)
    if question is not None:
        return await answer(visit, question, command.text)
    if is_like_a_score(command.text):
        return await tell_score(visit, command.text, session)
    if command.text.strip().count("\n") >= BOARD_BREAKS and await coached_groups(visit):
        return await draft_session(visit, DraftSession(text=command.text))
    return await ask_help(visit, AskHelp())


async def session_replied_to(visit: Visit, chat: int, message_id: int | None) -> int | None:
    """The session that a message of ours in this chat was about."""
    if message_id is None:
        return None
    letter = await visit.uow.outbox.by_message(chat, message_id)
    return letter.refs.get("session") if letter else None


async def talk_in_group(visit: Visit, command: TalkInGroup) -> Outcome:
    """In a group the bot says little: a reply with a score counts, /board shows it, all else is private."""
    group = await visit.uow.groups.by_chat(visit.chat)
    if group is None:
        return await open_group(visit, OpenGroup(title=command.title))
    if command.command == "board":
        return await see_board(visit, SeeBoard())
    if command.command is not None:
        return visit.told(TalkInPrivate(group=group.id))
    session = await session_replied_to(visit, visit.chat, command.reply_to)
    if session is None or not is_like_a_score(command.text or ""):
        return Outcome()
    private = await visit.uow.chats.private_of(visit.person.id)
    if private is None:
        return visit.told(TalkInPrivate(group=group.id))
    return await tell_score(replace(visit, chat=private.id), command.text or "", session)


async def send_no_text(visit: Visit, _: SendNoText) -> Outcome:
    return visit.told(NotText())


async def reach(visit: Visit, command: Reach) -> Outcome:
    """Blocked, nothing is sent to this chat until they write again."""
    await visit.uow.chats.mark_reachable(visit.chat, command.yes, visit.now)
    return Outcome()


async def answer(visit: Visit, question: OpenQuestion, text: str) -> Outcome:
    """What was typed as the answer; where it reads only as a score, as that; else the question once more."""
    if question.kind == "zone":
        return await tell_zone(visit, question.refs["group"], text)
    if question.kind == "score":
        return await tell_score_again(visit, question.refs, text)
    taken = await tell_answer(visit, question.refs, text)
    if taken is not None:
        return taken
    if is_like_a_score(text):
        return await tell_score(visit, text, None)
    return await ask_again(visit, question.refs, text[:QUOTED])


async def ask_help(visit: Visit, _: AskHelp) -> Outcome:
    joined = await visit.uow.groups.groups_of(visit.person.id)
    return visit.told(Help(coach=bool(await coached_groups(visit)), joined=bool(joined)))


async def about_me(visit: Visit, _: AboutMe) -> Outcome:
    """What is known of the visitor, for their eyes only."""
    profile = await visit.profile()
    memberships = await visit.uow.groups.groups_of(visit.person.id)
    groups = [await visit.group(one.group_id) for one in memberships]
    me = Me(
        name=visit.person.name,
        equipment=profile.equipment,
        limits=profile.limits,
        body_mass_kg=profile.body_mass_kg,
        units=profile.units,
        groups=tuple(group.title for group in groups),
    )
    return visit.told(me)
