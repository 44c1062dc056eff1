"""A coach changes a session in words, before it is posted or after: `make the row 200 m`."""

import re
from collections.abc import Mapping
from typing import Any, Final

from core.desk.access import admitted
from core.desk.coached import coached_athletes, coached_groups
from core.desk.commands import DraftSession, MeanDraft, MeanLine, RestoreDraft
from core.desk.days import today_in
from core.desk.errors import StalePress, UnknownThing
from core.desk.outcome import Outcome
from core.desk.sessions.drafting import as_another_time, as_timed, time_in
from core.desk.sessions.meant import of_day, to_be_changed, without_day
from core.desk.sessions.posting import draft_session, open_draft, over, read_back
from core.desk.sessions.says import (
    AmendedAfterPost,
    AmountCarried,
    AskChangeOrNew,
    AskLine,
    DraftWrong,
    LineLike,
    NotAmended,
    SoAlready,
)
from core.desk.sessions.scheduled import to_post
from core.desk.sessions.turns import more_often
from core.desk.visit import Visit
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_line
from core.notation.edits.changes import Changed, Unclear, changed
from core.notation.edits.editing import fact_in
from core.notation.edits.wordings import says_it_is_wrong, sounds_like_a_change, told_of_line
from core.notation.people import find_name
from core.scaling.carrying import carried_over
from core.sessions.values import Line, Session
from core.store.records import Group, SessionRecord, SessionState

# The kinds of open questions about a change: which line it means, and whether it is one.
LINE: Final = "line"
DRAFT: Final = "draft"


_BREAKS: Final = 2
_IN_MINUTE: Final = re.compile(
    r"\W*(?:(?:please|pls|actually|and|no|ok)\W+)*(?:in|on|at|for) (?:the )?(?:minute|min|station) "
    r"(?P<n>[1-9][0-9]?)\W+"
    r"(?:(?:we|they|let's|lets|please|should|just) )*(?:do|put|have|make it|take) (?P<what>[^\n]+?)(?: instead)?\W*$",
    re.IGNORECASE,
)
_MAKES: Final = re.compile(
    r"\W*(?:(?:please|pls|actually|can you|could you|and|now)\W+)*(?:make|change|swap|cut|drop|reduce|turn|shorten)\b",
    re.IGNORECASE,
)


async def as_amendment(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    """None unless the visitor has a session that is yet to be posted, or one of today, and it can be meant.

    Raises WhichSession where several may be.
    """
    groups = await coached_groups(visit)
    if not groups or is_board(text) or find_name(text, tuple(await coached_athletes(visit))):
        return None
    is_said = sounds_like_a_change(without_day(text)) or bool(time_in(text) or _IN_MINUTE.match(text))
    if not (is_said or fact_in(text, catalogue()) or told_of_line(text) or is_one_line(text)):
        return await not_of_day(visit, text) if _MAKES.match(text) else None
    timed = await as_timed(visit, text, replied_to)
    if timed is not None:
        return timed
    meant, named = await to_be_changed(visit, text, replied_to, lambda one: how_much_fits(visit, one, text))
    record, wish = meant or await newest(visit, groups), without_day(text) if named else text
    # `5 rounds` of what is posted already is rather a score.
    if record is None or (record.state is SessionState.POSTED and not is_said):
        return None
    moved = (
        await as_another_time(visit, record, text) if named or await is_alone(visit, record, groups) else None
    )
    if moved is not None:
        return moved
    group = await visit.group(record.group_id)
    wish = by_minute(wish, record.session)
    found = changed(record.text, wish, catalogue(), group.units, in_stead)
    untold = visit.told(NotAmended(left=(text,))) if named and _MAKES.match(text) else None
    return (
        await (carried_out(visit, record, wish, found) if found else in_doubt(visit, record, text)) or untold
    )


def is_board(text: str) -> bool:
    """Several things to do in rows of their own, and how: a session, whatever stands above it."""
    if text.strip().count("\n") < _BREAKS:
        return False
    read = read_session(text, catalogue())
    return read.session is not None and read.format_known and len(read.session.every_line) > 1


async def how_much_fits(visit: Visit, record: SessionRecord, wish: str) -> int:
    """How much of a wish can be done in a session: 2 all, 1 some of it, or of which line is to be asked, 0 nothing."""
    units = (await visit.group(record.group_id)).units
    found = changed(record.text, by_minute(wish, record.session), catalogue(), units, in_stead)
    if found is None or (found.text == record.text and found.unclear is None):
        return 0
    return 1 if found.left or found.unclear else 2


async def is_alone(visit: Visit, record: SessionRecord, groups: list[Group]) -> bool:
    """Whether a time without a name can only be said of it: of several drafts none is."""
    drafts = await visit.uow.sessions.drafts(visit.person.id, [one.id for one in groups])
    return record.state is not SessionState.DRAFT or len(drafts) == 1


def by_minute(wish: str, session: Session) -> str:
    """`In minute 3 do hollow holds`, said of the line that has its turn then; other words as they are."""
    found = _IN_MINUTE.match(wish)
    lines = session.every_line
    if found is None or not 1 <= int(found["n"]) <= len(lines):
        return wish
    return f"swap {lines[int(found['n']) - 1].movement} for {found['what']}"


async def not_of_day(visit: Visit, text: str) -> Outcome | None:
    """What is made of the session of a day that is named, and can't be told, is no class either."""
    return visit.told(NotAmended(left=(text,))) if await of_day(visit, text) else None


def is_one_line(text: str) -> bool:
    """One thing to do and not how: `in minute 3 do hollow holds` is rather said of the draft in hand."""
    read = None if "\n" in text.strip() else read_session(text, catalogue())
    return bool(read and read.session and not read.format_known and len(read.session.every_line) == 1)


def line_like(session: Session) -> LineLike | None:
    """Of the line that asks for most, half of it; None where no line tells a number."""
    told = [(one.amount, one) for one in session.every_line if one.amount and one.amount > 1]
    most = max(told, key=lambda pair: pair[0], default=None)
    return most and LineLike(movement=most[1].movement, amount=round(most[0] / 2), unit=most[1].unit)


async def carried_out(visit: Visit, record: SessionRecord, wish: str, found: Changed) -> Outcome:
    """What was done is read back; what wasn't is said, and what may mean several lines is asked."""
    if found.so_already:
        return visit.told(SoAlready(words=wish))
    done = found.text != record.text
    told = Outcome()
    if found.left:
        told = visit.told(NotAmended(left=found.left, done=done, like=line_like(record.session)))
    if done:
        told += await amend(visit, record, found.text, wish)
        record = await newest(visit, await coached_groups(visit)) or record
    return told + await ask_line(visit, record, found.unclear) if found.unclear else told


async def ask_line(visit: Visit, record: SessionRecord, unclear: Unclear) -> Outcome:
    refs = {"session": record.id, "text": unclear.words}
    await visit.uow.questions.ask(visit.chat, LINE, refs, visit.now)
    asked = AskLine(session_id=record.id, revision=record.revision, wish=unclear.words, lines=unclear.lines)
    return visit.told(asked)


@admitted
async def mean_line(visit: Visit, command: MeanLine) -> Outcome:
    """The change, of this line."""
    refs = await asked_about(visit, LINE, command.session)
    record = await changeable(visit, command.session)
    if record.revision != command.revision:
        raise StalePress
    group = await visit.group(record.group_id)
    found = changed(record.text, refs["text"], catalogue(), group.units, in_stead, at=command.line)
    if found is None:
        raise StalePress
    return await carried_out(visit, record, refs["text"], found) + Outcome(settles=True)


async def in_doubt(visit: Visit, record: SessionRecord, text: str) -> Outcome | None:
    """What speaks of the session in hand never puts another in its place unasked; None where it doesn't."""
    in_hand = record.state is not SessionState.POSTED
    if says_it_is_wrong(text) and in_hand:
        wrong = DraftWrong(
            session_id=record.id, revision=record.revision, earlier=record.revision - 1 or None
        )
        return visit.told(wrong)
    read = read_session(text, catalogue())
    if not read.holds_work:
        return None
    if not read.is_clear:
        return visit.told(NotAmended(left=(text,)))
    await visit.uow.questions.ask(visit.chat, DRAFT, {"session": record.id, "text": text}, visit.now)
    posted_in = None if in_hand else (await visit.group(record.group_id)).title
    return visit.told(AskChangeOrNew(session_id=record.id, text=text, group=posted_in))


@admitted
async def mean_draft(visit: Visit, command: MeanDraft) -> Outcome:
    refs = await asked_about(visit, DRAFT, command.session)
    told = (
        await draft_session(visit, DraftSession(text=refs["text"]))
        if command.new
        else visit.told(NotAmended(left=(refs["text"],)))
    )
    return told + Outcome(settles=True)


async def asked_about(visit: Visit, kind: str, session: int) -> Mapping[str, Any]:
    """What was asked last, which is answered now. Raises StalePress."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None or question.kind != kind or question.refs["session"] != session:
        raise StalePress
    await visit.uow.questions.close(visit.chat)
    return question.refs


async def changeable(visit: Visit, session: int) -> SessionRecord:
    record = await visit.uow.sessions.find(session, await visit.group_ids())
    if record is None:
        raise UnknownThing
    if record.state in {SessionState.DISCARDED, SessionState.WITHDRAWN}:
        raise StalePress
    return record


@admitted
async def restore_draft(visit: Visit, command: RestoreDraft) -> Outcome:
    """What the draft said before, as its newest revision, so that can be taken back, too; a discarded one as it was."""
    gone = await visit.uow.sessions.find(command.session, await visit.group_ids())
    if gone is not None and gone.state is SessionState.DISCARDED and gone.revision == command.earlier:
        await visit.uow.sessions.bring_back(gone.id)
        return await read_back(visit, gone, await coached_groups(visit), again=True) + Outcome(settles=True)
    record = await open_draft(visit, command.session, command.revision)
    earlier = await visit.uow.sessions.find(record.id, await visit.group_ids(), command.earlier)
    if earlier is None:
        raise UnknownThing
    return await revised(visit, record, earlier.text, earlier.session) + Outcome(settles=True)


def in_stead(old: Line, new: Line) -> Line:
    return carried_over(old, new, catalogue())


def session_written(words: str, group: Group) -> Session:
    session = read_session(words, catalogue(), group.units).session
    assert session is not None, "an edit is checked by reading"
    return session


def carried_in(before: Session, after: Session, wish: str, units: MassUnit) -> AmountCarried | None:
    """The line with another movement whose amount the coach didn't name and that had to be worked out."""
    if re.search(r"[0-9]|\bmax\b", wish):
        return None
    was_lines, now_lines = before.every_line, after.every_line
    if len(was_lines) != len(now_lines):
        return None  # something was put in or left out; nothing stands for another
    pairs = zip(was_lines, now_lines, strict=True)
    found = next(((was, now) for was, now in pairs if was.movement != now.movement), None)
    if found is None or found[1].amount is None:
        return None
    was, now = found
    if (was.amount, was.unit, was.per_side) == (now.amount, now.unit, now.per_side):
        return None
    bare = now.model_copy(update={"amount": None, "amount_to": None, "second_amount": None})
    words, instead, name = (write_line(one, units, catalogue()) for one in (was, now, bare))
    return AmountCarried(was=words, now=instead, name=name)


async def newest(visit: Visit, groups: list[Group]) -> SessionRecord | None:
    """What the coach wrote last: a draft, or what stands in a group today."""
    found = [await visit.uow.sessions.newest_unposted(visit.person.id, [one.id for one in groups])]
    found += [await visit.uow.sessions.posted_on(one.id, today_in(one, visit.now)) for one in groups]
    return max((one for one in found if one is not None), key=lambda one: one.id, default=None)


async def amend(visit: Visit, record: SessionRecord, words: str, wish: str) -> Outcome:
    """A draft becomes what its text says now; what was posted stays, and a new draft says it."""
    group = await visit.group(record.group_id)
    session = session_written(words, group)
    notes = (
        carried_in(record.session, session, wish, group.units),
        more_often(record.session, session, group.units),
    )
    told = sum((visit.told(one) for one in notes if one), Outcome())
    if record.state is not SessionState.POSTED:
        return told + await revised(visit, record, words, session)
    draft = await visit.uow.sessions.draft(
        group_id=group.id,
        author_id=visit.person.id,
        day=record.day,
        text=words,
        session=session,
        now=visit.now,
        replaces_id=record.id,
    )
    after = await read_back(visit, draft, await coached_groups(visit))
    return told + visit.told(AmendedAfterPost(group=group.title)) + after


async def revised(visit: Visit, record: SessionRecord, words: str, session: Session) -> Outcome:
    """Read back anew; what was to go out at its time still does."""
    told = await over(visit, record, "changed")
    new = await visit.uow.sessions.revise(record.id, text=words, session=session, now=visit.now)
    told += await read_back(visit, new, await coached_groups(visit))
    return told + await to_post(visit, new, record.post_at) if record.post_at else told
