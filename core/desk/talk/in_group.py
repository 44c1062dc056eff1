"""In a group the bot says little: a reply with a score counts, a stop sign in one gets help, all else is private."""

from collections.abc import Collection
from dataclasses import replace

from core.athletes.values import Screening
from core.desk.access import admitted
from core.desk.commands import OpenGroup, SeeBoard, TalkInGroup
from core.desk.errors import NotAMember
from core.desk.joining.groups import open_group
from core.desk.joining.says import HelpThem, StopHere, TalkInPrivate
from core.desk.outcome import Outcome, Say
from core.desk.scores.correcting import correct_score
from core.desk.scores.scoreboard import see_board
from core.desk.scores.whose import own_score, tell_about_score
from core.desk.talk.alarm import alarm_in, hold_and_tell, stop
from core.desk.visit import Visit
from core.notation.scores.corrections import read_correction
from core.notation.talk.chat import is_like_a_score
from core.notation.talk.yes_no import says_it_is_so
from core.store.records import Chat, OpenQuestion


@admitted
async def talk_in_group(visit: Visit, command: TalkInGroup) -> Outcome:
    """What is no reply to a session of ours is talk among people."""
    group = await visit.uow.groups.by_chat(visit.chat)
    if group is None:
        return await open_group(visit, OpenGroup(title=command.title))
    if command.command == "board":
        return await see_board(visit, SeeBoard())
    if command.command is not None:
        return visit.told(TalkInPrivate(group=group.id))
    session = await session_replied_to(visit, command.reply_to, (group.id,))
    return await reply_in_group(visit, group.id, session, command.text or "") if session else Outcome()


async def session_replied_to(visit: Visit, message_id: int | None, groups: Collection[int]) -> int | None:
    """The session that a message of ours in this chat was about, if it is one of these groups'."""
    if message_id is None:
        return None
    letter = await visit.uow.outbox.by_message(visit.chat, message_id, visit.replied_at)
    session = letter.refs.get("session") if letter else None
    record = await visit.uow.sessions.find(session, groups) if session else None
    return record.id if record else None


async def reply_in_group(visit: Visit, group_id: int, session: int, text: str) -> Outcome:
    alarm = await alarm_in(visit, text)
    if alarm == "other":
        return visit.told(HelpThem())
    if alarm is not None:
        return await help_in_group(visit, group_id, alarm, text)
    corrected = read_correction(text)
    mine = await asked_here(visit, session)
    if corrected is None and not is_like_a_score(text) and not (mine and says_it_is_so(text)):
        return Outcome()
    return await score_in_group(visit, group_id, session, text, mine, corrected)


async def help_in_group(visit: Visit, group_id: int, alarm: str, text: str) -> Outcome:
    """Help where they are looking, with no word of what they feel; all else about it in private."""
    _, told = await hold_and_tell(visit, alarm, text)
    here = visit.told(StopHere(group=group_id)) + Outcome(told)
    private = await reached_in_private(visit)
    said = stop(group_id, alarm, coach=bool(told))
    return here + Outcome((Say(private.id, said),)) if private else here


async def reached_in_private(visit: Visit) -> Chat | None:
    """The visitor's private chat, unless they blocked it."""
    chat = await visit.uow.chats.private_of(visit.person.id)
    return chat if chat and chat.reachable else None


async def asked_here(visit: Visit, session: int) -> OpenQuestion | None:
    """What the visitor was asked about their score in the group itself; never what somebody else was."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None or question.kind != "score" or question.refs["session"] != session:
        return None
    return question if question.refs.get("athlete") == visit.person.id else None


async def score_in_group(
    visit: Visit, group_id: int, session: int, text: str, mine: OpenQuestion | None, corrected: str | None
) -> Outcome:
    """A score needs no private chat; whoever has one hears the rest there."""
    if not await visit.enter(group_id):
        raise NotAMember
    private = await reached_in_private(visit)
    if private is None and (await visit.profile()).screening is Screening.STOP:
        return visit.told(TalkInPrivate(group=group_id))
    if mine is not None:
        return await tell_about_score(visit, mine.refs, corrected or text)
    there = replace(visit, chat=private.id, private=True) if private else visit
    if corrected is not None:
        return await correct_score(there, corrected, session) or Outcome()
    return await own_score(there, text, session) or Outcome()
