"""A message that was changed afterwards: a score or a draft follows it, all else is answered kindly."""

from dataclasses import replace

from core.desk.claims import Claim
from core.desk.coached import coached_groups
from core.desk.commands import DraftSession
from core.desk.outcome import Outcome
from core.desk.own_commands import Retell
from core.desk.says.own import ChangeNotTaken, ChangeTooLate
from core.desk.scores import claim_score, tell_score_again
from core.desk.sessions import draft_session, read_back
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.notation.chat import is_like_a_score, is_like_a_session
from core.notation.people import name_in_front
from core.notation.session import read_session
from core.store.records import ScoreRecord, SessionRecord, SessionState


async def retell(visit: Visit, command: Retell) -> Outcome:
    """In a group only a changed score counts: people correct their chatting all the time."""
    before = await words_before(visit, command.message_id)
    after = command.text.strip()
    if before is None or before == after or not after:
        return Outcome()
    score = await score_told_by(visit, before)
    if score is not None:
        return await correct(visit, score, after, in_group=command.in_group)
    if command.in_group:
        return Outcome()
    return await as_asked_score(visit, before, after) or await as_draft(visit, before, after)


async def words_before(visit: Visit, message_id: int) -> str | None:
    chat = await visit.uow.chats.get(visit.chat)
    words = await visit.uow.inbox.words_of(chat.address, message_id) if chat else None
    return words.strip() if words else None


async def score_told_by(visit: Visit, words: str) -> ScoreRecord | None:
    """The newest score that came from these words; a coach's may begin with a name."""
    entered = await visit.uow.scores.entered_by(visit.person.id)
    return next((one for one in entered if words.endswith(one.text.strip())), None)


async def correct(visit: Visit, score: ScoreRecord, text: str, *, in_group: bool) -> Outcome:
    """The same as `Not right` and the new words."""
    record = await visit.uow.sessions.get(score.session_id)
    athlete = await visit.uow.people.get(score.person_id)
    assert record is not None, "a score has its session"
    assert athlete is not None, "a score has its athlete"
    named = name_in_front(text, (athlete.name,))
    words = named.rest if named else text
    private = await visit.uow.chats.private_of(visit.person.id)
    at_home = replace(visit, chat=private.id) if in_group and private else visit
    if not is_like_a_score(words):
        return at_home.told(ChangeNotTaken())
    return await claim_score(at_home, Claim(record, athlete, score.block, fixing=True), words)


async def as_asked_score(visit: Visit, before: str, after: str) -> Outcome | None:
    """Something was asked about a score, and its words were changed instead."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None or question.kind != "score" or question.refs.get("text", "").strip() != before:
        return None
    return await tell_score_again(visit, question.refs, after) if is_like_a_score(after) else None


async def as_draft(visit: Visit, before: str, after: str) -> Outcome:
    """The draft becomes what the text says now; what was posted stays as everybody has seen it."""
    written = await visit.uow.sessions.written_as(visit.person.id, before)
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
    return await read_back(visit, record, await coached_groups(visit))
