"""A message that was changed afterwards: a score or a draft follows it, all else is answered kindly."""

from collections.abc import Sequence
from dataclasses import replace

from core.desk.access import admitted
from core.desk.coached import coached_groups, coached_ids, names_in
from core.desk.commands import DraftSession, TakeScoreBack
from core.desk.outcome import Outcome
from core.desk.profile.commands import Retell
from core.desk.profile.says import ChangeNotTaken, ChangeTooLate
from core.desk.scores.claims import Claim
from core.desk.scores.put_right import take_score_back
from core.desk.scores.taking import claim_score
from core.desk.scores.whose import tell_about_score
from core.desk.sessions.posting import draft_session, over, read_back
from core.desk.talk.alarm import raise_alarm
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.people import name_in_front
from core.notation.scores.corrections import read_correction
from core.notation.scores.parts import read_parts
from core.notation.talk.chat import is_like_a_score, is_like_a_session
from core.notation.talk.undoing import score_to_go
from core.store.records import Person, ScoreRecord, SessionRecord, SessionState


@admitted
async def retell(visit: Visit, command: Retell) -> Outcome:
    """In a group only a changed score counts: people correct their chatting all the time."""
    before = await words_before(visit, command.message_id)
    after = command.text.strip()
    if before == after or not after:
        return Outcome()
    scores = await visit.uow.scores.told_in(visit.chat, command.message_id)
    told = [one for one in scores if one.entered_by == visit.person.id]
    if told:
        return await correct(visit, told, after)
    if command.in_group or before is None:
        return Outcome()
    return await as_asked_score(visit, command.message_id, after) or await as_draft(visit, before, after)


async def words_before(visit: Visit, message_id: int) -> str | None:
    chat = await visit.uow.chats.get(visit.chat)
    words = await visit.uow.inbox.words_of(chat.address, message_id) if chat else None
    return words.strip() if words else None


async def correct(visit: Visit, told: Sequence[ScoreRecord], text: str) -> Outcome:
    """The same as `Not right` and the new words; a stop sign among them comes first."""
    private = await visit.uow.chats.private_of(visit.person.id)
    at_home = visit if visit.private or private is None else replace(visit, chat=private.id, private=True)
    alarm = await raise_alarm(at_home, text, None)
    if alarm is not None:
        return alarm
    record = await visit.uow.sessions.find(told[0].session_id, await visit.group_ids())
    athlete = await visit.uow.people.get(told[0].person_id)
    if record is None or athlete is None:
        return at_home.told(ChangeNotTaken())
    words = score_words(text, (athlete.name, *await called(visit, record, athlete)))
    if score_to_go(words) is not None and athlete.id == visit.person.id:
        return await take_score_back(at_home, TakeScoreBack(score=told[-1].id))
    if not is_like_a_score(words):
        return at_home.told(ChangeNotTaken())
    block = told[0].block if len(told) == 1 and not read_parts(words, record.session) else None
    return await claim_score(at_home, Claim(record, athlete, block, fixing=True), words)


async def called(visit: Visit, record: SessionRecord, athlete: Person) -> list[str]:
    """What the group calls them."""
    names = await names_in(visit.uow, record.group_id)
    return [names[athlete.id]] if athlete.id in names else []


def score_words(text: str, names: Sequence[str]) -> str:
    """`Bo: sorry, 9:24` says `9:24`."""
    named = name_in_front(text, names)
    words = named.rest if named else text
    return read_correction(words) or words


async def as_asked_score(visit: Visit, message_id: int, after: str) -> Outcome | None:
    """Something was asked about a score, and its words were changed instead."""
    question = await visit.uow.questions.open_in(visit.chat)
    if (
        question is None
        or question.kind != "score"
        or question.refs.get("told_in") != [visit.chat, message_id]
    ):
        return None
    words = score_words(after, ())
    return await tell_about_score(visit, question.refs, words) if is_like_a_score(words) else None


async def as_draft(visit: Visit, before: str, after: str) -> Outcome:
    """The draft becomes what the text says now; what was posted stays as everybody has seen it."""
    written = await visit.uow.sessions.written_as(visit.person.id, before, await coached_ids(visit))
    if written is None or not is_like_a_session(after):
        return visit.told(ChangeNotTaken())
    if written.state is SessionState.WITHDRAWN:
        return await draft_session(visit, DraftSession(text=after))
    if written.state is SessionState.POSTED:
        group = await visit.group(written.group_id)
        return visit.told(ChangeTooLate(group=group.title))
    return await revise(visit, written, after)


async def revise(visit: Visit, written: SessionRecord, text: str) -> Outcome:
    """Read back anew; one that was to be posted later is decided about again."""
    group = await visit.group(written.group_id)
    session = read_session(text, catalogue(), group.units).session
    if session is None:
        return visit.told(ChangeNotTaken())
    record = await visit.uow.sessions.revise(written.id, text=text, session=session, now=visit.now)
    return await over(visit, written, "changed") + await read_back(visit, record, await coached_groups(visit))
